package layout

import (
	"sync/atomic"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// A cell is a cell of a sheet and what its text says.
type cell struct {
	*grid.Cell
	said *wording // nil on a plane of very many cells, where the memory of wordings is asked each time
}

// blank reports whether there is no cell.
func (c cell) blank() bool { return c.Cell == nil }

// says is the wording of a cell, struck-out parts left out.
func (c cell) says() *wording {
	if c.said != nil {
		return c.said
	}
	return wordingOf(now(c.Cell))
}

// wrote is the wording of a cell, struck through or not.
func (c cell) wrote() *wording {
	if c.said != nil && c.Struck == grid.NotStruck {
		return c.said
	}
	return wordingOf(clean(c.Text))
}

// text is what a cell says now: struck-out parts left out, space trimmed.
func text(c cell) string {
	if c.said != nil {
		return c.said.text
	}
	return now(c.Cell)
}

// line is the text of a cell on one line.
func (c cell) line() string {
	if c.said != nil {
		return c.said.line
	}
	return oneLine(now(c.Cell))
}

// folded is the text of a cell without case, accents and punctuation.
func (c cell) folded() string {
	if c.said != nil {
		return c.said.read().folded
	}
	return vocabulary.Fold(now(c.Cell))
}

// A wording is a text as cells have it, with what is asked of it over and over,
// which is worked out when it is first asked, for all cells that say the same.
type wording struct {
	text    string // trimmed
	line    string // on one line
	what    atomic.Pointer[readWording]
	heading atomic.Pointer[headerCell]
	answers atomic.Uint32 // two bits for each question: yes, and no
	classes atomic.Uint64 // of its words, and whether they were read
}

// A readWording is what a wording says, taken by itself.
type readWording struct {
	look     look
	class    class
	folded   string
	number   float64 // where isNumber
	isNumber bool
}

var wordings = remember.New(32_768, func(t string, _ int) *wording { return &wording{text: t, line: oneLine(t)} })

// wordingOf is the wording of a trimmed text.
func wordingOf(t string) *wording { return wordings.Of(t, 0) }

// read takes the wording apart.
func (w *wording) read() *readWording {
	if r := w.what.Load(); r != nil {
		return r
	}
	r := &readWording{look: readLook(w.line), class: classOf(w.line), folded: vocabulary.Fold(w.line)}
	r.number, r.isNumber = plainNumber(w.line)
	w.what.Store(r)
	return r
}

// within is the classes of the words in the wording.
func (w *wording) within() class {
	if c := w.classes.Load(); c != 0 {
		return class(c &^ classesRead)
	}
	c := classWithin(w.text)
	w.classes.Store(uint64(c) | classesRead)
	return c
}

// classesRead is set, beside the classes of a wording, once they were read.
const classesRead = 1 << 63

// header is the wording as a header, whatever its file.
func (w *wording) header() headerCell {
	h := w.heading.Load()
	if h == nil {
		h = readHeaderCell(w)
		w.heading.Store(h)
	}
	return *h
}

// A question is asked of a wording and answered by yes or no.
type question int

// The questions.
const (
	listedHeader     question = iota // its very words stand in the vocabulary's list of headers
	outputAlone                      // it names an output without its amplifier
	outputLabel                      // it names an output and nothing else
	amplifierTag                     // it is numbered as amplifiers usually are
	numberedLikeTags                 // it ends as tags and numbers do
	onlyFigure                       // it is a power or an impedance
	lineVoltage                      // it names the voltage of a loudspeaker line
	amplifierRating                  // it is the rating of an amplifier
	dittoMark                        // it repeats the cell above
	noteText                         // it is a note rather than a title
	aboutLines                       // it has a word for loudspeakers, or for what their lines are made of
	foreignWords                     // it has a word for something that is no part of a loudspeaker system
	oneLoudspeaker                   // it is the tag of a loudspeaker with its watts

	questions = iota // how many there are
)

// Two bits for each question must find room in the answers.
const _ = uint(16 - questions)

// is answers a question, worked out when it is first asked.
func (w *wording) is(q question) bool {
	yes, no := uint32(1)<<(2*q), uint32(2)<<(2*q)
	switch a := w.answers.Load(); {
	case a&yes != 0:
		return true
	case a&no != 0:
		return false
	}
	if w.answer(q) {
		w.answers.Or(yes)
		return true
	}
	w.answers.Or(no)
	return false
}

func (w *wording) answer(q question) bool {
	switch q {
	case listedHeader:
		return vocabulary.Known(w.line)
	case outputAlone:
		return reChOnly.MatchString(w.text)
	case outputLabel:
		return namesOutput(w.line)
	case amplifierTag:
		return ampTag.MatchString(w.text)
	case numberedLikeTags:
		return reNumbered.MatchString(w.text)
	case onlyFigure:
		return reOnlyWatts.MatchString(w.line) || reOnlyOhms.MatchString(w.line)
	case lineVoltage:
		return namesLineVolts(w.line)
	case amplifierRating:
		return ratesAmplifier(w.text)
	case dittoMark:
		return isDitto(w.line)
	case noteText:
		return readNote(w.text)
	case aboutLines:
		return aboutWords(vocabulary.NewScorer(), w.line) > 0
	case foreignWords:
		return classWithin(w.line)&classForeign != 0
	case oneLoudspeaker:
		return len(taggedIn(w.text)) == 1
	}
	panic("no such question")
}
