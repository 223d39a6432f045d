package layout

import (
	"regexp"
	"slices"

	"lineaudit/ingest/vocabulary"
)

// What the rows of a table are about: the column that names each row, or
// the words for devices in it.

// minOther is the least share of the cells of a column that must name
// amplifiers or controls to make them what its table is about.
const minOther = 0.9

// subject tells whether the rows of a table are amplifiers, outputs or controls: its
// first column names one in each row, none twice, and nothing speaks of a loudspeaker; or
// a column that describes the rows names nothing else. The result is "" where neither holds.
func subject(cols []*heading, title map[Kind]float64) Kind {
	if outputsAlone(cols, title) >= 0 {
		return Channels
	}
	key := Kind("")
	first := true
	for _, h := range cols {
		if h.cells.cells == 0 {
			continue
		}
		if first && h.top != vocabulary.Item {
			first = false
			if k := keyKinds[h.top]; k != "" && (k != Channels || listed(cols)) && h.score >= named && h.cells.distinct == h.cells.cells && h.cells.total >= h.rows {
				key = k
			}
			if keyKinds[h.top] != "" || !describing[h.top] {
				continue
			}
		}
		if referring[h.top] && h.score >= named {
			continue
		}
		switch h.top {
		case vocabulary.Quantity, vocabulary.Tag, vocabulary.Tap:
			if serves := h.cells.share(lookTagRange) >= 0.5; !serves && (h.top != vocabulary.Tap && h.score >= named || h.ofLoudspeakers) {
				key = ""
			}
		}
		if !describing[h.top] || h.score < named && h.deviceShare(vocabulary.AmplifierDevice) < 1 {
			continue
		}
		if h.deviceShare(vocabulary.LoudspeakerDevice) > 0 {
			return ""
		}
		switch {
		case h.ratesAmplifiers() && !h.ofLoudspeakers && !setting(cols).claimed(vocabulary.Tap):
			return Amplifiers
		case h.deviceShare(vocabulary.ControlDevice) >= minOther:
			return Controls
		case h.deviceShare(vocabulary.AmplifierDevice) >= minOther:
			return Amplifiers
		}
	}
	return key
}

// outputsAlone finds the column of amplifiers in a table that lists their outputs: each row
// names an amplifier and an output, the same never twice, and states watts, and no row
// says anything of a loudspeaker or of where one hangs. It is -1 in any other table. Below a title
// of amplifiers alone the names may be any, if one of them stands on several rows.
func outputsAlone(cols []*heading, title map[Kind]float64) int {
	w := slices.IndexFunc(cols, func(h *heading) bool {
		return h.of(vocabulary.ChannelWatts) > 0 && h.cells.cells >= 2 && h.cells.share(lookNumber|lookWatts) >= enoughAlike && !h.ofLoudspeakers
	})
	if w < 0 {
		return -1
	}
	rated := cols[w].cells.lines
	titled := len(title) == 1 && title[Amplifiers] > 0
	amplifier, output := -1, -1
	for i, h := range cols {
		switch {
		case i == w || h.cells.cells == 0 || h.score < named:
		case amplifier < 0 && (h.top == vocabulary.Amplifier || describing[h.top] && (h.amplifiersIn(rated) || titled && h.cells.share(lookTag) >= enoughAlike && h.cells.distinct < h.cells.cells)):
			amplifier = i
		case amplifier >= 0 && output < 0 && h.of(vocabulary.Channel) >= named && (h.top == vocabulary.Channel || h.top == vocabulary.Zone):
			output = i
		case ofDevices[h.top]:
			return -1
		}
	}
	if amplifier < 0 || output < 0 {
		return -1
	}
	seen := map[string]bool{}
	for _, n := range rated {
		a, _ := cols[amplifier].cells.in(n)
		o, ok := cols[output].cells.in(n)
		if !ok || seen[a+"\n"+o] {
			return -1
		}
		seen[a+"\n"+o] = true
	}
	return amplifier
}

// ofDevices are the fields that say what a loudspeaker is, how many there are or where they hang.
var ofDevices = [vocabulary.Fields]bool{vocabulary.Tag: true, vocabulary.Model: true, vocabulary.Describe: true, vocabulary.Quantity: true, vocabulary.Tap: true, vocabulary.Zone: true,
	vocabulary.Room: true, vocabulary.Control: true, vocabulary.Mounting: true, vocabulary.Status: true, vocabulary.Length: true, vocabulary.Gauge: true}

// amplifiersIn reports whether a column names an amplifier in each of some lines, a merged or blank cell standing for the one above.
func (h *heading) amplifiersIn(lines []int) bool {
	for _, n := range lines {
		if t, ok := h.cells.in(n); ok && lookText(t)&lookAmp == 0 {
			return false
		}
	}
	return len(lines) > 0
}

// in returns the cell of a line, if it was sampled.
func (s *sample) in(n int) (string, bool) {
	i := slices.Index(s.lines, n)
	if i < 0 {
		return "", false
	}
	return s.texts[i], true
}

// reAmpRating finds the rating of an amplifier: of several outputs, or at a
// line voltage or an impedance.
var reAmpRating = regexp.MustCompile(`(?i)\b\d{1,2}\s*[x×]\s*(\d{2,4})\s*w\b|\b(\d{2,4})\s*w(?:atts?)?\s*(?:@|at|bei|an|à|a|op|/)\s*(?:\d{1,3}(?:[.,]\d)?\s*(?:v|Ω|ohm)|ch\b|channel|kanal|canal|voie|uscita|uitgang)`)

// leastAmp is less than the rating of any amplifier, and more than most taps, in watts; from memory.
const leastAmp = 80

// ratesAmplifiers reports whether most cells of a column are ratings of amplifiers.
func (h *heading) ratesAmplifiers() bool {
	n := 0
	for _, w := range h.cells.said {
		if w.is(amplifierRating) {
			n++
		}
	}
	return n > 0 && 10*n >= 7*h.cells.cells
}

func ratesAmplifier(t string) bool {
	m := reAmpRating.FindStringSubmatch(t)
	if m == nil {
		return false
	}
	v, ok := plainNumber(m[1] + m[2])
	return ok && v >= leastAmp
}

// keyKinds are the fields that name the rows of tables about other things than loudspeakers.
var keyKinds = [vocabulary.Fields]Kind{vocabulary.Amplifier: Amplifiers, vocabulary.Control: Controls, vocabulary.Channel: Channels}

// listed reports whether a column lists several tags in most cells: the loudspeakers that each row serves.
func listed(cols []*heading) bool {
	return slices.ContainsFunc(cols, func(h *heading) bool { return h.cells.share(lookTagRange) >= 0.5 })
}

// describing are the fields whose cells say what a row is.
var describing = [vocabulary.Fields]bool{vocabulary.Describe: true, vocabulary.Model: true, vocabulary.Kind: true, vocabulary.Tag: true, vocabulary.Item: true, vocabulary.Maker: true, vocabulary.ChannelWatts: true,
	vocabulary.FrameWatts: true, vocabulary.Tap: true, vocabulary.RatedWatts: true, vocabulary.ControlWatts: true, vocabulary.TotalWatts: true}

// referring are the fields whose cells name devices that a row belongs to, rather than the row's own.
var referring = [vocabulary.Fields]bool{vocabulary.Amplifier: true, vocabulary.Control: true, vocabulary.Channel: true, vocabulary.Circuit: true, vocabulary.Zone: true,
	vocabulary.Room: true, vocabulary.Building: true, vocabulary.Floor: true, vocabulary.From: true, vocabulary.To: true, vocabulary.Notes: true, vocabulary.Override: true,
	vocabulary.Cable: true, vocabulary.CableType: true, vocabulary.BoxName: true, vocabulary.ControlModel: true, vocabulary.Job: true, vocabulary.Site: true}

// deviceShare is the share of the cells of a column that name a sort of device.
func (h *heading) deviceShare(d vocabulary.Device) float64 {
	s := h.cells
	if s.cells == 0 || s.share(lookWords) < 0.5 {
		return 0
	}
	if s.devices == nil {
		s.devices = new([vocabulary.Devices]int)
		for _, t := range s.texts {
			if len(t) < 200 {
				s.devices[vocabulary.DeviceIn(t)]++
			}
		}
	}
	return float64(s.devices[d]) / float64(s.cells)
}

// otherDevices is the share of the cells of a column that name an amplifier or a control.
func (h *heading) otherDevices() float64 {
	tagged := h.cells.share(lookControl | lookAmp)
	return max(tagged, h.deviceShare(vocabulary.AmplifierDevice)+h.deviceShare(vocabulary.ControlDevice))
}

// ofLoudspeakers reports whether header words speak of loudspeakers, or of what they are tapped at.
func ofLoudspeakers(s *vocabulary.Scorer, words string) bool {
	return slices.ContainsFunc(s.Concepts(words), func(c string) bool { return c == "speaker" || c == "tap" || c == "transformer" })
}
