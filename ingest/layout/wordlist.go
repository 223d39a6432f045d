package layout

import (
	_ "embed"
	"encoding/csv"
	"strings"
	"sync"

	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

//go:embed words.csv
var wordsCSV string

// A class is a set of words that cells are recognised by.
type class uint64

// The classes of words.csv.
const (
	classTotal class = 1 << iota
	classNote
	classDitto
	classMissing
	classStatus
	classMounting
	classYes
	classMaterial
	classFloor
	classUse
	classDevice
	classCable
	classHiZ
	classForeign
	classLater   // what is so now
	classEarlier // what was found, or had been
	classPlanned // what was meant to be, or is asked for
	classNo
	classPiece
	classNoPiece
	classBlank
	classFeeds
	classBehind // "via", before the control that something hangs on
	classPast   // those of them that are not said of amplifiers: "via", not "on"
	classAlso   // "also", before what is counted beside something else
	classRevision
	classExtra    // before what belongs to a device: "with bracket"
	classFinish   // its colour, or how it is supplied: "white", "complete"
	classAge      // how old a thing is: "new", "the old one"
	classContract // what was agreed first
	classChange   // what changes it
	classOptional // over what may be ordered and is not counted: "Option, not in the total"
	classWhere    // before where something is: "in the booth"
	classLocal    // what controls are called besides: "wall", "local"
	classDrawn    // what drawings and papers show
	classSeen     // what somebody saw on site
)

var classNames = map[string]class{"total": classTotal, "note": classNote, "ditto": classDitto, "missing": classMissing,
	"status": classStatus, "mounting": classMounting, "yes": classYes, "material": classMaterial, "floor": classFloor,
	"use": classUse, "device": classDevice, "cable": classCable, "hiz": classHiZ, "foreign": classForeign,
	"later": classLater, "earlier": classEarlier, "planned": classPlanned, "no": classNo, "piece": classPiece, "no piece": classNoPiece, "blank": classBlank, "feeds": classFeeds, "behind": classBehind, "past": classPast, "also": classAlso, "revision": classRevision, "extra": classExtra, "finish": classFinish, "age": classAge, "contract": classContract, "change": classChange, "optional": classOptional, "where": classWhere, "local": classLocal, "drawn": classDrawn, "seen": classSeen}

// wordList is words.csv by folded word, read once.
var wordList = sync.OnceValue(func() map[string]class {
	rows, err := csv.NewReader(strings.NewReader(wordsCSV)).ReadAll()
	if err != nil {
		panic(err) // the data is part of the program; a test reads it
	}
	m := map[string]class{}
	for _, row := range rows[1:] {
		c, ok := classNames[row[0]]
		if !ok {
			panic("words.csv: no class " + row[0])
		}
		for w := range strings.SplitSeq(row[2], ";") {
			m[vocabulary.Fold(w)] |= c
		}
	}
	return m
})

// classOf returns the classes that a whole text belongs to.
func classOf(s string) class { return classes.Of(s, 0) }

func readClass(s string) class { return wordList()[vocabulary.Fold(s)] }

// classAhead returns the classes of the one to three words that a text begins with.
func classAhead(words []string) class {
	c, list := class(0), wordList()
	for n := 1; n <= min(3, len(words)); n++ {
		c |= list[strings.Join(words[:n], " ")]
	}
	return c
}

// classesAhead remembers the classes of the words that texts begin with.
var classesAhead = remember.New(2048, func(s string, _ int) class { return classAhead(strings.Fields(vocabulary.Fold(s))) })

// classWithin returns the classes of the single words and neighbouring pairs of words of a text.
func classWithin(s string) class { return classesIn.Of(s, 0) }

func readClasses(s string) class {
	list := wordList()
	words := strings.Fields(vocabulary.Fold(s))
	var c class
	for i, w := range words {
		c |= list[w]
		if n := len(w); n > 4 {
			if w[n-1] == 's' || w[n-1] == 'n' {
				c |= list[w[:n-1]]
			}
			if w[n-1] == 's' && w[n-2] == 'e' {
				c |= list[w[:n-2]]
			}
			for i := 4; i+5 <= n; i++ { // the head of a compound: Deckenlautsprecher, plafondluidspreker
				c |= list[w[i:]] & (classDevice | classForeign)
			}
		}
		if i+1 < len(words) {
			c |= list[w+" "+words[i+1]]
		}
	}
	return c
}
