package notation

import (
	"errors"
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
)

// The sentences are common practice, no source.
func TestParseRatingSentence(t *testing.T) {
	n := func(name string, outputs int, w float64, at ...float64) RatedAmplifier {
		return RatedAmplifier{Name: name, Outputs: outputs, W: w, PerOutput: true, AtV: at}
	}
	ways := func(name string, at []float64, list ...NamedWatts) RatedAmplifier {
		return RatedAmplifier{Name: name, AtV: at, Ways: list}
	}
	at100 := []float64{100}
	for _, tt := range []struct {
		in   string
		want []RatedAmplifier
	}{
		{"PA1: two outputs, 60W each", []RatedAmplifier{n("PA1", 2, 60)}},
		{"amp rack A1 (outputs 1 to 3, 120 W each)", []RatedAmplifier{ways("A1", nil, NamedWatts{"1", 120}, NamedWatts{"2", 120}, NamedWatts{"3", 120})}},
		{"Una potencia de 180 W, línea de 100 V", []RatedAmplifier{{W: 180, AtV: at100}}},
		{"AMP 2 CH B - 125W", []RatedAmplifier{ways("2", nil, NamedWatts{"B", 125})}},
		{"Verstärker 2 Ausgang B: 125 W", []RatedAmplifier{ways("2", nil, NamedWatts{"B", 125})}},
		{"Ampli 2 sortie 1 : 60 W", []RatedAmplifier{ways("2", nil, NamedWatts{"1", 60})}},
		{"Amp 2 ch 125 W", []RatedAmplifier{{Outputs: 2, W: 125, Doubts: FrameOrOutput}}},
		{"Ampli 3 sorties 100 V - 60 W par sortie", []RatedAmplifier{n("", 3, 60, 100)}},
		{"amps A 240 W and B 60 W", []RatedAmplifier{{Name: "A", W: 240}, {Name: "B", W: 60}}},
		{"Verstärker N 240 W und S 2 x 60 W", []RatedAmplifier{{Name: "N", W: 240}, n("S", 2, 60)}},
		{"One amplifier, 240 watts, called A1", []RatedAmplifier{{Name: "A1", Amplifiers: 1, W: 240}}},
		{"2 zone mixer amp 2 x 120W 100V", []RatedAmplifier{{Outputs: 2, W: 120, PerOutput: true, PerZone: true, AtV: at100}}},
		{"Circuits: A 250 W, B 125 W, C 60 W, all 100 V", []RatedAmplifier{ways("", at100, NamedWatts{"A", 250}, NamedWatts{"B", 125}, NamedWatts{"C", 60})}},
		{"Kreise A 60 W und B 30 W", []RatedAmplifier{ways("", nil, NamedWatts{"A", 60}, NamedWatts{"B", 30})}},
		{"Amp #1 250W Amp #2 125W", []RatedAmplifier{{Name: "1", W: 250}, {Name: "2", W: 125}}},
		{"120 W amplifier with two outputs of 60 W", []RatedAmplifier{{Outputs: 2, W: 60, PerOutput: true, TotalW: 120}}},
		{"Línea 1 y línea 2: amplificador de 120 W con dos salidas de 60 W", []RatedAmplifier{{Outputs: 2, W: 60, PerOutput: true, Ways: []NamedWatts{{"1", 60}, {"2", 60}}}}},
		{"240 W amp through the 3 way zone selector", []RatedAmplifier{{W: 240}}},
		{"Verstärker VS 1: 4 Ausgänge, je 60 W / 100 V", []RatedAmplifier{n("VS 1", 4, 60, 100)}},
		{"CONSOLE OUTPUTS 15 WATTS EACH AT 25V", []RatedAmplifier{n("", 0, 15, 25)}},
		{"VS 1: 4 x 60 W, VS 2: 2 x 120 W", []RatedAmplifier{n("VS 1", 4, 60), n("VS 2", 2, 120)}},
		{"Etapa ET1: 2 líneas; línea 1: 240 W, línea 2: 60 W", []RatedAmplifier{{Name: "ET1", Outputs: 2, Ways: []NamedWatts{{"1", 240}, {"2", 60}}}}},
		{"Finale F1 240 W: L1 + L2; Finale F2 120 W: L3", []RatedAmplifier{{Name: "F1", W: 240, Ways: []NamedWatts{{Name: "L1"}, {Name: "L2"}}, Doubts: FrameOrOutput}, {Name: "F2", W: 120, Ways: []NamedWatts{{Name: "L3"}}}}},
		{"Amp A 2 lines of 60 W", []RatedAmplifier{n("A", 2, 60)}},
		{"Zentrale: 3 Kreise, je 40 W", []RatedAmplifier{n("", 3, 40)}},
		{"V1: 3 x 120 W, 100 V", []RatedAmplifier{n("V1", 3, 120, 100)}},
		{"G1 4 x 60 W", []RatedAmplifier{n("G1", 4, 60)}},
		{"Verstärker V1 4 x 125 W an 100 V", []RatedAmplifier{n("V1", 4, 125, 100)}},
		{"Netz 100 V, Verstärker V1 mit 4 x 125 W", []RatedAmplifier{n("V1", 4, 125, 100)}},
		{"ampli A: 2 sorties de 60 W", []RatedAmplifier{n("A", 2, 60)}},
		{"A : 3 voies de 120 W", []RatedAmplifier{n("A", 3, 120)}},
		{"Amplifier: PA-1, 4 x 120 W, 100 V line", []RatedAmplifier{n("PA-1", 4, 120, 100)}},
		{"Amplifiers: OBS 30 W, LILY 60 W", []RatedAmplifier{{Name: "OBS", W: 30}, {Name: "LILY", W: 60}}},
		{"Amps 1 to 3 are two-channel, 2 x 200 W into 70 V", []RatedAmplifier{n("1", 2, 200, 70), n("2", 2, 200, 70), n("3", 2, 200, 70)}},
		{"Amps 1 and 2 are 2 x 200 W. Amp 2 is bridged: 400 W mono", []RatedAmplifier{n("1", 2, 200), {Name: "2", W: 400}}},
		{"Amplifier channels A1.1 and A1.2 are 80 W, A2.1 is 120 W", []RatedAmplifier{ways("A1", nil, NamedWatts{"1", 80}, NamedWatts{"2", 80}), ways("A2", nil, NamedWatts{"1", 120})}},
		{"All amplifiers 1 x 160 W, one standby amplifier AMP-S for both zones", []RatedAmplifier{n("", 1, 160)}},
		{"PA1 and PA2 are the two 75 W outputs of the amplifier in the store", []RatedAmplifier{n("", 2, 75)}},
		{"Y = ampli du local technique, deux voies de 40 W", []RatedAmplifier{n("Y", 2, 40)}},
		{"Sono 100 V, un ampli 4 x 60 W (A1)", []RatedAmplifier{{Name: "A1", Amplifiers: 1, Outputs: 4, W: 60, PerOutput: true, AtV: at100}}},
		{"70 V, one amp of two ways, 2 x 60 W = A1", []RatedAmplifier{{Name: "A1", Amplifiers: 1, Outputs: 2, W: 60, PerOutput: true, AtV: []float64{70}}}},
		{"Finale F1, 100 V, quattro uscite da 100 W", []RatedAmplifier{n("F1", 4, 100, 100)}},
		{"Etapa E1: 2 salidas de 120 W", []RatedAmplifier{n("E1", 2, 120)}},
		{"M1: 4 groepen van 60 W; samen niet meer dan 180 W", []RatedAmplifier{{Name: "M1", Outputs: 4, W: 60, PerOutput: true, TotalW: 180}}},
		{"X: 30 W each side, 100 V", []RatedAmplifier{n("X", 0, 30, 100)}},
		{"PANEL AMP-P (8 ways, 70 V, 60 W a way)", []RatedAmplifier{n("AMP-P", 8, 60, 70)}},
		{"All 100 V. Two amps, 2 ways each of 40 W.", []RatedAmplifier{{Amplifiers: 2, Outputs: 2, W: 40, PerOutput: true, AtV: at100}}},
		{"Amp 1 = 70 V, 120 W. Amp 2 = 100 V, 120 W.", []RatedAmplifier{{Name: "1", W: 120, AtV: []float64{70}}, {Name: "2", W: 120, AtV: at100}}},
		{"100 V, ch 1 and ch 2 are 60 W each (amp IR)", []RatedAmplifier{ways("IR", at100, NamedWatts{Name: "1", W: 60}, NamedWatts{Name: "2", W: 60})}},
		{"Amp 1 = 250w ch1, 125w ch2", []RatedAmplifier{ways("1", nil, NamedWatts{Name: "1", W: 250}, NamedWatts{Name: "2", W: 125})}},
		{"Ampli A : 60 W sur sortie 1 et 30 W sur sortie 2", []RatedAmplifier{ways("A", nil, NamedWatts{Name: "1", W: 60}, NamedWatts{Name: "2", W: 30})}},
		{"Amplifier outputs: 1 = 120, 2 = 60, 3 = 120 watts at 70 volts", []RatedAmplifier{ways("", []float64{70}, NamedWatts{Name: "1", W: 120}, NamedWatts{Name: "2", W: 60}, NamedWatts{Name: "3", W: 120})}},
		{"Amps A and B are 2 x 100W at 70.7V", []RatedAmplifier{n("A", 2, 100, 70.7), n("B", 2, 100, 70.7)}},
		{"Amp EB2 way 1 40 W way 2 60 W", []RatedAmplifier{ways("EB2", nil, NamedWatts{Name: "1", W: 40}, NamedWatts{Name: "2", W: 60})}},
		{"Amp DOME: chan. 1 60 W, chan. 2 60 W, both 100 V", []RatedAmplifier{ways("DOME", at100, NamedWatts{Name: "1", W: 60}, NamedWatts{Name: "2", W: 60})}},
		{"Verstärker VG;K1: 60 W;K2: 30 W", []RatedAmplifier{ways("VG", nil, NamedWatts{Name: "K1", W: 60}, NamedWatts{Name: "K2", W: 30})}},
		{"Uscite U1 e U2 del finale: 60 W ciascuna", []RatedAmplifier{ways("", nil, NamedWatts{Name: "U1", W: 60}, NamedWatts{Name: "U2", W: 60})}},
		{"All off amp OP way 1, 70 V, 120 W", []RatedAmplifier{ways("OP", []float64{70}, NamedWatts{Name: "1", W: 120})}},
		{"Verstärker TR, 1 Ausgang, 100 V, 80 W", []RatedAmplifier{{Name: "TR", Outputs: 1, W: 80, AtV: at100}}},
		{"Verstärker TR, 4 Ausgänge, 240 W", []RatedAmplifier{{Name: "TR", Outputs: 4, W: 240, Doubts: FrameOrOutput}}},
		{"Booster B1: zone 1, 2 (80 W)", []RatedAmplifier{{Name: "B1", W: 80, Zones: []string{"1", "2"}}}},
		{"25 VOLT SYSTEM, ONE 50 WATT BOOSTER, ALL ON ONE PAIR", []RatedAmplifier{{W: 50, AtV: []float64{25}}}},
		{"Amplifier A, 250 W, feeds all A circuits; amplifier B, 250 W, feeds all B circuits", []RatedAmplifier{
			{Name: "A", W: 250, Ways: []NamedWatts{{Name: "A"}}}, {Name: "B", W: 250, Ways: []NamedWatts{{Name: "B"}}}}},
		{"Ampli 1 (240 W) : toutes les lignes A - Ampli 2 (240 W) : toutes les lignes B", []RatedAmplifier{
			{Name: "1", W: 240, Ways: []NamedWatts{{Name: "A"}}}, {Name: "2", W: 240, Ways: []NamedWatts{{Name: "B"}}}}},
		{"Lines 1-3 120W each, line 4 60W", []RatedAmplifier{ways("", nil, NamedWatts{"1", 120}, NamedWatts{"2", 120}, NamedWatts{"3", 120}, NamedWatts{"4", 60})}},
		{"Lines 1 and 2 on Amp A (120 W), line 3 on Amp B (60 W)", []RatedAmplifier{
			{Name: "A", W: 120, Ways: []NamedWatts{{Name: "1"}, {Name: "2"}}, Doubts: FrameOrOutput}, {Name: "B", W: 60, Ways: []NamedWatts{{Name: "3"}}}}},
		{"Amp P1 and P2 are 120 W each, amp P3 is standby", []RatedAmplifier{{Name: "P1", W: 120}, {Name: "P2", W: 120}}}, // each of the two, however many outputs they have
		{"Amps: PA1 120W; PA2 60W", []RatedAmplifier{{Name: "PA1", W: 120}, {Name: "PA2", W: 60}}},
		{"Ampli A : 2 x 240 W (L1 et L2)", []RatedAmplifier{{Name: "A", Outputs: 2, W: 240, PerOutput: true, Ways: []NamedWatts{{Name: "L1"}, {Name: "L2"}}}}},
		{"AMP 6 4 x 125 W CH 1+2 BRIDGED = 250 W", []RatedAmplifier{{Name: "6", Outputs: 4, W: 125, PerOutput: true, Ways: []NamedWatts{{Name: "1+2", W: 250}}, Doubts: 0}}},
		{"Zentrale: 3 Kreise, je 40 W", []RatedAmplifier{n("", 3, 40)}},
		{"Centrale: 3 circuiti da 60 W", []RatedAmplifier{n("", 3, 60)}},
		{"1 versterker met 3 zones van 60 W", []RatedAmplifier{{Amplifiers: 1, Outputs: 3, W: 60, PerOutput: true, PerZone: true}}},
		{"CH1: 250 W @ 4 Ω, CH2: 120 W @ 70 V", []RatedAmplifier{{Name: "CH2", W: 120, AtV: []float64{70}}}},
		{"Amplifier 1: 120 W; Zone 1", []RatedAmplifier{{Name: "1", W: 120, Zones: []string{"1"}}}},
		{"Amp: 30 watts", []RatedAmplifier{{W: 30}}},
		{"100 V, amp 20 W", []RatedAmplifier{{W: 20, AtV: at100}}},
		{"A circuits on amplifier VA1, B circuits on amplifier VA2, both 250 W a circuit", []RatedAmplifier{
			{Name: "VA1", W: 250, PerOutput: true, Ways: []NamedWatts{{Name: "A"}}}, {Name: "VA2", W: 250, PerOutput: true, Ways: []NamedWatts{{Name: "B"}}}}},
	} {
		t.Run(tt.in, func(t *testing.T) {
			got, err := ParseRatingSentence(tt.in, Auto)
			if err != nil {
				t.Fatal(err)
			}
			got = slices.Clone(got)
			for i := range got {
				got[i].Doubts &^= SplitRead
				got[i].Worded = false // see TestRatingSentenceWorded
			}
			if d := cmp.Diff(tt.want, got, cmpopts.EquateEmpty()); d != "" {
				t.Errorf("-want +got\n%s", d)
			}
		})
	}
	for in, want := range map[string]error{
		"": ErrEmpty, "Amplifier load before: 91 W, after: 79.5 W": ErrNotUnderstood, "TBC": ErrMissing, "Ceiling loudspeaker 6 W, white": ErrNotUnderstood, "Volume control VC-1 (10 W), Seed room": ErrNotUnderstood,
		"All 100 V": ErrNotUnderstood, "Cable 2 x 2.5 mm²": ErrNotUnderstood, "Amplifier in the store": ErrNotUnderstood, "Boathouse 3 - heads list": ErrNotUnderstood,
		"LS-1: 6 W": ErrNotUnderstood, "Zone A: 4 x 6 W": ErrNotUnderstood, "Z1: 6 W": ErrNotUnderstood, "Note: 4 x 6 W": ErrNotUnderstood, "Line 100 V: 4 x 15 W horns": ErrNotUnderstood,
		"A3: 2 x 6 W ceiling loudspeakers": ErrNotUnderstood,
	} {
		if got, err := ParseRatingSentence(in, Auto); !errors.Is(err, want) {
			t.Errorf("ParseRatingSentence(%q) = %+v, %v; want %v", in, got, err, want)
		}
	}
}

// short writes amplifiers in one line: name, outputs, watts, "each" or
// "together", volts, outputs with their watts, zones.
func shortly(list []RatedAmplifier) string {
	var out []string
	for _, a := range list {
		parts := []string{a.Name}
		add := func(format string, args ...any) { parts = append(parts, fmt.Sprintf(format, args...)) }
		if a.Amplifiers > 1 {
			add("%d amps", a.Amplifiers)
		}
		if a.Outputs > 0 {
			add("%dx", a.Outputs)
		}
		if a.W > 0 {
			add("%vW", a.W)
		}
		if a.PerOutput {
			add("each")
		}
		if a.TotalW > 0 {
			add("together %vW", a.TotalW)
		}
		for _, v := range a.AtV {
			add("%vV", v)
		}
		for _, w := range a.Ways {
			add("%s=%vW", w.Name, w.W)
		}
		for _, z := range a.Zones {
			add("zone %s", z)
		}
		if a.PerZone {
			add("per zone")
		}
		for _, d := range (a.Doubts &^ SplitRead).Texts() {
			add("(%s)", d)
		}
		out = append(out, strings.TrimSpace(strings.Join(parts, " ")))
	}
	return strings.Join(out, "; ")
}

// How installers write it in six languages; common practice, no source.
func TestParseRatingSentenceWritten(t *testing.T) {
	const open = " (watts of each output or of all together not certain)"
	for in, want := range map[string]string{
		// the amplifier's name in front, behind, twice, not at all
		"A1 is a 4 x 250 W amp": "A1 4x 250W each", "A1 (4 x 250 W)": "A1 4x 250W each", "A1 - 4 x 250 W": "A1 4x 250W each", "V1 versterker met 4 groepen van 60 W": "V1 4x 60W each",
		"A1: ampli 4 x 60 W": "A1 4x 60W each", "E1: etapa de 4 canales, 60 W por canal": "E1 4x 60W each", "F1: finale a quattro canali da 60 W": "F1 4x 60W each",
		"Amp 1 120W, Amp 2 240W": "1 120W; 2 240W", "Ampl #1 = 250w, #2 = 125w": "1 250W; 2 125W", "Amp 1 = 250 W, 2 = 125 W": "1 250W; 2 125W",
		"Amp 1: 2x120W. Amp 2: 240W": "1 2x 120W each; 2 240W", "Amp 1 is 2x120W and amp 2 is 240W": "1 2x 120W each; 2 240W",
		"Rack: A1 = 2 x 120 W, A2 = 1 x 240 W": "A1 2x 120W each; A2 1x 240W each", "RACK A1 2x120W A2 1x240W": "A1 2x 120W each; A2 1x 240W each", "AMP ROOM / A1 4 x 60W / A2 2 x 120W": "A1 4x 60W each; A2 2x 120W each",
		"A1 and A2: 2 x 120 W each": "A1 2x 120W each; A2 2x 120W each", "A1-A3: 60 W each": "A1 60W; A2 60W; A3 60W", "Endstufen E1 und E2 je 2 x 120 W": "E1 2x 120W each; E2 2x 120W each",
		"Etapas E1 y E2, 2 x 120 W cada una": "E1 2x 120W each; E2 2x 120W each", "PA amp - 30 W - feeds everything": "30W", "Everything on one 30 W amp": "30W", "all on the one 60W amplifier (70 V)": "60W 70V",
		"Two amplifiers, 120 W each": "2 amps 120W each", "Deux amplis de 120 W chacun": "2 amps 120W each", "Due finali da 2 x 120 W": "2 amps 2x 120W each", "Amp output 120W": "120W", "Verstärkerleistung: 4 x 120 W": "4x 120W each",
		// the outputs
		"4-channel amplifier, 250W/ch": "4x 250W each", "Amplifier A1 - 4 channels x 250 W at 100 V": "A1 4x 250W each 100V", "Rack amp 4ch 250W @ 70V": "4x 250W 70V" + open,
		"each output 60W": "60W each", "All outputs 60 W": "60W each", "60 W a way": "60W each", "Je Ausgang 60 W": "60W each", "60 W par voie": "60W each", "Cada salida 60 W": "60W each", "Ogni uscita 60 W": "60W each", "Elke uitgang 60 W": "60W each",
		"Nennleistung je Kanal 120 W": "120W each", "Rating per output: 60 W": "60W each", "Amp A1 480 W all channels": "A1 together 480W",
		"ways 1-4: 60 W each": "1=60W 2=60W 3=60W 4=60W", "outputs 1 & 2: 120 W, outputs 3 & 4: 60 W": "1=120W 2=120W 3=60W 4=60W", "Ch1 120W, Ch2 60W": "1=120W 2=60W", "Voie 1 : 60 W ; voie 2 : 30 W": "1=60W 2=30W",
		"A1 ch 1: 120 W, ch 2: 60 W": "A1 1=120W 2=60W", "A1.1 = 120 W, A1.2 = 60 W": "A1 1=120W 2=60W", "A1: 120 + 60 W": "A1 1=120W 2=60W", "A1: 120W + 60W": "A1 1=120W 2=60W",
		"Amp X: way 1 = dome floor, way 2 = foyer":              "X 1=0W 2=0W",
		"Amp A (120 W) zones 1 to 3; amp B (60 W) zones 4 to 6": "A 120W zone 1 zone 2 zone 3; B 60W zone 4 zone 5 zone 6",
		"AMP-1 2 x 120 W / 100 V, AMP-2 2 x 60 W / 100 V":       "AMP-1 2x 120W each 100V; AMP-2 2x 60W each 100V", "AMP 1 : 120 W - AMP 2 : 240 W sous 100 V": "1 120W 100V; 2 240W 100V",
		"2. AMP-1: FOUR CHANNEL, 75 W/CH. AMP-2: TWO CHANNEL, 300 W/CH.": "AMP-1 4x 75W each; AMP-2 2x 300W each", "Amp: 2 zones, 30W per zone": "2x 30W each per zone",
		"Versterker: zone 1 uitgang 1 (60W), zone 2 uitgang 2 (120W)": "1=60W 2=120W zone 1 zone 2",
		"Amplifier 4 x 60 W, one output per zone":                     "4x 60W each per zone", "Verstärker 3 x 60 W, je Zone ein Ausgang": "3x 60W each per zone", "Amplificateur 100 V, 3 x 60 W, une sortie par zone": "3x 60W each 100V per zone",
		"Amplifier 4 channel, 60W per channel (ch = zone)": "4x 60W each per zone", "Verstärker, 2 Linienausgänge je 120 W / 100 V": "2x 120W each 100V",
		// as many powers as outputs, in their order
		"ampli 3 sorties : 60 W / 60 W / 30 W, 100V": "3x 100V 1=60W 2=60W 3=30W (powers of outputs taken in the order written)", "Verstärker 2 Ausgänge: 120/60 W": "2x 1=120W 2=60W (powers of outputs taken in the order written)",
		"etapa con 2 salidas: 60 W y 60 W": "2x 1=60W 2=60W", "amp, 3 outputs, 120 W, 60 W": "3x 120W (watts of each output or of all together not certain) (another power is written beside it)",
		// what all of them are, behind
		"L1: 150 W; L2: 60 W; L3: 60 W (amplificatore a 3 uscite)": "3x; L1 150W; L2 60W; L3 60W", "Linie 1: 120 W, Linie 2: 60 W (Verstärker mit 2 Ausgängen)": "2x 1=120W 2=60W",
		// several in one breath
		"Rack in store. (1) 4x100W amp + (1) 60W mixer amp": "4x 100W each; 60W", "Verstärker 4 x 120 W und Mischverstärker 60 W": "4x 120W each; 60W", "un ampli 2 x 120 W, un ampli 60 W": "2x 120W each; 60W",
		"G1 and G2 are 100 watt amplifiers, G3 and G4 are 60 watt amplifiers": "G1 100W; G2 100W; G3 60W; G4 60W", "E1 y E2 son etapas de 120 W, E3 es una etapa de 60 W": "E1 120W; E2 120W; E3 60W",
		// lines of one amplifier, and one output
		"lines 1 and 2 on a 120 W amplifier": "120W 1=0W 2=0W (watts of each output or of all together not certain)", "lines 1, 2: 100W amp channel": "1=100W 2=100W",
		"Jeder Verstärker hat nur einen Ausgang": "1x", "Ogni finale ha una sola uscita, 60 W": "1x 60W", "ampli : strang": "",
		// figures
		"Amp 1 is the 2x120 at 70V in the closet": "1 2x 120W each 70V (no unit written)", "Amp 2 is the old 60 W paging amp (70 V)": "2 60W 70V",
		"A1 4x120": "A1 4x 120W each (no unit written)", "Amp was 60 W, now 120 W": "120W", "Amp A1 60 W (120 W peak)": "A1 60W (another power is written beside it)",
		// other things
		"Amp room: 2 horns of 15 W": "", "spare 60W amp on the shelf": "", "Reserveverstärker 60 W": "", "amp fan replaced": "", "Horns 15 W, columns 20 W": "", "6 W each": "", "2 x 60": "", "amp 120": "", "Wall controls 10 W each": "", "total 480 W": "",
	} {
		list, err := ParseRatingSentence(in, Auto)
		if got := shortly(list); got != want {
			t.Errorf("%q: %q, %v; want %q", in, got, err, want)
		}
	}
}

// Without a word for an amplifier the name may be another thing's.
func TestRatingSentenceWorded(t *testing.T) {
	for in, want := range map[string]bool{"X: 30 W each": false, "G1: 2 x 60 W": false, "ampli A: 2 sorties de 60 W": true, "Y = ampli, 40 W": true} {
		got, err := ParseRatingSentence(in, Auto)
		if err != nil || got[0].Worded != want {
			t.Errorf("ParseRatingSentence(%q) = %+v, %v; want Worded %v", in, got, err, want)
		}
	}
}

func FuzzParseRatingSentence(f *testing.F) {
	for _, s := range []string{"PA1: two outputs, 60W each", "Amp 1 = 70 V, 120 W. Amp 2 = 100 V, 120 W.", "Verstärker VG;K1: 60 W;K2: 30 W", "M1: 4 groepen van 60 W; samen niet meer dan 180 W", "ch 1 and ch 2 are 60 W each (amp IR)", "PANEL AMP-P (8 ways"} {
		f.Add(s, byte(0))
	}
	f.Fuzz(func(t *testing.T, s string, b byte) {
		list, err := ParseRatingSentence(s, Style(b%3))
		if (err == nil) != (len(list) > 0) {
			t.Fatalf("%q: %+v, %v", s, list, err)
		}
		for _, a := range list {
			if !finite(append(a.AtV, a.W, a.TotalW)...) || a.W > MaxWatts || a.Outputs < 0 || a.Outputs > mostChannels || a.PerOutput && a.W == 0 {
				t.Fatalf("%q: %+v", s, a)
			}
			for i, v := range a.AtV {
				if !isLineVoltage(v) || i > 0 && v <= a.AtV[i-1] {
					t.Fatalf("%q: %v", s, a.AtV)
				}
			}
			for _, w := range a.Ways {
				if w.Name == "" || !finite(w.W) || w.W > MaxWatts {
					t.Fatalf("%q: %+v", s, w)
				}
			}
		}
	})
}
