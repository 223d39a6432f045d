package notation

import (
	"math"
	"strconv"
	"strings"
)

// A SizeHint says what a bare figure in a conductor column is.
type SizeHint uint8

// The hints.
const (
	HintNone SizeHint = iota
	HintAWG
	HintMM2
	HintDiameter // mm
)

// A Material is the metal of a conductor.
type Material string

// The materials. MaterialUnknown means that none was written.
const (
	MaterialUnknown Material = ""
	Copper          Material = "copper"
	TinnedCopper    Material = "tinned copper"
	CopperClad      Material = "copper-clad aluminium"
	Aluminium       Material = "aluminium"
)

// A Strands is a conductor given by its wires, such as 24/0.2.
type Strands struct {
	Count      int
	DiameterMM float64
}

// A Conductor is what a cell says of a cable's conductors. Where several sizes
// are written, all are kept.
type Conductor struct {
	AWG        *int     // gauge number, nil if none was written; 0 is 1/0, -1 is 2/0 and so on
	AreaMM2    float64  // area of one conductor as written, or following from Strands or DiameterMM; 0 if neither
	DiameterMM float64  // solid diameter written, else 0
	Strands    *Strands // nil if not written
	Cores      int      // conductors in all, 0 if not written
	Pairs      int      // pairs, 0 if not written
	Parallel   int      // conductors that share one leg of the line, 1 if nothing was written
	Solid      bool
	Stranded   bool
	Shielded   bool
	Class      int // IEC 60228 class written (1, 2, 5, 6), else 0
	Material   Material
	Marks      []string // jacket and fire words, in upper case: "CL3P", "LSZH", "E30", "CCA-S1,D1,A1"
	Type       string   // the rest: a cable type such as "NYM-J", as written
	Doubts     Doubts
}

// HasSize reports whether the cell gave a size.
func (c Conductor) HasSize() bool { return c.AWG != nil || c.AreaMM2 > 0 }

// AreaOfAWG returns the area in mm² of a solid wire of an AWG number (0 for
// 1/0, -1 for 2/0): diameter 0.127 mm × 92^((36-n)/39), ASTM B258.
func AreaOfAWG(n int) float64 {
	d := 0.127 * math.Pow(92, float64(36-n)/39)
	return math.Pi / 4 * d * d
}

// SmallestAreaMM2 returns the smallest area that the sizes written allow, in
// mm², 0 if none was written.
func (c Conductor) SmallestAreaMM2() float64 {
	area := c.AreaMM2
	if c.AWG != nil {
		if a := AreaOfAWG(*c.AWG); area == 0 || a < area {
			area = a
		}
	}
	return area
}

// String returns the conductor so that ParseConductor reads all but Type
// again with Point.
func (c Conductor) String() string {
	var parts []string
	add := func(s string) { parts = append(parts, s) }
	if c.AWG != nil {
		add(awgText(*c.AWG))
	}
	switch {
	case c.Strands != nil:
		add(strconv.Itoa(c.Strands.Count) + "/" + plainFigure(c.Strands.DiameterMM))
	case c.DiameterMM > 0:
		add("Ø" + plainFigure(c.DiameterMM) + " mm")
	case c.AreaMM2 > 0:
		add(plainFigure(c.AreaMM2) + " mm²")
	}
	if c.Pairs > 0 {
		add(strconv.Itoa(c.Pairs) + " pairs")
	}
	if c.Cores > 0 && c.Cores != 2*c.Pairs {
		add(strconv.Itoa(c.Cores) + " cores")
	}
	if c.Parallel > 1 {
		add(strconv.Itoa(c.Parallel) + " in parallel")
	}
	for _, flag := range []struct {
		set  bool
		text string
	}{{c.Solid, "solid"}, {c.Stranded, "stranded"}, {c.Shielded, "shielded"}} {
		if flag.set {
			add(flag.text)
		}
	}
	if c.Material != MaterialUnknown {
		add(string(c.Material))
	}
	if c.Class > 0 {
		add("class " + strconv.Itoa(c.Class))
	}
	return strings.Join(append(parts, c.Marks...), "; ")
}

func awgText(n int) string {
	if n <= 0 {
		return strconv.Itoa(1-n) + "/0 AWG"
	}
	return strconv.Itoa(n) + " AWG"
}

// standardAreas are the areas that cables are made in, in mm². Source:
// IEC 60228, table 1, and 0.14 to 0.34, 1.25, 2 and 3.5 of common practice.
var standardAreas = []float64{0.14, 0.22, 0.25, 0.34, 0.5, 0.75, 1, 1.25, 1.5, 2, 2.5, 3.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120}

// telecomDiameters are the conductor diameters of telecom cables, in mm, as in
// J-Y(St)Y 2x2x0.8. Common practice, no source.
var telecomDiameters = []float64{0.4, 0.5, 0.6, 0.8, 0.9}

func isOneOf(v float64, list []float64) bool {
	for _, l := range list {
		if math.Abs(v-l) < 1e-9 {
			return true
		}
	}
	return false
}

// ParseMaterial reads a conductor metal: "Cu", "OFC", "verzinnt", "CCA",
// "Aluminium".
func ParseMaterial(s string) (Material, Doubts, error) {
	const what = "material"
	text, err := prepare(what, s)
	if err != nil {
		return MaterialUnknown, 0, err
	}
	rest, doubts, material, err := takeMaterial(what, text)
	if err != nil {
		return MaterialUnknown, 0, err
	}
	rest, _ = cut(rest, words("cable"))
	if material == MaterialUnknown || strings.Trim(rest, " ,;()/.-\n") != "" {
		return MaterialUnknown, 0, fail(what, text, ErrNotUnderstood)
	}
	return material, doubts, nil
}

// takeMaterial cuts the metal out of a text. The fire class "Cca-s1,d1,a1" is
// not one; it must be gone before. "Cca" in that letter case is doubtful.
func takeMaterial(what, text string) (rest string, doubts Doubts, material Material, err error) {
	rest, found := cut(text, words("material"))
	for _, m := range found {
		kind := Material(m.Kind)
		switch {
		case material == MaterialUnknown || material == kind:
		case material == Copper && kind == TinnedCopper:
		case material == TinnedCopper && kind == Copper:
			kind = TinnedCopper
		case material == Aluminium && kind == CopperClad:
		case material == CopperClad && kind == Aluminium:
			kind = CopperClad
		default:
			return text, 0, MaterialUnknown, failBecause(what, text, "two metals", ErrAmbiguous)
		}
		material = kind
		if m.Text == "Cca" {
			doubts |= CladOrFireClass
		}
	}
	return rest, doubts, material, nil
}

// cut takes the phrases of a lexicon out of a text and returns the rest, a
// space in the place of each, with what was found.
func cut(text string, l *lexicon) (string, []Mention) {
	runes := []rune(text)
	tokens := lex(text, Point)
	var out []rune
	var found []Mention
	at := 0
	for i := 0; i < len(tokens); i++ {
		e, n, ok := l.at(tokens, i)
		if !ok || gluedToFigure(tokens, i, n) {
			continue
		}
		last := tokens[i+n-1]
		end := last.at + len([]rune(last.raw))
		found = append(found, Mention{Kind: e.kind, Text: string(runes[tokens[i].at:end]), Sure: e.sure})
		out = append(append(out, runes[at:tokens[i].at]...), ' ')
		at = end
		i += n - 1
	}
	return string(append(out, runes[at:]...)), found
}

// gluedToFigure reports whether tokens[i:i+n] is part of a longer code: 2C of
// "22C1" is no mark.
func gluedToFigure(tokens []token, i, n int) bool {
	if i > 0 && !tokens[i].gap && tokens[i-1].kind != markToken {
		return true
	}
	next := i + n
	return next < len(tokens) && !tokens[next].gap && tokens[next].kind != markToken
}
