package generate

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"unicode"

	"lineaudit/samples/book"
)

// hand is one person's way of writing schedules.
type hand struct {
	rng                                   *rand.Rand
	cfg                                   Config
	lang                                  string
	noise                                 int
	feet, awg, mixed                      bool
	decimal                               string
	ampPrefix, controlPrefix, cablePrefix string
	letters                               bool // channels are lettered
	combined                              bool // amplifier and channel share a column
	headers                               map[string]string
	notation                              map[string]int
	zoneForm                              int
	outputForm                            int
	plain                                 bool // no strike-through, no hidden rows: the file format drops them
	names                                 map[any][]string
	fields                                []string // columns chosen for the file
	noHide                                bool     // rows cannot be hidden: something else stands beside them
}

func newHand(rng *rand.Rand, cfg Config, lang string) *hand {
	h := &hand{rng: rng, cfg: cfg, lang: lang, noise: cfg.Noise, decimal: ".",
		headers: map[string]string{}, notation: map[string]int{}, names: map[any][]string{}}
	units := cfg.Units
	if units == "" {
		units = Metric
		if lang == "en" {
			units = Imperial
		}
	}
	switch units {
	case Imperial:
		h.feet, h.awg = true, true
	case Mixed:
		h.mixed = true
		h.feet = rng.IntN(2) == 0
		h.awg = !h.feet
	}
	if lang != "en" && !h.feet {
		h.decimal = ","
	}
	h.plain = cfg.Format == CSV
	h.ampPrefix = pick(rng, map[string][]string{"de": {"V", "E"}}[lang], []string{"A", "A", "AMP"})
	h.controlPrefix = pick(rng, map[string][]string{"de": {"LSR", "R"}, "fr": {"AT"}, "es": {"AT"}, "it": {"AT"}, "nl": {"VR"}}[lang], []string{"VC-", "VC"})
	h.cablePrefix = pick(rng, map[string][]string{"de": {"K", "L"}}[lang], []string{"C-", "C", "W"})
	h.letters = rng.IntN(3) == 0
	h.combined = rng.IntN(3) == 0
	h.zoneForm = []int{0, 0, 1, 2, 5}[rng.IntN(5)]
	if h.noise >= 2 {
		h.zoneForm = []int{1, 2, 5}[rng.IntN(3)]
	}
	h.outputForm = rng.IntN(4)
	return h
}

// pick chooses from the first list that holds anything.
func pick(rng *rand.Rand, lists ...[]string) string {
	for _, l := range lists {
		if len(l) > 0 {
			return l[rng.IntN(len(l))]
		}
	}
	return ""
}

func (h *hand) chance(percent int) bool { return h.rng.IntN(100) < percent }

func (h *hand) place(kind string) string {
	return pick(h.rng, placeNames[key{kind, h.lang}])
}

func (h *hand) shuffledPlaces(rng *rand.Rand, kind string) []string {
	names := slices.Clone(placeNames[key{kind, h.lang}])
	rng.Shuffle(len(names), func(i, j int) { names[i], names[j] = names[j], names[i] })
	return names
}

// say returns one wording of a phrase in the hand's language.
func (h *hand) say(phrase string) string {
	return pick(h.rng, phraseOf[key{phrase, h.lang}], phraseOf[key{phrase, "en"}])
}

func (h *hand) channelName(i int) string {
	if h.letters {
		return string(rune('A' + i))
	}
	return fmt.Sprint(i + 1)
}

// ditto is what stands for the cell above.
func (h *hand) ditto() string {
	if h.noise >= 3 && h.chance(10) {
		return h.say("above")
	}
	return h.say("ditto")
}

// none is what stands where there is nothing.
func (h *hand) none() string {
	if h.noise >= 2 && h.chance(30) {
		return []string{"n/a", "—", "--"}[h.rng.IntN(3)]
	}
	return "-"
}

// newSheet lets a careless hand choose other headings for the next sheet.
func (h *hand) newSheet() {
	if h.noise >= 3 && h.chance(50) {
		h.headers = map[string]string{}
	}
}

// header returns the heading of a column, the same all through a file, with
// unit behind it unless the words already say it.
func (h *hand) header(field, unit string) string {
	if s, ok := h.headers[field]; ok {
		return s
	}
	s := pick(h.rng, headerOf[key{field, h.lang}])
	for tries := 0; tries < 9 && h.taken(s); tries++ {
		s = pick(h.rng, headerOf[key{field, h.lang}])
	}
	if unit != "" && !saysUnit(s, unit) {
		s += []string{" (%s)", " [%s]", " %s", ", %s"}[h.rng.IntN(4)]
		s = fmt.Sprintf(s, unit)
	}
	h.headers[field] = s
	return s
}

// taken tells whether another column already bears the words.
func (h *hand) taken(s string) bool {
	for _, other := range h.headers {
		if other == s || strings.HasPrefix(other, s+" ") {
			return true
		}
	}
	return false
}

func saysUnit(header, unit string) bool {
	low := strings.ToLower(header)
	return unit == "W" && (strings.Contains(low, "watt") || strings.HasSuffix(header, " W") || strings.HasPrefix(header, "W/") || strings.HasPrefix(header, "W p"))
}

// garbleHeader dirties a heading as the noise asks.
func (h *hand) garbleHeader(s string) string {
	if h.noise >= 3 && h.chance(6) {
		s = h.misspell(s)
	}
	if h.noise >= 2 {
		switch h.rng.IntN(8) {
		case 0:
			s = strings.ToUpper(s)
		case 1:
			s = strings.ToLower(s)
		case 2:
			s += "  "
		case 3:
			s = strings.ReplaceAll(s, " ", "\u00a0")
		case 4:
			s = strings.Replace(s, " ", "\n", 1)
		}
	}
	return s
}

// misspell drops or swaps one inner letter of a word of six letters or more.
func (h *hand) misspell(s string) string {
	parts := strings.Split(s, " ")
	for i, w := range parts {
		r := []rune(w)
		if len(r) < 6 || !unicode.IsLetter(r[3]) {
			continue
		}
		at := 2 + h.rng.IntN(len(r)-4)
		if h.chance(50) {
			r = append(r[:at], r[at+1:]...)
		} else {
			r[at], r[at+1] = r[at+1], r[at]
		}
		parts[i] = string(r)
		break
	}
	return strings.Join(parts, " ")
}

// garble dirties a name in a cell as the noise asks.
func (h *hand) garble(s string) string {
	if h.noise < 2 || !h.chance(15) {
		return s
	}
	switch h.rng.IntN(4) {
	case 0:
		return s + " "
	case 1:
		return strings.ReplaceAll(s, " ", "\u00a0")
	case 2:
		return strings.ToUpper(s)
	default:
		return " " + s
	}
}

// name writes a thing's name in the given form and remembers the form.
func (h *hand) name(of any, form string) string {
	if !slices.Contains(h.names[of], form) {
		h.names[of] = append(h.names[of], form)
	}
	return form
}

func (h *hand) zoneName(z *zone, form int) string {
	return h.garble(h.plainZoneName(z, form))
}

func (h *hand) plainZoneName(z *zone, form int) string {
	word := phraseOf[key{"zone", h.lang}][0]
	s := z.name
	switch form {
	case 1:
		s = fmt.Sprintf("Z%d %s", z.n, z.name)
	case 2:
		s = fmt.Sprintf("%d - %s", z.n, z.name)
	case 3:
		s = fmt.Sprintf("%s %d", word, z.n)
	case 4:
		s = fmt.Sprintf("Z-%02d", z.n)
	case 5:
		s = fmt.Sprintf("%s %d (%s)", word, z.n, z.name)
	}
	return h.name(z, s)
}

// sheetZoneForm picks how zones are written on a sheet other than the first.
func (h *hand) sheetZoneForm() int {
	if h.noise < 2 {
		return h.zoneForm
	}
	return h.rng.IntN(6)
}

// outputName writes an amplifier and its channel in one cell.
func (h *hand) outputName(c *channel) string {
	n := strings.TrimPrefix(c.amp.tag, h.ampPrefix)
	ch := phraseOf[key{"ch", h.lang}][0]
	var s string
	switch h.outputForm {
	case 0:
		s = c.amp.tag + "." + c.name
	case 1:
		word := h.ampPrefix
		if h.lang == "en" {
			word = "AMP"
		}
		s = fmt.Sprintf("%s %s %s %s", word, n, strings.ToUpper(ch), c.name)
	case 2:
		s = fmt.Sprintf("%s / %s %s", c.amp.tag, ch, c.name)
	default:
		s = c.amp.tag + "-" + c.name
	}
	return h.name(c, s)
}

func (h *hand) dialect() book.Dialect {
	if h.lang == "en" {
		return book.Dialect{Comma: ",", Decimal: ".", CRLF: true}
	}
	d := book.Dialect{Comma: ";", Decimal: h.decimal, CRLF: true}
	d.Windows = h.rng.IntN(2) == 0
	d.BOM = !d.Windows
	return d
}
