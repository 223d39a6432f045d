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
	"sync"
)

// A Func is a function of a text, and of a number that says how to read it,
// which remembers its latest results. All goroutines may use it at once; what
// it returns is shared and must not be changed.
type Func[V any] struct {
	compute func(text string, how int) V
	seed    maphash.Seed
	shards  [shards]shard[V]
}

const (
	shards = 16
	// perShard bounds the texts of one half of a shard. Two halves take turns:
	// when the young one is full the old one is forgotten, and what is asked
	// for again moves from the old to the young.
	perShard = 2048
	// longest is the length of texts worth keeping, in bytes. Prose does not come twice.
	longest = 128
)

type key struct {
	text string
	how  int
}

type shard[V any] struct {
	mu         sync.Mutex
	young, old map[key]V
}

// New returns compute with a memory. Together its texts take at most 8 MiB,
// and its results what 65,536 of them take.
func New[V any](compute func(text string, how int) V) *Func[V] {
	return &Func[V]{compute: compute, seed: maphash.MakeSeed()}
}

// Of returns what the function makes of a text.
func (f *Func[V]) Of(text string, how int) V {
	if len(text) > longest {
		return f.compute(text, how)
	}
	s := &f.shards[maphash.String(f.seed, text)%shards]
	k := key{text, how}
	s.mu.Lock()
	v, ok := s.young[k]
	if !ok {
		if v, ok = s.old[k]; ok {
			s.put(key{strings.Clone(text), how}, v)
		}
	}
	s.mu.Unlock()
	if ok {
		return v
	}
	// Texts of cells are parts of larger ones, which must not be kept for their sake.
	k.text = strings.Clone(text)
	v = f.compute(k.text, how)
	s.mu.Lock()
	s.put(k, v)
	s.mu.Unlock()
	return v
}

func (s *shard[V]) put(k key, v V) {
	if s.young == nil || len(s.young) >= perShard {
		s.old, s.young = s.young, make(map[key]V)
	}
	s.young[k] = v
}
