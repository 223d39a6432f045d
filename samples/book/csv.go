package book

import (
	"bufio"
	"fmt"
	"io"
	"strconv"
	"strings"
	"time"

	"golang.org/x/text/encoding/charmap"
)

// Dialect says how a program wrote its CSV.
type Dialect struct {
	Comma   string // the mark between cells: "," ";" or a tab
	Decimal string // "." or ","
	BOM     bool   // UTF-8 with a byte order mark
	Windows bool   // Windows-1252 in place of UTF-8
	CRLF    bool
}

// CSV writes the first sheet as a spreadsheet program exports it. Looks,
// merges and hidden rows are lost, as they are there.
func (b *Book) CSV(w io.Writer, d Dialect) error {
	out := bufio.NewWriter(w)
	end := "\n"
	if d.CRLF {
		end = "\r\n"
	}
	if d.BOM {
		out.WriteString("\ufeff")
	}
	encode := func(s string) (string, error) { return s, nil }
	if d.Windows {
		encode = charmap.Windows1252.NewEncoder().String
	}
	width := 0
	for _, r := range b.Sheets[0].Rows {
		width = max(width, len(r))
	}
	for i, r := range b.Sheets[0].Rows {
		cells := make([]string, width)
		for j, c := range r {
			cells[j] = quote(c.text(d), d.Comma)
		}
		line, err := encode(strings.Join(cells, d.Comma))
		if err != nil {
			return fmt.Errorf("row %d: %w", i+1, err)
		}
		out.WriteString(line)
		out.WriteString(end)
	}
	return out.Flush()
}

// text is what a spreadsheet program shows in the cell.
func (c Cell) text(d Dialect) string {
	if len(c.Runs) > 0 {
		var all strings.Builder
		for _, r := range c.Runs {
			all.WriteString(r.Text)
		}
		return all.String()
	}
	switch v := c.Value.(type) {
	case nil:
		return ""
	case string:
		return v
	case int:
		return strconv.Itoa(v)
	case float64:
		return strings.Replace(strconv.FormatFloat(v, 'f', -1, 64), ".", d.Decimal, 1)
	case time.Time:
		return v.Format("2-Jan")
	default:
		return fmt.Sprint(v)
	}
}

func quote(s, comma string) string {
	if !strings.ContainsAny(s, "\"\r\n") && !strings.Contains(s, comma) {
		return s
	}
	return `"` + strings.ReplaceAll(s, `"`, `""`) + `"`
}
