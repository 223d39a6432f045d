package notation

import (
	"slices"
	"testing"
)

// The notes are common practice, no source.
func TestParseCableNote(t *testing.T) {
	for _, tt := range []struct {
		in, size string
		except   []NamedSize
	}{
		{"All wire 16/2", "16/2", nil},
		{"All wire 16/2 except Z4 18/2", "16/2", []NamedSize{{"Z4", "18/2"}}},
		{"All cable 2 x 1.5 mm²", "2 x 1.5 mm2", nil},
		{"All speaker wiring to be 14 AWG 2-conductor", "14 AWG", nil},
		{"Kabel durchgehend 2x1,5 mm²", "2x1,5 mm2", nil},
		{"Loudspeaker cable 2.5 mm² copper unless noted", "2.5 mm2", nil},
		{"Câblage en 2x2,5 mm² sauf indication contraire", "2x2,5 mm2", nil},
		{"Alle Leitungen 2x1,5 mm² außer Tribüne Ost 2x2,5 mm²", "2x1,5 mm2", []NamedSize{{"Tribüne Ost", "2x2,5 mm2"}}},
	} {
		got, err := ParseCableNote(tt.in, Auto)
		if err != nil || got.Size != tt.size || !slices.Equal(got.Except, tt.except) {
			t.Errorf("%s: %+v, %v", tt.in, got, err)
		}
	}
	for _, in := range []string{"Cable from rack to JB1 2.5 mm²", "All wire by others", "Horns 16/2", "New 14/2 wire to the slip", "2 x 1.5 mm²", "Cable 40 m", "All speakers 5 W", "Wire 16"} {
		if got, err := ParseCableNote(in, Auto); err == nil {
			t.Errorf("%s: %+v", in, got)
		}
	}
}

func FuzzParseCableNote(f *testing.F) {
	for _, s := range []string{"All wire 16/2 except Z4 18/2", "Kabel 2x1,5 mm²", "except", ""} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		note, err := ParseCableNote(s, Auto)
		if err != nil {
			return
		}
		if _, err := ParseConductor(note.Size, Auto, HintNone); err != nil {
			t.Errorf("%q: size %q: %v", s, note.Size, err)
		}
	})
}
