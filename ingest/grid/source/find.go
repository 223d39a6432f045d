package source

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"syscall"

	"lineaudit/ingest/grid"
)

// deepest is how many folders deep Find follows.
const deepest = 64

// Find lists the files under paths - files, folders, zips - that may hold a
// schedule. Links are followed; what is reached twice is listed once. What
// cannot be opened is listed too, and Read says why. An error means that one
// of paths is not there, or is that of ctx.
func Find(ctx context.Context, paths []string, opt Options) (*Listing, error) {
	return find(ctx, paths, opt, os.ReadDir)
}

// find is Find with the function that lists a folder, in whatever order.
func find(ctx context.Context, paths []string, opt Options, readDir func(string) ([]fs.DirEntry, error)) (*Listing, error) {
	w := &walker{ctx: ctx, lim: opt.limits(), readDir: readDir, results: opt.Results, seen: map[string]bool{}, exclude: map[string]bool{}, old: map[string]int{}}
	for _, p := range opt.Exclude {
		w.exclude[real(p)] = true
		if info, err := os.Stat(p); err == nil {
			w.spared = append(w.spared, info)
		}
	}
	names := labels(paths)
	for i, p := range paths {
		info, err := os.Stat(p)
		if err != nil && (errors.Is(err, fs.ErrNotExist) || len(paths) == 1 && !errors.Is(err, fs.ErrPermission)) {
			return nil, fmt.Errorf("%s: %w", p, plain(err))
		}
		label := names[i]
		switch {
		case err != nil:
			w.list(broken(label, p, unopened(err)))
		case info.IsDir():
			if len(paths) == 1 {
				label = ""
			}
			w.folder(p, label, 0)
		default:
			w.file(p, label, info)
		}
	}
	for len(w.links) > 0 { // real folders first, so that names do not depend on links into them
		l := w.links[0]
		w.links = w.links[1:]
		w.folder(l.path, l.name, l.depth)
	}
	if err := ctx.Err(); err != nil {
		return nil, err
	}
	slices.SortStableFunc(w.out.Files, func(a, b File) int { return cmp.Compare(a.Name, b.Name) })
	slices.SortStableFunc(w.out.Skipped, func(a, b Skip) int { return cmp.Compare(a.Name, b.Name) })
	distinct(w.out.Files)
	w.out.Results = slices.DeleteFunc(w.out.Results, func(r Results) bool { return r.Files == 0 })
	slices.SortFunc(w.out.Results, func(a, b Results) int { return cmp.Compare(a.Folder, b.Folder) })
	return &w.out, nil
}

// A walker collects a Listing.
type walker struct {
	ctx     context.Context
	lim     grid.Limits
	readDir func(string) ([]fs.DirEntry, error)
	results func(read func(string) ([]byte, error)) []string
	out     Listing
	seen    map[string]bool // real paths
	exclude map[string]bool // real paths
	spared  []fs.FileInfo   // what they are, however their names are spelled
	old     map[string]int  // by real path: results of earlier runs, as a place in out.Results
	links   []link          // folders behind links, for later
	held    int64           // bytes of zips within zips kept in memory
}

type link struct {
	path, name string
	depth      int
}

func (w *walker) list(f File)              { w.out.Files = append(w.out.Files, f) }
func (w *walker) skip(name, reason string) { w.out.Skipped = append(w.out.Skipped, Skip{name, reason}) }

// real returns the path without links, or the path itself where that fails.
func real(p string) string {
	if abs, err := filepath.Abs(p); err == nil {
		p = abs
	}
	if r, err := filepath.EvalSymlinks(p); err == nil {
		return r
	}
	return p
}

// visit reports whether the path is new and not left out.
func (w *walker) visit(p, name string) bool {
	r := real(p)
	if at, ok := w.old[r]; ok && !w.seen[r] {
		w.seen[r] = true
		w.out.Results[at].Files++
		return false
	}
	switch {
	case w.exclude[r], w.spares(p):
		w.skip(name, "left out as asked")
		return false
	case w.seen[r]:
		w.skip(name, "the same as one already listed")
		return false
	}
	w.seen[r] = true
	return true
}

// spares reports whether the path leads to something that is left out. A disk
// that takes OUT and out for one name does so without saying.
func (w *walker) spares(p string) bool {
	if len(w.spared) == 0 {
		return false
	}
	info, err := os.Stat(p)
	return err == nil && slices.ContainsFunc(w.spared, func(s fs.FileInfo) bool { return os.SameFile(s, info) })
}

// folder lists what is in the folder at p, whose name people see as name.
func (w *walker) folder(p, name string, depth int) {
	if w.ctx.Err() != nil || !w.visit(p, name) {
		return
	}
	if depth > deepest {
		w.list(broken(name, p, &grid.Unreadable{Reason: fmt.Sprintf("the folder lies more than %d folders deep", deepest), Advice: "give it as a start of its own"}))
		return
	}
	w.leaveOut(p, name)
	entries, err := w.readDir(p)
	if err != nil {
		w.list(broken(cmp.Or(name, "."), p, unopened(err)))
		return
	}
	// What is reached first is listed: the order must not be that of the disk.
	slices.SortFunc(entries, func(a, b fs.DirEntry) int { return cmp.Compare(a.Name(), b.Name()) })
	for _, e := range entries {
		at := filepath.Join(p, e.Name())
		entry := path.Join(name, shown(e.Name()))
		if reason := passedOver(e.Name()); reason != "" {
			w.skip(entry, reason)
			continue
		}
		info, err := os.Stat(at)
		switch {
		case err != nil && e.Type()&fs.ModeSymlink != 0 && !errors.Is(err, fs.ErrPermission):
			w.list(broken(entry, at, &grid.Unreadable{Reason: "the link leads nowhere, or round in circles", Advice: "remove it, or put the file in its place"}))
		case err != nil:
			w.list(broken(entry, at, unopened(err)))
		case info.IsDir() && e.Type()&fs.ModeSymlink != 0:
			w.links = append(w.links, link{at, entry, depth + 1})
		case info.IsDir():
			w.folder(at, entry, depth+1)
		default:
			w.file(at, entry, info)
		}
	}
}

// leaveOut takes note of the results of an earlier run in the folder at p.
func (w *walker) leaveOut(p, name string) {
	if w.results == nil {
		return
	}
	read := func(file string) ([]byte, error) { return loadFile(filepath.Join(p, file), w.lim) }
	for _, result := range w.results(read) {
		w.old[real(filepath.Join(p, filepath.FromSlash(result)))] = len(w.out.Results)
	}
	w.out.Results = append(w.out.Results, Results{Folder: cmp.Or(name, ".")})
}

// passedOver says why a name is no schedule of anybody's, "" if it may be one.
func passedOver(name string) string {
	switch low := strings.ToLower(name); {
	case strings.HasPrefix(name, "~$"), strings.HasPrefix(name, ".~lock."):
		return "left by a program that has the workbook open, or crashed"
	case strings.HasPrefix(name, "._"), low == "__macosx":
		return "companion file of a Macintosh"
	case strings.HasPrefix(name, "."):
		return "hidden"
	case low == "thumbs.db", low == "desktop.ini":
		return "kept by the system"
	}
	return ""
}

// file lists the file at p, or the members if it is a zip of files.
func (w *walker) file(p, name string, info fs.FileInfo) {
	if w.ctx.Err() != nil {
		return
	}
	if !info.Mode().IsRegular() {
		w.skip(name, "not a file: a device, pipe or socket")
		return
	}
	if !w.visit(p, name) {
		return
	}
	f := File{Name: name, Path: p, load: func(_ context.Context, lim grid.Limits) ([]byte, error) { return loadFile(p, lim) }}
	if head := firstBytes(p); head != "PK\x03\x04" && head != "PK\x05\x06" {
		w.list(f)
		return
	}
	w.zipFile(f, info.Size())
}

func firstBytes(p string) string {
	f, err := open(p)
	if err != nil {
		return ""
	}
	defer f.Close()
	var b [4]byte
	n, _ := io.ReadFull(f, b[:])
	return string(b[:n])
}

// open opens a regular file. What stood at p when it was listed may be a pipe
// by now, whose writer would never come, or a device without an end.
func open(p string) (*os.File, error) {
	f, err := os.OpenFile(p, os.O_RDONLY|nowait, 0)
	if err != nil {
		return nil, unopened(err)
	}
	info, err := f.Stat()
	switch {
	case err != nil:
		err = unopened(err)
	case !info.Mode().IsRegular():
		err = &grid.Unreadable{Reason: "it is a folder, device, pipe or socket, not a file", Advice: "put a file in its place"}
	default:
		return f, nil
	}
	f.Close()
	return nil, err
}

// loadFile reads a regular file whole.
func loadFile(p string, lim grid.Limits) ([]byte, error) {
	f, err := open(p)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	return readWhole(f, lim)
}

// readWhole reads an open file, which must not change meanwhile: half of an old
// file and half of a new one may look sound.
func readWhole(f fs.File, lim grid.Limits) ([]byte, error) {
	info, err := f.Stat()
	if err != nil {
		return nil, unopened(err)
	}
	if lim.MaxBytes > 0 && info.Size() > lim.MaxBytes {
		return nil, grid.TooLarge("%d MiB, the limit is %d", info.Size()>>20, lim.MaxBytes>>20)
	}
	data := make([]byte, info.Size()+1) // one more, to see the end
	n, err := io.ReadFull(f, data)
	if err != io.EOF && err != io.ErrUnexpectedEOF && err != nil {
		return nil, unopened(err)
	}
	after, err := f.Stat()
	if err != nil {
		return nil, unopened(err)
	}
	if int64(n) != info.Size() || after.Size() != info.Size() || !after.ModTime().Equal(info.ModTime()) {
		return nil, &grid.Unreadable{Reason: "it changed while it was read", Advice: "wait until nobody writes to it, and run again"}
	}
	return data[:n], nil
}

// unopened says why the system does not hand out a file.
func unopened(err error) *grid.Unreadable {
	switch {
	case errors.Is(err, fs.ErrPermission):
		return &grid.Unreadable{Reason: "reading it is not permitted", Advice: "ask its owner for the right to read it"}
	case errors.Is(err, fs.ErrNotExist):
		return &grid.Unreadable{Reason: "it is not there any more", Advice: "run again"}
	}
	return &grid.Unreadable{Reason: "the system cannot read it: " + plain(err).Error(), Advice: "check the disk or the connection to it"}
}

// plain drops the operation and path from an error of the system.
func plain(err error) error {
	var p *fs.PathError
	if errors.As(err, &p) {
		err = p.Err
	}
	if errors.Is(err, syscall.ELOOP) {
		return errors.New("links that lead round in circles")
	}
	return err
}
