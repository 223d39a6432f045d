package notation

import (
	"errors"
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
)

// areas are compared to a thousandth: they follow from diameters.
var sameAreas = cmpopts.EquateApprox(1e-3, 0)

// The notations come from a survey of public schedules, bills and manuals;
// those of which the survey has no public example are common practice.
func TestParseConductor(t *testing.T) {
	awg := func(n, cores int) Conductor { return Conductor{AWG: &n, Cores: cores, Parallel: 1} }
	mm2 := func(a float64, cores int) Conductor { return Conductor{AreaMM2: a, Cores: cores, Parallel: 1} }
	edit := func(c Conductor, f func(*Conductor)) Conductor { f(&c); return c }
	doubts := func(c Conductor, d Doubts) Conductor { c.Doubts |= d; return c }
	material := func(c Conductor, m Material) Conductor { c.Material = m; return c }
	marks := func(c Conductor, m ...string) Conductor { c.Marks = m; return c }
	kind := func(c Conductor, s string) Conductor { c.Type = s; c.Doubts |= SplitRead; return c }
	diameter := func(d float64, area float64, cores int) Conductor {
		return Conductor{DiameterMM: d, AreaMM2: area, Cores: cores, Parallel: 1}
	}
	strands := func(n int, d, area float64) Conductor {
		return Conductor{Strands: &Strands{n, d}, AreaMM2: area, Stranded: true, Parallel: 1}
	}
	for _, tt := range []struct {
		in   string
		hint SizeHint
		want Conductor
	}{
		// AWG
		{"16/2", HintNone, awg(16, 2)},
		{"16/2", HintMM2, awg(16, 2)},
		{"14-2", HintNone, awg(14, 2)},
		{"12/4", HintNone, awg(12, 4)},
		{"16/2 Speaker", HintNone, awg(16, 2)},
		{"18/2 plenum", HintNone, marks(awg(18, 2), "PLENUM")},
		{"18/2 CL2", HintNone, marks(awg(18, 2), "CL2")},
		{"16/2 CL3P", HintNone, marks(awg(16, 2), "CL3P")},
		{"16 AWG, 2-conductor, FPLR", HintNone, marks(awg(16, 2), "FPLR")},
		{"14 AWG, stranded, two conductor, unshielded", HintNone, edit(awg(14, 2), func(c *Conductor) { c.Stranded = true })},
		{"18/2 TSP", HintNone, edit(awg(18, 2), func(c *Conductor) { c.Shielded = true })},
		{"22/1P", HintNone, edit(awg(22, 2), func(c *Conductor) { c.Pairs = 1 })},
		{"22 AWG 2 pair", HintNone, edit(awg(22, 4), func(c *Conductor) { c.Pairs = 2 })},
		{"#14", HintNone, awg(14, 0)},
		{"#12 AWG", HintNone, awg(12, 0)},
		{"#16-2", HintNone, awg(16, 2)},
		{"14-2 CCA", HintNone, material(awg(14, 2), CopperClad)},
		{"18 AWG OFC", HintNone, material(awg(18, 0), Copper)},
		{"16 AWG tinned copper", HintNone, material(awg(16, 0), TinnedCopper)},
		{"2C 16AWG", HintNone, awg(16, 2)},
		{"2C/16 AWG", HintNone, awg(16, 2)},
		{"2c#16", HintNone, awg(16, 2)},
		{"2 x 16 AWG", HintNone, awg(16, 2)},
		{"2x16AWG", HintNone, awg(16, 2)},
		{"16AWG x 2", HintNone, awg(16, 2)},
		{"16 AWG/2C", HintNone, awg(16, 2)},
		{"16/2C", HintNone, awg(16, 2)},
		{"14 ga", HintNone, awg(14, 0)},
		{"14ga.", HintNone, awg(14, 0)},
		{"16 gauge", HintNone, awg(16, 0)},
		{"16-gauge", HintNone, awg(16, 0)},
		{"AWG 16", HintNone, awg(16, 0)},
		{"AWG16", HintNone, awg(16, 0)},
		{"16awg 2 core", HintNone, awg(16, 2)},
		{"2/0 AWG", HintNone, awg(-1, 0)},
		{"14AWG-4C paralleled", HintNone, edit(awg(14, 4), func(c *Conductor) { c.Parallel = 2 })},
		{"2 x 16/2", HintNone, doubts(edit(awg(16, 2), func(c *Conductor) { c.Parallel = 2 }), ParallelTaken)},
		{"(2) 16/2", HintNone, doubts(edit(awg(16, 2), func(c *Conductor) { c.Parallel = 2 }), ParallelTaken)},
		{"16 AWG 2/C", HintNone, awg(16, 2)},
		{"2/C 16 AWG", HintNone, awg(16, 2)},
		{"2 #14", HintNone, awg(14, 2)},
		{"(2) #14", HintNone, awg(14, 2)},
		{"1 pr 18 AWG", HintNone, edit(awg(18, 2), func(c *Conductor) { c.Pairs = 1 })},
		{"1pr#16 TSP", HintNone, edit(awg(16, 2), func(c *Conductor) { c.Pairs, c.Shielded = 1, true })},
		{"16", HintAWG, doubts(awg(16, 0), Bare)},
		{"#16", HintAWG, awg(16, 0)},
		{"16", HintNone, doubts(awg(16, 0), Bare|AWGTaken)},
		{"18", HintMM2, doubts(awg(18, 0), Bare|AWGTaken)},
		{"2x16", HintAWG, awg(16, 2)},
		{"2x18", HintNone, doubts(awg(18, 2), AWGTaken)},
		{"Cat5e used as speaker cable", HintNone, Conductor{AWG: new(24), Cores: 8, Pairs: 4, Parallel: 1, Type: "Cat5e", Doubts: FromModelName}},
		// mm²
		{"2x2,5 mm²", HintNone, mm2(2.5, 2)},
		{"2 x 2.5mm2", HintNone, mm2(2.5, 2)},
		{"2x1.5mm2", HintNone, mm2(1.5, 2)},
		{"2C 1.5 mm²", HintNone, mm2(1.5, 2)},
		{"2C 1.5", HintNone, doubts(mm2(1.5, 2), AreaTaken)},
		{"2C 1.5", HintMM2, mm2(1.5, 2)},
		{"2 core 1.5mm2", HintNone, mm2(1.5, 2)},
		{"2c x 1.5 sq.mm", HintNone, mm2(1.5, 2)},
		{"3G1,5", HintNone, doubts(mm2(1.5, 3), AreaTaken)},
		{"3G1,5 mm²", HintNone, mm2(1.5, 3)},
		{"2×1.5²", HintNone, mm2(1.5, 2)},
		{"2 x 2.5 ²", HintNone, mm2(2.5, 2)},
		{"2x1.5", HintNone, doubts(mm2(1.5, 2), AreaTaken)},
		{"2 x 1.5 mm", HintNone, doubts(mm2(1.5, 2), MMForMM2)},
		{"1.5mm2 x 2", HintNone, mm2(1.5, 2)},
		{"1P x 1.5 sqmm", HintNone, edit(mm2(1.5, 2), func(c *Conductor) { c.Pairs = 1 })},
		{"2Cx2.5sqmm", HintNone, mm2(2.5, 2)},
		{"2.5mm2/2C", HintNone, mm2(2.5, 2)},
		{"NHXH 2x1,5 mm² E30/FE180", HintNone, kind(marks(mm2(1.5, 2), "E30", "FE180"), "NHXH")},
		{"LIYCY 2x0,75", HintNone, kind(doubts(mm2(0.75, 2), AreaTaken), "LIYCY")},
		{"2 x 1.5 mm² + E", HintNone, kind(mm2(1.5, 2), "E")},
		{"1.5 sq. mm", HintNone, mm2(1.5, 0)},
		{"1.5 SQMM 2 CORE", HintNone, mm2(1.5, 2)},
		{"2.5 sqmm", HintNone, mm2(2.5, 0)},
		{"2,5 qmm", HintNone, mm2(2.5, 0)},
		{"4 mm q", HintNone, mm2(4, 0)},
		{"0,75 mm²", HintNone, mm2(0.75, 0)},
		{"2.5 ㎟", HintNone, mm2(2.5, 0)},
		{"1.5", HintMM2, doubts(mm2(1.5, 0), Bare)},
		{"16", HintMM2, doubts(mm2(16, 0), Bare)},
		{"1.5", HintNone, doubts(mm2(1.5, 0), Bare|AreaTaken)},
		{"1,5", HintAWG, doubts(mm2(1.5, 0), Bare|AreaTaken)},
		{"NYM-J 3x1,5", HintNone, kind(doubts(mm2(1.5, 3), AreaTaken), "NYM-J")},
		{"R2V 2x1,5", HintNone, kind(doubts(mm2(1.5, 2), AreaTaken), "R2V")},
		{"CR1-C1 2x1,5 mm²", HintNone, marks(mm2(1.5, 2), "CR1-C1")},
		{"FTG10OM1 2x1,5", HintNone, kind(doubts(mm2(1.5, 2), AreaTaken), "FTG10OM1")},
		{"2x1,5 verzinnt E30", HintMM2, marks(material(mm2(1.5, 2), TinnedCopper), "E30")},
		{"2x1.5 mm² LSZH", HintNone, marks(mm2(1.5, 2), "LSZH")},
		{"2x1.5 mm² Cca-s1,d1,a1", HintNone, marks(mm2(1.5, 2), "CCA-S1,D1,A1")},
		{"2x1.5 mm² B2ca", HintNone, marks(mm2(1.5, 2), "B2CA")},
		{"2x1.5 mm² CCA", HintNone, material(mm2(1.5, 2), CopperClad)},
		{"2x1.5 mm² Cca", HintNone, doubts(material(mm2(1.5, 2), CopperClad), CladOrFireClass)},
		{"2x2,5 mm² cuivre", HintNone, material(mm2(2.5, 2), Copper)},
		{"2x4 mm² ALU", HintNone, material(mm2(4, 2), Aluminium)},
		{"2x2x1,5 mm²", HintNone, edit(mm2(1.5, 4), func(c *Conductor) { c.Pairs = 2 })},
		{"2x1.5", HintAWG, doubts(mm2(1.5, 2), AreaTaken)},
		// both
		{"16 AWG (1.0 mm²)", HintNone, doubts(edit(awg(16, 0), func(c *Conductor) { c.AreaMM2 = 1 }), SizesDisagree)},
		{"16 AWG (1.31 mm²)", HintNone, edit(awg(16, 0), func(c *Conductor) { c.AreaMM2 = 1.31 })},
		{"2x1.5 mm² (16 AWG)", HintNone, doubts(edit(awg(16, 2), func(c *Conductor) { c.AreaMM2 = 1.5 }), SizesDisagree)},
		// strands; 24 × π/4 × 0.2² = 0.754, 42 × = 1.319, 7 × π/4 × 0.3² = 0.495, 79 × π/4 × 0.2² = 2.482
		{"24/0.2", HintNone, strands(24, 0.2, 0.754)},
		{"24/0,2 mm", HintNone, strands(24, 0.2, 0.754)},
		{"42/0.2", HintNone, strands(42, 0.2, 1.3195)},
		{"7/0.3", HintNone, strands(7, 0.3, 0.4948)},
		{"2x24/0.2", HintNone, edit(strands(24, 0.2, 0.754), func(c *Conductor) { c.Cores = 2 })},
		{"79 strand", HintNone, doubts(strands(79, 0.2, 2.4819), DiameterTaken)},
		// diameter; π/4 × 0.8² = 0.5027, π/4 × 0.9² = 0.6362
		{"2x2x0,8", HintNone, doubts(edit(diameter(0.8, 0.5027, 4), func(c *Conductor) { c.Pairs = 2 }), DiameterTaken)},
		{"J-Y(St)Y 2x2x0,8", HintNone, kind(doubts(edit(diameter(0.8, 0.5027, 4), func(c *Conductor) { c.Pairs = 2 }), DiameterTaken), "J-Y(St)Y")},
		{"4x1x0.9", HintNone, doubts(diameter(0.9, 0.6362, 4), DiameterTaken)},
		{"0,8 mm Ø", HintNone, diameter(0.8, 0.5027, 0)},
		{"Ø 0,8 mm", HintNone, diameter(0.8, 0.5027, 0)},
		{"0,8 mm", HintNone, doubts(diameter(0.8, 0.5027, 0), DiameterTaken)},
		{"mindestens 0,8 mm Leiterdurchmesser", HintNone, diameter(0.8, 0.5027, 0)},
		{"1.5 mm", HintNone, doubts(mm2(1.5, 0), MMForMM2)},
		{"0.8", HintDiameter, doubts(diameter(0.8, 0.5027, 0), Bare)},
		// no size
		{"LSZH", HintNone, marks(Conductor{Parallel: 1}, "LSZH")},
		{"copper", HintNone, material(Conductor{Parallel: 1}, Copper)},
		{"solid copper", HintNone, Conductor{Parallel: 1, Solid: true, Material: Copper}},
		{"2 core", HintNone, Conductor{Parallel: 1, Cores: 2}},
		{"SWA, LSZH", HintNone, marks(Conductor{Parallel: 1}, "SWA", "LSZH")},
	} {
		t.Run(tt.in, func(t *testing.T) {
			got, err := ParseConductor(tt.in, Auto, tt.hint)
			if err != nil {
				t.Fatal(err)
			}
			if d := cmp.Diff(tt.want, got, sameAreas, cmpopts.EquateEmpty()); d != "" {
				t.Errorf("-want +got\n%s", d)
			}
		})
	}
}

func TestParseConductorErrors(t *testing.T) {
	for in, want := range map[string]error{
		"": ErrEmpty, "n/a": ErrMissing, "TBC": ErrMissing, "wie oben": ErrDitto, "-16": ErrNegative,
		"16 SWG": ErrNotUnderstood, "yes": ErrNotUnderstood, "Orangery": ErrNotUnderstood, "5 W": ErrNotUnderstood,
		"£16/2": ErrNotUnderstood, "+44 20 7946 0958": ErrNotUnderstood, "020 7946 0958": ErrNotUnderstood,
		"12.05.2021": ErrNotUnderstood, "12-05-21": ErrNotUnderstood, "14/02/2021": ErrNotUnderstood, "A-7.5W-100": ErrNotUnderstood, "5/10W": ErrNotUnderstood,
		"16 AWG or 14 AWG": ErrAmbiguous, "16/2 and 14/2": ErrAmbiguous, "1.5 mm² / 2.5 mm²": ErrAmbiguous,
		"2x16": ErrAmbiguous, "10": ErrAmbiguous, "16/2 copper and aluminium": ErrAmbiguous,
		"36 m": ErrNotUnderstood, "70 V": ErrNotUnderstood, "100/50": ErrNotUnderstood, "99 AWG": ErrNotUnderstood,
		"see the drawing of the east wing for the size of every line": ErrNotUnderstood,
	} {
		if got, err := ParseConductor(in, Auto, HintNone); !errors.Is(err, want) {
			t.Errorf("ParseConductor(%q) = %v (%+v), %v; want %v", in, got, got, err, want)
		}
	}
}

// Source: ASTM B258, areas as tabulated in any wire table: 18 AWG 0.823 mm²,
// 16 AWG 1.31, 14 AWG 2.08, 12 AWG 3.31, 1/0 53.5, 2/0 67.4.
func TestAreaOfAWG(t *testing.T) {
	for n, want := range map[int]float64{18: 0.823, 16: 1.31, 14: 2.08, 12: 3.31, 0: 53.5, -1: 67.4} {
		if got := AreaOfAWG(n); math.Abs(got-want) > 0.005*want {
			t.Errorf("%d AWG: %v mm², want %v", n, got, want)
		}
	}
}

func TestParseMaterial(t *testing.T) {
	for _, tt := range []struct {
		in   string
		want Material
		err  error
	}{
		{"Copper", Copper, nil}, {"Cu", Copper, nil}, {"OFC", Copper, nil}, {"Kupfer", Copper, nil}, {"cuivre", Copper, nil},
		{"cobre", Copper, nil}, {"rame", Copper, nil}, {"koper", Copper, nil}, {"solid copper", Copper, nil},
		{"tinned", TinnedCopper, nil}, {"verzinnt", TinnedCopper, nil}, {"cuivre étamé", TinnedCopper, nil}, {"Cu, tinned", TinnedCopper, nil},
		{"CCA", CopperClad, nil}, {"copper clad", CopperClad, nil}, {"copper-clad aluminum", CopperClad, nil}, {"Kupferkaschiert", CopperClad, nil},
		{"Cu/Al", CopperClad, nil},
		{"Aluminum", Aluminium, nil}, {"ALU", Aluminium, nil},
		{"", MaterialUnknown, ErrEmpty}, {"?", MaterialUnknown, ErrMissing}, {"plastic", MaterialUnknown, ErrNotUnderstood},
		{"16/2", MaterialUnknown, ErrNotUnderstood}, {"Cca-s1,d1,a1", MaterialUnknown, ErrNotUnderstood},
		{"copper or aluminium", MaterialUnknown, ErrAmbiguous},
	} {
		if got, _, err := ParseMaterial(tt.in); got != tt.want || !errors.Is(err, tt.err) {
			t.Errorf("ParseMaterial(%q) = %q, %v", tt.in, got, err)
		}
	}
}

func FuzzParseConductor(f *testing.F) {
	for _, s := range []string{"16/2", "14-2 CCA", "2C 16AWG", "2x2,5 mm²", "3G1,5", "2×1.5²", "24/0.2", "J-Y(St)Y 2x2x0,8", "16 AWG (1.0 mm²)", "2 x 16/2", "2/0 AWG", "Cat5e", "2x1.5 mm² Cca-s1,d1,a1", "79 strand", "22/1P TSP", "250 kcmil", "14AWG-4C paralleled", "C&2p 1"} {
		for b := range byte(4) {
			f.Add(s, b)
		}
	}
	f.Fuzz(func(t *testing.T, s string, b byte) {
		c, err := ParseConductor(s, Style(b%3), SizeHint(b/3%4))
		if err != nil {
			return
		}
		if !finite(c.AreaMM2, c.DiameterMM, c.SmallestAreaMM2()) || c.Cores < 0 || c.Pairs < 0 || c.Parallel < 1 {
			t.Fatalf("%q: %+v", s, c)
		}
		again, err := ParseConductor(c.String(), Point, HintNone)
		if err != nil {
			t.Fatalf("%q: %+v prints as %q: %v", s, c, c.String(), err)
		}
		c.Doubts, again.Doubts = 0, 0
		c.Type, again.Type = "", ""
		if d := cmp.Diff(c, again, sameFigures, cmpopts.EquateEmpty()); d != "" {
			t.Fatalf("%q prints as %q\n%s", s, c.String(), d)
		}
	})
}

// A class after IEC 60228 is no size and no jacket.
func TestConductorClass(t *testing.T) {
	for in, want := range map[string]int{"2 x 1.5 mm² class 5": 5, "2x2,5 Klasse 2": 2, "1,5 mm² cl. 5": 5, "2,5 mm² classe 6": 6, "2 x 1.5 mm² flexible class 5": 5, "18 AWG class 2": 0, "18/2 class 2": 0, "18 AWG class 5": 5, "18/2 CL2": 0, "16/2 CL3P": 0} {
		c, err := ParseConductor(in, Auto, HintNone)
		if err != nil || c.Class != want || !c.HasSize() {
			t.Errorf("ParseConductor(%q) = class %d, size %v, %v; want class %d", in, c.Class, c.HasSize(), err, want)
		}
	}
}
