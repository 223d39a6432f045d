package ingest

import (
	"slices"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/notation"
)

// A picked is the rating that holds for a line voltage.
type picked struct {
	watts    schedule.Quantity[schedule.Watts]
	basis    schedule.Text
	channels int
	total    bool
}

// pick chooses, among ratings as written, the one that holds at a line
// voltage (0: unknown) for an amplifier with n channels (0: unknown). A rating
// into 2 to 16 ohm, a peak or one at another line voltage is no rating of the
// line: it is taken only where there is no other, and its basis says so.
func pick(list []ratedSeen, lineV float64, n int) picked {
	type choice struct {
		o    notation.RatedOutput
		at   seen
		rank int
	}
	var best []choice
	for _, r := range list {
		for _, o := range r.outputs {
			rank := 0
			switch {
			case o.LowImpedance || o.Ohms > 0 && o.Ohms <= highestDirect:
				rank = 5
			case o.Peak:
				rank = 4
			case len(o.AtV) > 0 && lineV != 0 && holdsAt(o.AtV, lineV):
				rank = 1
			case len(o.AtV) > 0 && lineV != 0:
				rank = 3
			default:
				rank = 2
			}
			if n > 0 && o.Channels > 0 && o.Channels != n && rank < 4 {
				rank += 10 // another form of the same frame
			}
			c := choice{o, r.at, rank}
			switch {
			case len(best) == 0 || c.rank < best[0].rank:
				best = []choice{c}
			case c.rank == best[0].rank:
				best = append(best, c)
			}
		}
	}
	if len(best) == 0 {
		return picked{}
	}
	first := best[0]
	p := picked{channels: first.o.Channels, total: first.o.Total && !first.o.PerChannel}
	low, high := first.o.W, first.o.W
	for _, c := range best[1:] {
		low, high = min(low, c.o.W), max(high, c.o.W)
		p.total = p.total && c.o.Total
	}
	p.watts = schedule.Between(schedule.Watts(low), schedule.Watts(high), first.at.source)
	switch first.rank % 10 {
	case 3, 4, 5:
		p.basis = schedule.Text{Value: first.at.text, Source: first.at.source}
	}
	return p
}

func holdsAt(volts []float64, lineV float64) bool {
	for _, v := range volts {
		if sameClass(v, lineV) {
			return true
		}
	}
	return false
}

// ratingsBeside settles the ratings that stand behind the names of amplifiers:
// "Amp 1 (240 W)" beside several outputs is what all of them give together.
func (b *builder) ratingsBeside() {
	b.ratingsOfFrames()
	for _, a := range b.job.Amplifiers {
		for _, r := range b.beside[a] {
			b.rateWhole(a, r)
		}
	}
}

// A frameCell is a rating in a row of an output below a header that speaks of
// amplifiers.
type frameCell struct {
	channel *schedule.Channel
	rating  ratedSeen
}

// ratingsOfFrames settles these: one cell beside several outputs speaks of the
// amplifier; a figure in the row of each is that of the output, told aloud where
// all of them bear the same one.
func (b *builder) ratingsOfFrames() {
	of := make(map[*schedule.Amplifier][]frameCell)
	for _, f := range b.frames {
		of[f.channel.Amplifier] = append(of[f.channel.Amplifier], f)
	}
	for _, a := range b.job.Amplifiers {
		list := of[a]
		if len(list) == 0 {
			continue
		}
		if len(list) > 1 && !slices.ContainsFunc(list, func(f frameCell) bool { return f.rating.at.source.At != list[0].rating.at.source.At }) {
			b.rateWhole(a, list[0].rating)
			continue
		}
		for _, f := range list {
			b.noteChannelRating(f.channel, f.rating.outputs, f.rating.at)
		}
		if same := !slices.ContainsFunc(list, func(f frameCell) bool { return f.rating.at.text != list[0].rating.at.text }); same && len(list) > 1 {
			b.take(list[0].rating.at, "channel rating", "that of each output", schedule.LikelierReading, "it stands in the row of each output, below a word for amplifiers")
		}
	}
}

// rateWhole notes a power said of an amplifier by its name: that of its output,
// or of all of them together where there are several and nothing says "each".
func (b *builder) rateWhole(a *schedule.Amplifier, r ratedSeen) {
	each := slices.ContainsFunc(r.outputs, func(o notation.RatedOutput) bool { return o.Channels > 0 && !o.Total || o.PerChannel })
	switch {
	case each || len(a.Channels) <= 1 && b.slots[a.Key] <= 1:
		b.ampRated[a] = append(b.ampRated[a], r)
	case len(b.frameRated[a]) == 0:
		r.at.source.How, r.at.source.Because = schedule.LikelierReading, "said of an amplifier with several outputs"
		b.frameRated[a] = append(b.frameRated[a], r)
		b.ask(r.at.source.At, "channel rating", "“"+short(r.at.source.Written)+"”: is it of each output or of all together? It is taken as of all.",
			"the rating of the channels of "+a.Name)
	}
}

// ratings settles the ratings of channels, frames and controls.
func (b *builder) ratings() {
	for _, c := range b.job.Channels {
		b.rateChannel(c)
	}
	for _, a := range b.job.Amplifiers {
		if p := pick(b.frameRated[a], b.ampVoltage(a), 0); p.watts.Had() {
			a.Rated = p.watts
			b.frameAsChannel(a, p)
		}
		if p := pick(b.ampRated[a], b.ampVoltage(a), b.slots[a.Key]); p.total && !a.Rated.Had() {
			a.Rated = p.watts
		}
	}
	for _, c := range b.job.Controls {
		b.rateControl(c)
	}
}

// ampVoltage is the line voltage of an amplifier's channels, 0 if unknown.
func (b *builder) ampVoltage(a *schedule.Amplifier) float64 {
	for _, c := range a.Channels {
		if v, ok := b.job.LineVoltsOf(c).Exact(); ok {
			return float64(v)
		}
	}
	v, _ := b.job.LineVolts.Exact()
	return float64(v)
}

// rateChannel gives a channel its own rating, else that of each channel of its
// amplifier. A total of the frame is no rating of a channel, the rating of one
// output none of a bridged pair, and a bridged rating none of one output.
func (b *builder) rateChannel(c *schedule.Channel) {
	v, _ := b.job.LineVoltsOf(c).Exact()
	p := pick(b.channelRated[c], float64(v), 0)
	if !p.watts.Had() && c.Amplifier != nil {
		p = pick(ofPairs(b.ampRated[c.Amplifier], c.Pair), float64(v), b.slots[c.Amplifier.Key])
		if p.total {
			return
		}
	}
	if !p.watts.Had() {
		if p = pick(ofPairs(b.titlesFor(c), c.Pair), float64(v), 0); p.total {
			return
		}
	}
	if p.watts.Had() && len(b.channelRated[c]) > 1 && p.watts.Low != p.watts.High {
		b.disagree(b.channelRated[c], "channel rating", "channel "+c.Label())
	}
	if c.Rated.Had() {
		return
	}
	c.Rated, c.RatedBasis = p.watts, p.basis
}

// ofPairs are the ratings that are said of bridged outputs, or those that are not.
func ofPairs(list []ratedSeen, bridged bool) []ratedSeen {
	var out []ratedSeen
	for _, r := range list {
		r.outputs = slices.DeleteFunc(slices.Clone(r.outputs), func(o notation.RatedOutput) bool { return o.Bridged != bridged })
		if len(r.outputs) > 0 {
			out = append(out, r)
		}
	}
	return out
}

// titlesFor are the ratings in title blocks that hold for a channel: those of the
// sheet that names it, where the sheets of a book state their own.
func (b *builder) titlesFor(c *schedule.Channel) []ratedSeen {
	sheets := make(map[string][]ratedSeen)
	for _, r := range b.ampTitle {
		sheets[r.at.source.At.Sheet()] = append(sheets[r.at.source.At.Sheet()], r)
	}
	if len(sheets) > 1 {
		return sheets[c.At.Sheet()]
	}
	return b.ampTitle
}

// disagree asks which of several ratings of one thing holds.
func (b *builder) disagree(list []ratedSeen, field, of string) {
	first, last := list[0].at, list[len(list)-1].at
	b.ask(last.source.At, field, "the "+field+" of "+of+" is “"+short(last.source.Written)+"” here and “"+short(first.source.Written)+"” in "+
		first.source.At.String()+": which holds?", "the "+field+" of "+of)
}

// frameAsChannel is for a frame with one channel: its rating is that of the channel.
func (b *builder) frameAsChannel(a *schedule.Amplifier, p picked) {
	n := b.slots[a.Key]
	if n > 1 || n == 0 && len(a.Channels) != 1 {
		return
	}
	for _, c := range a.Channels {
		if !c.Rated.Had() {
			c.Rated, c.RatedBasis = p.watts, p.basis
			if n == 0 {
				s := seen{source: p.watts.Source}
				b.take(s, "channel rating", plain(float64(p.watts.Low))+" W", schedule.LikelierReading, "the amplifier has one channel in use")
				c.Rated.How, c.Rated.Because = schedule.LikelierReading, "the amplifier has one channel in use"
			}
		}
	}
}

// rateControl gives a control its rating: as stated, else what its model's
// name holds.
func (b *builder) rateControl(c *schedule.Control) {
	v := b.job.LineVoltsOf(c.Channel)
	lineV, _ := v.Exact()
	list := b.controlRated[c]
	if len(list) == 0 {
		list = b.controlTitle
	}
	if p := pick(list, float64(lineV), 0); p.watts.Had() {
		c.Rated = p.watts
		if len(list) > 1 && p.watts.Low != p.watts.High {
			b.disagree(list, "control rating", "control "+c.Name)
		}
		if len(c.RatedVolts) == 0 {
			for _, r := range list {
				for _, o := range r.outputs {
					if o.W != float64(p.watts.Low) {
						continue
					}
					for _, x := range o.AtV {
						c.RatedVolts = append(c.RatedVolts, schedule.Exactly(schedule.Volts(x), r.at.source))
					}
					if r.at.col != nil && r.at.col.Volts != 0 && len(o.AtV) == 0 {
						c.RatedVolts = append(c.RatedVolts, schedule.Exactly(schedule.Volts(r.at.col.Volts),
							schedule.Source{At: r.at.col.At, Written: r.at.col.Header, How: schedule.FromTitle, Because: "said in the header"}))
					}
				}
			}
		}
		return
	}
	if !c.Model.Had() {
		return
	}
	for _, m := range notation.ModelRatings(c.Model.Value) {
		if !m.Unit && !usualRating(m.W) {
			continue
		}
		src := c.Model.Source
		src.How, src.Because = schedule.FromModelName, "“"+m.Text+"” in the model’s name"
		c.Rated = schedule.Exactly(schedule.Watts(m.W), src)
		b.take(seen{source: c.Model.Source, text: c.Model.Value}, "control rating", plain(m.W)+" W", schedule.FromModelName, src.Because)
		return
	}
}
