package notation

import (
	"errors"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

func TestParseTags(t *testing.T) {
	ls := func(prefix string, digits ...string) []string {
		var out []string
		for _, d := range digits {
			out = append(out, prefix+d)
		}
		return out
	}
	for _, tt := range []struct {
		in     string
		want   []string
		ranged bool
		doubts Doubts
	}{
		{"LS-1", []string{"LS-1"}, false, 0},
		{"LS-01", []string{"LS-01"}, false, 0},
		{"Z1-LS4", []string{"Z1-LS4"}, false, 0},
		{"S-C 8", []string{"S-C 8"}, false, 0}, // public schedules survey: a stadium bid
		{"C-1NH1-A", []string{"C-1NH1-A"}, false, 0},
		{"LS1", []string{"LS1"}, false, 0},
		{"Palm House horn", []string{"Palm House horn"}, false, 0},
		{"LS-1..LS-8", ls("LS-", "1", "2", "3", "4", "5", "6", "7", "8"), true, 0},
		{"LS-1…LS-3", ls("LS-", "1", "2", "3"), true, 0},
		{"LS1 to LS3", ls("LS", "1", "2", "3"), true, 0},
		{"SP-01 to SP-03", ls("SP-", "01", "02", "03"), true, 0},
		{"LS-01 bis LS-03", ls("LS-", "01", "02", "03"), true, 0},
		{"LS1 à LS3", ls("LS", "1", "2", "3"), true, 0},
		{"LS1 a LS3", ls("LS", "1", "2", "3"), true, 0},
		{"LS1 t/m LS3", ls("LS", "1", "2", "3"), true, 0},
		{"LS1 thru 3", ls("LS", "1", "2", "3"), true, 0},
		{"LS8 to LS11", ls("LS", "8", "9", "10", "11"), true, 0},
		{"LS08-LS11", ls("LS", "08", "09", "10", "11"), true, 0},
		{"S101-S103, S110", ls("S", "101", "102", "103", "110"), true, 0},
		{"S101–S103", ls("S", "101", "102", "103"), true, 0},
		{"LS-1 - LS-3", ls("LS-", "1", "2", "3"), true, 0},
		{"LS-1-LS-3", ls("LS-", "1", "2", "3"), true, 0},
		{"Z1-LS1..Z1-LS3", ls("Z1-LS", "1", "2", "3"), true, 0},
		{"S101-103", ls("S", "101", "102", "103"), true, 0},
		{"LS1-3", ls("LS", "1", "2", "3"), true, RangeOrTag},
		{"1-3", ls("", "1", "2", "3"), true, DateOrPair},
		{"LS1a-LS1c", ls("LS1", "a", "b", "c"), true, 0},
		{"SPK 1/2/3", ls("SPK ", "1", "2", "3"), false, 0},
		{"SP1,3,5", ls("SP", "1", "3", "5"), false, 0},
		{"SP1-SP3, 7", ls("SP", "1", "2", "3", "7"), true, 0},
		{"LS1 & LS2", ls("LS", "1", "2"), false, 0},
		{"LS1 and LS2", ls("LS", "1", "2"), false, 0},
		{"LS1 und LS2", ls("LS", "1", "2"), false, 0},
		{"LS1+LS2", ls("LS", "1", "2"), false, 0},
		{"C-001;C-002", ls("C-", "001", "002"), false, 0}, // public schedules survey: a cable schedule
		{"LS1\nLS2", ls("LS", "1", "2"), false, 0},
		{"LS1 LS2 LS3", ls("LS", "1", "2", "3"), false, 0},
		{"1, 2, 3", ls("", "1", "2", "3"), false, 0},
		{"12", []string{"12"}, false, 0},
	} {
		t.Run(tt.in, func(t *testing.T) {
			got, err := ParseTags(tt.in)
			if err != nil {
				t.Fatal(err)
			}
			if d := cmp.Diff(Tags{tt.want, tt.ranged, tt.doubts}, got); d != "" {
				t.Errorf("-want +got\n%s", d)
			}
		})
	}
	for in, want := range map[string]error{
		"": ErrEmpty, "-": ErrMissing, "-do-": ErrDitto, "LS8..LS1": ErrNotUnderstood, "LS1..SP8": ErrNotUnderstood,
		"LS1 to LS99999": ErrTooLarge, "LS1..LS10001": ErrTooLarge, "LS..SP": ErrNotUnderstood, "…": ErrMissing,
		strings.Repeat("very long prose ", 20): ErrNotUnderstood,
	} {
		if got, err := ParseTags(in); !errors.Is(err, want) {
			t.Errorf("ParseTags(%q) = %d tags, %v; want %v", in, len(got.List), err, want)
		}
	}
	if got, err := ParseTags("LS1..LS10000"); err != nil || len(got.List) != MaxTags {
		t.Errorf("the most tags: %d, %v", len(got.List), err)
	}
}

// A list with an exception; common practice, no source.
func TestParseTagsExcept(t *testing.T) {
	for _, in := range []string{"LS-20..LS-24 less LS-22", "LS-20 to LS-24 excl. 22", "LS-20..LS-24 (not LS-22)", "LS-20..24 ohne LS-22", "LS-20 à LS-24 sauf LS-22", "LS-20 a LS-24 excepto LS-22", "LS-20..LS-24 escluso LS-22", "LS-20 t/m LS-24 behalve 22"} {
		got, err := ParseTags(in)
		if want := "LS-20; LS-21; LS-23; LS-24"; err != nil || got.String() != want {
			t.Errorf("%q: %v, %v; want %s", in, got, err, want)
		}
	}
	for _, in := range []string{"LS-20..LS-24 less LS-30", "LS-1 less LS-1"} {
		if got, err := ParseTags(in); err == nil {
			t.Errorf("%q: %v", in, got)
		}
	}
	for _, in := range []string{"LS-1 ÷ LS-3", "LS-1 au LS-3", "LS-1 t.e.m. LS-3", "LS-1 ~ LS-3"} {
		if got, err := ParseTags(in); err != nil || len(got.List) != 3 {
			t.Errorf("%q: %v, %v", in, got, err)
		}
	}
}

func FuzzParseTags(f *testing.F) {
	for _, s := range []string{"LS-1..LS-8", "S101-S108, S110", "SPK 1/2/3", "SP1,3,5", "LS1a-LS1d", "LS1 t/m LS3", "C-001;C-002", "LS1 LS2", "1-6", "LS1-8"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		tags, err := ParseTags(s)
		if err != nil {
			return
		}
		if n := len(tags.List); n == 0 || n > MaxTags {
			t.Fatalf("%q: %d tags", s, n)
		}
		for _, tag := range tags.List {
			if !hasAlnum(tag) {
				t.Fatalf("%q: tag %q", s, tag)
			}
		}
		if len(tags.List) > 200 {
			return
		}
		again, err := ParseTags(tags.String())
		if d := cmp.Diff(tags.List, again.List); err != nil || d != "" {
			t.Fatalf("%q: %q prints as %q: %v %s", s, tags.List, tags.String(), err, d)
		}
	})
}
