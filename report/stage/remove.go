package stage

import (
	"io/fs"
	"os"
	"path/filepath"
	"slices"
)

// removeTree takes a folder away with all that is in it. Where the system refuses the call that os.RemoveAll makes, as
// Wine 8 does, everything is removed one by one, the innermost first.
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
