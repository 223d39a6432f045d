package notation

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"unicode"
)

// Parts of the patterns below.
const (
	reNumber = `(\d+(?:[.,]\d+)?)`
	reInt    = `(\d{1,3})`
	reGauge  = `(\d{1,2})`
	reArea   = `(?:mm ?2|mm ?²|²|sq\.? ?mm\.?|mm\.? ?sq\.?|qmm|mm ?q|mmq)`
	reAWG    = `(?:awg|gauge|ga\.?)`
	reCores  = `(?:cores?|conductors?|conds?|cdrs?|wires?|c|adern?|adrig|aderig|aders|leiter|conducteurs?|brins|fils|hilos|conductores|conduttori|fili|poli|polig|aders)`
	rePairs  = `(?:prs?|pairs?|p|paare?|paires?|pares|par|coppie|coppia|paren)`
)

// The same words at the end of a pattern, where no figure may follow them.
const (
	reCoresEnd = reCores + `\b`
	rePairsEnd = rePairs + `\b`
)

// A sizePattern reads one way to write a size. read returns false where the
// figures make no sense that way.
type sizePattern struct {
	re   *regexp.Regexp
	read func(r *conductorReading, m []string) bool
}

func pattern(re string, read func(r *conductorReading, m []string) bool) sizePattern {
	return sizePattern{regexp.MustCompile(`(?i)` + re), read}
}

// sizePatterns are tried in this order, each as often as it is found.
var sizePatterns = []sizePattern{
	pattern(`(?:`+reInt+` ?(?:x|`+reCores+`) ?)?(\d{1,3}) ?/ ?(0[.,]\d{1,3})(?: ?mm)?`, readStrands),
	pattern(reInt+` ?x ?`+reInt+` ?x ?`+reNumber+` ?(`+reArea+`|mm|`+reAWG+`)?`, readThreeFactors),
	pattern(reInt+`[ -]?(?:x|/?`+reCores+`\.?)[ ,/-]*(?:#|awg ?#?) ?`+reGauge+`(?: ?`+reAWG+`)?`, readCoresGauge),
	pattern(`\(?`+reInt+`\)? ?#`+reGauge+`(?: ?`+reAWG+`)?`, readCoresGauge), // 2 #14
	pattern(reInt+`[ -]?/?(`+rePairs+`)\.?[ ,x]*(?:#|awg ?#?)? ?`+reGauge+` ?`+reAWG, readPairsGauge),
	pattern(reInt+`[ -]?/?(`+rePairs+`)\.?[ ,x]*# ?`+reGauge, readPairsGauge),
	pattern(reInt+`[ -]?/?(`+rePairs+`)\.?[ ,x]*`+reNumber+` ?`+reArea, readPairsArea),
	pattern(reInt+`[ -]?(?:x|/?`+reCores+`\.?)[ ,/-]*`+reGauge+`[ -]?`+reAWG, readCoresGauge),
	pattern(`(?:\((\d)\) ?|(\d) ?x ?)?(?:#|awg ?#?)? ?`+reGauge+`[ -]?(`+reAWG+`)? ?[/,-] ?`+reInt+`(?:[ -]?/?(?:(`+reCoresEnd+`)|(`+rePairsEnd+`)))?`, readGaugeCores),
	pattern(`(?:#|awg ?#?) ?`+reGauge+`,? `+reInt+`[ -]?/?(?:(`+reCoresEnd+`)|(`+rePairsEnd+`))`, readGaugeThenCores),
	pattern(reGauge+`[ -]?`+reAWG+`,? ?x? ?`+reInt+`[ -]?/?(?:(`+reCoresEnd+`)|(`+rePairsEnd+`))`, readGaugeThenCores),
	pattern(reGauge+`[ -]?`+reAWG+` ?x ?`+reInt, readGaugeTimes),
	pattern(reInt+`[ -]?(?:x|g|/?`+reCores+`\.?)[ ,x]*`+reNumber+` ?`+reArea, readCoresArea),
	pattern(reNumber+` ?`+reArea+`(?: ?[x/,-] ?`+reInt+`(?: ?-?(?:(`+reCoresEnd+`)|(`+rePairsEnd+`)))?|,? `+reInt+`[ -]?(?:(`+reCoresEnd+`)|(`+rePairsEnd+`)))`, readAreaCores),
	pattern(reNumber+` ?`+reArea, readArea),
	pattern(reNumber+` ?mm,? ?(?:Ø|dia\w*|diám\w*|durchmesser|leiterdurchmesser|diam\w*)\.?`, readDiameter),
	pattern(`(?:Ø|dia\.?|diameter|leiterdurchmesser) ?:? ?`+reNumber+`(?: ?mm)?`, readDiameter),
	pattern(reInt+`[ -]?(x|g|/?`+reCores+`\.?)[ x]*`+reNumber+`( ?mm)?`, readCoresBare),
	pattern(`(?:#|awg ?#?|ga\.? ?#?) ?(\d/0|\d{1,2})(?: ?`+reAWG+`)?`, readGauge),
	pattern(`(\d/0|\d{1,2})[ -]?`+reAWG, readGauge),
	pattern(`(\d/0)`, readGauge),
	pattern(`(\d{2,4}) ?(?:kcmil|mcm)`, readKcmil),
	pattern(reNumber+` ?mm`, readMillimetres),
	pattern(`(\d{1,2}) in parallel`, readParallel),
	pattern(reInt+`[ -]?/?`+reCoresEnd+`\.?`, readCores),
	pattern(reInt+`[ -]?/?`+rePairsEnd+`\.?`, readPairs),
	pattern(`(\d{2,3}) ?strands?`, readStrandCount),
}

// standardClass is the class of a conductor after IEC 60228: "class 5",
// "Klasse 5", "cl. 2".
var standardClass = regexp.MustCompile(`(?i)\b(?:(?:IEC|EN|DIN EN|VDE) ?60228,? ?)?(?:conductor )?(?:class|klasse|classe|clase|cl\.|kl\.) ?([1256])\b`)

// takeClass takes the class of the conductor out of the text.
func (r *conductorReading) takeClass(text string) string {
	m := standardClass.FindStringSubmatchIndex(text)
	if m == nil {
		return text
	}
	r.c.Class = int(text[m[2]] - '0')
	return text[:m[0]] + " " + text[m[1]:]
}

// fireClass is the European reaction-to-fire class of a cable: "Cca-s1,d1,a1",
// "B2ca", "Eca". A bare CCA in capitals is copper-clad aluminium.
var fireClass = regexp.MustCompile(`\b(?:(?i:B1|B2|C|D|E|F)(?i:ca) ?-? ?(?i:s\d[ab]?)(?:[ ,-]*(?i:d\d))?(?:[ ,-]*(?i:a\d))?|(?:B1|B2|D|E|F)(?i:ca))\b`)

var (
	sheetGauge = regexp.MustCompile(`(?i)\bswg\b`)
	coreWord   = regexp.MustCompile(`(?i)^-?(?:` + reCores + `|` + rePairs + `)\b`)
	bareFigure = regexp.MustCompile(`^[~#]? ?` + reNumber + `$`)
)

// A conductorReading is a conductor cell on its way to a Conductor.
type conductorReading struct {
	c      Conductor
	style  Style
	hint   SizeHint
	clash  bool  // two different gauges, areas or core counts were written
	absurd error // why an area that was written cannot be
}

// ParseConductor reads the size and make of a cable's conductors: "16/2",
// "#14", "14-2 CCA", "18 AWG OFC", "2C 16AWG", "2x2,5 mm²", "3G1,5", "2×1.5²",
// "1.5 SQMM 2 CORE", "24/0.2" (24 wires of 0.2 mm), "J-Y(St)Y 2x2x0,8"
// (diameter), "16 AWG (1.0 mm²)" (both kept). hint says what a bare figure is.
//
// A cell that holds only a metal or jacket words has no size (HasSize). The
// error wraps ErrAmbiguous for two different gauges or areas, and for a bare
// figure that could be either; SWG, a sheet thickness in schedules, is not
// understood.
func ParseConductor(s string, style Style, hint SizeHint) (Conductor, error) {
	return knownConductors.of(s, int(style)|int(hint)<<8)
}

func parseConductor(s string, style Style, hint SizeHint) (Conductor, error) {
	const what = "conductor"
	text, err := prepare(what, s)
	if err != nil {
		return Conductor{}, err
	}
	if sheetGauge.MatchString(text) {
		return Conductor{}, failBecause(what, text, "SWG is a sheet thickness", ErrNotUnderstood)
	}
	if strings.HasPrefix(text, "-") {
		return Conductor{}, fail(what, text, ErrNegative)
	}
	r := &conductorReading{style: style, hint: hint}
	r.c.Parallel = 1
	written, approximate := plainConductor(text)
	r.c.Doubts |= approximate
	rest := strings.ReplaceAll(numeralsAsFigures(written), "\n", " ")
	rest = strings.ReplaceAll(rest, "*", "x")
	rest = r.takeClass(rest)
	rest = r.takeFireClass(rest)
	var material Material
	var doubts Doubts
	if rest, doubts, material, err = takeMaterial(what, rest); err != nil {
		return Conductor{}, err
	}
	r.c.Material = material
	r.c.Doubts |= doubts
	rest = r.takeSizes(rest)
	rest = r.takeWords(rest)
	if !r.c.HasSize() {
		rest = r.takeBare(rest)
	}
	if r.clash {
		return Conductor{}, fail(what, text, ErrAmbiguous)
	}
	if reason := r.takeRest(rest); reason != nil {
		return Conductor{}, fail(what, text, reason)
	}
	if r.absurd != nil {
		return Conductor{}, fail(what, text, r.absurd)
	}
	return r.finish(what, text)
}

// numeralsAsFigures writes the number in "two conductor" as a figure.
func numeralsAsFigures(text string) string {
	fields := strings.Fields(text)
	for i := range fields {
		word, tail, hyphened := strings.Cut(fields[i], "-")
		if !hyphened && (i+1 == len(fields) || !coreWord.MatchString(fields[i+1])) || hyphened && !coreWord.MatchString(tail) {
			continue
		}
		tokens := lex(word, Point)
		if e, n, ok := words("numeral").at(tokens, 0); ok && n == len(tokens) {
			fields[i] = e.kind
			if hyphened {
				fields[i] += "-" + tail
			}
		}
	}
	return strings.Join(fields, " ")
}

func (r *conductorReading) takeFireClass(text string) string {
	return fireClass.ReplaceAllStringFunc(text, func(m string) string {
		r.c.Marks = append(r.c.Marks, strings.ToUpper(m))
		return " "
	})
}

// takeSizes takes every size out of the text.
func (r *conductorReading) takeSizes(text string) string {
	for _, p := range sizePatterns {
		if !strings.ContainsAny(text, "0123456789") {
			break // every size has a figure
		}
		for from := 0; from < len(text); {
			at := p.re.FindStringSubmatchIndex(text[from:])
			if at == nil {
				break
			}
			start, end := from+at[0], from+at[1]
			m := make([]string, len(at)/2)
			for i := range m {
				if at[2*i] >= 0 {
					m[i] = text[from+at[2*i] : from+at[2*i+1]]
				}
			}
			if !standsAlone(text, start, end) || !p.read(r, m) {
				_, size := nextRune(text[start:])
				from = start + size
				for from < len(text) && isDigit(rune(text[from-1])) && isDigit(rune(text[from])) {
					from++ // not into the middle of a figure
				}
				continue
			}
			text = text[:start] + " " + text[end:]
			from = start + 1
		}
	}
	return text
}

func nextRune(s string) (rune, int) {
	for i, r := range s {
		if i > 0 {
			return r, i
		}
	}
	return 0, len(s)
}

// standsAlone reports whether text[start:end] is not part of a longer code or
// figure.
func standsAlone(text string, start, end int) bool {
	if start > 0 {
		before := []rune(text[:start])
		last := before[len(before)-1]
		if unicode.IsLetter(last) || unicode.IsDigit(last) || strings.ContainsRune(".,-/_'$€£#", last) {
			return false
		}
		if last == ' ' && len(before) > 1 && strings.ContainsRune("$€£+", before[len(before)-2]) {
			return false
		}
	}
	after := []rune(text[end:])
	if len(after) == 0 {
		return true
	}
	if unicode.IsLetter(after[0]) || unicode.IsDigit(after[0]) {
		return false
	}
	return len(after) == 1 || !strings.ContainsRune(".,-/'", after[0]) || !unicode.IsDigit(after[1])
}

// number reads a figure of a pattern; 0 if it is none.
func (r *conductorReading) number(text string) float64 {
	f, n := resolve(text, r.style)
	if f.bad || n != len(text) {
		return 0
	}
	r.c.Doubts |= f.doubts
	return f.value
}

func whole(text string) int {
	n, err := strconv.Atoi(text)
	if err != nil {
		return 0
	}
	return n
}

func (r *conductorReading) setGauge(n int) bool {
	if n < -3 || n > 40 {
		return false
	}
	if r.c.AWG != nil && *r.c.AWG != n {
		r.clash = true
	}
	r.c.AWG = &n
	return true
}

func (r *conductorReading) setArea(a float64) bool {
	switch {
	case a == 0:
		r.absurd = ErrZero
		return true
	case a > 1000:
		r.absurd = ErrTooLarge
		return true
	case !(a >= 0.01):
		return false
	}
	if r.c.AreaMM2 > 0 && math.Abs(r.c.AreaMM2-a) > 0.1*a {
		r.clash = true
	}
	if r.c.AreaMM2 == 0 || r.c.Strands == nil && r.c.DiameterMM == 0 {
		r.c.AreaMM2 = a
	}
	return true
}

func (r *conductorReading) setDiameter(d float64) bool {
	if !(d >= 0.1 && d <= 20) {
		return false
	}
	if r.c.Strands != nil || r.c.DiameterMM > 0 && r.c.DiameterMM != d {
		r.clash = true
	}
	area := math.Pi / 4 * d * d
	if r.c.AreaMM2 > 0 && math.Abs(r.c.AreaMM2-area) > 0.1*area {
		r.clash = true
	}
	r.c.DiameterMM, r.c.AreaMM2 = d, area
	return true
}

func (r *conductorReading) setCores(n int) bool {
	if n < 1 || n > 200 {
		return false
	}
	if r.c.Cores > 0 && r.c.Cores != n {
		r.clash = true
	}
	r.c.Cores = n
	return true
}

func (r *conductorReading) setPairs(n int) bool {
	if n < 1 || n > 100 || r.c.Cores > 0 && r.c.Cores != 2*n {
		return false
	}
	r.c.Pairs, r.c.Cores = n, 2*n
	return true
}

// setCoresOrPairs sets whichever word stood behind the figure; without one it
// counts cores.
func (r *conductorReading) setCoresOrPairs(figure, pairWord string) bool {
	if pairWord != "" {
		return r.setPairs(whole(figure))
	}
	return r.setCores(whole(figure))
}

// takeWords takes jacket marks, known cables and words of make out of the text.
func (r *conductorReading) takeWords(text string) string {
	text, known := cut(text, words("known-cable"))
	if len(known) > 0 && !r.c.HasSize() {
		n := whole(strings.Fields(known[0].Kind)[0])
		r.setGauge(n)
		if r.c.Cores == 0 {
			r.setPairs(4)
		}
		r.c.Doubts |= FromModelName
	}
	for _, k := range known {
		r.c.Type = strings.TrimSpace(r.c.Type + " " + k.Text)
	}
	text, marks := cut(text, words("jacket"))
	for _, m := range marks {
		r.c.Marks = append(r.c.Marks, strings.ToUpper(strings.Join(strings.Fields(m.Text), " ")))
	}
	text, makes := cut(text, words("cable"))
	for _, m := range makes {
		switch m.Kind {
		case "solid":
			r.c.Solid = true
		case "stranded":
			r.c.Stranded = true
		case "shielded":
			r.c.Shielded = true
		case "parallel":
			r.setInParallel()
		}
	}
	return text
}

func (r *conductorReading) setInParallel() {
	switch {
	case r.c.Parallel > 1:
	case r.c.Cores >= 4 && r.c.Cores%2 == 0:
		r.c.Parallel = r.c.Cores / 2
	default:
		r.c.Parallel = 2
		r.c.Doubts |= ParallelTaken
	}
}

// takeBare reads a figure that stands alone, by the header's hint.
func (r *conductorReading) takeBare(text string) string {
	m := bareFigure.FindStringSubmatch(strings.Trim(text, " ()[];,"))
	if m == nil || isPadded(m[1]) && !strings.ContainsAny(m[1], ".,") {
		return text
	}
	v := r.number(m[1])
	isWhole := v == math.Trunc(v)
	standard := isOneOf(v, standardAreas)
	gauge := isWhole && v >= 1 && v <= 30
	r.c.Doubts |= Bare
	done := false
	switch {
	case r.hint == HintAWG && gauge:
		done = r.setGauge(int(v))
	case r.hint == HintAWG && standard:
		r.c.Doubts |= AreaTaken
		done = r.setArea(v)
	case r.hint == HintMM2 && gauge && !standard && v >= 8:
		r.c.Doubts |= AWGTaken
		done = r.setGauge(int(v))
	case r.hint == HintMM2:
		done = r.setArea(v)
	case r.hint == HintDiameter:
		done = r.setDiameter(v)
	case r.hint == HintAWG:
	case v == 10 || v == 8 || v == 2:
		r.clash, done = true, true
	case gauge && v >= 12 && v <= 26:
		r.c.Doubts |= AWGTaken
		done = r.setGauge(int(v))
	case standard && v < 12:
		r.c.Doubts |= AreaTaken
		done = r.setArea(v)
	}
	if !done {
		return text
	}
	return ""
}

// mostTypeWords is how many words that mean nothing here are taken for a cable
// type; more are prose.
const mostTypeWords = 6

// takeRest accepts what is left as the cable's type, if it can be one.
func (r *conductorReading) takeRest(text string) error {
	var kept []string
	for chunk := range strings.FieldsSeq(text) {
		chunk = strings.Trim(chunk, ",;:.+=-/&@|[]\"'~")
		if strings.Trim(chunk, "()") == "" || chunk == "x" || chunk == "#" {
			continue
		}
		first := []rune(strings.TrimLeft(chunk, "("))
		if len(first) == 0 || !unicode.IsLetter(first[0]) || strings.ContainsAny(chunk, "$€£%@!?<>°Ω") {
			return ErrNotUnderstood
		}
		kept = append(kept, strings.Trim(chunk, " "))
	}
	if len(kept) == 0 {
		return nil
	}
	if len(kept) > mostTypeWords || !r.c.HasSize() && r.c.Material == MaterialUnknown && len(r.c.Marks) == 0 {
		return ErrNotUnderstood
	}
	r.c.Type = strings.TrimSpace(r.c.Type + " " + strings.Join(kept, " "))
	r.c.Doubts |= SplitRead
	return nil
}

// finish checks the whole and adds the doubts that only the whole shows.
func (r *conductorReading) finish(what, text string) (Conductor, error) {
	c := r.c
	if !c.HasSize() && c.Cores == 0 && c.Material == MaterialUnknown && len(c.Marks) == 0 && !c.Solid && !c.Stranded && !c.Shielded {
		return Conductor{}, fail(what, text, ErrNotUnderstood)
	}
	if c.AWG != nil && c.AreaMM2 > 0 && math.Abs(AreaOfAWG(*c.AWG)-c.AreaMM2) > 0.03*c.AreaMM2 {
		c.Doubts |= SizesDisagree
	}
	if c.Material == CopperClad && c.AWG == nil && strings.Contains(text, "cca") {
		c.Doubts |= CladOrFireClass
	}
	if (c.Class == 1 || c.Class == 2) && c.AWG != nil && c.AreaMM2 == 0 {
		c.Marks = append(c.Marks, "CLASS "+strconv.Itoa(c.Class)) // 18 AWG class 2: a circuit's class of NFPA 70
		c.Class = 0
	}
	if c.Parallel > 1 && c.Cores > 0 && c.Cores%c.Parallel != 0 && !c.Doubts.Has(ParallelTaken) {
		c.Doubts |= ParallelTaken
	}
	return c, nil
}
