package audit

import (
	"fmt"
	"math/rand/v2"
	"reflect"
	"testing"

	"lineaudit/audit/schedule"
)

// onSheet puts every cell below v on a sheet.
func onSheet(v reflect.Value, sheet string, seen map[uintptr]bool) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() && !seen[v.Pointer()] {
			seen[v.Pointer()] = true
			onSheet(v.Elem(), sheet, seen)
		}
	case reflect.Struct:
		if at, ok := v.Addr().Interface().(*schedule.Ref); ok {
			if !at.IsZero() {
				*at = schedule.At(at.File(), sheet, int(at.Row), int(at.Col))
			}
			return
		}
		for _, field := range v.Fields() {
			onSheet(field, sheet, seen)
		}
	case reflect.Slice:
		for i := range v.Len() {
			onSheet(v.Index(i), sheet, seen)
		}
	}
}

// randomIslands is a job of several random ones, each on its own sheet with its
// own amplifier; some have no amplifier at all. Models are the same throughout.
func randomIslands(rng *rand.Rand, sameTags bool) *schedule.Job {
	out := &schedule.Job{File: "random.csv", LineVolts: schedule.Exactly[schedule.Volts](100, (&cells{}).source("100 V"))}
	for i := range 2 + rng.IntN(6) {
		j := randomJob(rng, 2+rng.IntN(8), true)
		name := fmt.Sprintf("%c ", 'A'+i)
		onSheet(reflect.ValueOf(j), name, map[uintptr]bool{})
		for _, a := range j.Amplifiers {
			a.Key, a.Name = name+a.Key, name+a.Name
		}
		for _, ch := range j.Channels {
			ch.Key = name + ch.Key
		}
		for _, z := range j.Zones {
			z.Key, z.Name = name+z.Key, name+z.Name
		}
		for _, k := range j.Controls {
			k.Key, k.Name = name+k.Key, name+k.Name
		}
		for _, k := range j.Cables {
			k.Key, k.Name = name+k.Key, name+k.Name
			for _, e := range []*schedule.End{&k.From, &k.To} {
				if e.Text.Value != "" && rng.IntN(3) > 0 {
					e.Text.Value = name + e.Text.Value
				}
			}
		}
		for _, l := range j.Loudspeakers {
			if !sameTags {
				l.Tag.Value = name + l.Tag.Value
			}
			if rng.IntN(3) > 0 {
				l.Room.Value = name + l.Room.Value
			}
			if l.Tap.Had() && rng.IntN(20) == 0 {
				out.Refused = append(out.Refused, schedule.Refusal{At: schedule.At("random.csv", name, l.Rows.First, 99), Field: "tap"})
				l.Tap.How = schedule.Computed
			}
		}
		if rng.IntN(3) == 0 { // nobody says what feeds them, nor which zone they are
			j.Amplifiers, j.Channels = nil, nil
			j.Zones = j.Zones[:rng.IntN(len(j.Zones)+1)]
			in := map[*schedule.Zone]bool{}
			for _, z := range j.Zones {
				in[z] = true
			}
			for _, l := range j.Loudspeakers {
				if !in[l.Zone] {
					l.Zone = nil
				}
				l.Split = nil
			}
			j = j.Clone()
		}
		out.Amplifiers, out.Channels, out.Zones = append(out.Amplifiers, j.Amplifiers...), append(out.Channels, j.Channels...), append(out.Zones, j.Zones...)
		out.Controls, out.Loudspeakers = append(out.Controls, j.Controls...), append(out.Loudspeakers, j.Loudspeakers...)
		out.Cables, out.Measurements = append(out.Cables, j.Cables...), append(out.Measurements, j.Measurements...)
	}
	for range rng.IntN(4) {
		tie(rng, out)
	}
	rng.Shuffle(len(out.Loudspeakers), func(a, b int) {
		out.Loudspeakers[a], out.Loudspeakers[b] = out.Loudspeakers[b], out.Loudspeakers[a]
	})
	return out
}

// tie lets two parts of a job hang together that most likely did not.
func tie(rng *rand.Rand, j *schedule.Job) {
	if len(j.Channels) == 0 || len(j.Controls) == 0 || len(j.Zones) == 0 || len(j.Amplifiers) == 0 {
		return
	}
	channel, control, zone := j.Channels[rng.IntN(len(j.Channels))], j.Controls[rng.IntN(len(j.Controls))], j.Zones[rng.IntN(len(j.Zones))]
	l, other := j.Loudspeakers[rng.IntN(len(j.Loudspeakers))], j.Channels[rng.IntN(len(j.Channels))]
	switch rng.IntN(8) {
	case 0:
		j.Controls[rng.IntN(len(j.Controls))].Parent = control
	case 1:
		channel.Bridged, other.Bridged = []*schedule.Channel{other}, []*schedule.Channel{channel}
	case 2:
		l.Split = []*schedule.Channel{channel, other}
	case 3:
		l.Control = control
	case 4:
		zone.Channel, zone.Channels = channel, nil
	case 5:
		zone.Control = control
	case 6:
		channel.Amplifier = j.Amplifiers[rng.IntN(len(j.Amplifiers))]
	case 7:
		control.Zone, control.Channel = zone, nil
	}
}

// TestRemediesOfIslands: tried on the islands that it touches, a change comes
// out as it does on the whole job.
func TestRemediesOfIslands(t *testing.T) {
	remedies, apart := 0, 0
	for seed := range uint64(300) {
		rng := rand.New(rand.NewPCG(seed, 11))
		j := randomIslands(rng, seed%2 == 0)
		before := tell(Check(j.Clone(), DefaultSettings()))
		r, x := examine(nil, j, DefaultSettings())
		if len(r.Findings) == 0 {
			continue
		}
		w := newWorkshop(x)
		if len(w.all.islands) > 1 {
			apart++
		}
		one := &union{at: map[any]int{}}
		addAll(one, j.Amplifiers)
		addAll(one, j.Channels)
		addAll(one, j.Zones)
		addAll(one, j.Controls)
		addAll(one, j.Loudspeakers)
		addAll(one, j.Cables)
		clear(one.up)
		w.all = x.circuit.gather(one)
		w.remedy(triesOf(j))
		for _, f := range r.Findings {
			remedies += len(f.Remedies)
		}
		if whole := tell(r); before != whole {
			t.Fatalf("seed %d: on its islands\n%s\non the whole\n%s", seed, before, whole)
		}
	}
	if apart < 150 || remedies < 500 {
		t.Errorf("%d jobs of several islands, %d remedies: too few to say anything", apart, remedies)
	}
}
