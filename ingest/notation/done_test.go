package notation

import "testing"

// From memory, no source.
func TestDoneOf(t *testing.T) {
	for in, want := range map[string]Answer{"done": Yes, "Retapped - OK": Yes, "erledigt": Yes, "ja": Yes, "fait le 12/3": Yes, "hecho": Yes, "fatto": Yes, "gedaan": Yes, "✓": Yes, "x": Yes,
		"not done": No, "NOT YET DONE": No, "Open": No, "to do": No, "noch nicht": No, "nein": No, "noch nicht erledigt": No, "à faire": No, "pas fait": No, "sin hacer": No, "pendiente": No, "da fare": No,
		"nog niet": No, "te doen": No, "✗": No, "ok, noch nicht umgeklemmt": No, "not finished": No,
		"": NoAnswer, "see sheet 2": NoAnswer, "LS-1": NoAnswer, "5 W": NoAnswer} {
		if got := DoneOf(in); got != want {
			t.Errorf("DoneOf(%q) = %v, want %v", in, got, want)
		}
	}
}

func TestUnchanged(t *testing.T) {
	for in, want := range map[string]bool{"NC": true, "no change": true, "unverändert": true, "inchangé": true, "sin cambio": true, "invariato": true, "ongewijzigd": true,
		"changed": false, "NC-12": false, "no change needed to VC1": false, "": false, "5": false} {
		if got := Unchanged(in); got != want {
			t.Errorf("Unchanged(%q) = %v", in, got)
		}
	}
}
