package stage

import (
	"io/fs"
	"os"
	"path/filepath"
	"slices"
)

// removeTree takes a folder away with all that is in it. Some file systems, as network drives of Windows, do not know the
// call that os.RemoveAll makes there; then everything is removed one by one, the innermost first.
func removeTree(dir string) {
	if os.RemoveAll(dir) == nil {
		return
	}
	removeEach(dir)
}

func removeEach(dir string) {
	var all []string
	filepath.WalkDir(dir, func(path string, _ fs.DirEntry, err error) error {
		all = append(all, path)
		if err != nil {
			return fs.SkipDir
		}
		return nil
	})
	for _, path := range slices.Backward(all) {
		os.Remove(path)
	}
}
