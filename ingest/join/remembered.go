package join

import "lineaudit/ingest/remember"

// What was made of single names; see package remember.
var (
	keys   = remember.New(32_768, func(s string, _ int) string { return joined(tokens(Fold(s))) })
	worded = remember.New(8192, func(s string, kind int) bool { return hasWord(Kind(kind), s) })
	names  = remember.New(16_384, func(s string, kind int) Name { return parse(Kind(kind), s) })
)
