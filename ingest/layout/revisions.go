package layout

import (
	"regexp"
	"strings"

	"lineaudit/ingest/vocabulary"
)

// Lists that are revised keep what they said before: "W rev. A | W rev. B".

// lastRevision takes of columns whose headers differ in a revision alone the last one, and
// leaves the others out: watts of each row are taps, where nothing else is.
func lastRevision(cols []*heading, base []worth) {
	last := make(map[string]int) // by what the headers share
	marks := make([]string, len(cols))
	var names []string
	for i, h := range cols {
		name, mark := cutRevision(h.words)
		if mark == "" || h.forced != vocabulary.Unknown {
			continue
		}
		marks[i] = mark
		was, more := last[name]
		switch {
		case !more:
			last[name] = i
			names = append(names, name)
			continue
		case laterMark(mark, marks[was]):
			last[name] = i
		case !laterMark(marks[was], mark):
			return // which is the later one nobody knows
		default:
			was = i
		}
		leaveOut(base, was)
	}
	for _, name := range names {
		i := last[name]
		h := cols[i]
		replaced := false
		for j, mark := range marks {
			other, _ := cutRevision(cols[j].words)
			replaced = replaced || j != i && mark != "" && other == name
		}
		if replaced && h.unit == "W" && h.cells.share(lookTapUsual|lookTapValue) >= 0.8 && !tapBeside(cols, i, marks) {
			base[i][vocabulary.Tap] = 1.2
			h.aside = "the last revision of what the columns beside it say"
		}
	}
}

// tapBeside reports whether a column of no revision is one of taps.
func tapBeside(cols []*heading, at int, marks []string) bool {
	for j, h := range cols {
		if j != at && marks[j] == "" && h.top == vocabulary.Tap && h.score >= headerScore {
			return true
		}
	}
	return false
}

// leaveOut lets a column mean nothing.
func leaveOut(base []worth, i int) {
	for f := range base[i] {
		base[i][f] = min(base[i][f], 0)
	}
	base[i][vocabulary.Ignored] = 1.2
}

// cutRevision parts a header from the letter or number of its revision, "W rev. B": "" if it has none.
func cutRevision(header string) (name, mark string) {
	words := strings.Fields(vocabulary.Fold(header))
	for i := 1; i < len(words); i++ {
		if classOf(words[i-1])&classRevision == 0 || len(words[i]) > 2 {
			continue
		}
		if letter := len(words[i]) == 1 && words[i] >= "a"; !letter && strings.Trim(words[i], "0123456789") != "" {
			continue
		}
		return strings.Join(words[:i], " ") + "|" + strings.Join(words[i+1:], " "), words[i]
	}
	return "", ""
}

// laterMark reports whether a revision comes after another: letters after letters, numbers after numbers.
func laterMark(x, y string) bool {
	digits := func(s string) bool { return s[0] <= '9' }
	if digits(x) != digits(y) {
		return false
	}
	x, y = strings.TrimLeft(x, "0"), strings.TrimLeft(y, "0")
	return len(x) > len(y) || len(x) == len(y) && x > y
}

// reDay finds a day in figures: "12/03/2014", "3.11.21", "2014-03-12".
var reDay = regexp.MustCompile(`^\d{1,4}[./-]\d{1,2}[./-]\d{2,4}$`)

// headsHistory reports whether line i, behind a blank one, is the header of a history of revisions below a list: "Ind. | Date |
// Objet" over "A | 12/03/2014 | first issue".
func (f *finder) headsHistory(i int) bool {
	lines := f.p.lines
	l := &lines[i]
	if i == 0 || i+1 == len(lines) || lines[i-1].n == l.n-1 || lines[i+1].n != l.n+1 || len(l.slots) < 2 || len(l.slots) > 5 {
		return false
	}
	revised, dated := false, false
	for _, s := range l.slots {
		switch f.header(s.cell).field {
		case vocabulary.Date:
			c := lines[i+1].at(s.col)
			dated = dated || lookOf(c)&lookDate != 0 || !c.blank() && reDay.MatchString(c.line())
		case vocabulary.Revision:
			revised = true
		}
		revised = revised || classOf(strings.TrimRight(s.cell.line(), ".:"))&classRevision != 0
	}
	return revised && dated
}
