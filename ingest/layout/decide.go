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
var repeatable = [vocabulary.Fields]bool{vocabulary.Notes: true, vocabulary.Ignored: true, vocabulary.Price: true, vocabulary.Date: true}

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

// addTapsOfOtherLines gives the field to every column of taps that names a line
// voltage of its own: "Tap 70 V" beside "Tap 100 V".
func (d *decision) addTapsOfOtherLines(cols []*heading) {
	at := slices.Index(d.fields, vocabulary.Tap)
	if at < 0 || cols[at].volts == 0 {
		return
	}
	for i, h := range cols {
		if i != at && h.volts > 0 && h.volts != cols[at].volts && h.of(vocabulary.Tap) >= named && h.cells.of(vocabulary.Tap) >= 0 {
			d.fields[i], d.scores[i], d.runners[i] = vocabulary.Tap, h.of(vocabulary.Tap), vocabulary.Unknown
		}
	}
}

// decide finds the kind and the fields of all columns together: for each kind
// the best assignment of fields to columns, and of these the best.
func decide(cols []*heading, title map[Kind]float64, products []product) decision {
	considered := cols
	if len(considered) > maxColumns {
		considered = considered[:maxColumns]
	}
	c := newContest(considered)
	defer c.end()
	base := c.base
	placed := places(considered)
	for i, h := range considered {
		for _, f := range allFields() {
			base[i][f] = h.gain(f) + neighbour(considered, i, f)
		}
		if f := placed[i]; f != vocabulary.Unknown {
			base[i][f] += placeBonus
		}
	}
	for _, p := range products {
		p.apply(considered, base)
	}
	dampen(considered, base)
	counts(considered, base)
	countTotals(considered, base)
	totalsOfGroups(considered, base)
	devices := listsDevices(considered, base)
	ownNames(considered, base)
	loadsAreTaps(considered, base)
	lastRevision(considered, base)
	twoTaps(considered, base)
	answersOfState(considered, base)
	groupsAreNoItems(considered, base)
	linesAreNoAmplifiers(considered, base)
	slotsAreNoAmplifiers(considered, base)
	departuresAreLines(considered, base)
	outputsInVolts(considered, base)
	placesDescribed(considered, base)
	feedsAreControls(considered, base)
	powersWithoutControls(considered, base)
	smallPowers(considered, base)
	devicesInWords(considered, base)
	about := subject(considered, title)
	if numbersBehindControls(considered, base) || about == "" && numberedControls(considered, title, base) {
		about = Controls
	}
	c.about = about
	if i := outputsAlone(considered, title); i >= 0 {
		base[i][vocabulary.Amplifier] = 2 * sureWords
	}
	numberedAmplifiers(considered, about, base)
	if about == Amplifiers { // their numbers of inputs, slots and units are no outputs
		for i, h := range considered {
			if h.of(vocabulary.Channel) == 0 {
				adjust(base, i, vocabulary.Channel, -0.4)
			}
			if h.cells.rising {
				adjust(base, i, vocabulary.Quantity, -0.4)
			}
		}
	}
	var best decision
	second := math.Inf(-1)
	for _, k := range kindOrder {
		d := c.decideAs(k)
		d.total += title[k]
		if devices && ofNoDevices[k] {
			d.total -= 1
		}
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
	best.fields, best.scores = slices.Clone(best.fields), slices.Clone(best.scores)
	best.runners = c.runnersUp(&best)
	best.addTapsOfOtherLines(considered)
	for range len(cols) - len(considered) {
		best.fields = append(best.fields, vocabulary.Unknown)
		best.scores = append(best.scores, 0)
		best.runners = append(best.runners, vocabulary.Unknown)
	}
	return best
}

// groupsAreNoItems takes numbers that head groups of rows, under a word for lines,
// outputs or zones, for these: "Line" over 1, blank, blank, 2. Items are numbered
// row by row.
func groupsAreNoItems(cols []*heading, base []worth) {
	for i, h := range cols {
		if h.of(vocabulary.Item) == 0 || max(h.of(vocabulary.Circuit), h.of(vocabulary.Channel), h.of(vocabulary.Zone)) == 0 {
			continue
		}
		if h.cells.cells >= 2 && h.rows >= 4 && 10*h.cells.total <= 7*h.rows {
			adjust(base, i, vocabulary.Item, -0.7)
		}
	}
}
