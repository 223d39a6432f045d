package notation

import (
	"testing"
	"unicode/utf8"
)

func TestClean(t *testing.T) {
	for _, tt := range []struct{ name, in, want string }{
		{"plain", "5 W", "5 W"},
		{"no-break and thin spaces", "1\u00a0200\u202f\u2009m", "1 200 m"},
		{"zero width and byte order mark", "\ufeff5\u200bW", "5W"},
		{"direction marks", "\u200f5 W\u200e", "5 W"},
		{"full width", "５．５Ｗ", "5.5W"},
		{"half", "½ W", "1\u20442 W"},
		{"one and a half", "1½ W", "1 1\u20442 W"},
		{"ohm sign", "8\u2126", "8Ω"},
		{"micro sign", "µ", "μ"},
		{"primes", "85′-6″", `85'-6"`},
		{"curly quotes", "120’ “A”", `120' "A"`},
		{"two apostrophes", "6''", `6"`},
		{"multiplication sign", "2×6", "2x6"},
		{"dashes", "6–10—12−3", "6-10-12-3"},
		{"raised 2 after a letter", "2.5 mm²", "2.5 mm2"},
		{"raised 2 after a figure", "2×1.5²", "2x1.5²"},
		{"caret", "2.5 mm^2", "2.5 mm2"},
		{"one-character square millimetre", "2.5 ㎟", "2.5 mm2"},
		{"arrow", "30/15 -> 15", "30/15 → 15"},
		{"line break", "LS1\r\nLS2", "LS1\nLS2"},
		{"spaces around a line break", "LS1 \n LS2", "LS1\nLS2"},
		{"outer spaces", "  5 W\t", "5 W"},
		{"decomposed accent", "re\u0301gle", "régle"},
		{"invalid bytes", "5\xff W", "5 W"},
		{"damaged ohm sign", "4õ", "4Ω"},
		{"an õ in a word", "Salão 4", "Salão 4"},
		{"blank", " \u00a0\t", ""},
	} {
		t.Run(tt.name, func(t *testing.T) {
			if got := Clean(tt.in); got != tt.want {
				t.Errorf("Clean(%q) = %q, want %q", tt.in, got, tt.want)
			}
		})
	}
}

func FuzzClean(f *testing.F) {
	for _, s := range []string{"5 W", "1½", "mm²", "6''", "=>", "=\u200b>", "e\u0301", "㎟", "\xff", "' '"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		once := Clean(s)
		if twice := Clean(once); twice != once {
			t.Fatalf("Clean(%q) = %q, again %q", s, once, twice)
		}
		if !utf8.ValidString(once) {
			t.Fatalf("Clean(%q) = %q is not UTF-8", s, once)
		}
	})
}
