package data_test

import (
	"bytes"
	"errors"
	"testing"

	"lineaudit/report/data"
	"lineaudit/report/reporttest"
)

func TestWholeDataFiles(t *testing.T) {
	var tables, findings bytes.Buffer
	for _, table := range reporttest.Fixed().Tables() {
		tables.WriteString("== " + table.Name + ".csv\n")
		if err := data.WriteCSV(&tables, table); err != nil {
			t.Fatal(err)
		}
	}
	reporttest.Golden(t, "tables", tables.String())
	if err := data.WriteFindings(&findings, reporttest.Fixed()); err != nil {
		t.Fatal(err)
	}
	reporttest.Golden(t, "findings", findings.String())
}

func TestAFullDiskIsAnError(t *testing.T) {
	a := reporttest.Fixed()
	for _, room := range []int{0, 1, 500} {
		if err := data.WriteFindings(&reporttest.Disk{Room: room}, a); !errors.Is(err, reporttest.ErrFull) {
			t.Errorf("findings.json, room for %d: %v", room, err)
		}
		if err := data.WriteCSV(&reporttest.Disk{Room: min(room, 100)}, a.FindingsTable()); !errors.Is(err, reporttest.ErrFull) {
			t.Errorf("findings.csv, room for %d: %v", room, err)
		}
	}
}
