package main

import (
	"context"
	"fmt"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/report"
	"lineaudit/report/terminal"
)

// runRead shows how files were understood, or the story of one cell.
func runRead(ctx context.Context, args []string, s screen) int {
	set, text, err := parse(args, true)
	if err != nil {
		return flagged(s, text, err)
	}
	sheet, cell := "", set.explain
	if i := strings.LastIndex(cell, "!"); i >= 0 {
		sheet, cell = strings.Trim(cell[:i], "'"), cell[i+1:]
	}
	var at schedule.Ref
	if set.explain != "" {
		row, col, err := grid.ParseA1(cell)
		if err != nil {
			return wrong(s, fmt.Errorf("--explain: %w", err))
		}
		at = schedule.At("", sheet, row, col)
	}
	p, code := prepare(ctx, set, s)
	if p == nil {
		return code
	}
	if set.explain != "" && len(p.files) != 1 {
		return wrong(s, fmt.Errorf("--explain tells of a cell of one file; %d were named", len(p.files)))
	}
	p.outlines = set.explain == ""
	defer paceCollection(p.files)()
	if err := p.readAll(ctx, s); err != nil {
		return failed(s, err)
	}
	var b strings.Builder
	code = done
	schedules := 0
	for _, f := range p.outcomes {
		switch f.Kind {
		case report.Unreadable:
			code = incomplete
		case report.Schedule:
			schedules++
		}
		if set.explain == "" {
			b.WriteString(terminal.Reading(f, s.outWidth, set.quiet) + "\n")
			continue
		}
		story, err := p.explain(ctx, f, at, s.outWidth)
		if err != nil {
			return wrong(s, err)
		}
		b.WriteString(story)
	}
	if schedules == 0 {
		code = incomplete
	}
	if c := print(s, b.String()); c != done {
		return c
	}
	return code
}

// explain tells what a cell holds and what became of it. Without a sheet all
// sheets that have the cell are told of; one that the file does not have is an error.
func (p *pipeline) explain(ctx context.Context, f report.File, at schedule.Ref, width int) (string, error) {
	book, err := p.files[0].Read(ctx, p.reading)
	if err != nil {
		return terminal.Reading(f, width, true), nil
	}
	var b strings.Builder
	for _, sheet := range book.Sheets {
		if at.Sheet() != "" && !strings.EqualFold(sheet.Name, at.Sheet()) {
			continue
		}
		name := sheet.Name
		if book.Format == grid.Text {
			name = "" // a text file has no sheet to name
		}
		here := schedule.At(at.File(), name, int(at.Row), int(at.Col))
		text := "is empty"
		for i := range sheet.Rows {
			if r := &sheet.Rows[i]; r.Number == int(at.Row) {
				if c := r.Cell(int(at.Col)); c != nil {
					text = fmt.Sprintf("shows %q", report.Plain(c.Text))
				}
			}
		}
		fmt.Fprintf(&b, "%s %s.\n", report.Plain(schedule.At(f.Name, sheet.Name, int(at.Row), int(at.Col)).String()), text)
		if story := terminal.Explain(f, here, width); story != "" {
			b.WriteString(story)
		} else {
			b.WriteString("Nothing was made of it.\n")
		}
	}
	if b.Len() == 0 {
		return "", fmt.Errorf("--explain: there is no sheet %q in %s", at.Sheet(), f.Name)
	}
	return b.String(), nil
}
