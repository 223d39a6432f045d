// Command build writes the sample archive: the schedules of the invented
// Larkmere Trust, as different offices wrote them over the years, and beside
// it the truth about them. Run it in the samples folder; LibreOffice is
// needed for the files that it once saved.
//
//	go run ./build
package main

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"

	"lineaudit/samples/answer"
)

func main() {
	if err := write("archive", "truth"); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}

// write builds the archive and the truth in the two folders.
func write(archive, truth string) error {
	all := truthOf(jobs())
	for _, j := range jobs() {
		if err := j.save(archive); err != nil {
			return fmt.Errorf("%s: %w", j.path, err)
		}
	}
	if err := writeBad(filepath.Join(archive, "from the old disk")); err != nil {
		return err
	}
	return all.Write(truth)
}

// truthOf puts the facts of all jobs together, works out their loads and adds
// the files that are no schedules.
func truthOf(jobs []*job) answer.Archive {
	var all answer.Archive
	for _, j := range jobs {
		for i := range j.Files {
			j.Files[i].Faulty = len(j.Faults) > 0
		}
		if j.how == "csv" {
			j.NoSheets()
		}
		all.Add(j.Archive)
	}
	all.Work()
	for _, b := range badFiles {
		all.Files = append(all.Files, answer.File{File: "from the old disk/" + b.name, Kind: b.kind})
	}
	all.Sort()
	return all
}

// save writes one workbook, through LibreOffice where that saved it.
func (j *job) save(archive string) error {
	to := filepath.Join(archive, filepath.FromSlash(j.path))
	if err := os.MkdirAll(filepath.Dir(to), 0o755); err != nil {
		return err
	}
	var data bytes.Buffer
	if j.how == "csv" {
		if err := j.book.CSV(&data, j.dialect); err != nil {
			return err
		}
		return os.WriteFile(to, data.Bytes(), 0o644)
	}
	if err := j.book.XLSX(&data, ""); err != nil {
		return err
	}
	if j.how == "xlsx" {
		return os.WriteFile(to, data.Bytes(), 0o644)
	}
	return office(data.Bytes(), j.how, to)
}

var officeFilters = map[string][2]string{
	"ods":         {"ods", "ods"},
	"xls":         {"xls", "xls:MS Excel 97"},
	"office-xlsx": {"xlsx", "xlsx:Calc MS Excel 2007 XML"},
}

// office has LibreOffice open a workbook and save it anew as to.
func office(data []byte, how, to string) error {
	dir, err := os.MkdirTemp("", "office-")
	if err != nil {
		return err
	}
	defer os.RemoveAll(dir)
	from := filepath.Join(dir, "book.xlsx")
	if err := os.WriteFile(from, data, 0o644); err != nil {
		return err
	}
	filter, out := officeFilters[how], filepath.Join(dir, "out")
	cmd := exec.Command("soffice", "-env:UserInstallation=file://"+filepath.Join(dir, "profile"),
		"--headless", "--convert-to", filter[1], "--outdir", out, from)
	if msg, err := cmd.CombinedOutput(); err != nil {
		return fmt.Errorf("soffice: %w: %s", err, strings.TrimSpace(string(msg)))
	}
	saved, err := os.ReadFile(filepath.Join(out, "book."+filter[0]))
	if err != nil {
		return err
	}
	return os.WriteFile(to, saved, 0o644)
}
