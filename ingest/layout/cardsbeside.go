package layout

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Cards for a rack door stand beside and below each other, each with keys and values in two columns over the header of its
// loudspeakers: "feeds | Rink", "amp | Amp 1", "volume | none" over "speaker | set to". Each column of cards is read by itself.

// fewestCards is the fewest cards alike, and fewestCardLines the fewest keys of each, that make a sheet one of cards.
const (
	fewestCards     = 2
	fewestCardLines = 2
)

// A cardsColumn is a column of cards as a plane of its own, and the lines of its keys.
type cardsColumn struct {
	p    *plane
	keys map[int]bool
}

// planeOf is the plane on which a table was found; the finder knows its keys from then on.
func (sr *sheetReader) planeOf(t *placed) *plane {
	sr.f.cardKeys = nil
	if t.card == nil {
		return sr.p
	}
	sr.f.cardKeys = t.card.keys
	return t.card.p
}

// readCards reads the columns of cards of a sheet, where it is one of cards.
func (sr *sheetReader) readCards() {
	whole := sr.p
	if len(sr.tables) > 0 || whole.turned || whole.glued > 0 || whole.stackedCols > 0 || len(whole.lines) == 0 || len(whole.lines) > maxRest {
		return
	}
	var columns []*cardsColumn
	cards, header := 0, ""
	for _, r := range whole.columnsOf(whole.lines) {
		sr.watch.Step()
		p := whole.columnsOnly(r)
		keys, headers := sr.f.cardsIn(p)
		for _, h := range headers {
			if header == "" {
				header = h
			}
			if h != header {
				return
			}
		}
		cards += len(headers)
		if len(headers) > 0 {
			columns = append(columns, &cardsColumn{p, keys})
		}
	}
	if cards < fewestCards {
		return
	}
	for _, c := range columns {
		sr.use(c.p)
		sr.f.cardKeys = c.keys
		n := len(sr.tables)
		sr.readTables()
		for _, t := range sr.tables[n:] {
			t.card = c
		}
	}
	sr.use(whole)
	sr.f.cardKeys = nil
}

// columnsOnly is the plane with the columns of a range alone.
func (p *plane) columnsOnly(r grid.Range) *plane {
	q := *p
	q.lines = nil
	for i := range p.lines {
		if slots := p.lines[i].between(r.Col1, r.Col2); len(slots) > 0 {
			l := p.lines[i]
			l.slots = slots
			q.lines = append(q.lines, l)
		}
	}
	return &q
}

// cardsIn finds the cards in one column of them: the lines of their keys, and the words of the header of each.
func (f *finder) cardsIn(p *plane) (keys map[int]bool, headers []string) {
	keys = map[int]bool{}
	for i := 0; i < len(p.lines); i++ {
		j, names := i, false
		for j < len(p.lines) && (j == i || p.lines[j].n == p.lines[j-1].n+1) && f.isCardKey(&p.lines[j]) && !f.headsCard(p, j) {
			key := p.lines[j].slots[0].cell
			names = names || keyedFields[f.header(key).field] || keyedFields[f.keyField(key.line())] || classOf(key.line())&classFeeds != 0
			j++
		}
		if j-i >= fewestCardLines && names && j < len(p.lines) && p.lines[j].n == p.lines[j-1].n+1 && f.headsCard(p, j) {
			for k := i; k < j; k++ {
				keys[p.lines[k].n] = true
			}
			if i > 0 && p.lines[i-1].n == p.lines[i].n-1 && len(p.lines[i-1].slots) == 1 && p.lines[i-1].slots[0].cell.Kind == grid.String {
				keys[p.lines[i-1].n] = true // its title
			}
			var words strings.Builder
			for _, s := range p.lines[j].slots {
				words.WriteString(s.cell.folded() + "|")
			}
			headers = append(headers, words.String())
		}
		i = max(i, j-1)
	}
	return keys, headers
}

// isCardKey reports whether a line is one key with its value beside it.
func (f *finder) isCardKey(l *line) bool {
	if len(l.slots) != 2 || l.slots[1].col != l.slots[0].col+1 {
		return false
	}
	key := l.slots[0].cell
	return key.Kind == grid.String && len(key.Text) <= 40 && !anyDigit(key.Text) &&
		(strings.HasSuffix(key.line(), ":") || classOf(key.line())&classFeeds != 0 || f.header(key).score >= headerScore || f.keyField(key.line()) != vocabulary.Unknown)
}

// headsCard reports whether a line is header words and nothing else, with a line right below it that is none of keys.
func (f *finder) headsCard(p *plane, i int) bool {
	slots := p.lines[i].slots
	if len(slots) < 2 || i+1 >= len(p.lines) || p.lines[i+1].n != p.lines[i].n+1 || f.isCardKey(&p.lines[i+1]) {
		return false
	}
	return !slices.ContainsFunc(slots, func(s slot) bool {
		return s.cell.Kind != grid.String || anyDigit(s.cell.Text) || f.header(s.cell).score < headerScore
	})
}

// cardFact settles what a key of a card means: what the line feeds is its zone, an amplifier with its output is an output,
// and a power is what that gives, unless the key speaks of what hangs on it, or of the control.
func (f *finder) cardFact(fact *Fact) {
	switch {
	case classOf(fact.Key)&classFeeds != 0 && !anyDigit(fact.Text):
		fact.Field = vocabulary.Zone
	case fact.Field == vocabulary.Amplifier && joints.Of(fact.Text, 0):
		fact.Field = vocabulary.Channel
	case !reWattsOnly.MatchString(plainWatts(fact.Text)) || classOf(fact.Key)&classTotal != 0:
	case !slices.ContainsFunc(f.s.Concepts(fact.Key), func(c string) bool {
		return c == "load" || c == "control" || c == "tap" || c == "speaker" || c == "measured"
	}):
		fact.Field = vocabulary.ChannelWatts
	}
}

// reWattsAside matches a power with words behind it that rate no other output: "120 W this output".
var reWattsAside = regexp.MustCompile(`(?i)^(\d+(?:[.,]\d+)?\s*(?:w|watts?))(?:\s+\pL+){1,3}$`)

// plainWatts is a power without the words behind it, as long as these say of no other output that it gives as much.
func plainWatts(t string) string {
	if m := reWattsAside.FindStringSubmatch(t); m != nil && !notation.OneForEach(t) {
		return m[1]
	}
	return t
}
