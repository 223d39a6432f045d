// Package typed writes archives of schedules that were typed by hand, file by file, with the truth about each typed beside it.
// A corpus is a program with a list of cases, and a test that hands the same list to the checks of package typed.
package typed

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"

	"github.com/xuri/excelize/v2"
)

// Case is one file of an archive and what a service manager can know from it.
type Case struct {
	File  string                // path below files/
	Kind  string                // schedule or not-a-schedule
	Book  func() *excelize.File // the workbook, for the formats that a spreadsheet program saves
	Bytes func() []byte         // the file itself, for text formats; nil when Book is set
	Saved string                // LibreOffice's format to save the workbook in; empty: as excelize writes it
	Truth func(*Truth)          // what the file says
}

// Main is the whole of a program that writes the cases into a folder.
func Main(folder string, all []Case) {
	out := flag.String("out", folder, "folder that receives files/ and truth/")
	soffice := flag.String("soffice", "", "LibreOffice program; empty: leave its files as they are")
	flag.Parse()
	if err := Build(*out, *soffice, all); err != nil {
		fmt.Fprintln(os.Stderr, "build:", err)
		os.Exit(1)
	}
}

// Build writes files and truth into the folder out. Without the name of LibreOffice's program the files that it saves are left as they are.
// The other files come out the same, byte for byte, every time.
func Build(out, soffice string, all []Case) error {
	for _, c := range all {
		if c.Saved != "" {
			continue
		}
		data, err := c.data()
		if err != nil {
			return fmt.Errorf("%s: %w", c.File, err)
		}
		if err := write(filepath.Join(out, "files", c.File), data); err != nil {
			return err
		}
	}
	if soffice != "" {
		if err := saveAll(soffice, all, filepath.Join(out, "files")); err != nil {
			return err
		}
	}
	for name, data := range told(all).csv() {
		if err := write(filepath.Join(out, "truth", name), data); err != nil {
			return err
		}
	}
	return nil
}

// data returns the bytes of the file, or of the workbook that LibreOffice is to save.
func (c Case) data() ([]byte, error) {
	if c.Bytes != nil {
		return c.Bytes(), nil
	}
	f := c.Book()
	defer f.Close()
	buf, err := f.WriteToBuffer()
	if err != nil {
		return nil, err
	}
	return buf.Bytes(), nil
}

func write(path string, data []byte) error {
	if err := os.MkdirAll(filepath.Dir(path), 0o755); err != nil {
		return err
	}
	return os.WriteFile(path, data, 0o644)
}

// Must stops the program: a case that cannot be written is a mistake in its text.
func Must(err error) {
	if err != nil {
		panic(err)
	}
}
