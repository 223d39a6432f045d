package layout

import (
	"maps"
	"math"
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// Columns that come once for each of two or more circuits, lines or outputs:
// "Circuit A" and "Circuit B" over a quantity, a tap and a load each; "Qty A",
// "Qty B", "Load A", "Load B". A row of such a table is a row for each letter.

// reLetter takes a header apart into words and the letter, or word for a side, behind them.
var reLetterEnd = regexp.MustCompile(`^(.*?)[\s:._-]*(?:\b([A-D])|\b(left|right|links|rechts|gauche|droite|izq(?:uierda)?|der(?:echa)?|sinistra|destra)\.?)$`)

// reLetterMid takes "Circuit A qty" apart into a word, its letter and what is told of it.
var reLetterMid = regexp.MustCompile(`^((\pL+)[\s.-]*([A-D]))\b[\s:._-]*(\S.*)$`)

// reLetterAhead takes "A circuit" or "A circuit (Nr)" apart into its letter, the
// word behind it and what is told of it.
var reLetterAhead = regexp.MustCompile(`^([A-D])[\s.-]+(\pL{2,})(?:\s*\((.+)\))?$`)

// reTypeAhead takes "LS1 qty" apart into the mark of a type and what is told of it.
var reTypeAhead = regexp.MustCompile(`^(\p{Lu}{1,4}[- ]?\d{1,2}|(?i:type|typ|tipo)\s+(?-i:[A-H]|\d{1,2}))[\s:._-]+(\pL[\pL .()/]*)$`)

// typeAhead parts a header from the mark of a type of loudspeakers in front of it; both are
// "" where there is none.
func typeAhead(t string) (mark, metric string) {
	if !anyDigit(t) && !strings.HasPrefix(t, "T") && !strings.HasPrefix(t, "t") {
		return "", "" // most headers have no number
	}
	x := typesAhead.Of(t, 0)
	return x.mark, x.metric
}

// typesAhead remembers the marks of types in front of headers.
var typesAhead = remember.New(2048, func(t string, _ int) (x struct{ mark, metric string }) {
	m := reTypeAhead.FindStringSubmatch(t)
	if m == nil || notation.KeyOf(m[1]).Kind != notation.KeyLoudspeaker && strings.IndexByte(m[1], ' ') < 0 {
		return x
	}
	x.mark, x.metric = m[1], vocabulary.Fold(m[2])
	return x
})

// reLetters finds letters of several circuits behind a word.
var reLetters = regexp.MustCompile(`[\s(][A-D](?:\s*[/,&+|]\s*[A-D])+\)?$`)

// onWords are words that stand over a count: so many "on A".
var onWords = map[string]bool{"on": true, "auf": true, "an": true, "sur": true, "en": true, "su": true, "op": true, "to": true}

// A pairing says which columns of a table come once for each letter.
type pairing struct {
	letters []string         // in the order of the columns
	labels  []string         // what stands over each, as written: "Circuit A"
	metrics []string         // folded words of what comes once for each
	index   map[[2]int]int   // letter and metric -> index of the heading
	shown   []*heading       // the headings of the metrics, for the first letter
	field   vocabulary.Field // what the letters tell apart
	heads   []*heading       // a heading with the label of each letter
	at      [][]int          // letter, metric -> sheet column
	each    map[int]bool     // sheet columns whose cells name one thing for each letter: "P1 / P2" below "Amplifier A / B"
}

// A letteredHead is the metric of a heading, folded, the letter it belongs to, and the words with the letter.
type letteredHead struct{ metric, letter, label string }

func lettered(h *heading) (metric, letter, label string) {
	if len(h.parts) == 1 && h.words == h.parts[0] {
		head := letteredHeads.Of(h.words, 0)
		return head.metric, head.letter, head.label
	}
	return readLettered(h)
}

func readLettered(h *heading) (metric, letter, label string) {
	if len(h.parts) == 0 {
		return "", "", ""
	}
	last := h.parts[len(h.parts)-1]
	if reLetters.MatchString(last) {
		return vocabulary.Fold(h.words), "", "" // "Amplifier A / B" is of both
	}
	if mark, metric := typeAhead(last); metric != "" {
		return metric, mark, mark
	}
	if m := letterMid.Of(last, 0); m != nil && sectionField(m[2]+" "+m[3]) == vocabulary.Circuit {
		return vocabulary.Fold(m[4]), m[3], m[1]
	}
	if m := reLetterAhead.FindStringSubmatch(h.parts[0]); m != nil && sectionField(m[2]+" "+m[1]) == vocabulary.Circuit {
		switch {
		case m[3] != "" && len(h.parts) == 1:
			return vocabulary.Fold(m[3]), m[1], m[1] + " " + m[2]
		case m[3] == "" && len(h.parts) > 1:
			return vocabulary.Fold(last), m[1], h.parts[0]
		}
	}
	if m := letterEnd.Of(last, 0); m != nil && (m[2] != "" || m[3] != "") {
		metric = m[1]
		label = last
		if len(h.parts) > 1 {
			metric = h.parts[0]
		}
		return vocabulary.Fold(metric), strings.ToUpper(m[2] + m[3]), label
	}
	if len(h.parts) > 1 {
		if m := letterEnd.Of(h.parts[0], 0); m != nil && (m[2] != "" || m[3] != "") {
			return vocabulary.Fold(last), strings.ToUpper(m[2] + m[3]), h.parts[0]
		}
	}
	return vocabulary.Fold(h.words), "", ""
}

// twins looks for columns that come once for each letter: at least two things
// for each of two letters or more, one of them a figure.
func (f *finder) twins(cols []*heading) *pairing {
	p := &pairing{index: map[[2]int]int{}}
	type place struct{ metric, letter, label string }
	places := make([]place, len(cols))
	times := map[string]int{}
	for i, h := range cols {
		if h.forced != vocabulary.Unknown {
			return nil
		}
		m, l, label := lettered(h)
		places[i] = place{m, l, label}
		if l != "" && m != "" && !slices.Contains(p.letters, l) {
			p.letters = append(p.letters, l)
			p.labels = append(p.labels, label)
		}
		times[m]++
	}
	k := len(p.letters)
	if k < 2 || k > 4 {
		return nil
	}
	last := -1
	for i := range places {
		pl := &places[i]
		if pl.letter != "" {
			last = slices.Index(p.letters, pl.letter)
		} else if last >= 0 && times[pl.metric] == k && pl.metric != "" {
			pl.letter = p.letters[last] // "on A", "circuit", "on B", "circuit"
		}
		if pl.letter == "" || pl.metric == "" {
			continue
		}
		m := slices.Index(p.metrics, pl.metric)
		if m < 0 {
			m = len(p.metrics)
			p.metrics = append(p.metrics, pl.metric)
		}
		at := [2]int{slices.Index(p.letters, pl.letter), m}
		if _, twice := p.index[at]; twice {
			return nil
		}
		p.index[at] = i
	}
	figures := false
	for m := range p.metrics {
		for l := range k {
			i, ok := p.index[[2]int{l, m}]
			if !ok {
				return nil
			}
			figures = figures || cols[i].cells.share(lookNumber|lookWatts|lookCount) > 0.5
		}
	}
	if !figures || len(p.metrics) < 2 && !f.counted(p.metrics[0]) {
		return nil
	}
	all := setting(cols)
	if all.claimed(vocabulary.Quantity) && !slices.ContainsFunc(p.metrics, func(m string) bool { return f.s.Header(m).Best().Field == vocabulary.Quantity || onWords[m] }) {
		count := p.divided(cols)
		if count == nil || slices.ContainsFunc([]vocabulary.Field{vocabulary.Channel, vocabulary.Circuit, vocabulary.Amplifier}, all.claimed) {
			for _, i := range p.index { // one count for both: what each line draws of it is no figure of the row
				cols[i].forced, cols[i].aside = vocabulary.Ignored, "what one of "+strings.Join(p.letters, ", ")+" draws of the row"
			}
			return nil
		}
		count.forced, count.aside = vocabulary.Ignored, "what "+strings.Join(p.letters, ", ")+" draw together: the watts of each tell how many hang on it"
		defer func() { p.shown[0].forced, p.shown[0].aside = vocabulary.TotalWatts, "of the row's count and tap" }()
	}
	p.field = vocabulary.Circuit
	if all.claimed(vocabulary.Amplifier) && !all.claimed(vocabulary.Channel) && !all.claimed(vocabulary.Circuit) {
		p.field = vocabulary.Channel
	}
	ofTypes := !slices.ContainsFunc(p.labels, func(l string) bool { _, metric := typeAhead(l + " x"); return metric == "" })
	if ofTypes {
		p.field = vocabulary.Model
		if first, _, _ := strings.Cut(p.metrics[0], " "); len(p.metrics) == 1 && first == "w" {
			return nil // "Horn 15 W", "Horn 6 W": a figure and its unit belong together
		}
	}
	for l, label := range p.labels {
		if ofTypes {
			break
		}
		if field := sectionField(label); field != vocabulary.Unknown {
			p.field = field
		} else {
			p.labels[l] = p.letters[l] // "Load A": the letter names the line
		}
	}
	p.prepare(f, cols)
	return p
}

// divided finds the column that counts the loudspeakers of all letters together, where the watts
// below each letter are those of a whole number of them and add up to count times tap, in every row.
func (p *pairing) divided(cols []*heading) *heading {
	var count, tap *heading
	among := slices.Collect(maps.Values(p.index))
	for i, h := range cols {
		switch {
		case slices.Contains(among, i) || h.score < named:
		case h.top == vocabulary.Quantity:
			count = h
		case h.top == vocabulary.Tap:
			tap = h
		}
	}
	if len(p.metrics) != 1 || count == nil || tap == nil {
		return nil
	}
	figure := func(h *heading, n int) float64 {
		t, _ := h.cells.in(n)
		v, _ := factor(t)
		return v
	}
	rows := map[int]bool{}
	for _, i := range among {
		for _, n := range cols[i].cells.lines {
			rows[n] = true
		}
	}
	for n := range rows {
		one, sum := figure(tap, n), 0.0
		for _, i := range among {
			w := figure(cols[i], n)
			if one == 0 || math.Abs(w/one-math.Round(w/one)) > 0.01 {
				return nil
			}
			sum += w
		}
		if math.Abs(sum-one*figure(count, n)) > 0.01*sum {
			return nil
		}
	}
	if len(rows) < 2 {
		return nil
	}
	return count
}

// counted reports whether folded header words mean a count or a power, which may come once for each letter by itself.
func (f *finder) counted(words string) bool {
	switch h := f.s.Header(words).Best(); h.Field {
	case vocabulary.Quantity, vocabulary.Tap, vocabulary.TotalWatts, vocabulary.Load, vocabulary.ChannelWatts:
		return h.Score >= named
	}
	return false
}

// prepare makes the headings that stand for all letters.
func (p *pairing) prepare(f *finder, cols []*heading) {
	p.at = make([][]int, len(p.letters))
	for l := range p.letters {
		p.heads = append(p.heads, cols[p.index[[2]int{l, 0}]])
		for m := range p.metrics {
			p.at[l] = append(p.at[l], cols[p.index[[2]int{l, m}]].col)
		}
	}
	for m, words := range p.metrics {
		first := cols[p.index[[2]int{0, m}]]
		h := *first
		for l := range p.letters { // the letter with the most cells speaks for all
			if o := cols[p.index[[2]int{l, m}]]; o.cells.cells > h.cells.cells {
				h.cells = o.cells
			}
		}
		if onWords[words] && h.cells.share(lookSmall|lookCount) > 0.8 {
			words = "qty"
		}
		h.parts = []string{p.written(first, words)}
		h.unit, h.volts = "", 0
		if keyed[h.top] { // of the letter's line rather than of what stands below it
			h.said = nil
		}
		h.read(f.s)
		h.own = h.cells.of(h.top)
		p.shown = append(p.shown, &h)
	}
	p.numbersLines(cols)
}

// listsLoudspeakers reports whether what comes once for each letter has a count and a tap.
func (p *pairing) listsLoudspeakers() bool {
	names := func(f vocabulary.Field) bool {
		return slices.ContainsFunc(p.shown, func(h *heading) bool { return h.top == f && h.score >= named })
	}
	return names(vocabulary.Quantity) && names(vocabulary.Tap)
}

// written are the words of a metric as they stand in a heading, its unit included.
func (p *pairing) written(h *heading, words string) string {
	for _, part := range h.parts {
		if vocabulary.Fold(part) == words {
			return part
		}
	}
	if m := letterEnd.Of(h.parts[len(h.parts)-1], 0); m != nil && vocabulary.Fold(m[1]) == words {
		return m[1]
	}
	return words
}

// eachOf makes a heading without the letters of one whose cells name something for
// each of them, "Amplifier A / B"; h itself where it is none.
func (p *pairing) eachOf(f *finder, h *heading) *heading {
	if len(h.parts) == 0 {
		return h
	}
	last := strings.Trim(h.parts[len(h.parts)-1], "() ")
	list := regexp.MustCompile(`^(\pL.*?)[\s(]+` + strings.Join(p.letters, `\s*[/,&+|-]\s*`) + `\)?$`).FindStringSubmatch(last)
	if list == nil {
		return h
	}
	for i, k := range h.cells.looks {
		if t := h.cells.texts[i]; k&lookMissing == 0 && len(p.parts(t)) != len(p.letters) {
			return h
		}
	}
	one := *h
	one.parts, one.unit, one.volts, one.said = []string{list[1]}, "", 0, nil
	one.read(f.s)
	one.own = one.cells.of(one.top)
	if p.each == nil {
		p.each = map[int]bool{}
	}
	p.each[h.col] = true
	return &one
}

// parts divides the text of such a cell.
func (p *pairing) parts(t string) []string {
	return rePairParts.Split(strings.TrimSpace(t), -1)
}

// rePairParts is what stands between the names for one letter and another.
var rePairParts = regexp.MustCompile(`\s*[/|&+,]\s*`)

// cols are the headings of the table with those of the metrics once each, where the first letter has them.
func (p *pairing) cols(f *finder, all []*heading) []*heading {
	var out []*heading
	taken := map[int]bool{}
	for at, i := range p.index {
		if taken[i] = true; at[0] == 0 {
			taken[i] = false
		}
	}
	for i, h := range all {
		if taken[i] {
			continue
		}
		for m := range p.metrics {
			if p.index[[2]int{0, m}] == i {
				h = p.shown[m]
			}
		}
		out = append(out, p.eachOf(f, h))
	}
	return out
}

// unpair makes of each row a record for each letter that it says something of.
func (f *finder) unpair(t *Table, p *pairing) {
	column := make([]int, len(p.metrics)) // of the table
	labelled := true
	for j := range t.Columns {
		if m := slices.Index(p.at[0], t.Columns[j].Col); m >= 0 {
			column[m] = j
			switch t.Columns[j].Field {
			case p.field, vocabulary.Circuit, vocabulary.Channel:
				labelled = false // each letter names its own line
			}
		}
	}
	t.Matrix = true
	if labelled {
		t.Columns = append(t.Columns, Column{At: f.p.ref(p.heads[0].at, p.heads[0].col), Header: strings.Join(p.labels, ", "), Field: p.field, Confidence: 0.8,
			Evidence: "the same columns come once for each"})
	}
	var out []Record
	for i := range t.Records {
		r := t.Records[i]
		lines := f.p.within(r.Rows.First, r.Rows.First)
		if r.Class != Device && r.Class != Struck && r.Class != Hidden || len(lines) == 0 {
			r.Values = pad(r.Values, len(t.Columns))
			if r.Class == Total { // sums of one letter are no sums of the rows
				for _, j := range column {
					r.Values[j] = Value{At: r.Values[j].At}
				}
			}
			out = append(out, r)
			continue
		}
		made := false
		for l := range p.letters {
			one := r
			one.Values = pad(r.Values, len(t.Columns))
			filled := false
			for m, j := range column {
				v := Value{At: f.p.ref(r.Rows.First, p.at[l][m])}
				if c := lines[0].at(p.at[l][m]); !c.blank() {
					v.Cell, v.Text = c.Cell, text(c)
					if v.Text != "" {
						v.How = schedule.Stated
					}
					filled = filled || !noCount(c) && v.Text != "0 W"
				}
				one.Values[j] = v
			}
			if !filled {
				continue
			}
			for j := range t.Columns {
				if v := &one.Values[j]; p.each[t.Columns[j].Col] && v.Text != "" {
					if parts := p.parts(v.Text); len(parts) == len(p.letters) {
						v.Text, v.Because = parts[l], "the one for "+p.letters[l]
					}
				}
			}
			one.At = f.p.ref(r.Rows.First, p.at[l][0])
			if labelled {
				h := p.heads[l]
				one.Values[len(t.Columns)-1] = Value{Cell: headerCellOf(f, h), At: f.p.ref(h.at, h.col), Text: p.labels[l], How: schedule.Stated}
			}
			out = append(out, one)
			made = true
		}
		if !made {
			r.Class, r.Reason, r.Text = NoDevice, "nothing on any of "+strings.Join(p.labels, ", "), summary(lines[0].slots)
			r.Values = pad(r.Values, len(t.Columns))
			out = append(out, r)
		}
	}
	t.Records = out
}
