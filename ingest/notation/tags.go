package notation

import (
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// Tags is a list of device tags.
type Tags struct {
	List   []string // every tag, ranges expanded, as written, zero padding kept; at least one
	Ranged bool     // at least one range was expanded
	Doubts Doubts   // RangeOrTag where a hyphen may belong to a tag, DateOrPair for bare figures
}

// MaxTags is the most tags that one cell may expand to.
const MaxTags = 10_000

// manyTags is the number of tags above which not every one is looked at again.
const manyTags = 500

// longestTag is the longest single tag, in runes; more is prose.
const longestTag = 60

// String returns the tags so that ParseTags reads them again.
func (t Tags) String() string { return strings.Join(t.List, "; ") }

// numbered is a tag split into what stands before its last figures, the
// figures, and one or no letter behind them.
var numbered = regexp.MustCompile(`^(.*?)(\d{1,9})([A-Za-z]?)$`)

// A numberedTag is a tag with a figure at its end: LS- 08 a.
type numberedTag struct {
	prefix, digits, suffix string
	number                 int
}

func splitTag(s string) (numberedTag, bool) {
	m := numbered.FindStringSubmatch(s)
	if m == nil {
		return numberedTag{}, false
	}
	n, err := strconv.Atoi(m[2])
	return numberedTag{m[1], m[2], m[3], n}, err == nil
}

// ParseTags reads device tags: "LS-1", "LS-1..LS-8", "S101-S108, S110", "LS1 to
// LS8", "LS-01 bis LS-08", "SPK 1/2/3", "SP1,3,5", "LS1 & LS2",
// "C-001;C-002", "LS1a-LS1d". A hyphen inside one tag ("LS-1", "Z1-LS4") is no
// range; "LS1-8" may be either and is expanded with the doubt RangeOrTag.
//
// It returns an error wrapping ErrTooLarge for more than MaxTags tags, and
// ErrNotUnderstood for a range that runs backwards or has no figures.
func ParseTags(s string) (Tags, error) {
	return knownTagLists.of(s, 0)
}

func parseTags(s string) (Tags, error) {
	const what = "tags"
	text := Clean(s)
	switch kind, missing := Missing(text); {
	case kind == MissingBlank:
		return Tags{}, fail(what, s, ErrEmpty)
	case missing:
		return Tags{}, failBecause(what, text, kind.String(), ErrMissing)
	case Ditto(text):
		return Tags{}, fail(what, text, ErrDitto)
	}
	if list, but, ok := cutException(text); ok {
		return exceptTags(what, text, list, but)
	}
	r := tagReading{}
	for _, part := range splitTags(text) {
		if err := r.add(part); err != nil {
			return Tags{}, fail(what, text, err)
		}
	}
	for i, tag := range r.tags.List {
		inside := i > 0 && i < len(r.tags.List)-1
		if inside && len(r.tags.List) > manyTags {
			continue // of a long range: its ends speak for it
		}
		if !isOneTag(tag) {
			return Tags{}, fail(what, text, ErrNotUnderstood)
		}
	}
	if len(r.tags.List) == 0 {
		return Tags{}, fail(what, text, ErrNotUnderstood)
	}
	return r.tags, nil
}

// cutException splits "LS-20..LS-24 less LS-22" at the word for an exception,
// with figures on both sides of it.
func cutException(text string) (list, but string, ok bool) {
	const figures = "0123456789"
	tokens := lexCodes(text)
	runes := []rune(text)
	for i := 1; i < len(tokens); i++ {
		t := tokens[i]
		if t.kind != wordToken || !t.gap && tokens[i-1].kind != markToken {
			continue
		}
		_, n, except := words("exception").at(tokens, i)
		if !except && isNegation(t) {
			n, except = 1, true
		}
		if !except || i+n >= len(tokens) {
			continue
		}
		list, but = strings.TrimRight(string(runes[:t.at]), " ,;(-"), strings.Trim(string(runes[tokens[i+n].at:]), " .,;)")
		return list, but, strings.ContainsAny(list, figures) && strings.ContainsAny(but, figures)
	}
	return "", "", false
}

// exceptTags are the tags of a list without those excepted, which may be
// written by their figures alone.
func exceptTags(what, text, list, but string) (Tags, error) {
	all, err := parseTags(list)
	if err != nil {
		return Tags{}, err
	}
	none, err := parseTags(but)
	if err != nil {
		return Tags{}, err
	}
	for _, x := range none.List {
		i := slices.IndexFunc(all.List, func(tag string) bool { return strings.EqualFold(tag, x) })
		if n, ok := numberOf(x); i < 0 && ok {
			i = slices.IndexFunc(all.List, func(tag string) bool {
				t, numbered := splitTag(tag)
				return numbered && t.number == n && t.suffix == ""
			})
		}
		if i < 0 || len(all.List) == 1 {
			return Tags{}, fail(what, text, ErrNotUnderstood)
		}
		all.List = slices.Delete(slices.Clone(all.List), i, i+1)
	}
	return all, nil
}

// isOneTag reports whether a text is one tag that would not be split again.
func isOneTag(tag string) bool {
	parts := splitTags(" " + tag + " ")
	if len(parts) != 1 || parts[0] != tag {
		return false
	}
	r := tagReading{}
	return r.add(tag) == nil && len(r.tags.List) == 1 && r.tags.List[0] == tag
}

// tagWord returns the meaning of a word that joins tags.
func tagWord(word string) (kind string, ok bool) {
	e, ok := words("joint").phrases[word]
	if !ok || e.kind != "range" && e.kind != "and" && e.kind != "or" {
		return "", false
	}
	return e.kind, true
}

// rangeMark stands for every way to write a range that is no hyphen.
const rangeMark = "→"

var rangeWords = strings.NewReplacer("...", rangeMark, "..", rangeMark, " t/m ", rangeMark, " t.e.m. ", rangeMark, " au ", rangeMark, "÷", rangeMark, " ~ ", rangeMark, "\n", ";")

// splitTags splits a cell at separators, and writes range words as rangeMark.
func splitTags(text string) []string {
	text = rangeWords.Replace(text)
	chunks := strings.Fields(text)
	for i, c := range chunks {
		if i == 0 || i+1 == len(chunks) {
			continue
		}
		kind, ok := tagWord(fold(strings.TrimSuffix(c, ".")))
		beforeHasFigure := strings.ContainsAny(chunks[i-1], "0123456789") && !strings.ContainsRune(",;|&", rune(chunks[i-1][len(chunks[i-1])-1]))
		if !ok || !beforeHasFigure || !strings.ContainsAny(chunks[i+1], "0123456789") {
			continue
		}
		chunks[i] = ";"
		if kind == "range" {
			chunks[i] = rangeMark
		}
	}
	text = strings.Join(chunks, " ")
	parts := strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(",;|&", r) })
	var out []string
	for _, p := range parts {
		p = strings.TrimSpace(p)
		if p == "" {
			continue
		}
		out = append(out, spaced(p)...)
	}
	return out
}

// spaced splits "LS1 LS2 LS3", where each word is a tag of its own.
func spaced(part string) []string {
	chunks := strings.Fields(part)
	if len(chunks) < 2 || strings.Contains(part, rangeMark) {
		return []string{part}
	}
	for _, c := range chunks {
		t, ok := splitTag(c)
		if !ok || !strings.ContainsFunc(t.prefix, isLetter) || strings.ContainsAny(c, "/") {
			return []string{part}
		}
		first, _ := splitTag(chunks[0])
		if t.prefix != first.prefix {
			return []string{part}
		}
	}
	return chunks
}

// A tagReading is a tag cell on its way to Tags.
type tagReading struct {
	tags   Tags
	prefix string // of the last tag with a figure, for "SP1,3,5"
	bare   bool   // the first tag was a bare figure
}

// add reads one part of the list.
func (r *tagReading) add(part string) error {
	if from, to, ok := strings.Cut(part, rangeMark); ok {
		from, to = trimTag(from), trimTag(to)
		if strings.Contains(to, rangeMark) {
			return ErrNotUnderstood
		}
		return r.expand(from, to, true)
	}
	// SPK 1/2/3, LS1+LS2
	if pieces := strings.Split(strings.ReplaceAll(part, "+", "/"), "/"); len(pieces) > 1 {
		if tags, ok := r.slashed(pieces); ok {
			for _, t := range tags {
				if err := r.one(t); err != nil {
					return err
				}
			}
			return nil
		}
	}
	if from, to, ok := cutRange(part); ok {
		return r.expand(from, to, false)
	}
	return r.one(part)
}

// slashed reads pieces of which the first is a tag with a figure and the
// others are figures, or tags of the same prefix.
func (r *tagReading) slashed(pieces []string) ([]string, bool) {
	first, ok := splitTag(trimTag(pieces[0]))
	if !ok || first.suffix != "" || first.prefix == "" {
		return nil, false
	}
	out := []string{trimTag(pieces[0])}
	for _, p := range pieces[1:] {
		p = trimTag(p)
		t, ok := splitTag(p)
		switch {
		case ok && t.prefix == "" && t.suffix == "" && (first.prefix == "" || strings.ContainsFunc(first.prefix, isLetter)):
			out = append(out, first.prefix+p)
		case ok && t.prefix == first.prefix:
			out = append(out, p)
		default:
			return nil, false
		}
	}
	return out, true
}

func trimTag(s string) string { return strings.Trim(s, " .:") }

// cutRange finds the hyphen of a range: "S101-S108", "LS-01 - LS-08",
// "LS-1-LS-8", "LS1-8", "1-6".
func cutRange(part string) (from, to string, ok bool) {
	for i := range len(part) {
		if part[i] != '-' || i == 0 || i+1 == len(part) {
			continue
		}
		a, b := trimTag(part[:i]), trimTag(part[i+1:])
		left, ok1 := splitTag(a)
		right, ok2 := splitTag(b)
		if !ok1 || !ok2 {
			continue
		}
		if left.prefix == right.prefix && (left.number < right.number || left.number == right.number && left.suffix < right.suffix) {
			return a, b, true
		}
		// LS1-8: the second figure stands alone
		if left.prefix != "" && right.prefix == "" && right.suffix == "" && left.suffix == "" && left.number < right.number &&
			len(left.digits) <= len(right.digits) && !strings.Contains(left.prefix, "-") {
			return a, b, true
		}
	}
	return "", "", false
}

// expand adds every tag from one to another.
func (r *tagReading) expand(from, to string, sure bool) error {
	left, ok1 := splitTag(from)
	right, ok2 := splitTag(to)
	if !ok1 || !ok2 {
		return ErrNotUnderstood
	}
	switch {
	case right.prefix == left.prefix:
		if left.prefix == "" && !sure {
			r.tags.Doubts |= DateOrPair
		}
	case right.prefix == "" && right.suffix == "":
		if !sure && len(left.digits) != len(right.digits) || !sure && len(right.digits) == 1 {
			r.tags.Doubts |= RangeOrTag
		}
	default:
		return ErrNotUnderstood
	}
	r.tags.Ranged = true
	if left.number == right.number {
		return r.letters(left, right)
	}
	if left.suffix != right.suffix && right.prefix == left.prefix || right.number < left.number {
		return ErrNotUnderstood
	}
	if right.number-left.number >= MaxTags-len(r.tags.List) {
		return ErrTooLarge
	}
	width := 0
	if left.digits[0] == '0' || len(left.digits) == len(right.digits) {
		width = len(left.digits)
	}
	for n := left.number; n <= right.number; n++ {
		digits := strconv.Itoa(n)
		for len(digits) < width {
			digits = "0" + digits
		}
		if err := r.one(left.prefix + digits + left.suffix); err != nil {
			return err
		}
	}
	return nil
}

// letters expands LS1a-LS1d.
func (r *tagReading) letters(left, right numberedTag) error {
	if left.suffix == "" || right.suffix == "" || left.suffix >= right.suffix || left.digits != right.digits ||
		isUpper(left.suffix) != isUpper(right.suffix) {
		return ErrNotUnderstood
	}
	for c := left.suffix[0]; c <= right.suffix[0]; c++ {
		if err := r.one(left.prefix + left.digits + string(c)); err != nil {
			return err
		}
	}
	return nil
}

func endsInLetter(s string) bool {
	runes := []rune(s)
	return isLetter(runes[len(runes)-1])
}

func isUpper(s string) bool { return s == strings.ToUpper(s) }

// one adds a single tag; a bare figure takes the prefix of the tag before it.
func (r *tagReading) one(tag string) error {
	tag = trimTag(tag)
	if !hasAlnum(tag) || len([]rune(tag)) > longestTag || strings.ContainsAny(tag, "^<>=`") {
		return ErrNotUnderstood
	}
	if _, missing := Missing(tag); missing || Ditto(tag) {
		return ErrNotUnderstood
	}
	t, ok := splitTag(tag)
	switch {
	case ok && t.prefix == "" && r.prefix != "" && !r.bare && !slices.Contains(r.tags.List, tag):
		tag = r.prefix + tag
	case ok && t.prefix != "":
		r.prefix = ""
		if letters := strings.TrimRight(t.prefix, "-_ ."); letters != "" && endsInLetter(letters) {
			r.prefix = t.prefix
		}
	case ok && len(r.tags.List) == 0:
		r.bare = true
	}
	if len(r.tags.List) >= MaxTags {
		return ErrTooLarge
	}
	r.tags.List = append(r.tags.List, tag)
	return nil
}
