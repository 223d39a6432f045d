package audit

import (
	_ "embed"
	"fmt"

	"lineaudit/audit/schedule"
)

//go:embed doc/control-without-override.md
var controlWithoutOverrideDoc string

// controlWithoutOverride finds local controls that can turn an emergency message down.
var controlWithoutOverride = &Rule{
	Name:  "control-without-override",
	Title: "a local control in an emergency zone has no override",
	Why:   "Whoever turned the music down, or off, turned the emergency message down with it: it is not heard where it is needed.",
	Doc:   controlWithoutOverrideDoc,
	Limits: []Limit{
		{Name: "danger", Grade: Danger, Default: 0, Unit: "controls without override",
			Source: "local controls must not reduce emergency broadcasts: BS 5839-8, EN 50849, NFPA 72 ch. 24, DIN VDE 0833-4 (from memory, clauses not verified); relay and three-wire controls exist for this (RCF AT 40T, CT 61)"},
	},
	Silent: []string{
		"the zone is music only",
		"the schedule states an override: a relay, a third wire or fail-safe wiring",
		"the schedule does not say either way: then it is a question, not a finding",
		"the control is a remote one: its priorities are set elsewhere",
	},
	Cautions:  []string{cautionEmergency, cautionPaper},
	OnSite:    "play a message with the control at its lowest setting and listen; look for the relay or the third wire",
	Emergency: true,
	Check:     checkControlWithoutOverride,
}

func checkControlWithoutOverride(x *Examination) error {
	c := x.circuit
	for i, k := range x.Job.Controls {
		n := &c.controls[i]
		if !n.emergency || k.Remote.Yes || k.Status != schedule.Installed {
			continue
		}
		flag := overrideOf(x.Job, k)
		cl := &claim{key: controlKey(k), place: controlName(k), room: k.Room.Value, zone: zoneName(k.Zone), at: placeOf(flag.Source, k.At),
			pieces: n.pieces(), emergency: true, use: schedule.Emergency, unit: "controls without override",
			settles:   "whether " + controlName(k) + " can turn an emergency message down",
			equipment: modelEquipment("control model", k.Model),
			gaps: func() []gap {
				return []gap{{placeOf(k.Override.Source, k.At), "override", overrideQuestion(x.Job)}}
			},
			cells: func() []Evidence {
				cells := appendCell(nil, flag.Source, "override")
				cells = appendCell(cells, k.HasOff.Source, "off step")
				if len(cells) == 0 {
					cells = []Evidence{{At: k.At, Written: k.Name, Role: "control"}}
				}
				return cells
			}}
		what := fmt.Sprintf("%s stands before %s of an emergency line", k.Name, counted(n.pieces(), "loudspeaker"))
		switch {
		case flag.Had() && flag.Yes:
			cl.measured, cl.message = Exact(0), what+" and has an override"
		case flag.Had():
			cl.measured, cl.message = Exact(1), what+" and has no override"
		case k.HasOff.Yes:
			cl.measured, cl.message = between(0, 1), what+", has an OFF step, and no override is stated"
		default:
			cl.message = what + "; no override is stated"
		}
		if k.HasOff.Yes && !flag.Yes && flag.Had() {
			cl.message += "; its OFF step silences the message"
		}
		x.judge(cl)
	}
	return nil
}

// overrideOf is what the schedule says of a control's override: its own row,
// its zone's, else the whole job's.
func overrideOf(j *schedule.Job, k *schedule.Control) schedule.Flag {
	switch {
	case k.Override.Had():
		return k.Override
	case k.Zone != nil && k.Zone.Override.Had():
		return k.Zone.Override
	}
	return j.Override
}

// overrideQuestion asks once a job: the same text for every control.
func overrideQuestion(*schedule.Job) string {
	return "Does an emergency message override this control: by a relay, a third wire or fail-safe wiring?"
}
