package audit

import (
	_ "embed"
	"fmt"
	"slices"

	"lineaudit/audit/schedule"
)

//go:embed doc/emergency-on-one-circuit.md
var emergencyOnOneCircuitDoc string

// emergencyOnOneCircuit finds emergency zones that one cut cable or one failed amplifier silences.
var emergencyOnOneCircuit = &Rule{
	Name:  "emergency-on-one-circuit",
	Title: "an emergency zone of a two-circuit system hangs on one circuit or one amplifier",
	Why:   "One cut cable, or one failed amplifier, silences the whole zone.",
	Doc:   emergencyOnOneCircuitDoc,
	Limits: []Limit{
		{Name: "caution", Grade: Caution, Default: 0, Unit: "zones without a second circuit or amplifier",
			Source: "a single amplifier or circuit failure must not lose the zone: EN 60849 as reported (scribd 476259158); two lines per area: efst-gmbh.de on VDE 0833-4; other codes differ"},
	},
	Silent: []string{
		"nothing in the schedule says that its zones have two circuits: whether the code in force asks for it is a question, once a job",
		"the zone is music only, or has one loudspeaker",
		"the zone's two circuits hang on two amplifiers",
	},
	Cautions:  []string{cautionEmergency, cautionPaper},
	OnSite:    "open one circuit at the amplifier and listen whether the zone still speaks",
	Emergency: true,
	Check:     checkEmergencyOnOneCircuit,
}

func checkEmergencyOnOneCircuit(x *Examination) error {
	c := x.circuit
	asked := false
	for i, z := range x.Job.Zones {
		n := &c.zones[i]
		if !n.emergency || n.pieces() < 2 {
			continue
		}
		channels := c.channelsOfZone(n)
		if len(channels) == 0 {
			continue
		}
		amplifiers := map[*schedule.Amplifier]bool{}
		for _, ch := range channels {
			amplifiers[x.Job.Channels[ch].Amplifier] = true
		}
		cl := &claim{key: zoneKey(z), place: "zone " + z.Name, room: z.Room.Value, zone: z.Name, at: placeOf(z.ABCircuits.Source, z.At), use: schedule.Emergency,
			pieces: n.pieces(), emergency: true, measured: Exact(0), unit: "zones without a second circuit or amplifier",
			cells: func() []Evidence {
				cells := []Evidence{{At: placeOf(z.ABCircuits.Source, z.At), Written: cmpOr(z.ABCircuits.Written, z.Name), Role: "zone"}}
				for _, ch := range channels {
					cells = append(cells, Evidence{At: x.Job.Channels[ch].At, Written: x.Job.Channels[ch].Name, Role: "channel"})
				}
				return cells
			}}
		first := channelName(x.Job.Channels[channels[0]])
		switch {
		case len(channels) > 1 && len(amplifiers) > 1:
			cl.message = fmt.Sprintf("on %d channels of %d amplifiers", len(channels), len(amplifiers))
		case !c.twoCircuits:
			if !asked {
				asked = true
				x.ask([]gap{{z.At, "emergency circuits", "Does the code in force ask for two circuits on two amplifiers in each emergency zone? The schedule shows one."}},
					"whether the emergency zones may hang on one circuit")
			}
			continue
		case len(channels) > 1:
			cl.measured = Exact(1)
			cl.message = fmt.Sprintf("both circuits hang on one amplifier: %s and %s", first, channelName(x.Job.Channels[channels[1]]))
		default:
			cl.measured = Exact(1)
			cl.message = fmt.Sprintf("all %s hang on %s, although the system has two circuits a zone", counted(n.pieces(), "loudspeaker"), first)
		}
		x.judge(cl)
	}
	return nil
}

// channelsOfZone lists the channels that feed the rows of a zone.
func (c *circuit) channelsOfZone(n *node) []int {
	var out []int
	for _, m := range n.members {
		if r := &c.rows[m.row]; r.part == counts {
			for _, ch := range r.channels {
				out = appendNew(out, ch)
			}
		}
	}
	slices.SortFunc(out, func(a, b int) int { return c.job.Channels[a].At.Compare(c.job.Channels[b].At) })
	return out
}
