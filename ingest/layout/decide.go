package layout

import (
	_ "embed"
	"encoding/csv"
	"fmt"
	"math"
	"slices"
	"strings"
	"sync"

	"lineaudit/ingest/vocabulary"
)

//go:embed kinds.csv
var kindsCSV string

// kindOrder is the order in which kinds are tried; of equals the first wins.
var kindOrder = []Kind{Loudspeakers, Zones, Channels, Amplifiers, Controls, Cables, Types, Measurements, Mixed}

// How much the kind of a table speaks for or against a field in it.
const (
	coreField  = 0.12
	usualField = 0.0
	oddField   = -0.15
)

// priors is kinds.csv: kind and field to the weight above.
var priors = sync.OnceValue(func() map[Kind]map[vocabulary.Field]float64 {
	rows, err := csv.NewReader(strings.NewReader(kindsCSV)).ReadAll()
	if err != nil {
		panic(err) // part of the program; a test reads it
	}
	m := map[Kind]map[vocabulary.Field]float64{}
	for _, row := range rows[1:] {
		k := Kind(row[0])
		if m[k] == nil {
			m[k] = map[vocabulary.Field]float64{}
		}
		for f := range strings.SplitSeq(row[2], ";") {
			weight := usualField
			if row[1] == "core" {
				weight = coreField
			}
			m[k][vocabulary.Field(strings.TrimSpace(f))] = weight
		}
	}
	return m
})

// needs are the fields of which a table of a kind must have one of each group.
var needs = map[Kind][][]vocabulary.Field{
	Loudspeakers: {{vocabulary.Tap, vocabulary.TotalWatts, vocabulary.RatedWatts, vocabulary.TapList, vocabulary.Quantity},
		{vocabulary.Tag, vocabulary.Model, vocabulary.Describe, vocabulary.Zone, vocabulary.Room, vocabulary.Quantity, vocabulary.Channel, vocabulary.Control}},
	Zones: {{vocabulary.Zone, vocabulary.Room}, {vocabulary.Quantity, vocabulary.Load, vocabulary.TotalWatts, vocabulary.Tap, vocabulary.Channel, vocabulary.Amplifier, vocabulary.Use, vocabulary.Control}},
	Amplifiers: {{vocabulary.Amplifier, vocabulary.Model}, {vocabulary.ChannelWatts, vocabulary.FrameWatts, vocabulary.ChannelCount, vocabulary.LineVoltage},
		{vocabulary.Amplifier, vocabulary.ChannelCount, vocabulary.ChannelWatts}},
	Channels:     {{vocabulary.Channel}, {vocabulary.ChannelWatts, vocabulary.Load, vocabulary.LineVoltage, vocabulary.Zone}},
	Controls:     {{vocabulary.Control}, {vocabulary.ControlWatts, vocabulary.ControlModel, vocabulary.Override, vocabulary.BoxDepth, vocabulary.Level, vocabulary.Zone, vocabulary.Room}},
	Cables:       {{vocabulary.Length, vocabulary.Gauge, vocabulary.CableType}, {vocabulary.From, vocabulary.Cable, vocabulary.Gauge, vocabulary.CableType}, {vocabulary.To, vocabulary.Length}},
	Types:        {{vocabulary.Model, vocabulary.Tag, vocabulary.Describe}, {vocabulary.TapList, vocabulary.RatedWatts, vocabulary.Tap}},
	Measurements: {{vocabulary.Measured, vocabulary.MeasuredLoad}},
	Mixed:        {{vocabulary.Kind, vocabulary.Describe}, {vocabulary.Tap, vocabulary.Quantity, vocabulary.TotalWatts}},
}

// aliases: in a table of this kind a column of the first field names the second.
var aliases = map[Kind]map[vocabulary.Field]vocabulary.Field{
	Amplifiers:   {vocabulary.Tag: vocabulary.Amplifier, vocabulary.Tap: vocabulary.ChannelWatts},
	Channels:     {vocabulary.Tap: vocabulary.ChannelWatts},
	Controls:     {vocabulary.Tag: vocabulary.Control, vocabulary.RatedWatts: vocabulary.ControlWatts, vocabulary.Tap: vocabulary.ControlWatts},
	Cables:       {vocabulary.Tag: vocabulary.Cable},
	Zones:        {vocabulary.Tag: vocabulary.Zone, vocabulary.From: vocabulary.Channel, vocabulary.To: vocabulary.Room},
	Loudspeakers: {vocabulary.From: vocabulary.Channel, vocabulary.To: vocabulary.Room},
	Mixed:        {vocabulary.From: vocabulary.Channel},
}

// textual are the fields whose cells must look like the alias.
var textual = map[vocabulary.Field]bool{vocabulary.Tag: true, vocabulary.From: true, vocabulary.To: true}

// conceptKinds are the words of a sheet's name or title that tell the kind.
var conceptKinds = map[string]Kind{"speaker": Loudspeakers, "tap": Loudspeakers, "zone": Zones, "amplifier": Amplifiers,
	"channel": Channels, "control": Controls, "cable": Cables, "type": Types, "model": Types, "measured": Measurements, "impedance": Measurements}

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

// A heading is a column on its way to a field.
type heading struct {
	col    int
	at     int      // line of the lowest header cell
	parts  []string // header words, outermost group first
	words  string   // joined
	cells  *sample
	rows   int              // lines of the body
	forced vocabulary.Field // by the house book
	said   map[vocabulary.Field]vocabulary.Candidate
	top    vocabulary.Field // the best by the words alone, and its score
	score  float64
	own    float64 // how the cells speak for top
	unit   string
	volts  float64
}

// read asks the vocabulary what the header of the column says.
func (h *heading) read(s *vocabulary.Scorer) {
	h.said = map[vocabulary.Field]vocabulary.Candidate{}
	h.words = strings.Join(h.parts, " ")
	defer h.rank()
	if len(h.parts) == 0 {
		return
	}
	offer := func(text string, factor float64) {
		r := s.Header(text)
		for _, c := range r.Candidates {
			c.Score *= factor
			if r.Numbered && h.volts == 0 {
				c.Score *= 0.9
			}
			if c.Score > h.said[c.Field].Score {
				h.said[c.Field] = c
			}
		}
		if h.unit == "" {
			h.unit = r.Unit
		}
		if h.volts == 0 {
			h.volts = r.Volts
		}
	}
	last := h.parts[len(h.parts)-1]
	if len(h.parts) > 1 {
		offer(last, 0)
		offer(h.words, 1)
		offer(strings.Join(h.parts[len(h.parts)-2:], " "), 0.99)
		// A group that says nothing by itself leaves its columns alone.
		own := 0.75
		if s.Header(h.parts[0]).Best().Score < 0.5 {
			own = 0.98
		}
		offer(last, own)
		if s.Header(last).Explained < 0.5 {
			offer(h.parts[0], 0.8)
		}
	} else {
		offer(last, 1)
	}
	h.readWithCells(s)
}

// enoughAlike is the share of a column's cells that must be of one sort before
// the sort helps to read the header, and saidByCells what a reading so had is worth.
const (
	enoughAlike = 0.7
	saidByCells = 0.88
)

// cellWords are words for what cells state by themselves: a header above
// lengths speaks of lengths, whether it says so or not.
var cellWords = []struct {
	looks look
	word  string
	names bool // the cells are names: the word only helps a header that says nothing
}{{lookWatts | lookRating, "power", false}, {lookLength, "length", false}, {lookOhm, "impedance", false}, {lookVolts, "voltage", false},
	{lookGauge, "wire size", false}, {lookZone, "zone", false}, {lookControl, "control", true}, {lookAmp, "amplifier", true}}

// unitWords are words for what the unit of a header measures.
var unitWords = map[string]string{"m": "length", "ft": "length", "W": "power", "kW": "power", "mm2": "wire size", "AWG": "wire size", "V": "voltage", "ohm": "impedance"}

// readWithCells reads the header once more with a word for what its cells
// state: "Control carries up to" above watts is the control's power.
func (h *heading) readWithCells(s *vocabulary.Scorer) {
	if h.cells.cells < 2 && unitWords[h.unit] == "" || s.Header(h.words).Numbered {
		return // too little to go by, or rather a value than a header
	}
	if h.rank(); h.score >= sureWords {
		return // "Tap" is a tap, whatever a tap is measured in
	}
	word := unitWords[h.unit]
	for _, w := range cellWords {
		if word == "" && h.cells.share(w.looks) >= enoughAlike && (!w.names || s.Header(h.words).Best().Score < named) {
			word = w.word
		}
	}
	if word == "" {
		return
	}
	for _, c := range s.Header(h.words + " " + word).Candidates {
		c.Score *= saidByCells * vocabulary.Fits(c.Field, h.unit)
		if c.Score > h.said[c.Field].Score {
			h.said[c.Field] = c
		}
	}
}

func (h *heading) of(f vocabulary.Field) float64 { return h.said[f].Score }

// best is the best score of any field by the words alone.
func (h *heading) best() (vocabulary.Field, float64) { return h.top, h.score }

// controlRows is what it adds to a rating of controls, and takes from one of
// channels, that it stands just in the rows that have a control.
const controlRows = 0.25

// sureWords is the score from which header words hold whatever the cells look
// like; deniedBy is how far cells may speak against a field that its words name
// before it is no rival to others.
const (
	sureWords = 0.9
	deniedBy  = -0.3
)

// credible is the best score of any field by the words, fields left out that
// the cells deny.
func (h *heading) credible() float64 {
	if h.score >= sureWords {
		return h.score
	}
	best := 0.0
	for f, c := range h.said {
		if c.Score > best && (c.Score >= sureWords || h.cells.of(f) > deniedBy) {
			best = c.Score
		}
	}
	return best
}

func (h *heading) rank() {
	h.top, h.score = vocabulary.Unknown, 0
	for f, c := range h.said {
		if c.Score > h.score || c.Score == h.score && f < h.top {
			h.top, h.score = f, c.Score
		}
	}
}

// gain is what it is worth to give the column the field, the kind of table aside.
func (h *heading) gain(f vocabulary.Field) float64 {
	if h.forced != vocabulary.Unknown {
		if f == h.forced {
			return 3
		}
		return -1
	}
	e := h.cells.of(f)
	said := h.of(f)
	top := h.credible()
	if said == 0 && h.unit != "" && vocabulary.Fits(f, h.unit) < 1 {
		e -= 0.8 // whatever the cells look like, the header's unit is another's
	}
	switch {
	case said > 0 && said < sureWords && e < 0:
		return said*(1+0.7*e) + 0.3*e // words that are not sure, above cells that deny them
	case said > 0:
		return said + 0.3*e
	case top < 0.4 && len(h.parts) == 0:
		if f != vocabulary.Notes { // a remark here and there beside the table is a remark
			e *= min(1, 3*float64(h.cells.total)/float64(max(1, h.rows)))
		}
		return 0.7*e - 0.02
	case top < 0.4:
		return 0.62*e + 0.06
	}
	// The words say something else. Where they say it weakly, or the cells do
	// not look like it, the cells may decide.
	weak := max(0, min(1, (0.75-top)/0.35))
	misread := max(0, min(1, (0.1-h.own)/0.6))
	trust := max(0.7*weak, misread)
	return (0.35*e-0.12)*(1-trust) + (0.62*e+0.04)*trust
}

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

// withControls tells the ratings of controls from those of outputs by the rows
// in which they stand: a control's rating stands where a control does.
func withControls(cols []*heading, base [][]float64, fields []vocabulary.Field) {
	at := -1
	for i, h := range cols {
		if h.top == vocabulary.Control && h.score >= 0.6 && h.cells.total <= maxSample && h.cells.cells > 0 {
			at = i
		}
	}
	if at < 0 {
		return
	}
	control := cols[at]
	without := control.rows - control.cells.cells
	if without < 2 || control.rows > maxSample {
		return // no row without one: nothing to tell by
	}
	has := map[int]bool{}
	for _, n := range control.cells.lines {
		has[n] = true
	}
	add := func(i int, f vocabulary.Field, w float64) {
		if j := slices.Index(fields, f); base[i][j] > 0 {
			base[i][j] += w
		}
	}
	for i, h := range cols {
		if i == at || h.cells.cells == 0 || h.cells.total > maxSample || h.cells.share(anyPower|lookNumber) < 0.8 {
			continue
		}
		both, alone := 0, 0
		for _, n := range h.cells.lines {
			if has[n] {
				both++
			} else {
				alone++
			}
		}
		switch {
		case alone == 0 && 10*both >= 9*control.cells.cells:
			add(i, vocabulary.ControlWatts, 0.3)
			add(i, vocabulary.ChannelWatts, -0.2)
			add(i, vocabulary.RatedWatts, -0.2)
		case 2*alone >= without:
			add(i, vocabulary.ControlWatts, -0.35)
			add(i, vocabulary.ChannelWatts, 0.1)
		}
	}
}

// counts tells the number of outputs from the number of one: in a list with one
// row for each amplifier, of which nothing hangs, figures that do not run on are counts.
func counts(cols []*heading, base [][]float64, fields []vocabulary.Field) {
	list := false
	for _, h := range cols {
		switch {
		case h.score < 0.6:
		case h.top == vocabulary.Amplifier:
			list = h.cells.cells >= 2 && h.cells.distinct == h.cells.cells
		case h.top == vocabulary.Zone || h.top == vocabulary.Room || h.top == vocabulary.Tap || h.top == vocabulary.Tag || h.top == vocabulary.Quantity || h.top == vocabulary.Control:
			return
		}
	}
	if !list {
		return
	}
	one, many := slices.Index(fields, vocabulary.Channel), slices.Index(fields, vocabulary.ChannelCount)
	for i, h := range cols {
		if h.of(vocabulary.Channel) >= 0.6 && h.cells.cells >= 2 && !h.cells.running && h.cells.share(lookSmall) == 1 && slices.Max(h.cells.numbers) > 1 &&
			(h.cells.numbers[0] != 1 || h.cells.numbers[1] != 2) {
			base[i][many] = max(base[i][many], base[i][one])
			base[i][one] -= 0.3
		}
	}
}

// dampen lowers ratings of what the table does not name: no control, no control rating.
func dampen(cols []*heading, base [][]float64, fields []vocabulary.Field) {
	named := func(list ...vocabulary.Field) bool {
		return slices.ContainsFunc(cols, func(h *heading) bool {
			return slices.ContainsFunc(list, func(f vocabulary.Field) bool {
				return h.forced == f || h.of(f) >= 0.5 && (h.top == f || h.of(f) >= h.score-0.3)
			}) || slices.Contains(list, vocabulary.Control) && h.cells.share(lookControl) > 0.5
		})
	}
	lower := func(f vocabulary.Field, by float64) {
		j := slices.Index(fields, f)
		for i, h := range cols {
			if h.forced != f {
				base[i][j] -= by
			}
		}
	}
	if !named(vocabulary.Control, vocabulary.ControlModel) {
		lower(vocabulary.ControlWatts, 0.3)
		lower(vocabulary.Level, 0.2)
	}
	if !named(vocabulary.Amplifier, vocabulary.Channel, vocabulary.Circuit) {
		lower(vocabulary.ChannelWatts, 0.15)
	}
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

// fitKind weighs what the columns together say of the kind, beyond the fields.
func fitKind(k Kind, cols []*heading, fields []vocabulary.Field) float64 {
	at := func(f vocabulary.Field) *sample {
		if i := slices.Index(fields, f); i >= 0 {
			return cols[i].cells
		}
		return nil
	}
	has := func(f vocabulary.Field) bool { return slices.Contains(fields, f) }
	fit := 0.0
	switch k {
	case Loudspeakers:
		if has(vocabulary.Tap) {
			fit += 0.25
		}
		if !slices.ContainsFunc([]vocabulary.Field{vocabulary.Tag, vocabulary.Zone, vocabulary.Room, vocabulary.Describe, vocabulary.Quantity, vocabulary.Control, vocabulary.Circuit}, has) {
			fit -= 0.5
		}
		if z := at(vocabulary.Zone); z != nil && !has(vocabulary.Tag) && !has(vocabulary.Model) && !has(vocabulary.Describe) && !has(vocabulary.Room) && z.cells > 2 && z.distinct == z.cells {
			fit -= 0.3 // a row for each zone and nothing of a device
		}
	case Zones:
		if has(vocabulary.Tag) || has(vocabulary.Model) && has(vocabulary.Tap) {
			fit -= 0.4
		}
		if z := at(vocabulary.Zone); z != nil && z.cells > 2 && z.distinct < z.cells*8/10 {
			fit -= 0.5
		}
	case Amplifiers:
		if has(vocabulary.Channel) && has(vocabulary.Zone) {
			fit -= 0.1 // a row for each channel
		}
		if a := at(vocabulary.Amplifier); a != nil && a.distinct < a.cells && has(vocabulary.Channel) {
			fit -= 0.5
		}
	case Cables:
		if has(vocabulary.Tap) {
			fit -= 0.5
		}
	case Mixed:
		fit -= 0.35
		for _, f := range []vocabulary.Field{vocabulary.Kind, vocabulary.Describe, vocabulary.Tag} {
			if s := at(f); s != nil && s.cells > 0 {
				control, amp := s.share(lookControl), s.share(lookAmp)
				words := 0
				for _, t := range s.texts {
					if otherDevice(t) {
						words++
					}
				}
				other := max(control+amp, float64(words)/float64(s.cells))
				if other > 0.02 && other < 0.9 {
					fit += 0.5
				}
			}
		}
	}
	return fit
}

// otherDevice reports whether a text names an amplifier or a control.
func otherDevice(t string) bool {
	for w := range strings.FieldsSeq(vocabulary.Fold(t)) {
		switch {
		case strings.HasPrefix(w, "amplif"), strings.HasPrefix(w, "verstarker"), strings.HasPrefix(w, "versterker"), strings.HasPrefix(w, "attenu"),
			strings.HasPrefix(w, "atenuad"), strings.HasPrefix(w, "lautstarke"), strings.HasPrefix(w, "volume"), w == "amp", w == "endstufe", w == "vc", w == "lsr":
			return true
		}
	}
	return false
}

// neighbour is what the column on the left adds: watts beside a channel are
// its rating, a type beside a control is the control's.
func neighbour(cols []*heading, i int, f vocabulary.Field) float64 {
	if i == 0 || cols[i].of(f) == 0 {
		return 0
	}
	left, score := cols[i-1].best()
	if score < 0.6 {
		return 0
	}
	switch {
	case f == vocabulary.ChannelWatts && (left == vocabulary.Channel || left == vocabulary.Amplifier),
		f == vocabulary.ControlWatts && (left == vocabulary.Control || left == vocabulary.ControlModel),
		f == vocabulary.ControlModel && left == vocabulary.Control:
		return 0.12
	case f == vocabulary.CableType && left == vocabulary.Cable:
		return 0.08
	}
	return 0
}

// A product says that in most rows the number in one column is that of two
// others multiplied: quantity, tap and total.
type product struct{ a, b, result int }

// findProducts looks for products among the number columns.
func findProducts(cols []*heading) []product {
	var numeric []int
	values := map[int]map[int]float64{}
	for i, h := range cols {
		if i >= 40 || h.cells.cells < 3 {
			continue
		}
		m := map[int]float64{}
		for j, t := range h.cells.texts {
			if h.cells.looks[j]&(lookNumber|lookWatts|lookCount) != 0 {
				if v, ok := factor(t); ok {
					m[h.cells.lines[j]] = v
				}
			}
		}
		if len(m)*10 >= h.cells.cells*7 {
			numeric = append(numeric, i)
			values[i] = m
		}
	}
	if len(numeric) > 12 {
		numeric = numeric[:12]
	}
	var found []product
	for x, a := range numeric {
		for _, b := range numeric[x+1:] {
			for _, r := range numeric {
				if r == a || r == b {
					continue
				}
				hit, miss := 0, 0
				for n, v := range values[r] {
					p, ok1 := values[a][n]
					q, ok2 := values[b][n]
					switch {
					case !ok1 || !ok2 || p == 1 || q == 1 || v == 0:
					case math.Abs(p*q-v) <= 0.011*math.Abs(v):
						hit++
					default:
						miss++
					}
				}
				if hit >= 2 && hit > 4*miss {
					found = append(found, product{a, b, r})
				}
			}
		}
	}
	return found
}

// factor reads the number of a cell, with whatever stands around it: "(3)",
// "x3", "@6W". Of taps and the one that is set, it is the last: "6/3 -> 3 W".
func factor(t string) (float64, bool) {
	if reTapSet.MatchString(t) {
		t = t[strings.LastIndexFunc(strings.TrimRight(t, " wW"), func(r rune) bool { return (r < '0' || r > '9') && r != '.' && r != ',' })+1:]
	}
	i := strings.IndexAny(t, "0123456789")
	if i < 0 || i > 6 {
		return 0, false
	}
	return leadingNumber(t[i:])
}

// apply adds what the product says to the gains.
func (p product) apply(base [][]float64, fields []vocabulary.Field) {
	add := func(i int, f vocabulary.Field, w float64) {
		if i < len(base) {
			if j := slices.Index(fields, f); j >= 0 && base[i][j] > 0.15 {
				base[i][j] += w
			}
		}
	}
	add(p.result, vocabulary.TotalWatts, 0.3)
	add(p.result, vocabulary.Load, 0.15)
	for _, i := range []int{p.a, p.b} {
		add(i, vocabulary.Tap, 0.15)
		add(i, vocabulary.Quantity, 0.15)
		add(i, vocabulary.TotalWatts, -0.2)
	}
	add(p.result, vocabulary.Tap, -0.3)
	add(p.result, vocabulary.ChannelWatts, -0.3)
	add(p.result, vocabulary.ControlWatts, -0.3)
}

// titleKinds weighs the words of a sheet's name and the titles above a table.
func titleKinds(s *vocabulary.Scorer, texts ...string) map[Kind]float64 {
	m := map[Kind]float64{}
	for _, t := range texts {
		if len(t) > 80 || classOf(t)&classNote != 0 {
			continue
		}
		hits := map[Kind]bool{}
		for _, c := range s.Concepts(t) {
			if k, ok := conceptKinds[c]; ok {
				hits[k] = true
			}
		}
		for k := range hits {
			m[k] = max(m[k], 0.3/float64(len(hits)))
		}
	}
	return m
}

// column makes the finished column.
func (h *heading) column(p *plane, d decision, i int) Column {
	f := d.fields[i]
	c := Column{Col: h.col, At: p.ref(h.at, h.col), Header: h.words, Field: f, Unit: h.unit, Volts: h.volts, RunnerUp: d.runners[i]}
	var why []string
	switch {
	case h.forced != vocabulary.Unknown:
		why = append(why, fmt.Sprintf("header %q by the house book", h.words))
		c.Confidence = 1
	case f == vocabulary.Unknown:
		if h.words == "" {
			why = append(why, "no header")
		} else {
			why = append(why, fmt.Sprintf("header %q not understood", h.words))
		}
	default:
		said := h.said[f]
		if said.Score == 0 {
			for from, to := range aliases[d.kind] {
				if to == f && h.of(from) > 0 {
					said = h.said[from]
				}
			}
		}
		if said.Score > 0 {
			why = append(why, said.Evidence)
		} else {
			why = append(why, "by its cells")
		}
		c.Confidence = max(0.05, min(1, 0.75*said.Score+0.25*max(0, h.cells.of(f))+0.12))
		if said.Score == 0 {
			c.Confidence = max(0.05, min(0.6, 0.6*h.cells.of(f)))
		}
		if c.RunnerUp != vocabulary.Unknown {
			c.Confidence *= 0.8
		}
	}
	if f != vocabulary.Ignored {
		if e := h.cells.describe(f); e != "" {
			why = append(why, e)
		}
	}
	for _, s := range p.hiddenCols {
		if s.First <= h.col && h.col <= s.Last {
			why = append(why, "hidden")
		}
	}
	c.Evidence = strings.Join(why, ", ")
	return c
}
