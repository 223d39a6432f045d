// Command build writes the hard archive: schedules as twenty years of other hands made them, and the truth about each, typed by hand.
//
//	go run ./samples/hard/build -out samples/hard -soffice soffice
//
// Without -soffice the files that LibreOffice saves are left as they are. The other files come out the same, byte for byte, every time.
package main

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"slices"

	"github.com/xuri/excelize/v2"
)

// hard is one file of the archive and what a service manager can know from it.
type hard struct {
	file  string                // path below files/
	kind  string                // schedule or not-a-schedule
	book  func() *excelize.File // the workbook, for the formats that a spreadsheet program saves
	bytes func() []byte         // the file itself, for text formats; nil when book is set
	saved string                // LibreOffice's format to save the workbook in; empty: as excelize writes it
	truth func(*truth)          // what the file says
}

// cases lists every file, in the order of the truth tables.
func cases() []hard {
	return slices.Concat(gardens(), gardenTexts(), boathouses(), boathouseLists(), rinks(), rinkBooks(), planetaria(),
		german(), french(), spanish(), italian(), dutch(), strangers())
}

func main() {
	out := flag.String("out", "samples/hard", "folder that receives files/ and truth/")
	soffice := flag.String("soffice", "", "LibreOffice program; empty: leave its files as they are")
	flag.Parse()
	if err := run(*out, *soffice); err != nil {
		fmt.Fprintln(os.Stderr, "build:", err)
		os.Exit(1)
	}
}

func run(out, soffice string) error {
	all := cases()
	for _, c := range all {
		if c.saved != "" {
			continue
		}
		data, err := c.data()
		if err != nil {
			return fmt.Errorf("%s: %w", c.file, err)
		}
		if err := write(filepath.Join(out, "files", c.file), data); err != nil {
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
func (c hard) data() ([]byte, error) {
	if c.bytes != nil {
		return c.bytes(), nil
	}
	f := c.book()
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

// must stops the program: a case that cannot be written is a mistake in this program.
func must(err error) {
	if err != nil {
		panic(err)
	}
}
