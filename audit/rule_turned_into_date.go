package audit

import (
	_ "embed"
	"fmt"

	"lineaudit/audit/schedule"
)

//go:embed doc/turned-into-date.md
var turnedIntoDateDoc string

// turnedIntoDate finds values that a spreadsheet program turned into dates.
var turnedIntoDate = &Rule{
	Name:  "turned-into-date",
	Title: "a spreadsheet program turned a value into a date",
	Why:   "A tap of 1/2 W typed into a cell becomes a day; what the cell now holds is a number of days, and the tap is only what it most likely was.",
	Doc:   turnedIntoDateDoc,
	Limits: []Limit{
		{Name: "caution", Grade: Caution, Default: 0, Unit: "recovered cells", Source: "very common with spreadsheet programs (from memory)"},
	},
	Silent: []string{
		"the column is a date column",
	},
	Cautions: []string{cautionPaper},
	OnSite:   "read the tap from the transformer",
	OfJob:    true,
	Check:    checkTurnedIntoDate,
}

func checkTurnedIntoDate(x *Examination) error {
	type group struct {
		field string
		list  []schedule.Assumption
	}
	var groups []group
next:
	for _, a := range x.Job.Assumptions {
		if a.How != schedule.RecoveredDate {
			continue
		}
		for i := range groups {
			first := &groups[i].list[0]
			if groups[i].field == a.Field && first.At.Sheet() == a.At.Sheet() {
				groups[i].list = append(groups[i].list, a)
				continue next
			}
		}
		groups = append(groups, group{a.Field, []schedule.Assumption{a}})
	}
	for _, g := range groups {
		first := g.list[0]
		cl := &claim{key: "date\x1f" + first.At.Sheet() + "\x1f" + g.field, place: "column " + g.field, at: first.At, pieces: float64(len(g.list)),
			measured: Exact(float64(len(g.list))), unit: "recovered cells", equipment: []equipment{{"habit", "fractions turned into dates"}},
			message: fmt.Sprintf("the cell holds a date, %s; the %s was taken as %s", first.Written, g.field, first.TakenAs),
			cells: func() []Evidence {
				var cells []Evidence
				for _, a := range g.list {
					cells = append(cells, Evidence{At: a.At, Written: a.Written, Role: "date"})
				}
				return cells
			}}
		if n := len(g.list); n > 1 {
			cl.message = fmt.Sprintf("%d cells of %s hold dates; the first, %s, was taken as %s", n, g.field, first.Written, first.TakenAs)
		}
		if l := x.loudspeakerAt(first.At); l != nil {
			cl.room, cl.zone = l.Room.Value, zoneName(l.Zone)
			if len(g.list) == 1 {
				cl.place = rowName(l)
			}
		}
		x.judge(cl)
	}
	return nil
}

// loudspeakerAt finds the loudspeaker that a cell's row describes.
func (x *Examination) loudspeakerAt(at schedule.Ref) *schedule.Loudspeaker {
	for _, l := range x.Job.Loudspeakers {
		if l.At.Sheet() == at.Sheet() && l.Rows.Holds(at) {
			return l
		}
	}
	return nil
}
