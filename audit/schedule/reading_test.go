package schedule

import "testing"

// An outline tells how many parts there are and how they were read, and holds on to none.
func TestOutline(t *testing.T) {
	zone := &Zone{Name: "Pier"}
	j := &Job{File: "a.csv", Name: Said("Pier", Ref{Row: 1}), Zones: []*Zone{zone}, Loudspeakers: []*Loudspeaker{{Zone: zone}, {Zone: zone}},
		LeftOut: []LeftOut{{Reason: "a title"}}, Tables: []Table{{RowsRead: 2}}, RowsRead: 2}
	o := j.Outline()
	if o.File != j.File || o.Name != j.Name || o.RowsRead != 2 || len(o.Tables) != 1 || len(o.LeftOut) != 1 || len(o.Zones) != 1 || len(o.Loudspeakers) != 2 || len(o.Cables) != 0 {
		t.Errorf("%+v", o)
	}
	if o.Zones[0] != nil || o.Loudspeakers[0] != nil {
		t.Error("a part is held")
	}
}
