package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// wayFields are the fields of what feeds a row.
var wayFields = []vocabulary.Field{vocabulary.Amplifier, vocabulary.Channel, vocabulary.Circuit, vocabulary.From}

// controlOnTheWay is the control that a cell for what feeds a row names between the two, if rows of
// controls have it: "PA-001 via PA-030" under "Supplied by".
func (b *builder) controlOnTheWay(r *row) controlMention {
	for _, f := range wayFields {
		if s := r.own(f); s.had() {
			if _, name, ok := b.cutControl(s.text); ok {
				return controlMention{name: tidy(name), at: s, any: true}
			}
		}
	}
	return controlMention{}
}

// cutControl parts what feeds a row from the control on the way, if rows of controls have it: "PA-B, via AT-1" is "PA-B"
// and "AT-1".
func (b *builder) cutControl(text string) (feeder, control string, ok bool) {
	feeder, control, ok = cutVia(text)
	k := join.Key(control)
	if list := b.dir.devices[k]; ok && (b.dir.controls[k] || b.dir.ownControls[k] || len(list) == 1 && list[0].kind == controlRow) {
		return feeder, control, true
	}
	return text, "", false
}

// cutVia parts a short text at its last word for a way: "PA-B, via AT-1".
func cutVia(text string) (ahead, behind string, ok bool) {
	if len(text) > longestSpoken {
		return text, "", false
	}
	if x := waysIn.Of(text, 0); x.ok {
		return x.ahead, x.behind, true
	}
	return text, "", false
}

// waysIn remembers the parts of texts with a word for a way.
var waysIn = remember.New(4096, func(text string, _ int) (x struct {
	ahead, behind string
	ok            bool
}) {
	words := strings.Fields(text)
	for i := len(words) - 2; i > 0; i-- {
		if slices.Contains(viaWords, join.Fold(words[i])) {
			x.ahead, x.behind, x.ok = strings.TrimRight(strings.Join(words[:i], " "), ",;"), strings.Join(words[i+1:], " "), true
			break
		}
	}
	return x
})

// gatherOnTheWay notes the controls that cells for what feeds a row name by the tag in the description of a row of controls:
// "PA-B, via AT-1" beside "3007 | Volume control AT-1, 24 W".
func (b *builder) gatherOnTheWay() {
	described := make(map[string]bool)
	b.each(controlRow, func(r *row) {
		if name := describedControl(r.own(vocabulary.Describe).text); name != "" {
			described[join.Key(name)] = true
		}
	})
	if len(described) == 0 {
		return
	}
	b.each(loudspeakerRow, func(r *row) {
		for _, f := range wayFields {
			if _, name, ok := cutVia(r.own(f).text); ok && described[join.Key(name)] {
				b.dir.controls[join.Key(name)] = true
			}
		}
	})
}

// describedControl is the tag of a control in its description, "VC-2" of "Volume control VC-2, 100 W"; "" if there is none.
func describedControl(text string) string {
	if text == "" {
		return ""
	}
	if name := tagAheadOfKind(notation.ParseControlCell(text).Name); name != text && (plainTag(name) || codeOfBuilding.MatchString(name)) {
		return name
	}
	return ""
}
