package notation

import (
	"errors"
	"math"
	"testing"
)

func TestStatusOf(t *testing.T) {
	for _, tt := range []struct {
		in   string
		want Status
		sure bool
	}{
		{"installed", StatusInstalled, true}, {"in Betrieb", StatusInstalled, true}, {"in opera", StatusInstalled, true},
		{"NEW", StatusNew, true}, {"neu", StatusNew, true}, {"nouveau", StatusNew, true}, {"nieuw", StatusNew, true},
		{"existing", StatusExisting, true}, {"Bestand", StatusExisting, true}, {"existant", StatusExisting, true}, {"esistente", StatusExisting, true}, {"bestaand", StatusExisting, true}, {"existente", StatusExisting, true},
		{"(E) horn", StatusExisting, false}, {"N", StatusNew, false}, {"(R)", StatusRelocated, false}, {"horn (D)", StatusRemoved, false},
		{"relocated", StatusRelocated, true}, {"déplacé", StatusRelocated, true},
		{"spare", StatusSpare, true}, {"Ersatz", StatusSpare, true}, {"de rechange", StatusSpare, true}, {"repuesto", StatusSpare, true}, {"scorta", StatusSpare, true}, {"reserve", StatusSpare, false},
		{"future", StatusFuture, true}, {"Phase 2", StatusFuture, true}, {"zukünftig", StatusFuture, true}, {"futur", StatusFuture, true}, {"toekomstig", StatusFuture, true}, {"predisposizione", StatusFuture, true}, {"segunda fase", StatusFuture, true},
		{"DELETED", StatusRemoved, true}, {"cancelled", StatusRemoved, true}, {"entfällt", StatusRemoved, true}, {"supprimé", StatusRemoved, true}, {"anulado", StatusRemoved, true}, {"eliminato", StatusRemoved, true}, {"vervallen", StatusRemoved, true}, {"not installed", StatusRemoved, true},
		{"by others", StatusByOthers, true}, {"N.I.C.", StatusByOthers, true}, {"bauseits", StatusByOthers, true}, {"hors lot", StatusByOthers, true}, {"por otros", StatusByOthers, true}, {"a cura di altri", StatusByOthers, true}, {"door derden", StatusByOthers, true},
		{"stand-by", StatusStandby, true}, {"Havarieverstärker", StatusStandby, true},
		{"existing, to be removed", StatusRemoved, true},
		{"new, future phase 2", StatusFuture, true},
		{"no spare", StatusNone, false}, {"Ersatz vom 20.07.", StatusNone, false}, {"repuesto el 3/5", StatusNone, false}, {"jetés", StatusRemoved, true}, {"weggegooid", StatusRemoved, true},
		{"out of use", StatusRemoved, true}, {"not in use", StatusRemoved, true}, {"exist., taken down", StatusRemoved, true}, {"retiré", StatusRemoved, true}, {"ritirato", StatusRemoved, true},
		{"stillgelegt", StatusRemoved, true}, {"verwijderd", StatusRemoved, true}, {"déposés", StatusRemoved, true}, {"fuera de uso", StatusRemoved, true},
		{"no - next season", StatusFuture, true}, {"A-3 (à venir)", StatusFuture, true}, {"(sin etapa todavía)", StatusFuture, true}, {"noch nicht montiert", StatusFuture, true}, {"non ancora montato", StatusFuture, true},
		{"boxed, 2 off", StatusSpare, true}, {"LOOSE ON SHELF", StatusSpare, true}, {"HP en caisse", StatusSpare, true}, {"a magazzino", StatusSpare, true}, {"heads in the store", StatusNone, false},
		{"6 no. path lights - not ours", StatusByOthers, true}, {"werkplaats van derden", StatusByOthers, true}, {"di terzi", StatusByOthers, true},
		{"not out of use", StatusNone, false}, {"nicht stillgelegt", StatusNone, false}, {"non ritirato", StatusNone, false}, {"pas retiré", StatusNone, false}, {"niet verwijderd", StatusNone, false}, {"not boxed", StatusNone, false}, {"sin retirar", StatusNone, false},
		{"to be hung", StatusToFit, true}, {"wird montiert", StatusToFit, true}, {"à poser", StatusToFit, true}, {"da montare", StatusToFit, true}, {"se colocará", StatusToFit, true}, {"te plaatsen", StatusToFit, true}, {"pendiente", StatusToFit, true},
		{"à poser en 2027", StatusFuture, true}, {"kommt 2027", StatusFuture, true}, {"se montará en 2027", StatusFuture, true}, {"prévu 2028", StatusFuture, true}, {"posé en 2019", StatusInstalled, true}, {"retiré en 2019", StatusRemoved, true}, {"abgebaut 2020", StatusRemoved, true},
		{"", StatusNone, false}, {"horn", StatusNone, false}, {"Newton", StatusNone, false}, {"LS-1", StatusNone, false},
	} {
		if got, sure := StatusOf(tt.in); got != tt.want || sure != tt.sure {
			t.Errorf("StatusOf(%q) = %q, %v; want %q, %v", tt.in, got, sure, tt.want, tt.sure)
		}
	}
}

func TestEmergency(t *testing.T) {
	for _, tt := range []struct {
		in, kind string
		sure     bool
	}{
		{"Voice alarm zone 3", VoiceAlarm, true}, {"EN 54-16 rack", VoiceAlarm, true}, {"EN54", VoiceAlarm, true}, {"SAA", VoiceAlarm, true},
		{"Sprachalarmanlage", VoiceAlarm, true}, {"megafonía de emergencia", VoiceAlarm, true}, {"EVAC audio", VoiceAlarm, true}, {"NEN 2575", VoiceAlarm, true},
		{"EVAC", Evacuation, true}, {"évacuation", Evacuation, true}, {"evacuación", Evacuation, true}, {"evacuazione", Evacuation, true}, {"ontruiming", Evacuation, true}, {"Räumungsalarm", Evacuation, true},
		{"A/B circuits", ABCircuits, true}, {"A/B-Linien", ABCircuits, true}, {"lignes A/B", ABCircuits, true}, {"doppia linea", ABCircuits, true},
		{"VA", VoiceAlarm, false}, {"emergency exit corridor", Evacuation, false},
		{"Evacuee shed", "", false}, {"Ensemble room", "", false}, {"ses locaux", VoiceAlarm, false}, {"", "", false},
	} {
		got := Emergency(tt.in)
		if (len(got) == 0) != (tt.kind == "") || len(got) > 0 && (got[0].Kind != tt.kind || got[0].Sure != tt.sure) {
			t.Errorf("Emergency(%q) = %+v", tt.in, got)
		}
	}
}

func TestOverride(t *testing.T) {
	for _, tt := range []struct {
		in, kind      string
		sure, negated bool
	}{
		{"24V override relay", OverrideRelay, true, false}, {"24 V dc override", OverrideRelay, true, false}, {"priority relay", OverrideRelay, true, false},
		{"Pflichtempfang", OverrideRelay, true, false}, {"Notfallrelais", OverrideRelay, true, false}, {"Zwangsschaltung", OverrideRelay, true, false},
		{"relais de priorité", OverrideRelay, true, false}, {"forçage", OverrideRelay, true, false}, {"relé de prioridad", OverrideRelay, true, false}, {"relè di priorità", OverrideRelay, true, false}, {"noodomroeprelais", OverrideRelay, true, false},
		{"3-wire", OverrideThreeWire, true, false}, {"4 Draht", OverrideThreeWire, true, false}, {"3 fils", OverrideThreeWire, true, false}, {"quattro fili", OverrideThreeWire, true, false},
		{"relay", OverrideRelay, false, false},
		{"no override", OverrideRelay, true, true}, {"ohne Pflichtempfang", OverrideRelay, true, true}, {"sans forçage", OverrideRelay, true, true},
		{"volume control", "", false, false}, {"", "", false, false},
	} {
		got := Override(tt.in)
		if (len(got) == 0) != (tt.kind == "") || len(got) > 0 && (got[0].Kind != tt.kind || got[0].Sure != tt.sure || got[0].Negated != tt.negated) {
			t.Errorf("Override(%q) = %+v", tt.in, got)
		}
	}
}

func TestOffStep(t *testing.T) {
	for _, tt := range []struct {
		in          string
		has, stated bool
	}{
		{"10 step + off", true, true}, {"10-step plus off", true, true}, {"mit Nullstellung", true, true}, {"position arrêt", true, true},
		{"con apagado", true, true}, {"posizione spento", true, true}, {"uit-stand", true, true},
		{"no off position", false, true}, {"without off", false, true}, {"ohne Nullstellung", false, true}, {"sans arrêt", false, true}, {"zonder uit-stand", false, true},
		{"10 steps", false, false}, {"office", false, false}, {"", false, false},
	} {
		if has, stated := OffStep(tt.in); has != tt.has || stated != tt.stated {
			t.Errorf("OffStep(%q) = %v, %v", tt.in, has, stated)
		}
	}
}

func TestParseLevel(t *testing.T) {
	percent := func(p float64, d Doubts) Level { return Level{IsPercent: true, Percent: p, Doubts: d} }
	for _, tt := range []struct {
		in   string
		want Level
		err  error
	}{
		{"75 %", percent(75, 0), nil}, {"75%", percent(75, 0), nil}, {"77,5 %", percent(77.5, 0), nil}, {"75 per cent", percent(75, 0), nil}, {"75 Prozent", percent(75, 0), nil},
		{"100%", percent(100, 0), nil}, {"0 %", percent(0, 0), nil}, {"~75 %", percent(75, Approximate), nil},
		{"75", percent(75, Bare), nil}, {"0.75", percent(75, Bare), nil}, {"7/10", percent(70, 0), nil}, {"8 of 10", percent(80, 0), nil}, {"¾", percent(75, 0), nil},
		{"-6 dB", Level{DB: -6}, nil}, {"−6dB", Level{DB: -6}, nil}, {"- 3,5 dB", Level{DB: -3.5}, nil}, {"0 dB", Level{DB: 0}, nil}, {"6 dB", Level{DB: -6, Doubts: SignTaken}, nil},
		{"", Level{}, ErrEmpty}, {"TBC", Level{}, ErrMissing}, {"-75 %", Level{}, ErrNegative}, {"120 %", Level{}, ErrTooLarge}, {"-500 dB", Level{}, ErrTooLarge},
		{"75-80 %", Level{}, ErrAmbiguous}, {"full", Level{}, ErrNotUnderstood}, {"+3 dB", Level{}, ErrNotUnderstood}, {"5 W", Level{}, ErrNotUnderstood}, {"12/05/21", Level{}, ErrNotUnderstood},
	} {
		got, err := ParseLevel(tt.in, Auto)
		if !errors.Is(err, tt.err) || got.IsPercent != tt.want.IsPercent || math.Abs(got.Percent-tt.want.Percent) > 1e-9 || got.DB != tt.want.DB || got.Doubts != tt.want.Doubts {
			t.Errorf("ParseLevel(%q) = %+v, %v; want %+v, %v", tt.in, got, err, tt.want, tt.err)
		}
	}
}

func FuzzWords(f *testing.F) {
	for _, s := range []string{"existing, to be removed", "(E) horn", "no override", "10 step + off", "A/B circuits", "75 %", "-6 dB", "7/10"} {
		f.Add(s, byte(0))
	}
	f.Fuzz(func(t *testing.T, s string, b byte) {
		if status, _ := StatusOf(s); status != StatusNone && len(Statuses(s)) == 0 {
			t.Fatalf("%q: status %q without a mention", s, status)
		}
		for _, m := range append(Emergency(s), Override(s)...) {
			if m.Kind == "" || m.Text == "" {
				t.Fatalf("%q: %+v", s, m)
			}
		}
		if has, stated := OffStep(s); has && !stated {
			t.Fatalf("%q: has an OFF step and does not say so", s)
		}
		l, err := ParseLevel(s, Style(b%3))
		if err != nil {
			return
		}
		if !(l.Percent >= 0 && l.Percent <= 100) || !(l.DB <= 0 && l.DB >= -mostDB) {
			t.Fatalf("%q: %+v", s, l)
		}
		again, err := ParseLevel(l.String(), Point)
		if err != nil || again.IsPercent != l.IsPercent || math.Abs(again.Percent-l.Percent) > 1e-9 || again.DB != l.DB {
			t.Fatalf("%q: %+v prints as %q: %+v, %v", s, l, l.String(), again, err)
		}
	})
}

// Three watts are no third wire: "6 x 3W". A reading that this is an override hides that a control has none.
func TestWattsAreNoWires(t *testing.T) {
	for _, s := range []string{"6 x wall @ 3 W", "6 x 3W ceiling", "4W", "tapped 4 W"} {
		if m := Override(s); len(m) > 0 {
			t.Errorf("%q is taken for an override: %v", s, m)
		}
	}
	for _, s := range []string{"VC 50 W 3-wire", "regulador 3 hilos", "4-Draht"} {
		if len(Override(s)) == 0 {
			t.Errorf("%q is no override", s)
		}
	}
}
