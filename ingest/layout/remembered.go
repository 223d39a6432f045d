package layout

import (
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// What was made of single texts of cells; see package remember.
var (
	looks      = remember.New(32_768, func(s string, _ int) look { return readLook(s) })
	classes    = remember.New(32_768, func(s string, _ int) class { return readClass(s) })
	classesIn  = remember.New(32_768, func(s string, _ int) class { return readClasses(s) })
	sections   = remember.New(16_384, func(t string, _ int) vocabulary.Field { return readSection(t) })
	totals     = remember.New(16_384, func(t string, _ int) bool { return saysTotal(t) })
	lineVolts  = remember.New(16_384, func(t string, _ int) bool { return namesLineVolts(t) })
	ampTags    = remember.New(16_384, func(t string, _ int) bool { return ampTag.MatchString(t) })
	onlyFigure = remember.New(16_384, func(t string, _ int) bool { return reOnlyWatts.MatchString(t) || reOnlyOhms.MatchString(t) })
)
