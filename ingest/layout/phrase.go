package layout

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A phrase is what a description in words says of devices: "Ceiling
// loudspeaker 6 W, set to 3 W, in the entrance; amplifier A, output 1". Parts
// that it does not say are "".
type phrase struct {
	device   vocabulary.Device
	same     bool   // it begins with "ditto": what it leaves out is as in the row above
	sameLine bool   // what feeds it is that of the row above
	count    string // "4"
	set      string // the watts that it is set to, with their unit
	full     bool   // it is set to its full power
	watts    string // the only other watts named
	sum      string // what all of them come to, "= 120 W"
	room     string
	zone     string
	amp      string
	output   string
	line     string
	mounted  bool // a count and a way to mount things: "5 nos. ceiling, tap not visible"
}

const (
	wattsPattern = `(\d+(?:[.,]\d+)?|½|¼|¾|1/[248])\s*-?\s*(?:w|watts?)\b`
	// setPattern are words before the watts that a loudspeaker is set to.
	setPattern   = `(?:set|tapped|tap(?:ping)?|strapped|adjusted|wired|dialled|switched|eingestellt|gestellt|geschaltet|angezapft|an(?:zapfung|griff)|abgriff|leistungsstufe|stufe|régl[ée]\p{L}*|regl\p{L}*|prise|pris|branché\p{L}*|puest[oa]s?|ajustad[oa]s?|regulad[oa]s?|tarad[oa]s?|toma|derivaci[oó]n|tarat[oaei]|regolat[oaei]|impostat[oaei]|presa|derivazione|ingesteld|afgesteld|afgetakt|aftakking|aansluiting|stand|gezet)\s*(?:at|to|on|@|auf|bei|sur|à|a|en|su|op|de|:)?\s*(?:the\s+)?`
	tokenPattern = `["“„']?([A-Z]{0,3}-?\d{1,2}[A-Z]?|[A-Z]{1,3}\d?|\d{1,2})["”“']?(?:[^\p{L}\d]|$)`
)

var (
	reSetWatts   = regexp.MustCompile(`(?i)(?:` + setPattern + `|@\s*)` + wattsPattern)
	reSetAfter   = regexp.MustCompile(`(?i)\b(?:auf|op|sur|a|à|su)\s+` + wattsPattern + `\s*(?:geschaltet|gestellt|eingestellt|angezapft|ingesteld|gezet|afgetakt)`)
	reAtWatts    = regexp.MustCompile(`(?i)\b(?:at|à|a|je|de|da|van|von|zu|op|auf|su|sur|@)\s+` + wattsPattern)
	reFullPower  = regexp.MustCompile(`(?i)\b(?:at|on|auf|à|a|op)\s+(?:full|voller|volle|pleine|plena|piena|vol)\s+(?:power|leistung|puissance|potencia|potenza|vermogen)`)
	rePhraseW    = regexp.MustCompile(`(?i)` + wattsPattern)
	rePhraseSum  = regexp.MustCompile(`(?i)\s*=\s*` + wattsPattern)
	reListBefore = regexp.MustCompile(`\d\s*(?:w|watts?)?\s*[/|-]\s*$`) // "6/3/1.5 W" lists what is offered
	reInAll      = regexp.MustCompile(`\((\d{1,3})\s+(\pL[\pL ]*)\)`)
	rePhraseN    = regexp.MustCompile(`(?i)^\(?(?:n[.°º]\s*)?(\d{1,3})(?:\)\s*|\s+|\s*(?:no\.?|nr\.?|off|x|×|pcs?\.?|ea\.?|stk\.?|st\.?|stück|uds?\.?|u\.|pz\.?|pièces?|stuks?)\s*)+[\p{L}\d]`)
	reOutput     = regexp.MustCompile(`(?i)\b(?:output|out|o/p|channel|chan?\.?|way|ausgang|kanal|sortie|voie|salida|canal|uscita|canale|uitgang|kanaal)\s*(?:no\.?|nr\.?|n°|nº|n\.)?\s*(?-i:` + tokenPattern + `)`)
	reAmplifier  = regexp.MustCompile(`(?i)\b(?:amplifier|amp|verstärker|endstufe|ampli|amplificateur|etapa|amplificador|amplificatore|finale|versterker|eindversterker)\.?\s*(?:no\.?|nr\.?|n°|nº)?\s*(?-i:` + tokenPattern + `)`)
	reLineIn     = regexp.MustCompile(`(?i)\b((?:line|circuit|linie|kreis|ligne|línea|linea|lijn|kring)\s*(?:no\.?|nr\.?)?\s*(?-i:` + tokenPattern + `))`)
	reZoneIn     = regexp.MustCompile(`(?i)\b((?:zone|zona|rufkreis|sector)\s*(?:no\.?|nr\.?)?\s*(?-i:` + tokenPattern + `))(?:\s*\(([^)]{3,40})\))?`)
	reZoneNamed  = regexp.MustCompile(`(?i:\b(?:zone|zona|rufkreis|bereich|sector|secteur|groep|gruppe|groupe|grupo|gruppo))\s*[:=]?\s*["“„«']?(\p{Lu}[^,;()"”“»]{2,40})`)
	rePlaceIn    = regexp.MustCompile(`(?:^|[\s,;])(?i:in (?:der|den|dem|het|de|the)|in|im|inside|dans (?:le|la|les)|dans|en|nel|nella|nei|nelle|nello)\s+([\p{L}][^,;()]{2,60})`)
	rePlaceAt    = regexp.MustCompile(`(?:^|[\s,;])(?i:to|at|am|an der|an|auf der|zum|zur|au|aux|à la|al|alla|allo|bij|op (?:de|het)|for|für (?:die|das|den)|pour|para|per|voor)\s+(?:(?i:the|la|le|les|el|il|de|het|die|den)\s+)?([\p{L}][^,;()]{2,60})`)
)

// phraseOf takes a description apart.
func phraseOf(t string) phrase { return phrases.Of(t, 0) }

func readPhrase(t string) phrase {
	if head, rest, ok := strings.Cut(t, " "); ok && classOf(head)&classAlso != 0 && rePhraseN.MatchString(rest) {
		t = rest // "also 4 horns at 15 W"
	}
	p := phrase{device: vocabulary.DeviceIn(t), same: classAhead(strings.Fields(vocabulary.Fold(t)))&classDitto != 0}
	rest := t
	if m := rePhraseSum.FindStringSubmatchIndex(t); m != nil && rePhraseW.MatchString(t[:m[0]]) { // 4 x 6 W = 24 W
		p.sum, rest = t[m[2]:m[3]]+" W", t[:m[0]]+" "+t[m[1]:]
	}
	t = rest
	if m := reSetAfter.FindStringSubmatchIndex(t); m != nil {
		p.set, rest = t[m[2]:m[3]]+" W", t[:m[0]]+" "+t[m[1]:]
	} else if m := reSetWatts.FindStringSubmatchIndex(t); m != nil {
		p.set, rest = t[m[2]:m[3]]+" W", t[:m[0]]+" "+t[m[1]:]
	}
	if m := rePhraseN.FindStringSubmatch(t); m != nil {
		if rated := rePhraseW.FindStringIndex(t); rated == nil || rated[0] > 0 {
			p.count = m[1]
		}
		if m := reAtWatts.FindStringSubmatch(rest); m != nil && p.set == "" && p.count != "" {
			p.set = m[1] + " W"
		}
	}
	if m := reInAll.FindStringSubmatch(t); m != nil && p.count != "" && notation.SaysTotal(m[2]) {
		p.count = m[1] // "2 horns each (4 in all)"
	}
	p.full = reFullPower.MatchString(t)
	if all := rePhraseW.FindAllStringSubmatchIndex(rest, 3); len(all) == 1 && !reListBefore.MatchString(rest[:all[0][0]]) {
		p.watts = rest[all[0][2]:all[0][3]] + " W"
	}
	if m := reOutput.FindStringSubmatch(t); m != nil {
		p.output = m[1]
	}
	if m := reAmplifier.FindStringSubmatch(t); m != nil {
		p.amp = m[1]
	}
	if m := reLineIn.FindStringSubmatch(t); m != nil {
		p.line = strings.TrimRight(m[1], " ,;.)")
	}
	if m := reZoneIn.FindStringSubmatch(t); m != nil {
		p.zone, p.room = strings.TrimRight(m[1], " ,;.)("), m[3]
	}
	if m := reZoneNamed.FindStringSubmatch(t); m != nil && p.zone == "" && vocabulary.DeviceIn(m[1]) == vocabulary.NoDevice {
		p.zone = strings.TrimRight(m[1], " .")
	}
	if p.room == "" {
		p.room = placeIn(t)
	}
	p.mounted = p.count != "" && p.set == "" && p.watts == "" && classWithin(t)&classMounting != 0
	return p
}

// placeIn finds where a description says that its devices are.
func placeIn(t string) string {
	for _, re := range []*regexp.Regexp{rePlaceIn, rePlaceAt} {
		for _, m := range re.FindAllStringSubmatch(t, -1) {
			place := strings.TrimRight(strings.TrimSpace(m[1]), " .")
			if !anyDigit(place) && vocabulary.DeviceIn(place) == vocabulary.NoDevice && !reFullPower.MatchString(m[0]) && !isWholeState(place) {
				return place
			}
		}
	}
	return ""
}

// isWholeState reports whether words say what has become of a device and nothing else: "reserve", behind "in".
func isWholeState(t string) bool {
	return slices.ContainsFunc(notation.Statuses(t), func(s notation.Mention) bool { return len(s.Text) == len(t) })
}
