package text

import (
	"math"
	"slices"
	"strings"
)

// looked is how many records are looked at to find the delimiter.
const looked = 300

// separatorLine takes the line "sep=;" that tells a spreadsheet the delimiter
// and that the spreadsheet does not show. The delimiter is 0 without one.
func separatorLine(text string) (rest string, delimiter byte) {
	line, rest := text, ""
	if i := strings.IndexAny(text, "\r\n"); i >= 0 {
		line, rest = text[:i], text[i:]
	}
	line = strings.Trim(strings.TrimRight(line, " "), `"`)
	if len(line) != 5 || !strings.EqualFold(line[:4], "sep=") || line[4] == '"' {
		return text, 0
	}
	rest = strings.TrimPrefix(rest, "\r")
	return strings.TrimPrefix(rest, "\n"), line[4]
}

// findDelimiter returns the one of , ; TAB | that cuts the text most evenly;
// the comma if none cuts it at all. One that cuts every record into as many
// cells, the header too, comes before those that do not: in "Zone,Tags" above
// "Pier,LS-1;LS-2;LS-3" the semicolons are within cells.
func findDelimiter(text string) byte {
	best, most, whole := byte(','), 0.0, false
	for _, d := range []byte{',', ';', '\t', '|'} {
		if strings.IndexByte(text, d) < 0 {
			continue
		}
		e, all := evenness(&splitter{text: text, delimiter: d}, looked)
		if all == whole && e > most+1e-9 || all && !whole {
			best, most, whole = d, e, all
		}
	}
	return best
}

// fewRecords is how many records at least show that a way of cutting fits all.
const fewRecords = 3

// evenness scores a way of cutting by the first records, at most so many: the
// share of those of the most common width, times the share of cells without another delimiter in them, or with
// quotes around it, that do not go on a sentence, with some favour for more columns and half as much for records in which quotes are
// torn apart. Where most records are not cut at all, as lines of notes below a short table, at least
// three that are cut alike count instead; without them it is 0. All says that every record is cut into as many cells.
func evenness(s *splitter, most int) (score float64, all bool) {
	var (
		widths       = map[int]int{}
		records      int
		cells, clean int
		torn         int // records in which a quoted cell of another way of cutting is cut
		fields       []string
		ok           bool
	)
	for range most {
		if fields, ok = s.next(fields[:0]); !ok {
			break
		}
		if len(fields) == 1 && strings.TrimSpace(fields[0]) == "" {
			continue
		}
		records++
		widths[len(fields)]++
		if slices.ContainsFunc(fields, isTorn) {
			torn++
		}
		for _, f := range fields {
			cells++
			if isClean(strings.TrimSpace(f)) && !isProse(f) {
				clean++
			}
		}
	}
	clean += s.kept
	width, common := 0, 0
	for w, n := range widths {
		if n > common || n == common && w > width {
			width, common = w, n
		}
	}
	if width < 2 {
		if width, common = mostCut(widths); common < fewRecords {
			return 0, false
		}
	}
	whole := 1 - float64(torn)/float64(records)/2
	score = float64(common) / float64(records) * float64(clean) / float64(cells) * (1 + 0.25*math.Log2(float64(width))) * whole
	return score, common == records && torn == 0 && records >= fewRecords
}

// mostCut is the most common number of cells of records that are cut at all, and how many there are.
func mostCut(widths map[int]int) (width, common int) {
	for w, n := range widths {
		if w > 1 && (n > common || n == common && w > width) {
			width, common = w, n
		}
	}
	return width, common
}

// isTorn reports whether a cell holds a quote that opens behind another
// delimiter and is not closed: "LS-1,Pier,"3 x 5 W" cut at the ";" that follows.
func isTorn(f string) bool {
	for i := 1; i < len(f); i++ {
		if f[i] == '"' && strings.IndexByte(",;\t|", f[i-1]) >= 0 {
			return strings.Count(f, `"`)%2 == 1
		}
	}
	return false
}

// isProse reports whether a cell goes on a sentence: a word behind a space.
func isProse(f string) bool {
	return len(f) > 1 && f[0] == ' ' && (f[1] >= 'a' && f[1] <= 'z' || f[1] >= 0x80)
}

// isClean reports whether a cell holds no other delimiter, unless it is a
// number with a decimal comma or thousands marks.
func isClean(f string) bool {
	if !strings.ContainsAny(f, ",;\t|") {
		return true
	}
	for i, c := range f {
		if (c < '0' || c > '9') && c != '.' && c != ',' && !(i == 0 && (c == '-' || c == '+')) && !(i == len(f)-1 && c == '%') {
			return false
		}
	}
	return true
}

// dittos reports whether a cell of a single quote is a ditto mark in this
// text, not the start of quoted text: if that cuts it more evenly, or as
// evenly where the quoted text would begin with a delimiter or line end and
// run on into another line.
func dittos(text string, delimiter byte) bool {
	s := splitter{text: text, delimiter: delimiter}
	found, runs := false, false
	for i := 0; i+1 < len(text) && !found; i++ {
		found = text[i] == '"' && s.ends(text[i+1]) && (i == 0 || s.ends(text[i-1]))
	}
	if !found {
		return false
	}
	var fields []string
	for ok := true; !runs; {
		if fields, ok = s.next(fields[:0]); !ok {
			break
		}
		for _, f := range fields {
			runs = runs || len(f) > 1 && s.ends(f[0]) && strings.IndexByte(f, '\n') >= 0
		}
	}
	usual, _ := evenness(&splitter{text: text, delimiter: delimiter}, math.MaxInt)
	marked, _ := evenness(&splitter{text: text, delimiter: delimiter, dittos: true}, math.MaxInt)
	return marked > usual+1e-9 || runs && marked >= usual
}
