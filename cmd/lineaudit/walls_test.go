package main

import (
	"go/parser"
	"go/token"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// walls lists what each room may import of ours; the longest room that a
// package lies in decides. Tests may import more.
var walls = map[string][]string{
	"audit/schedule":    {},
	"audit/line":        {},
	"audit":             {"audit/schedule", "audit/line"},
	"ingest/grid":       {"ingest/grid"},
	"ingest/remember":   {},
	"ingest/watch":      {},
	"ingest/notation":   {"ingest/remember"},
	"ingest/vocabulary": {"ingest/vocabulary", "ingest/notation", "ingest/remember"},
	"ingest/layout":     {"ingest/layout", "ingest/grid", "ingest/notation", "ingest/vocabulary", "ingest/remember", "ingest/watch", "audit/schedule"},
	"ingest":            {"ingest", "audit/schedule"},
	"report":            {"report", "audit", "audit/schedule", "ingest/grid"},
	"cmd":               {"audit", "audit/schedule", "ingest", "report"},
	"samples":           {"samples"},
}

// libraries that stay behind one wall: no type of theirs is seen elsewhere.
var libraries = map[string][]string{
	"github.com/xuri/excelize":       {"report", "samples"}, // it only writes: files of others never reach it
	"github.com/richardlehane/mscfb": {"ingest/grid"},
	"github.com/jedib0t/go-pretty":   {"report/terminal"},
	"github.com/spf13/pflag":         {"cmd", "samples"},
	"github.com/klauspost/compress":  {"ingest/grid"},
}

// reach is what little of the outside world is used where: there is no network,
// and other programs are started for the formats without a reader alone.
var reach = map[string][]string{
	"net": nil, "net/http": nil, "plugin": nil, "unsafe": nil,
	"os/exec": {"ingest/grid/source", "ingest/grid/gridtest", "samples"},
}

func TestRoomsStayApart(t *testing.T) {
	root := "../.."
	checked := 0
	err := filepath.WalkDir(root, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
			return err
		}
		rel, _ := filepath.Rel(root, filepath.Dir(path))
		pkg := filepath.ToSlash(rel)
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		for _, spec := range file.Imports {
			name, _ := strconv.Unquote(spec.Path.Value)
			if ours, ok := strings.CutPrefix(name, "lineaudit/"); ok {
				checked++
				if room := roomOf(pkg); !within(ours, walls[room]) {
					t.Errorf("%s imports %s through the wall of %q", path, ours, room)
				}
			}
			for library, homes := range libraries {
				if strings.HasPrefix(name, library) && !within(pkg, homes) {
					t.Errorf("%s imports %s, which belongs to %v", path, name, homes)
				}
			}
			if homes, ok := reach[name]; ok && !within(pkg, homes) {
				t.Errorf("%s imports %s, which only %v may", path, name, homes)
			}
			if roomOf(pkg) == "audit" && (name == "os" || name == "time" || name == "io/fs") {
				t.Errorf("%s imports %s: the audit opens no file and reads no clock", path, name)
			}
		}
		return nil
	})
	if err != nil || checked < 50 {
		t.Fatalf("%d imports checked, %v", checked, err)
	}
}

// Nothing that speaks to a network is linked into the program. Package net comes
// with the flags library, for its types of addresses, and net/http with the one
// that writes workbooks, for its table of file types.
func TestNothingSpeaksToANetwork(t *testing.T) {
	for name, want := range map[string]string{"net": "github.com/spf13/pflag", "net/http": "github.com/xuri/excelize/v2"} {
		out, err := exec.Command("go", "list", "-deps", "-f", `{{if not .Standard}}{{range .Imports}}{{if eq . "`+name+`"}}{{$.ImportPath}}{{end}}{{end}}{{end}}`, ".").Output()
		if got := strings.TrimSpace(string(out)); err != nil || got != want {
			t.Errorf("%s is imported by %q, %v; want %s alone", name, got, err, want)
		}
	}
	program := filepath.Join(t.TempDir(), "lineaudit")
	if out, err := exec.Command("go", "build", "-o", program, ".").CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	out, err := exec.Command("go", "tool", "nm", program).Output()
	if err != nil || !strings.Contains(string(out), "main.main") {
		t.Fatalf("the symbols of the program cannot be read: %v", err)
	}
	for _, part := range []string{"net/http.(*Client)", "net/http.(*Transport)", "net/http.(*Server)", "crypto/tls.(*Conn)", "net.Listen", "net/smtp."} {
		if strings.Contains(string(out), part) {
			t.Errorf("%s is linked into the program", part)
		}
	}
}

func roomOf(pkg string) string {
	best := ""
	for room := range walls {
		if (pkg == room || strings.HasPrefix(pkg, room+"/")) && len(room) > len(best) {
			best = room
		}
	}
	return best
}

// within reports whether a package lies in one of the rooms. "audit" is the
// package alone; other rooms hold what is below them.
func within(pkg string, rooms []string) bool {
	for _, r := range rooms {
		if pkg == r || r != "audit" && strings.HasPrefix(pkg, r+"/") {
			return true
		}
	}
	return false
}

func TestTopLevel(t *testing.T) {
	allowed := "cmd audit ingest report samples go.mod go.sum README.md DEVELOPERS.md"
	allowed += " out dist lineaudit lineaudit.exe" // what the guides make there; not kept
	entries, err := os.ReadDir("../..")
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		if !strings.HasPrefix(e.Name(), ".") && !strings.Contains(" "+allowed+" ", " "+e.Name()+" ") {
			t.Errorf("%s does not belong at the top level", e.Name())
		}
	}
}
