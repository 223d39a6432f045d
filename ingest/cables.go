package ingest

import (
	"math"
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// A length is what a cell says of a length in metres.
type length struct {
	schedule.Quantity[schedule.Metres]
	loop, oneWay bool
	times        int
}

// metres reads a length. A figure without a unit takes that of the header,
// else that of the rest of the workbook; if nothing tells, it lies between
// that many feet and that many metres.
func (b *builder) metres(s seen) (length, bool) {
	if !s.had() {
		return length{}, false
	}
	text, style := b.readable(&s, notDate)
	header, scale := notation.UnitUnknown, 1.0
	switch s.unit() {
	case "m":
		header = notation.Metre
	case "km":
		header, scale = notation.Metre, 1000
	case "cm":
		header, scale = notation.Metre, 0.01
	case "mm":
		header, scale = notation.Metre, 0.001
	case "ft":
		header = notation.Foot
	case "yd":
		header, scale = notation.Foot, 3
	case "in":
		header, scale = notation.Foot, 1.0/12
	}
	p, err := notation.ParseLength(text, style, header)
	if err != nil {
		b.misread(s, err)
		return length{}, false
	}
	if scale != 1 && p.Doubts.Has(notation.Bare) {
		p.Low, p.High = p.Low*scale, p.High*scale
	}
	l := length{loop: p.Loop, oneWay: p.OneWay, times: p.Times}
	low, high, known := p.Metres()
	if !known {
		unit, because := b.lengthUnit(s)
		s.source.How, s.source.Because = schedule.UnitAssumed, because
		switch unit {
		case notation.Metre:
			low, high = p.Low, p.High
			b.take(s, s.field.String(), "metres", schedule.UnitAssumed, because)
		case notation.Foot:
			low, high = p.Low*0.3048, p.High*0.3048
			b.take(s, s.field.String(), "feet", schedule.UnitAssumed, because)
		default:
			low, high = p.Low*0.3048, p.High
			b.take(s, s.field.String(), "feet to metres", schedule.UnitAssumed, because)
			at := s.source.At
			if s.col != nil {
				at = s.col.At
			}
			b.ask(at, s.field.String(), "are these lengths in feet or in metres?", "every loss that rests on them")
		}
	}
	if unsure(p.Doubts) {
		b.doubt(s, plain(low)+" m", p.Doubts)
	}
	l.Quantity = schedule.Between(schedule.Metres(low), schedule.Metres(high), s.source)
	return l, true
}

// runAlong reads the cable that a row of something else states: its length and
// its conductors. It fills c and enters it into the job; nil if the row says
// nothing of a cable of its own. A length that stands on every row of its line
// is one cable.
func (b *builder) runAlong(r *row, c *schedule.Cable) *schedule.Cable {
	s := r.own(vocabulary.Length)
	var l length
	hasLength := false
	c.At = r.At
	hasSize := b.conductor(r, c)
	if s.had() && !sized(s) {
		l, hasLength = b.metres(s)
		hasSize = hasSize || hasLength && b.sizeInHeader(c, s)
	} else {
		s, l, hasLength = b.lengthBesideSize(r)
		if hasLength && !hasSize {
			both := s
			both.text = s.source.Written
			hasSize = sized(both) && b.readConductor(c, both, vocabulary.Gauge)
		}
	}
	if !hasLength && !hasSize || b.lookOnly {
		return nil
	}
	if name := r.own(vocabulary.Cable); name.had() && !sized(name) {
		c.Name, c.Key = tidy(name.text), name.key()
	}
	repeats := hasLength && (r.t.runsRepeated() || r.homeRun(s))
	if hasLength {
		c.At = l.At
		b.setLength(r, c, l, s)
	}
	if repeats || !hasLength && !r.t.has(vocabulary.Length) {
		// one cable for each line, not for each row
		c.Reach, c.To = schedule.WholeLine, schedule.End{}
		if repeats && r.t.runsRepeat == repeatsOnOutputs {
			b.take(s, "what the length counts", "the line of the output", schedule.LikelierReading, "all rows of an output state the same length")
		}
		if b.oneLine(c, !repeats, repeats && (r.t.runsRepeat == repeatsOnOutputs || !r.zoneText().had())) {
			return nil
		}
		b.enterCable(c)
		return nil
	}
	if r.status != schedule.Installed {
		c.Status = r.status
	}
	b.enterCable(c)
	if c.To.Loudspeaker == nil && c.To.Control == nil && !hasLength {
		return nil
	}
	return c
}

// cableFields are the fields of cells that say something of a cable.
var cableFields = append(slices.Clip(sizeFields), vocabulary.Length, vocabulary.Material, vocabulary.Temperature, vocabulary.AreaNeeded)

// saysOfCable reports whether a cell of the row may say something of a cable.
func (r *row) saysOfCable() bool {
	for _, f := range cableFields {
		for _, c := range r.t.byField[f] {
			if r.wordings[c.i] != blankCell {
				return true
			}
		}
	}
	for _, c := range r.t.byField[vocabulary.Notes] {
		if s := r.at(c); s.had() && anyDigit(s.text) {
			return true
		}
	}
	return false
}

// lengthBesideSize is the length that stands in one cell with the size of the
// conductors, "2x2,5 - 60 m", or alone where others have both, "+25 m".
func (b *builder) lengthBesideSize(r *row) (seen, length, bool) {
	for _, f := range append(slices.Clip(sizeFields), vocabulary.Length, vocabulary.Notes) {
		for _, col := range r.t.byField[f] {
			s := r.at(col)
			_, rest, ok := notation.ConductorIn(s.text, col.style)
			if !s.had() || !ok && f == vocabulary.Notes {
				continue
			}
			if !ok {
				rest = strings.TrimLeft(s.text, "+ ")
			}
			rest = betweenCable.ReplaceAllString(strings.Trim(rest, " -–,;/()"), "")
			if l, err := notation.ParseLength(rest, col.style, notation.UnitUnknown); err == nil && l.Unit != notation.UnitUnknown {
				s.text, s.cell = rest, nil
				q, ok := b.metres(s)
				return s, q, ok
			}
		}
	}
	return seen{}, length{}, false
}

// betweenCable is a joining word behind a length, "40 m of".
var betweenCable = regexp.MustCompile(`(?i)\s+(?:of|in|von|de|da|di|van|mit|en)$`)

// sizeFields are the fields of cells that say what a cable is like.
var sizeFields = []vocabulary.Field{vocabulary.Gauge, vocabulary.CableType, vocabulary.Conductors, vocabulary.Cable}

// sized reports whether a cell names the size of a conductor.
func sized(s seen) bool {
	if s.col == nil {
		return false
	}
	_, _, ok := notation.ConductorIn(s.text, s.col.style)
	return ok
}

// oneLine reports whether the cable of a whole line is in the job already,
// and what it feeds narrowed down to what all its rows share.
func (b *builder) oneLine(c *schedule.Cable, bySize, anyZone bool) bool {
	for _, o := range b.job.Cables {
		if o.Reach != schedule.WholeLine || o.At.Sheet() != c.At.Sheet() || o.Key != c.Key && c.Key != "" || o.Channel != c.Channel ||
			o.Length.Low != c.Length.Low || o.Area.Low != c.Area.Low && bySize {
			continue
		}
		if c.Key == "" && (o.Zone != c.Zone && !(anyZone && c.Channel != nil) || o.Name != "") {
			continue
		}
		if o.Zone != c.Zone {
			o.Zone = nil
		}
		if o.Control != c.Control {
			o.Control = nil
		}
		return true
	}
	return false
}

func (b *builder) enterCable(c *schedule.Cable) {
	if c.Key == "" {
		c.Key = "cable at " + c.At.String()
	}
	b.job.Cables = append(b.job.Cables, c)
}

// setLength takes a length over and decides what it reaches.
func (b *builder) setLength(r *row, c *schedule.Cable, l length, s seen) {
	var says reachWords
	if s.col != nil {
		says = saysReach.Of(s.col.Header, 0)
	}
	c.Length = l.Quantity
	if l.loop || !l.oneWay && says.loop {
		c.Loop = true
		c.Length.Low, c.Length.High = c.Length.Low/2, c.Length.High/2
	}
	if l.times > 1 {
		c.Count = schedule.Exactly(schedule.Pieces(l.times), l.Source)
	}
	switch {
	case says.previous, addsOn.Of(s.source.Written, 0):
		c.Reach = schedule.FromPrevious
	case says.rack:
		c.Reach = schedule.FromRack
	case says.whole:
		c.Reach = schedule.WholeLine
	}
}

// addsOn reports whether a length is written as one that goes on from the device
// before: "+20 m", "10 m on".
var addsOn = remember.New(8192, func(text string, _ int) bool {
	rest, plus := strings.CutPrefix(strings.TrimSpace(text), "+")
	figure := strings.TrimLeft(rest, " ")
	return figure != "" && figure[0] >= '0' && figure[0] <= '9' && (plus || onwardWords.in(join.Fold(rest)))
})

// conductor reads what a row says of a cable's conductors, and reports
// whether it says anything.
func (b *builder) conductor(r *row, c *schedule.Cable) bool {
	had := false
	for _, f := range sizeFields {
		for _, col := range r.t.byField[f] {
			s := r.at(col)
			if !s.had() || f == vocabulary.Cable && !sized(s) {
				continue // its name
			}
			if b.readConductor(c, s, f) {
				had = true
			}
		}
	}
	if s := r.own(vocabulary.Material); s.had() {
		m, d, err := notation.ParseMaterial(s.text)
		if err != nil {
			b.misread(s, err)
		} else if m != notation.MaterialUnknown {
			b.doubt(s, string(m), d)
			c.Material = schedule.Text{Value: string(m), Source: s.source}
			had = true
		}
	}
	if s := r.own(vocabulary.Temperature); s.had() {
		text, style := b.readable(&s, notDate)
		text = strings.TrimRight(strings.TrimSpace(text), "°ºCc ")
		if n, err := notation.ParseNumber(text, style); err == nil {
			v := n.Value
			if s.unit() == "f" {
				v = (v - 32) / 1.8
			}
			c.Temperature = schedule.Exactly(schedule.Celsius(v), s.source)
		}
	}
	if s := r.own(vocabulary.AreaNeeded); s.had() {
		var need schedule.Cable
		if b.readConductor(&need, s, vocabulary.Gauge) {
			c.Needed = need.Area
		}
	}
	return had
}

// hintOf says what a bare figure in a column of sizes is.
func (b *builder) hintOf(s seen) notation.SizeHint {
	switch s.unit() {
	case "awg":
		return notation.HintAWG
	case "mm2":
		return notation.HintMM2
	case "mm":
		return notation.HintDiameter
	}
	return notation.HintNone
}

// readConductor reads one cell about a cable's conductors. A cable type need
// not hold a size.
func (b *builder) readConductor(c *schedule.Cable, s seen, f vocabulary.Field) bool {
	text, style := b.readable(&s, notation.GaugeColumn)
	if f == vocabulary.Conductors && !strings.ContainsAny(strings.ToLower(text), "x×/#²") && !strings.Contains(strings.ToLower(text), "awg") &&
		!strings.Contains(strings.ToLower(text), "mm") {
		return false // a number of cores
	}
	p, err := notation.ParseConductor(text, style, b.hintOf(s))
	if err != nil {
		if in, _, ok := notation.ConductorIn(text, style); ok {
			p, err = in, nil
		}
	}
	if err != nil {
		if f == vocabulary.Gauge {
			b.misread(s, err)
		}
		return false
	}
	if p.Material != notation.MaterialUnknown && !c.Material.Had() {
		c.Material = schedule.Text{Value: string(p.Material), Source: s.source}
	}
	if p.Parallel > 1 {
		c.Parallel = p.Parallel
	}
	if p.Class > 0 {
		c.Class = p.Class
	}
	if p.AWG == nil && p.AreaMM2 == 0 {
		if !c.Gauge.Had() && f == vocabulary.CableType {
			c.Gauge = s.asText()
		}
		return p.Material != notation.MaterialUnknown
	}
	if c.Area.Had() {
		return true
	}
	c.Gauge = s.asText()
	area := p.SmallestAreaMM2()
	source := s.source
	if p.AWG != nil {
		c.AWG = schedule.Exactly(schedule.Pieces(*p.AWG), s.source)
		if source.How < schedule.UnitAssumed {
			source.How, source.Because = schedule.Computed, "the area of the gauge"
		}
	}
	d := p.Doubts
	if d.Has(notation.AWGTaken) || d.Has(notation.AreaTaken) {
		source.How, source.Because = schedule.UnitAssumed, "the size is written without a unit"
	} else if d&^notation.Bare != 0 && source.How < schedule.UnitAssumed {
		source.How = schedule.LikelierReading
	}
	c.Area = schedule.Exactly(schedule.SquareMM(area), source)
	if unsure(d) {
		b.doubt(s, plain(math.Round(area*1000)/1000)+" mm²", d)
	}
	return true
}

// addChannelCable enters the cable that a list of outputs states beside them.
func (b *builder) addChannelCable(r *row) {
	if r.kind == amplifierRow && len(b.outletOf(r).channels) == 0 && !b.ampWithCable(r) {
		return
	}
	list := b.channelsOf(r)
	if len(list) != 1 {
		return
	}
	k := &schedule.Cable{Channel: list[0], Reach: schedule.WholeLine}
	if e := b.dir.byRow[r]; e != nil {
		k.Name, k.Key = tidy(e.name.text), e.name.key()
	}
	if b.runAlong(r, k); k.Length.Had() {
		k.Reach = schedule.WholeLine
		b.lineCable(r, k)
	}
}

// lineCable gives the cable of a list of lines to all that hangs on its line.
func (b *builder) lineCable(r *row, c *schedule.Cable) {
	e := b.dir.byRow[r]
	if e == nil || len(e.fed) == 0 || e.rows > 1 || !c.Length.Had() || c.To.Loudspeaker != nil || c.To.Control != nil {
		return
	}
	c.Reach = schedule.WholeLine
	if c.Name == "" {
		c.Name, c.Key = tidy(e.name.text), e.name.key()
	}
	for _, l := range e.fed {
		if l.Run == nil {
			l.Run = c
		}
	}
}

// zoneAsLine is the zone whose name stands under a word for lines, where no loudspeaker names a line
// of that name: "Home run | Foyer"; nil if none does.
func (b *builder) zoneAsLine(r *row) *schedule.Zone {
	s := r.own(vocabulary.Circuit)
	if !s.had() || r.own(vocabulary.Channel).had() || r.own(vocabulary.Amplifier).had() || b.dir.circuits[s.key()] || !strings.ContainsFunc(s.text, isLetter) || notation.KeyOf(s.text).Kind == notation.KeyLine {
		return nil
	}
	return b.knownZone(s.text)
}

// addCable makes a cable of a row of a cable schedule.
func (b *builder) addCable(r *row) {
	c := &schedule.Cable{At: r.At, Status: r.status}
	if s := r.first(vocabulary.Cable, vocabulary.Tag, vocabulary.Item); s.had() {
		c.Name, c.At = tidy(s.text), s.source.At
		c.Key = s.key()
	}
	c.Zone = b.zoneOf(r)
	var list []*schedule.Channel
	if z := b.zoneAsLine(r); z != nil && c.Zone == nil {
		c.Zone = z
	} else if list = b.channelsOf(r); len(list) > 0 {
		c.Channel = list[0]
	}
	if len(list) == 1 {
		b.fillChannel(r, list[0]) // a list of lines may rate their outputs
	}
	if m := b.controlText(r); m.name != "" {
		c.Control = b.control(m.at, m.name)
	}
	s := r.own(vocabulary.Length)
	l, hasLength := b.metres(s)
	hasSize := b.conductor(r, c)
	from, to := r.own(vocabulary.From), r.own(vocabulary.To)
	if r.feed != nil {
		to = r.own(vocabulary.Tag)
		if r.leadsToControl(to) {
			b.fedControl(r, to, c)
		}
	}
	if !hasLength && !hasSize && !from.had() && !to.had() {
		r.out, r.reason = schedule.EmptyRow, "no length, size or ends of a cable"
		return
	}
	c.From, c.To = b.end(r, from), b.end(r, to)
	if len(list) == 1 && !c.From.Resolved() && isRack(c.From.Text.Value) {
		c.From.Channel, c.From.Amplifier = list[0], list[0].Amplifier // "RACK", on the line A1-1
	}
	if to := c.To.Loudspeaker; to != nil && to.Run == nil {
		to.Run = c
	}
	if ctl := c.To.Control; ctl != nil && ctl.Run == nil {
		ctl.Run = c
	}
	if n, _ := b.pieces(r.own(vocabulary.Quantity)); n.Had() {
		c.Count = n
	}
	switch {
	case r.feed != nil, c.To.Resolved() && (c.From.Resolved() || isRack(c.From.Text.Value)):
		c.Reach = schedule.FromTo
	case c.Zone != nil || c.Channel != nil || c.Control != nil:
		c.Reach = schedule.WholeLine
	case c.To.Resolved() || c.From.Resolved():
		c.Reach = schedule.FromTo
	}
	if hasLength {
		b.setLength(r, c, l, s)
	}
	b.lineCable(r, c)
	if c.Channel == nil {
		c.Channel = c.From.Channel
	}
	if c.Zone == nil && c.To.Zone != nil {
		c.Zone = c.To.Zone
	}
	r.used = true
	b.enterCable(c)
	if !c.From.Resolved() && !c.To.Resolved() && c.Zone == nil && c.Channel == nil && c.Control == nil {
		b.ask(c.At, "cable", "what does cable "+c.Name+" connect?", "the loss on this cable")
	}
}
