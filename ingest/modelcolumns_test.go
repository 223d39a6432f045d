package ingest

import (
	"testing"

	"lineaudit/ingest/layout"
)

// A control that is called after one of the rooms it serves is one control, for all its
// rooms; a kind of control is one for each room.
func TestControlsCalledByPlaces(t *testing.T) {
	for _, tt := range []struct {
		name, rows string
		want       []string
	}{
		{"a room", "Skate hire | 4 | 6 | Skate hire 36W\nChanging rooms | 4 | 3 | Skate hire 36W", []string{"Skate hire 36"}},
		{"a word of the room", "Changing village | 4 | 3 | VILLAGE 35W\nGroup changing | 4 | 3 | VILLAGE 35W\nFoyer | 2 | 3 | FOYER 10 W", []string{"VILLAGE 35", "FOYER 10"}},
		{"with a word for controls", "Tienda | 4 | 6 | Mando tienda 30 W\nAlmacén | 1 | 3 | Mando tienda 30 W", []string{"Mando tienda 30"}},
		{"part of a compound", "Schaatsverhuur | 4 | 6 | Regelaar verhuur 35 W\nSlijperij | 2 | 6 | Regelaar verhuur 35 W", []string{"Regelaar verhuur 35"}},
		{"a model", "Skate hire | 4 | 6 | Rotary 36W\nChanging rooms | 4 | 3 | Rotary 36W", []string{"Rotary (Skate hire) 36", "Rotary (Changing rooms) 36"}},
		{"a word of every room", "Hall A | 4 | 6 | Hall 36W\nHall B | 4 | 3 | Hall 36W", []string{"Hall (Hall A) 36", "Hall (Hall B) 36"}},
	} {
		j := jobOf(t, draw(layout.Loudspeakers, "L", "room | quantity | tap[W] | control\n"+tt.rows))
		var got []string
		for _, c := range j.Controls {
			got = append(got, c.Name+" "+show(c.Rated))
		}
		want(t, tt.name, got, tt.want)
	}
}
