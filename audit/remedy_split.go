package audit

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
)

// mostControls is how many controls of the present rating a split may take;
// beyond that, another rating is the better answer.
const mostControls = 6

// split shares the loudspeakers of a control over the fewest controls of the
// same rating, as evenly as they allow.
func (p *repair) split(i int) {
	c := p.c
	n, k := &c.controls[i], p.x.Job.Controls[i]
	limit := c.carries(i)
	if len(n.downward) > 0 || k.Stereo.Yes || !n.load.Watts.exact() || !(limit > 0) {
		return
	}
	if q, ok := k.Count.Exact(); ok && q > 1 {
		return
	}
	var items []packItem
	for _, m := range n.members {
		r := &c.rows[m.row]
		if r.part != counts || r.out != notOut {
			continue
		}
		if !r.count.exact() || !r.each.exact() || !m.share.exact() || r.count.Low != math.Trunc(r.count.Low) {
			return
		}
		for range int(math.Min(r.count.Low, 10_000)) {
			items = append(items, packItem{r.each.Low, m.row})
		}
	}
	with, source := available{watts: n.rating.nominal.Low}, "the present rating"
	var bins [][]packItem
	if n.rating.fit != exceeded {
		bins = pack(items, limit, mostControls)
	}
	if bins == nil { // with the largest control there is, then
		with = c.largestControl(n.lineV)
		limit = with.watts * c.lowestLimit("control-overload", n.emergency) / 100
		source = with.source
		if bins = pack(items, limit, mostControls); bins == nil {
			p.not("more than %d controls of %s W would be needed", mostControls, figure(with.watts))
			return
		}
	}
	if p.try(func(j *trial) {
		if with.source != "" {
			setControl(j.Control(k), with, n.lineV)
		}
		p.c.splitControl(j, k, bins)
	}, k) == nil {
		return
	}
	rated := with.watts
	if with.source == "" {
		rated = n.rating.watts.Low
	}
	var loads []string
	worst := 0.0
	for _, b := range bins {
		loads = append(loads, counted(float64(len(b)), "loudspeaker")+", "+figure(packed(b))+" W")
		worst = math.Max(worst, packed(b))
	}
	p.keep(Remedy{Kind: "split", Change: fmt.Sprintf("split %s over %d controls of %s W: %s", k.Name, len(bins), figure(with.watts), strings.Join(loads, " + ")),
		Short: fmt.Sprintf("split over %d controls", len(bins)), Part: fmt.Sprintf("%d x control, %s W", partsNeeded(bins, with), figure(with.watts)),
		Before: n.share(), After: 100 * worst / rated, Unit: "% of rating", Effect: fmt.Sprintf("the fullest carries %s W of %s W", figure(worst), figure(rated)),
		Source: source})
}

// partsNeeded is the number of controls to bring: the one that is there stays
// when it has the rating.
func partsNeeded(bins [][]packItem, with available) int {
	if with.source == "" {
		return len(bins) - 1
	}
	return len(bins)
}

// A packItem is one loudspeaker of a row.
type packItem struct {
	watts float64
	row   int
}

func packed(items []packItem) float64 {
	sum := 0.0
	for _, it := range items {
		sum += it.watts
	}
	return sum
}

// pack puts items into the fewest bins of limit watts, at most most of them,
// and levels those out. Nil when it takes more.
func pack(items []packItem, limit float64, most int) [][]packItem {
	slices.SortStableFunc(items, func(a, b packItem) int { return cmp.Compare(b.watts, a.watts) })
	if len(items) == 0 || past(items[0].watts, limit) {
		return nil
	}
	least := max(2, int(math.Ceil(packed(items)/limit-tolerance)))
	for n := least; n <= min(most, len(items)); n++ {
		if bins := level(items, n); !past(fullest(bins), limit) {
			return bins
		}
		if bins := packExactly(items, n, limit); bins != nil {
			return bins
		}
	}
	return nil
}

// level puts each item, the heaviest first, into the lightest bin.
func level(items []packItem, n int) [][]packItem {
	bins := make([][]packItem, n)
	sums := make([]float64, n)
	for _, it := range items {
		best := 0
		for b := range sums {
			if below(sums[b], sums[best]) {
				best = b
			}
		}
		bins[best] = append(bins[best], it)
		sums[best] += it.watts
	}
	return bins
}

func fullest(bins [][]packItem) float64 {
	most := 0.0
	for _, b := range bins {
		most = math.Max(most, packed(b))
	}
	return most
}

// maxFitSteps bounds the search of packExactly; past it the number of bins is taken
// as too small.
const maxFitSteps = 200_000

// packExactly searches for any way to put the items into n bins of limit watts.
func packExactly(items []packItem, n int, limit float64) [][]packItem {
	sums := make([]float64, n)
	at := make([]int, len(items))
	steps := 0
	var place func(i, from int) bool
	place = func(i, from int) bool {
		if i == len(items) {
			return true
		}
		if steps++; steps > maxFitSteps {
			return false
		}
		for b := from; b < n; b++ {
			if past(sums[b]+items[i].watts, limit) || b > 0 && sums[b] == 0 && sums[b-1] == 0 {
				continue
			}
			sums[b] += items[i].watts
			at[i] = b
			next := 0
			if i+1 < len(items) && items[i+1].watts == items[i].watts {
				next = b // equal items go into bins in order
			}
			if place(i+1, next) {
				return true
			}
			sums[b] -= items[i].watts
		}
		return false
	}
	if !place(0, 0) {
		return nil
	}
	bins := make([][]packItem, n)
	for i, b := range at {
		bins[b] = append(bins[b], items[i])
	}
	return bins
}

// splitControl shares the copy of a control out.
func (c *circuit) splitControl(t *trial, of *schedule.Control, bins [][]packItem) {
	j, k := t.job, t.Control(of)
	count := map[int][]int{} // row to its count in each bin
	var order []int
	for b, items := range bins {
		for _, it := range items {
			if count[it.row] == nil {
				count[it.row] = make([]int, len(bins))
				order = append(order, it.row)
			}
			count[it.row][b]++
		}
	}
	controls := []*schedule.Control{k}
	for b := 1; b < len(bins); b++ {
		fresh := *k
		fresh.Key, fresh.Name = fmt.Sprintf("%s split %d", k.Key, b+1), fmt.Sprintf("%s (%d)", k.Name, b+1)
		fresh.Run = nil
		controls = append(controls, &fresh)
		j.Controls = append(j.Controls, &fresh)
	}
	k.Stated = schedule.Quantity[schedule.Watts]{}
	slices.Sort(order)
	for _, row := range order {
		l := t.Loudspeaker(c.rows[row].l)
		first := true
		for b, n := range count[row] {
			if n == 0 {
				continue
			}
			part := l
			if !first {
				copied := *l
				part = &copied
				part.Tag, part.Tags = schedule.Text{}, nil
				j.Loudspeakers = append(j.Loudspeakers, part)
			}
			part.Control = controls[b]
			part.Count = stateQuantity(schedule.Pieces(n))
			if len(part.Tags) > 1 {
				part.Tags = nil
			}
			first = false
		}
	}
}
