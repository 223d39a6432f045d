package stage

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
)

// Unfinished is the note that lies in the output folder while files are moved
// to their places. A run that is ended by force in that moment leaves it
// there: the files may then be of two runs. The next run takes it away.
const Unfinished = "UNFINISHED.txt"

const unfinishedText = `A run of lineaudit was ended while it put its results here. The files in
this folder may be of two different runs: do not use them. Run it again; that
takes this note away. What it was about to write or take away:

`

// unfinishedPrefix is what the folders of files on their way are called.
const unfinishedPrefix = ".unfinished-"

// errBusy says that another run writes to the folder at this moment.
var errBusy = errors.New("another run is writing to it; wait for that one, or name another folder with --out")

// note writes the note of an unfinished run, with the names of all files that
// are, or were, in the folder.
func (s *Stage) note(old []string) error {
	var b strings.Builder
	b.WriteString(unfinishedText)
	for _, name := range append(old, s.written...) {
		fmt.Fprintln(&b, name)
	}
	tmp := filepath.Join(s.tmp, Unfinished)
	if err := os.WriteFile(tmp, []byte(b.String()), 0o644); err != nil {
		return err
	}
	return os.Rename(tmp, s.dest(Unfinished))
}

// noted are the names in the note of a run that did not finish.
func (s *Stage) noted() []string { return notedIn(s.read(Unfinished)) }

func notedIn(b []byte, err error) []string {
	if err != nil {
		return nil
	}
	names, ok := strings.CutPrefix(string(b), unfinishedText)
	if !ok {
		return nil
	}
	return strings.Split(strings.TrimSpace(names), "\n")
}

// sweep takes away what runs that were ended by force left on their way. The
// folder must be locked.
func sweep(out string) {
	entries, err := os.ReadDir(out)
	if err != nil {
		return
	}
	for _, e := range entries {
		if e.IsDir() && strings.HasPrefix(e.Name(), unfinishedPrefix) {
			removeTree(filepath.Join(out, e.Name()))
		}
	}
}
