package layout

import (
	"fmt"
	"regexp"
	"slices"
	"strings"

	"lineaudit/ingest/vocabulary"
)

// A heading is a column on its way to a field.
type heading struct {
	col    int
	at     int      // line of the lowest header cell
	parts  []string // header words, outermost group first
	words  string   // joined
	cells  *sample
	rows   int                    // lines of the body
	forced vocabulary.Field       // by the house book
	said   []vocabulary.Candidate // one for each field that the words may mean
	top    vocabulary.Field       // the best by the words alone, and its score
	score  float64
	own    float64 // how the cells speak for top
	sure   float64 // what credible returned, less than 0 before it is asked
	unit   string
	volts  float64

	aside          string // why the table itself forces the field
	ofLoudspeakers bool   // the words speak of loudspeakers or taps
	replaces       string // headers of earlier states that this column stands behind
	earlier        []int  // the columns of these states, the latest first
	planned        bool   // a tap that is asked for, beside one that was found
}

// read asks the vocabulary what the header of the column says.
func (h *heading) read(s *vocabulary.Scorer) {
	h.sure = -1
	h.words = strings.Join(h.parts, " ")
	defer h.rank()
	if len(h.parts) == 0 {
		return
	}
	h.ofLoudspeakers = ofLoudspeakers(s, h.words)
	if h.ratesControls(s) {
		h.said = []vocabulary.Candidate{{Field: vocabulary.Control, Score: sureWords, Evidence: fmt.Sprintf("header %q names controls and rates them", h.words)}}
		return
	}
	offer := func(text string, factor float64) {
		r := s.Header(text)
		if h.said == nil {
			h.said = make([]vocabulary.Candidate, 0, len(r.Candidates)+2)
		}
		for _, c := range r.Candidates {
			c.Score *= factor
			if r.Numbered && h.volts == 0 {
				c.Score *= 0.9
			}
			h.offer(c)
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
		switch group := s.Header(h.parts[0]).Best(); {
		case group.Score < 0.5, group.Field == vocabulary.Ignored: // "Public address"
			own = 0.98
		case group.Score >= sureWords && keyed[group.Field]:
			own = 0.6
			if namesEach[s.Header(last).Best().Field] || mayBeTag(s.Header(last)) && h.cells.share(lookTag|lookControl|lookAmp) >= enoughAlike { // "Tag" under "Amplifier" is the amplifier's
				h.said = []vocabulary.Candidate{{Field: group.Field, Score: sureWords, Evidence: fmt.Sprintf("header %q under %q", last, h.parts[0])}}
				h.readWithCells(s)
				return
			}
		}
		offer(last, own)
		if s.Header(last).Explained < 0.5 {
			offer(h.parts[0], 0.8)
		}
	} else {
		if m := atPlaces.Of(last, 0); m != nil && s.Header(m[1]).Best().Score >= named {
			offer(m[1], saidOfHead)
			offer(last, saidOfWhole)
		} else {
			offer(last, 1)
		}
	}
	h.readWithCells(s)
}

// ratesControls reports whether a header names controls and says what each may carry, above cells that name
// them or tell where one is: "Control (6 W each)" above "R1".
func (h *heading) ratesControls(s *vocabulary.Scorer) bool {
	return namesRatedControls(s, h.words) && h.cells.share(lookTag|lookControl|lookYes|lookWords) >= enoughAlike && h.cells.share(lookWatts|lookNumber) == 0
}

// namesRatedControls reports whether header words are those of a column of controls, with a power behind them.
func namesRatedControls(s *vocabulary.Scorer, words string) bool {
	if !anyDigit(words) {
		return false
	}
	m := reRatedHeader.FindStringSubmatch(words)
	if m == nil {
		return false
	}
	bare := s.Header(m[1]).Best()
	return bare.Field == vocabulary.Control && bare.Score >= named
}

// reRatedHeader finds words with a power behind them: "Control (6 W each)", "Control, each 6 W".
var reRatedHeader = regexp.MustCompile(`^(\pL[\pL .-]*?)\s*(?:[,:(\[]|\s[–-])\s*(?:(?:\pL[\pL/.]*\s+){0,2})\d{1,3}(?:[.,]\d)?\s?[Ww](?:att)?\b[\pL\s./]*[)\]]?$`)

// reAtPlace finds a header about one thing at another: "LS am Ziel" is about loudspeakers.
var reAtPlace = regexp.MustCompile(`(?i)^(\pL[\pL ./]*?)\s+(?:(?:at|at the|am|beim|au|à la|en el|en la|al|alla|aan|aan het|op het)\s+|à l['’]\s*)(\pL[\pL ]*)$`)

// mayBeTag reports whether header words may as well mean tags as what they mean first: "Ref.".
func mayBeTag(r *vocabulary.Header) bool {
	return slices.ContainsFunc(r.Candidates, func(c vocabulary.Candidate) bool { return c.Field == vocabulary.Tag && c.Score >= named })
}

// namesEach are the fields whose words, under a group for a sort of thing, name each of these things.
var namesEach = [vocabulary.Fields]bool{vocabulary.Tag: true, vocabulary.Item: true}

// saidOfHead is what the words before "at" are worth without those behind, and
// saidOfWhole what all of them are.
const (
	saidOfHead  = 0.95
	saidOfWhole = 0.7
)

// keyed are the fields whose words, over several columns, say whose figures and names these are.
var keyed = [vocabulary.Fields]bool{vocabulary.Amplifier: true, vocabulary.Channel: true, vocabulary.Control: true, vocabulary.Circuit: true, vocabulary.Zone: true, vocabulary.Cable: true, vocabulary.CableType: true}

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
}{{lookCountWatts, "tap", false}, {lookWatts | lookRating, "power", false}, {lookLength, "length", false}, {lookOhm, "impedance", false}, {lookVolts, "voltage", false},
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
		h.offer(c)
	}
}

// offer takes what some words of the header may mean, if no others say it better.
func (h *heading) offer(c vocabulary.Candidate) {
	for i := range h.said {
		if h.said[i].Field == c.Field {
			if c.Score > h.said[i].Score {
				h.said[i] = c
			}
			return
		}
	}
	if c.Score > 0 {
		h.said = append(h.said, c)
	}
}

// candidate is what the words say of a field; its score is 0 if they do not mean it.
func (h *heading) candidate(f vocabulary.Field) vocabulary.Candidate {
	for i := range h.said {
		if h.said[i].Field == f {
			return h.said[i]
		}
	}
	return vocabulary.Candidate{}
}

func (h *heading) of(f vocabulary.Field) float64 {
	for i := range h.said {
		if h.said[i].Field == f {
			return h.said[i].Score
		}
	}
	return 0
}

// best is the best score of any field by the words alone.
func (h *heading) best() (vocabulary.Field, float64) { return h.top, h.score }

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
	if h.sure < 0 {
		h.sure = 0
		for i := range h.said {
			if c := &h.said[i]; c.Score > h.sure && (c.Score >= sureWords || h.cells.of(c.Field) > deniedBy) {
				h.sure = c.Score
			}
		}
	}
	return h.sure
}

func (h *heading) rank() {
	h.top, h.score = vocabulary.Unknown, 0
	for i := range h.said {
		if c := &h.said[i]; c.Score > h.score || c.Score == h.score && c.Field < h.top {
			h.top, h.score = c.Field, c.Score
		}
	}
}

// knownByNumber are the fields of things that are known by numbers as much as by names, and of states that are graded.
var knownByNumber = map[vocabulary.Field]bool{vocabulary.Building: true, vocabulary.Floor: true, vocabulary.Room: true, vocabulary.Zone: true, vocabulary.Item: true, vocabulary.Tag: true,
	vocabulary.Amplifier: true, vocabulary.Channel: true, vocabulary.Circuit: true, vocabulary.Control: true, vocabulary.Cable: true, vocabulary.Status: true}

// reword reads a heading anew with other words than those that stand over its column.
func (h *heading) reword(s *vocabulary.Scorer, words string) {
	h.parts, h.unit, h.volts, h.said = []string{words}, "", 0, nil
	h.read(s)
	h.own = h.cells.of(h.top)
}

// lettered reports whether most cells are small letters that come again, as those of the items of chapters do: "7.1", "a", "b", "7.2", "a".
func (s *sample) lettered() bool {
	letters := 0
	for _, t := range s.texts {
		if t = strings.Trim(t, " .()"); len(t) == 1 && t[0] >= 'a' && t[0] <= 'z' {
			letters++
		}
	}
	return 2*letters > s.cells && s.distinct < s.cells
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
	if f == vocabulary.Zone && said == 0 && len(h.parts) > 0 && h.cells.share(lookZone) < 0.5 && !h.cells.grouped() {
		e -= 0.5 // words under a header that speaks of something else
	}
	if said == 0 && h.unit != "" && vocabulary.Fits(f, h.unit) < 1 {
		e -= 0.8 // whatever the cells look like, the header's unit is another's
	}
	if (f == vocabulary.Item || f == vocabulary.Tag) && h.of(vocabulary.Item) > 0 && h.cells.lettered() {
		if f == vocabulary.Item {
			return sureWords
		}
		return 0
	}
	if f == vocabulary.Override && said == 0 {
		return 0 // yes and no may answer anything
	}
	if f == vocabulary.Quantity && said == 0 && knownByNumber[h.top] && top >= sureWords {
		return 0 // "Bldg 2": the numbers are those of buildings, however small
	}
	if f == vocabulary.Quantity && said == 0 && len(h.parts) > 0 && h.cells.many() {
		return 0 // numbers of frames, pages or posts under a word that is not known
	}
	if f == vocabulary.Quantity && h.top == f && h.cells.noQuantity(said) {
		return 0.3 * said
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
	if h.top == vocabulary.Ignored && top >= sureWords {
		misread = 0 // numbers of drawings, colours: they may look like anything
	}
	trust := max(0.7*weak, misread)
	return (0.35*e-0.12)*(1-trust) + (0.62*e+0.04)*trust
}

// column makes the finished column.
func (h *heading) column(p *plane, d decision, i int) Column {
	f := d.fields[i]
	c := Column{Col: h.col, At: p.ref(h.at, h.col), Header: h.words, Field: f, Unit: h.unit, Volts: h.volts, RunnerUp: d.runners[i], Planned: h.planned, Replaces: h.replaces, Earlier: h.earlier}
	var why []string
	switch {
	case h.aside != "" && h.words == "":
		why = append(why, "no header: "+h.aside)
		c.Confidence = 0.6
	case h.aside != "":
		why = append(why, fmt.Sprintf("header %q: %s", h.words, h.aside))
		c.Confidence = 0.85
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
		said := h.candidate(f)
		if said.Score == 0 {
			for _, a := range aliases[d.kind] {
				if a.to == f && h.of(a.from) > 0 {
					said = h.candidate(a.from)
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
