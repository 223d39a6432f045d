package layout

import (
	"slices"
	"strings"

	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// controlsAmongOutputs parts a column that tells what loudspeakers are fed
// from, "VC-01" in some rows and "AMP 1-2" in others, where no column is for
// controls: the cells that are tags of controls go to a column of their own, and those
// with them that say that there is none: "direct".
func controlsAmongOutputs(t *Table) {
	if t.Kind != Loudspeakers && t.Kind != Mixed || slices.ContainsFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.Control }) {
		return
	}
	i := slices.IndexFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.Channel || c.Field == vocabulary.Amplifier })
	if i < 0 {
		return
	}
	isControl := func(r *Record) bool {
		return r.Class == Device && notation.KeyOf(r.Values[i].Text).Kind == notation.KeyControl
	}
	if !slices.ContainsFunc(t.Records, func(r Record) bool { return isControl(&r) }) {
		return
	}
	c := t.Columns[i]
	c.Field, c.RunnerUp, c.Evidence = vocabulary.Control, vocabulary.Unknown, "some cells of \""+c.Header+"\" are tags of controls"
	t.Columns = append(t.Columns, c)
	for k := range t.Records {
		r := &t.Records[k]
		r.Values = pad(r.Values, len(t.Columns))
		if isControl(r) || r.Class == Device && notation.AnswerOf(r.Values[i].Text) == notation.No {
			r.Values[len(t.Columns)-1], r.Values[i] = r.Values[i], Value{At: r.Values[i].At}
		}
	}
}

// controlsInPlaces parts names of zones and rooms from the controls that they
// are said to hang on, "Office (via VC-2, 24 W)", where no column is for controls.
func controlsInPlaces(t *Table) {
	if t.Kind == Cables || t.Kind == Controls || slices.ContainsFunc(t.Columns, func(c Column) bool {
		return c.Field == vocabulary.Control || c.Field == vocabulary.ControlWatts || c.Field == vocabulary.ControlModel
	}) {
		return
	}
	for i := range t.Columns {
		c := t.Columns[i]
		if c.Field != vocabulary.Zone && c.Field != vocabulary.Room || !slices.ContainsFunc(t.Records, func(r Record) bool {
			_, control := behindControl(r.Values[i].Text)
			return r.Class == Device && control != ""
		}) {
			continue
		}
		c.Field, c.RunnerUp, c.Evidence = vocabulary.Control, vocabulary.Unknown, "behind some names of \""+c.Header+"\""
		t.partColumn(i, c, behindControl)
		return
	}
}

// behindControl parts the name of a place from the one control that it is said
// to hang on; control is "" if there is none.
func behindControl(t string) (place, control string) {
	if len(t) > maxText || !anyDigit(t) {
		return "", ""
	}
	for at := 1; at < len(t); at++ {
		if t[at-1] != ' ' && t[at-1] != '(' {
			continue
		}
		word, rest, _ := strings.Cut(t[at:], " ")
		if wordList()[vocabulary.Fold(word)]&classBehind == 0 {
			continue
		}
		if list, err := notation.ParseControls(rest, notation.Auto); err == nil && len(list) == 1 && (list[0].Name != "" || list[0].W > 0) {
			return strings.TrimRight(t[:at], " ,;:(–-"), strings.Trim(rest, " ()")
		}
		if tag, closed := strings.CutSuffix(rest, ")"); closed && t[at-1] == '(' && wordList()[vocabulary.Fold(word)]&classPast != 0 && reTag.MatchString(tag) && !reAmp.MatchString(tag) && !notation.SpeaksOfAmplifier(tag) {
			return strings.TrimRight(t[:at], " ,;:(–-"), tag // "Cloaks (via AT2)"
		}
	}
	return controlInBrackets(t)
}

// controlInBrackets parts the name of a place from one control with a tag in brackets at
// its end: "Grotto (vol. ctl VC2, 12 W)".
func controlInBrackets(t string) (place, control string) {
	head, ok := strings.CutSuffix(t, ")")
	open := strings.LastIndex(head, "(")
	if !ok || open < 1 {
		return "", ""
	}
	inner := strings.TrimSpace(head[open+1:])
	list, err := notation.ParseControls(inner, notation.Auto)
	if err != nil || len(list) != 1 || notation.KeyOf(list[0].Name).Kind != notation.KeyControl {
		return "", ""
	}
	return strings.TrimSpace(head[:open]), strings.TrimSpace(inner[strings.Index(inner, list[0].Name):])
}

// partColumn adds a column for what part takes off the texts of column i: the
// text that is left there, and that of the new column, "" where there is nothing.
func (t *Table) partColumn(i int, c Column, part func(text string) (rest, added string)) {
	t.Columns = append(t.Columns, c)
	for k := range t.Records {
		r := &t.Records[k]
		r.Values = pad(r.Values, len(t.Columns))
		rest, text := part(r.Values[i].Text)
		if text == "" {
			continue
		}
		added := r.Values[i]
		added.Text, added.Cell = text, nil
		r.Values[len(t.Columns)-1] = added
		r.Values[i].Text = rest
	}
}

// zonesInDescriptions parts the zones at the end of descriptions from them, where
// no column is for places: "Ceiling loudspeaker 6 W, tapped 3 W, Z1 foyer",
// "Volume control 36 W, Z1".
func zonesInDescriptions(t *Table) {
	if slices.ContainsFunc(t.Columns, func(c Column) bool {
		return slices.Contains([]vocabulary.Field{vocabulary.Zone, vocabulary.Room, vocabulary.Circuit, vocabulary.Channel}, c.Field)
	}) {
		return
	}
	i := slices.IndexFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.Describe })
	if i < 0 {
		return
	}
	zones := map[string]bool{}
	rows, ending := 0, 0
	for k := range t.Records {
		if r := &t.Records[k]; r.Class == Device && vocabulary.DeviceIn(r.Values[i].Text) == vocabulary.LoudspeakerDevice {
			rows++
			if _, zone := zoneBehind(r.Values[i].Text); zone != "" {
				ending++
				zones[zone] = true
			}
		}
	}
	if len(zones) < 2 || 10*ending < 8*rows {
		return
	}
	c := t.Columns[i]
	c.Field, c.RunnerUp, c.Evidence = vocabulary.Zone, vocabulary.Unknown, "at the end of \""+c.Header+"\""
	t.partColumn(i, c, zoneBehind)
}

// zoneBehind parts a description from the zone that its last part names; zone is ""
// where it names none.
func zoneBehind(t string) (before, zone string) {
	at := max(strings.LastIndex(t, ", "), strings.LastIndex(t, " - "), strings.LastIndex(t, " – "))
	if at < 0 || len(t) > maxText {
		return "", ""
	}
	zone = strings.TrimLeft(t[at:], ",– -")
	if !reZone.MatchString(zone) || reLabelWatts.MatchString(zone) || classWithin(zone)&classDevice != 0 {
		return "", ""
	}
	return strings.TrimRight(t[:at], " ,"), zone
}
