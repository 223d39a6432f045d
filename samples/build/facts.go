package main

import (
	"strconv"

	"lineaudit/samples/answer"
	"lineaudit/samples/book"
)

// job is one job of the archive: the workbook as its office wrote it, and
// the facts that it states.
type job struct {
	path    string // below the archive
	how     string // xlsx, csv, or what LibreOffice saves: office-xlsx, ods, xls
	dialect book.Dialect
	book    *book.Book
	answer.Archive

	number string
	lineV  float64
	sheet  string // the sheet that loudspeakers are being noted on
}

// start opens the facts of a job. volts is its line voltage.
func start(path, how, number, site, revision string, volts float64) *job {
	j := &job{path: path, how: how, book: &book.Book{}, number: number, lineV: answer.Class(volts)}
	j.also(number, site, revision)
	return j
}

// also adds a further job to the same file; what follows belongs to it.
func (j *job) also(number, site, revision string) {
	j.number = number
	j.Files = append(j.Files, answer.File{File: j.path, Kind: "schedule", Job: number, Site: site, Revision: revision, Units: "metric", Language: "en"})
}

// kind notes the language, units and layout of the file.
func (j *job) kind(language, units, layout string) {
	for i := range j.Files {
		j.Files[i].Language, j.Files[i].Units, j.Files[i].Layout = language, units, layout
	}
}

// add opens a sheet of the workbook; loudspeakers noted next stand on it.
func (j *job) add(name string) *book.Sheet {
	j.sheet = name
	return j.book.Add(name)
}

// ls notes a row of loudspeakers: count of them, tapped at tap watts of the
// job's own line voltage, with the cell of the tap.
func (j *job) ls(row int, cell, zone, room, tag, model string, count int, tap float64, control, amp, channel string) *answer.Loudspeaker {
	j.Loudspeakers = append(j.Loudspeakers, answer.Loudspeaker{File: j.path, Sheet: j.sheet, Rows: strconv.Itoa(row), Job: j.number,
		Zone: zone, Room: room, Tag: tag, Model: model, Count: count, TapW: tap, TapV: j.lineV, LineV: j.lineV,
		Control: control, Amplifier: amp, Channel: channel, Status: "installed", Cell: cell})
	return &j.Loudspeakers[len(j.Loudspeakers)-1]
}

func (j *job) control(tag, zone string, rated float64, sheet, cell string) {
	j.Controls = append(j.Controls, answer.Control{File: j.path, Job: j.number, Control: tag, Zone: zone, RatedW: rated, LineV: j.lineV, Sheet: sheet, Cell: cell})
}

func (j *job) channel(amp, name string, rated float64, sheet, cell string) {
	j.Channels = append(j.Channels, answer.Channel{File: j.path, Job: j.number, Amplifier: amp, Channel: name, LineV: j.lineV, RatedW: rated, Sheet: sheet, Cell: cell})
}

func (j *job) amp(tag, model string, rated float64, sheet, cell string) {
	j.Amplifiers = append(j.Amplifiers, answer.Amplifier{File: j.path, Job: j.number, Amplifier: tag, Model: model, RatedW: rated, Sheet: sheet, Cell: cell})
}

func (j *job) line(tag, zone string, metres, area float64, sheet, cell string) *answer.Line {
	j.Lines = append(j.Lines, answer.Line{File: j.path, Job: j.number, Line: tag, Zone: zone, LengthM: metres, AreaMM2: area,
		Material: "copper", LineV: j.lineV, Sheet: sheet, Cell: cell})
	return &j.Lines[len(j.Lines)-1]
}

// left notes a row that is no device.
func (j *job) left(sheet string, row int, kind, text string) {
	j.Rows = append(j.Rows, answer.Row{File: j.path, Sheet: sheet, Row: row, Kind: kind, Text: text})
}

// expect notes a finding that a careful reader makes, with its figures worked
// out by hand in the comment beside the call.
func (j *job) expect(rule, grade, place, sheet, cell string, measured, limit float64, unit string) *answer.Fault {
	j.Faults = append(j.Faults, answer.Fault{File: j.path, Job: j.number, Rule: rule, Grade: grade, Place: place, Sheet: sheet, Cell: cell,
		Measured: measured, Limit: limit, Unit: unit, Low: answer.Unknown, High: answer.Unknown})
	return &j.Faults[len(j.Faults)-1]
}

// feet returns metres.
func feet(ft float64) float64 { return ft * 0.3048 }

var unknown = answer.Unknown
