package ingest

import (
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// lengthEvidence is what a workbook says of its unit of length.
type lengthEvidence struct {
	metres, feet int // lengths and headers with that unit
	mm2, awg     int // conductor sizes in that unit
	commas       int // columns with a decimal comma
	foreign      int // headers in another language than English
}

// gatherLengthUnits counts the evidence over all tables of the job.
func (b *builder) gatherLengthUnits() {
	e := &b.units
	for _, t := range b.tables {
		for _, c := range t.columns {
			if c.style == notation.Comma {
				e.commas++
			}
			if foreignHeader(c.Evidence) {
				e.foreign++
			}
			switch {
			case c.Field == vocabulary.Length || c.Field == vocabulary.Height:
				switch strings.ToLower(c.Unit) {
				case "m", "km", "cm":
					e.metres++
				case "ft", "yd":
					e.feet++
				}
			case c.Field == vocabulary.Gauge || c.Field == vocabulary.CableType || c.Field == vocabulary.Conductors || c.Field == vocabulary.AreaNeeded:
				switch strings.ToLower(c.Unit) {
				case "mm2":
					e.mm2++
				case "awg":
					e.awg++
				}
				b.countCells(t, c, func(text string, style notation.Style) {
					p, err := notation.ParseConductor(text, style, notation.HintNone)
					switch {
					case err != nil:
					case p.AWG != nil && !p.Doubts.Has(notation.AWGTaken):
						e.awg++
					case p.AreaMM2 > 0 && !p.Doubts.Has(notation.AreaTaken):
						e.mm2++
					}
				})
			}
			if c.Field == vocabulary.Length {
				b.countCells(t, c, func(text string, style notation.Style) {
					p, err := notation.ParseLength(text, style, notation.UnitUnknown)
					switch {
					case err != nil:
					case p.Unit == notation.Metre:
						e.metres++
					case p.Unit == notation.Foot:
						e.feet++
					}
				})
			}
		}
	}
}

// countCells hands the text cells of a column, up to a limit, to count.
func (b *builder) countCells(t *table, c *column, count func(string, notation.Style)) {
	n := 0
	for _, r := range t.rows {
		v := &r.Values[c.i]
		if v.Cell == nil || v.Cell.Kind != grid.String || v.Text == "" {
			continue
		}
		if n++; n > mostSamples {
			return
		}
		count(v.Text, c.style)
	}
}

// foreignHeader reports whether the evidence for a column names another
// language than English: "header 'Abgriff' (de)".
func foreignHeader(evidence string) bool {
	for _, lang := range []string{"(de)", "(fr)", "(es)", "(it)", "(nl)"} {
		if strings.Contains(evidence, lang) {
			return true
		}
	}
	return false
}

// lengthUnit is the unit of a length that is written without one, and why: the
// other cells of its column, else the workbook's other lengths, else its
// conductor sizes and its language, else what the user said.
func (b *builder) lengthUnit(s seen) (notation.LengthUnit, string) {
	if s.col != nil {
		m, f := 0, 0
		b.countCells(s.t, s.col, func(text string, style notation.Style) {
			if p, err := notation.ParseLength(text, style, notation.UnitUnknown); err == nil {
				switch p.Unit {
				case notation.Metre:
					m++
				case notation.Foot:
					f++
				}
			}
		})
		if m > 0 && f == 0 {
			return notation.Metre, "the other cells of the column are in metres"
		}
		if f > 0 && m == 0 {
			return notation.Foot, "the other cells of the column are in feet"
		}
		if unit := headerUnit(s.col.Header); unit != notation.UnitUnknown {
			return unit, "the header's words"
		}
	}
	e := &b.units
	switch {
	case e.metres > 0 && e.feet == 0:
		return notation.Metre, "the other lengths of the workbook are in metres"
	case e.feet > 0 && e.metres == 0:
		return notation.Foot, "the other lengths of the workbook are in feet"
	case e.mm2 > 0 && e.awg == 0:
		return notation.Metre, "conductors are in mm² in this workbook"
	case e.awg > 0 && e.mm2 == 0 && e.commas == 0 && e.foreign == 0:
		return notation.Foot, "conductors are in AWG in this workbook"
	case e.commas > 0 || e.foreign > 0:
		return notation.Metre, "the workbook is written in a country of metres"
	}
	switch b.opts.Units {
	case "m":
		return notation.Metre, "the unit set for lengths without one"
	case "ft":
		return notation.Foot, "the unit set for lengths without one"
	}
	return notation.UnitUnknown, "nothing says whether feet or metres"
}

// headerUnit finds a word for a unit of length among a header's words.
func headerUnit(header string) notation.LengthUnit {
	for _, w := range strings.FieldsFunc(join.Fold(header), func(r rune) bool { return strings.ContainsRune(" /()[],.:;-_\n", r) }) {
		switch w {
		case "ft", "feet", "foot", "footage", "lf", "rft":
			return notation.Foot
		case "metres", "meters", "metre", "meter", "mtr", "mtrs", "ml", "metri", "metros", "lfm":
			return notation.Metre
		}
	}
	return notation.UnitUnknown
}
