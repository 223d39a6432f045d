package layout

import (
	"slices"
	"sync"

	"lineaudit/ingest/vocabulary"
)

// A worth is what each field is worth to one column.
type worth [vocabulary.Fields]float64

// repeatables are the fields that may stand over more than one column.
var repeatables = sync.OnceValue(func() []vocabulary.Field {
	return slices.DeleteFunc(slices.Clone(allFields()), func(f vocabulary.Field) bool { return !repeatable[f] })
})

// kindWeights are how much each kind of table speaks for each field.
var kindWeights = sync.OnceValue(func() map[Kind]*worth {
	m := make(map[Kind]*worth)
	for _, k := range kindOrder {
		weights := &worth{}
		for _, f := range allFields() {
			p, ok := priors()[k][f]
			if !ok && f != vocabulary.Ignored && f != vocabulary.Price {
				p = oddField
			}
			weights[f] = p
		}
		m[k] = weights
	}
	return m
})

// A contest gives fields to columns: a field to one column, but repeatable
// ones and the field Unknown to as many as like.
type contest struct {
	cols            []*heading
	about           Kind      // what the rows are about, "" where that is not plain
	base            []worth   // of each column, the kind aside
	full            []worth   // the same for one kind, aliases included
	own             []float64 // the most that a column can have without rivals, and by which field
	ownBy           []vocabulary.Field
	rivals          []vocabulary.Field // fields that some column would rather have
	linesAreOutputs bool               // each line has an amplifier and a rating and nothing of a cable: it is an output

	gain    [][]float64 // of the rivals, and behind them of what each column can have without
	scratch []float64

	allFields []vocabulary.Field // room for what each kind decides, and what is left of it
	allScores []float64
	fields    []vocabulary.Field
	scores    []float64
	assigner
}

// contests are those that are over, for the sake of their memory.
var contests = sync.Pool{New: func() any { return new(contest) }}

// newContest begins a contest in which no field is worth anything yet.
func newContest(cols []*heading) *contest {
	n, m := len(cols), len(allFields())
	c := contests.Get().(*contest)
	c.cols, c.base, c.full = cols, cleared(c.base, n), cleared(c.full, n)
	c.own, c.ownBy, c.gain = cleared(c.own, n), cleared(c.ownBy, n), cleared(c.gain, n)
	c.scratch = cleared(c.scratch, n*(m+n))
	c.allFields, c.allScores = cleared(c.allFields, n*len(kindOrder)), cleared(c.allScores, n*len(kindOrder))
	c.fields, c.scores = c.allFields, c.allScores
	all := setting(cols)
	c.linesAreOutputs = all.claimed(vocabulary.Amplifier) && !slices.ContainsFunc([]vocabulary.Field{vocabulary.Channel, vocabulary.Length, vocabulary.Gauge, vocabulary.CableType}, all.claimed) &&
		!slices.ContainsFunc(cols, func(h *heading) bool { return h.cells.share(lookJoint) > 0.3 })
	return c
}

// end ends the contest and leaves its memory to the next.
func (c *contest) end() {
	c.cols = nil
	contests.Put(c)
}

// decideAs finds the fields of the columns of a table of a kind whose worth
// together is greatest.
func (c *contest) decideAs(k Kind) decision {
	c.weighAs(k)
	c.findRivals()
	n := len(c.cols)
	d := decision{kind: k, fields: part(&c.fields, n)[:n], scores: part(&c.scores, n)[:n]}
	for i, j := range c.assign(c.gain) {
		if j < len(c.rivals) {
			d.fields[i] = c.rivals[j]
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

// weighAs works out what each field is worth to each column in a table of kind k.
func (c *contest) weighAs(k Kind) {
	weights, others := kindWeights()[k], aliases[k]
	for i, h := range c.cols {
		full, base := &c.full[i], &c.base[i]
		for f := range full {
			full[f] = base[f] + weights[f]
		}
		if k == Controls { // figures beside controls count nothing unless the header says so
			for _, f := range []vocabulary.Field{vocabulary.Quantity, vocabulary.Gauge} {
				if h.of(f) == 0 {
					full[f] = barred
				}
			}
		}
		for _, as := range others {
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
			if v := full[as.from] - weights[as.from] + weights[as.to] + 0.1*h.cells.of(as.to); v > full[as.to] && base[as.from] > unknownGain {
				full[as.to] = v
			}
			full[as.from] -= 0.15
		}
		c.own[i], c.ownBy[i] = unknownGain, vocabulary.Unknown
		for _, f := range repeatables() {
			if full[f] > c.own[i] {
				c.own[i], c.ownBy[i] = full[f], f
			}
		}
	}
}

// barred is a gain that is never taken.
const barred = -5

// findRivals leaves in the contest the fields that some column would have
// rather than what it can have without rivals.
func (c *contest) findRivals() {
	var wanted [vocabulary.Fields]bool
	for i := range c.cols {
		for f, v := range c.full[i] {
			wanted[f] = wanted[f] || v >= c.own[i]
		}
	}
	c.rivals = c.rivals[:0]
	for _, f := range allFields() {
		if wanted[f] && !repeatable[f] {
			c.rivals = append(c.rivals, f)
		}
	}
	n := len(c.cols)
	rest := c.scratch
	for i := range c.cols {
		g := rest[: len(c.rivals)+n : len(c.rivals)+n]
		rest = rest[len(g):]
		for x, f := range c.rivals {
			g[x] = c.full[i][f]
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
	c.weighAs(d.kind)
	for i := range c.cols {
		out[i] = c.runnerUp(d, i)
	}
	return out
}

func (c *contest) runnerUp(d *decision, i int) vocabulary.Field {
	if d.fields[i] == vocabulary.Unknown {
		return vocabulary.Unknown
	}
	best, score := vocabulary.Unknown, d.scores[i]-closeCall
	for _, f := range allFields() {
		worth := c.full[i][f]
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
