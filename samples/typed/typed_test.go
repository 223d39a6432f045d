package typed

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"
)

func TestPut(t *testing.T) {
	p := NewBook("A")
	p.Put("B2", "\nZone|W|'1/2\n||\n ␠Store | -3.5 |2⏎W\n")
	for cell, want := range map[string]string{"B2": "Zone", "C2": "W", "D2": "1/2", "B3": "", "B4": " Store", "C4": "-3.5", "D4": "2\nW", "A2": ""} {
		got, err := p.File.GetCellValue("A", cell)
		if err != nil || got != want {
			t.Errorf("%s holds %q, %v; want %q", cell, got, err, want)
		}
	}
	if kind, _ := p.File.GetCellType("A", "D2"); kind != excelize.CellTypeSharedString {
		t.Errorf("a leading apostrophe makes %v, want text", kind)
	}
}

func TestTextFiles(t *testing.T) {
	for _, tt := range []struct{ name, got, want string }{
		{"DOS line ends", DOS("\na\nb\n"), "a\r\nb\r\n"},
		{"Windows-1252", string(Windows1252("é€")), "\xe9\x80"},
		{"ISO-8859-1", string(Latin1("é")), "\xe9"},
		{"UTF-16", string(Unicode16("aé")), "\xff\xfea\x00\xe9\x00"},
	} {
		if tt.got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, tt.got, tt.want)
		}
	}
}

// A house is a case with two loudspeakers of 6 W and two of 3 W on one output, and what its truth says of the load.
func house(load string) Case {
	return Case{File: "house.csv", Kind: "schedule", Bytes: func() []byte { return []byte("x") }, Truth: func(t *Truth) {
		t.Is("1", "House", "two ranges of tags")
		t.Speakers("tap_v=100; line_v=100; amplifier=A", "rows|tag|tap_w\n2..3|LS-09..|6\n4..5|LS-11..|3")
		t.Channels("amplifier=A; line_v=100", "load_w\n"+load)
		t.Controls("", "control|load_w\nK|0")
	}}
}

func TestRangesAreCountedAlong(t *testing.T) {
	var got []string
	for _, s := range told([]Case{house("18")}).tables["loudspeakers"] {
		got = append(got, strings.Join([]string{s["rows"], s["tag"], s["tap_w"], s["count"], s["status"], s["job"]}, " "))
	}
	want := []string{"2 LS-09 6 1 installed 1", "3 LS-10 6 1 installed 1", "4 LS-11 3 1 installed 1", "5 LS-12 3 1 installed 1"}
	if !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}

// A recorder takes down what a check complains of.
type recorder struct {
	testing.TB
	faults []string
}

func (r *recorder) Errorf(format string, args ...any) {
	r.faults = append(r.faults, fmt.Sprintf(format, args...))
}

func TestChecksComplain(t *testing.T) {
	lost := house("18")
	lost.Truth = func(t *Truth) {
		house("18").Truth(t)
		t.Speakers("tap_v=100; line_v=100; amplifier=B; tap_w=5; status=gone", "rows\n9")
	}
	for _, tt := range []struct {
		name string
		all  []Case
		want string // part of the one complaint; empty: none
	}{
		{"right", []Case{house("18")}, ""}, // 2 x 6 + 2 x 3
		{"wrong sum", []Case{house("19")}, "load 19, its loudspeakers sum to 18"},
		{"unknown status", []Case{lost}, `status "gone"`},
		{"schedule without loudspeakers", []Case{house("18"), {File: "none.csv", Kind: "schedule", Truth: func(t *Truth) { t.Is("", "", "empty") }}}, "is a schedule with 0 loudspeaker rows"},
		{"not a number", []Case{house("18 W")}, `load_w is "18 W"`},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := &recorder{TB: t}
			told := told(tt.all)
			isPlain(r, told)
			if tt.name != "not a number" {
				addsUp(r, told)
			}
			if tt.want == "" && len(r.faults) > 0 || tt.want != "" && (len(r.faults) != 1 || !strings.Contains(r.faults[0], tt.want)) {
				t.Errorf("complaints %q, want %q", r.faults, tt.want)
			}
		})
	}
}

func TestFilesThatDifferAreFound(t *testing.T) {
	dir := t.TempDir()
	all := []Case{house("18")}
	if err := Build(dir, "", all); err != nil {
		t.Fatal(err)
	}
	r := &recorder{TB: t}
	if current(r, dir, all); len(r.faults) > 0 {
		t.Fatalf("just built: %q", r.faults)
	}
	if err := os.WriteFile(filepath.Join(dir, "files/house.csv"), []byte("y"), 0o644); err != nil {
		t.Fatal(err)
	}
	if current(r, dir, all); len(r.faults) != 1 || !strings.Contains(r.faults[0], "house.csv is not what the program builds") {
		t.Errorf("after a change: %q", r.faults)
	}
}
