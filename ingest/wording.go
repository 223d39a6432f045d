package ingest

import (
	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/remember"
)

// A wording is the text of a cell with what every question about it begins with,
// worked out once for all cells that say the same.
type wording struct {
	text    string
	key     string               // join.Key
	missing notation.MissingKind // the kind of mark for a missing value that it is, if one
	spare   bool                 // it says that nothing is connected: see readSpare
	ofWhich bool                 // it begins with words for a part of the row above: see row.ofWhich
}

var wordings = remember.New(32_768, func(t string, _ int) *wording {
	kind, _ := notation.Missing(t)
	return &wording{text: t, key: join.Key(t), missing: kind, spare: readSpare(t), ofWhich: readOfWhich(t)}
})

// What a cell may be that has no wording.
var (
	blankCell   *wording
	noValueCell = &wording{} // its formula gave nothing
)

// wordingOf is what a value says; above is what the one above it does.
func wordingOf(v *layout.Value, above *wording) *wording {
	switch {
	case v.How == schedule.NotHad || v.Cell == nil && v.Text == "":
		return blankCell
	case v.Cell != nil && v.Cell.Kind == grid.NoValue:
		return noValueCell
	case above != blankCell && above != noValueCell && above.text == v.Text:
		return above
	}
	return wordings.Of(v.Text, 0)
}

// key is the text in a form by which it meets others: see join.Key.
func (s seen) key() string {
	if s.said != nil && s.said.text == s.text {
		return s.said.key
	}
	return s.keyAnew()
}

func (s *seen) keyAnew() string { return join.Key(s.text) }

// ofWhich reports whether the text begins with words for a part of the row above.
func (s seen) ofWhich() bool {
	if s.said != nil && s.said.text == s.text {
		return s.said.ofWhich
	}
	return readOfWhich(s.text)
}

// spare reports whether the whole text says that nothing is connected.
func (s seen) spare() bool {
	if s.said != nil && s.said.text == s.text {
		return s.said.spare
	}
	return readSpare(s.text)
}
