package ingest

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

func TestEmergency(t *testing.T) {
	for _, tt := range []struct {
		name, table string
		want        bool
	}{
		{"a title says so", "title : Voice alarm schedule\ntag | zone | tap[W]\nLS-1 | Z1 | 5", true},
		{"a room's name says nothing", "tag | room | zone | tap[W]\nLS-1 | Emergency exit corridor | Evacuation lobby | 5", false},
		{"a site's name says nothing", "title site: Emergency services museum\ntag | zone | tap[W]\nLS-1 | Z1 | 5", false},
		{"a column of overrides", "tag | zone | tap[W] | control | override\nLS-1 | Z1 | 5 | VC-1 | yes", true},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if j := jobOf(t, draw(layout.Loudspeakers, "L", tt.table)); j.Emergency.Yes != tt.want {
				t.Errorf("emergency %v", j.Emergency)
			}
		})
	}
}

func TestHouseBookNamesValues(t *testing.T) {
	house := &schedule.HouseBook{Names: []schedule.NameRow{{Kind: schedule.Text{Value: "value"}, Written: schedule.Text{Value: "STD"},
		Means: schedule.Text{Value: "5 W"}, Field: schedule.Text{Value: "tap"}}}}
	j := jobsOf(&Options{House: house}, draw(layout.Loudspeakers, "L", "tag | zone | tap\nLS-1 | Z1 | std\nSTD | Z1 | 10 W"))[0]
	want(t, "loudspeakers", describe(j), []string{"LS-1 1 x 5 W zone Z1", "STD 1 x 10 W zone Z1"})
	if how := j.Loudspeakers[0].Tap.How; how != schedule.FromHouseBook {
		t.Errorf("had %s", how)
	}
}

// Two systems of units of one job give one set of SI values.
func TestUnitsAgree(t *testing.T) {
	feet := jobOf(t, draw(layout.Cables, "C", "cable | zone | length[ft] | gauge[AWG]\nC1 | Z1 | 100 | 16\nC2 | Z2 | 250 | 12"))
	metres := jobOf(t, draw(layout.Cables, "C", "cable | zone | length[m] | gauge[mm2]\nC1 | Z1 | 30.48 | 1.31\nC2 | Z2 | 76.2 | 3.31"))
	for i := range feet.Cables {
		a, b := feet.Cables[i], metres.Cables[i]
		// 16 AWG is 1.31 mm2, 12 AWG 3.31 mm2. Source: ASTM B258, table of areas.
		if math.Abs(float64(a.Length.Low-b.Length.Low)) > 1e-9 || math.Abs(float64(a.Area.Low-b.Area.Low)) > 0.005 {
			t.Errorf("%s: %v m %v mm2, %v m %v mm2", a.Name, a.Length.Low, a.Area.Low, b.Length.Low, b.Area.Low)
		}
	}
}

// The order of rows changes nothing but the order of parts, and renaming all
// tags changes nothing but the tags.
func TestOrderAndNamesDoNotMatter(t *testing.T) {
	text := `
		tag | zone | quantity | tap[W] | control | channel
		LS-1 | Zone 1 | 4 | 5 | VC-1 | A1.1
		LS-2 | 1 - Orangery | 2 | 10 | VC-01 | A1.1
		LS-3 | Z2 | 6 | 2.5 | VC-2 (35 W) | A1.2
		LS-4 | Foyer | 1 | 7.5 | | A2.1
		LS-5 | Z-02 | | 5 | VC 2 | AMP 1 CH 2`
	sorted := func(j *schedule.Job) []string {
		out := describe(j)
		slices.Sort(out)
		return out
	}
	first := sorted(jobOf(t, draw(layout.Loudspeakers, "L", text)))
	r := rand.New(rand.NewPCG(3, 4))
	for range 10 {
		got := sorted(jobOf(t, shuffled(draw(layout.Loudspeakers, "L", text), r)))
		if !slices.Equal(got, first) {
			t.Fatalf("shuffled:\n%s\nin order:\n%s", strings.Join(got, "\n"), strings.Join(first, "\n"))
		}
	}
	renamed := strings.NewReplacer("LS-", "SPK-", "VC", "ATT", "Orangery", "Palmery", "Foyer", "Lobby").Replace(text)
	back := strings.NewReplacer("SPK-", "LS-", "ATT", "VC", "Palmery", "Orangery", "Lobby", "Foyer")
	var got []string
	for _, l := range sorted(jobOf(t, draw(layout.Loudspeakers, "L", renamed))) {
		got = append(got, back.Replace(l))
	}
	slices.Sort(got)
	if !slices.Equal(got, first) {
		t.Errorf("renamed:\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(first, "\n"))
	}
}

// The same tables give the same job, run after run.
func TestDeterminism(t *testing.T) {
	make := func() *schedule.Job {
		return jobOf(t,
			draw(layout.Loudspeakers, "L", "tag | zone | tap | control | length\nLS-1 | Z1 | 1/2 | WK-35 | 10\nLS-2 | Z2 | 6W - 10W | WK-35 | 20\nLS-3 | Z3 | x | VC | 30"),
			draw(layout.Amplifiers, "A", "amplifier | channels of the amplifier | channel rating\nA1 | 4 | 100W\nA2 | 2 | 50W"))
	}
	first := fmt.Sprintf("%+v %+v %+v", make().Assumptions, make().Questions, describe(make()))
	for range 20 {
		if got := fmt.Sprintf("%+v %+v %+v", make().Assumptions, make().Questions, describe(make())); got != first {
			t.Fatalf("%s\n%s", first, got)
		}
	}
}
