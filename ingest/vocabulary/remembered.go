package vocabulary

import "lineaudit/ingest/remember"

// What was made of single headers, words and texts; see package remember.
var (
	headers      = remember.New(8192, func(text string, _ int) *Header { return (&Scorer{}).read(text) })
	words        = remember.New(16_384, func(text string, dotted int) reading { return lex().read(word{text, dotted == 1}) })
	conceptLists = remember.New(8192, func(text string, _ int) []string { return (&Scorer{}).concepts(text) })
	folds        = remember.New(32_768, func(s string, _ int) string { return fold(s) })
)
