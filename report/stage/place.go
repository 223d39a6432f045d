package stage

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
)

// Ready returns an error where the folder out could not take the results,
// whose names are slash-separated: no folder can be made or written there, or
// what stands there is somebody else's (*Taken). It leaves everything as it was.
func Ready(out string, names []string) error {
	made, err := makeFolder(out)
	if err != nil {
		return err
	}
	defer removeFolders(made)
	tmp, err := os.MkdirTemp(out, unfinishedPrefix)
	if err != nil {
		return noPlace(out, err)
	}
	os.Remove(tmp)
	return taken(out, names)
}

// makeFolder makes the output folder and those above it, and returns those that
// were not there before, the outermost first.
func makeFolder(out string) (made []string, err error) {
	switch info, err := os.Stat(out); {
	case err == nil && !info.IsDir():
		return nil, fmt.Errorf("output folder %s is a file; name a folder with --out", out)
	case err == nil:
		return nil, nil
	case !errors.Is(err, fs.ErrNotExist):
		return nil, noPlace(out, err)
	}
	if _, err := os.Lstat(out); err == nil {
		return nil, fmt.Errorf("output folder %s is a link that leads nowhere; remove it, or name another folder with --out", out)
	}
	if above := filepath.Dir(out); above != out {
		if made, err = makeFolder(above); err != nil {
			return nil, err
		}
	}
	if err := os.Mkdir(out, 0o755); err != nil && !errors.Is(err, fs.ErrExist) {
		removeFolders(made)
		return nil, noPlace(out, err)
	}
	return append(made, out), nil
}

// removeFolders takes folders away that makeFolder made, as far as they are empty.
func removeFolders(made []string) {
	for _, dir := range slices.Backward(made) {
		os.Remove(dir)
	}
}

// noPlace says that the system lets nothing be written to the output folder.
func noPlace(out string, err error) error {
	var failed *fs.PathError
	if errors.As(err, &failed) {
		err = failed.Err
	}
	return fmt.Errorf("output folder %s: %w; name a folder with --out that may be written to", out, err)
}
