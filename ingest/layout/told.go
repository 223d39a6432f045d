package layout

import (
	"cmp"
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A sheet may tell its loudspeakers line by line in words, with no header and
// no columns: "Palm House: 6 ceiling at 10 W on Amp 1", or a title for each
// output and the groups that hang on it below.

// Bounds of such a list: the most cells of a line that read as one sentence,
// and the fewest lines with loudspeakers.
const (
	mostToldCells  = 3
	fewestTold     = 2
	mostToldLength = 200
)

var (
	reToldHead  = regexp.MustCompile(`^([^:]{2,40}?)\s*(?::\s+|\s[-–—]\s+)(.+)$`)
	reToldComma = regexp.MustCompile(`(?i)^(\pL[^,:\d]{2,39}),\s+((?:\d|one\s|ein\s|eine\s|un\s|une\s|una\s|een\s).+)$`)
	reToldHas   = regexp.MustCompile(`(?i)^(\pL.{1,38}?)\s+(?:has|have|hat|haben|tiene|tienen|ha|hanno|a|ont|heeft|hebben)\s+(\d.*)$`)
	reToldSays  = regexp.MustCompile(`(?i)^\S+\s+\S+\s+(?:is|has|gives|with|hat|ist|gibt|mit|est|a|avec|es|tiene|con|ha|è|heeft|met)\s`)
	reToldWith  = regexp.MustCompile(`(?i)(?:[,;]?\s+(?:with|mit|avec|con|met|via|behind|through|on|hinter|über|derrière|par|tras|dietro|achter)\s+|[,;]\s+|\s[-–—]\s)`)
	reToldPlace = regexp.MustCompile(`^(.{2,20}?)\s*\((\pL[^()]{2,38})\)$`) // "Line 1 (north stand)"
)

// A toldLine is one line and what it says.
type toldLine struct {
	l       *line
	words   string   // the cells of the line, joined
	heads   []string // who the sentence is about: "Palm House", or "Circuit 1" and "Dome ring"
	groups  []phrase // the loudspeakers that it counts
	texts   []string // the sentence of each
	all     string   // the whole sentence, which may say once where they hang
	control string   // the control that it names
	sum     string   // the watts of the line, in cells of their own behind the sentence
}

// wattsBehind are the watts in the cells behind a sentence: "160", "160 W", or
// "160" and "W"; "" where other things stand there.
func wattsBehind(parts []string) string {
	if len(parts) < 2 || !rePhraseW.MatchString(parts[0]) {
		return ""
	}
	rest := strings.TrimLeft(strings.Join(parts[1:], " "), "= ")
	if _, ok := plainNumber(rest); ok {
		return rest + " W"
	}
	if reWattsOnly.MatchString(rest) {
		return rest
	}
	return ""
}

// readTold reads one line.
func (f *finder) readTold(l *line) (t toldLine, ok bool) {
	t.l = l
	if len(l.slots) > mostToldCells {
		return t, false
	}
	var parts []string
	for _, s := range l.slots {
		parts = append(parts, s.cell.line())
	}
	if sum := wattsBehind(parts); sum != "" {
		t.sum, parts = sum, parts[:1]
	}
	t.words = strings.Join(parts, " ")
	rest := t.words
	if len(rest) > mostToldLength || len(rest) < 5 {
		return t, false
	}
	for len(t.heads) < 2 && (!rePhraseN.MatchString(rest) || reToldComma.MatchString(rest)) {
		head, behind := cutHead(rest)
		if head == "" {
			break
		}
		t.heads, rest = append(t.heads, head), behind
	}
	if len(t.heads) == 1 {
		if m := reToldPlace.FindStringSubmatch(t.heads[0]); m != nil && notation.KeyOf(m[1]).Kind != notation.KeyNone {
			t.heads = m[1:]
		}
	}
	t.control, rest = cutControl(rest)
	t.all = rest
	for _, part := range groupsOf(rest) {
		p := phraseOf(part)
		device := vocabulary.DeviceIn(reAmplifier.ReplaceAllString(part, " ")) // "6 speakers on amp 1"
		hung := p.set != "" || classWithin(part)&classMounting != 0            // "4 ceiling 6 W"
		speaker := device == vocabulary.LoudspeakerDevice || device == vocabulary.NoDevice && p.count != "" && hung
		if !speaker || p.set == "" && p.watts == "" || p.count == "" && len(t.heads) == 0 {
			return t, false
		}
		t.groups, t.texts = append(t.groups, p), append(t.texts, part)
	}
	return t, len(t.groups) > 0
}

// cutHead takes who a sentence is about off its front, if loudspeakers follow.
func cutHead(s string) (head, rest string) {
	for _, re := range []*regexp.Regexp{reToldHas, reToldHead} {
		if m := re.FindStringSubmatch(s); m != nil && rePhraseW.MatchString(m[2]) && vocabulary.DeviceIn(m[1]) == vocabulary.NoDevice {
			return m[1], m[2]
		}
	}
	if m := reToldComma.FindStringSubmatch(s); m != nil && rePhraseW.MatchString(m[2]) && vocabulary.DeviceIn(m[1]) == vocabulary.NoDevice && classWithin(m[2])&(classDevice|classMounting) != 0 {
		return m[1], m[2] // "Gallery, 4 cabinets at 6 W"
	}
	return "", s
}

// cutControl takes the control at its end off a sentence: "4 horns at 15 W via
// VC-1 (36 W)", "2 columns 20 W, attenuator 30 W".
func cutControl(s string) (control, rest string) {
	marks := reToldWith.FindAllStringIndex(s, -1)
	for _, m := range slices.Backward(marks) {
		head, tail := s[:m[0]], s[m[1]:]
		if vocabulary.DeviceIn(head) == vocabulary.ControlDevice {
			continue // cut further ahead, or a sentence about the control itself
		}
		if vocabulary.DeviceIn(tail) == vocabulary.ControlDevice || wattsOfControl(tail) || notation.KeyOf(notation.ParseControlCell(tail).Name).Kind == notation.KeyControl {
			return tail, head
		}
	}
	return "", s
}

// wattsOfControl reports whether words are a power and a word for controls: "10 W control", "control, 10 W".
func wattsOfControl(s string) bool {
	rest := strings.TrimSpace(rePhraseW.ReplaceAllString(s, " "))
	return rest != s && notation.IsControlWord(strings.Trim(rest, " ,;.()"))
}

// toldControl reports whether a line is a control with its power, and tells of nothing else but where it is:
// "volume control 50 W in the booth", not "attenuator 15 W for the referees" or "attenuator shop 15 W".
func toldControl(words string) bool {
	rest := rePhraseW.ReplaceAllString(words, "")
	if rest == words || anyDigit(rest) || vocabulary.DeviceIn(words) != vocabulary.ControlDevice {
		return false
	}
	for word := range strings.FieldsSeq(rest) {
		switch word = strings.Trim(word, " ,;.()"); {
		case classOf(word)&classWhere != 0:
			return true
		case word != "" && !notation.IsControlWord(word) && vocabulary.DeviceIn(word) != vocabulary.ControlDevice && classOf(word)&classLocal == 0:
			return false
		}
	}
	return true
}

// besideTold reports whether a line below a title is of what stands beside its loudspeakers: their control, or their cable.
func besideTold(words string) bool { return toldControl(words) || toldCable(words) != "" }

// reOneLength finds lengths in words: "60 m", "200 ft".
var reOneLength = regexp.MustCompile(`(?i)\b\d{1,4}(?:[.,]\d{1,2})?\s?(?:m|mtrs?|metros?|metri|metres?|mètres?|meters?|ft|feet)\b`)

// toldCable is the length in a line that is a cable with its size and one length: "cable 2.5 mm² 60 m"; else "".
func toldCable(words string) string {
	lengths := reOneLength.FindAllString(words, 2)
	if len(lengths) != 1 || vocabulary.DeviceIn(words) != vocabulary.CableDevice {
		return ""
	}
	if _, _, sized := notation.ConductorIn(words, notation.Auto); !sized {
		return ""
	}
	return lengths[0]
}

// told reads the lines of a sheet without tables. It returns nil when they are no such list.
func (f *finder) told() (*Table, grid.Range) {
	lines := f.p.lines
	if len(lines) > maxRest {
		return nil, grid.Range{}
	}
	read := make([]toldLine, len(lines))
	first, last, devices := -1, -1, 0
	for i := range lines {
		f.watch.Step()
		t, ok := f.readTold(&lines[i])
		if read[i] = t; !ok {
			read[i].groups = nil
			continue
		}
		if first < 0 {
			first = i
		}
		last = i
		devices++
	}
	if devices < fewestTold {
		return nil, grid.Range{}
	}
	for first > 0 && lines[first-1].n == lines[first].n-1 && f.toldTitle(&read[first-1]) {
		first--
	}
	for last+1 < len(lines) && lines[last+1].n == lines[last].n+1 && besideTold(read[last+1].words) {
		last++
	}
	read = read[first : last+1]
	strange := 0
	for i := range read {
		if read[i].groups == nil && !f.toldTitle(&read[i]) && rePhraseW.MatchString(read[i].words) {
			strange++
		}
	}
	if strange >= devices {
		return nil, grid.Range{}
	}
	return f.buildTold(read)
}

// toldTitle reports whether a line names a part of the system, or is a few words without a figure.
func (f *finder) toldTitle(t *toldLine) bool {
	if t.words == "" || len(t.words) > 90 || t.groups != nil {
		return false
	}
	if reToldSays.MatchString(t.words) {
		return false // "Amp 1 is a 240 W amplifier"
	}
	if slices.Contains([]vocabulary.Field{vocabulary.Amplifier, vocabulary.Channel, vocabulary.Circuit, vocabulary.Zone, vocabulary.Room, vocabulary.Floor, vocabulary.Building}, sectionField(t.words)) {
		return !strings.ContainsAny(t.words, ".!?") || len(strings.Fields(t.words)) <= 6
	}
	return !anyDigit(t.words) && len(strings.Fields(t.words)) <= 4 && !isNoteText(t.words)
}

// buildTold makes the table.
func (f *finder) buildTold(read []toldLine) (*Table, grid.Range) {
	top := read[0].l
	at := f.p.ref(top.n, top.slots[0].col)
	area := grid.Range{Row1: top.n, Row2: read[len(read)-1].l.n, Col1: 1 << 20}
	t := &Table{Sheet: f.p.sheet, Kind: Loudspeakers, Confidence: 0.5, Transposed: f.p.turned, Matrix: true}
	for _, field := range []vocabulary.Field{vocabulary.Describe, vocabulary.Quantity, vocabulary.Tap} {
		t.Columns = append(t.Columns, Column{At: at, Field: field, Confidence: 0.6, Evidence: "said in words, line by line"})
	}
	made := &phraseColumns{t: t, at: map[vocabulary.Field]int{}, has: []vocabulary.Field{vocabulary.Describe}}
	made.at[vocabulary.Quantity], made.at[vocabulary.Tap] = 1, 2
	var stack []Fact
	fresh := true
	for i := range read {
		said := &read[i]
		l := said.l
		for _, s := range l.slots {
			area.Col1, area.Col2 = min(area.Col1, s.col), max(area.Col2, s.col)
		}
		r := Record{Rows: f.p.span(l.n, l.n), At: f.p.ref(l.n, l.slots[0].col), Text: summary(l.slots), Sections: stack, Class: Device}
		switch {
		case l.hidden == grid.HiddenByHand:
			r.Class, r.Reason = Hidden, "row hidden by hand"
		case allStruck(l.slots):
			r.Class, r.Reason = Struck, "struck through"
		case said.groups != nil:
		case isTotalText(l.slots[0].cell.line()) && anyDigit(said.words):
			r.Class, r.Reason = Total, "a total: "+quote(l.slots[0].cell.line())
		case f.toldTitle(said):
			r.Class, r.Reason = Title, "a title"
			facts := f.titleFacts(l, l.slots[0].col, l.slots[len(l.slots)-1].col)
			for j := range facts {
				if facts[j].Field == vocabulary.Unknown && facts[j].Key == "" {
					facts[j].Field = vocabulary.Room
				}
			}
			stack = push(stack, facts, fresh)
			r.Sections, fresh = facts, true
		case len(stack) > 0 && besideTold(said.words):
			r.Values = []Value{{Cell: l.slots[0].cell.Cell, At: r.At, Text: said.words, How: schedule.Stated, Because: "in the line"}}
			one := phraseRow{Record: r}
			made.put(&one, vocabulary.Quantity, toldCable(said.words))
			t.Records = append(t.Records, one.Record)
			continue
		case rePhraseW.MatchString(said.words) && vocabulary.DeviceIn(said.words) == vocabulary.LoudspeakerDevice:
			r.Class, r.Reason = Unclear, "a sentence that was not understood"
		default:
			r.Class, r.Reason = Note, "a note"
		}
		if r.Class != Device {
			r.Values = pad(nil, len(t.Columns))
			t.Records = append(t.Records, r)
			continue
		}
		fresh = false
		for k := range said.groups {
			t.Records = append(t.Records, f.toldRecord(made, said, k, r))
		}
	}
	for i := range t.Records {
		r := &t.Records[i]
		for len(r.Values) < len(t.Columns) {
			r.Values = append(r.Values, Value{At: r.At})
		}
	}
	t.Range = f.p.area(area)
	return t, area
}

// toldRecord is the record of one group of a sentence.
func (f *finder) toldRecord(made *phraseColumns, said *toldLine, k int, r Record) Record {
	s := said.l.slots[0]
	one := phraseRow{Record: r, p: said.groups[k]}
	one.Text = ""
	one.Values = []Value{{Cell: s.cell.Cell, At: r.At, Text: said.texts[k], How: schedule.Stated, Because: "in the line"}}
	one.Values = append(one.Values, Value{At: r.At}, Value{At: r.At})
	p := one.p
	watts := p.set
	if watts == "" {
		watts = p.watts
	} else if p.watts != p.set {
		made.put(&one, vocabulary.RatedWatts, p.watts)
	}
	made.put(&one, vocabulary.Tap, watts)
	made.put(&one, vocabulary.Quantity, p.count)
	if len(said.groups) == 1 {
		made.put(&one, vocabulary.TotalWatts, cmp.Or(p.sum, said.sum))
	}
	for _, head := range said.heads {
		field := sectionField(head)
		switch {
		case field == vocabulary.Unknown && lookText(head)&lookTag != 0:
			field = vocabulary.Tag
		case field == vocabulary.Unknown:
			field = vocabulary.Room
		}
		made.put(&one, field, head)
	}
	made.put(&one, vocabulary.Control, said.control)
	amps, all := said.texts[k], phraseOf(said.all)
	if p.amp == "" {
		amps = said.all
	}
	made.put(&one, vocabulary.Amplifier, strings.TrimRight(reAmplifier.FindString(amps), " ,;.)"))
	made.put(&one, vocabulary.Channel, cmp.Or(p.output, all.output))
	made.put(&one, vocabulary.Circuit, cmp.Or(p.line, all.line))
	made.put(&one, vocabulary.Zone, cmp.Or(p.zone, all.zone))
	if len(said.heads) == 0 {
		made.put(&one, vocabulary.Room, p.room)
	}
	return one.Record
}
