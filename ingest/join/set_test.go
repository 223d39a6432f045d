package join

import (
	"math/rand/v2"
	"slices"
	"strings"
	"testing"
	"time"
)

func TestParse(t *testing.T) {
	for _, tt := range []struct {
		kind          Kind
		in            string
		number, title string
	}{
		{Zone, "Zone 1", "1", ""},
		{Zone, "Z-01", "1", ""},
		{Zone, "Z1", "1", ""},
		{Zone, "1 - Orangery", "1", "orangery"},
		{Zone, "Orangery (Z1)", "1", "orangery"},
		{Zone, "Orangery", "", "orangery"},
		{Zone, "Rink 2", "", "rink 2"},
		{Zone, "Zone 3 Rink 2", "3", "rink 2"},
		{Zone, "2 - Rink 2", "2", "rink 2"},
		{Zone, "Rufkreis 4", "4", ""},
		{Zone, "Zone", "", "zone"},
		{Zone, "1st floor", "", "1 st floor"},
		{Zone, "Zone 2b", "2b", ""},
		{Zone, "Zone Nr. 7", "7", ""},
		{Amplifier, "AMP 1", "1", ""},
		{Amplifier, "A1", "1", ""},
		{Amplifier, "PA-02", "2", ""},
		{Amplifier, "N1", "", "n 1"}, {Amplifier, "n° 1", "1", ""},
		{Amplifier, "Verstärker 3", "3", ""},
		{Control, "VC-3", "3", ""},
		{Control, "Lautstärkeregler 3", "3", ""},
		{Control, "WK-35", "", "wk 35"},
		{Channel, "CH 4", "4", ""},
		{Channel, "B", "", "b"},
	} {
		n := Parse(tt.kind, tt.in)
		if n.Number != tt.number || n.Title != tt.title {
			t.Errorf("Parse(%d, %q) = number %q, title %q; want %q, %q", tt.kind, tt.in, n.Number, n.Title, tt.number, tt.title)
		}
	}
}

// add fills a set: names with a + in front are defined in table 1, with ++ in table 2.
func filled(kind Kind, names []string, r *rand.Rand) *Set {
	names = slices.Clone(names)
	r.Shuffle(len(names), func(i, j int) { names[i], names[j] = names[j], names[i] })
	s := NewSet(kind)
	for _, n := range names {
		switch {
		case len(n) > 2 && n[:2] == "++":
			s.Add(n[2:], 2)
		case n[0] == '+':
			s.Add(n[1:], 1)
		default:
			s.Add(n, 0)
		}
	}
	s.Settle()
	return s
}

func TestSet(t *testing.T) {
	for _, tt := range []struct {
		name  string
		kind  Kind
		names []string
		ask   string
		want  string // the name found
		match Match
	}{
		{"the same", Zone, []string{"+Zone 1", "zone 1 "}, "ZONE 1", "Zone 1", Same},
		{"another word for zone", Zone, []string{"+Zone 1", "+Zone 2", "Z-01"}, "Z-01", "Zone 1", Reduced},
		{"number meets number and title", Zone, []string{"+1 - Orangery", "+2 - Foyer", "Zone 1"}, "Zone 1", "1 - Orangery", Reduced},
		{"title meets number and title", Zone, []string{"+1 - Orangery", "+2 - Foyer", "Foyer"}, "Foyer", "2 - Foyer", Reduced},
		{"two titles with one number", Zone, []string{"+1 - Orangery", "+1 - Foyer", "Zone 1"}, "Zone 1", "Zone 1", Unclear},
		{"a misspelling", Zone, []string{"+Orangery", "+Foyer", "Orangrey"}, "Orangrey", "Orangery", Guessed},
		{"numbers are never misspelt", Zone, []string{"+Rink 12", "+Foyer", "Rink 13"}, "Rink 13", "Rink 13", Dangling},
		{"opposites are no misspellings", Zone, []string{"+Rink bowl west", "+Foyer", "Rink bowl east"}, "Rink bowl east", "Rink bowl east", Dangling},
		{"nor are opposites in compounds", Zone, []string{"+Northeast stand", "Southeast stand"}, "Southeast stand", "Southeast stand", Dangling},
		{"nor are short words", Zone, []string{"+Saal N", "+Foyer", "Saal S"}, "Saal S", "Saal S", Dangling},
		{"a misspelling among words", Zone, []string{"+Orangery north", "+Foyer", "Orangrey north"}, "Orangrey north", "Orangery north", Guessed},
		{"an abbreviation", Zone, []string{"+Palm House", "+Foyer", "Palm Hse", "Pal. Hou."}, "Pal. Hou.", "Palm House", Guessed},
		{"two that are alike", Zone, []string{"+Boathouse A", "+Boathouse B", "Boathouse"}, "Boathouse", "Boathouse", Unclear},
		{"different things of one table stay apart", Amplifier, []string{"+A1", "+PA1", "1"}, "1", "1", Unclear},
		{"amplifiers", Amplifier, []string{"+AMP 01", "+AMP 02", "A2"}, "A2", "AMP 02", Reduced},
		{"a bare number behind a foreign prefix", Amplifier, []string{"+DX-1", "+DX-2", "2"}, "2", "DX-2", Reduced},
		{"two tables define one", Zone, []string{"+Zone 1", "++Z1"}, "Zone 1", "Z1", Reduced},
		{"nothing defined", Zone, []string{"Zone 1", "Z1", "Z2"}, "Zone 1", "Z1", Reduced},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := rand.New(rand.NewPCG(1, 2))
			for range 20 {
				f := filled(tt.kind, tt.names, r).Find(tt.ask)
				if f.Match == Unclear && len(f.Between) < 2 {
					t.Errorf("%q is unclear between %v", tt.ask, f.Between)
				}
				if tt.match != Unclear && Parse(tt.kind, f.Name).Full != Parse(tt.kind, tt.want).Full || f.Match != tt.match {
					t.Fatalf("Find(%q) = %q, match %d; want %q, %d", tt.ask, f.Name, f.Match, tt.want, tt.match)
				}
			}
		})
	}
}

func TestAlias(t *testing.T) {
	s := NewSet(Zone)
	s.Alias("Z1", "Orangery", 1)
	s.Alias("Z2", "Main hall", 1)
	s.Alias("Z3", "Main hall", 1)
	s.Add("orangery", 0)
	s.Settle()
	if a, b := s.Find("Orangery"), s.Find("Zone 1"); a.Key != s.Find("Z1").Key || b.Key != "" {
		t.Errorf("Orangery is %+v, a name never added %+v", a, b)
	}
	if f := s.Find("Main hall"); f.Match != Unclear || len(f.Between) != 2 {
		t.Errorf("Main hall is %+v, want unclear between two", f)
	}
	if s.Find("Z2").Key == s.Find("Z3").Key {
		t.Error("a shared title made one zone of two")
	}
}

func FuzzParse(f *testing.F) {
	for _, s := range []string{"Zone 1", "1 - Orangery", "Größe 0", "A1.2", "½", "+", "WK-35+"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		for k := Plain; k <= Rack; k++ {
			n := Parse(k, s)
			if again := Parse(k, n.Full); again.Full != n.Full {
				t.Errorf("the key %q of %q has the key %q", n.Full, s, again.Full)
			}
			if n.Full != Key(s) {
				t.Errorf("Parse and Key of %q disagree: %q, %q", s, n.Full, Key(s))
			}
		}
	})
}

// A name of many thousand words is no more than itself, and costs no more.
func TestEndlessName(t *testing.T) {
	long := strings.Repeat("LS-1, ", 100_000)
	start := time.Now()
	n := Parse(Zone, long)
	if n.Title != n.Full || n.Number != "" {
		t.Errorf("number %q of a name without end", n.Number)
	}
	if took := time.Since(start); took > 5*time.Second {
		t.Errorf("it took %v", took)
	}
}

// The number of a code is no bare number: control VR1 is not amplifier V1.
func TestCodesThatShareANumber(t *testing.T) {
	s := NewSet(Amplifier)
	for _, n := range []string{"V1", "V2"} {
		s.Add(n, 0)
	}
	for _, n := range []string{"VR1", "VR2"} {
		s.Add(n, 0)
	}
	s.Settle()
	if a, b := s.Find("V1"), s.Find("VR1"); a.Key == b.Key {
		t.Errorf("V1 and VR1 are both %q", a.Key)
	}
}
