package notation

import "testing"

func TestAnswerOf(t *testing.T) {
	for in, want := range map[string]Answer{"Yes": Yes, "ja": Yes, " Oui ": Yes, "Sí": Yes, "x": Yes, "✓": Yes, "1": Yes, "No": No, "ohne": No, "senza": No, "✗": No, "0": No, "sí / yes": Yes, "Nein/Non": No, "yes / no": NoAnswer, "1/1": NoAnswer,
		"": NoAnswer, "VC-1": NoAnswer, "no idea": NoAnswer, "10 W": NoAnswer} {
		if got := AnswerOf(in); got != want {
			t.Errorf("AnswerOf(%q) = %v, want %v", in, got, want)
		}
	}
}
