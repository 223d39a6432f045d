package ingest

import (
	"strings"
	"testing"

	"lineaudit/ingest/layout"
)

// Remarks tell what became of a tap. Common practice in six languages, no source.
func TestTapsInRemarks(t *testing.T) {
	for _, tt := range []struct {
		tap, remark, want string
		asked             int
	}{
		{"10", "set to 5 W since Mar 2019", "6 x 5 W", 0},
		{"10", "auf 5 W umgestellt auf 5 W", "6 x 5 W", 0},
		{"10/5/2.5 W", "réglé sur 5 W", "6 x 5 W", 0},
		{"10/5/2.5 W", "volle Leistung", "6 x 10 W", 0},
		{"10/5/2.5 W", "a media potencia", "6 x 5 W", 0},
		{"10", "2 of them now 5 W", "2 x 5 W, 4 x 10 W", 0},
		{"10", "should be set to 5 W", "6 x 10 W", 1},
		{"10", "volume control set to 5 W", "6 x 10 W control control (Deck)", 0},
		{"10", "full power", "6 x 10 W", 0},
		{"10", "was 15 W", "6 x 10 W", 0},
		{"", "tapped at 5 W", "6 x 5 W", 0},
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "Heads", "room | quantity | tap[W] | notes\nDeck | 6 | "+tt.tap+" | "+tt.remark+"\nShop | 2 | 3 |"))
		got := ""
		for _, l := range describe(j)[:len(j.Loudspeakers)-1] {
			if got != "" {
				got += ", "
			}
			got += strings.Replace(l, " zone Deck", "", 1)
		}
		if got != tt.want || len(j.Questions) != tt.asked {
			t.Errorf("%s, %s: got %s, asked %v; want %s", tt.tap, tt.remark, got, asked(j), tt.want)
		}
	}
}
