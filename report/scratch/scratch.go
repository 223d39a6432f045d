// Package scratch makes temporary files that do not outlive the program,
// however it ends, wherever the system can do that.
package scratch

import (
	"errors"
	"io/fs"
	"os"
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
		return nil, err
	}
	// Where an open file can lose its name, nothing is left of it should the
	// program be ended by force; elsewhere Close takes it away.
	return &File{File: f, gone: os.Remove(f.Name()) == nil}, nil
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
