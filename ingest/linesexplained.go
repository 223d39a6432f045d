package ingest

import (
	"regexp"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
	"lineaudit/ingest/watch"
)

// linesExplained takes a column of lines for outputs where a note explains one of their names as an amplifier and an
// output of it, and all of them are written like it: "Line 1/2 = amplifier 1, output 2". The note has then said all of
// that, and is heard no more.
func linesExplained(all []sheetPart, tables []*table, w *watch.Watch) {
	for i := range all {
		sp := &all[i]
		used := false
		for k, s := range sp.spoken {
			mark, at := explainedMark(s.text)
			if mark == "" || !partedLines(tables, mark, s.text) {
				continue
			}
			sp.spoken[k].text, used = strings.Trim(s.text[:at[0]]+s.text[at[1]:], " .;"), true
		}
		if used {
			sp.said = saidIn(sp.spoken, w)
		}
	}
}

// partedLines takes the lines of tables that all have a mark between two parts for outputs, and reports whether any are or were.
func partedLines(tables []*table, mark, note string) (any bool) {
	for _, t := range tables {
		if outputs := t.byField[vocabulary.Channel]; len(outputs) == 1 && t.allParted(outputs[0], mark) {
			any = true // they are read so already
		}
		if t.has(vocabulary.Channel) || t.has(vocabulary.Amplifier) {
			continue
		}
		for _, c := range t.byField[vocabulary.Circuit] {
			if t.allParted(c, mark) {
				t.become(c, vocabulary.Channel, "a note explains these as amplifiers and outputs: “"+short(note)+"”")
				any = true
				break
			}
		}
	}
	return any
}

// nameExplained is a name of two parts, and what stands behind a sign or a word for its meaning.
var nameExplained = regexp.MustCompile(`(?i)(?:^|[\s("„“])(\d{1,2}|\pL)([/.-])(\d{1,2}|\pL)[)"”“]?\s*(?:=|:|→|(?:\pL+\s+){0,2}?(?:means?|stands for|heißt|heisst|bedeutet|meint|signifie|veut dire|significa|quiere decir|vuol dire|betekent|staat voor)\s)\s*([^.;]+)`)

// explainedMark is the mark between the parts of a name that a text explains as an amplifier and its output, in this
// order, and where that stands; "" where it explains none.
func explainedMark(text string) (mark string, at []int) {
	if len(text) > longestSpoken {
		return "", nil
	}
	at = nameExplained.FindStringIndex(text)
	m := nameExplained.FindStringSubmatch(text)
	if m == nil || !notation.SpeaksOfAmplifier(m[4]) {
		return "", nil
	}
	c, err := notation.ParseChannel(withoutElided.ReplaceAllString(m[4], " "))
	if err != nil || len(c.Channels) != 1 || join.Key(c.Amplifier) != join.Key(m[1]) || join.Key(c.Channels[0]) != join.Key(m[3]) {
		return "", nil
	}
	return m[2], at
}

// withoutElided are short words that lean on the next one: "uscita 2 dell'amplificatore 1".
var withoutElided = regexp.MustCompile(`(?i)\s(?:dell|de l|d|l)['’]`)

// allParted reports whether all cells of a column are two short parts with a mark between them: "1/2".
func (t *table) allParted(c *column, mark string) bool {
	cells, all := 0, true
	t.eachText(c, func(text string) {
		a, b, ok := strings.Cut(text, mark)
		cells++
		all = all && ok && shortName.MatchString(a) && shortName.MatchString(b)
	})
	return all && cells > 0
}

// shortName is a number or a letter.
var shortName = regexp.MustCompile(`^(?:\d{1,2}|\pL)$`)
