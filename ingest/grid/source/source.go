// Package source finds the files of an archive of schedules - in folders and
// in zips - and reads each into plain cells, whatever its format.
//
// Files are opened for reading only. Whatever a file holds costs at most its
// own reading: see Options.
package source

import (
	"context"
	"fmt"
	"time"

	"lineaudit/ingest/grid"
)

// Options say how files are read. The zero value reads with the defaults.
type Options struct {
	// Encoding names the encoding of text files without a byte order mark,
	// "" to find it out; see text.Encoding for the names.
	Encoding string
	// Limits of one file; the zero value stands for grid.DefaultLimits.
	// Stop is set by this package.
	Limits grid.Limits
	// TimeLimit of reading one file, a minute if zero.
	TimeLimit time.Duration
	// Soffice returns the program that reads the formats for which there is
	// no reader here, "" for none. nil looks for LibreOffice in the PATH.
	Soffice func() string
	// Exclude are folders and files that Find leaves out, such as the folder
	// that results are written to.
	Exclude []string
	// Results returns the files in a folder, slash-separated and relative to it,
	// that are results of an earlier run: Find leaves them out and says so in
	// Listing.Results. It reads files of that folder, which may lie in a zip, by
	// their names. nil for none.
	Results func(read func(name string) ([]byte, error)) []string
}

func (o Options) limits() grid.Limits {
	l := o.Limits
	l.Stop = nil
	if isZero(l) {
		l = grid.DefaultLimits()
	}
	return l
}

func isZero(l grid.Limits) bool {
	return l.MaxBytes == 0 && l.MaxInflated == 0 && l.MaxRatio == 0 && l.MaxMembers == 0 && l.MaxSheets == 0 && l.MaxRows == 0 &&
		l.MaxCells == 0 && l.MaxMerges == 0 && l.MaxText == 0 && l.MaxCellText == 0 && l.MaxDepth == 0
}

func (o Options) timeLimit() time.Duration {
	if o.TimeLimit > 0 {
		return o.TimeLimit
	}
	return time.Minute
}

// A File is one file of the archive that may hold a schedule.
type File struct {
	// Name is how people see the file: a relative path with slashes, without
	// ".." or control characters, and no two files share it. A member of a
	// zip reads "jobs.zip/rink.xlsx".
	Name string
	// Path is where the file lies on disk, "" for a member of a zip.
	Path string

	load func(ctx context.Context, lim grid.Limits) ([]byte, error)
}

// A Listing is what Find found, each list in the order of names.
type Listing struct {
	Files   []File
	Skipped []Skip
	Results []Results // in the order of their folders
}

// Results are files of one folder that were left out as results of an earlier run.
type Results struct {
	Folder string // as people see it, "." for the one that was named
	Files  int
}

// A Skip is something that was passed over, with the reason.
type Skip struct{ Name, Reason string }

// broken is a file that cannot even be opened; Read says why.
func broken(name, path string, err error) File {
	return File{Name: name, Path: path, load: func(context.Context, grid.Limits) ([]byte, error) { return nil, err }}
}

// Bytes returns the content of the file as it lies on disk or in its zip. Its
// error is an *grid.Unreadable or the cause of ctx.
func (f File) Bytes(ctx context.Context, opt Options) ([]byte, error) {
	if ctx.Err() != nil {
		return nil, context.Cause(ctx)
	}
	return f.load(ctx, opt.limits())
}

// TimedOut is the answer for a file that took too long.
func TimedOut(limit time.Duration) *grid.Unreadable {
	return &grid.Unreadable{
		Reason: fmt.Sprintf("reading it was given up after %v", limit),
		Advice: "save the sheets that matter as a workbook of their own, or allow more time with --time-limit",
	}
}
