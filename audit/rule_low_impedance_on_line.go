package audit

import (
	_ "embed"
	"fmt"

	"lineaudit/audit/line"
)

//go:embed doc/low-impedance-on-line.md
var lowImpedanceOnLineDoc string

// lowImpedanceOnLine finds loudspeakers without a line transformer on a constant-voltage line.
var lowImpedanceOnLine = &Rule{
	Name:  "low-impedance-on-line",
	Title: "a loudspeaker without a line transformer hangs on a constant-voltage line",
	Why: "It asks for the square of the line voltage over a few ohms, many times what the channel can give: the amplifier protects itself or fails, " +
		"everything on the line falls silent, and the loudspeaker may burn.",
	Doc: lowImpedanceOnLineDoc,
	Limits: []Limit{
		{Name: "danger", Grade: Danger, Default: 0, Unit: "low-impedance loudspeakers on a line",
			Source: "low-impedance loudspeakers on 70 V outputs are not acceptable: Bogen WV100 manual p. 8"},
	},
	Silent: []string{
		"the channel is a low-impedance one",
		"the row states a tap: the ohms are those of the loudspeaker behind its transformer",
		"nothing else on the channel has a tap and only the job as a whole names a line voltage: then it is a question",
	},
	Cautions: []string{cautionHeat, cautionVolts, cautionPaper},
	OnSite:   "disconnect it and look for a transformer and its tap; measure the impedance of the line with and without it",
	Tool:     "impedance meter",
	Check:    checkLowImpedanceOnLine,
}

func checkLowImpedanceOnLine(x *Examination) error {
	c := x.circuit
	type group struct {
		channel, zone int
		model         string
		rows          []int
	}
	var groups []group
next:
	for i := range c.rows {
		r := &c.rows[i]
		if r.part != counts || r.out != lowImpedance {
			continue
		}
		g := group{channel: -1, zone: r.zone, model: folded(r.l.Model.Value), rows: []int{i}}
		if len(r.channels) > 0 {
			g.channel = r.channels[0]
		}
		for k := range groups {
			if groups[k].channel == g.channel && groups[k].zone == g.zone && groups[k].model == g.model {
				groups[k].rows = append(groups[k].rows, i)
				continue next
			}
		}
		groups = append(groups, g)
	}
	for _, g := range groups {
		x.lowImpedanceGroup(g.channel, g.rows)
	}
	return nil
}

func (x *Examination) lowImpedanceGroup(channel int, rows []int) {
	c := x.circuit
	c.byPlace(rows)
	first := &c.rows[rows[0]]
	l := first.l
	key, where, rated := "line", "the line", Interval{}
	if channel >= 0 {
		ch := x.Job.Channels[channel]
		key, where, rated = channelKey(ch), channelName(ch), c.channels[channel].rating.watts
	}
	cl := &claim{
		key: key + "\x1f" + zoneName(l.Zone) + "\x1f" + folded(l.Model.Value), place: rowName(l), room: l.Room.Value, zone: zoneName(l.Zone),
		at: placeOf(l.LowImpedance.Source, l.At), unit: "low-impedance loudspeakers on a line", settles: "whether it may hang there",
		equipment: modelEquipment("loudspeaker model", l.Model),
		cells: func() []Evidence {
			var cells []Evidence
			for _, i := range rows {
				cells = c.rows[i].evidence(cells)
			}
			return appendCell(cells, c.lineVoltsSource(channel), "line voltage")
		},
		gaps: func() []gap {
			return []gap{{placeOf(l.LowImpedance.Source, l.At), "tap", "Has " + rowName(l) + " a line transformer, and which tap is it set to; or is " + where + " a low-impedance output?"}}
		},
	}
	pieces := Exact(0)
	for _, i := range rows {
		pieces = pieces.plus(c.rows[i].count)
		cl.emergency = cl.emergency || c.rows[i].emergency
	}
	cl.pieces = pieces.Low
	if first.lineV <= 0 || !c.surelyLine(channel, first) {
		cl.measured = Interval{}
		cl.message = span(quantity(l.LowImpedance)) + " ohm"
		x.judge(cl)
		return
	}
	if channel >= 0 {
		cl.pieces = max(cl.pieces, c.channels[channel].pieces()) // all of the channel falls silent
	}
	ohms := quantity(l.LowImpedance)
	watts := line.Watts(first.lineV, ohms.Low)
	cl.measured = pieces
	cl.message = fmt.Sprintf("%s x %s ohm without a tap on a %s line: each asks for %s x %s / %s ohm = %s W", span(pieces), span(ohms), volts(first.lineV),
		volts(first.lineV), volts(first.lineV), figure(ohms.Low), figure(watts))
	if rated.exact() && rated.Low > 0 {
		cl.message += fmt.Sprintf(" of a %s W channel", figure(rated.Low))
		cl.show = func(float64) (Interval, float64, string) { return pieces.scaled(watts), rated.Low, "W" }
	}
	x.judge(cl)
}

// surelyLine reports whether a low-impedance row hangs on what is certainly a
// constant-voltage line: its channel has a voltage of its own, or something
// else on the channel, or beside it in its zone or behind its control, has a tap.
func (c *circuit) surelyLine(channel int, r *row) bool {
	if channel >= 0 && c.job.Channels[channel].LineVolts.Had() && !taken(c.job.Channels[channel].LineVolts.How) {
		return true
	}
	for i := range c.rows {
		o := &c.rows[i]
		if o.part != counts || !o.tapped || o.out != notOut {
			continue
		}
		if channel >= 0 && position(o.channels, channel) >= 0 || channel < 0 && (r.zone >= 0 && o.zone == r.zone || r.control >= 0 && o.control == r.control) {
			return true
		}
	}
	return false
}
