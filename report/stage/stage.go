// Package stage makes the output folder appear whole or not at all: everything
// is written to a folder beside its place and moved there at the end.
package stage

import (
	"errors"
	"fmt"
	"os"
	"path"
	"path/filepath"
	"slices"
)

// A Stage is an output folder that is being written.
type Stage struct {
	out     string   // the folder that people asked for
	tmp     string   // where everything is until Commit, inside out
	made    []string // folders that did not exist before: out and those above it
	inputs  []string
	release func()   // lets go of the folder
	written []string // slash paths relative to out
}

// New prepares to fill the folder out. Inputs are paths that must never be
// written over. The folder is made if it does not exist.
func New(out string, inputs []string) (*Stage, error) {
	made, err := makeFolder(out)
	if err != nil {
		return nil, err
	}
	release, err := lock(out)
	switch {
	case errors.Is(err, errBusy):
		return nil, fmt.Errorf("output folder %s: %w", out, err)
	case err != nil:
		removeFolders(made)
		return nil, noPlace(out, err)
	}
	sweep(out)
	tmp, err := os.MkdirTemp(out, unfinishedPrefix)
	if err != nil {
		release()
		removeFolders(made)
		return nil, noPlace(out, err)
	}
	return &Stage{out: out, tmp: tmp, made: made, inputs: inputs, release: release}, nil
}

// Path returns the file to write for a slash-separated name inside the output
// folder, its folders made. A name that leads out of the folder is an error.
func (s *Stage) Path(name string) (string, error) {
	if !filepath.IsLocal(filepath.FromSlash(name)) || name == "." {
		return "", fmt.Errorf("output name %q leads out of the output folder", name)
	}
	full := filepath.Join(s.tmp, filepath.FromSlash(name))
	if err := os.MkdirAll(filepath.Dir(full), 0o755); err != nil {
		return "", err
	}
	s.written = append(s.written, path.Clean(name))
	return full, nil
}

// Drop forgets a file that was begun with Path and is not to appear.
func (s *Stage) Drop(name string) {
	name = path.Clean(name)
	os.Remove(filepath.Join(s.tmp, filepath.FromSlash(name)))
	s.written = slices.DeleteFunc(s.written, func(w string) bool { return w == name })
}

// Commit moves everything to its place and takes away what an earlier run wrote
// there and this one did not. On an error everything stands as it did before.
func (s *Stage) Commit() error {
	defer s.release()
	defer removeTree(s.tmp)
	for _, name := range s.written {
		if err := s.refuseInput(s.dest(name)); err != nil {
			return err
		}
	}
	mixed := s.noted() // of a run that did not finish: not to be returned to
	if err := s.free(s.written, mixed); err != nil {
		return fmt.Errorf("output folder: %w; nothing was changed", err)
	}
	old := mixed
	for _, e := range s.manifest() {
		old = append(old, e.name)
	}
	if err := errors.Join(s.writeManifest(), s.note(old)); err != nil {
		return fmt.Errorf("output folder: %w", err)
	}
	var m moves
	for _, name := range append(slices.Clone(s.written), Manifest) {
		if err := s.place(&m, name); err != nil {
			m.undo()
			if len(mixed) == 0 {
				os.Remove(s.dest(Unfinished))
			}
			return fmt.Errorf("output folder: %w; close the file if another program has it open, or name another folder with --out; nothing was changed", err)
		}
	}
	for _, name := range old {
		if filepath.IsLocal(filepath.FromSlash(name)) && !slices.Contains(s.written, name) && s.refuseInput(s.dest(name)) == nil {
			os.Remove(s.dest(name))
			os.Remove(filepath.Dir(s.dest(name))) // only if it is empty now
		}
	}
	if err := os.Remove(s.dest(Unfinished)); err != nil {
		return fmt.Errorf("output folder: everything is in its place, but %s could not be taken away: %w", Unfinished, err)
	}
	return nil
}

// place puts one file where it belongs; what stands there is kept aside.
func (s *Stage) place(m *moves, name string) error {
	dest := s.dest(name)
	if err := m.folder(filepath.Dir(dest), s.out); err != nil {
		return err
	}
	switch info, err := os.Lstat(dest); {
	case err == nil && info.IsDir():
		return fmt.Errorf("%s is a folder", dest)
	case err == nil:
		aside := filepath.Join(s.tmp, fmt.Sprintf(".old-%d", len(m.done)))
		if err := m.move(dest, aside); err != nil {
			return err
		}
	}
	return m.move(filepath.Join(s.tmp, filepath.FromSlash(name)), dest)
}

// moves are what was done so far and how to undo it.
type moves struct {
	done []func()
}

func (m *moves) move(from, to string) error {
	if err := os.Rename(from, to); err != nil {
		return err
	}
	m.done = append(m.done, func() { os.Rename(to, from) })
	return nil
}

// folder makes a folder and those above it, up to the output folder. A link
// could lead out of it and is refused.
func (m *moves) folder(dir, out string) error {
	if dir == filepath.Clean(out) {
		return nil
	}
	if err := m.folder(filepath.Dir(dir), out); err != nil {
		return err
	}
	switch info, err := os.Lstat(dir); {
	case err == nil && info.Mode()&os.ModeSymlink != 0:
		return fmt.Errorf("%s is a link", dir)
	case err == nil:
		return nil
	}
	if err := os.Mkdir(dir, 0o755); err != nil {
		return err
	}
	m.done = append(m.done, func() { os.Remove(dir) })
	return nil
}

func (m *moves) undo() {
	for _, step := range slices.Backward(m.done) {
		step()
	}
}

// Discard takes away everything that was written and not committed.
func (s *Stage) Discard() {
	removeTree(s.tmp)
	s.release()
	removeFolders(s.made)
}

func (s *Stage) dest(name string) string { return filepath.Join(s.out, filepath.FromSlash(name)) }

// refuseInput returns an error when the file to be written is one of the inputs.
func (s *Stage) refuseInput(dest string) error {
	info, err := os.Stat(dest)
	if err != nil {
		return nil // it does not exist
	}
	for _, in := range s.inputs {
		if other, err := os.Stat(in); err == nil && os.SameFile(info, other) {
			return fmt.Errorf("%s is an input and would be written over; name another folder with --out", in)
		}
	}
	return nil
}
