package generate

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"

	"lineaudit/samples/answer"
)

// officeFilters names the file ending and the filter for each kind of file
// that LibreOffice saves.
var officeFilters = map[Format][2]string{
	ODS:        {"ods", "ods"},
	XLS:        {"xls", "xls:MS Excel 97"},
	OfficeXLSX: {"xlsx", "xlsx:Calc MS Excel 2007 XML"},
}

// convert has LibreOffice save every workbook of dir anew, in the format
// asked for, and puts the new names into the truth.
func convert(dir string, format Format, all *answer.Archive) error {
	filter, ok := officeFilters[format]
	if !ok {
		return nil
	}
	profile, err := os.MkdirTemp("", "office-profile-")
	if err != nil {
		return err
	}
	defer os.RemoveAll(profile)
	made, err := os.MkdirTemp("", "office-made-")
	if err != nil {
		return err
	}
	defer os.RemoveAll(made)
	files, err := filepath.Glob(filepath.Join(dir, "*.xlsx"))
	if err != nil {
		return err
	}
	args := append([]string{"-env:UserInstallation=file://" + profile, "--headless", "--convert-to", filter[1], "--outdir", made}, files...)
	if out, err := exec.Command("soffice", args...).CombinedOutput(); err != nil {
		return fmt.Errorf("soffice: %w: %s", err, out)
	}
	for _, f := range files {
		stem := strings.TrimSuffix(filepath.Base(f), ".xlsx")
		data, err := os.ReadFile(filepath.Join(made, stem+"."+filter[0]))
		if err != nil {
			return err
		}
		if err := os.Remove(f); err != nil {
			return err
		}
		if err := os.WriteFile(filepath.Join(dir, stem+"."+filter[0]), data, 0o644); err != nil {
			return err
		}
	}
	all.EachFile(func(name string) string { return strings.TrimSuffix(name, ".xlsx") + "." + filter[0] })
	return nil
}
