package stage

import (
	"bufio"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
)

// Manifest is the file that lists what a run wrote into the output folder, with
// the size of each, so that the next one can take away what it no longer writes
// and nothing else.
const Manifest = ".lineaudit"

// Taken says that a file in the output folder is somebody else's work, which no
// run replaces.
type Taken struct {
	Path    string
	Changed bool // lineaudit wrote it and somebody changed it; else it never did
}

func (t *Taken) Error() string {
	if t.Changed {
		return fmt.Sprintf("%s was changed since lineaudit wrote it; move it elsewhere first, or name another folder with --out", t.Path)
	}
	return fmt.Sprintf("%s is no result of lineaudit and would be written over; move it elsewhere first, or name another folder with --out", t.Path)
}

// taken returns a *Taken where one of the names, slash-separated, could not be
// written into the folder out because of what stands there.
func taken(out string, names []string) error {
	s := &Stage{out: out}
	if len(s.noted()) > 0 {
		return nil // of two runs: sizes say nothing, Commit knows the names
	}
	return s.free(names, nil)
}

// free is taken with more names that earlier runs are known to have written.
func (s *Stage) free(names, noted []string) error {
	wrote := map[string]int64{}
	for _, name := range noted {
		wrote[name] = unknownSize
	}
	for _, e := range s.manifest() {
		if _, ok := wrote[e.name]; !ok {
			wrote[e.name] = e.size
		}
	}
	for name, size := range wrote {
		if size == unknownSize || !filepath.IsLocal(filepath.FromSlash(name)) {
			continue
		}
		if info, err := os.Lstat(s.dest(name)); err == nil && info.Mode().IsRegular() && info.Size() != size {
			names = append(slices.Clip(names), name)
		}
	}
	names = slices.Sorted(slices.Values(names))
	for _, name := range slices.Compact(names) {
		info, err := os.Lstat(s.dest(name))
		if err != nil || info.IsDir() || name == Manifest {
			continue
		}
		size, ours := wrote[name]
		if !ours || size != unknownSize && size != info.Size() {
			return &Taken{Path: s.dest(name), Changed: ours}
		}
	}
	return nil
}

// Results are the names, slash-separated, of what the last run wrote into a
// folder, and of what one that did not finish may have. None for any other
// folder. Read returns the content of a file of the folder.
func Results(read func(name string) ([]byte, error)) []string {
	names := notedIn(read(Unfinished))
	for _, e := range manifestIn(read(Manifest)) {
		names = append(names, e.name)
	}
	return slices.DeleteFunc(names, func(name string) bool { return !filepath.IsLocal(filepath.FromSlash(name)) })
}

// unknownSize is that of a file in the list of an older version, or of a run
// that did not finish.
const unknownSize = -1

// An entry is one line of the list.
type entry struct {
	name string
	size int64
}

func (s *Stage) manifest() []entry { return manifestIn(s.read(Manifest)) }

func manifestIn(b []byte, err error) (out []entry) {
	if err != nil {
		return nil
	}
	for line := range strings.Lines(string(b)) {
		e := entry{name: strings.TrimSuffix(line, "\n"), size: unknownSize}
		if name, size, ok := strings.Cut(e.name, "\t"); ok {
			e.name = name
			if n, err := strconv.ParseInt(size, 10, 64); err == nil {
				e.size = n
			}
		}
		if e.name != "" {
			out = append(out, e)
		}
	}
	return out
}

// read returns a file of the output folder, which somebody may have put a pipe
// or a link in the place of.
func (s *Stage) read(name string) ([]byte, error) {
	info, err := os.Lstat(s.dest(name))
	if err != nil {
		return nil, err
	}
	if !info.Mode().IsRegular() {
		return nil, fs.ErrInvalid
	}
	return os.ReadFile(s.dest(name))
}

func (s *Stage) writeManifest() error {
	f, err := os.Create(filepath.Join(s.tmp, Manifest))
	if err != nil {
		return err
	}
	w := bufio.NewWriter(f)
	for _, name := range s.written {
		var info fs.FileInfo
		if info, err = os.Stat(filepath.Join(s.tmp, filepath.FromSlash(name))); err != nil {
			break
		}
		fmt.Fprintf(w, "%s\t%d\n", name, info.Size())
	}
	return errors.Join(err, w.Flush(), f.Close())
}
