package data_test

import (
	"bytes"
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
