package source

import (
	"bytes"
	"context"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"fmt"
	"path"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/markup"
	"lineaudit/ingest/grid/ods"
	"lineaudit/ingest/grid/text"
	"lineaudit/ingest/grid/xls"
	"lineaudit/ingest/grid/xlsx"
)

// Read reads the file into plain cells. Its error is, or wraps, an
// *grid.Unreadable that tells its owner what is wrong and what to do; or it is
// that of ctx; or it wraps text.ErrEncoding.
func (f File) Read(ctx context.Context, opt Options) (*grid.Book, error) {
	data, err := f.Bytes(ctx, opt)
	if err != nil {
		return nil, err
	}
	return Parse(ctx, f.Name, data, opt)
}

// Parse reads the bytes of a file of the given name. Errors are those of Read.
func Parse(ctx context.Context, name string, data []byte, opt Options) (book *grid.Book, err error) {
	defer func() {
		if p := recover(); p != nil {
			book, err = nil, grid.Damaged("reading it broke off (%v)", p)
		}
	}()
	limited, cancel := context.WithTimeout(ctx, opt.timeLimit())
	defer cancel()
	lim := opt.limits()
	lim.Stop = limited.Err
	book, err = parse(limited, name, data, lim, opt)
	switch {
	case err == nil:
	case ctx.Err() != nil:
		return nil, context.Cause(ctx)
	case errors.Is(err, context.DeadlineExceeded):
		return nil, TimedOut(opt.timeLimit())
	default:
		return nil, err
	}
	doubtFormulas(book)
	sum := sha256.Sum256(data)
	book.Size, book.SHA256 = int64(len(data)), hex.EncodeToString(sum[:])
	return book, nil
}

func parse(ctx context.Context, name string, data []byte, lim grid.Limits, opt Options) (*grid.Book, error) {
	if lim.MaxBytes > 0 && int64(len(data)) > lim.MaxBytes {
		return nil, grid.TooLarge("%d bytes, the limit is %d", len(data), lim.MaxBytes)
	}
	if len(bytes.Trim(data, "\x00")) == 0 {
		return nil, empty(len(data))
	}
	k := identify(data)
	var book *grid.Book
	var err error
	switch k.format {
	case grid.XLSX, grid.XLSM:
		book, err = xlsx.ReadZip(name, data, k.zip, lim)
	case grid.XLS:
		book, err = xls.Read(name, data, lim)
	case grid.ODS, grid.FODS:
		book, err = ods.Read(name, data, lim)
	case grid.XML2003, grid.HTML:
		book, err = markup.Read(name, data, lim)
	case grid.Text:
		if book, err = text.Read(name, data, lim, opt.Encoding); err != nil {
			return nil, foreignUnlessTable(name, err)
		}
	case grid.Encrypted:
		return nil, &grid.Unreadable{
			Reason: "the file is protected by a password",
			Advice: "open it with its password and save a copy without one",
		}
	case grid.Zip:
		return nil, &grid.Unreadable{Reason: "the file is " + k.what, Advice: "unpack it, or copy it again if that fails"}
	default:
		return convert(ctx, name, data, k.kind, lim, opt)
	}
	if err != nil {
		return nil, err
	}
	if book.Format == "" {
		book.Format = k.format
	}
	return book, nil
}

func empty(size int) *grid.Unreadable {
	if size == 0 {
		return &grid.Unreadable{Reason: "the file is empty", Advice: "copy it again from where it came from"}
	}
	return &grid.Unreadable{Reason: "the file holds nothing but zero bytes: a disk or a transfer failed", Advice: "restore it from a backup"}
}

// tableNames are the endings of names by which a file claims to be a table.
var tableNames = map[string]bool{
	".xlsx": true, ".xlsm": true, ".xltx": true, ".xltm": true, ".xlsb": true, ".xls": true, ".xlt": true, ".xlw": true, ".ods": true, ".ots": true,
	".fods": true, ".csv": true, ".tsv": true, ".tab": true, ".slk": true, ".dif": true, ".numbers": true, ".wk1": true, ".wk3": true, ".wk4": true, ".123": true, ".sxc": true,
}

func claimsTable(name string) bool { return tableNames[strings.ToLower(path.Ext(name))] }

// foreignUnlessTable marks the error as no loss if the name of the file does
// not claim a table.
func foreignUnlessTable(name string, err error) error {
	var u *grid.Unreadable
	if errors.As(err, &u) && !claimsTable(name) {
		return &grid.Unreadable{Reason: u.Reason, Advice: u.Advice, Foreign: true}
	}
	return err
}

// foreign is the answer for a file of another trade.
func foreign(name string, k kind) *grid.Unreadable {
	u := &grid.Unreadable{Reason: "the file is " + k.what, Foreign: true}
	if claimsTable(name) {
		u.Reason = fmt.Sprintf("the file is named %s and is %s", path.Ext(name), k.what)
		u.Foreign = false
	}
	switch {
	case strings.Contains(k.what, "archive") && !strings.Contains(k.what, "web"):
		u.Advice = "unpack it and give the folder"
		u.Foreign = false // who knows what it holds
	case strings.Contains(k.what, "document"), strings.Contains(k.what, "web archive"):
		u.Advice = "if it holds a schedule, copy its tables into a workbook"
	default:
		u.Advice = "if it shows a schedule, type it into a workbook"
	}
	return u
}
