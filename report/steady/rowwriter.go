package steady

import (
	"bytes"
	"fmt"
	"io"
	"math"
	"regexp"
	"strconv"
	"strings"

	"github.com/xuri/excelize/v2"
)

// A Cell of a row holds a text, a number, or nothing.
type Cell struct {
	Style    int
	Text     string // without characters that a spreadsheet cannot hold
	Formula  string // what the text is the result of; "" for none
	Number   float64
	IsNumber bool
}

// A RowWriter writes rows as the workbook library would, without making a
// value of each cell first.
type RowWriter struct {
	to      io.Writer
	xml     []byte
	columns []string // their letters
}

// full is how much is passed on at once.
const full = 1 << 15

// Row writes the cells of a row, from the first column on. Rows come in their order.
func (w *RowWriter) Row(n int, height float64, cells []Cell) error {
	for len(w.columns) < len(cells) {
		letters, err := excelize.ColumnNumberToName(len(w.columns) + 1)
		if err != nil {
			return err
		}
		w.columns = append(w.columns, letters)
	}
	w.add(`<row r="`).number(n).add(`" ht="`)
	w.xml = strconv.AppendFloat(w.xml, height, 'f', -1, 64)
	w.add(`" customHeight="1">`)
	for i := range cells {
		w.cell(w.columns[i], n, &cells[i])
	}
	w.add(`</row>`)
	if len(w.xml) < full {
		return nil
	}
	return w.flush()
}

func (w *RowWriter) flush() error {
	_, err := w.to.Write(w.xml)
	w.xml = w.xml[:0]
	return err
}

func (w *RowWriter) cell(column string, row int, c *Cell) {
	text := c.Text
	if c.IsNumber && (math.IsNaN(c.Number) || math.IsInf(c.Number, 0)) {
		text = fmt.Sprint(c.Number)
	}
	space := ""
	if text != "" && (isSpace(text[0]) || isSpace(text[len(text)-1])) {
		space = ` xml:space="preserve"`
	}
	w.add(`<c`)
	if c.Formula != "" {
		w.add(space)
	}
	w.add(` r="`).add(column).number(row).add(`"`)
	if c.Style != 0 {
		w.add(` s="`).number(c.Style).add(`"`)
	}
	switch {
	case c.Formula != "":
		w.add(` t="str"><f>`).escaped(c.Formula, "&#xA;").add(`</f>`)
		if text != "" {
			w.add(`<v>`).escaped(literal(text), "&#xA;").add(`</v>`)
		}
	case text != "":
		w.add(` t="inlineStr"><is><t`).add(space).add(`>`).escaped(literal(text), "\n").add(`</t></is>`)
	case c.IsNumber:
		w.add(`><v>`).figure(c.Number).add(`</v>`)
	default:
		w.add(`>`)
	}
	w.add(`</c>`)
}

func isSpace(c byte) bool { return c == ' ' || c == '\t' || c == '\n' || c == '\r' }

func (w *RowWriter) add(s string) *RowWriter {
	w.xml = append(w.xml, s...)
	return w
}

func (w *RowWriter) number(n int) *RowWriter {
	w.xml = strconv.AppendInt(w.xml, int64(n), 10)
	return w
}

// digits is how many digits a spreadsheet program holds of a number.
const digits = 15

// figure writes a number; digits that no program holds are cut off.
func (w *RowWriter) figure(v float64) *RowWriter {
	start := len(w.xml)
	w.xml = strconv.AppendFloat(w.xml, v, 'f', -1, 64)
	text := w.xml[start:]
	if len(text) <= digits {
		return w
	}
	point := bytes.IndexByte(text, '.')
	n := 0
	for i, c := range text {
		if c < '0' || c > '9' || n == 0 && c == '0' {
			continue
		}
		if n++; n <= digits {
			continue
		}
		if point >= 0 && i > point {
			w.xml = bytes.TrimSuffix(w.xml[:start+i], []byte("."))
			break
		}
		text[i] = '0'
	}
	return w
}

// escaped writes a text with the characters that have a meaning in XML as references.
func (w *RowWriter) escaped(s, newline string) *RowWriter {
	from := 0
	for i := 0; i < len(s); i++ {
		var as string
		switch s[i] {
		case '&':
			as = "&amp;"
		case '<':
			as = "&lt;"
		case '>':
			as = "&gt;"
		case '"':
			as = "&#34;"
		case '\'':
			as = "&#39;"
		case '\t':
			as = "&#x9;"
		case '\n':
			as = newline
		case '\r':
			as = "&#xD;"
		default:
			continue
		}
		w.add(s[from:i]).add(as)
		from = i + 1
	}
	return w.add(s[from:])
}

var likeEscape = regexp.MustCompile(`^_x[0-9A-Fa-f]{4}_`)

// literal keeps what looks like the escape of a character from being taken for one.
func literal(s string) string {
	for i := strings.LastIndex(s, "_x"); i >= 0; i = strings.LastIndex(s[:i], "_x") {
		if likeEscape.MatchString(s[i:]) {
			s = s[:i] + "_x005F" + s[i:]
		}
	}
	return s
}
