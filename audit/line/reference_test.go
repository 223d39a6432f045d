package line

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"testing"
)

// record is one row of a reference file, by column name.
type record map[string]string

// readReference reads a file of testdata. Each has a column source, which names
// where its values were published, and how known: read there, derived (worked
// out by means other than this package), or from memory.
func readReference(t *testing.T, path string) []record {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var records []record
	for _, row := range rows[1:] {
		rec := record{}
		for i, name := range rows[0] {
			rec[name] = row[i]
		}
		if rec["source"] == "" {
			t.Fatalf("%s: row %v names no source", path, row)
		}
		records = append(records, rec)
	}
	if len(records) == 0 {
		t.Fatalf("%s: no rows", path)
	}
	return records
}

// number returns a cell as a number; a blank or a word fails the test.
func (r record) number(t *testing.T, column string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(r[column], 64)
	if err != nil {
		t.Fatalf("column %s of %v: %v", column, r, err)
	}
	return v
}

// near reports whether two values differ by at most a share of the second.
func near(got, want, share float64) bool {
	return math.Abs(got-want) <= share*math.Abs(want)
}

// must takes the results of a call that should not fail: must(f(x))(t).
func must[T any](v T, err error) func(t testing.TB) T {
	return func(t testing.TB) T {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
}
