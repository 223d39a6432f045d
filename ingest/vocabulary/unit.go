package vocabulary

import (
	"regexp"
	"strconv"
	"strings"
)

// units maps what people write for a unit to one spelling of it.
var units = map[string]string{
	"w": "W", "watt": "W", "watts": "W", "wt": "W", "wrms": "W", "w rms": "W", "vatios": "W", "vatio": "W",
	"kw": "kW", "va": "VA",
	"v": "V", "volt": "V", "volts": "V", "vac": "V", "vrms": "V", "voltios": "V",
	"m": "m", "mtr": "m", "mtrs": "m", "metre": "m", "metres": "m", "meter": "m", "meters": "m", "ml": "m", "lfm": "m",
	"rmt": "m", "metros": "m", "metri": "m", "mètres": "m", "m.l.": "m", "mt": "m", "mts": "m",
	"ft": "ft", "feet": "ft", "foot": "ft", "lf": "ft", "rft": "ft", "ft.": "ft", "pieds": "ft", "pied": "ft", "pi": "ft",
	"km": "km", "cm": "cm", "mm": "mm", "in": "in", "inch": "in", "inches": "in", "yd": "yd", "yds": "yd", "yards": "yd",
	"awg": "AWG", "ga": "AWG", "ga.": "AWG",
	"mm2": "mm2", "mm²": "mm2", "mm^2": "mm2", "sqmm": "mm2", "sq mm": "mm2", "sq.mm": "mm2", "sq. mm": "mm2", "qmm": "mm2", "mmq": "mm2", "mm q": "mm2",
	"m2": "m2", "m²": "m2", "m^2": "m2", "sqm": "m2", "sq m": "m2", "sq.m": "m2", "sq. m": "m2", "qm": "m2", "mq": "m2", "sq ft": "m2", "sqft": "m2", "sq. ft": "m2", "sq.ft": "m2", "ft2": "m2", "ft²": "m2",
	"ohm": "ohm", "ohms": "ohm", "Ω": "ohm", "ω": "ohm", "ohmios": "ohm", "kohm": "kohm", "kΩ": "kohm", "kω": "kohm",
	"%": "%", "pct": "%", "percent": "%", "db": "dB",
	"°c": "C", "degc": "C", "deg c": "C", "°f": "F",
	"€": "money", "eur": "money", "£": "money", "gbp": "money", "$": "money", "usd": "money", "chf": "money", "fr.": "money", "euro": "money",
	"zar": "money", "aud": "money", "cad": "money", "nzd": "money", "inr": "money", "sgd": "money", "mxn": "money", "kr": "money", "nok": "money", "sek": "money", "dkk": "money",
	"pcs": "pcs", "ea": "pcs", "stk": "pcs", "stk.": "pcs", "stück": "pcs", "nos": "pcs", "uds": "pcs", "pz": "pcs", "st.": "pcs", "pc": "pcs", "st": "pcs",
	"hz": "Hz", "khz": "kHz", "kg": "kg", "a": "A",
}

// unitWords are the units that name a unit even when they stand bare behind
// the header's words. Letters that are also words need brackets or a slash.
var unitWords = map[string]bool{"w": true, "watt": true, "watts": true, "v": true, "m": true, "ft": true, "km": true, "mm": true,
	"m2": true, "m²": true, "sqm": true, "qm": true, "mq": true, "sqft": true, "ft2": true, "ft²": true,
	"awg": true, "mm2": true, "mm²": true, "sqmm": true, "qmm": true, "mmq": true, "ohm": true, "ohms": true, "ω": true, "%": true, "db": true,
	"€": true, "£": true, "$": true, "eur": true, "kw": true, "cm": true, "volts": true, "volt": true, "mw": true,
	"yd": true, "yds": true, "yards": true}

var (
	// lineVolts finds the voltage of a line in a header.
	lineVolts  = regexp.MustCompile(`(?i)(?:[@~à]|\bat |\bbei |\ba )?\s*\b(\d{2,3}(?:[.,]\d)?)\s?-?\s?V(?:olts?|rms|ac)?\b`)
	atHertz    = regexp.MustCompile(`(?i)[(\[]?\s*(?:[@~à]|\bat |\bbei |\ba |\bbij )?\s*\b\d+(?:[.,]\d+)?\s?k?hz\b\s*[)\]]?`)
	bracketed  = regexp.MustCompile(`[(\[{]([^()\[\]{}]*)[)\]}]`)
	inUnit     = regexp.MustCompile(`(?i)\s(?:in|en|in de)\s+(\S+)\s*$`)
	yesNo      = regexp.MustCompile(`(?i)[(\[]?\b[yjos]\s?/\s?n\b[)\]]?`)
	reVoltages = regexp.MustCompile(`(?i)^\W*(?:\d{2,3}(?:[.,]\d)?\s?v?\s?/\s?)+\d{2,3}(?:[.,]\d)?\s?v\W*$`)
	squareUnit = regexp.MustCompile(`(?i)\ssq(?:uare\s|\.)?\s*(mm|m|ft)\.?$`)
	tailUnit   = regexp.MustCompile(`(?:^|[\s/,;:|]|_)\s*([^\s/,;:|()\[\]_]{1,6})\s*$`)
)

// pieceWords are words and abbreviations for one piece, behind the stroke of a header.
const pieceWords = `stück|stueck|stuks?|stk|stck|st|pièce|pieza|pezzo|pce|pces|pcs?|pza|pz|ea|uds?|u`

// wattsEach finds the watts of one piece in a header: "W/Stk.", "Watt/pc".
var wattsEach = regexp.MustCompile(`(?i)\bw(?:att)?s?\s*/\s*(?:` + pieceWords + `)(?:\.|\b)`)

// voltClasses are the voltages of loudspeaker lines that a header may name.
var voltClasses = map[float64]bool{25: true, 35: true, 50: true, 70: true, 70.7: true, 71: true, 100: true, 140: true, 141: true, 200: true}

// unitOf returns the plain spelling of a unit, or "".
func unitOf(s string) string {
	s = strings.TrimSpace(s)
	if s == "mW" {
		return "mW"
	}
	return units[strings.Trim(strings.ToLower(s), " ")]
}

// cutYesNo takes "Y/N", "J/N", "O/N" or "S/N" off a header that has other words, and
// reports whether there was one.
func cutYesNo(header string) (rest string, asked bool) {
	m := yesNo.FindStringIndex(header)
	if m == nil || len(split(header[:m[0]])) == 0 {
		return header, false
	}
	return strings.TrimSpace(header[:m[0]] + " " + header[m[1]:]), true
}

// measure takes the unit and the line voltage out of a header and returns what
// is left of it.
func measure(header string) (rest, unit string, volts float64) {
	rest = wattsEach.ReplaceAllString(atHertz.ReplaceAllString(header, " "), "W each")
	found := lineVolts.FindAllStringSubmatchIndex(rest, -1)
	for i := len(found) - 1; i >= 0; i-- {
		m := found[i]
		v, err := strconv.ParseFloat(strings.Replace(rest[m[2]:m[3]], ",", ".", 1), 64)
		if err != nil || !voltClasses[v] {
			continue
		}
		if volts != 0 && volts != v {
			volts = -1 // several voltages: none is meant
		} else {
			volts = v
		}
		rest = rest[:m[0]] + " " + rest[m[1]:]
	}
	volts = max(volts, 0)
	take := func(u string) bool {
		if u == "" {
			return false
		}
		if unit == "" {
			unit = u
		}
		return true
	}
	rest = bracketed.ReplaceAllStringFunc(rest, func(in string) string {
		inner := strings.TrimSpace(in[1 : len(in)-1])
		if inner == "" || take(unitOf(inner)) {
			return " "
		}
		for _, part := range strings.FieldsFunc(inner, func(r rune) bool { return strings.ContainsRune("/ ,@", r) }) {
			if u := unitOf(part); u != "" && (u != "money" || unit == "") {
				take(u)
				return " " + strings.Replace(inner, part, " ", 1) + " "
			}
		}
		return " " + inner + " "
	})
	if m := inUnit.FindStringSubmatchIndex(rest); m != nil && take(unitOf(rest[m[2]:m[3]])) {
		rest = rest[:m[0]]
	} else if m := squareUnit.FindStringSubmatchIndex(rest); m != nil {
		take(unitOf("sq " + rest[m[2]:m[3]]))
		rest = rest[:m[0]]
	} else if m := tailUnit.FindStringSubmatchIndex(rest); m != nil {
		t := rest[m[2]:m[3]]
		slash := strings.ContainsAny(rest[m[0]:m[2]], "/,|")
		if slash && unitOf(t) != "" || unitWords[strings.ToLower(t)] {
			if strings.TrimSpace(rest[:m[0]]) == "" {
				take(unitOf(t)) // the header is nothing but a unit: keep the word
			} else if take(unitOf(t)) {
				rest = rest[:m[0]]
			}
		}
	}
	if unit == "" { // a unit inside: "mm² per core", "W/ch"
		for _, part := range strings.FieldsFunc(rest, func(r rune) bool { return strings.ContainsRune("/ ,@_-", r) }) {
			if p := strings.ToLower(part); unitWords[p] && p != "m" && p != "v" {
				unit = unitOf(part)
				break
			}
		}
	}
	return strings.Join(strings.Fields(rest), " "), unit, volts
}

// fitting are the units that a field may have. A field that is not listed is a
// name or a text and has none.
var fitting = map[Field]string{
	Tap: "W kW mW VA V ohm", TapList: "W VA V", TotalWatts: "W kW VA", RatedWatts: "W VA", ChannelWatts: "W kW VA", FrameWatts: "W kW VA",
	ControlWatts: "W VA", Load: "W kW VA", MeasuredLoad: "W kW VA", Headroom: "W % VA dB", Level: "% dB",
	Impedance: "ohm kohm", Measured: "ohm kohm W", LineVoltage: "V", TapVoltage: "V", Length: "m ft km yd cm in", Height: "m ft mm cm in",
	BoxDepth: "mm cm in", BoxName: "mm", Gauge: "mm2 AWG mm", AreaNeeded: "mm2 AWG", CableType: "mm2 AWG", Conductors: "pcs mm2",
	InsertionLoss: "dB", Temperature: "C F", Quantity: "pcs", Price: "money", Ignored: "m2 dB % kg Hz kHz A VA mm cm m ft in money",
	Amplifier: "V", Circuit: "V", Channel: "V", Control: "V", Override: "V", ChannelCount: "pcs",
}

// fits are what Fits returns, by unit and field. A unit that no field has is "".
var fits = func() map[string]*[Fields]float64 {
	units := map[string]*[Fields]float64{"": {}}
	for _, list := range fitting {
		for u := range strings.FieldsSeq(list) {
			units[u] = &[Fields]float64{}
		}
	}
	for u, values := range units {
		for f := range values {
			values[f] = fit(Field(f), u)
		}
	}
	return units
}()

// Fits returns how well a unit in a header suits a field: 1 when it does or
// there is none, 0.6 where the field is a name, 0.3 where it has other units.
func Fits(f Field, unit string) float64 {
	if unit == "" {
		return 1
	}
	values, ok := fits[unit]
	if !ok {
		values = fits[""]
	}
	return values[f]
}

func fit(f Field, unit string) float64 {
	list, ok := fitting[f]
	if !ok {
		return 0.6
	}
	for u := range strings.FieldsSeq(list) {
		if u == unit {
			return 1
		}
	}
	switch f {
	case Amplifier, Circuit, Channel, Control, Override, Cable, CableType:
		if unit == "ft" || unit == "m" {
			return 0.15
		}
		return 0.6
	case Measured, MeasuredLoad:
		if unit == "V" { // what a meter says of the line itself
			return 0
		}
	}
	return 0.3
}
