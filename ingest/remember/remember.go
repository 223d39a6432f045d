// Package remember keeps what functions made of texts. The cells and headers
// of an archive say the same few things over and over; each is read once.
//
// What is remembered never changes a result: the functions depend on their
// arguments alone, so that it does not matter which file or which worker
// asked first, nor what has been forgotten since.
package remember

import (
	"hash/maphash"
	"strings"
	"sync/atomic"
)

// A Func is a function of a text, and of a number that says how to read it,
// which remembers results. All goroutines may use it at once; what it returns
// is shared and must not be changed.
type Func[V any] struct {
	compute func(text string, how int) V
	keep    func(V) bool // nil keeps all
	seed    maphash.Seed
	sets    []set[V] // a power of two
}

// A set holds results whose texts have the same hash. They are never changed;
// of two goroutines that write one place the later wins, at the price of one
// more computation.
type set[V any] [4]atomic.Pointer[entry[V]]

type entry[V any] struct {
	text  string
	how   int
	value V
}

// longest is the length of texts worth keeping, in bytes. Prose does not come twice.
const longest = 128

// New returns compute with a memory of at most so many results, rounded up to
// a power of two, of texts of at most 128 bytes each.
func New[V any](most int, compute func(text string, how int) V) *Func[V] {
	return NewIf(most, compute, nil)
}

// NewIf is New for a function some of whose results are too large to keep.
func NewIf[V any](most int, compute func(text string, how int) V, keep func(V) bool) *Func[V] {
	f := &Func[V]{compute: compute, keep: keep, seed: maphash.MakeSeed()}
	n := 1
	for n*len(set[V]{}) < most {
		n *= 2
	}
	f.sets = make([]set[V], n)
	return f
}

// Of returns what the function makes of a text.
func (f *Func[V]) Of(text string, how int) V {
	if len(text) > longest {
		return f.compute(text, how)
	}
	s := &f.sets[(maphash.String(f.seed, text)+uint64(how))&uint64(len(f.sets)-1)]
	free := len(s) - 1
	for i := range s {
		e := s[i].Load()
		if e == nil {
			free = i
			break
		}
		if e.how == how && e.text == text {
			if i > 0 { // what is asked for often moves to the front, the rest to the back, where it is replaced
				s[i].Store(s[i-1].Swap(e))
			}
			return e.value
		}
	}
	// Texts of cells are parts of larger ones, which must not be kept for their sake.
	text = strings.Clone(text)
	v := f.compute(text, how)
	if f.keep == nil || f.keep(v) {
		s[free].Store(&entry[V]{text, how, v})
	}
	return v
}

// A Table is a function of a number that remembers its latest results. All
// goroutines may use it at once; what it returns is shared and must not be changed.
type Table[V any] struct {
	compute func(uint64) *V
	shift   int
	places  []atomic.Pointer[numbered[V]] // a power of two
}

type numbered[V any] struct {
	number uint64
	value  *V
}

// NewTable returns compute with a memory of at most 1<<bits results.
func NewTable[V any](bits int, compute func(uint64) *V) *Table[V] {
	return &Table[V]{compute, 64 - bits, make([]atomic.Pointer[numbered[V]], 1<<bits)}
}

// Of returns what the function makes of a number.
func (t *Table[V]) Of(number uint64) *V {
	const spread = 0x9e3779b97f4a7c15 // odd: neighbouring numbers go to places far apart
	place := &t.places[number*spread>>t.shift]
	if n := place.Load(); n != nil && n.number == number {
		return n.value
	}
	v := t.compute(number)
	place.Store(&numbered[V]{number, v})
	return v
}
