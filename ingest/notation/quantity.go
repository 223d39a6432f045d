package notation

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// A Quantity is a number of devices.
type Quantity struct {
	Count  int    // devices, spares not counted; 0 only where zero or only spares were written
	Spare  int    // devices written as spare
	Unit   string // "pieces", "pairs" (Count is already doubled), or "" if none was written
	Doubts Doubts
}

// MaxCount is the largest quantity that is believed.
const MaxCount = 1_000_000

// String returns the quantity so that ParseQuantity reads it again with Point.
func (q Quantity) String() string {
	unit := ""
	count := q.Count
	switch q.Unit {
	case "pieces":
		unit = " pcs"
	case "pairs":
		unit, count = " pairs", count/2
	}
	switch {
	case q.Spare > 0 && q.Count > 0:
		return strconv.Itoa(count) + unit + " + " + strconv.Itoa(q.Spare) + " spare"
	case q.Spare > 0:
		return strconv.Itoa(q.Spare) + " spare"
	}
	return strconv.Itoa(count) + unit
}

// Codes of words in a quantity cell.
const (
	codePiece = 'q'
	codePair  = 'p'
	codeDozen = 'z'
	codeLump  = 'L'
	codeSpare = 's'
)

var quantityItems = &itemiser{
	classes: []string{"quantity", "joint"},
	codes:   map[string]byte{"piece": codePiece, "pair": codePair, "dozen": codeDozen, "lump": codeLump, "spare": codeSpare},
	padded:  true,
	prepare: numerals,
}

// numerals replaces number words by figures, and tells L.S. from LS.
func numerals(tokens []token) []token {
	out := tokens[:0:0]
	for i := range tokens {
		t := tokens[i]
		if e, n, ok := words("numeral").at(tokens, i); ok && n == 1 {
			v, err := strconv.Atoi(e.kind)
			if err != nil {
				panic("notation: numeral " + e.kind)
			}
			t.kind = figureToken
			t.figure = figure{value: float64(v), other: float64(v), whole: true}
			t.raw = e.kind
		}
		if t.text == "ls" && strings.Contains(t.raw, ".") {
			t.text = "lump" // L.S. is a lump sum, LS are loudspeakers
		}
		out = append(out, t)
	}
	return out
}

var (
	quantityOne   = regexp.MustCompile(`^[q(x]*N[qx)]*$`)
	quantityTwice = regexp.MustCompile(`^(N)q?\((N)q?\)$`)
	quantityPlus  = regexp.MustCompile(`^q?Nq?(?:[+a]Nq?)+$`)
	quantitySpare = regexp.MustCompile(`^q?(N)q?[+a,;/]\(?(N)q?sq?\)?$|^q?(N)q?\(\+?(N)q?s\)$`)
	quantityAll   = regexp.MustCompile(`^q?\(?(N)q?s\)?$|^s:?(N)q?$`)
	quantityTimes = regexp.MustCompile(`^(N)x(N)q?$`)
	quantityPairs = regexp.MustCompile(`^\(?(N)\)?[px]*p\)?$`)
	quantityDozen = regexp.MustCompile(`^(N)z$`)
	quantityLump  = regexp.MustCompile(`^\(?N?x?L\)?$`)
	quantityRange = regexp.MustCompile(`^q?Nq?[-/oB]Nq?$`)
)

// ParseQuantity reads a number of devices: "(3)", "2 ea", "4 no.", "6x", "x6",
// "3 Stk", "2 u", "5 pz", "Qty 4", "12 off", "3 + 1 spare", "2 pair", "twelve".
// It returns an error wrapping ErrNotWhole for fractions, ErrLump for lots and
// sets, ErrAmbiguous for a range, ErrTooLarge above MaxCount.
func ParseQuantity(s string, style Style) (Quantity, error) {
	return knownQuantities.of(s, int(style))
}

func parseQuantity(s string, style Style) (Quantity, error) {
	const what = "quantity"
	text, err := prepare(what, s)
	if err != nil {
		return Quantity{}, err
	}
	items, err := quantityItems.items(what, text, style)
	if err != nil {
		return Quantity{}, err
	}
	doubts := allDoubts(items)
	items = withoutEmptyBrackets(without(items, "e:.~"))
	items = withoutPieces(withoutHyphens(items))
	shape := shapeOf(items)
	if q, ok := checkedSum(items, shape); ok {
		q.Doubts |= doubts
		return q, nil
	}
	items = without(items, "=")
	shape = shapeOf(items)
	var n []item
	for i, it := range items {
		switch {
		case it.code == codeFraction:
			return Quantity{}, fail(what, text, ErrNotWhole)
		case it.code != codeNumber:
			continue
		case !it.figure.whole:
			// 1.200 pieces can only be 1200
			if style != Auto || it.figure.other != float64(int(it.figure.other)) {
				return Quantity{}, fail(what, text, ErrNotWhole)
			}
			items[i].value = it.figure.other
		}
		if items[i].value > MaxCount {
			return Quantity{}, fail(what, text, ErrTooLarge)
		}
		n = append(n, items[i])
	}
	q := Quantity{Doubts: doubts}
	if strings.IndexByte(shape, codePiece) >= 0 {
		q.Unit = "pieces"
	}
	value := func(i int) int { return int(n[i].value) }
	switch {
	case shape == "p":
		q.Count, q.Unit = 2, "pairs"
	case len(n) == 0 && !quantityLump.MatchString(shape):
		return Quantity{}, fail(what, text, ErrNotUnderstood)
	case quantityOne.MatchString(shape) && balanced(shape):
		q.Count = value(0)
	case quantityLump.MatchString(shape):
		return Quantity{}, fail(what, text, ErrLump)
	case quantityTwice.MatchString(shape):
		if value(0) != value(1) {
			return Quantity{}, fail(what, text, ErrAmbiguous)
		}
		q.Count = value(0)
	case quantitySpare.MatchString(shape):
		q.Count, q.Spare = value(0), value(1)
		if q.Count == 0 {
			q.Unit = ""
		}
		if strings.Contains(shape, "(") && !strings.Contains(shape, "+") {
			q.Doubts |= SumOrSpare // 4 (1 spare): three or four in use
		}
	case quantityAll.MatchString(shape):
		q.Spare, q.Unit = value(0), ""
	case quantityPlus.MatchString(shape):
		for i := range n {
			q.Count += value(i)
		}
		q.Doubts |= SumOrSpare
	case quantityTimes.MatchString(shape):
		q.Count = value(0) * value(1)
		q.Doubts |= ProductTaken
	case quantityPairs.MatchString(shape):
		q.Count, q.Unit = 2*value(0), "pairs"
	case quantityDozen.MatchString(shape):
		q.Count = 12 * value(0)
	case quantityRange.MatchString(shape):
		if shape == "N/N" && plainFractions[[2]float64{n[0].value, n[1].value}] {
			return Quantity{}, fail(what, text, ErrNotWhole)
		}
		return Quantity{}, fail(what, text, ErrAmbiguous)
	default:
		return Quantity{}, fail(what, text, ErrNotUnderstood)
	}
	if q.Count > MaxCount {
		return Quantity{}, fail(what, text, ErrTooLarge)
	}
	return q, nil
}

// withoutPieces removes words in brackets that count nothing: "12 (existing)".
func withoutPieces(items []item) []item {
	for i := 1; i+2 < len(items); i++ {
		if items[i].code == '(' && items[i+1].code == codePiece && items[i+2].code == ')' {
			return withoutPieces(slices.Delete(slices.Clone(items), i, i+3))
		}
	}
	return items
}

// withoutHyphens removes the hyphen of "Qty-4" and "4-off".
func withoutHyphens(items []item) []item {
	var out []item
	for i, it := range items {
		if it.code == '-' && i > 0 && i+1 < len(items) && (items[i-1].code == codePiece || items[i+1].code == codePiece) {
			continue
		}
		out = append(out, it)
	}
	return out
}

// checkedSum reads a quantity with its working beside it, "4 (2+2)" and "2 x 3
// = 6", where the working is right.
func checkedSum(items []item, shape string) (Quantity, bool) {
	var total, a, b int
	switch shape {
	case "N(N+N)", "N(NxN)", "N=N+N", "N=NxN":
		total, a, b = 0, 2, 4
	case "N+N=N", "NxN=N":
		total, a, b = 4, 0, 2
	default:
		return Quantity{}, false
	}
	for _, it := range []item{items[total], items[a], items[b]} {
		if !isCount(it) {
			return Quantity{}, false
		}
	}
	sum := items[a].value + items[b].value
	if strings.IndexByte(shape, codeTimes) >= 0 {
		sum = items[a].value * items[b].value
	}
	return Quantity{Count: int(items[total].value)}, sum == items[total].value
}

// balanced reports whether each bracket of a shape is closed.
func balanced(shape string) bool {
	depth := 0
	for _, c := range shape {
		switch c {
		case '(':
			depth++
		case ')':
			depth--
		}
		if depth < 0 {
			return false
		}
	}
	return depth == 0
}

// CountInName finds a count inside the name of a device: "CEILING (X4)",
// "Horn (8 nos)", "4 x horn", "Horn x 4". It returns false for a bare figure in
// brackets, which may be a room or a version.
func CountInName(s string) (int, bool) {
	n := knownCountsInNames.Of(s, 0)
	return n, n > 0
}

// countInName returns 0 for a name without a count.
func countInName(s string) int {
	tokens := lex(Clean(s), Auto)
	count := func(i int) (int, bool) {
		if i < 0 || i >= len(tokens) || tokens[i].kind != figureToken || !tokens[i].figure.whole || tokens[i].figure.bad || isPadded(tokens[i].raw) {
			return 0, false
		}
		v := tokens[i].figure.value
		return int(v), v >= 1 && v <= 1000
	}
	isTimes := func(i int) bool {
		return i >= 0 && i < len(tokens) && (tokens[i].is("x") || tokens[i].is("*"))
	}
	isPiece := func(i int) bool {
		e, n, ok := words("quantity").at(tokens, i)
		return ok && n == 1 && e.kind == "piece"
	}
	for i, t := range tokens {
		if !t.is("(") {
			continue
		}
		if n, ok := count(i + 1); ok && i+3 < len(tokens) && tokens[i+3].is(")") && (isTimes(i+2) || isPiece(i+2)) {
			return n
		}
		if n, ok := count(i + 2); ok && i+3 < len(tokens) && tokens[i+3].is(")") && (isTimes(i+1) || isPiece(i+1)) {
			return n
		}
	}
	if len(tokens) < 3 {
		return 0
	}
	last := len(tokens) - 1
	if n, ok := count(last); ok && isTimes(last-1) && tokens[last-1].gap && tokens[last-2].kind == wordToken {
		return n
	}
	if n, ok := count(0); ok && isTimes(1) && tokens[2].kind == wordToken && (len(tokens[2].text) > 2 || isModelAt(tokens, 2)) {
		return n
	}
	return 0
}

// isModelAt reports whether a short code of capitals and figures stands at
// tokens[i]: "LS-W10", "C6", and no unit.
func isModelAt(tokens []token, i int) bool {
	t := tokens[i]
	if t.raw != strings.ToUpper(t.raw) || i+1 >= len(tokens) || tokens[i+1].gap || t.text == "w" || t.text == "v" {
		return false
	}
	return tokens[i+1].kind == figureToken || tokens[i+1].is("-") && i+2 < len(tokens) && tokens[i+2].kind != markToken
}
