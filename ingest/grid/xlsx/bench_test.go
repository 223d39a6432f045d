package xlsx

import (
	"archive/zip"
	"bytes"
	"compress/flate"
	"fmt"
	"io"
	"testing"
	"time"

	"github.com/xuri/excelize/v2"

	"lineaudit/ingest/grid"
)

// schedule makes a workbook like those of the trade: loudspeakers,
// amplifiers and cables on three sheets, with styles, merges, a hidden column,
// notes and formulas.
func schedule(tb testing.TB, rows int) []byte {
	tb.Helper()
	f := excelize.NewFile()
	defer f.Close()
	must := func(err error) {
		if err != nil {
			tb.Fatal(err)
		}
	}
	must(f.SetSheetName("Sheet1", "Loudspeakers"))
	watts, one := `0.0" W"`, "0.0"
	w, err := f.NewStyle(&excelize.Style{CustomNumFmt: &watts})
	must(err)
	d, err := f.NewStyle(&excelize.Style{NumFmt: 16})
	must(err)
	o, err := f.NewStyle(&excelize.Style{CustomNumFmt: &one})
	must(err)
	must(f.SetSheetRow("Loudspeakers", "A1", &[]any{"Orangery and boathouse, device schedule"}))
	must(f.MergeCell("Loudspeakers", "A1", "F1"))
	must(f.SetSheetRow("Loudspeakers", "A3", &[]any{"Tag", "Room", "Zone", "Model", "Tap", "Line V", "Control", "Amp", "Ch", "Height m", "Date", "Checked", "Load", "Remarks"}))
	for i := range rows {
		at := fmt.Sprintf("A%d", i+4)
		must(f.SetSheetRow("Loudspeakers", at, &[]any{
			fmt.Sprintf("LS-%d", i+1), fmt.Sprintf("Glasshouse %d", i%17), fmt.Sprintf("Z-%02d", i%9), "Ceiling 6.5\"", []float64{1.25, 2.5, 5, 7.5}[i%4], 70.7,
			fmt.Sprintf("VC-%d", i%11), fmt.Sprintf("AMP %d", i%4), i%2 + 1, 2.4 + float64(i%7)/10, 45000 + i, i%3 == 0, nil, "see <note> & plan",
		}))
		must(f.SetCellStyle("Loudspeakers", fmt.Sprintf("E%d", i+4), fmt.Sprintf("E%d", i+4), w))
		must(f.SetCellStyle("Loudspeakers", fmt.Sprintf("J%d", i+4), fmt.Sprintf("J%d", i+4), o))
		must(f.SetCellStyle("Loudspeakers", fmt.Sprintf("K%d", i+4), fmt.Sprintf("K%d", i+4), d))
		if i%20 == 0 {
			must(f.SetCellFormula("Loudspeakers", fmt.Sprintf("M%d", i+4), fmt.Sprintf("E%d*F%d", i+4, i+4)))
			must(f.AddComment("Loudspeakers", excelize.Comment{Cell: at, Author: "Foreman", Text: "moved in the winter"}))
		}
	}
	must(f.SetColVisible("Loudspeakers", "N", false))
	for _, name := range []string{"Amplifiers", "Cables"} {
		_, err := f.NewSheet(name)
		must(err)
		n := rows
		if name == "Amplifiers" {
			n = rows / 4
		}
		for i := range n {
			must(f.SetSheetRow(name, fmt.Sprintf("A%d", i+1), &[]any{
				fmt.Sprintf("%s %d", name[:3], i), fmt.Sprintf("Z-%02d", i%9), 240, 0.5 + float64(i)/100, "1.5 mm²", i, i * 3, i % 5, "ok", 100, 2, 36.5,
			}))
		}
	}
	var out bytes.Buffer
	must(f.Write(&out))
	return out.Bytes()
}

// unpack is the floor: every part is unpacked by the standard library, none is read.
func unpack(tb testing.TB, data []byte) {
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if err != nil {
		tb.Fatal(err)
	}
	z.RegisterDecompressor(zip.Deflate, func(r io.Reader) io.ReadCloser { return flate.NewReader(r) })
	for _, f := range z.File {
		r, err := f.Open()
		if err != nil {
			tb.Fatal(err)
		}
		if _, err := io.Copy(io.Discard, r); err != nil {
			tb.Fatal(err)
		}
		r.Close()
	}
}

func readHere(tb testing.TB, data []byte) {
	if _, err := Read("bench.xlsx", data, grid.DefaultLimits()); err != nil {
		tb.Fatal(err)
	}
}

func readRows(tb testing.TB, data []byte) {
	f, err := excelize.OpenReader(bytes.NewReader(data), excelize.Options{RawCellValue: true})
	if err != nil {
		tb.Fatal(err)
	}
	defer f.Close()
	for _, name := range f.GetSheetList() {
		rows, err := f.Rows(name)
		if err != nil {
			tb.Fatal(err)
		}
		for rows.Next() {
			if _, err := rows.Columns(); err != nil {
				tb.Fatal(err)
			}
		}
		rows.Close()
	}
}

func BenchmarkRead(b *testing.B) {
	for _, size := range []int{120, 1200} {
		data := schedule(b, size)
		for _, way := range []struct {
			name string
			run  func(testing.TB, []byte)
		}{{"unpack", unpack}, {"read", readHere}, {"library", readRows}} {
			b.Run(fmt.Sprintf("%d/%s", size, way.name), func(b *testing.B) {
				b.ReportAllocs()
				for b.Loop() {
					way.run(b, data)
				}
			})
		}
	}
}

// TestReadIsCheap keeps reading near the price of unpacking: 1.5 times the
// standard library's is the goal, twice is the alarm, for a busy machine.
func TestReadIsCheap(t *testing.T) {
	if testing.Short() || raceEnabled {
		t.Skip("measures time")
	}
	data := schedule(t, 120)
	least := func(run func(testing.TB, []byte)) time.Duration {
		best := time.Hour
		for range 60 {
			start := time.Now()
			run(t, data)
			best = min(best, time.Since(start))
		}
		return best
	}
	least(readHere)
	floor, here := least(unpack), least(readHere)
	ratio := float64(here) / float64(floor)
	t.Logf("unpacking %v, reading %v, ratio %.2f", floor, here, ratio)
	if ratio > 2 {
		t.Errorf("reading costs %.2f times unpacking, want at most 2", ratio)
	}
}
