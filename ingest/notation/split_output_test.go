package notation

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

// The names are common practice, no source.
func TestSplitOutputs(t *testing.T) {
	type list = []SplitOutput
	none := SplitOutput{}
	for _, tt := range []struct {
		names, known []string
		want         list
	}{
		{[]string{"Y1", "Y2"}, []string{"Y"}, list{{"Y", "1", true}, {"Y", "2", true}}},
		{[]string{"Y1", "Y2", "Y2"}, nil, list{{"Y", "1", false}, {"Y", "2", false}, {"Y", "2", false}}},
		{[]string{"A1A", "A1B"}, []string{"A1"}, list{{"A1", "A", true}, {"A1", "B", true}}},
		{[]string{"A1A", "A1B"}, nil, list{{"A1", "A", false}, {"A1", "B", false}}},
		{[]string{"ST-1", "ST-2"}, nil, list{{"ST", "1", false}, {"ST", "2", false}}},
		{[]string{"ST-1"}, []string{"ST"}, list{{"ST", "1", true}}},
		{[]string{"X1-1"}, []string{"X1"}, list{{"X1", "1", true}}},
		{[]string{"AX3", "AX4-1+2"}, []string{"AX3", "AX4"}, list{{"AX3", "", true}, {"AX4", "1+2", true}}},
		{[]string{"A1"}, nil, list{none}},
		{[]string{"A12"}, []string{"A1"}, list{none}}, // not output 2 of A1
		{[]string{"Y1", "Y3"}, nil, list{none, none}}, // a gap
		{[]string{"Orangery", "Dome"}, []string{"O"}, list{none, none}},
		{[]string{"A1-2"}, []string{"A", "A1"}, list{{"A1", "2", true}}},
		{[]string{"", "3"}, []string{""}, list{none, none}},
	} {
		if d := cmp.Diff(tt.want, SplitOutputs(tt.names, tt.known)); d != "" {
			t.Errorf("SplitOutputs(%q, %q) -want +got\n%s", tt.names, tt.known, d)
		}
	}
}

func TestAmplifierOrOutput(t *testing.T) {
	for _, tt := range []struct {
		name         string
		names, known []string
		want         bool
	}{
		{"A1", nil, nil, true},
		{"A1", []string{"A1", "A2"}, nil, true},
		{"A1", []string{"A1", "A2"}, []string{"A"}, false},
		{"A1", nil, []string{"A1"}, false},
		{"3", nil, nil, false},
		{"Orangery", nil, nil, false},
	} {
		if got := AmplifierOrOutput(tt.name, tt.names, tt.known); got != tt.want {
			t.Errorf("AmplifierOrOutput(%q, %q, %q) = %v", tt.name, tt.names, tt.known, got)
		}
	}
}

func FuzzSplitOutputs(f *testing.F) {
	for _, s := range [][3]string{{"Y1", "Y2", "Y"}, {"A1A", "A1B", "A1"}, {"ST-1", "AX4-1+2", "AX4"}, {"É1", "é1", "É"}} {
		f.Add(s[0], s[1], s[2])
	}
	f.Fuzz(func(t *testing.T, a, b, known string) {
		names := []string{a, b}
		for i, s := range SplitOutputs(names, []string{known}) {
			if s.Amplifier == "" && (s.Output != "" || s.Sure) || len(s.Amplifier)+len(s.Output) > len(Clean(names[i])) {
				t.Fatalf("%q with %q: %+v", names, known, s)
			}
		}
	})
}
