package ingest

import (
	"cmp"
	"slices"
)

// sortedKeys are the keys of a map in order, for walks whose result must not
// depend on the order of a map.
func sortedKeys[K cmp.Ordered, V any](m map[K]V) []K {
	keys := make([]K, 0, len(m))
	for k := range m {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	return keys
}
