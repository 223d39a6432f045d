package layout

import (
	"fmt"
	"hash/maphash"
	"math"
	"math/bits"
	"regexp"
	"slices"
	"strconv"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// maxSample bounds the cells of a column that are looked at.
const maxSample = 96

// A sample is what the cells of one column look like.
type sample struct {
	looks    []look
	texts    []string
	said     []*wording // of the texts
	numbers  []float64  // NaN-free: only where lookNumber
	numberAt []int      // index into looks of each number
	lines    []int      // line numbers, same order as looks
	cells    int        // cells sampled that say something
	total    int        // non-empty cells of the column in the body
	distinct int
	running  bool // 1, 2, 3 ... down the column
	rising   bool // each number more than the one before
	numbered bool // 1, 2, 3, 1, 2 ...: each number is one more than that before or begins anew
	changes  int  // neighbouring values that differ
	series   int  // tags whose number is one more than that of the tag before
	tags     int  // cells that end in a number behind letters

	kinds   []look                   // the different looks
	counts  []int                    // how many cells have each
	kindOf  []uint8                  // index into kinds of each look
	spoken  *worth                   // what of returns, nil before it is asked
	ampTags bool                     // the cells are numbered as amplifiers usually are
	devices *[vocabulary.Devices]int // how many cells name each sort of device, nil before it is asked
}

// share is the part of the telling cells that have one of the looks.
func (s *sample) share(k look) float64 {
	if s.cells == 0 {
		return 0
	}
	n := 0
	for i, l := range s.kinds {
		if l&k != 0 {
			n += s.counts[i]
		}
	}
	return float64(n) / float64(s.cells)
}

// A sampleRoom is the memory of the samples of a table.
type sampleRoom struct {
	looks    []look
	texts    []string
	said     []*wording
	numbers  []float64
	numberAt []int
	lines    []int
	kindOf   []uint8
}

func newSampleRoom(n int) *sampleRoom {
	return &sampleRoom{make([]look, n), make([]string, n), make([]*wording, n), make([]float64, n), make([]int, n), make([]int, n), make([]uint8, n)}
}

// part takes room for n values off what is left.
func part[T any](left *[]T, n int) []T {
	p := (*left)[:0:n]
	*left = (*left)[n:]
	return p
}

// take looks at up to maxSample cells of a column, spread over the lines.
func take(lines []line, col int, total int, room *sampleRoom) *sample {
	n := min(total, maxSample)
	s := &sample{total: total, looks: part(&room.looks, n), texts: part(&room.texts, n), said: part(&room.said, n), lines: part(&room.lines, n),
		numbers: part(&room.numbers, n), numberAt: part(&room.numberAt, n), kindOf: part(&room.kindOf, n)}
	step := 1
	if total > maxSample {
		step = total / maxSample
	}
	var seen seenTexts
	i, last := 0, ""
	runs, rises, resets := 0, 0, 0
	var before float64
	tagPrefix, tagNumber := "", 0
	for k := range lines {
		l := &lines[k]
		c := l.at(col)
		if c.blank() {
			continue
		}
		i++
		if (i-1)%step != 0 {
			continue
		}
		k := lookOf(c)
		if k&(lookMissing|lookDitto|lookStruck) != 0 && k&lookStatus == 0 {
			continue
		}
		w := c.says()
		t := w.text
		s.looks = append(s.looks, k)
		s.texts = append(s.texts, t)
		s.said = append(s.said, w)
		s.lines = append(s.lines, l.n)
		if seen.add(s.texts) {
			s.distinct++
		}
		if t != last {
			s.changes++
		}
		if k&lookTag != 0 {
			prefix, number := cutNumber(t)
			if number > 0 {
				s.tags++
				if prefix == tagPrefix && (number == tagNumber+1 || step > 1 && number > tagNumber) {
					s.series++
				}
				tagPrefix, tagNumber = prefix, number
			}
		}
		last = t
		if k&lookNumber != 0 {
			v := c.Number
			if c.Kind != grid.Number {
				v, _ = plainNumber(t)
			}
			if len(s.numbers) > 0 && (v == before+1 || step > 1 && v > before) {
				runs++
			}
			if len(s.numbers) > 0 && v > before {
				rises++
			}
			if len(s.numbers) > 0 && v == 1 && before > 1 {
				resets++
			}
			before = v
			s.numbers = append(s.numbers, v)
			s.numberAt = append(s.numberAt, len(s.looks)-1)
		}
		s.cells++
		if s.cells >= maxSample {
			break
		}
	}
	s.sort()
	s.rising = len(s.numbers) >= 4 && rises == len(s.numbers)-1
	s.numbered = len(s.numbers) >= 4 && step == 1 && s.numbers[0] == 1 && runs > resets && runs+resets == len(s.numbers)-1
	s.running = s.numbersRows() && runs >= len(s.numbers)-1-len(s.numbers)/10 && s.distinct == s.cells || s.risesThroughGaps()
	return s
}

// sureRun is the fewest running numbers that number rows wherever they begin.
const sureRun = 5

// numbersRows reports whether numbers that run on may be those of rows: 2, 3, 4 alone are as well
// counts.
func (s *sample) numbersRows() bool {
	n := len(s.numbers)
	return n >= sureRun || n >= 3 && (s.numbers[0] <= 1 || s.numbers[0] > 3)
}

// risesThroughGaps reports whether numbers rise all the way, and leave few out: those of rows
// of which some are struck through or gone.
func (s *sample) risesThroughGaps() bool {
	n := len(s.numbers)
	return s.rising && n >= sureRun && s.numbers[n-1]-s.numbers[0] < 2*float64(n)
}

// A seenTexts tells which of at most maxSample texts came before.
type seenTexts [256]uint8 // the number of the text, by its hash and the places behind

var textSeed = maphash.MakeSeed()

// add reports whether the last of the texts is none of those before it.
func (seen *seenTexts) add(texts []string) bool {
	t := texts[len(texts)-1]
	at := uint8(maphash.String(textSeed, t))
	for ; seen[at] != 0; at++ {
		if texts[seen[at]-1] == t {
			return false
		}
	}
	seen[at] = uint8(len(texts))
	return true
}

// sort finds the different looks of the cells: a column has few.
func (s *sample) sort() {
	for _, k := range s.looks {
		at := slices.Index(s.kinds, k)
		if at < 0 {
			at = len(s.kinds)
			s.kinds, s.counts = append(s.kinds, k), append(s.counts, 0)
		}
		s.kindOf = append(s.kindOf, uint8(at))
		s.counts[at]++
	}
	n := 0
	for _, w := range s.said {
		if w.is(amplifierTag) {
			n++
		}
	}
	s.ampTags = n > 0 && n*10 >= s.cells*8
}

// noQuantity reports whether cells cannot be counts under a header that says so
// with this score: they are letters, or number the rows.
func (s *sample) noQuantity(said float64) bool {
	if s.cells < 2 {
		return false
	}
	if s.share(lookLetter) >= 0.8 && s.share(lookNumber|lookCount) == 0 && !slices.ContainsFunc(s.texts, func(t string) bool { return ticks[t] }) {
		return true
	}
	return said < sureWords && (s.running || s.numbered)
}

// mostOfAKind is more than the fewest loudspeakers of any row of a list.
const mostOfAKind = 24

// low is the smallest number of the column, 0 if it has none.
func (s *sample) low() float64 {
	if len(s.numbers) == 0 {
		return 0
	}
	return slices.Min(s.numbers)
}

// many reports whether most numbers of the column are more than are usual in a row.
func (s *sample) many() bool {
	n := 0
	for _, v := range s.numbers {
		if v > mostOfAKind {
			n++
		}
	}
	return n > 0 && 2*n >= len(s.numbers)
}

// short reports whether the cells are tags of one letter and one or two
// figures, such as A1: names of amplifiers, zones or lines rather than models.
func (s *sample) short() bool {
	n := 0
	for _, t := range s.texts {
		if len(t) <= 3 && len(t) >= 2 && (t[0] >= 'A' && t[0] <= 'Z' || t[0] >= 'a' && t[0] <= 'z') && t[1] >= '0' && t[1] <= '9' {
			n++
		}
	}
	return s.cells >= 3 && 10*n >= 8*s.cells
}

// reNumbered finds texts that end as tags and numbers do, in a figure or in one
// letter: "LS 1", "1-01", "S3b", "LS-A", and not in a power or a voltage.
var reNumbered = regexp.MustCompile(`(?i)(?:\d|\d[a-ln-uxyz]|[^\d\s][\s-]\pL)[).]?$`)

// cutNumber parts a tag into what stands before its last number and that number, 0 if it has none.
func cutNumber(t string) (string, int) {
	end := len(t)
	for end > 0 && (t[end-1] < '0' || t[end-1] > '9') {
		end--
	}
	start := end
	for start > 0 && end-start < 9 && t[start-1] >= '0' && t[start-1] <= '9' {
		start--
	}
	n, err := strconv.Atoi(t[start:end])
	if err != nil {
		return t, 0
	}
	return t[:start], n
}

// A clue says how much a look speaks for a field (1) or against it (-1).
type clue struct {
	looks  look
	weight float64
}

// A profile is the clues of a field, the first that fits a cell counts, and
// what speaks for a cell with none of them.
type profile struct {
	clues []clue
	other float64
}

const (
	anyPower = lookWatts | lookRating
	name     = lookRoom | lookModel | lookWords
)

// profiles are what the cells of each field look like; weights were set by
// hand for what the looks exclude, not fitted to files.
var profiles = [vocabulary.Fields]profile{
	vocabulary.Tap: {[]clue{{lookDevice | lookForeign, -0.8}, {lookTapSaid, 1}, {lookWatts, 1}, {lookFraction, 0.5}, {lookCountWatts, 0.8}, {lookTapList, 0.2}, {lookRating, 0.3}, {lookVolts, -0.5}, {lookLength | lookGauge | lookMoney, -0.6},
		{lookOhm, 0.2}, {lookTapValue, 0.6}, {lookNumber, 0.1}, {lookDate, 0.2}, {lookHiZ, 0.2}, {lookTag, -0.5}, {lookLong, -0.8}, {lookWords, -0.7}}, -0.3},
	vocabulary.TapList:       {[]clue{{lookTapList, 1}, {lookWatts, 0.2}, {lookDate, 0.1}, {lookNumber, -0.3}}, -0.6},
	vocabulary.TotalWatts:    {[]clue{{lookDevice, -0.6}, {lookTapSaid, -0.5}, {lookWatts, 0.8}, {lookTapValue, 0.3}, {lookNumber, 0.4}, {lookTapList, -0.3}}, -0.8},
	vocabulary.RatedWatts:    {[]clue{{lookDevice, -0.6}, {lookWatts, 0.8}, {lookRating, 0.5}, {lookTapList, 0}, {lookNumber, 0.4}}, -0.8},
	vocabulary.ChannelWatts:  {[]clue{{lookDevice, -0.6}, {lookRating, 1}, {lookWatts, 0.9}, {lookNumber, 0.4}, {lookTapList, 0}}, -0.8},
	vocabulary.FrameWatts:    {[]clue{{lookDevice, -0.6}, {lookRating, 0.9}, {lookWatts, 0.8}, {lookNumber, 0.4}}, -0.8},
	vocabulary.ControlWatts:  {[]clue{{lookWatts, 0.9}, {lookRating, 0.6}, {lookControl, 0.3}, {lookNumber, 0.4}, {lookModel, 0}}, -0.7},
	vocabulary.Load:          {[]clue{{lookDevice, -0.6}, {lookTapSaid, -0.5}, {lookWatts, 0.8}, {lookNumber, 0.4}, {lookPercent, 0.1}}, -0.8},
	vocabulary.MeasuredLoad:  {[]clue{{lookDevice, -0.9}, {lookWatts, 0.8}, {lookNumber, 0.4}}, -0.8},
	vocabulary.Headroom:      {[]clue{{lookPercent, 0.8}, {lookWatts, 0.5}, {lookDecibel, 0.5}, {lookNumber, 0.3}}, -0.6},
	vocabulary.Quantity:      {[]clue{{lookCount, 1}, {lookCountWatts, -0.2}, {lookSmall, 0.8}, {lookWhole, 0.4}, {lookWatts | lookVolts | lookLength | lookGauge, -0.9}, {lookNumber, -0.6}}, -0.7},
	vocabulary.ChannelCount:  {[]clue{{lookSmall, 0.6}, {lookCount, 0.4}}, -0.7},
	vocabulary.Length:        {[]clue{{lookLength, 1}, {lookWatts | lookVolts | lookGauge, -0.8}, {lookNumber, 0.4}}, -0.7},
	vocabulary.Height:        {[]clue{{lookLength, 0.9}, {lookNumber, 0.3}}, -0.6},
	vocabulary.BoxDepth:      {[]clue{{lookLength, 0.8}, {lookNumber, 0.3}}, -0.6},
	vocabulary.Gauge:         {[]clue{{lookGauge, 1}, {lookCableWord, 0.5}, {lookAreaNum, 0.6}, {lookAWGNum, 0.6}, {lookDate, 0.1}, {lookNumber, -0.2}, {lookModel, -0.1}}, -0.6},
	vocabulary.AreaNeeded:    {[]clue{{lookGauge, 0.8}, {lookAreaNum, 0.5}, {lookAWGNum, 0.5}, {lookNumber, -0.2}}, -0.7},
	vocabulary.CableType:     {[]clue{{lookCableWord, 1}, {lookGauge, 0.8}, {lookMaterial, 0.3}, {lookDate, 0}, {lookWatts | lookVolts | lookLength, -0.7}, {lookNumber, -0.5}, {name, 0.1}}, -0.4},
	vocabulary.Conductors:    {[]clue{{lookSmall, 0.5}, {lookCount, 0.4}, {lookGauge, 0.3}}, -0.5},
	vocabulary.Material:      {[]clue{{lookMaterial, 1}, {lookRoom, -0.1}}, -0.6},
	vocabulary.Jacket:        {[]clue{{lookCableWord, 0.8}, {lookNumber, -0.6}, {name, 0}}, -0.3},
	vocabulary.TapVoltage:    {[]clue{{lookVolts, 1}, {lookVoltNum, 0.8}, {lookWatts | lookLength | lookGauge, -0.9}, {lookNumber, -0.6}}, -0.6},
	vocabulary.LineVoltage:   {[]clue{{lookVolts, 1}, {lookHiZ, 0.8}, {lookVoltNum, 0.8}, {lookWatts | lookLength | lookGauge, -0.9}, {lookNumber, -0.6}}, -0.6},
	vocabulary.Impedance:     {[]clue{{lookOhm, 1}, {lookNumber, 0.3}}, -0.7},
	vocabulary.Measured:      {[]clue{{lookOhm, 1}, {lookNumber, 0.3}}, -0.6},
	vocabulary.Level:         {[]clue{{lookPercent, 1}, {lookDecibel, 0.5}, {lookNumber, 0.1}, {lookRoom | lookZone, -0.8}}, -0.4},
	vocabulary.InsertionLoss: {[]clue{{lookDecibel, 1}, {lookNumber, 0.3}}, -0.6},
	vocabulary.Temperature:   {[]clue{{lookDegrees, 1}, {lookNumber, 0.3}}, -0.6},
	vocabulary.Price:         {[]clue{{lookMoney, 1}, {lookWatts | lookVolts | lookLength, -0.8}, {lookNumber, 0.3}}, -0.5},
	vocabulary.Date:          {[]clue{{lookDate, 1}, {lookWatts | lookVolts | lookLength, -0.9}, {lookNumber, -0.3}}, -0.2},
	vocabulary.Item:          {[]clue{{lookWhole, 0.5}, {lookNumber, 0.2}, {lookLetter, 0.1}}, -0.5},
	vocabulary.Tag: {[]clue{{lookWatts | lookVolts | lookLength | lookOhm | lookMoney | lookPercent, -0.9}, {lookTagRange, 0.9}, {lookTag, 0.8}, {lookLong, -0.8}, {lookWhole, -0.3},
		{lookNumber, -0.6}, {lookModel | lookLetter, 0.2}, {lookRoom, -0.3}}, -0.2},
	vocabulary.Model:    {[]clue{{lookWatts | lookVolts | lookLength, -0.6}, {lookLong, -0.3}, {lookTagRange, -0.5}, {lookModel, 0.7}, {lookTag, 0.4}, {lookDevice, 0.1}, {lookNumber, -0.3}, {lookRoom, 0.1}}, -0.1},
	vocabulary.Describe: {[]clue{{lookDevice, 1}, {lookCountWatts, -0.4}, {lookLong, 0.5}, {lookNumber, -0.8}, {lookTag, -0.3}, {lookRoom, 0.3}}, 0},
	vocabulary.Kind:     {[]clue{{lookDevice, 0.8}, {lookNumber, -0.8}, {lookRoom, 0.2}}, -0.2},
	vocabulary.Maker:    {[]clue{{lookNumber, -0.7}, {lookRoom, 0.3}}, -0.3},
	vocabulary.Room: {[]clue{{lookWatts | lookVolts | lookLength | lookOhm | lookGauge, -0.9}, {lookTagRange, -0.5}, {lookZone, 0.1}, {lookDevice, -0.2}, {lookRoom, 0.8}, {lookFloor, 0.3}, {lookWhole, 0},
		{lookNumber, -0.4}, {lookTag | lookModel, 0.1}}, 0},
	vocabulary.Floor:    {[]clue{{lookFloor, 1}, {lookSmall, 0.2}, {lookNumber, -0.2}, {lookRoom, 0.1}}, -0.2},
	vocabulary.Site:     {[]clue{{lookDevice | lookMounting | lookWatts, -0.8}}, 0},
	vocabulary.Revision: {[]clue{{lookStatus | lookLong | lookMounting, -0.9}, {lookTag | lookLetter | lookSmall | lookDate | lookModel, 0.3}, {lookRoom | lookWords, -0.4}}, 0},
	vocabulary.Building: {[]clue{{lookRoom, 0.4}, {lookLetter, 0.3}, {lookNumber, -0.4}}, 0},
	vocabulary.Zone: {[]clue{{lookWatts | lookVolts | lookLength | lookOhm | lookGauge | lookStatus | lookMounting, -0.9}, {lookZone, 1}, {lookRoom, 0.5}, {lookSmall, 0.3}, {lookLetter, 0.4}, {lookWhole, 0.1},
		{lookNumber, -0.5}, {lookTag, 0.1}}, 0},
	vocabulary.Circuit: {[]clue{{lookVolts | lookWatts | lookLength | lookStatus | lookMounting, -0.9}, {lookTag | lookLetter, 0.5}, {lookSmall, 0.3}, {lookChannel, 0.4}, {lookNumber, -0.4}}, 0},
	vocabulary.Amplifier: {[]clue{{lookWatts | lookLength | lookOhm | lookStatus | lookMounting, -0.8}, {lookJoint, 0.2}, {lookAmp, 1}, {lookChannel, 0.4}, {lookTag, 0.4}, {lookLetter, 0.3}, {lookSmall, 0.2}, {lookModel, 0.2},
		{lookNumber, -0.4}, {lookRoom, 0}}, 0},
	vocabulary.Channel: {[]clue{{lookWatts | lookLength | lookOhm | lookRating | lookStatus | lookMounting, -0.9}, {lookJoint, 1}, {lookChannel, 0.9}, {lookLetter, 0.6}, {lookSmall, 0.5}, {lookTag, 0.4}, {lookDate, 0.1},
		{lookRoom, -0.3}}, -0.4},
	vocabulary.Control:      {[]clue{{lookControl, 1}, {lookWatts | lookLength | lookOhm | lookStatus | lookMounting, -0.7}, {lookLong, -0.8}, {lookTagRange, -0.3}, {lookTag, 0.4}, {lookYes, 0.2}, {lookModel, 0.2}, {lookNumber, -0.3}, {lookRoom, 0}}, 0},
	vocabulary.ControlModel: {[]clue{{lookControl, 0.6}, {lookModel, 0.5}, {lookNumber, -0.4}}, 0},
	vocabulary.Override:     {[]clue{{lookYes, 0.9}, {lookNumber, -0.6}, {lookVolts, 0.3}}, 0},
	vocabulary.Mounting:     {[]clue{{lookControl, -0.5}, {lookMounting, 1}, {lookNumber, -0.7}}, -0.1},
	vocabulary.Status:       {[]clue{{lookVolts | lookWatts | lookLength, -0.9}, {lookStatus, 1}, {lookYes | lookLetter, 0.2}, {lookNumber, -0.7}, {lookZone | lookAmp | lookControl, -0.8}}, -0.1},
	vocabulary.Use:          {[]clue{{lookUse, 1}, {lookNumber, -0.7}}, -0.1},
	vocabulary.BoxName:      {[]clue{{lookLength, 0.2}, {lookNumber, 0}, {name, 0.1}}, 0},
	vocabulary.Notes:        {[]clue{{lookLong, 0.7}, {lookStatus, 0.3}, {lookWatts | lookVolts, -0.3}, {lookNumber, -0.4}, {lookRoom, 0.3}}, 0},
	vocabulary.Cable:        {[]clue{{lookWatts | lookLength, -0.8}, {lookTag, 0.7}, {lookGauge, -0.2}, {lookNumber, 0}, {lookModel, 0.3}}, 0},
	vocabulary.Route:        {[]clue{{lookLength | lookWatts | lookVolts | lookGauge | lookMoney, -0.9}, {lookNumber, -0.5}, {lookRoom | lookLong, 0.3}}, 0},
	vocabulary.From:         {[]clue{{lookWatts | lookLength | lookGauge, -0.8}, {lookAmp | lookChannel | lookTag | lookZone | lookControl, 0.5}, {lookNumber, -0.4}, {lookRoom, 0.3}}, 0},
	vocabulary.Ignored:      {[]clue{{lookDevice, -0.6}, {lookTag | lookTagRange | lookWatts | lookVolts | lookLength | lookGauge, -0.6}, {lookZone | lookAmp | lookControl, -0.4}}, 0.1},
	vocabulary.To:           {[]clue{{lookWatts | lookLength | lookGauge, -0.8}, {lookAmp | lookChannel | lookTag | lookZone | lookControl | lookTagRange, 0.5}, {lookNumber, -0.4}, {lookRoom, 0.3}}, 0},
}

// weights are how much each set of looks speaks for each field.
var weights = remember.NewTable(12, func(k uint64) *worth {
	var w worth
	for f := range profiles {
		p := &profiles[f]
		w[f] = p.other
		for i := range p.clues {
			if look(k)&p.clues[i].looks != 0 {
				w[f] = p.clues[i].weight
				break
			}
		}
	}
	return &w
})

// of returns how the cells of a column speak for a field, from -1 to 1, and 0
// when there are none or nothing is known of the field.
func (s *sample) of(f vocabulary.Field) float64 {
	if s.cells == 0 {
		return 0
	}
	if s.spoken == nil {
		s.spoken = s.speak()
	}
	return s.spoken[f]
}

// dotted reports whether all cells are numbers such as 1.1 or 2.4: one figure
// behind the point, never nought, and few before it.
func (s *sample) dotted() bool {
	if len(s.numbers) < 2 || len(s.numbers) != s.cells {
		return false
	}
	for _, v := range s.numbers {
		tenths := math.Round(10 * v)
		if v < 1 || v >= 13 || math.Abs(10*v-tenths) > 1e-6 || math.Mod(tenths, 10) == 0 {
			return false
		}
	}
	return true
}

// speak works out how the cells speak for all fields.
func (s *sample) speak() *worth {
	sums := &worth{}
	for _, i := range s.kindOf {
		for f, w := range weights.Of(uint64(s.kinds[i])) {
			sums[f] += w
		}
	}
	for f := range sums {
		sums[f] = s.corrected(vocabulary.Field(f), sums[f]/float64(s.cells))
	}
	return sums
}

// corrected is how the cells together speak for a field, of which each by itself speaks for it by e.
func (s *sample) corrected(f vocabulary.Field, e float64) float64 {
	switch f {
	case vocabulary.Item:
		switch {
		case s.running:
			e += 0.5
		case s.cells >= 4 && s.distinct < s.cells:
			e -= 0.4 // a running number does not come twice
			if 2*s.distinct <= s.cells {
				e -= 0.4
			}
		}
		if s.dotted() {
			e -= 0.3
		}
	case vocabulary.Circuit:
		if s.running {
			e += 0.2
		}
		if s.dotted() {
			e += 0.6 // "1.1", "1.2": output by output of each amplifier
		}
	case vocabulary.Quantity, vocabulary.Tap:
		switch {
		case s.running:
			e -= 0.4
		case s.rising && f == vocabulary.Quantity:
			e -= 0.3 // rather places, in a rack or on a line
		}
		if f == vocabulary.Quantity && s.low() > mostOfAKind {
			e -= 0.7 // no row has few: heights, levels, lengths
		}
	case vocabulary.Tag:
		switch {
		case s.cells >= 4 && s.distinct*10 >= s.cells*9:
			e += 0.15
		case s.cells >= 3 && s.distinct == 1:
			e -= 0.5
		}
		if s.running {
			e += 0.6
		}
		if s.cells >= 2 && !slices.ContainsFunc(s.said, func(w *wording) bool { return w.is(numberedLikeTags) }) {
			e -= 0.5 // "Horn 15 W", "ceiling"
		}
		if s.tags >= 3 {
			switch { // LS-1, LS-2 ... against CS-6, CS-6, H-15
			case 2*s.series >= s.tags:
				e += 0.15
			case 10*s.distinct < 8*s.cells || s.series == 0:
				e -= 0.3
			}
		}
	case vocabulary.Model:
		if s.short() {
			e -= 0.4
		}
		if s.tags >= 3 {
			switch {
			case 2*s.series >= s.tags:
				e -= 0.4
			case 10*s.distinct < 8*s.cells || s.series == 0:
				e += 0.2
			}
		}
	case vocabulary.ControlModel:
		if s.tags >= 2 && 2*s.series >= s.tags {
			e -= 0.4 // R1, R2, R3: names of controls, whatever the header abbreviates
		}
	case vocabulary.Channel:
		if s.ampTags {
			e -= 0.5
		}
	case vocabulary.Zone, vocabulary.Amplifier:
		if f == vocabulary.Amplifier && s.ampTags {
			e += 0.3
		}
		if f == vocabulary.Amplifier && s.short() && 2*s.distinct <= s.cells {
			e += 0.2
		}
		if s.cells >= 6 && s.distinct == s.cells && s.share(lookTag) > 0.5 {
			e -= 0.2 // every row another: rather a tag
		}
	}
	return max(-1, min(1, e))
}

// lookWordsFor names, for people, the look that speaks most for a field.
var lookNames = map[look]string{
	lookNumber: "numbers", lookWhole: "whole numbers", lookSmall: "small whole numbers", lookTapValue: "usual tap values",
	lookWatts: "watts", lookTapList: "lists of powers", lookRating: "ratings", lookVolts: "volts", lookVoltNum: "line voltages",
	lookLength: "lengths", lookGauge: "conductor sizes", lookAreaNum: "conductor areas", lookAWGNum: "gauge numbers", lookOhm: "ohms",
	lookPercent: "percentages", lookDecibel: "decibels", lookMoney: "money", lookDate: "dates", lookTag: "tags", lookTagRange: "ranges of tags",
	lookCount: "counts", lookChannel: "channels", lookLetter: "letters", lookZone: "zones", lookAmp: "amplifiers", lookControl: "controls",
	lookRoom: "words", lookModel: "model names", lookLong: "prose", lookYes: "yes or no", lookStatus: "states", lookMounting: "mountings",
	lookMaterial: "metals", lookFloor: "floors", lookUse: "uses", lookDevice: "loudspeaker words", lookCableWord: "cable types",
	lookTapSaid: "taps", lookCountWatts: "counts with powers", lookJoint: "outputs of amplifiers", lookFraction: "fractions", lookHiZ: "line kinds", lookDegrees: "degrees", lookWords: "words",
}

// describe says in words what speaks for a field: "14 of 15 cells are watts".
func (s *sample) describe(f vocabulary.Field) string {
	if s.cells == 0 {
		return "no cells"
	}
	p := profiles[f]
	counts := map[look]int{}
	for _, k := range s.looks {
		for _, c := range p.clues {
			if c.weight > 0 && k&c.looks != 0 {
				hit := k & c.looks
				counts[1<<(bits.TrailingZeros64(uint64(hit)))]++
				break
			}
		}
	}
	best, n := look(0), 0
	for k, c := range counts {
		if c > n || c == n && k < best {
			best, n = k, c
		}
	}
	if n == 0 {
		return ""
	}
	return fmt.Sprintf("%d of %d cells are %s", n, s.cells, lookNames[best])
}
