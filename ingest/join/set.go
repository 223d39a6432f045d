package join

import (
	"cmp"
	"slices"
	"strings"
)

// A Set gathers the written names of one kind of things and finds out which
// of them name the same thing. Add all names first, then call Settle; the
// answer does not depend on the order in which names were added.
type Set struct {
	kind       Kind
	entries    map[string]*entry // by full key
	order      []*entry          // by full key, after Settle
	anyDefined bool
}

// An entry is one distinct written name.
type entry struct {
	name      Name
	tables    []int    // the tables that define it; as a root, those that define any of its names
	own       bool     // this very name is defined
	referred  bool     // only references use it
	alias     []string // full keys of the defined names that this one was said to be, too
	parent    *entry
	ambiguous []*entry
	how       Match
}

// A Match says how strongly a name was matched to the thing it names.
type Match uint8

// The strengths, from the strongest.
const (
	Same     Match = iota // the same letters and digits
	Reduced               // the same without the words of the kind, or one carries only the number or the title
	Guessed               // a misspelling or an abbreviation, the only one that fits
	Dangling              // nothing that was defined matches
	Unclear               // several things match
)

// NewSet returns an empty set of names of a kind.
func NewSet(kind Kind) *Set { return &Set{kind: kind, entries: make(map[string]*entry)} }

// Add adds a written name. The table is the number, from 1, of the table of
// such things in which it stands, or 0 for a name that only refers to one.
// Different names of one table are different things. Blank names are not added.
func (s *Set) Add(written string, table int) {
	s.add(written, table)
}

// Refer adds a name that stands only where something else refers to the thing,
// as in a list of outputs and the zones that they feed: a name that the thing's
// own rows use is the better one.
func (s *Set) Refer(written string) {
	n := Parse(s.kind, written)
	e := s.entries[n.Full]
	fresh := e == nil || e.referred
	if e = s.add(written, 0); e != nil {
		e.referred = fresh
	}
}

func (s *Set) add(written string, table int) *entry {
	n := Parse(s.kind, written)
	if n.Full == "" {
		return nil
	}
	e := s.entries[n.Full]
	if e == nil {
		e = &entry{name: n}
		s.entries[n.Full] = e
	} else if first := table != 0; first && !e.own || first == e.own && written < e.name.Written {
		e.name.Written = written // as its table has it, else the first in order of letters
	}
	e.referred = false
	if table != 0 && !slices.Contains(e.tables, table) {
		e.tables, e.own = append(e.tables, table), true
	}
	return e
}

// Alias says that a defined name has another name in the same row, as a zone
// with a number and a title has. Another name that several things share
// ("Main hall" for two zones) names none of them.
func (s *Set) Alias(name, other string, table int) {
	x, y := s.add(name, table), s.add(other, 0)
	if x == nil || y == nil || x == y {
		return
	}
	if !slices.Contains(y.alias, x.name.Full) {
		y.alias = append(y.alias, x.name.Full)
	}
}

// Settle decides which names are one. It is called once.
func (s *Set) Settle() {
	for _, e := range s.entries {
		s.order = append(s.order, e)
		s.anyDefined = s.anyDefined || e.own
	}
	slices.SortFunc(s.order, func(a, b *entry) int { return cmp.Compare(a.name.Full, b.name.Full) })
	s.readCodes()
	for _, e := range s.order {
		if len(e.alias) == 0 || e.own {
			continue
		}
		slices.Sort(e.alias)
		var named []*entry
		for _, a := range e.alias {
			named = append(named, s.entries[a])
		}
		if named = roots(named); len(named) == 1 {
			unite(named[0], e, Same)
		} else {
			e.how, e.ambiguous = Unclear, named
		}
	}
	for _, bucket := range s.buckets(Name.identity) {
		settleBucket(bucket, Reduced)
	}
	// a number alone meets the one title that carries it, a title alone the one number
	number, title := func(n Name) string { return n.Number }, func(n Name) string { return n.Title }
	s.mergeLoose(number, title)
	s.mergeLoose(title, number)
	s.mergeBare()
	s.mergeSimilar()
	for _, e := range s.order {
		if s.anyDefined && !e.defined() && e.how < Dangling {
			e.how = Dangling
		}
	}
}

// readCodes takes the letters in front of numbers for a word of the kind where
// all names with a code and a title have the same: "B1 - Orangery", "B2 - Foyer"
// are 1 and 2.
func (s *Set) readCodes() {
	prefix, several := "", 0
	for _, e := range s.order {
		if !e.name.coded() {
			continue
		}
		if several++; prefix != "" && prefix != e.name.Prefix {
			return
		}
		prefix = e.name.Prefix
	}
	if several < 2 {
		return
	}
	for _, e := range s.order {
		if e.name.coded() {
			e.name.Number, e.name.Title = e.name.Tail, e.name.Rest
		}
	}
}

// root is the representative of the thing that e names.
func (e *entry) root() *entry {
	for e.parent != nil {
		e = e.parent
	}
	return e
}

// defined reports whether any name of the thing that e names is defined.
func (e *entry) defined() bool { return len(e.root().tables) > 0 }

// canUnite reports whether no table lists both as things of its own.
func canUnite(a, b *entry) bool {
	a, b = a.root(), b.root()
	for _, t := range a.tables {
		if slices.Contains(b.tables, t) {
			return a == b
		}
	}
	return true
}

// unite makes two names one. A defined name becomes the root, then one that is
// more than a number, then one with a title, then the smaller key.
func unite(a, b *entry, how Match) {
	ra, rb := a.root(), b.root()
	if ra == rb {
		return
	}
	if rb.before(ra) {
		a, b, ra, rb = b, a, rb, ra
	}
	rb.parent = ra
	b.how = max(b.how, how)
	for _, t := range rb.tables {
		if !slices.Contains(ra.tables, t) {
			ra.tables = append(ra.tables, t)
		}
	}
}

// before reports whether e is the better name for a thing.
func (e *entry) before(o *entry) bool {
	if e.own != o.own {
		return e.own
	}
	if e.referred != o.referred {
		return o.referred
	}
	if e.name.Bare() != o.name.Bare() {
		return o.name.Bare()
	}
	if (e.name.Title == "") != (o.name.Title == "") {
		return e.name.Title != ""
	}
	return e.name.Full < o.name.Full
}

// buckets groups the names by a key, in order of the keys' first names.
func (s *Set) buckets(key func(Name) string) [][]*entry {
	at := make(map[string]int)
	var out [][]*entry
	for _, e := range s.order {
		k := key(e.name)
		if strings.Trim(k, "\x00") == "" {
			continue
		}
		i, ok := at[k]
		if !ok {
			i = len(out)
			at[k] = i
			out = append(out, nil)
		}
		out[i] = append(out[i], e)
	}
	return out
}

// roots are the distinct things that the entries name.
func roots(entries []*entry) []*entry {
	var out []*entry
	for _, e := range entries {
		if r := e.root(); !slices.Contains(out, r) {
			out = append(out, r)
		}
	}
	return out
}

// settleBucket makes all names of a bucket one, unless a table lists several
// of them as things of their own: then a name that is not defined is unclear.
func settleBucket(bucket []*entry, how Match) {
	var defined []*entry
	for _, r := range roots(bucket) {
		if !r.defined() {
			continue
		}
		i := slices.IndexFunc(defined, func(d *entry) bool { return canUnite(d, r) })
		if i >= 0 {
			unite(defined[i], r, how)
		} else {
			defined = append(defined, r)
		}
	}
	for _, e := range bucket {
		switch {
		case e.defined() || e.how == Unclear:
		case len(defined) > 1:
			e.how, e.ambiguous = Unclear, defined
		case len(defined) == 1:
			unite(defined[0], e, how)
		default:
			unite(bucket[0], e, how)
		}
	}
}

// mergeLoose joins names that share one half of their identity where at most
// one thing has a say in the other half: "Zone 1" and "1 - Orangery" unless
// there is a "1 - Foyer" too, in which case "Zone 1" is unclear.
func (s *Set) mergeLoose(shared, other func(Name) string) {
	for _, bucket := range s.buckets(shared) {
		var full, loose []*entry
		for _, e := range bucket {
			if other(e.name) == "" {
				loose = append(loose, e)
			} else {
				full = append(full, e)
			}
		}
		things := roots(full)
		if len(things) > 1 && similarTitles(things) {
			for _, r := range things[1:] {
				if canUnite(things[0], r) {
					unite(things[0], r, Guessed)
				}
			}
			things = roots(full)
		}
		for _, e := range loose {
			switch {
			case len(things) == 0 || e.how == Unclear || slices.Contains(things, e.root()):
			case len(things) == 1 && canUnite(things[0], e):
				unite(things[0], e, Reduced)
			case len(things) > 1 && !e.defined():
				e.how, e.ambiguous = Unclear, things
			}
			things = roots(things)
		}
	}
}

// similarTitles reports whether all titles are spellings of one.
func similarTitles(roots []*entry) bool {
	for _, r := range roots[1:] {
		if r.name.Number != roots[0].name.Number || !similar(r.name.Title, roots[0].name.Title) && (r.name.Number == "" || !shareWord(r.name.Title, roots[0].name.Title)) {
			return false
		}
	}
	return true
}

// shareWord reports whether two titles of one number begin with the same word:
// "Orangery GF" and "Orangery, ground floor".
func shareWord(a, b string) bool {
	x, y := strings.Fields(a), strings.Fields(b)
	return len(x) > 0 && len(y) > 0 && len(x[0]) > 3 && x[0] == y[0]
}

// mergeBare joins a bare number with the one thing whose name ends in that
// number behind a prefix ("3" and "EVAC-3"), if all such prefixes are one.
func (s *Set) mergeBare() {
	prefixes := make(map[string]bool)
	byTail := make(map[string][]*entry)
	for _, e := range s.order {
		if e.name.Prefix != "" {
			prefixes[e.name.Prefix] = true
			byTail[e.name.Tail] = append(byTail[e.name.Tail], e)
		}
	}
	if len(prefixes) != 1 {
		return
	}
	for _, e := range s.order {
		if e.name.Number == "" || e.name.Title != "" || e.name.lettered() || e.defined() || e.how == Unclear {
			continue
		}
		if t := roots(byTail[e.name.Number]); len(t) == 1 && canUnite(t[0], e) {
			unite(t[0], e, Reduced)
		}
	}
}

// lettered reports whether one letter stands beside the number of a name: "V1" is a code of
// its own beside "VR1", which a bare 1 or "amplifier 1" is not.
func (n Name) lettered() bool { return len(strings.Trim(n.Full, "0123456789.")) == 1 }

// mergeSimilar joins what was only referred to with the one defined thing
// whose name is a misspelling or abbreviation of it.
func (s *Set) mergeSimilar() {
	if !s.anyDefined {
		return
	}
	for _, e := range s.order {
		if e.defined() || e.how == Unclear || e.name.Title == "" {
			continue
		}
		var fit []*entry
		for _, d := range s.order {
			if !d.own || d.name.Title == "" || e.name.Number != "" && d.name.Number != "" && e.name.Number != d.name.Number {
				continue
			}
			if r := d.root(); similar(e.name.Title, d.name.Title) && !slices.Contains(fit, r) {
				fit = append(fit, r)
			}
		}
		switch len(fit) {
		case 0:
		case 1:
			unite(fit[0], e, Guessed)
		default:
			e.how, e.ambiguous = Unclear, fit
		}
	}
}

// A Found is the answer for one written name.
type Found struct {
	Key     string // the same for all names of one thing, "" for a blank name
	Name    string // the thing's name as it was defined, else as written first in order of keys
	Match   Match
	Between []string // for Unclear: the names that it could be
}

// Find says which thing a written name names. It must have been added before Settle.
func (s *Set) Find(written string) Found {
	e := s.entries[Key(written)]
	if e == nil {
		return Found{}
	}
	r := e.root()
	f := Found{Key: r.name.Full, Name: r.name.Written, Match: e.how}
	if e.how == Unclear {
		for _, a := range e.ambiguous {
			f.Between = append(f.Between, a.name.Written)
		}
	}
	return f
}
