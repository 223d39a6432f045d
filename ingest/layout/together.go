package layout

import (
	"regexp"
	"slices"

	"lineaudit/ingest/notation"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// What the columns of a table say of each other.

// counts tells the number of outputs from the number of one: in a list with one
// row for each amplifier, of which nothing hangs, figures that do not run on are counts.
func counts(cols []*heading, base []worth) {
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
	const one, many = vocabulary.Channel, vocabulary.ChannelCount
	for i, h := range cols {
		if h.of(vocabulary.Channel) >= 0.6 && h.cells.cells >= 2 && !h.cells.running && h.cells.share(lookSmall) == 1 && slices.Max(h.cells.numbers) > 1 &&
			(h.cells.numbers[0] != 1 || h.cells.numbers[1] != 2) {
			base[i][many] = max(base[i][many], base[i][one])
			base[i][one] -= 0.3
		}
	}
}

// countTotals tells a total of pieces from a total of watts: no column counts
// otherwise, the figures are small and whole, and some are less than the watts of one piece beside them.
func countTotals(cols []*heading, base []worth) {
	at, tap := -1, -1
	for i, h := range cols {
		switch {
		case h.forced == vocabulary.Quantity || h.of(vocabulary.Quantity) >= named && h.cells.of(vocabulary.Quantity) > 0:
			return
		case h.of(vocabulary.TotalWatts) >= 0.4 && h.unit == "" && h.forced == vocabulary.Unknown && h.cells.cells >= 2 && h.cells.share(lookSmall) >= 0.9:
			at = i
		case h.of(vocabulary.Tap) >= named && h.cells.share(anyPower|lookNumber) >= 0.7:
			tap = i
		}
	}
	if at < 0 || tap < 0 {
		return
	}
	watts := map[int]float64{}
	for j, n := range cols[tap].cells.lines {
		if v, ok := factor(cols[tap].cells.texts[j]); ok {
			watts[n] = v
		}
	}
	total := cols[at].cells
	for j, v := range total.numbers {
		if w := watts[total.lines[total.numberAt[j]]]; w > 0 && v < w {
			base[at][vocabulary.Quantity] = max(base[at][vocabulary.Quantity], sureWords)
			base[at][vocabulary.TotalWatts] -= 0.5
			return
		}
	}
}

// reCountedWord matches a count and what is counted: "6 x column", "2 off horn", "10 pendants".
var reCountedWord = regexp.MustCompile(`(?i)^\d{1,3}\s*(?:[x×]|no\.?|nr\.?|off|st\.?|stk\.?|stück|uds?\.?|pz\.?)?\s+\pL{3,}[\pL .-]*$`)

// countedWords remembers which texts it matches.
var countedWords = remember.New(4096, func(t string, _ int) bool { return reCountedWord.MatchString(t) })

// countsDevices reports whether the cells of a column count loudspeakers in words.
func (s *sample) countsDevices() bool {
	if s.cells < 2 || s.share(lookWords) < 1 {
		return false
	}
	n := 0
	for i, t := range s.texts {
		if t[0] >= '0' && t[0] <= '9' && countedWords.Of(t, 0) && (s.looks[i]&lookMounting != 0 || vocabulary.DeviceIn(t) == vocabulary.LoudspeakerDevice) {
			n++
		}
	}
	return n >= 2 && 10*n >= 8*s.cells
}

// listsDevices takes a column that counts loudspeakers in words, with or without their watts, for
// what describes the rows, where no other column counts them, and reports whether there is one:
// such rows are no outputs, cables or measurements alone.
func listsDevices(cols []*heading, base []worth) bool {
	if setting(cols).claimed(vocabulary.Quantity) {
		return false
	}
	for i, h := range cols {
		if h.forced != vocabulary.Unknown || h.cells.share(lookWords) < 0.5 || !h.cells.countsDevices() && (h.cells.share(lookDevice|lookMounting) < 0.5 || h.cells.groupWatts() == nil) {
			continue
		}
		if h.top != vocabulary.Tap || h.score < named {
			base[i][vocabulary.Describe] = max(base[i][vocabulary.Describe], 2*sureWords)
		}
		return true
	}
	return false
}

// ofNoDevices are the kinds of tables whose rows are not loudspeakers.
var ofNoDevices = map[Kind]bool{Cables: true, Measurements: true, Channels: true, Amplifiers: true}

// totalsOfGroups takes a column of watts that are those of the groups told in the cells of
// another, "6 ceiling at 3 W + 2 at 1.5 W" and 21 W, for totals: the taps stand with the groups.
func totalsOfGroups(cols []*heading, base []worth) {
	for _, g := range cols {
		if g.cells.share(lookWords) < 0.5 {
			continue
		}
		watts := g.cells.groupWatts()
		for i, h := range cols {
			if h != g && len(watts) > 0 && h.forced == vocabulary.Unknown && h.of(vocabulary.Measured) == 0 && h.of(vocabulary.MeasuredLoad) == 0 && h.cells.equals(watts) {
				base[i][vocabulary.Tap] = barred
				base[i][vocabulary.TotalWatts] = max(base[i][vocabulary.TotalWatts], sureWords)
			}
		}
	}
}

// loadsAreTaps takes a column headed "load" or "impedance" for the taps where
// its cells say taps, ohms here and there among them, and no column is named for taps.
func loadsAreTaps(cols []*heading, base []worth) {
	if setting(cols).claimed(vocabulary.Tap) {
		return
	}
	for i, h := range cols {
		switch {
		case h.forced != vocabulary.Unknown, h.cells.cells < 3:
		case h.of(vocabulary.Load) < 0.5 && h.of(vocabulary.Impedance) < 0.5 && h.of(vocabulary.TotalWatts) < 0.5:
		case h.cells.share(lookTapSaid) >= 0.2 && h.cells.share(lookTapSaid|lookTapUsual|lookOhm|lookHiZ) >= 0.8:
			base[i][vocabulary.Tap] = max(base[i][vocabulary.Tap], sureWords+0.2)
		}
	}
}

// linesAreNoAmplifiers bars a column whose cells all name lines or zones from being one of
// amplifiers, unless its header has a word for them: in a list of outputs "Feeds" is what they feed.
func linesAreNoAmplifiers(cols []*heading, base []worth) {
	for i, h := range cols {
		if said := h.of(vocabulary.Amplifier); said == 0 || said >= sureWords || h.cells.cells == 0 {
			continue
		}
		if !slices.ContainsFunc(h.cells.texts, func(t string) bool {
			f := sectionField(t)
			return f != vocabulary.Circuit && f != vocabulary.Zone
		}) {
			base[i][vocabulary.Amplifier] = barred
		}
	}
}

// slotsAreNoAmplifiers bars a column of bare figures from naming amplifiers where another under a plainer word
// for them has their names: "Module | Amplifier" over "3 | PA1" are slots of a frame and what is in them.
func slotsAreNoAmplifiers(cols []*heading, base []worth) {
	heads := func(h *heading) bool {
		return h.forced == vocabulary.Unknown && h.of(vocabulary.Amplifier) >= named && h.cells.cells > 0
	}
	lettered := func(t string) bool { return !isFigureOnly(t) }
	for i, h := range cols {
		if !heads(h) || slices.ContainsFunc(h.cells.texts, lettered) {
			continue
		}
		if slices.ContainsFunc(cols, func(o *heading) bool {
			return heads(o) && o.of(vocabulary.Amplifier) > h.of(vocabulary.Amplifier) && !slices.ContainsFunc(o.cells.texts, isFigureOnly)
		}) {
			base[i][vocabulary.Amplifier] = barred
		}
	}
}

// outputsInVolts takes a column of outputs whose cells are all voltages, "Output | 100 V",
// for what the outputs give: voltages name none.
func outputsInVolts(cols []*heading, base []worth) {
	for i, h := range cols {
		if h.forced == vocabulary.Unknown && h.of(vocabulary.Channel) >= named && h.cells.cells > 0 && h.cells.share(lookVolts) == 1 {
			base[i][vocabulary.Channel] = barred
			base[i][vocabulary.LineVoltage] = max(base[i][vocabulary.LineVoltage], sureWords)
		}
	}
}

// departuresAreLines takes a column under a word for where something starts, which names lines
// as well, for the lines where no column says where anything ends: "Départ" beside "Local".
func departuresAreLines(cols []*heading, base []worth) {
	if slices.ContainsFunc(cols, func(h *heading) bool { return h.of(vocabulary.To) >= named }) {
		return
	}
	for i, h := range cols {
		if h.forced == vocabulary.Unknown && h.of(vocabulary.From) > 0 && h.of(vocabulary.Circuit) >= named {
			base[i][vocabulary.From] = barred
		}
	}
}

// feedFields are the fields of what feeds a row.
var feedFields = []vocabulary.Field{vocabulary.Channel, vocabulary.From, vocabulary.To, vocabulary.Amplifier, vocabulary.Circuit}

// feedsAreControls takes a column of what feeds each row, or what it is wired to, for the controls
// where every cell names one or says that there is none: "vc 1", "direct". What stands under a word for
// amplifiers alone, or beside their outputs, are amplifiers, though they may be called like controls:
// "LV1", "RV1 (120 W)".
func feedsAreControls(cols []*heading, base []worth) {
	all := setting(cols)
	if all.claimed(vocabulary.Control) {
		return
	}
	for i, h := range cols {
		if concepts := vocabulary.NewScorer().Concepts(h.words); slices.Contains(concepts, "amplifier") && (all.claimed(vocabulary.Channel) || h.top == vocabulary.Amplifier && !slices.Contains(concepts, "control")) {
			continue
		}
		feeds := slices.ContainsFunc(feedFields, func(f vocabulary.Field) bool { return h.of(f) > 0 })
		if h.forced != vocabulary.Unknown || !feeds || h.cells.share(lookControl) == 0 {
			continue
		}
		if !slices.ContainsFunc(h.cells.texts, func(t string) bool {
			return lookText(oneLine(t))&lookControl == 0 && notation.AnswerOf(t) != notation.No
		}) {
			base[i][vocabulary.Control] = max(base[i][vocabulary.Control], sureWords)
			for _, f := range feedFields {
				base[i][f] = barred
			}
		}
	}
}

// numberedControls takes the first column of a table under a title of controls alone for their
// names, where it numbers the rows and nothing speaks of loudspeakers; it reports whether it does.
func numberedControls(cols []*heading, title map[Kind]float64, base []worth) bool {
	if len(title) != 1 || title[Controls] == 0 || len(cols) < 2 {
		return false
	}
	first := cols[0]
	switch first.top {
	case vocabulary.Item, vocabulary.Tag, vocabulary.Quantity, vocabulary.Control, vocabulary.Unknown:
	case vocabulary.Model:
		if first.cells.share(lookTag) < 1 || first.cells.share(lookControl) > 0 { // tags of controls tell it by themselves
			return false
		}
	default:
		return false
	}
	if first.forced != vocabulary.Unknown || first.cells.cells < first.rows || first.cells.distinct < first.cells.cells || first.cells.share(lookWords) == 1 && first.cells.share(lookTag|lookControl) < 1 {
		return false
	}
	power := false
	for _, h := range cols[1:] {
		if h.ofLoudspeakers || h.top == vocabulary.Quantity && h.score >= named || h.cells.share(lookDevice|lookTagRange) > 0 {
			return false
		}
		power = power || h.of(vocabulary.ControlWatts) > 0 && h.cells.share(lookWatts|lookNumber) >= enoughAlike
	}
	if power {
		base[0][vocabulary.Control] = 2 * sureWords
	}
	return power
}

// placesDescribed takes a column of descriptions for places where another column says what the
// loudspeakers are, none is for places, and each row is described by other words than a device's.
func placesDescribed(cols []*heading, base []worth) {
	all := setting(cols)
	if slices.ContainsFunc([]vocabulary.Field{vocabulary.Zone, vocabulary.Room, vocabulary.Building, vocabulary.Floor, vocabulary.Site}, all.claimed) || !all.claimed(vocabulary.Tap) || !all.claimed(vocabulary.Quantity) {
		return
	}
	devices := slices.ContainsFunc(cols, func(h *heading) bool {
		return h.top != vocabulary.Quantity && h.top != vocabulary.Tap && (h.ofLoudspeakers || h.top == vocabulary.Model) && h.cells.cells > 0 && h.cells.share(lookWords) >= enoughAlike
	})
	for i, h := range cols {
		c := h.cells
		if devices && h.top == vocabulary.Describe && h.forced == vocabulary.Unknown && c.cells >= 3 && c.distinct == c.cells && c.share(lookRoom) >= 0.8 && c.share(lookDevice|lookMounting|lookStatus|lookControl|lookAmp) == 0 {
			base[i][vocabulary.Room] = max(base[i][vocabulary.Room], 2*sureWords)
		}
	}
}

// numberedAmplifiers takes the running numbers of a list of amplifiers for their names
// where nothing else names them.
func numberedAmplifiers(cols []*heading, about Kind, base []worth) {
	all := setting(cols)
	if about != Amplifiers || all.claimed(vocabulary.Amplifier) || all.claimed(vocabulary.Tag) || all.claimed(vocabulary.Model) {
		return
	}
	for i, h := range cols {
		if h.top == vocabulary.Item && h.score >= named && h.forced == vocabulary.Unknown && h.cells.cells == h.rows && h.cells.distinct == h.rows {
			base[i][vocabulary.Amplifier] = 2 * sureWords
			return
		}
	}
}

// answersOfState takes a column headed by a state ("montiert", "done") over
// answers for what has become of each row, not for a way of mounting it.
func answersOfState(cols []*heading, base []worth) {
	for i, h := range cols {
		if h.forced != vocabulary.Unknown || h.top != vocabulary.Mounting && h.score >= headerScore || h.cells.cells < 2 || h.cells.share(lookYes) < 0.8 {
			continue
		}
		if classOf(h.words)&classStatus != 0 || notation.DoneOf(h.words) == notation.Yes {
			base[i][vocabulary.Status] = max(base[i][vocabulary.Status], sureWords)
		}
	}
}

// adjust adds to what it is worth to give column i the field, where it is worth anything.
func adjust(base []worth, i int, f vocabulary.Field, by float64) {
	if i < len(base) && base[i][f] > 0 {
		base[i][f] += by
	}
}

// ownNames tells the column that names the rows from those that name something
// of theirs: of two columns that could be tags, the tags are those that
// come once each; and controls stand where names of controls do, whatever the
// header ("Controls" may be what each controls).
func ownNames(cols []*heading, base []worth) {
	const tooMany = 0.7 // more different values than that, of all, and a column may name the rows
	once := func(h *heading) bool { return h.cells.cells >= 5 && h.cells.distinct == h.cells.cells }
	for i, h := range cols {
		if h.of(vocabulary.Tag) >= 0.5 && once(h) && h.cells.share(lookTag|lookModel) >= 0.8 {
			for k, o := range cols {
				if k != i && o.of(vocabulary.Tag) >= 0.5 && float64(o.cells.distinct) <= tooMany*float64(o.cells.cells) {
					adjust(base, k, vocabulary.Tag, -0.5)
					adjust(base, i, vocabulary.Model, -0.3)
				}
			}
		}
		if h.top != vocabulary.Control && h.cells.cells >= 2 && h.cells.distinct == h.cells.cells && h.cells.share(lookControl) >= 0.9 {
			for k, o := range cols {
				if k != i && o.top == vocabulary.Control && o.cells.share(lookControl) < 0.2 {
					adjust(base, k, vocabulary.Control, -0.5)
				}
			}
		}
	}
}

// dampen lowers ratings of what the table does not name: no control, no control rating.
func dampen(cols []*heading, base []worth) {
	named := func(list ...vocabulary.Field) bool {
		return slices.ContainsFunc(cols, func(h *heading) bool {
			return slices.ContainsFunc(list, func(f vocabulary.Field) bool {
				return h.forced == f || h.of(f) >= 0.5 && (h.top == f || h.of(f) >= h.score-0.3)
			}) || slices.Contains(list, vocabulary.Control) && h.cells.share(lookControl) > 0.5
		})
	}
	lower := func(f vocabulary.Field, by float64) {
		for i, h := range cols {
			if h.forced != f {
				base[i][f] -= by
			}
		}
	}
	if !named(vocabulary.Control, vocabulary.ControlModel) {
		lower(vocabulary.ControlWatts, 0.3)
		lower(vocabulary.Level, 0.2)
	}
	switch {
	case !named(vocabulary.Amplifier, vocabulary.Channel, vocabulary.Circuit):
		lower(vocabulary.ChannelWatts, 0.15)
	case !named(vocabulary.Amplifier, vocabulary.Channel) && named(vocabulary.Tag) && named(vocabulary.Tap):
		lower(vocabulary.ChannelWatts, 0.2) // a list of loudspeakers by lines: the power beside the tap is theirs
	}
	for i, h := range cols { // "A-1" under "Amp channel"
		if h.of(vocabulary.Channel) > h.of(vocabulary.Amplifier) && h.cells.share(lookChannel|lookJoint) >= 0.8 {
			adjust(base, i, vocabulary.Amplifier, -0.4)
		}
	}
}

// neighbour is what the column on the left adds: watts beside a channel are
// its rating, a type beside a control is the control's.
func neighbour(cols []*heading, i int, f vocabulary.Field) float64 {
	if i == 0 || cols[i].of(f) == 0 {
		return 0
	}
	left, score := cols[i-1].best()
	if score < 0.5 {
		return 0
	}
	switch {
	case f == vocabulary.RatedWatts && !cols[i].ofLoudspeakers && (left == vocabulary.Channel || left == vocabulary.Amplifier || left == vocabulary.Control):
		return -0.3 // "max. W" there is theirs
	case f == vocabulary.ChannelWatts && left == vocabulary.Control:
		return -0.3 // and behind a control no output's
	case f == vocabulary.ChannelWatts && left == vocabulary.Channel && cols[i].volts > 0:
		return 0.25 // "Rated W at 70 V": of the output of the line
	case f == vocabulary.ChannelWatts && (left == vocabulary.Channel || left == vocabulary.Amplifier),
		f == vocabulary.ControlWatts && (left == vocabulary.Control || left == vocabulary.ControlModel),
		f == vocabulary.ControlModel && left == vocabulary.Control:
		return 0.12
	case f == vocabulary.CableType && left == vocabulary.Cable:
		return 0.08
	}
	return 0
}
