package schedule

import (
	"reflect"
	"testing"
)

// fullJob has every part and every pointer set.
func fullJob() *Job {
	a := &Amplifier{Key: "a1", Name: "A1"}
	ch := &Channel{Key: "1", Name: "1", Amplifier: a}
	partner := &Channel{Key: "2", Name: "2", Amplifier: a}
	ch.Bridged = []*Channel{partner}
	a.Channels = []*Channel{ch, partner}
	up := &Control{Key: "vc0", Name: "VC-0", Channel: ch}
	z := &Zone{Key: "z", Name: "Rink", Channel: ch, Channels: []*Channel{ch, partner}}
	run := &Cable{Key: "c1", Zone: z, Channel: ch, Control: up}
	k := &Control{Key: "vc1", Name: "VC-1", Zone: z, Channel: ch, Parent: up, Run: run, RatedVolts: []Quantity[Volts]{{Low: 100, High: 100}}}
	z.Control = k
	l := &Loudspeaker{Zone: z, Control: k, Channel: ch, Split: []*Channel{ch, partner}, Run: run, Tags: []string{"S1"}, Offered: []TapOffer{{Watts: 5}}}
	a.LowImpedance = []*Loudspeaker{l}
	run.From = End{Amplifier: a, Channel: ch, Control: up}
	run.To = End{Zone: z, Loudspeaker: l}
	left := &Loudspeaker{Zone: z}
	return &Job{File: "x.csv", Amplifiers: []*Amplifier{a}, Channels: []*Channel{ch, partner}, Zones: []*Zone{z}, Controls: []*Control{up, k},
		Loudspeakers: []*Loudspeaker{l}, Cables: []*Cable{run}, Totals: []Total{{Rows: []*Loudspeaker{l}}},
		Measurements: []Measurement{{Channel: ch, Control: k, Zone: z, Loudspeaker: l}},
		LeftOut:      []LeftOut{{Would: []*Loudspeaker{left}}}, Refused: []Refusal{{Field: "tap"}}, Assumptions: []Assumption{{Field: "tap"}}, Questions: []Question{{Field: "tap"}}, Tables: []Table{{Sheet: "S"}}}
}

// pointers collects every pointer to a struct of the model below v.
func pointers(v reflect.Value, seen map[uintptr]bool) {
	switch v.Kind() {
	case reflect.Pointer:
		if v.IsNil() || seen[v.Pointer()] {
			return
		}
		seen[v.Pointer()] = true
		pointers(v.Elem(), seen)
	case reflect.Slice:
		if v.Len() > 0 {
			seen[v.Pointer()] = true
		}
		for i := range v.Len() {
			pointers(v.Index(i), seen)
		}
	case reflect.Struct:
		for _, field := range v.Fields() {
			pointers(field, seen)
		}
	}
}

func TestCloneSharesNothing(t *testing.T) {
	j := fullJob()
	c := j.Clone()
	if !reflect.DeepEqual(j, c) {
		t.Error("the copy differs from the original")
	}
	of, oc := map[uintptr]bool{}, map[uintptr]bool{}
	pointers(reflect.ValueOf(j), of)
	pointers(reflect.ValueOf(c), oc)
	for p := range oc {
		if of[p] {
			t.Errorf("the copy shares memory at %x with the original", p)
		}
	}
	if len(oc) != len(of) {
		t.Errorf("the copy has %d parts, the original %d", len(oc), len(of))
	}
	if l := c.Loudspeakers[0]; l.Control != c.Controls[1] || l.Control.Parent != c.Controls[0] || l.Channel != c.Channels[0] || c.Cables[0].To.Loudspeaker != l {
		t.Error("pointers of the copy do not lead to its own parts")
	}
}

func TestCloneOfChangedJob(t *testing.T) {
	j := fullJob()
	before := fullJob()
	c := j.Clone()
	c.Loudspeakers[0].Tap = Exactly[Watts](5, Source{How: Stated})
	c.Loudspeakers[0].Offered[0].Watts = 99
	c.Controls[1].Parent = nil
	c.Totals[0].Rows[0] = nil
	if !reflect.DeepEqual(j, before) {
		t.Error("changing the copy changed the original")
	}
}
