package notation

import "testing"

func TestAnswerOf(t *testing.T) {
	for in, want := range map[string]Answer{"Yes": Yes, "ja": Yes, " Oui ": Yes, "Sí": Yes, "x": Yes, "✓": Yes, "1": Yes, "No": No, "ohne": No, "senza": No, "✗": No, "0": No, "sí / yes": Yes, "Nein/Non": No, "yes / no": NoAnswer, "1/1": NoAnswer,
		"": NoAnswer, "VC-1": NoAnswer, "no idea": NoAnswer, "10 W": NoAnswer,
		"sin regulador": No, "sans attén.": No, "ohne Regler": No, "geen regelaar": No, "no local control": No, "direkt, kein Regler": No, "ungeregelt": No, "pas de réglage": No,
		"VC no 4": NoAnswer, "no access": NoAnswer, "no VC, 10 W": NoAnswer, "Regler, ohne": NoAnswer} {
		if got := AnswerOf(in); got != want {
			t.Errorf("AnswerOf(%q) = %v, want %v", in, got, want)
		}
	}
}
