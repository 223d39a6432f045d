package vocabulary

import (
	"slices"
	"strings"
	"testing"

	"lineaudit/ingest/remember"
	"unicode/utf8"
)

// Header spellings and what a service manager would take them for; from
// memory of schedules, no single source. Those marked unseen are not in
// headers.csv and must be understood from their parts.
var headerCases = []struct {
	header string
	want   Field
	unseen bool
}{
	// as they stand
	{"Tag", Tag, false}, {"Spkr #", Tag, false}, {"Repère", Tag, false}, {"BMK", Tag, false}, {"Sigla", Tag, false}, {"Etiqueta", Tag, false}, {"Kenmerk", Tag, false},
	{"Qty", Quantity, false}, {"Stk.", Quantity, false}, {"Qté", Quantity, false}, {"Cant.", Quantity, false}, {"Q.tà", Quantity, false}, {"Aantal", Quantity, false},
	{"Tap (W)", Tap, false}, {"Abgriff", Tap, false}, {"Puissance réglée", Tap, false}, {"Toma", Tap, false}, {"Presa", Tap, false}, {"Aftakking", Tap, false},
	{"Vol ctrl", Control, false}, {"Lautstärkeregler", Control, false}, {"Atténuateur", Control, false}, {"Atenuador", Control, false}, {"Attenuatore", Control, false}, {"Volumeregelaar", Control, false},
	{"Commandé par", Control, false}, {"Geregelt durch", Control, true}, {"Geregeld door", Control, true}, {"Ties to", Amplifier, true}, {"Tied to", Amplifier, true},
	{"Line V", LineVoltage, false}, {"Linienspannung", LineVoltage, false}, {"Tension de ligne", LineVoltage, false}, {"Tensión de línea", LineVoltage, false}, {"Tensione di linea", LineVoltage, false}, {"Lijnspanning", LineVoltage, false},
	{"€", Price, false}, {"AWG", Gauge, false}, {"mm²", Gauge, false}, {"m", Length, false},
	// case, accents, punctuation, order, number
	{"TAP-(w)", Tap, false}, {"puissance reglee", Tap, false}, {"REPERE", Tag, false}, {"voltage, line", LineVoltage, true}, {"no. cable", Cable, false}, {"Zonen", Zone, true}, {"zone(s)", Zone, true},
	{"LineVoltage", LineVoltage, false}, {"cable_length", Length, false}, {"TAP_WATTS", Tap, false}, {"Amp.-Nr.", Amplifier, true},
	// units
	{"Length (ft)", Length, true}, {"Länge [m]", Length, true}, {"Tap W @70V", Tap, true}, {"CSA mm²", Gauge, true}, {"Power/W", Tap, true}, {"Impedance in Ω", Impedance, true},
	{"Kabellänge in m", Length, true}, {"Sezione [mm²]", Gauge, false}, {"Cavo mm2", Gauge, true}, {"Ouput", Channel, true}, {"Kabel (mm²)", Gauge, true}, {"Cable AWG", Gauge, false}, {"Area m2", Ignored, true}, {"Surface (m²)", Ignored, true}, {"Floor area sq ft", Ignored, true}, {"Belasting regelaar (W)", ControlWatts, true},
	// abbreviations
	{"Spkr tap", Tap, true}, {"Ampl.", Amplifier, false}, {"Chnl", Channel, false}, {"Cbl lgth", Length, true}, {"Vol. ctl", Control, true}, {"Verst. Kan.", Channel, true}, {"Quersch.", Gauge, true},
	{"Attn rating", ControlWatts, true}, {"Lautspr. Leistg.", Tap, true},
	// misspelt
	{"Chanel", Channel, true}, {"Lenght", Length, true}, {"Amplifer", Amplifier, true}, {"Quantitiy", Quantity, true}, {"Atenuator", Control, true}, {"Lautstarkeregler", Control, false}, {"Impedence", Impedance, true},
	// compounds
	{"Lautsprecherleistung", Tap, false}, {"Verstärkerkanal", Channel, false}, {"Kabelquerschnitt", Gauge, false}, {"Lautsprecherabgriff", Tap, true}, {"Reglerbelastbarkeit", ControlWatts, false},
	{"Verstärkerkanalleistung", ChannelWatts, true}, {"Luidsprekervermogen", Tap, true}, {"Versterkerkanaal", Channel, false}, {"Kabellengte", Length, false}, {"Leitungslängen", Length, true},
	{"Zonenbezeichnung LS", Zone, true}, {"Zonenkürzel", Zone, true},
	// from their parts
	{"Wattage per loudspeaker", Tap, true}, {"Selected wattage", Tap, true}, {"Amplifier output no.", Channel, true}, {"Amplifier channel watts", ChannelWatts, true}, {"Rated power of control", ControlWatts, true},
	{"Length of cable", Length, true}, {"Number of units", Quantity, true}, {"Total of taps", TotalWatts, true}, {"Measured ohms", Measured, false}, {"Back box depth (mm)", BoxDepth, true},
	{"Puissance du haut-parleur", Tap, true}, {"Nombre de haut-parleurs", Quantity, true}, {"Section du conducteur", Gauge, true}, {"Puissance nominale atténuateur", ControlWatts, true},
	{"Potencia del altavoz", Tap, true}, {"Número de altavoces", Quantity, false}, {"Longitud del cable", Length, true}, {"Potencia nominal por canal", ChannelWatts, true},
	{"Potenza del diffusore", Tap, true}, {"Numero dei diffusori", Quantity, true}, {"Lunghezza del cavo", Length, true}, {"Potenza per canale (W)", ChannelWatts, true},
	{"Vermogen van luidspreker", Tap, true}, {"Lengte van kabel", Length, true}, {"Doorsnede kabel", Gauge, true}, {"Nummer versterker", Amplifier, true},
	{"q (mm²)", Gauge, true}, {"Z (Ω)", Impedance, true},
	{"% loaded", Ignored, false}, {"Load % of amp", Ignored, true}, {"No. of channels", ChannelCount, false}, {"Channel count of amp", ChannelCount, true},
}

func TestHeadersMeanFields(t *testing.T) {
	s := NewScorer()
	unseen := 0
	for _, tt := range headerCases {
		h := s.Header(tt.header)
		if best := h.Best(); best.Field != tt.want {
			// A second place is enough where the cells will tell: it must be close.
			if h.Of(tt.want) < best.Score-0.12 || h.Of(tt.want) < 0.5 {
				t.Errorf("%q reads as %s %.2f (%s), want %s (%.2f)", tt.header, best.Field, best.Score, best.Evidence, tt.want, h.Of(tt.want))
			}
		}
		if tt.unseen {
			unseen++
			if slices.ContainsFunc(lex().phrases[joined(split(tt.header))], func(p phrase) bool { return p.field == tt.want }) {
				t.Errorf("%q is marked unseen and stands in headers.csv", tt.header)
			}
		}
	}
	if 3*unseen < len(headerCases) {
		t.Errorf("%d of %d cases are unseen spellings, want a third", unseen, len(headerCases))
	}
}

func TestUnitsAndVoltsOfHeaders(t *testing.T) {
	for _, tt := range []struct {
		header, unit string
		volts        float64
		rest         string
	}{
		{"Length (ft)", "ft", 0, "Length"},
		{"Länge [m]", "m", 0, "Länge"},
		{"Tap W @70V", "W", 70, "Tap"},
		{"Tap @ 70.7 V (W)", "W", 70.7, "Tap"},
		{"Leistung bei 100 V", "", 100, "Leistung"},
		{"70V/100V", "", 0, "/"}, // two voltages: none is meant
		{"CSA mm²", "mm2", 0, "CSA"},
		{"Cable (AWG)", "AWG", 0, "Cable"},
		{"Power/W", "W", 0, "Power"},
		{"Price (€)", "money", 0, "Price"},
		{"Kabellänge in m", "m", 0, "Kabellänge"},
		{"Loss dB", "dB", 0, "Loss"},
		{"Level %", "%", 0, "Level"},
		{"Power (mW)", "mW", 0, "Power"},
		{"24V override", "", 0, "24V override"}, // no line has 24 V
		{"W", "W", 0, "W"},
		{"Room", "", 0, "Room"},
		{"From", "", 0, "From"},
	} {
		rest, unit, volts := measure(tt.header)
		if rest != tt.rest || unit != tt.unit || volts != tt.volts {
			t.Errorf("measure(%q) = %q, %q, %g, want %q, %q, %g", tt.header, rest, unit, volts, tt.rest, tt.unit, tt.volts)
		}
	}
}

// No tap is one of 70 W, and of 100 W hardly one; 25 and 50 may be watts.
func TestTapsAtBareVoltages(t *testing.T) {
	s := NewScorer()
	for header, volts := range map[string]float64{"Tap 70": 70, "Tap (70.7)": 70.7, "Tap @ 100": 100, "Abgriff 100": 100, "Tap 25": 0, "Zone 70": 0, "Tap 5": 0} {
		if h := s.Header(header); h.Volts != volts || volts > 0 && (h.Best().Field != Tap || h.Numbered) {
			t.Errorf("%q: %v at %g V, numbered %v", header, h.Best(), h.Volts, h.Numbered)
		}
	}
}

func TestUnitAgainstField(t *testing.T) {
	// A length is not measured in watts, a gauge not in volts.
	for _, tt := range []struct {
		f    Field
		unit string
		want float64
	}{{Length, "m", 1}, {Length, "W", 0.3}, {Gauge, "AWG", 1}, {Gauge, "V", 0.3}, {Tap, "", 1}, {Room, "W", 0.6}, {Amplifier, "W", 0.6}} {
		if got := Fits(tt.f, tt.unit); got != tt.want {
			t.Errorf("Fits(%s, %q) = %g, want %g", tt.f, tt.unit, got, tt.want)
		}
	}
}

func TestNoHeader(t *testing.T) {
	s := NewScorer()
	for _, text := range []string{"", "   ", "Orangery", "Palm house", "LS-12", "6W", "Fernery door", "Eisfläche", "Tropenhaus", "Nouvelle serre", strings.Repeat("tap ", 60)} {
		if b := s.Header(text).Best(); b.Score >= 0.55 && !s.Header(text).Numbered {
			t.Errorf("%q reads as a header for %s, %.2f (%s)", text, b.Field, b.Score, b.Evidence)
		}
	}
	if h := s.Header("Zone 3"); !h.Numbered {
		t.Error("Zone 3 is not marked as holding a number")
	}
}

func TestKnown(t *testing.T) {
	for text, want := range map[string]bool{"Tap (W)": true, "tap w": true, "REPÈRE": true, "Frobnicator": false, "Wattage per loudspeaker": false} {
		if Known(text) != want {
			t.Errorf("Known(%q) = %v", text, !want)
		}
	}
}

// Fields are ordered as their names are, and each has a name.
func TestFieldNames(t *testing.T) {
	for f := 1; f < Fields; f++ {
		if fieldNames[f-1] >= fieldNames[f] {
			t.Errorf("%q stands before %q", fieldNames[f-1], fieldNames[f])
		}
	}
}

func TestNamed(t *testing.T) {
	for text, want := range map[string]Field{"tap": Tap, "Line voltage": LineVoltage, "CHANNEL RATING": ChannelWatts, "ignored": Ignored} {
		if f, ok := Named(text); !ok || f != want {
			t.Errorf("Named(%q) = %q, %v", text, f, ok)
		}
	}
	if _, ok := Named("wattage"); ok {
		t.Error("a header word is no field name")
	}
}

// Every field has words in every language that schedules are read in, and the data is consistent.
func TestData(t *testing.T) {
	if _, err := loadLexicon(); err != nil {
		t.Fatal(err)
	}
	rows, err := records("headers.csv", 4)
	if err != nil {
		t.Fatal(err)
	}
	langs := map[string]map[string]bool{}
	for _, r := range rows {
		if langs[r[0]] == nil {
			langs[r[0]] = map[string]bool{}
		}
		langs[r[0]][r[1]] = true
	}
	for f, l := range langs {
		for _, want := range []string{"en", "de", "fr", "es", "it", "nl"} {
			if !l[want] {
				t.Errorf("%s has no words in %s", f, want)
			}
		}
	}
	concepts, err := records("concepts.csv", 3)
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range concepts {
		for w := range strings.SplitSeq(r[2], ";") {
			if strings.TrimSpace(w) == "" {
				t.Errorf("concept %s (%s) has an empty word", r[0], r[1])
			}
		}
	}
}

// Without its own entry in the list of headers, a header is still understood
// from the words it is made of: at least five of six in the whole list.
func TestUnderstandsWithoutTheList(t *testing.T) {
	full := lex()
	blind := *full
	blind.phrases, blind.stemmed, blind.sorted, blind.single = map[string][]phrase{}, map[string][]phrase{}, map[string][]phrase{}, map[string][]phrase{}
	keep := lex
	forget := func() { // what was made of texts with the other list
		headers = remember.New(8192, func(text string, _ int) *Header { return (&Scorer{}).read(text) })
		words = remember.New(16_384, func(text string, dotted int) reading { return lex().read(word{text, dotted == 1}) })
		conceptLists = remember.New(8192, func(text string, _ int) []string { return (&Scorer{}).concepts(text) })
	}
	lex = func() *lexicon { return &blind }
	forget()
	defer func() { lex = keep; forget() }()
	rows, err := records("headers.csv", 4)
	if err != nil {
		t.Fatal(err)
	}
	want := map[string]map[Field]bool{}
	for _, r := range rows {
		field, err := fieldOf(r[0])
		if err != nil {
			t.Fatal(err)
		}
		if field == Ignored {
			continue // lumens and postcodes are known by name or not at all
		}
		for x := range strings.SplitSeq(r[3], ";") {
			x = strings.TrimSpace(x)
			if want[x] == nil {
				want[x] = map[Field]bool{}
			}
			want[x][field] = true
		}
	}
	s := NewScorer()
	right := 0
	for x, fields := range want {
		h := s.Header(x)
		for i, c := range h.Candidates {
			if i < 4 && fields[c.Field] && c.Score >= 0.4 && c.Score > h.Best().Score-0.25 {
				right++
				break
			}
		}
	}
	t.Logf("%d of %d headers understood from their parts", right, len(want))
	if 6*right < 5*len(want) {
		t.Errorf("%d of %d headers understood from their parts, want five of six", right, len(want))
	}
}

func TestDistance(t *testing.T) {
	for _, tt := range []struct {
		a, b  string
		limit int
		want  int
	}{{"lenght", "length", 2, 1}, {"chanel", "channel", 2, 1}, {"zone", "zone", 1, 0}, {"zone", "room", 2, 3}, {"", "ab", 3, 2}, {"amplifer", "amplifier", 2, 1}} {
		if got := distance(tt.a, tt.b, tt.limit); got != tt.want {
			t.Errorf("distance(%q, %q, %d) = %d, want %d", tt.a, tt.b, tt.limit, got, tt.want)
		}
		if a, b := distance(tt.a, tt.b, tt.limit), distance(tt.b, tt.a, tt.limit); a != b {
			t.Errorf("distance of %q and %q differs by direction: %d, %d", tt.a, tt.b, a, b)
		}
	}
}

func TestFold(t *testing.T) {
	for in, want := range map[string]string{"Nº Câble": "no cable", "  Größe—(m²) ": "grosse m2", "Œuvre": "oeuvre", "e\u0301tage": "etage", "Ω": "ohm", "": "", "№ 3": "no 3"} {
		if got := Fold(in); got != want {
			t.Errorf("Fold(%q) = %q, want %q", in, got, want)
		}
	}
}

func FuzzHeader(f *testing.F) {
	for _, tt := range headerCases {
		f.Add(tt.header)
	}
	f.Add("(((")
	f.Add("70V 100V 25 V@@@")
	f.Fuzz(func(t *testing.T, s string) {
		h := NewScorer().Header(s)
		last := 2.0
		for _, c := range h.Candidates {
			if !(c.Score >= 0 && c.Score <= 1) || c.Score > last || c.Field == Unknown {
				t.Fatalf("Header(%q): candidate %+v after %g", s, c, last)
			}
			last = c.Score
		}
		if utf8.ValidString(s) && Fold(Fold(s)) != Fold(s) {
			t.Fatalf("Fold is not stable on %q: %q, %q", s, Fold(s), Fold(Fold(s)))
		}
	})
}

func BenchmarkHeader(b *testing.B) {
	for b.Loop() {
		s := NewScorer()
		for _, tt := range headerCases {
			s.Header(tt.header)
		}
	}
}
