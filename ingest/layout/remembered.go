package layout

import (
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// What was made of single texts of cells; see package remember.
var (
	classes       = remember.New(32_768, func(s string, _ int) class { return readClass(s) })
	classesIn     = remember.New(32_768, func(s string, _ int) class { return readClasses(s) })
	sections      = remember.New(16_384, func(t string, _ int) vocabulary.Field { return readSection(t) })
	totals        = remember.New(16_384, func(t string, _ int) bool { return saysTotal(t) })
	phrases       = remember.New(8192, func(t string, _ int) phrase { return readPhrase(t) })
	letteredHeads = remember.New(4096, func(t string, _ int) letteredHead {
		metric, letter, label := readLettered(&heading{parts: []string{t}, words: t})
		return letteredHead{metric, letter, label}
	})
	letterMid   = remember.New(4096, func(t string, _ int) []string { return reLetterMid.FindStringSubmatch(t) })
	letterEnd   = remember.New(4096, func(t string, _ int) []string { return reLetterEnd.FindStringSubmatch(t) })
	atPlaces    = remember.New(4096, func(t string, _ int) []string { return reAtPlace.FindStringSubmatch(t) })
	joints      = remember.New(8192, func(t string, _ int) bool { return reJoint.MatchString(t) })
	factors     = remember.New(16_384, func(t string, _ int) factorRead { return readFactor(t) })
	titlesRead  = remember.New(4096, func(t string, _ int) []Fact { return (&finder{}).readTitle(t) }) // where no house book names headers
	keysRead    = remember.New(4096, func(t string, _ int) []Fact { return (&finder{}).readKeys(t) })
	taggedTexts = remember.New(16_384, func(t string, _ int) []tagged { return readTagged(t) })
)
