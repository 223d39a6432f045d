package audit

import (
	_ "embed"
	"fmt"
	"math"
	"slices"

	"lineaudit/audit/schedule"
)

//go:embed doc/voltage-mismatch.md
var voltageMismatchDoc string

// voltageMismatch finds loudspeakers tapped for another line voltage than theirs.
var voltageMismatch = &Rule{
	Name:  "voltage-mismatch",
	Title: "loudspeakers are tapped for another line voltage than that of their line",
	Why: "A tap for a lower voltage draws more than it is marked, saturates and burns its transformer or driver and overloads the channel; " +
		"a tap for a higher voltage draws less and is too quiet, which nobody notices until a message is not heard.",
	Doc: voltageMismatchDoc,
	Limits: []Limit{
		{Name: "caution", Grade: Caution, Default: 100, Unit: "% of line voltage",
			Source: "loudspeaker input voltage equals amplifier output voltage: RCF horn loudspeaker manual p. 9", Note: "a tap for a voltage above this draws less than it is marked"},
		{Name: "fault", Grade: Fault, Default: 100, Unit: "% of line voltage",
			Source: "never put a transformer on a line above its design voltage: QSC CX Series user manual p. 24", Note: "a tap for a voltage below this draws more than it is marked"},
	},
	Silent: []string{
		"70, 70.7 and 71 V are one nominal voltage",
		"the tap list gives the transformer for this line voltage as well: the load is recomputed, that is all",
		"the loudspeaker is not installed",
		"the tap voltage or the line voltage is only assumed: then the finding is possible, and a question",
	},
	Cautions: []string{cautionVolts, cautionPaper},
	OnSite:   "read the line voltage from the amplifier and the taps from the transformers; measure the impedance of the line",
	Tool:     "impedance meter",
	Check:    checkVoltageMismatch,
}

// A mismatch is the rows of one channel that are tapped for one other voltage.
type mismatch struct {
	channel int // -1: none
	tapV    float64
	rows    []int
}

func checkVoltageMismatch(x *Examination) error {
	c := x.circuit
	var found []mismatch
	matched := 0
next:
	for i := range c.rows {
		r := &c.rows[i]
		if r.part != counts || r.out != notOut || !r.tapped || r.lineV == 0 {
			continue
		}
		if !r.wrongV {
			matched++
			continue
		}
		ch := -1
		if len(r.channels) > 0 {
			ch = r.channels[0]
		}
		for k := range found {
			if found[k].channel == ch && found[k].tapV == r.tapV {
				found[k].rows = append(found[k].rows, i)
				continue next
			}
		}
		found = append(found, mismatch{ch, r.tapV, []int{i}})
	}
	if matched > 0 {
		x.pass(&claim{place: "taps", at: x.Job.Loudspeakers[0].At, measured: Exact(100), unit: "% of line voltage",
			message: counted(float64(matched), "row") + " tapped for the voltage of the line"})
	}
	for i := range found {
		x.mismatched(&found[i])
	}
	return nil
}

func (x *Examination) mismatched(m *mismatch) {
	c := x.circuit
	c.byPlace(m.rows)
	first := &c.rows[m.rows[0]]
	lineV := first.lineV
	grade := Fault
	if m.tapV > lineV {
		grade = Caution
	}
	limit := x.limit(grade, schedule.AnyUse)
	if limit == nil {
		return
	}
	cl, t := &claim{at: placeOf(first.l.TapVolts.Source, first.l.At)}, tally{}
	total, marked := Exact(0), Exact(0)
	sure := true
	for _, i := range m.rows {
		r := &c.rows[i]
		t.add(r, r.units)
		total, marked = total.plus(r.total()), marked.plus(r.marked.times(r.units))
		cl.pieces += pieceCount(r)
		cl.emergency = cl.emergency || r.emergency
		sure = sure && !taken(r.l.TapVolts.How)
	}
	volts70 := c.lineVoltsSource(m.channel)
	sure = sure && !taken(volts70.How)
	c.placeMismatch(m, cl)
	factor := powerRatio(m.tapV, lineV)
	effect := "draws more than its tap"
	if factor < 1 {
		effect = "draws less than its tap, too quiet"
	}
	cl.message = fmt.Sprintf("tapped for %s on a %s line, %s: %s instead of %s W as marked (%s times the power, %+.1f dB)",
		volts(m.tapV), volts(lineV), effect, t.sum(total), span(marked), figure(factor), 10*math.Log10(factor))
	cl.message += x.consequence(m)
	tapV := m.tapV
	cl.show = func(float64) (Interval, float64, string) {
		return Exact(math.Round(tapV*10) / 10), math.Round(lineV*10) / 10, "V"
	}
	cl.settles = "what these loudspeakers draw"
	cl.cells = func() []Evidence {
		var cells []Evidence
		for _, i := range m.rows {
			cells = c.rows[i].evidence(cells)
		}
		return appendCell(cells, volts70, "line voltage")
	}
	cl.gaps = func() []gap {
		return []gap{{placeOf(first.l.TapVolts.Source, first.l.At), "line voltage",
			fmt.Sprintf("Are these taps really marked for %s, and is the line really %s?", volts(m.tapV), volts(lineV))}}
	}
	certainty := Certain
	if !sure {
		certainty = Possible
	}
	x.found(cl, limit, certainty, "")
}

// taken reports whether a voltage is no more than a guess or a habit.
func taken(how schedule.How) bool {
	return how == schedule.Default || how == schedule.Estimated || how == schedule.UnitAssumed
}

// lineVoltsSource says where the voltage of a channel's line was had.
func (c *circuit) lineVoltsSource(channel int) schedule.Source {
	if channel < 0 {
		return c.job.LineVolts.Source
	}
	return c.job.LineVoltsOf(c.job.Channels[channel]).Source
}

// placeMismatch names the narrowest place that holds all rows: one
// loudspeaker row, one zone, else the channel.
func (c *circuit) placeMismatch(m *mismatch, cl *claim) {
	first := &c.rows[m.rows[0]]
	zone, room := first.zone, first.l.Room.Value
	model := first.l.Model
	for _, i := range m.rows {
		r := &c.rows[i]
		if r.zone != zone {
			zone = -1
		}
		if r.l.Room.Value != room {
			room = ""
		}
		if r.l.Model.Value != model.Value {
			model = schedule.Text{}
		}
	}
	cl.room = room
	cl.equipment = modelEquipment("loudspeaker model", model)
	if zone >= 0 {
		cl.zone = c.job.Zones[zone].Name
	}
	key := "line"
	if m.channel >= 0 {
		key = channelKey(c.job.Channels[m.channel])
	}
	cl.key = key + "\x1f" + volts(m.tapV)
	switch {
	case len(m.rows) == 1:
		cl.place = rowName(first.l)
	case zone >= 0:
		cl.place = "zone " + cl.zone
	case m.channel >= 0:
		cl.place = channelName(c.job.Channels[m.channel])
	default:
		cl.place = "loudspeakers tapped for " + volts(m.tapV)
	}
}

// consequence names the overloads that these taps cause, and those that they
// only add to.
func (x *Examination) consequence(m *mismatch) string {
	c := x.circuit
	var causes, adds []string
	note := func(n *node, name string) {
		switch {
		case !n.verdict.Checked || n.verdict.Passed || n.verdict.Grade < Fault || n.marked == n.load.Watts:
		case n.elsewhere:
			causes = append(causes, fmt.Sprintf("%s (%s W of %s W)", name, span(n.load.Watts), span(n.rating.watts)))
		default:
			adds = append(adds, name)
		}
	}
	for i, k := range x.Job.Controls {
		if n := &c.controls[i]; holdsAny(n, m.rows) {
			note(n, controlName(k))
		}
	}
	if m.channel >= 0 {
		note(&c.channels[m.channel], channelName(x.Job.Channels[m.channel]))
	}
	slices.Sort(causes)
	slices.Sort(adds)
	text := ""
	if len(causes) > 0 {
		text = "; it overloads " + listed(causes)
	}
	if len(adds) > 0 {
		text += "; it adds to the overload of " + listed(adds)
	}
	return text
}

func holdsAny(n *node, rows []int) bool {
	for _, m := range n.members {
		if position(rows, m.row) >= 0 {
			return true
		}
	}
	return false
}

// pieceCount is the number of loudspeakers of a row as far as it is known.
func pieceCount(r *row) float64 {
	if r.count.bounded() {
		return r.count.High
	}
	return r.count.Low
}
