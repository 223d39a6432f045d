package ingest

import (
	"regexp"
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
)

// spokenOn gathers the texts on a sheet that stand in no table: those of its
// titles and notes, in reading order.
func spokenOn(s *layout.Sheet) []spoken {
	var cells []spoken
	seen := map[schedule.Ref]bool{}
	add := func(at schedule.Ref, text string) {
		text = strings.TrimSpace(text)
		if at.Row > 0 && text != "" && !seen[at] {
			seen[at] = true
			cells = append(cells, spoken{at: at, text: text})
		}
	}
	fact := func(f *layout.Fact) {
		text := f.Text
		if f.Cell != nil && f.Cell.Text != "" {
			text = f.Cell.Text
		}
		if f.Key != "" && !strings.Contains(text, f.Key) {
			text = f.Key + ": " + text
		}
		add(f.At, text)
	}
	for i := range s.Facts {
		if f := &s.Facts[i]; goesOnBeside(f) {
			add(f.At, f.Key+": "+f.Text)
		} else {
			fact(f)
		}
	}
	for _, t := range s.Tables {
		for i := range t.Titles {
			fact(&t.Titles[i])
		}
		last := lastDevice(t)
		for i := range t.Records {
			r := &t.Records[i]
			for k := range r.Values {
				if v := &r.Values[k]; commented(v) {
					add(v.At, commentText(v.Cell.Note()))
				}
			}
			if r.Class == layout.Note || i > last && (r.Class == layout.Title || r.Class == layout.Device || r.Class == layout.NoDevice) {
				add(r.At, r.Text)
			}
		}
	}
	for _, o := range s.Outside {
		if o.Class == layout.Note && !o.Facts {
			add(o.At, o.Text)
		}
	}
	slices.SortStableFunc(cells, func(x, y spoken) int { return x.at.Compare(y.at) })
	numberNotes(cells)
	return carryLabels(cells)
}

// goesOnBeside reports whether the value of a key goes on in the cells beside its own: "Amplifiers: | V1 | 120 W". Behind a
// dash stands what other lines of its block say.
func goesOnBeside(f *layout.Fact) bool {
	return f.Key != "" && f.Cell != nil && strings.HasPrefix(f.Text, f.Cell.Text+" ") && !strings.HasPrefix(f.Text, f.Cell.Text+" - ")
}

// carryLabels repeats a label in front of the rows below that go on under what stands beside it: "Amplifiers: | V1 |
// 120 W" and below it "| V2 | 60 W".
func carryLabels(cells []spoken) []spoken {
	var out []spoken
	var label, beside spoken // beside it: the first cell that it speaks of
	for i, c := range cells {
		first := i == 0 || cells[i-1].at.Row != c.at.Row || cells[i-1].at.Sheet() != c.at.Sheet()
		switch {
		case !first:
		case beside.at.Row > 0 && c.at == beside.at.On().Cell(int(beside.at.Row)+1, int(beside.at.Col)):
			out = append(out, spoken{at: c.at, text: label.text})
			beside = c
		default:
			label, beside = spoken{}, spoken{}
			if word, value, ok := strings.Cut(c.text, ":"); ok && strings.TrimSpace(value) != "" && labels(word) { // a key is told with its value, at the cell of that
				label, beside = spoken{text: word + ":"}, c
			} else if i+1 < len(cells) && cells[i+1].at.Row == c.at.Row && cells[i+1].at.Sheet() == c.at.Sheet() && labels(c.text) {
				label, beside = c, cells[i+1]
			}
		}
		out = append(out, c)
	}
	return out
}

// labels reports whether a cell is a word for amplifiers or controls and nothing else: "Amplifiers:".
func labels(text string) bool {
	word := strings.TrimSpace(strings.TrimSuffix(strings.TrimSpace(text), ":"))
	if strings.ContainsAny(word, " ") || anyDigit(word) {
		return false
	}
	return notation.SpeaksOfAmplifier(word) || notation.IsControlWord(join.Fold(word))
}

// noteNumber is the number of a note in a list, before its text.
var noteNumber = regexp.MustCompile(`^(?:(?i:note)\s+)?\(?(\d{1,2})\s?[.):]\s+`)

// numberNotes parts the numbers of notes from their texts where several follow each
// other: "2. floor" alone is a floor.
func numberNotes(cells []spoken) {
	var notes []*spoken
	for i := range cells {
		if m := noteNumber.FindStringSubmatch(cells[i].text); m != nil {
			cells[i].number, _ = strconv.Atoi(m[1])
			notes = append(notes, &cells[i])
		}
	}
	listed := make([]bool, len(notes))
	for i := 1; i < len(notes); i++ {
		if notes[i].number == notes[i-1].number+1 && notes[i].at.Sheet() == notes[i-1].at.Sheet() {
			listed[i-1], listed[i] = true, true
		}
	}
	for i, n := range notes {
		if listed[i] {
			n.text = noteNumber.ReplaceAllString(n.text, "")
		} else {
			n.number = 0
		}
	}
}

// lastDevice is the last record of a table that says more than one thing of a
// device; what follows in single cells and titles without rows is said of the list.
func lastDevice(t *layout.Table) int {
	for i := len(t.Records) - 1; i >= 0; i-- {
		r := &t.Records[i]
		stated := 0
		for k := range r.Values {
			if r.Values[k].How == schedule.Stated && r.Values[k].Text != "" {
				stated++
			}
		}
		if r.Class == layout.Device && stated > 1 {
			return i
		}
	}
	return len(t.Records)
}
