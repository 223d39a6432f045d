package source

import (
	"context"
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"time"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/xlsx"
)

// convertLimit is the time that one conversion may take.
const convertLimit = 60 * time.Second

// convert reads, through LibreOffice if it is there, a table for whose format
// there is no reader here.
func convert(ctx context.Context, name string, data []byte, k kind, lim grid.Limits, opt Options) (*grid.Book, error) {
	if k.convert == "" {
		return nil, foreign(name, k)
	}
	lookup := opt.Soffice
	if lookup == nil {
		lookup = findSoffice
	}
	program := lookup()
	if program == "" {
		return nil, &grid.Unreadable{
			Reason: "the file is " + k.what + ", for which there is no reader",
			Advice: "open it in a spreadsheet program and save it as .xlsx; or install LibreOffice, which is then used to read it",
		}
	}
	converted, err := runSoffice(ctx, program, data, k.convert)
	if err != nil {
		return nil, err
	}
	book, err := xlsx.Read(name, converted, lim)
	if err != nil {
		return nil, err
	}
	book.Format, book.Converted = k.format, true
	book.Notes = append([]grid.Note{{Text: "the file is " + k.what + "; it was read through LibreOffice, which may calculate formulas anew"}}, book.Notes...)
	return book, nil
}

func findSoffice() string {
	for _, name := range []string{"soffice", "libreoffice"} {
		if p, err := exec.LookPath(name); err == nil {
			return p
		}
	}
	return ""
}

// runSoffice converts data, a file with the given ending, to .xlsx in a
// temporary folder with a user profile of its own, and removes both.
func runSoffice(ctx context.Context, program string, data []byte, ending string) (out []byte, err error) {
	dir, err := os.MkdirTemp("", "lineaudit-convert-")
	if err != nil {
		return nil, noConversion(err)
	}
	defer func() {
		if e := os.RemoveAll(dir); e != nil && err == nil {
			out, err = nil, noConversion(e)
		}
	}()
	in := filepath.Join(dir, "table."+ending)
	if err := os.WriteFile(in, data, 0o600); err != nil {
		return nil, noConversion(err)
	}
	limited, cancel := context.WithTimeout(ctx, convertLimit)
	defer cancel()
	profile := filepath.ToSlash(filepath.Join(dir, "profile"))
	if profile[0] != '/' {
		profile = "/" + profile
	}
	cmd := exec.CommandContext(limited, program,
		"-env:UserInstallation=file://"+profile, "--headless", "--norestore", "--nolockcheck", "--nodefault",
		"--convert-to", "xlsx", "--outdir", filepath.Join(dir, "out"), in)
	cmd.Dir = dir
	ownGroup(cmd)
	cmd.WaitDelay = 5 * time.Second
	runErr := cmd.Run()
	if err := ctx.Err(); err != nil {
		return nil, err
	}
	if errors.Is(limited.Err(), context.DeadlineExceeded) {
		return nil, TimedOut(convertLimit)
	}
	out, err = os.ReadFile(filepath.Join(dir, "out", "table.xlsx"))
	if err != nil {
		if runErr != nil {
			err = runErr
		}
		return nil, noConversion(err)
	}
	return out, nil
}

func noConversion(err error) *grid.Unreadable {
	return &grid.Unreadable{
		Reason: "LibreOffice did not convert the file (" + err.Error() + ")",
		Advice: "open it in a spreadsheet program and save it as .xlsx",
	}
}
