package audit

import (
	"strings"
	"testing"

	"lineaudit/audit/schedule"
)

// houseAt is a cell of a test house book.
func houseAt(sheet string, row, col int) schedule.Ref {
	return schedule.At("house.xlsx", sheet, row, col)
}

func limitRow(row int, rule, limit, value, unit, use string) schedule.LimitRow {
	said := func(col int, v string) schedule.Text { return schedule.Said(v, houseAt("limits", row, col)) }
	return schedule.LimitRow{At: houseAt("limits", row, 0), Rule: said(1, rule), Limit: said(2, limit), Value: said(3, value), Unit: said(4, unit), Use: said(5, use)}
}

func ratingRow(row int, model, kind string, watts float64, volts schedule.Volts, taps ...schedule.TapOffer) schedule.RatingRow {
	at := houseAt("ratings", row, 1)
	r := schedule.RatingRow{At: houseAt("ratings", row, 0), Model: schedule.Said(model, at), Kind: schedule.Said(kind, at), Taps: taps}
	if watts != 0 {
		r.Rated = []schedule.RatingAt{{Watts: schedule.Exactly(schedule.Watts(watts), schedule.Source{At: at, How: schedule.Stated}), Volts: volts}}
	}
	return r
}

func mustSettings(t *testing.T, h *schedule.HouseBook) *Settings {
	t.Helper()
	s, errs := NewSettings(h)
	for _, e := range errs {
		t.Fatal(e)
	}
	return s
}

func TestHouseBookErrors(t *testing.T) {
	for _, tt := range []struct {
		name  string
		book  schedule.HouseBook
		cell  string
		about string
	}{
		{"unknown rule", schedule.HouseBook{Limits: []schedule.LimitRow{limitRow(2, "control-overlaod", "fault", "90", "%", "")}}, "A2", "did you mean control-overload"},
		{"unknown limit", schedule.HouseBook{Limits: []schedule.LimitRow{limitRow(3, "control-overload", "warning", "90", "%", "")}}, "B3", "caution"},
		{"wrong unit", schedule.HouseBook{Limits: []schedule.LimitRow{limitRow(4, "line-loss", "caution", "1", "W", "")}}, "C4", "dB"},
		{"no number", schedule.HouseBook{Limits: []schedule.LimitRow{limitRow(5, "line-loss", "caution", "some", "dB", "")}}, "C5", "not a number"},
		{"out of range", schedule.HouseBook{Limits: []schedule.LimitRow{limitRow(6, "line-loss", "caution", "-1", "dB", "")}}, "C6", "outside"},
		{"unknown use", schedule.HouseBook{Limits: []schedule.LimitRow{limitRow(7, "line-loss", "caution", "1", "dB", "speech")}}, "E7", "use"},
		{"twice", schedule.HouseBook{Limits: []schedule.LimitRow{limitRow(8, "line-loss", "caution", "1", "dB", ""), limitRow(9, "line-loss", "caution", "2", "dB", "any")}}, "row 9", "twice"},
		{"wrong order", schedule.HouseBook{Limits: []schedule.LimitRow{limitRow(10, "line-loss", "caution", "5", "dB", "")}}, "row 10", "below"},
		{"model twice", schedule.HouseBook{Ratings: []schedule.RatingRow{ratingRow(2, "WK-35", "control", 35, 100), ratingRow(3, "wk 35", "control", 30, 100)}}, "A3", "twice"},
		{"unknown kind", schedule.HouseBook{Ratings: []schedule.RatingRow{ratingRow(4, "WK-35", "horn", 35, 100)}}, "A4", "kind"},
		{"negative rating", schedule.HouseBook{Ratings: []schedule.RatingRow{ratingRow(5, "WK-35", "control", -35, 100)}}, "A5", "out of range"},
		{"no line voltage", schedule.HouseBook{Ratings: []schedule.RatingRow{ratingRow(6, "WK-35", "control", 35, 8)}}, "A6", "line voltage"},
		{"waiver without a reason", schedule.HouseBook{Waivers: []schedule.WaiverRow{{At: houseAt("waivers", 2, 0), Rule: schedule.Said("line-loss", houseAt("waivers", 2, 1))}}}, "row 2", "reason"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			_, errs := NewSettings(&tt.book)
			if len(errs) != 1 || errs[0].At.Cell() != tt.cell || !strings.Contains(errs[0].Text, tt.about) {
				t.Errorf("errors %v, want one at %s about %q", errs, tt.cell, tt.about)
			}
		})
	}
}

func TestHouseLimits(t *testing.T) {
	s := mustSettings(t, &schedule.HouseBook{Limits: []schedule.LimitRow{
		limitRow(2, "headroom-short", "caution", "0,9", "of rating", ""),
		limitRow(3, "line-loss", "caution", "0.3", "dB", "emergency"),
		limitRow(4, "control-overload", "caution", "90 %", "", "music"),
		limitRow(5, "control-overload", "danger", "off", "", ""),
		limitRow(6, "implausible", "longest run", "0.5", "km", ""),
	}})
	for _, tt := range []struct {
		rule  string
		grade Grade
		use   schedule.Use
		want  float64 // 0: no limit
	}{
		{"headroom-short", Caution, schedule.AnyUse, 90},
		{"line-loss", Caution, schedule.AnyUse, 1},
		{"line-loss", Caution, schedule.Emergency, 0.3},
		{"line-loss", Fault, schedule.Emergency, 2},
		{"control-overload", Caution, schedule.Music, 90},
		{"control-overload", Caution, schedule.Paging, 0},
		{"control-overload", Danger, schedule.Music, 0},
		{"control-overload", Fault, schedule.Music, 100},
	} {
		got := 0.0
		if l := s.limits[tt.rule].grade[tt.use][tt.grade]; l != nil {
			got = l.Value
		}
		if got != tt.want {
			t.Errorf("%s %s for %s use: %g, want %g", tt.rule, tt.grade, tt.use, got, tt.want)
		}
	}
	if v, _ := s.value("implausible", "longest run", schedule.AnyUse); v.Value != 500 {
		t.Errorf("longest run %g m, want 500", v.Value)
	}
	limits, sources := s.Describe(RuleNamed("headroom-short"))
	if !strings.Contains(limits, "90 % of rating") || !strings.Contains(sources, "limits!C2") {
		t.Errorf("described as %q from %q", limits, sources)
	}
}

// undecided is a job whose models nobody has rated.
const undecidedJob = `kind,name,says,want
channel,A1/1,volts=100,
control,VC-1,channel=A1/1; model=WK-4,
control,VC-2,channel=A1/1; model=WK-4,
loudspeaker,L1,count=6; model=X-3; control=VC-1,
loudspeaker,L2,count=6; tap=6; model=X-6; control=VC-2,
`

func TestHouseBookDecidesVerdicts(t *testing.T) {
	c := parseCase(t, "undecided", strings.Replace(undecidedJob, "channel,A1/1,volts=100,", "amplifier,A1,model=PA-2,\nchannel,A1/1,volts=100,", 1))
	before := Check(c.job, DefaultSettings())
	for _, k := range before.Controls {
		if k.Verdict.Checked {
			t.Errorf("%s is decided without a rating", k.Control.Name)
		}
	}
	todo := HouseTodo([]*Result{before})
	got := map[string]int{}
	for _, m := range todo.Models {
		got[m.Kind+" "+m.Model+" "+strings.Join(m.Missing, " ")] = m.Met
	}
	if len(got) != 3 || got["control WK-4 rating"] != 2 || got["amplifier PA-2 rating"] != 1 || got["loudspeaker X-3 taps"] != 1 {
		t.Fatalf("to do: %v", got)
	}
	if todo.Models[0].Verdicts < todo.Models[len(todo.Models)-1].Verdicts {
		t.Error("the model that settles most is not first")
	}
	s := mustSettings(t, &schedule.HouseBook{Ratings: []schedule.RatingRow{
		ratingRow(2, "WK 4", "control", 30, 0), ratingRow(3, "X-3", "loudspeaker", 0, 0, schedule.TapOffer{Watts: 3}, schedule.TapOffer{Watts: 1.5}),
		ratingRow(4, "PA-2", "amplifier", 120, 100)}})
	after := Check(c.job, s)
	// VC-1: 6 x (1.5 to 3) W = 9 to 18 W of 30 W passes; VC-2: 36 W of 30 W is 120 %; the channel 45 to 54 W of 120 W.
	if v := after.Controls[0].Verdict; !v.Passed {
		t.Errorf("VC-1: %v, want passed", v)
	}
	if v := after.Controls[1].Verdict; v.Grade != Fault || v.Certainty != Certain {
		t.Errorf("VC-2: %v, want a certain fault", v)
	}
	if v := after.Channels[0].Verdict; !v.Passed {
		t.Errorf("the channel: %v, want passed", v)
	}
	if len(after.Questions) != 0 || len(HouseTodo([]*Result{after}).Models) != 0 {
		t.Errorf("still asked: %v", after.Questions)
	}
}

func TestContradictions(t *testing.T) {
	a := Check(parseCase(t, "a", "kind,name,says,want\ncontrol,VC-1,model=WK-9; rated=100,\n").job, DefaultSettings())
	b := Check(parseCase(t, "b", "kind,name,says,want\ncontrol,VC-1,model=WK 9; rated=200,\n").job, DefaultSettings())
	todo := HouseTodo([]*Result{a, b})
	if len(todo.Contradictions) != 1 || len(todo.Contradictions[0].Claims) != 2 || todo.Contradictions[0].What != "rating" {
		t.Fatalf("contradictions %+v", todo.Contradictions)
	}
}

// TestWhatIsNoContradiction: ratings at two line voltages, and one without a voltage that says the same.
func TestWhatIsNoContradiction(t *testing.T) {
	for _, tt := range []struct {
		name string
		rows []string
		want int // claims against each other
	}{
		{"two voltages", []string{"rated=30; volts=100", "rated=30; volts=70.7"}, 0},
		{"two voltages, other watts", []string{"rated=30; volts=100", "rated=15; volts=70.7"}, 0},
		{"without a voltage, the same", []string{"rated=30; volts=100", "rated=30"}, 0},
		{"without a voltage, another", []string{"rated=30; volts=100", "rated=60"}, 2},
		{"one voltage", []string{"rated=30; volts=100", "rated=60; volts=100", "rated=30; volts=70.7"}, 2},
	} {
		var results []*Result
		for _, row := range tt.rows {
			results = append(results, Check(parseCase(t, tt.name, "kind,name,says,want\ncontrol,VC-1,model=WK-9; "+row+",\n").job, DefaultSettings()))
		}
		got := 0
		for _, c := range HouseTodo(results).Contradictions {
			got += len(c.Claims)
		}
		if got != tt.want {
			t.Errorf("%s: %d claims against each other, want %d", tt.name, got, tt.want)
		}
	}
}

func TestWaivers(t *testing.T) {
	at := houseAt("waivers", 2, 1)
	waiver := schedule.WaiverRow{At: houseAt("waivers", 2, 0), Rule: schedule.Said("control-overload", at), Place: schedule.Said("control VC-1", at),
		Reason: schedule.Said("replaced next month", at), By: schedule.Said("service manager", at)}
	s := mustSettings(t, &schedule.HouseBook{Waivers: []schedule.WaiverRow{waiver}})
	r := Check(loadCase(t, "testdata/control-overload/fires.csv").job, s)
	if len(r.Waived) != 1 || r.Waived[0].Finding.Place != "control VC-1" || r.Waived[0].Reason != "replaced next month" || len(r.Findings) != 1 {
		t.Errorf("waived %v, left %d findings", r.Waived, len(r.Findings))
	}
}
