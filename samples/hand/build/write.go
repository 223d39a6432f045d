package main

import (
	"github.com/xuri/excelize/v2"

	"lineaudit/samples/typed"
)

// A touch is what a hand does to a sheet after typing it.
type touch func(typed.Page)

// book is a workbook of one sheet, typed from A1 on.
func book(sheet, block string, touches ...touch) func() *excelize.File {
	return func() *excelize.File {
		p := typed.NewBook(sheet)
		p.Put("A1", block)
		for _, do := range touches {
			do(p)
		}
		return p.File
	}
}

// and adds a sheet to the workbook.
func and(sheet, block string, touches ...touch) touch {
	return func(p typed.Page) {
		q := p.Sheet(sheet)
		q.Put("A1", block)
		for _, do := range touches {
			do(q)
		}
	}
}

func bold(areas ...string) touch { return func(p typed.Page) { p.Bold(areas...) } }

func merged(areas ...string) touch { return func(p typed.Page) { p.Merge(areas...) } }

func struck(areas ...string) touch { return func(p typed.Page) { p.Strike(areas...) } }

// utf8 is a text file with DOS line ends and a byte-order mark, as spreadsheet programs save it.
func utf8(block string) func() []byte {
	return func() []byte { return []byte("\ufeff" + typed.DOS(block)) }
}

// plain is a text file with DOS line ends.
func plain(block string) func() []byte { return func() []byte { return []byte(typed.DOS(block)) } }

// ansi is a text file of a western Windows program.
func ansi(block string) func() []byte {
	return func() []byte { return typed.Windows1252(typed.DOS(block)) }
}

// stranger says why a file is no loudspeaker schedule.
func stranger(note string) func(*typed.Truth) { return func(t *typed.Truth) { t.Is("", "", note) } }
