// Package data writes the audit as data files: the CSV tables and findings.json.
package data

import (
	"encoding/csv"
	"io"
	"strconv"
	"strings"
	"unicode/utf8"

	"lineaudit/report"
)

// WriteCSV writes one table with its header.
func WriteCSV(w io.Writer, t report.Table) error {
	c := csv.NewWriter(w)
	header := make([]string, len(t.Columns))
	for i, col := range t.Columns {
		header[i] = col.Name
	}
	if err := c.Write(header); err != nil {
		return err
	}
	record := make([]string, len(t.Columns))
	for row := range t.Rows {
		for i, v := range row {
			if v.IsNum {
				record[i] = v.Text()
			} else {
				record[i] = KeepText(v.Words)
			}
		}
		if err := c.Write(record); err != nil {
			return err
		}
	}
	c.Flush()
	return c.Error()
}

// KeepText makes sure that a spreadsheet opening the data file takes a text
// for a text: one that could start a formula gets an apostrophe in front.
// Control characters become blanks.
func KeepText(s string) string {
	if isPlain(s) {
		return s
	}
	s = strings.Map(func(r rune) rune {
		if r < ' ' && r != '\n' || r == 0x7f {
			return ' '
		}
		return r
	}, strings.ToValidUTF8(s, "\uFFFD"))
	t := strings.TrimLeft(s, " \u00a0\n")
	if t == "" {
		return s
	}
	switch r, _ := utf8.DecodeRuneInString(t); r {
	case '=', '@', '\uff1d', '\uff20', '\uff0b', '\uff0d': // some programs take the wide forms as well
		return "'" + s
	case '+', '-':
		if _, err := strconv.ParseFloat(strings.Replace(t, ",", ".", 1), 64); err != nil && len(t) > 1 {
			return "'" + s
		}
	}
	return s
}

// isPlain reports whether a text is nothing but ASCII of a line and begins with
// a letter or a figure, as nearly all do.
func isPlain(s string) bool {
	for i := range len(s) {
		if s[i] < ' ' || s[i] > '~' {
			return false
		}
	}
	return s == "" || s[0] >= '0' && s[0] <= '9' || s[0] >= 'A' && s[0] <= 'Z' || s[0] >= 'a' && s[0] <= 'z'
}
