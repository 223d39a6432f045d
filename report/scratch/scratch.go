// Package scratch makes temporary files that do not outlive the program,
// however it ends, wherever the system can do that.
package scratch

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"runtime"
)

// A File is a temporary file, open for reading and writing.
type File struct {
	*os.File
	gone bool // it has no name any more
}

// New makes a file in the folder for temporary files; pattern is that of
// os.CreateTemp. Its caller must close it.
func New(pattern string) (*File, error) {
	if f, err := nameless(); err == nil {
		return &File{File: f, gone: true}, nil
	}
	f, err := os.CreateTemp("", pattern)
	if err != nil {
		return nil, Failed(err)
	}
	// Where an open file can lose its name, nothing is left of it should the
	// program be ended by force; elsewhere Close takes it away.
	return &File{File: f, gone: os.Remove(f.Name()) == nil}, nil
}

// Write appends to the file; its error says what to do.
func (f *File) Write(p []byte) (int, error) {
	n, err := f.File.Write(p)
	return n, Failed(err)
}

// WriteAt writes to a place of the file; its error says what to do.
func (f *File) WriteAt(p []byte, off int64) (int, error) {
	n, err := f.File.WriteAt(p, off)
	return n, Failed(err)
}

// An Error says where temporary files go and how to have them elsewhere.
type Error struct{ Err error }

func (e *Error) Error() string {
	variable := "TMPDIR"
	if runtime.GOOS == "windows" {
		variable = "TMP"
	}
	return fmt.Sprintf("temporary files in %s: %v; see that the folder is there and has room, or name another in the variable %s", os.TempDir(), e.Err, variable)
}

func (e *Error) Unwrap() error { return e.Err }

// Failed wraps what the system says of a temporary file in an *Error; nil stays nil.
func Failed(err error) error {
	if err == nil {
		return nil
	}
	var at *fs.PathError
	if errors.As(err, &at) {
		err = at.Err // the name of the file helps nobody
	}
	return &Error{err}
}

// Close closes the file and takes it away.
func (f *File) Close() error {
	err := f.File.Close()
	if f.gone {
		return err
	}
	if gone := os.Remove(f.Name()); gone != nil && !errors.Is(gone, fs.ErrNotExist) {
		return errors.Join(err, gone)
	}
	return err
}
