package ingest

import (
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// totals reads the rows that state sums, and finds the rows that each sums.
func (b *builder) totals() {
	sums := func(r *row) bool { return r.out == schedule.TotalRow }
	if !slices.ContainsFunc(b.tables, func(t *table) bool { return slices.ContainsFunc(t.rows, sums) }) {
		return
	}
	byRow := make(map[*row][]*schedule.Loudspeaker)
	for _, l := range b.job.Loudspeakers {
		byRow[b.origin[l]] = append(byRow[b.origin[l]], l)
	}
	for _, t := range b.tables {
		if t.shared {
			continue
		}
		b.tableTotals(t, byRow)
	}
}

// factorWritten finds a factor in a total's words: "incl. 20 %", "x 1.2".
var factorWritten = regexp.MustCompile(`(?:(?:incl\.?|inkl\.?|including|mit|plus|\+|y compris|incluido|incl|compreso)\s*(\d{1,3}(?:[.,]\d+)?)\s*%)|(?:[x×*]\s*(1[.,]\d+))`)

func factorIn(text string) float64 { return factorsIn.Of(text, 0) }

var factorsIn = remember.New(4096, func(s string, _ int) float64 { return readFactor(s) })

func readFactor(text string) float64 {
	m := factorWritten.FindStringSubmatch(join.Fold(text))
	if m == nil {
		return 0
	}
	if m[1] != "" {
		if v, err := strconv.ParseFloat(strings.Replace(m[1], ",", ".", 1), 64); err == nil && v > 0 && v <= 100 {
			return 1 + v/100
		}
		return 0
	}
	v, err := strconv.ParseFloat(strings.Replace(m[2], ",", ".", 1), 64)
	if err != nil {
		return 0
	}
	return v
}

// tableTotals reads the totals of one table. A total sums the rows since the
// total before it, those of its section, or all rows above it: the words
// decide, else the arithmetic, else the place.
func (b *builder) tableTotals(t *table, byRow map[*row][]*schedule.Loudspeaker) {
	var all, since []*schedule.Loudspeaker
	var places []rowsByName
	totalsBefore := 0
	for i, r := range t.rows {
		if r.out == "" {
			all = append(all, byRow[r]...)
			since = append(since, byRow[r]...)
			continue
		}
		if r.out != schedule.TotalRow {
			continue
		}
		b.opts.watch.Step()
		watts, count := b.statedSum(r)
		if !watts.Had() && !count.Had() {
			since = nil
			continue
		}
		total := schedule.Total{At: watts.At, Stated: watts, Count: count, Factor: factorIn(r.Text)}
		if !watts.Had() {
			total.At = count.At
		}
		section := sectionRows(t, i, byRow)
		words := join.Fold(r.Text)
		grand := grandWords.in(words) && !subTotalWords.in(words)
		if places == nil {
			places = namesOfPlaces(t, byRow)
		}
		named := namedRows(t, i, places, byRow)
		switch own := sameLines(t, i, byRow); {
		case len(own) > 1:
			total.Rows, total.Of = own, b.nameOfTotal(t, r, false)
			b.job.Totals = append(b.job.Totals, total)
			continue
		case len(all) == 0:
			continue
		case len(named) > 0 && (adds(named, watts, count) || !adds(since, watts, count)):
			total.Rows = named
		case totalsBefore == 0 || len(since) == len(all):
			total.Rows = all
		case grand || len(since) == 0:
			total.Rows = all
		case subTotalWords.in(words):
			total.Rows = since
		case adds(since, watts, count):
			total.Rows = since
		case adds(all, watts, count):
			total.Rows = all
		case adds(section, watts, count):
			total.Rows = section
		case i == len(t.rows)-1 && len(r.Sections) == 0:
			total.Rows = all
		default:
			total.Rows = since
		}
		total.Of = b.nameOfTotal(t, r, len(total.Rows) == len(all))
		b.job.Totals = append(b.job.Totals, total)
		totalsBefore++
		since = nil
	}
}

// sameLines are the loudspeakers of the rows above row i that stand on its own
// lines of the sheet: a row of counts by type, with their watts at its end.
func sameLines(t *table, i int, byRow map[*row][]*schedule.Loudspeaker) []*schedule.Loudspeaker {
	if !t.Matrix {
		return nil
	}
	var out []*schedule.Loudspeaker
	for j := i - 1; j >= 0 && t.rows[j].Rows == t.rows[i].Rows; j-- {
		out = append(out, byRow[t.rows[j]]...)
	}
	slices.Reverse(out)
	return out
}

// sectionRows are the loudspeakers above row i in the same innermost section.
func sectionRows(t *table, i int, byRow map[*row][]*schedule.Loudspeaker) []*schedule.Loudspeaker {
	own := t.rows[i].Sections
	if len(own) == 0 {
		return nil
	}
	var out []*schedule.Loudspeaker
	for _, r := range t.rows[:i] {
		if n := len(r.Sections); n >= len(own) && r.Sections[len(own)-1].At == own[len(own)-1].At {
			out = append(out, byRow[r]...)
		}
	}
	return out
}

// placeFields are the fields by whose values totals are made.
var placeFields = []vocabulary.Field{vocabulary.Circuit, vocabulary.Channel, vocabulary.Zone, vocabulary.Control, vocabulary.Amplifier, vocabulary.Room}

// spacedWords are the folded words of a text with a space around each.
func spacedWords(s string) string { return spaced.Of(s, 0) }

var spaced = remember.New(8192, func(s string, _ int) string { return spaceWords(s) })

func spaceWords(s string) string {
	return " " + strings.Join(strings.FieldsFunc(join.Fold(s), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) }), " ") + " "
}

// rowsByName are the rows of a table that list loudspeakers, by what one column
// of places says of each.
type rowsByName struct {
	names []string // as spacedWords, in the order of their first rows
	rows  map[string][]int
}

// namesOfPlaces are these for each of placeFields, worked out once: a register
// may have a total every few rows.
func namesOfPlaces(t *table, byRow map[*row][]*schedule.Loudspeaker) []rowsByName {
	out := make([]rowsByName, len(placeFields))
	for k, f := range placeFields {
		if !t.has(f) {
			continue // names nothing
		}
		out[k].rows = make(map[string][]int)
		text, name := "", spacedWords("") // of the row before
		for i, r := range t.rows {
			if r.out != "" || len(byRow[r]) == 0 {
				continue
			}
			if s := r.own(f); s.text != text {
				text, name = s.text, spacedWords(s.text)
			}
			if out[k].rows[name] == nil {
				out[k].names = append(out[k].names, name)
			}
			out[k].rows[name] = append(out[k].rows[name], i)
		}
	}
	return out
}

// namedRows are the loudspeakers above row i on the line, in the zone or in the
// place that the total's words name ("Total L1"); none where they name nothing,
// or everything.
func namedRows(t *table, i int, places []rowsByName, byRow map[*row][]*schedule.Loudspeaker) []*schedule.Loudspeaker {
	words := spacedWords(t.rows[i].Text)
	for k := range places {
		var named []int
		others := false
		for _, name := range places[k].names {
			rows := places[k].rows[name]
			above, _ := slices.BinarySearch(rows, i)
			if strings.ContainsFunc(name, unicode.IsLetter) && strings.Contains(words, name) {
				named = append(named, rows[:above]...)
			} else {
				others = others || above > 0
			}
		}
		if len(named) > 0 && others {
			slices.Sort(named)
			var out []*schedule.Loudspeaker
			for _, n := range named {
				out = append(out, byRow[t.rows[n]]...)
			}
			return out
		}
	}
	return nil
}

func (b *builder) nameOfTotal(t *table, r *row, all bool) string {
	if n := len(r.Sections); n > 0 && !all {
		return short(r.Sections[n-1].Text)
	}
	if z := r.own(vocabulary.Zone); z.had() && !all && !grandWords.in(join.Fold(z.text)) {
		return short(z.text)
	}
	if t.Sheet != "" {
		return "sheet " + t.Sheet
	}
	return "the list"
}

// statedSum reads the figures of a total's row: watts, and a number of devices.
func (b *builder) statedSum(r *row) (watts schedule.Quantity[schedule.Watts], count schedule.Quantity[schedule.Pieces]) {
	for _, f := range []vocabulary.Field{vocabulary.TotalWatts, vocabulary.Load, vocabulary.Tap} {
		for _, c := range r.t.byField[f] {
			s := r.at(c)
			if !s.had() || watts.Had() {
				continue
			}
			text, style := b.readable(&s, notDate)
			text = strings.TrimSpace(strings.TrimLeft(text, "=Σ∑: "))
			p, err := notation.ParseWatts(text, style)
			if err != nil {
				continue
			}
			w := p.W
			if p.Doubts.Has(notation.Bare) {
				w *= scaleOfWatts(s.unit())
			}
			watts = schedule.Exactly(schedule.Watts(w), s.source)
		}
	}
	if s := r.own(vocabulary.Quantity); s.had() {
		text, style := b.readable(&s, notDate)
		if n, err := notation.ParseQuantity(text, style); err == nil {
			count = schedule.Exactly(schedule.Pieces(n.Count), s.source)
		}
	}
	if !watts.Had() && !count.Had() {
		// a total typed elsewhere in its row, with its unit
		for _, p := range notation.PowersIn(r.Text, notation.Auto) {
			watts = schedule.Exactly(schedule.Watts(p.W), schedule.Source{At: r.At, Written: r.Text, How: schedule.Stated})
		}
	}
	return watts, count
}

// adds reports whether the rows add up to what a total states.
func adds(list []*schedule.Loudspeaker, watts schedule.Quantity[schedule.Watts], count schedule.Quantity[schedule.Pieces]) bool {
	if len(list) == 0 {
		return false
	}
	w, n := 0.0, 0.0
	for _, l := range list {
		tap, ok1 := l.Tap.Exact()
		c, ok2 := l.Count.Exact()
		if !ok1 && watts.Had() || !ok2 {
			return false
		}
		w, n = w+float64(tap)*float64(c), n+float64(c)
	}
	if watts.Had() {
		return math.Abs(w-float64(watts.Low)) < 0.01*math.Max(1, w)
	}
	return n == float64(count.Low)
}
