package layout

import (
	"slices"
	"sync"

	"lineaudit/ingest/vocabulary"
)

// fieldNumbers is the place of each field in allFields.
var fieldNumbers = sync.OnceValue(func() map[vocabulary.Field]int {
	m := make(map[vocabulary.Field]int)
	for j, f := range allFields() {
		m[f] = j
	}
	return m
})

// repeatableNumbers are the places of the repeatable fields in allFields.
var repeatableNumbers = sync.OnceValue(func() []int {
	var list []int
	for j, f := range allFields() {
		if repeatable[f] {
			list = append(list, j)
		}
	}
	return list
})

// kindWeights are how much each kind of table speaks for each field, in the order of allFields.
var kindWeights = sync.OnceValue(func() map[Kind][]float64 {
	m := make(map[Kind][]float64)
	for _, k := range kindOrder {
		weights := make([]float64, len(allFields()))
		for j, f := range allFields() {
			p, ok := priors()[k][f]
			if !ok && f != vocabulary.Ignored && f != vocabulary.Price {
				p = oddField
			}
			weights[j] = p
		}
		m[k] = weights
	}
	return m
})

// A contest gives fields to columns: a field to one column, but repeatable
// ones and the field Unknown to as many as like.
type contest struct {
	cols            []*heading
	about           Kind        // what the rows are about, "" where that is not plain
	base            [][]float64 // what each field is worth to each column, the kind aside
	full            [][]float64 // the same for one kind, aliases included
	own             []float64   // the most that a column can have without rivals, and by which field
	ownBy           []vocabulary.Field
	rivals          []int // fields that some column would rather have
	linesAreOutputs bool  // each line has an amplifier and a rating and nothing of a cable: it is an output

	gain    [][]float64 // of the rivals, and behind them of what each column can have without
	scratch []float64
}

func newContest(cols []*heading, about Kind, base [][]float64) *contest {
	n, m := len(cols), len(allFields())
	c := &contest{cols: cols, about: about, base: base, full: make([][]float64, n), own: make([]float64, n), ownBy: make([]vocabulary.Field, n),
		gain: make([][]float64, n), scratch: make([]float64, n*(2*m+n))}
	all := setting(cols)
	c.linesAreOutputs = all.claimed(vocabulary.Amplifier) && !slices.ContainsFunc([]vocabulary.Field{vocabulary.Channel, vocabulary.Length, vocabulary.Gauge, vocabulary.CableType}, all.claimed) &&
		!slices.ContainsFunc(cols, func(h *heading) bool { return h.cells.share(lookJoint) > 0.3 })
	for i := range cols {
		c.full[i], c.scratch = c.scratch[:m:m], c.scratch[m:]
	}
	return c
}

// decideAs finds the fields of the columns of a table of a kind whose worth
// together is greatest.
func (c *contest) decideAs(k Kind) decision {
	for i := range c.cols {
		c.weigh(i, k)
	}
	c.findRivals()
	d := decision{kind: k, fields: make([]vocabulary.Field, len(c.cols)), scores: make([]float64, len(c.cols))}
	for i, j := range assign(c.gain) {
		if j < len(c.rivals) {
			d.fields[i] = allFields()[c.rivals[j]]
		} else {
			d.fields[i] = c.ownBy[i]
		}
		d.scores[i] = c.gain[i][j]
		d.total += c.gain[i][j] - unknownGain
	}
	for _, group := range needs[k] {
		if !slices.ContainsFunc(group, func(f vocabulary.Field) bool { return slices.Contains(d.fields, f) }) {
			d.total -= 1
		}
	}
	d.total += fitKind(k, c.about, c.cols, d.fields)
	return d
}

// weigh works out what each field is worth to column i in a table of kind k.
func (c *contest) weigh(i int, k Kind) {
	h, full, base, weights := c.cols[i], c.full[i], c.base[i], kindWeights()[k]
	for j := range full {
		full[j] = base[j] + weights[j]
	}
	for _, f := range []vocabulary.Field{vocabulary.Quantity, vocabulary.Gauge} {
		if k == Controls && h.of(f) == 0 {
			full[fieldNumbers()[f]] = barred // figures beside controls count nothing unless the header says so
		}
	}
	for _, as := range aliases[k] {
		a, b := fieldNumbers()[as.from], fieldNumbers()[as.to]
		if as.from == vocabulary.Tap && (h.ofLoudspeakers || h.of(as.to) == 0 || h.of(as.from) == 0) {
			continue // a tap in so many words is nothing else
		}
		if as.from == vocabulary.Circuit && !c.linesAreOutputs {
			continue
		}
		least := 0.3
		if as.to == vocabulary.Control {
			least = 0.5
		}
		if textual[as.from] && h.cells.of(as.to) < least {
			continue // its cells name no such thing
		}
		if v := full[a] - weights[a] + weights[b] + 0.1*h.cells.of(as.to); v > full[b] && base[a] > unknownGain {
			full[b] = v
		}
		full[a] -= 0.15
	}
	c.own[i], c.ownBy[i] = unknownGain, vocabulary.Unknown
	for _, j := range repeatableNumbers() {
		if full[j] > c.own[i] {
			c.own[i], c.ownBy[i] = full[j], allFields()[j]
		}
	}
}

// barred is a gain that is never taken.
const barred = -5

// findRivals leaves in the contest the fields that some column would have
// rather than what it can have without rivals.
func (c *contest) findRivals() {
	c.rivals = c.rivals[:0]
	for j, f := range allFields() {
		if repeatable[f] {
			continue
		}
		for i := range c.cols {
			if c.full[i][j] >= c.own[i] {
				c.rivals = append(c.rivals, j)
				break
			}
		}
	}
	n := len(c.cols)
	rest := c.scratch
	for i := range c.cols {
		g := rest[: len(c.rivals)+n : len(c.rivals)+n]
		rest = rest[len(g):]
		for x, j := range c.rivals {
			g[x] = c.full[i][j]
		}
		for o := range n {
			g[len(c.rivals)+o] = barred
		}
		g[len(c.rivals)+i] = c.own[i]
		c.gain[i] = g
	}
}

// closeCall is how near the second-best reading must come to be told.
const closeCall = 0.1

// siblings are pairs of fields that are read alike, so that nothing hangs on which of them a column is.
var siblings = map[[2]vocabulary.Field]bool{
	{vocabulary.CableType, vocabulary.Gauge}: true, {vocabulary.Load, vocabulary.TotalWatts}: true, {vocabulary.Describe, vocabulary.Kind}: true,
	{vocabulary.Describe, vocabulary.Model}: true, {vocabulary.Site, vocabulary.Building}: true, {vocabulary.Ignored, vocabulary.Price}: true,
	{vocabulary.Notes, vocabulary.Ignored}: true, {vocabulary.ControlModel, vocabulary.Model}: true, {vocabulary.Item, vocabulary.Ignored}: true,
}

// runnersUp are the fields that the columns could as well have had.
func (c *contest) runnersUp(d *decision) []vocabulary.Field {
	out := make([]vocabulary.Field, len(c.cols))
	for i := range c.cols {
		c.weigh(i, d.kind)
		out[i] = c.runnerUp(d, i)
	}
	return out
}

func (c *contest) runnerUp(d *decision, i int) vocabulary.Field {
	if d.fields[i] == vocabulary.Unknown {
		return vocabulary.Unknown
	}
	best, score := vocabulary.Unknown, d.scores[i]-closeCall
	for j, f := range allFields() {
		worth := c.full[i][j]
		if f == d.fields[i] || worth <= score || worth < unknownGain {
			continue
		}
		if siblings[[2]vocabulary.Field{f, d.fields[i]}] || siblings[[2]vocabulary.Field{d.fields[i], f}] {
			continue
		}
		// A field that another column has with more right is no rival.
		taken := false
		for o, g := range d.fields {
			if o != i && g == f && d.scores[o] >= worth {
				taken = true
			}
		}
		if !taken {
			best, score = f, worth
		}
	}
	return best
}
