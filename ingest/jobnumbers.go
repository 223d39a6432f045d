package ingest

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// The number of a job stands in a title or a note behind a word for it: "Contract 5120", "Propuesta n° 3341".

// numberValue is a number behind a word for it: "no. 5120", ": 2011-B-07", "NBG/PA/118", "2016.118".
var numberValue = regexp.MustCompile(`^\s*(?:no\.?|nr\.?|n°|nº|n\.|num\.?|number|#)?\s*[:.#=]?\s*((?:[A-Za-z]{1,6}[-/.]){0,3}[A-Za-z]{0,4}[-/]?\d[\w/-]*(?:\.\d[\w/-]*)*)`)

// letteredNumber is a number behind letters of its own, at the end of what is said: "WV 1187" of "Wartungsvertrag
// WV 1187". Letters before a year alone are no part of a number.
var letteredNumber = regexp.MustCompile(`^\s*(?:no\.?|nr\.?|n°|nº|n\.|num\.?|number|#)?\s*[:.#=]?\s*([a-z]{1,4} \d{3,}(?:[-/]\d+)*)\s*(?:$|[,;()|]|[-–] )`)

// pageOfPages is the number of a page of several: "1/3", behind a word that numbers documents too.
var pageOfPages = regexp.MustCompile(`^\d{1,2}/\d{1,2}$`)

// keyedNumber is the job number behind a word for one inside a text, "" if none
// is. Weak words are those for any reference.
func keyedNumber(text string, weak bool) string {
	how := 0
	if weak {
		how = 1
	}
	return keyedNumbers.Of(text, how)
}

// keyedNumbers remembers them.
var keyedNumbers = remember.New(4096, func(text string, how int) string { return readKeyedNumber(text, how == 1) })

func readKeyedNumber(text string, weak bool) string {
	keys := jobKeyWords
	if weak {
		keys = wordClasses["reference"]
	}
	folded := join.Fold(text)
	if !anyDigit(folded) {
		return ""
	}
	best, at := "", len(text)
	for _, k := range keys {
		for from := 0; ; {
			i := strings.Index(folded[from:], k)
			if i < 0 {
				break
			}
			i += from
			from = i + len(k)
			if !apart(folded, i, from) {
				continue
			}
			m := numberValue.FindStringSubmatch(folded[from:])
			if m == nil && !weak {
				m = withLetters(text, folded[from:])
			}
			if m == nil || weak && pageOfPages.MatchString(m[1]) || digitsIn(m[1]) < 2 && strings.Count(m[1], "/") < 2 || notation.KeyOf(m[1]).Kind == notation.KeyLoudspeaker {
				continue
			}
			if i < at || i == at && len(m[1]) > len(best) {
				best, at = asWritten(text, m[1]), i
			}
		}
	}
	return strings.TrimRight(best, "/-_")
}

// withLetters finds a number of capital letters and figures at the start of a folded part of a text.
func withLetters(text, folded string) []string {
	m := letteredNumber.FindStringSubmatch(folded)
	if m == nil {
		return nil
	}
	letters, digits, _ := strings.Cut(m[1], " ")
	if strings.ToUpper(letters) != asWritten(text, m[1])[:len(letters)] || yearAlone.MatchString(digits) || numberWords[letters] {
		return nil
	}
	return m
}

// yearAlone is a year and nothing more.
var yearAlone = regexp.MustCompile(`^(?:19|20)\d\d$`)

// numberWords are words for a number, never letters of one.
var numberWords = map[string]bool{"no": true, "nr": true, "n": true, "num": true, "rev": true}

func digitsIn(s string) int {
	n := 0
	for _, c := range s {
		if c >= '0' && c <= '9' {
			n++
		}
	}
	return n
}

// asWritten finds a folded code in the text that it came from.
func asWritten(text, code string) string {
	if i := strings.Index(strings.ToLower(text), code); i >= 0 {
		return text[i : i+len(code)]
	}
	return strings.ToUpper(code)
}

// codeAlone is a code with figures and nothing else: "V20-318".
var codeAlone = regexp.MustCompile(`^[A-Z]{0,4}[-/ ]?\d[\dA-Z]*(?:[-/]\d+)*$`)

// numberBeside is the code in the cell beside a word for a job, where strong, or for a document, at the start of a list
// of texts: "Quotation | P-77/21", "Report | V20-318"; "" if there is none.
func numberBeside(cells []spoken, weak bool) string {
	if len(cells) < 2 || cells[0].at.Sheet() != cells[1].at.Sheet() || cells[0].at.Row != cells[1].at.Row {
		return ""
	}
	key := join.Fold(strings.TrimRight(cells[0].text, " :"))
	if weak && !documentWords.in(key) || !weak && !slices.Contains(jobKeyWords, key) {
		return ""
	}
	code := cells[1].text
	if !codeAlone.MatchString(code) || digitsIn(code) < 3 || yearAlone.MatchString(code) || notation.KeyOf(code).Kind == notation.KeyLoudspeaker {
		return ""
	}
	return code
}

// documentNumber is a number of three figures or more behind the first word of a title that goes on behind a mark:
// "Survey 3381 - Tram depot".
var documentNumber = regexp.MustCompile(`^(\pL{4,}) (?:(?i:no|nr|n°|nº|n|núm)\.? ?)?((?:[A-Z]{1,4}[-/])?\d{3,}(?:[-/]\d{1,6})*)(?:$|\s*[,;:|]|\s+[-–—]\s)`)

// numberOfDocument is the number behind a word for a document that a title begins with, "" if it has none.
func numberOfDocument(text string) string {
	m := documentNumber.FindStringSubmatch(text)
	if m == nil || !documentWords.in(join.Fold(m[1])) || yearAlone.MatchString(m[2]) {
		return ""
	}
	return m[2]
}

// numberInNotes takes a job number behind a word for one in the texts above the
// tables, where no key has it, else below them. A number that layout cut short is taken whole.
func (b *builder) numberInNotes() {
	top := b.firstRows()
	had := b.job.Number.Value
	for _, look := range []struct{ weak, below bool }{{}, {weak: true}, {below: true}} {
		for i, s := range b.spoken {
			first := top[s.at.Sheet()]
			if below := first > 0 && int(s.at.Row) >= first; below != look.below || len(s.text) > longestSpoken {
				continue
			}
			number := keyedNumber(s.text, look.weak)
			if number == "" {
				number = numberBeside(b.spoken[i:], look.weak)
			}
			if number == "" && look.weak {
				number = numberOfDocument(s.text)
			}
			switch {
			case number == "" || number == had:
				continue
			case had != "" && !(strings.HasPrefix(number, had) && b.job.Number.At == s.at):
				continue
			}
			at := seen{text: number, field: vocabulary.JobNo, source: schedule.Source{At: s.at, Written: s.text, How: schedule.FromTitle}}
			b.job.Number = at.asText()
			b.take(at, "job number", number, schedule.LikelierReading, "behind a word for it in a title")
			return
		}
	}
}
