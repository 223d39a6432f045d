package layout

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

var (
	reKey       = regexp.MustCompile(`(?:^|[\s,;|(])([\p{L}#][\p{L}./#°º() ]{0,28}?(?:[\s-]?\d{1,2}\w?)?)\s*[:=]\s*`)
	reParts     = regexp.MustCompile(`\s+[-–—|/→·]+\s+|\s*[,;()|→]\s*|\s{3,}|\s*/\s*`)
	reLineWord  = regexp.MustCompile(`(?i)^(line|circuit|ckt|cct|linie|kreis|ligne|línea|linea|circuito|lijn|kring|loop|strang)(?:[\s.#:-]*\d{1,4}\w?|[\s.#:-]+(?-i:[A-Z]))\b`)
	reLineVolts = regexp.MustCompile(`(?i)^(?:line|circuit|linie|kreis|ligne|línea|linea|circuito|lijn|kring|loop|strang)[\s.#:-]*(?:25|50|70|70[.,]7|71|100)\s*v(?:olts?)?\b`)
	rePAVolts   = regexp.MustCompile(`(?i)^pa[\s,:-]*(?:25|50|70|70[.,]7|71|100)\s*v(?:olts?)?\b`) // the system's, not those of an amplifier PA
	reRoomWord  = regexp.MustCompile(`(?i)^(room|rm|raum|salle|local|pièce|sala|stanza|ruimte|lokaal|locale)(?:[\s.#:-]*\d{1,5}\w?|[\s.#:-]+(?-i:[A-Z])\d*)\b`)
	reFloorWord = regexp.MustCompile(`(?i)^(level|floor|lvl|ebene|étage|etage|niveau|planta|piso|piano|verdieping|geschoss|og|ug|bouwlaag)[\s.#:-]*-?\d{1,2}\b|^-?\d{1,2}(st|nd|rd|th|\.|e|er|ème|º|ª|°)?\s*(floor|level|og|ug|obergeschoss|geschoss|etage|étage|planta|piso|piano|verdieping|stock)\b`)
	reLevelOf   = regexp.MustCompile(`(?i)^(?:level|floor|niveau|ebene|livello|nivel|planta|piano|verdieping|étage|etage)\s+(\pL[\pL .-]{1,24})$`)
	reBuilding  = regexp.MustCompile(`(?i)^(building|bldg|block|gebäude|gebäudeteil|haus|bâtiment|edificio|gebouw|pavilion|pavillon|paviljoen)(?:[\s.#:-]+\w{1,12}|\d{1,3}\w?|(?-i:[A-Z])\d?)\b`)
	reWattsOnly = regexp.MustCompile(`(?i)^(max\.?\s*)?\d+([.,]\d+)?\s*(w|watts?|va)\.?(\s*max\.?)?$`)
	reRatedOnly = regexp.MustCompile(`(?i)^(?:\d{1,2}\s*[x×]\s*)?\d+(?:[.,]\d+)?\s*(?:w|watts?|va)\.?(?:\s*(?:@|at|an|bei|/|,)?\s*\d{2,3}(?:[.,]\d)?\s*v(?:olts?)?\.?)?$`)
	reBareTimes = regexp.MustCompile(`^\d{1,2}\s*[x×]\s*\d{2,4}$`) // what outputs give, without its unit
	reBehind    = regexp.MustCompile(`(?i)^(?:behind|via|through|off|from|on|ab|an|von|vom|depuis|sur|desde|en|da|dal|dall[ao]|vanaf|van|aan|op|derrière|hinter|über|tras|detrás de|dietro|achter|fed (?:from|by)|gespeist (?:von|aus)|aliment[ée]e?s? par|alimentad[oa]s? (?:por|desde)|alimentat[oaie] d(?:a|al|all[ao'])|gevoed (?:door|van(?:uit)?))\s+`)
	reSeveral   = regexp.MustCompile(`(?i)\d+\s*[x×]\s*\d+([.,]\d+)?\s*w|\b(outputs?|ways|voies|uscite|salidas|ausgänge|wege|groepen|uitgangen|channels|kanäle)\b`)
	reShortTag  = regexp.MustCompile(`^\p{L}{1,4}[- ]?\d{0,2}$`)
	reJobWord   = regexp.MustCompile(`(?i)^((?:(?:our |your )?(?:ref|réf|rif)\.?\s+(?:de |d'|di )?)?(?:job|wo|works? order|project|contract|projekt|auftrag|kommission|affaire|opération|chantier|projet|proyecto|obra|folio|expediente|expte|exp|progetto|commessa|cantiere|incarico|encargo|mission|orden(?: de trabajo)?|ordine(?: di lavoro)?|ordre(?: de travail)?|project|opdracht|werk)\.?(?:[\s-]*(?:no|nr|n|n°|nº|n\.º|núm|number|nummer|ref)\.?)?)[\s:#]+(\S*\d\S*)$`)
	reNameWord  = regexp.MustCompile(`\pL{3,}`) // a word rather than the letters of a number: "Hall 2", not "OC 66-2"
	reRevWord   = regexp.MustCompile(`(?i)^(rev(?:ision|isie|isione|isión|ision)?|rév(?:ision)?|issue|version|versie|versión|index|indice|ind)[\s.:]+(\w{1,6})$`)
	reAnyVolts  = regexp.MustCompile(`(?i)\b(25|35|50|70|70[.,]7|71|100|140|200)\s*-?\s*v(olts?)?\b`)
)

// sectionField tells which field a section title names by its first words:
// "Zone 3", "AMP 2", "VC-3"; Unknown when it names none.
func sectionField(t string) vocabulary.Field { return sections.Of(t, 0) }

func readSection(t string) vocabulary.Field {
	t = strings.TrimRight(t, " :")
	if m := reBehind.FindString(t); m != "" && len(m) < len(t) {
		if f := readSection(t[len(m):]); f == vocabulary.Control || f == vocabulary.Amplifier || f == vocabulary.Channel {
			return f
		}
	}
	switch {
	case t == "" || len(t) > 90:
		return vocabulary.Unknown
	case reControl.MatchString(t), reControlW.MatchString(t):
		return vocabulary.Control
	case reAmp.MatchString(t) && !rePAVolts.MatchString(t), namesAmpByLetters(t):
		return vocabulary.Amplifier
	case reChOnly.MatchString(t), joints.Of(t, 0) && !isDayBehind(t):
		return vocabulary.Channel
	case reFloorWord.MatchString(t):
		return vocabulary.Floor
	case reBuilding.MatchString(t):
		return vocabulary.Building
	case reLineWord.MatchString(t) && !reLineVolts.MatchString(t):
		return vocabulary.Circuit
	case reRoomWord.MatchString(t):
		return vocabulary.Room
	case reZone.MatchString(t):
		return vocabulary.Zone
	case classOf(t)&classFloor != 0:
		return vocabulary.Floor
	}
	if m := reLevelOf.FindStringSubmatch(t); m != nil && classOf(m[1])&classFloor != 0 {
		return vocabulary.Floor // "niveau sous-sol"
	}
	return vocabulary.Unknown
}

// reDayBehind finds a word with a day or the number of a paper behind it: "Completed 8/14", "Quotation 88-21".
var reDayBehind = regexp.MustCompile(`^(\pL{5,}) (?:\d{1,2}/\d{1,2}(?:\D|$)|[1-9]\d+-\d{2,}$)`)

// isDayBehind reports whether a title begins with a word for no amplifier and what may be a day or a number behind it.
func isDayBehind(t string) bool {
	m := reDayBehind.FindStringSubmatch(t)
	return m != nil && !notation.SpeaksOfAmplifier(m[1]) && !notation.SpeaksOfRack(m[1])
}

// shortestNumber is the fewest letters and figures of the number of a job that stands alone with its word.
const shortestNumber = 3

// plainFields are fields whose facts do not take in the words behind them.
var plainFields = [vocabulary.Fields]bool{vocabulary.LineVoltage: true, vocabulary.Date: true, vocabulary.JobNo: true, vocabulary.Revision: true}

// feeders are fields behind whose name a place may stand: "CH 1 - Palm house".
var feeders = [vocabulary.Fields]bool{vocabulary.Amplifier: true, vocabulary.Channel: true, vocabulary.Circuit: true}

// level orders section titles from the outermost in.
var level = [vocabulary.Fields]int{vocabulary.Site: 1, vocabulary.Job: 1, vocabulary.JobNo: 1, vocabulary.Building: 2, vocabulary.Floor: 3, vocabulary.Amplifier: 4, vocabulary.Channel: 5,
	vocabulary.Circuit: 6, vocabulary.Zone: 7, vocabulary.Room: 8, vocabulary.Control: 9}

// sectionFacts takes a title apart. A title of which nothing is known is one
// fact with the field Unknown.
func (f *finder) sectionFacts(t string, at schedule.Ref, c *grid.Cell) []Fact {
	if len(f.forced) > 0 {
		return placedAt(f.readTitle(t), at, c)
	}
	return placedAt(slices.Clone(titlesRead.Of(t, 0)), at, c)
}

// placedAt gives facts their place.
func placedAt(facts []Fact, at schedule.Ref, c *grid.Cell) []Fact {
	for i := range facts {
		facts[i].At, facts[i].Cell = at, c
	}
	return facts
}

// readTitle is sectionFacts without a place.
func (f *finder) readTitle(t string) []Fact {
	if reWrittenDate.MatchString(t) {
		return []Fact{{Field: vocabulary.Date, Text: t}}
	}
	if len(notation.AmplifiersNamed(t)) > 1 {
		return []Fact{{Text: t}} // what each of them feeds is for whoever knows the places
	}
	if countsOutputs(t) {
		return []Fact{{Field: vocabulary.Amplifier, Text: t}}
	}
	if amp := withoutAmpLead(t); ratesOne(amp) {
		return []Fact{{Field: vocabulary.Amplifier, Text: amp}}
	}
	if output, place, ok := outputOfPlace(t); ok {
		return []Fact{output, place}
	}
	if output, place, ok := wordedOutput(t); ok {
		facts := []Fact{{Field: vocabulary.Channel, Text: output}}
		if place != "" {
			facts = append(facts, Fact{Text: place, Key: "feeds"})
		}
		return facts
	}
	if place, feeder, ok := placeFed(t); ok {
		if notation.SpeaksOfRack(place) { // "Left side of rack: amp L"
			return f.readTitle(feeder)
		}
		return append(f.readTitle(feeder), Fact{Text: place})
	}
	if keys := f.readKeys(t); len(keys) > 0 {
		return keys
	}
	if m := reJobWord.FindStringSubmatch(t); m != nil && len(m[2]) >= shortestNumber {
		return []Fact{{Field: vocabulary.JobNo, Text: m[2], Key: m[1]}} // "Expte. OB-2019/027" is one number
	}
	output, place, ok := outputAtPlace(t)
	if !ok {
		output, place, ok = feederAndPlace(t)
	}
	if ok {
		return []Fact{{Field: vocabulary.Channel, Text: output}, {Text: place}}
	}
	if joints.Of(t, 0) && !placesBeside(t) {
		return []Fact{{Field: vocabulary.Channel, Text: t}} // "A1 / channel 1" is one thing
	}
	var facts []Fact
	var lead []string // words before the first part that names something
	add := func(field vocabulary.Field, part string) {
		if n := len(facts); n > 0 {
			last := &facts[n-1]
			if n > 1 && last.Field == vocabulary.Unknown && feeders[facts[n-2].Field] && (reWattsOnly.MatchString(part) || reRatedOnly.MatchString(part)) {
				facts[n-2].Text += " - " + part // "Palm house (amp A, 120 W)"
				return
			}
			_, verb, place := cutFeeds(part, 0)
			if list, ok := strings.CutPrefix(part, ":"); ok && feeders[last.Field] { // "Ampli 2 (120 W) : accueil et parking"
				verb, place = "feeds", strings.TrimSpace(list)
			}
			switch {
			case field == vocabulary.Unknown && feeders[last.Field] && onlyLooks(part):
				return // "Amp 1 (the old grey one, 100 W)"
			case field == vocabulary.Unknown && last.Field == vocabulary.Amplifier && reBareTimes.MatchString(part):
				last.Text += " - " + part
				return
			case last.Field == vocabulary.Amplifier && field == vocabulary.Channel:
				last.Field = vocabulary.Channel
				last.Text += " / " + part
				return
			case field == vocabulary.Unknown && feeders[last.Field] && (verb != "" || !anyDigit(part)):
				facts = append(facts, Fact{Text: place, Key: verb}) // the place that it feeds
				return
			case field == vocabulary.Unknown && !plainFields[last.Field] && !aboutList(part) && !f.isSubject(part) || last.Field == vocabulary.Control && reWattsOnly.MatchString(part):
				last.Text += " - " + part
				return
			}
		}
		if field == vocabulary.Unknown {
			lead = append(lead, part)
			return
		}
		whole := part
		if len(lead) > 0 && field != vocabulary.LineVoltage {
			about := field == vocabulary.Floor // "Planetarium - level basement"
			for _, w := range lead {
				about = about || f.isHeading(w)
			}
			switch {
			case about:
				facts = append(facts, Fact{Text: strings.Join(lead, " - ")})
			case feeders[field]: // "Palm house (amp A)": the place that it feeds
				facts = append(facts, Fact{Field: field, Text: part}, Fact{Text: strings.Join(lead, " - ")})
				lead = nil
				return
			default:
				whole = strings.Join(lead, " - ") + " - " + part
			}
			lead = nil
		}
		facts = append(facts, Fact{Field: field, Text: whole})
	}
	parts := titleParts(t)
	named := slices.DeleteFunc(slices.Clone(parts), reOhmsLast.MatchString) // not what was measured
	for _, part := range named {
		field := sectionField(part)
		if (field == vocabulary.Zone || field == vocabulary.Building) && aboutList(part) {
			field = vocabulary.Unknown // "Zone schedule"
		}
		if (field == vocabulary.Unknown || field == vocabulary.Circuit) && len(part) < 32 && reAnyVolts.MatchString(part) && !reLabelWatts.MatchString(part) {
			field = vocabulary.LineVoltage
		}
		if m := reJobWord.FindStringSubmatch(part); field == vocabulary.Unknown && m != nil {
			facts = append(facts, Fact{Field: vocabulary.JobNo, Text: m[2], Key: m[1]})
			continue
		}
		if m := reRevWord.FindStringSubmatch(part); field == vocabulary.Unknown && m != nil {
			facts = append(facts, Fact{Field: vocabulary.Revision, Text: m[2], Key: m[1]})
			continue
		}
		if field == vocabulary.Amplifier && onlyOutput(part) {
			field = vocabulary.Channel
		}
		if feeders[field] {
			part = strings.TrimPrefix(part, reBehind.FindString(part)) // "fed by Amp 1"
		}
		if output, verb, place := cutFeeds(part, 1); verb != "" && feeders[field] { // "Amp B feeds the stands"
			add(field, output)
			facts = append(facts, Fact{Text: place, Key: verb})
			continue
		}
		add(field, part)
	}
	if len(facts) == 1 && len(lead) == 0 && len(named) == len(parts) && !plainFields[facts[0].Field] && !reKey.MatchString(t) && strings.Count(t, "/") == 0 {
		facts[0].Text = t // as written, when it is all one thing
		if keyedPlaces[facts[0].Field] {
			facts[0].Text = withoutCalledAmp(t)
		}
	}
	if len(lead) > 0 {
		facts = append([]Fact{{Text: strings.Join(lead, " - ")}}, facts...)
	}
	if len(facts) == 0 {
		facts = []Fact{{Text: t}}
	}
	return facts
}

// onlyOutput reports whether a part names an output by its word, and no amplifier but by its own: "amp ch1".
func onlyOutput(part string) bool {
	c, err := notation.ParseChannel(part)
	return err == nil && c.Amplifier == "" && len(c.Channels) == 1
}

// reOhmsLast finds a part that is an impedance: "measured 310 ohm", "Z 130 Ohm".
var reOhmsLast = regexp.MustCompile(`(?i)\d\s*(?:ohms?|Ω)\.?\s*$`)

// reSlashNumber is a number or a date with strokes: "266/17", "08/11/2016".
var reSlashNumber = regexp.MustCompile(`\b(?:\d{1,4}/\d{1,2}/\d{2,4}|\d{2,}/\d+|\d+/\d{2,})\b`)

// reCommaUnit finds a decimal comma in a figure with its unit: "70,7 V".
var reCommaUnit = regexp.MustCompile(`(\d),(\d+\s?(?:V|W|m|mm)\b)`)

// titleParts parts a title at its marks, but not inside a number or a date. The parts are shared: they must not be changed.
func titleParts(t string) []string { return titlesParted.Of(t, 0) }

var titlesParted = remember.New(8192, func(t string, _ int) []string { return partTitle(t) })

// stroke and comma stand for those that part nothing, which aroundParts puts back.
const stroke, comma = "\x00", "\x01"

var aroundParts = strings.NewReplacer(stroke, "/", comma, ",")

func partTitle(t string) []string {
	whole := reSlashNumber.ReplaceAllStringFunc(t, func(n string) string { return strings.ReplaceAll(n, "/", stroke) })
	whole = reCommaUnit.ReplaceAllString(whole, "${1}"+comma+"${2}")
	var parts []string
	for _, part := range reParts.Split(whole, -1) {
		if part = strings.TrimSpace(aroundParts.Replace(part)); part != "" {
			parts = append(parts, part)
		}
	}
	return parts
}

// placesBeside reports whether parts of a title name places by a word for them: "Room 101,
// zone 1, amp A ch 1" is no output alone.
func placesBeside(t string) bool {
	return slices.ContainsFunc(titleParts(t), func(part string) bool {
		switch sectionField(part) {
		case vocabulary.Zone, vocabulary.Room, vocabulary.Floor, vocabulary.Building:
			return true
		}
		return false
	})
}

// isHeading reports whether words are about the list itself ("Loudspeaker
// schedule") rather than a place.
func (f *finder) isHeading(t string) bool {
	if aboutList(t) {
		return true
	}
	for _, c := range f.s.Concepts(t) {
		switch c {
		case "speaker", "tap", "amplifier", "cable", "load", "power", "device":
			return true
		}
	}
	return false
}

// headsThings reports whether a title is one word, or two, for things of the list and nothing
// else: "Volumeregelaars", "Regolatori", "Haut-parleurs".
func (f *finder) headsThings(t string) bool {
	concepts := f.s.Concepts(t)
	return len(strings.Fields(t)) <= 2 && len(concepts) > 0 && f.s.Header(t).Explained >= 1 &&
		!slices.ContainsFunc(concepts, func(c string) bool { return c != "control" && c != "speaker" && c != "amplifier" && c != "cable" })
}

// isSubject reports whether words name what a list is of, as one compound: "Lautsprecherliste".
func (f *finder) isSubject(t string) bool {
	if strings.ContainsAny(t, " 0123456789") {
		return false
	}
	c := f.s.Concepts(t)
	return len(c) > 0 && (c[0] == "speaker" || c[0] == "amplifier" || c[0] == "cable")
}

// aboutList reports whether a text has a word for a list.
func aboutList(t string) bool {
	for w := range strings.FieldsSeq(vocabulary.Fold(t)) {
		switch w {
		case "schedule", "list", "table", "liste", "lista", "lijst", "elenco", "plan", "tabelle", "tableau", "tabla", "tabella", "schema", "bordereau",
			"register", "survey", "system", "sheet", "staat", "overzicht", "planning", "listado", "inventory":
			return true
		}
	}
	return false
}

// isTotalText reports whether a text says that its row is a total: it begins
// or ends with a word for one and is short.
func isTotalText(t string) bool { return totals.Of(t, 0) }

func saysTotal(t string) bool {
	if len(t) > 60 {
		return false
	}
	words := strings.Fields(vocabulary.Fold(t))
	n := len(words)
	if n == 0 || n > 7 {
		return false
	}
	list := wordList()
	if n > 2 && list[words[0]]&classOptional != 0 {
		return false // "Option, not in the total" heads what is not counted
	}
	is := func(ws ...string) bool { return list[strings.Join(ws, " ")]&classTotal != 0 }
	if is(words[0]) || n > 1 && is(words[0], words[1]) {
		return true
	}
	return is(words[n-1]) && n <= 5 || n > 2 && is(words[n-2], words[n-1])
}
