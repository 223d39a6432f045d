package ingest

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// Titles name the job and its place without saying so: "Boathouse 6 - heads
// list | EQ-0606". What follows reads such lines where no key does.

// jobCode is a job number without a key, at the beginning of a text: letters, a
// dash and figures. The letters are caught.
var jobCode = regexp.MustCompile(`^([A-Z]{1,4})-\d{2,6}(?:$|\s)`)

// plainTitle reports whether a fact is a line of a title block of which only
// the words are known.
func plainTitle(f *layout.Fact) bool {
	return f.Field == vocabulary.Unknown && f.Key == "" && f.At.Row > 0
}

// numberTitles finds job numbers without a key in the titles of sheets that
// have none with one. A code counts where another sheet of the book has a job
// number of the same letters; else one alone does, beside the title of a sheet.
func numberTitles(all []sheetPart) {
	letters := make(map[string]bool)
	for i := range all {
		for k := range all[i].facts {
			if f := &all[i].facts[k]; f.Field == vocabulary.JobNo {
				if m := jobCode.FindStringSubmatch(f.Text); m != nil {
					letters[m[1]] = true
				}
			}
		}
	}
	keyed := len(letters) > 0
	codes := make(map[string]bool)
	for i := range all {
		s := &all[i]
		if s.numbered() {
			keyed = true
			continue
		}
		for k := range s.facts {
			if code := s.codeIn(&s.facts[k], letters); code != "" {
				codes[code] = true
			}
		}
	}
	if !keyed && len(codes) > 1 && !sheetsNamed(all, letters) {
		return // drawings or sheets are numbered like this too
	}
	for i := range all {
		s := &all[i]
		if s.numbered() {
			continue
		}
		for k := range s.facts {
			f := &s.facts[k]
			code := s.codeIn(f, letters)
			if code == "" || keyed && !letters[jobCode.FindStringSubmatch(code)[1]] {
				continue
			}
			title := *f
			title.Text, title.Cell = strings.TrimSpace(strings.TrimPrefix(f.Text, code)), nil
			f.Field, f.Text, f.Cell = vocabulary.JobNo, code, nil
			if title.Text != "" {
				s.facts = append(s.facts, title)
			}
			break
		}
	}
}

// sheetsNamed reports whether every code without a key stands on a sheet whose
// name has its figures, which makes it the number of a job of its own.
func sheetsNamed(all []sheetPart, letters map[string]bool) bool {
	for i := range all {
		s := &all[i]
		for k := range s.facts {
			code := s.codeIn(&s.facts[k], letters)
			_, figures, _ := strings.Cut(code, "-")
			if code != "" && !strings.Contains(s.facts[k].At.Sheet(), figures) {
				return false
			}
		}
	}
	return true
}

// numbered reports whether a fact of a sheet is a job number.
func (s *sheetPart) numbered() bool {
	return slices.ContainsFunc(s.facts, func(f layout.Fact) bool { return f.Field == vocabulary.JobNo })
}

// codeIn is the job number without a key that a fact holds, "" if none.
// Letters are those of the job numbers with a key elsewhere in the book.
func (s *sheetPart) codeIn(f *layout.Fact, letters map[string]bool) string {
	m := jobCode.FindStringSubmatch(f.Text)
	if m == nil || !plainTitle(f) || int(f.At.Row) != s.titleRow() || notation.KeyOf(f.Text).Kind != notation.KeyNone {
		return ""
	}
	code := strings.TrimSpace(m[0])
	if letters[m[1]] || code == f.Text && s.titleBeside(f) {
		return code
	}
	return ""
}

// titleRow is the first row with a plain title, 0 if there is none.
func (s *sheetPart) titleRow() int {
	top := 0
	for i := range s.facts {
		if f := &s.facts[i]; plainTitle(f) && (top == 0 || int(f.At.Row) < top) {
			top = int(f.At.Row)
		}
	}
	return top
}

// titleBeside reports whether another plain title stands on the row of a fact.
func (s *sheetPart) titleBeside(f *layout.Fact) bool {
	return slices.ContainsFunc(s.facts, func(o layout.Fact) bool {
		return plainTitle(&o) && o.At.Row == f.At.Row && o.Text != f.Text
	})
}
