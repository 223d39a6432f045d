package layout

import (
	"math"
	"slices"
	"sync"

	"lineaudit/ingest/vocabulary"
)

// unknownGain is what a column is worth when it is given no field: a field must beat it.
const unknownGain = 0.42

// maxColumns bounds the columns of a table that are decided together.
const maxColumns = 80

// repeatable fields may stand over more than one column.
var repeatable = map[vocabulary.Field]bool{vocabulary.Notes: true, vocabulary.Ignored: true, vocabulary.Price: true, vocabulary.Date: true}

// allFields are the fields a column may have, in a fixed order.
var allFields = sync.OnceValue(func() []vocabulary.Field {
	seen := map[vocabulary.Field]bool{}
	var list []vocabulary.Field
	for _, k := range kindOrder {
		for f := range priors()[k] {
			if !seen[f] {
				seen[f] = true
				list = append(list, f)
			}
		}
	}
	for _, f := range []vocabulary.Field{vocabulary.Client, vocabulary.Author, vocabulary.Site, vocabulary.Price, vocabulary.Ignored} {
		if !seen[f] {
			list = append(list, f)
		}
	}
	slices.Sort(list)
	return list
})

// A decision is the kind of a table and the fields of its columns.
type decision struct {
	kind       Kind
	confidence float64
	fields     []vocabulary.Field
	scores     []float64
	runners    []vocabulary.Field
	total      float64
}

// decide finds the kind and the fields of all columns together: for each kind
// the best assignment of fields to columns, and of these the best.
func decide(cols []*heading, title map[Kind]float64, products []product) decision {
	considered := cols
	if len(considered) > maxColumns {
		considered = considered[:maxColumns]
	}
	fields := allFields()
	base := make([][]float64, len(considered))
	placed := places(considered)
	for i, h := range considered {
		base[i] = make([]float64, len(fields))
		for j, f := range fields {
			base[i][j] = h.gain(f) + neighbour(considered, i, f)
			if f != vocabulary.Unknown && placed[i] == f {
				base[i][j] += placeBonus
			}
			switch {
			case f == vocabulary.ControlWatts && base[i][j] > 0:
				base[i][j] += controlRows * float64(setting(considered).withControls(h))
			case f == vocabulary.ChannelWatts && base[i][j] > 0:
				base[i][j] -= controlRows * float64(max(0, setting(considered).withControls(h)))
			}
		}
	}
	for _, p := range products {
		p.apply(base, fields)
	}
	dampen(considered, base, fields)
	withControls(considered, base, fields)
	counts(considered, base, fields)
	countTotals(considered, base, fields)
	var best decision
	second := math.Inf(-1)
	for _, k := range kindOrder {
		d := decideAs(k, considered, fields, base)
		d.total += title[k]
		if best.fields == nil || d.total > best.total {
			if best.fields != nil {
				second = max(second, best.total)
			}
			best = d
		} else {
			second = max(second, d.total)
		}
	}
	best.confidence = min(1, max(0.3, 0.6+0.8*(best.total-second)))
	for range len(cols) - len(considered) {
		best.fields = append(best.fields, vocabulary.Unknown)
		best.scores = append(best.scores, 0)
		best.runners = append(best.runners, vocabulary.Unknown)
	}
	return best
}

func decideAs(k Kind, cols []*heading, fields []vocabulary.Field, base [][]float64) decision {
	prior := priors()[k]
	index := map[vocabulary.Field]int{}
	for j, f := range fields {
		index[f] = j
	}
	// One place for each field, one more for each column and repeatable field,
	// and one for each column to stay unknown.
	type place struct {
		field vocabulary.Field
		col   int // only for this column, else -1
	}
	var places []place
	for _, f := range fields {
		if !repeatable[f] {
			places = append(places, place{f, -1})
		}
	}
	for i := range cols {
		places = append(places, place{vocabulary.Unknown, i})
		for _, f := range fields {
			if repeatable[f] {
				places = append(places, place{f, i})
			}
		}
	}
	weight := func(f vocabulary.Field) float64 {
		p, ok := prior[f]
		if !ok && f != vocabulary.Ignored && f != vocabulary.Price {
			p = oddField
		}
		return p
	}
	gain := make([][]float64, len(cols))
	full := make([][]float64, len(cols)) // by field, aliases included
	for i := range cols {
		full[i] = make([]float64, len(fields))
		for j := range fields {
			full[i][j] = base[i][j] + weight(fields[j])
		}
		for from, to := range aliases[k] {
			a, b := index[from], index[to]
			if from == vocabulary.Tap && (cols[i].of(to) == 0 || cols[i].of(from) == 0) {
				continue // a tap in so many words is nothing else
			}
			least := 0.3
			if to == vocabulary.Control {
				least = 0.5
			}
			if textual[from] && cols[i].cells.of(to) < least {
				continue // its cells name no such thing
			}
			if v := full[i][a] - weight(from) + weight(to) + 0.1*cols[i].cells.of(to); v > full[i][b] && base[i][a] > unknownGain {
				full[i][b] = v
			}
			full[i][a] -= 0.15
		}
		gain[i] = make([]float64, len(places))
		for j, p := range places {
			switch {
			case p.col >= 0 && p.col != i:
				gain[i][j] = -5
			case p.field == vocabulary.Unknown:
				gain[i][j] = unknownGain
			default:
				gain[i][j] = full[i][index[p.field]]
			}
		}
	}
	d := decision{kind: k}
	have := map[vocabulary.Field]bool{}
	for i, j := range assign(gain) {
		f := places[j].field
		d.fields = append(d.fields, f)
		d.scores = append(d.scores, gain[i][j])
		d.total += gain[i][j] - unknownGain
		have[f] = true
	}
	for _, group := range needs[k] {
		if !slices.ContainsFunc(group, func(f vocabulary.Field) bool { return have[f] }) {
			d.total -= 1
		}
	}
	d.total += fitKind(k, cols, d.fields)
	for i := range cols {
		d.runners = append(d.runners, runnerUp(d, i, fields, full))
	}
	return d
}

// closeCall is how near the second-best reading must come to be told.
const closeCall = 0.1

// siblings are pairs of fields that are read alike, so that nothing hangs on which of them a column is.
var siblings = map[[2]vocabulary.Field]bool{
	{vocabulary.CableType, vocabulary.Gauge}: true, {vocabulary.Load, vocabulary.TotalWatts}: true, {vocabulary.Describe, vocabulary.Kind}: true,
	{vocabulary.Describe, vocabulary.Model}: true, {vocabulary.Site, vocabulary.Building}: true, {vocabulary.Ignored, vocabulary.Price}: true,
	{vocabulary.Notes, vocabulary.Ignored}: true, {vocabulary.ControlModel, vocabulary.Model}: true, {vocabulary.Item, vocabulary.Ignored}: true,
}

// runnerUp is the field that column i could as well have had.
func runnerUp(d decision, i int, fields []vocabulary.Field, full [][]float64) vocabulary.Field {
	if d.fields[i] == vocabulary.Unknown {
		return vocabulary.Unknown
	}
	best, score := vocabulary.Unknown, d.scores[i]-closeCall
	for j, f := range fields {
		if f == d.fields[i] || full[i][j] <= score || full[i][j] < unknownGain {
			continue
		}
		if siblings[[2]vocabulary.Field{f, d.fields[i]}] || siblings[[2]vocabulary.Field{d.fields[i], f}] {
			continue
		}
		// A field that another column has with more right is no rival.
		taken := false
		for o, g := range d.fields {
			if o != i && g == f && d.scores[o] >= full[i][j] {
				taken = true
			}
		}
		if !taken {
			best, score = f, full[i][j]
		}
	}
	return best
}
