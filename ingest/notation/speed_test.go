package notation

import "testing"

// A schedule has tens of thousands of cells, and each may be tried as several
// things.
func BenchmarkParsers(b *testing.B) {
	for _, bench := range []struct {
		name, in string
		parse    func(string) error
	}{
		{"clean", "7.5 W", func(s string) error { Clean(s); return nil }},
		{"tap", "7.5 W @ 70V", func(s string) error { _, err := ParseTap(s, Point); return err }},
		{"tap list", "30/15/7.5 → 15", func(s string) error { _, err := ParseTap(s, Point); return err }},
		{"quantity", "4 no.", func(s string) error { _, err := ParseQuantity(s, Point); return err }},
		{"length", "85'-6\"", func(s string) error { _, err := ParseLength(s, Point, Foot); return err }},
		{"conductor", "2x2,5 mm² LSZH", func(s string) error { _, err := ParseConductor(s, Comma, HintNone); return err }},
		{"gauge", "16/2", func(s string) error { _, err := ParseConductor(s, Point, HintAWG); return err }},
		{"rating", "4 x 250W @70V", func(s string) error { _, err := ParseRating(s, Point); return err }},
		{"channel", "AMP 1 CH B", func(s string) error { _, err := ParseChannel(s); return err }},
		{"tags", "LS-01..LS-08", func(s string) error { _, err := ParseTags(s); return err }},
		{"key", "Zone 1 - Orangery", func(s string) error { KeyOf(s); return nil }},
		{"missing", "to be confirmed", func(s string) error { Missing(s); return nil }},
		{"status", "existing, to be removed", func(s string) error { StatusOf(s); return nil }},
	} {
		b.Run(bench.name, func(b *testing.B) {
			for b.Loop() {
				if err := bench.parse(bench.in); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
