package audit

import (
	_ "embed"
	"fmt"

	"lineaudit/audit/schedule"
)

//go:embed doc/level-setting.md
var levelSettingDoc string

// levelSetting finds written control settings that leave the user too little or too much.
var levelSetting = &Rule{
	Name:  "level-setting",
	Title: "the written setting of a control is outside the usual range",
	Why:   "Set lower, the level of the zone was never balanced at its taps; set higher, the user has nothing left to turn up.",
	Doc:   levelSettingDoc,
	Limits: []Limit{
		{Name: "lowest", Grade: Caution, Default: 75, Unit: "% of travel", Source: "installer habit, common practice, no source"},
		{Name: "highest", Grade: Caution, Default: 80, Unit: "% of travel", Source: "installer habit, common practice, no source"},
	},
	Silent: []string{
		"no percentage is written",
		"the setting is at the edge of the range",
	},
	Cautions: []string{cautionPaper},
	OnSite:   "note the setting at which the zone is as loud as its neighbours",
	Check:    checkLevelSetting,
}

func checkLevelSetting(x *Examination) error {
	for i, k := range x.Job.Controls {
		level, ok := k.Level.Exact()
		if !ok || k.Status != schedule.Installed {
			continue
		}
		n := &x.circuit.controls[i]
		v := 100 * float64(level)
		lowest, haveLow := x.circuit.set.value(x.rule.Name, "lowest", schedule.AnyUse)
		highest, haveHigh := x.circuit.set.value(x.rule.Name, "highest", schedule.AnyUse)
		cl := &claim{key: controlKey(k), place: controlName(k), room: k.Room.Value, zone: zoneName(k.Zone), at: placeOf(k.Level.Source, k.At),
			pieces: n.pieces(), emergency: n.emergency, measured: Exact(v), unit: "% of travel", equipment: []equipment{{"habit", "control settings"}},
			cells: func() []Evidence { return appendCell(nil, k.Level.Source, "setting") }}
		switch {
		case haveLow && below(v, lowest.Value):
			cl.message = fmt.Sprintf("set to %s, below %s", percent(v), percent(lowest.Value))
			x.found(cl, &lowest, Certain, "")
		case haveHigh && past(v, highest.Value):
			cl.message = fmt.Sprintf("set to %s, above %s", percent(v), percent(highest.Value))
			x.found(cl, &highest, Certain, "")
		default:
			cl.message = "set to " + percent(v)
			x.pass(cl)
		}
	}
	return nil
}
