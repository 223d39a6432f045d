package xlsx

import "hash/maphash"

// seen are texts of cells met lately, so that one that repeats down a column is
// held once.
type seen [256]string

var seenSeed = maphash.MakeSeed()

// text is b as a string.
func (s *seen) text(b []byte) string {
	if len(b) == 0 || len(b) > 64 {
		return string(b)
	}
	at := &s[maphash.Bytes(seenSeed, b)%uint64(len(s))]
	if *at != string(b) {
		*at = string(b)
	}
	return *at
}
