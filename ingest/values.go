package ingest

import (
	"errors"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// notDate is for columns in which a date is not a fraction gone wrong.
const notDate notation.Column = 255

// readable returns the text of a cell as a parser should see it, and its
// decimal mark. A number cell gives its stored value, never the rounded one on
// show, with the unit that its number format adds. A date in a column of taps,
// sizes, channels or counts gives what was probably typed.
func (b *builder) readable(s *seen, date notation.Column) (string, notation.Style) {
	style := notation.Auto
	if s.col != nil {
		style = s.col.style
	}
	if s.cell == nil || s.source.How == schedule.FromHouseBook {
		return s.text, style
	}
	switch s.cell.Kind {
	case grid.Number:
		if s.cell.Text != "" && s.text != s.cell.Text && s.text != "" && s.cell.Struck == grid.PartStruck {
			return s.text, style
		}
		n := s.cell.Number
		if strings.Contains(s.cell.Format(), "%") {
			return plain(n*100) + " %", notation.Point
		}
		return strings.TrimSpace(plain(n) + " " + formatUnit(s.cell)), notation.Point
	case grid.Date:
		if date == notDate {
			break
		}
		r, err := notation.RecoverSerial(s.cell.Number, s.cell.Text, date)
		if err != nil || len(r.Texts) == 0 {
			break
		}
		because := "the spreadsheet turned it into a date"
		if r.Ambiguous {
			because += "; it could also have been " + strings.Join(r.Texts[1:], " or ")
		}
		s.source.How, s.source.Because = schedule.RecoveredDate, because
		b.take(*s, s.field.String(), r.Texts[0], schedule.RecoveredDate, because)
		return r.Texts[0], notation.Point
	}
	return s.text, style
}

// plain prints a stored number without the noise of binary fractions.
func plain(n float64) string {
	if n == math.Trunc(n) && math.Abs(n) < 1e15 {
		return strconv.FormatFloat(n, 'f', -1, 64)
	}
	r, err := strconv.ParseFloat(strconv.FormatFloat(n, 'g', 12, 64), 64)
	if err != nil {
		r = n
	}
	return strconv.FormatFloat(r, 'f', -1, 64)
}

// formatUnit is the unit that a number format adds to its number: the W of `0.0" W"`.
func formatUnit(c *grid.Cell) string {
	format := c.Format()
	if format == "" || !strings.ContainsAny(format, `"\`) && !strings.ContainsFunc(format, unicode.IsLetter) {
		return ""
	}
	last := strings.LastIndexFunc(c.Text, unicode.IsDigit)
	if last < 0 {
		return ""
	}
	unit := strings.TrimLeft(c.Text[last+1:], " .)\u00a0\u202f")
	if strings.HasPrefix(unit, "E+") || strings.HasPrefix(unit, "E-") {
		return ""
	}
	return strings.TrimSpace(unit)
}

// misread notes a cell whose field is known and whose text is not understood,
// or says what cannot be. The value stays unknown.
func (b *builder) misread(s seen, err error) {
	if !s.had() || err == nil || errors.Is(err, notation.ErrEmpty) || errors.Is(err, notation.ErrMissing) {
		return
	}
	why := "is not understood"
	switch {
	case errors.Is(err, notation.ErrNegative):
		b.refuse(s, "negative")
		return
	case errors.Is(err, notation.ErrZero):
		b.refuse(s, "zero")
		return
	case errors.Is(err, notation.ErrTooLarge):
		b.refuse(s, "too large")
		return
	case errors.Is(err, notation.ErrAmbiguous):
		why = "names several values and prefers none"
	case errors.Is(err, notation.ErrNotWhole):
		why = "is not a whole number"
	case errors.Is(err, notation.ErrLump):
		why = "is a lump of unknown count"
	}
	b.askCell(s, "“"+short(s.source.Written)+"” "+why+": what is the "+s.field.String()+" here?", "the "+s.field.String()+" of this row")
}

// short cuts a text for a message.
func short(s string) string {
	const most = 80
	s = tidy(s)
	if utf8.RuneCountInString(s) <= most {
		return s
	}
	r := []rune(s)
	return string(r[:most-1]) + "…"
}

// unit returns the unit that the column's header gives.
func (s seen) unit() string {
	if s.col == nil {
		return ""
	}
	return strings.ToLower(s.col.Unit)
}

// scaleOfWatts is what the header's unit makes of a bare figure of power.
func scaleOfWatts(unit string) float64 {
	switch unit {
	case "kw", "kva":
		return 1000
	case "mw":
		return 0.001
	}
	return 1
}

// watts reads one power. A bare figure under a header that means power is
// watts, or what the header's unit says.
func (b *builder) watts(s seen) schedule.Quantity[schedule.Watts] {
	if !s.had() {
		return schedule.Quantity[schedule.Watts]{}
	}
	text, style := b.readable(&s, notDate)
	p, err := notation.ParseWatts(text, style)
	if err != nil {
		b.misread(s, err)
		return schedule.Quantity[schedule.Watts]{}
	}
	w := p.W
	if p.Doubts.Has(notation.Bare) {
		w *= scaleOfWatts(s.unit())
	}
	if unsure(p.Doubts) {
		b.doubt(s, plain(w)+" W", p.Doubts)
	}
	return schedule.Exactly(schedule.Watts(w), s.source)
}

// pieces reads a number of devices and of spares written beside it.
func (b *builder) pieces(s seen) (q schedule.Quantity[schedule.Pieces], spare int) {
	if !s.had() {
		return q, 0
	}
	text, style := b.readable(&s, notation.QuantityColumn)
	if s.cell != nil && s.cell.Kind == grid.Number && s.cell.Number < 0 {
		// an accounting format makes minus three of "(3)"
		text = strings.TrimPrefix(text, "-")
		b.take(s, s.field.String(), text, schedule.LikelierReading, "a count cannot be negative; it was probably typed in brackets")
		s.source.How = schedule.LikelierReading
	}
	if s.t != nil && s.t.Matrix && notation.AnswerOf(text) == notation.Yes && text != "1" {
		return schedule.Exactly[schedule.Pieces](1, s.source), 0 // a tick in a table of counts
	}
	n, err := notation.ParseQuantity(text, style)
	if err != nil {
		total := 0
		for _, g := range groupsIn(text, style) {
			total += g.Count
		}
		if total > 0 {
			return schedule.Exactly(schedule.Pieces(total), s.source), 0
		}
		if c := countAhead(text); c > 0 && s.col != nil && s.t.allCountsAhead(s.col) { // "6 ceiling"
			b.take(s, "quantity", strconv.Itoa(c), schedule.LikelierReading, "all cells of the column begin with a count")
			return schedule.Exactly(schedule.Pieces(c), s.source), 0
		}
		b.misread(s, err)
		return q, 0
	}
	b.doubt(s, strconv.Itoa(n.Count), n.Doubts)
	return schedule.Exactly(schedule.Pieces(n.Count), s.source), n.Spare
}

// ohms reads an impedance.
func (b *builder) ohms(s seen) schedule.Quantity[schedule.Ohms] {
	if !s.had() {
		return schedule.Quantity[schedule.Ohms]{}
	}
	text, style := b.readable(&s, notDate)
	z, err := notation.ParseOhms(text, style)
	if err != nil {
		b.misread(s, err)
		return schedule.Quantity[schedule.Ohms]{}
	}
	o := z.Ohms
	if u := s.unit(); z.Doubts.Has(notation.Bare) && (u == "kohm" || u == "kω" || u == "k") {
		o *= 1000
	}
	if unsure(z.Doubts) {
		b.doubt(s, plain(o)+" ohm", z.Doubts)
	}
	return schedule.Exactly(schedule.Ohms(o), s.source)
}

// volts reads what a cell says of the line voltage.
func (b *builder) volts(s seen) (notation.LineVoltage, seen) {
	if !s.had() {
		return notation.LineVoltage{}, s
	}
	text, style := b.readable(&s, notDate)
	v, err := notation.ParseLineVoltage(text, style)
	if err != nil {
		b.misread(s, err)
		return notation.LineVoltage{}, s
	}
	b.doubt(s, text, v.Doubts)
	return v, s
}

// oneVolt returns the line voltage if the cell names exactly one.
func oneVolt(v notation.LineVoltage, s seen) schedule.Quantity[schedule.Volts] {
	if v.Kind != notation.ConstantVoltage || len(v.V) != 1 {
		return schedule.Quantity[schedule.Volts]{}
	}
	return schedule.Exactly(schedule.Volts(v.V[0]), s.source)
}

// rating reads the power that a thing may give or carry. Bare figures take
// the scale of the header's unit.
func (b *builder) rating(s seen) ([]notation.RatedOutput, seen) {
	if !s.had() {
		return nil, s
	}
	text, style := b.readable(&s, notDate)
	r, err := notation.ParseRating(text, style)
	if err != nil {
		if w, ok := wattsAhead(text, style); ok {
			b.take(s, s.field.String(), plain(w)+" W", schedule.LikelierReading, "the only figure of the cell, and a remark behind it")
			return []notation.RatedOutput{{W: w}}, s
		}
		b.misread(s, err)
		return nil, s
	}
	outputs := slices.Clone(r.Outputs) // what was parsed is shared
	if r.Doubts.Has(notation.Bare) {
		for i := range outputs {
			outputs[i].W *= scaleOfWatts(s.unit())
		}
	}
	b.doubt(s, text, r.Doubts)
	return outputs, s
}

// remarkBehind finds words without a figure behind a power: "35 W att. by door", "10W, stuck".
var remarkBehind = regexp.MustCompile(`^\d[\d.,]*\s?[wW](?:atts?)?(?:\s*[,;(/:–-]\s*|\s+)(\PN+)$`)

// wattsAhead is the power with which a cell begins that goes on with a remark, which
// speaks of no load and of no part of the power: "10W, stuck".
func wattsAhead(text string, style notation.Style) (float64, bool) {
	m := remarkBehind.FindStringSubmatch(text)
	if m == nil || loadWords.in(join.Fold(m[1])) || len(notation.Statuses(m[1])) > 0 {
		return 0, false
	}
	powers := notation.PowersIn(text, style)
	if len(powers) != 1 {
		return 0, false
	}
	return powers[0].W, true
}

// fraction reads a share: "20 %", or 0.2.
func (b *builder) fraction(s seen) schedule.Quantity[schedule.Fraction] {
	if !s.had() {
		return schedule.Quantity[schedule.Fraction]{}
	}
	text, style := b.readable(&s, notDate)
	percent := strings.Contains(text, "%") || s.unit() == "%"
	n, err := notation.ParseNumber(strings.TrimSpace(strings.Replace(text, "%", "", 1)), style)
	if err != nil {
		b.misread(s, err)
		return schedule.Quantity[schedule.Fraction]{}
	}
	v := n.Value
	if percent || v > 1 {
		v /= 100
	}
	return schedule.Exactly(schedule.Fraction(v), s.source)
}

// text is a word or name as it was seen.
func (s seen) asText() schedule.Text {
	if !s.had() {
		return schedule.Text{}
	}
	return schedule.Text{Value: tidy(s.text), Source: s.source}
}

// said returns the row's own or inherited text for a field.
func (r *row) said(f vocabulary.Field) schedule.Text { return r.say(f).asText() }

// set gives q a value that it has not had yet. Two different values for one
// thing are a question; the first stands.
func set[T ~float64](b *builder, q *schedule.Quantity[T], v schedule.Quantity[T], field, of string) {
	if !v.Had() {
		return
	}
	if !q.Had() {
		*q = v
		return
	}
	if q.Low != v.Low || q.High != v.High {
		if q.How == schedule.Default || q.How == schedule.Estimated {
			*q = v
			return
		}
		b.ask(v.At, field, "the "+field+" of "+of+" is “"+short(v.Written)+"” here and “"+short(q.Written)+"” in "+q.At.String()+": which holds?",
			"the "+field+" of "+of)
	}
}

// setText is set for words; other words are no contradiction.
func setText(t *schedule.Text, v schedule.Text) {
	if !t.Had() && v.Had() {
		*t = v
	}
}

func itoa(n int) string { return strconv.Itoa(n) }

// countWords is how many words a text has.
func countWords(s string) int {
	n, inside := 0, false
	for i := 0; i < len(s); i++ {
		if s[i] >= utf8.RuneSelf {
			return len(strings.Fields(s))
		}
		space := asciiSpace(s[i])
		if !space && !inside {
			n++
		}
		inside = !space
	}
	return n
}

func asciiSpace(c byte) bool { return c == ' ' || c >= '\t' && c <= '\r' }

func anyDigit(s string) bool { return notation.HasDigit(s) }
