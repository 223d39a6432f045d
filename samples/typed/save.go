package typed

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
)

// filters are the names LibreOffice gives to the formats it saves.
var filters = map[string]string{
	"ods":  "ods:calc8",
	"fods": "fods:OpenDocument Spreadsheet Flat XML",
	"xls":  "xls:MS Excel 97",
	"xlsx": "xlsx:Calc MS Excel 2007 XML",
	"html": "html:HTML (StarCalc)",
}

// saveAll has LibreOffice save each workbook in its format, one start of the program a format.
func saveAll(soffice string, all []Case, files string) error {
	dir, err := os.MkdirTemp("", "typed")
	if err != nil {
		return err
	}
	defer os.RemoveAll(dir)
	for _, format := range []string{"ods", "fods", "xls", "xlsx", "html"} {
		var args, targets []string
		for i, c := range all {
			if c.Saved != format {
				continue
			}
			data, err := c.data()
			if err != nil {
				return fmt.Errorf("%s: %w", c.File, err)
			}
			name := fmt.Sprintf("%s%03d", format, i)
			if err := write(filepath.Join(dir, name+".xlsx"), data); err != nil {
				return err
			}
			args = append(args, filepath.Join(dir, name+".xlsx"))
			targets = append(targets, c.File, name+"."+format)
		}
		if args == nil {
			continue
		}
		saved := filepath.Join(dir, "saved")
		args = append([]string{"-env:UserInstallation=file://" + filepath.Join(dir, "profile"), "--headless",
			"--convert-to", filters[format], "--outdir", saved}, args...)
		if text, err := exec.Command(soffice, args...).CombinedOutput(); err != nil {
			return fmt.Errorf("%s: %w: %s", format, err, text)
		}
		for i := 0; i < len(targets); i += 2 {
			data, err := os.ReadFile(filepath.Join(saved, targets[i+1]))
			if err != nil {
				return err
			}
			if err := write(filepath.Join(files, targets[i]), data); err != nil {
				return err
			}
		}
	}
	return nil
}
