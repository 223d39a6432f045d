package house

import (
	"errors"
	"fmt"
	"math"
	"path"
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// ref is the place of a column in the line.
func (l line) ref(column string) schedule.Ref {
	at := l.at
	at.Col = int32(l.cols[column])
	return at
}

// text is the text of a cell, "" when it is blank or there is no such column.
func (l line) text(column string) schedule.Text {
	c := l.cells[column]
	if c == nil {
		return schedule.Text{}
	}
	return schedule.Said(strings.Join(strings.Fields(c.Text), " "), l.ref(column))
}

// must is text for a cell that a row needs.
func (l line) must(column string) schedule.Text {
	t := l.text(column)
	if !t.Had() {
		l.r.fail(l.ref(column), "“"+column+"” is blank")
	}
	return t
}

// oneOf checks a word against a list, whatever its case.
func (l line) oneOf(column string, valid ...string) schedule.Text {
	t := l.must(column)
	if !t.Had() {
		return t
	}
	k := strings.ToLower(t.Value)
	if !slices.Contains(valid, k) {
		l.r.fail(l.ref(column), "“"+t.Value+"” is not one of "+strings.Join(valid, ", "))
		return t
	}
	t.Value = k
	return t
}

func (r *reader) nameRow(l line) {
	n := schedule.NameRow{At: l.at, Kind: l.oneOf("kind", "header", "value"), Written: l.must("written"), Means: l.must("means"),
		Field: l.text("field"), Files: l.text("files")}
	if n.Kind.Value == "header" && n.Means.Had() {
		r.checkField(n.Means)
	}
	if n.Field.Had() {
		r.checkField(n.Field)
	}
	if n.Files.Had() {
		if _, err := path.Match(n.Files.Value, ""); err != nil {
			r.fail(n.Files.At, "“"+n.Files.Value+"” is no file pattern: * stands for any text, ? for one letter")
		}
	}
	r.book.Names = append(r.book.Names, n)
}

// checkField reports a text that names no field, with the nearest that does.
func (r *reader) checkField(t schedule.Text) {
	if _, ok := vocabulary.Named(t.Value); ok {
		return
	}
	var text strings.Builder
	text.WriteString("“" + t.Value + "” is no field")
	for _, f := range Fields() {
		if join.Alike(join.Key(t.Value), join.Key(f)) {
			text.WriteString("; did you mean “" + f + "”?")
			r.fail(t.At, text.String())
			return
		}
	}
	r.fail(t.At, text.String()+"; the fields are "+strings.Join(Fields(), ", "))
}

// Fields are the names of the fields that a header may mean.
func Fields() []string {
	var out []string
	for _, f := range []vocabulary.Field{vocabulary.Tag, vocabulary.Item, vocabulary.Model, vocabulary.Describe, vocabulary.Maker,
		vocabulary.Room, vocabulary.Floor, vocabulary.Building, vocabulary.Zone, vocabulary.Circuit, vocabulary.Amplifier,
		vocabulary.Channel, vocabulary.Control, vocabulary.Status, vocabulary.Notes, vocabulary.Mounting, vocabulary.Height,
		vocabulary.Use, vocabulary.Kind, vocabulary.Quantity, vocabulary.Tap, vocabulary.TapBefore, vocabulary.TapList, vocabulary.TotalWatts,
		vocabulary.RatedWatts, vocabulary.Impedance, vocabulary.LineVoltage, vocabulary.TapVoltage, vocabulary.ChannelWatts, vocabulary.FrameWatts,
		vocabulary.ChannelCount, vocabulary.ControlWatts, vocabulary.ControlModel, vocabulary.Override, vocabulary.Level,
		vocabulary.Headroom, vocabulary.Load, vocabulary.Measured, vocabulary.MeasuredLoad, vocabulary.BoxDepth, vocabulary.BoxName,
		vocabulary.InsertionLoss, vocabulary.Cable, vocabulary.CableType, vocabulary.Gauge, vocabulary.Material, vocabulary.Conductors,
		vocabulary.Length, vocabulary.From, vocabulary.To, vocabulary.Temperature, vocabulary.AreaNeeded, vocabulary.Route,
		vocabulary.Jacket, vocabulary.Job, vocabulary.JobNo, vocabulary.Site, vocabulary.Client, vocabulary.Revision,
		vocabulary.Date, vocabulary.Author, vocabulary.Price, vocabulary.Ignored} {
		out = append(out, f.String())
	}
	return out
}

func (r *reader) limitRow(l line) {
	n := schedule.LimitRow{At: l.at, Rule: l.must("rule"), Limit: l.must("limit"), Value: l.must("value"), Unit: l.text("unit"),
		Use: l.text("use"), Source: l.text("source")}
	if c := l.cells["value"]; c != nil && c.Kind == grid.Number {
		// as stored, not as a number format rounds it
		n.Value.Value = strconv.FormatFloat(c.Number, 'f', -1, 64)
		if strings.Contains(c.Format(), "%") {
			n.Value.Value = strconv.FormatFloat(math.Round(c.Number*1e12)/1e10, 'f', -1, 64) + " %"
		}
	}
	r.book.Limits = append(r.book.Limits, n)
}

func (r *reader) waiverRow(l line) {
	n := schedule.WaiverRow{At: l.at, Rule: l.must("rule"), Job: l.text("job"), Place: l.text("place"), Reason: l.must("reason"), By: l.text("by")}
	if !n.Job.Had() && !n.Place.Had() {
		r.fail(l.at, "a waiver names a job or a place")
	}
	r.book.Waivers = append(r.book.Waivers, n)
}

// Bounds of what a rating may be: what is beyond them is a slip of the pen.
var bounds = map[string]struct {
	low, high float64
	what      string
}{
	"rated_w":           {0.1, 20000, "0.1 to 20000 W"},
	"taps_w":            {0.01, 2000, "0.01 to 2000 W"},
	"impedance_ohm":     {1, 100000, "1 to 100000 ohm"},
	"channels":          {1, 64, "1 to 64"},
	"frame_w":           {1, 100000, "1 to 100000 W"},
	"box_depth_mm":      {5, 500, "5 to 500 mm"},
	"insertion_loss_db": {0, 12, "0 to 12 dB"},
}

func (r *reader) ratingRow(l line) {
	n := schedule.RatingRow{At: l.at, Model: l.must("model"), Kind: l.oneOf("kind", "loudspeaker", "control", "amplifier")}
	if names := l.text("other_names"); names.Had() {
		for _, name := range strings.FieldsFunc(names.Value, func(c rune) bool { return c == ';' || c == ',' || c == '|' }) {
			if name = strings.TrimSpace(name); name != "" {
				n.OtherNames = append(n.OtherNames, name)
			}
		}
	}
	for _, column := range sortedColumns(l.cols) {
		base, volts := atVolts(column)
		switch base {
		case "rated_w":
			if w, ok := number[schedule.Watts](l, column, base); ok {
				n.Rated = append(n.Rated, schedule.RatingAt{Watts: w, Volts: schedule.Volts(volts)})
			}
		case "taps_w":
			for _, w := range l.list(column) {
				n.Taps = append(n.Taps, schedule.TapOffer{Watts: schedule.Watts(w), Volts: schedule.Volts(volts)})
			}
		}
	}
	n.Impedance, _ = number[schedule.Ohms](l, "impedance_ohm", "impedance_ohm")
	n.Channels, _ = number[schedule.Pieces](l, "channels", "channels")
	if v, ok := n.Channels.Exact(); ok && float64(v) != math.Trunc(float64(v)) {
		r.fail(l.ref("channels"), "a number of channels is whole")
	}
	n.Frame, _ = number[schedule.Watts](l, "frame_w", "frame_w")
	n.BoxDepth, _ = number[schedule.Millimetres](l, "box_depth_mm", "box_depth_mm")
	n.LossDB, _ = number[schedule.Decibels](l, "insertion_loss_db", "insertion_loss_db")
	if n.Model.Had() && n.Kind.Had() {
		r.book.Ratings = append(r.book.Ratings, n)
	}
}

// sortedColumns are the columns of a sheet in a fixed order: the same ratings
// for any line voltage first.
func sortedColumns(cols map[string]int) []string {
	var out []string
	for c := range cols {
		out = append(out, c)
	}
	slices.Sort(out)
	return out
}

// atVolts splits "rated_w_70v" into the column and its line voltage.
func atVolts(column string) (base string, volts float64) {
	for _, base := range []string{"rated_w", "taps_w"} {
		if rest, ok := strings.CutPrefix(column, base); ok {
			v, _ := strconv.ParseFloat(strings.Trim(rest, "_v"), 64)
			return base, v
		}
	}
	return column, 0
}

var errDate = errors.New("the spreadsheet turned it into a date; format the cell as text and type it again")

// figureOf is the number of a cell.
func figureOf(c *grid.Cell) (float64, error) {
	switch c.Kind {
	case grid.Number:
		return c.Number, nil
	case grid.Date:
		return 0, errDate
	}
	return parseFigure(c.Text)
}

// parseFigure reads a plain number with a decimal point or comma, and the unit
// that its column has anyway.
func parseFigure(s string) (float64, error) {
	t := strings.TrimSpace(strings.ToLower(s))
	for _, unit := range []string{"watts", "watt", "ohms", "ohm", "mm", "db", "ω", "w"} {
		t = strings.TrimSpace(strings.TrimSuffix(t, unit))
	}
	if strings.Count(t, ",") == 1 && !strings.Contains(t, ".") {
		t = strings.Replace(t, ",", ".", 1)
	}
	v, err := strconv.ParseFloat(t, 64)
	if err != nil || math.IsNaN(v) || math.IsInf(v, 0) || strings.ContainsAny(t, "xp_") {
		return 0, fmt.Errorf("“%s” is not a number", strings.TrimSpace(s))
	}
	return v, nil
}

// number reads a figure of a rating and checks that it is in bounds.
func number[T ~float64](l line, column, base string) (schedule.Quantity[T], bool) {
	c := l.cells[column]
	if c == nil {
		return schedule.Quantity[T]{}, false
	}
	v, err := figureOf(c)
	if err != nil {
		l.r.fail(l.ref(column), err.Error())
		return schedule.Quantity[T]{}, false
	}
	if b := bounds[base]; v < b.low || v > b.high {
		l.r.fail(l.ref(column), fmt.Sprintf("%s is out of range: %s", strconv.FormatFloat(v, 'f', -1, 64), b.what))
		return schedule.Quantity[T]{}, false
	}
	return schedule.Exactly(T(v), schedule.Source{At: l.ref(column), Written: c.Text, How: schedule.FromHouseBook}), true
}

// list reads taps: "30/15/7.5", "30; 15; 7,5", "5 10 20".
func (l line) list(column string) []float64 {
	c := l.cells[column]
	if c == nil {
		return nil
	}
	if c.Kind != grid.String {
		if w, ok := number[schedule.Watts](l, column, "taps_w"); ok {
			return []float64{float64(w.Low)}
		}
		return nil
	}
	text := c.Text
	split := func(r rune) bool { return r == '/' || r == ';' || r == '|' || r == ' ' || r == '\n' || r == '\u00a0' }
	parts := strings.FieldsFunc(text, split)
	if len(parts) == 1 && strings.Count(text, ",") > 1 || strings.Contains(text, ", ") {
		parts = strings.FieldsFunc(text, func(r rune) bool { return r == ',' || split(r) })
	}
	var out []float64
	for _, p := range parts {
		if strings.EqualFold(p, "w") {
			continue
		}
		v, err := parseFigure(p)
		if err != nil {
			l.r.fail(l.ref(column), err.Error())
			return nil
		}
		if b := bounds["taps_w"]; v < b.low || v > b.high {
			l.r.fail(l.ref(column), fmt.Sprintf("a tap of %s W is out of range: %s", p, b.what))
			return nil
		}
		out = append(out, v)
	}
	return out
}

// crossCheck finds what contradicts itself over several rows: one model rated
// twice, one header with two meanings.
func (r *reader) crossCheck() {
	first := make(map[string]schedule.Ref)
	for _, n := range r.book.Ratings {
		seen := make(map[string]bool)
		for _, name := range append([]string{n.Model.Value}, n.OtherNames...) {
			k := join.Key(name)
			if k == "" || seen[k] {
				continue
			}
			seen[k] = true
			if at, ok := first[k]; ok {
				r.fail(n.Model.At, "the model “"+name+"” is rated in "+at.String()+" already")
				continue
			}
			first[k] = n.Model.At
		}
	}
	type meaning struct {
		at    schedule.Ref
		means string
	}
	headers := make(map[string]meaning)
	for _, n := range r.book.Names {
		k := n.Kind.Value + " " + join.Key(n.Written.Value) + " " + join.Key(n.Field.Value) + " " + n.Files.Value
		if m, ok := headers[k]; ok && m.means != join.Key(n.Means.Value) {
			r.fail(n.Means.At, "“"+n.Written.Value+"” means something else in "+m.at.String())
			continue
		}
		headers[k] = meaning{n.At, join.Key(n.Means.Value)}
	}
}
