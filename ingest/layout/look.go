package layout

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// A look is what a cell looks like, apart from what its column means. A cell
// has several looks: "5 W" is watts and has digits.
type look uint64

// The looks.
const (
	lookNumber   look = 1 << iota // a plain number
	lookWhole                     // a whole number
	lookSmall                     // a whole number from 1 to 99
	lookTapValue                  // a number that transformers are usually tapped at
	lookWatts                     // a power with its unit
	lookTapList                   // several powers: "30/15/7.5"
	lookRating                    // "4 x 250 W", "200 W/ch"
	lookVolts                     // "70 V", "100V"
	lookVoltNum                   // a bare 25, 50, 70, 70.7 or 100
	lookLength                    // "36 m", "120'"
	lookGauge                     // "16/2", "18 AWG", "2 x 1.5 mm2"
	lookAreaNum                   // a bare 0.75, 1.5, 2.5 ...
	lookAWGNum                    // a bare 10, 12 ... 24
	lookOhm                       // "83 ohm"
	lookPercent                   // "75 %"
	lookDecibel                   // "0.4 dB"
	lookMoney                     // "12.50 EUR"
	lookDate                      // a date cell
	lookTag                       // "LS-01", "SP101"
	lookTagRange                  // "LS-1..LS-8", "S101, S103"
	lookCount                     // "4 no.", "2 ea", "(3)", "6x"
	lookChannel                   // "A1.2", "AMP 1 CH B", "Ch 3"
	lookLetter                    // one letter, or one with a figure: "B", "1A"
	lookZone                      // "Zone 3", "Z-01"
	lookAmp                       // "Amp 2", "PA-1"
	lookControl                   // "VC-3", "LSR 2"
	lookRoom                      // a few words without figures
	lookModel                     // letters and figures mixed
	lookLong                      // prose
	lookYes                       // yes, no, x
	lookStatus
	lookMounting
	lookMaterial
	lookFloor
	lookUse
	lookDevice    // a word for a loudspeaker
	lookCableWord // "NYM-J", "CL2"
	lookHiZ
	lookDegrees // "20 degC"
	lookWords   // has a letter
	lookMissing // "-", "n/a"
	lookDitto
	lookCountWatts // "4 @ 15 W", "(8) at 2.5 W"
	lookTapSaid    // says "tap": "6 W tap", "tap 3"
	lookTapUsual   // a power at which line transformers are usually tapped, with its unit
	lookStruck     // struck through as a whole, or empty
	lookForeign    // a word for something that is no part of a loudspeaker system
	lookFraction   // "1/2", "1 1/4": a part of a watt, or an output of an amplifier
	lookJoint      // two things in one cell that belong in several columns: "Amp 1 / Ch 2"
)

// tapValues are the powers at which line transformers are usually tapped, in
// watts; from memory of data sheets, no single source.
var tapValues = map[float64]bool{0.125: true, 0.16: true, 0.25: true, 0.3: true, 0.32: true, 0.33: true, 0.4: true, 0.5: true, 0.6: true, 0.62: true, 0.63: true, 0.75: true,
	0.8: true, 0.94: true, 1: true, 1.2: true, 1.25: true, 1.3: true, 1.5: true, 1.6: true, 1.8: true, 1.87: true, 1.875: true, 1.9: true, 2: true, 2.5: true,
	3: true, 3.2: true, 3.75: true, 3.8: true, 4: true, 5: true, 6: true, 7.5: true, 8: true, 9: true, 10: true, 12: true, 12.5: true, 15: true,
	16: true, 18: true, 20: true, 24: true, 25: true, 30: true, 32: true, 36: true, 37.5: true, 40: true, 45: true, 50: true, 60: true, 64: true,
	75: true, 80: true, 100: true, 120: true, 150: true, 200: true}

// areaValues are the usual nominal areas of conductors in mm2 (IEC 60228 list and the neighbours met in schedules).
var areaValues = map[float64]bool{0.22: true, 0.34: true, 0.5: true, 0.75: true, 0.8: true, 1: true, 1.31: true, 1.5: true, 2: true, 2.08: true, 2.5: true, 3.31: true, 4: true, 6: true, 10: true, 16: true}

var (
	reWatts       = regexp.MustCompile(`(?i)^\W{0,2}(?:set|tap(?:ped)?|t)?\s*(?:at|@|:|-)?\s*([\d.,]+|[\d]+\s*/\s*[\d]+|½|¼|¾|\d+[½¼¾])\s*(w|watts?|kw|mw|va|wt|vatios?|w\.)\b`)
	reCountW      = regexp.MustCompile(`(?i)^\(?\d{1,3}\)?\s*(no\.?|st\.?|stk\.?|pcs?|x|×|uds?\.?|pz\.?|ea\.?)?\s*(@|à|a|at|je|von|van|of|de|da|di|per|x|×)?\s*(?:[\d.,]+|\d\s?/\s?\d|[½¼¾])\s*w(atts?)?$`)
	reRatingIn    = regexp.MustCompile(`(?i)\d+\s*[x×]\s*\d+\s*w\b|\d+\s*w\s*(?:@|at|bei|à|a)\s*\d+\s*(?:v|Ω|ohm)`)
	reTapSet      = regexp.MustCompile(`(?i)^(?:\(\d{1,3}\)\s*|\d{1,3}\s*(?:[x×]|ea\.?|no\.?)\s*)?\(?[\d.,]+(?:\s*[/|–-]\s*[\d.,]+)+\s*w?\)?\s*(?:→|->|=>|>|:|=|@|\p{L}{2,14}\.?\s*(?:à|a|auf|op|at|on|sur)?)\s*[\d.,]+\s*w?$`)
	reTapSaid     = regexp.MustCompile(`(?i)\b(tap|tapped|tapping|abgriff|anzapfung|prise|toma|presa|aftakking|xfmr)\b`)
	reTapShort    = regexp.MustCompile(`(?i)^(?:t-|@|tap\s*)(\d+(?:[.,]\d+)?)\s*w?$`)
	reTapList     = regexp.MustCompile(`(?i)^\d*[.,]?\d+\s*w?(?:\s*[/|,;–-]\s*\d*[.,]?\d+\s*w?){2,}(\s*w(atts?)?)?$`)
	reLeadingZero = regexp.MustCompile(`(?:^|[^\d.,])0\d`) // as numbers of dates and of registers have it, and powers do not
	reRating      = regexp.MustCompile(`(?i)^\d+\s*w\s*(?:@|at)\s*\d+(?:[.,]\d)?\s*(?:v|Ω|ohm)|^\d+\s*[x×*]\s*\d+([.,]\d+)?\s*w|^\d+([.,]\d+)?\s*w\s*(/|per|je|pro|par|por)\s*(ch|k|c)`)
	reVolts       = regexp.MustCompile(`(?i)^\d{2,3}([.,]\d+)?\s*-?\s*v(olts?|ac|rms)?\b[^w]*$`)
	reLength      = regexp.MustCompile(`(?i)^[~≈<]?\s*(\d+\s*[x×]\s*)?\d[\d.,]*\s*(m|mtrs?|metres?|meters?|ft|feet|foot|lf|rft|ml|km|yd|yds|cm|mm|'|′|’|lfm|m\.l\.|ft\.)(?:\s*[-–]?\s*\d*[\d.,]*\s*("|″|in|''))?\.?$`)
	reGauge       = regexp.MustCompile(`(?i)^#?\s*\d{1,2}\s*(awg|ga\b)|^awg\s*\d|^#\s?\d{1,2}$|^(?:[68]|1\d|2[0-6])\s*[/-]\s*[1-9]\d?\s*c?\b(?:[\s,(]|$)|\d+\s*[x×]\s*\d+([.,]\d+)?\s*(mm|²|qmm|$)|[\d.,]+\s*(mm²|mm2|mm\^2|sq\.?\s?mm|qmm|mmq)|^\d+\s*c\s*#?\s*\d|^\d+/0[.,]\d|\d\s?m\b.{0,8}\b\d{1,2}(?:[.,]\d+)?\s?mm\b|\d+\s*awg|\b\dc\b|\d+[gx]\d+[.,]?\d*`)
	reFraction    = regexp.MustCompile(`^(?:\d{1,2}[ -])?(?:1/2|1/4|3/4|1/8)$|^\d{0,2}[½¼¾]$`)
	reOhm         = regexp.MustCompile(`(?i)^[\d.,]+\s*k?\s*(ω|Ω|ohms?|r)\b?$`)
	rePercent     = regexp.MustCompile(`^[\d.,]+\s*%$`)
	reDecibel     = regexp.MustCompile(`(?i)^[-+−]?[\d.,]+\s*db`)
	reMoney       = regexp.MustCompile(`(?i)^[£$€]\s*[\d.,]+|[\d.,]+\s*(€|£|\$|eur|usd|gbp|chf)$`)
	reDegrees     = regexp.MustCompile(`(?i)^-?\d+([.,]\d+)?\s*(°\s*[cf]?|deg\s*c)$`)
	reColour      = regexp.MustCompile(`(?i)^RAL[ -]?\d{4}$`) // a colour by its number, no tag and no name of a place
	reTag         = regexp.MustCompile(`^\p{L}{1,6}[-_./ ]{0,2}\d{1,5}\p{L}?$|^\p{L}{1,4}\d{0,3}[-_./]\p{L}{0,4}\d{1,4}([-_./]\p{L}{0,3}\d{1,4})*\p{L}?$|^\d{1,3}[-_./]\p{L}{1,4}[-_./]?\d{1,4}$`)
	reTagRange    = regexp.MustCompile(`(?i)^\p{L}{1,6}[-_ ]?\d{1,5}\s*(\.\.+|…|–|—|-|to|bis|à|a|thru|through|t/m|tot|al|÷|,|;|/|&|\+|und|and|et|y|e|en)\s*\p{L}{0,6}[-_ ]?\d{1,5}`)
	reCount       = regexp.MustCompile(`(?i)^\(\d{1,3}\)$|^\d{1,3}\s*(no\.?|nos\.?|ea\.?|each|pcs?\.?|off|stk\.?|stück|st\.?|x|×|pz\.?|uds?\.?|u\.?|stuks?|pieces|units?|pi[eè]ces?)$|^[x×]\s?\d{1,3}$|^\d+\s*\+\s*\d+\s*(spare|res)`)
	reChannel     = regexp.MustCompile(`(?i)^(?:(?:amp\w*|ver\w+|rack|et\w*|fin\w*|end\w*)[\s.#-]*\w{0,3}|p?a[\s.#-]*\d{0,2}|\w{0,2}\d|(?-i:[A-H]))\s*[\s/.,:-]+\s*(ch\w*|k\w*|c\w*|out\w*|o/p|v\w*|s\w*|u\w*|l\w*)?[\s.#-]*(?:\d{1,2}|(?-i:[A-H]))(?:\s*[-+&/]\s*(?:\d{1,2}|(?-i:[A-H])))?(\s*\(?br\w*\)?)?$`)
	reChOnly      = regexp.MustCompile(`(?i)^(?:(?:amp|amplifier|ampli|amplificateur|amplificador|amplificatore|verstärker|endstufe|versterker|etapa|finale)[\s.]+)?(ch|chan|channel|kanal|canal|canale|can|kanaal|voie|ausgang|sortie|salida|uscita|uitgang|output|out|o/p|k|cn|way|weg)(?:[\s.#-]*\d{1,2}|[\s.#-]+(?-i:[A-H]|[A-Z]{1,2}\d{1,2}))(?:\s*[-+&/]\s*(?:\d{1,2}|(?-i:[A-H])))?\b`)
	reLetter      = regexp.MustCompile(`^([A-Z]|\d{1,2}[A-Wa-wYyZz]|[A-H]\d{1,2})$`)
	reZone        = regexp.MustCompile(`(?i)^(zones?|zona|zn|z|sector|sektor|secteur|settore|rufkreis|rufzone|omroepzone|sectie|groep|gruppe|bereich|pz|paging zone|pa zone|ez|group)[\s.#:-]*\d{1,3}\w?\b|^(zone|zona|sector)\s+\w+|^\d{1,2}\s*[-–:]\s*\p{L}{3,}`)
	reAmp         = regexp.MustCompile(`(?i)^(amp|amplifier|ampli|amplificateur|amplificador|amplificatore|ampl|verst\p{L}*|endstufe|versterker|eindversterker|etapa|finale|pa|booster|pwr amp|poweramp)(?:[\s.#:_-]*(?:\w{0,2}|amp[\s-]?)\d{1,3}\w?\b|[\s.#:_-]+"?(?-i:[A-Z])"?(?:$|[\s,;:)/]))`)
	reControl     = regexp.MustCompile(`(?i)^(vc|cv|att\p{L}*|lsr|ls-r|lr|vol|fader|ctrl|regler|lautst\p{L}*|atenuador|regulador|regolatore|attenuatore|volumeregelaar|regelaar|vr|rv|wk|lv|lvc|at|reg|wc|poten[tz]i[oó]\p{L}*|pot|mando)[\s.#:_-]*\w{0,2}\d{1,4}\w?\b`)
	reControlW    = regexp.MustCompile(`(?i)^(?:volume|wall|level|local)[\s-]*(?:control|knob|attenuator|fader|plate|dial)\s+(?:\S{0,5}|\pL{1,4}\s)\d|^(?:knob|control|molette|mando|comando|manopola|knop|draaiknop|dreh\w*|drehsteller)[\s.#:_-]*\w{0,3}\d{1,3}\b`)
	reWordsW      = regexp.MustCompile(`^(\p{L}[\p{L}. '’-]{3,30}?)[\s,:-]*\(?\d{1,3}\s*[Ww]\)?$`) // words and watts
	reJoint       = regexp.MustCompile(`(?i)amp.*\bch(?:\b|\d|an(?:nel)?s?\b|an(?:nel)?[ .]?\d)|^\p{L}{1,14}[\s.#-]*\d{1,2}[\s/.,:-]+(?:ch|chan|channel|kanal|canal|canale|kanaal|voie|ausgang|sortie|salida|uscita|uitgang|output|out|weg|way|k)\.?\s*(?:\d{1,2}|[a-h])\b|^\p{L}{1,10}[\s.#-]*\d{1,2}\s*[./:-]\s*(?:(?:ch|out|k)\pL*[\s.]+|o/p|ch(?:an(?:nel)?)?|out(?:put)?|k(?:an(?:al|aal)?)?)?[\s.]*(\d{1,2}|[a-h])(\s*[-+&]\s*(\d{1,2}|[a-h]))?$`)
)

// ratedControl reports whether a text is words for a control and its rating: "réglage de volume 60 W".
func ratedControl(s string) bool {
	m := reWordsW.FindStringSubmatch(s)
	return m != nil && vocabulary.DeviceIn(m[1]) == vocabulary.ControlDevice
}

// lookOf looks at a cell.
func lookOf(c cell) look {
	switch c.Kind {
	case grid.Date:
		return lookDate
	case grid.Boolean:
		return lookYes
	}
	w := c.says()
	switch {
	case w.line == "":
		return lookStruck
	case c.Kind == grid.Number:
		k := w.read().look &^ lookDate
		if strings.Contains(c.Format(), "€") || strings.Contains(c.Format(), "£") || strings.Contains(c.Format(), "$") && strings.Contains(c.Format(), "[$") {
			k |= lookMoney
		}
		return k | *numberLooks.Of(math.Float64bits(c.Number))
	}
	return w.read().look
}

// numberLooks are the looks of numbers, by their bits.
var numberLooks = remember.NewTable(12, func(bits uint64) *look {
	k := numberLook(math.Float64frombits(bits))
	return &k
})

func numberLook(v float64) look {
	k := lookNumber
	if v == float64(int64(v)) {
		k |= lookWhole
		if v >= 1 && v <= 99 {
			k |= lookSmall
		}
		if v >= 8 && v <= 24 && int64(v)%2 == 0 {
			k |= lookAWGNum
		}
	}
	if tapValues[v] {
		k |= lookTapValue
	}
	if areaValues[v] {
		k |= lookAreaNum
	}
	if v == 25 || v == 50 || v == 70 || v == 70.7 || v == 71 || v == 100 {
		k |= lookVoltNum
	}
	return k
}

// lookText looks at a trimmed text of one line.
func lookText(s string) look {
	w := wordingOf(s)
	if w.line != s {
		return readLook(s)
	}
	return w.read().look
}

// maxLook is how much of a text is looked at: longer ones are prose, and no
// cell may take for ever.
const maxLook = 4096

func readLook(s string) look {
	if len(s) > maxLook {
		return lookWords | lookLong | ofClass(classWithin(strings.ToValidUTF8(s[:maxLook], ""))&(classDevice|classForeign))
	}
	if v, ok := plainNumber(s); ok {
		return numberLook(v)
	}
	if isDitto(s) {
		return lookDitto
	}
	if isMissing(s) {
		return lookMissing
	}
	if ticks[s] {
		return lookYes
	}
	var k look
	digits, letters, words := 0, 0, 1
	for _, r := range s {
		switch {
		case r >= '0' && r <= '9':
			digits++
		case unicode.IsLetter(r):
			letters++
		case r == ' ':
			words++
		}
	}
	if letters > 0 {
		k |= lookWords
	}
	if len(s) > 60 || words > 8 {
		if len(s) < 200 && reRatingIn.MatchString(s) {
			k |= lookRating
		}
		return k | lookLong | ofClass(classWithin(s)&(classDevice|classForeign))
	}
	if digits == 0 {
		c := classOf(s)
		if letters == 1 { // "E" is a channel, a zone or existing: it says nothing by itself
			c &^= classStatus | classMounting | classMaterial | classFloor
		}
		k |= ofClass(c) | ofClass(classWithin(s)&(classDevice|classMounting|classMaterial|classForeign|classCable|classHiZ))
		if letters >= 3 && utf8.RuneCountInString(s) >= 3 {
			k |= lookRoom
		}
		if letters >= 4 && words <= 5 && saysState(s) {
			k |= lookStatus
		}
		if letters == 1 && reLetter.MatchString(s) {
			k |= lookLetter
		}
		if words > 5 {
			k |= lookLong
		}
		return k
	}
	if reColour.MatchString(s) {
		return lookWords
	}
	switch {
	case reMoney.MatchString(s):
		k |= lookMoney
	case rePercent.MatchString(s):
		k |= lookPercent
	case reDecibel.MatchString(s):
		k |= lookDecibel
	case reDegrees.MatchString(s):
		k |= lookDegrees
	case reOhm.MatchString(s):
		k |= lookOhm
	}
	if reWatts.MatchString(s) || reTapShort.MatchString(s) {
		k |= lookWatts
		if v, ok := leadingNumber(s); ok && tapValues[v] && v <= 60 {
			k |= lookTapUsual
		}
	}
	if k&lookWatts == 0 && wattsOfEach(s) {
		k |= lookWatts
	}
	if reTapSaid.MatchString(s) || reTapSet.MatchString(s) {
		k |= lookTapSaid | lookWatts
	}
	if k&lookWatts == 0 && picksTap(s) {
		k |= lookTapSaid | lookWatts
	}
	if k&(lookWatts|lookRating) == 0 && reCountW.MatchString(s) && strings.ContainsAny(s, "@xX× àa)j") {
		k |= lookCountWatts
	}
	if reTapList.MatchString(s) && !reLeadingZero.MatchString(s) {
		k |= lookTapList
	}
	if reFraction.MatchString(s) {
		k |= lookFraction
	}
	if reRating.MatchString(s) {
		k |= lookRating
	}
	if reVolts.MatchString(s) {
		k |= lookVolts
	}
	if reLength.MatchString(s) {
		k |= lookLength
	}
	if reGauge.MatchString(s) {
		k |= lookGauge
	}
	if reCount.MatchString(s) {
		k |= lookCount
	}
	if reTagRange.MatchString(s) {
		k |= lookTagRange
	}
	if reTag.MatchString(s) {
		k |= lookTag
	}
	if reLetter.MatchString(s) {
		k |= lookLetter
	}
	if reChOnly.MatchString(s) {
		k |= lookChannel
	} else if reChannel.MatchString(s) {
		k |= lookChannel
	}
	if reZone.MatchString(s) {
		k |= lookZone
	}
	if reAmp.MatchString(s) {
		k |= lookAmp
	}
	if reControl.MatchString(s) || reControlW.MatchString(s) || ratedControl(s) {
		k |= lookControl
	}
	if reJoint.MatchString(s) {
		k |= lookJoint
	}
	if letters > 0 && k&(lookWatts|lookVolts|lookLength|lookMoney|lookPercent|lookOhm|lookCount) == 0 {
		if words <= 4 && strings.IndexFunc(s, unicode.IsUpper) >= 0 || strings.ContainsAny(s, "-/") {
			k |= lookModel
		}
		if letters >= 3 && words >= 2 {
			k |= lookRoom
		}
	}
	k |= ofClass(classOf(s)) | ofClass(classWithin(s)&(classDevice|classForeign|classCable|classHiZ|classMounting|classMaterial|classFloor))
	if letters >= 4 && k&^(lookWords|lookRoom|lookModel) == 0 && saysState(s) {
		k |= lookStatus // "retiré en 2019"
	}
	if k&(lookJoint|lookAmp) != 0 || k&lookMounting != 0 && strings.Contains(s, "/") && anyDigit(s) {
		k &^= lookMounting // "rack 1 out A" is no way to mount anything
	}
	return k
}

// picksTap reports whether a text lists taps and marks one of them: "5 / *10* / 20 W".
func picksTap(s string) bool {
	if !strings.ContainsAny(s, "/|;") || !strings.ContainsAny(s, "*_[(<>→✓✔•!") {
		return false
	}
	t, err := notation.ParseTap(s, notation.Auto)
	return err == nil && t.Doubts.Has(notation.MarkTaken)
}

// wattsOfEach reports whether a text is a power that each of several has: "je 6 W".
func wattsOfEach(s string) bool {
	r, _ := utf8.DecodeRuneInString(s)
	if !unicode.IsLetter(r) {
		return false
	}
	rest, ok := notation.BehindEach(s)
	return ok && reWatts.MatchString(rest)
}

// saysState reports whether a text begins with a sure word for what has become of a device.
func saysState(s string) bool {
	list := notation.Statuses(s)
	return len(list) > 0 && list[0].Sure && strings.HasPrefix(s, list[0].Text)
}

func ofClass(c class) look {
	var k look
	for _, m := range [...]struct {
		c class
		k look
	}{{classStatus, lookStatus}, {classMounting, lookMounting}, {classYes, lookYes}, {classMaterial, lookMaterial}, {classFloor, lookFloor},
		{classUse, lookUse}, {classDevice, lookDevice}, {classCable, lookCableWord}, {classHiZ, lookHiZ}, {classMissing, lookMissing},
		{classForeign, lookForeign}} {
		if c&m.c != 0 {
			k |= m.k
		}
	}
	return k
}

// ticks are the signs that people tick with.
var ticks = map[string]bool{"x": true, "X": true, "✓": true, "✔": true, "√": true, "●": true, "•": true, "■": true, "☑": true, "☒": true, "*": true, "✗": true}

// plainNumber reads a number without a unit: full stop or comma as the
// decimal mark, thousands marks, a vulgar fraction.
func plainNumber(s string) (float64, bool) {
	if s == "" || len(s) > 24 {
		return 0, false
	}
	switch s {
	case "½":
		return 0.5, true
	case "¼":
		return 0.25, true
	case "¾":
		return 0.75, true
	}
	digits, dots, commas := 0, 0, 0
	for i := range len(s) {
		switch c := s[i]; {
		case c >= '0' && c <= '9':
			digits++
		case c == '.':
			dots++
		case c == ',':
			commas++
		case (c == '-' || c == '+') && i == 0:
		case (c == ' ' || c == '\'') && i > 0 && i+1 < len(s) && s[i+1] >= '0' && s[i+1] <= '9':
		default:
			return 0, false
		}
	}
	if digits == 0 || digits > 15 {
		return 0, false
	}
	t := s
	if strings.ContainsAny(t, " '") {
		t = strings.NewReplacer(" ", "", "'", "").Replace(t)
	}
	switch {
	case commas > 0 && dots > 0:
		if strings.LastIndexByte(t, ',') > strings.LastIndexByte(t, '.') {
			t = strings.ReplaceAll(t, ".", "")
			t = strings.Replace(t, ",", ".", 1)
		} else {
			t = strings.ReplaceAll(t, ",", "")
		}
	case commas == 1:
		t = strings.Replace(t, ",", ".", 1)
	case commas > 1:
		t = strings.ReplaceAll(t, ",", "")
	case dots > 1:
		t = strings.ReplaceAll(t, ".", "")
	}
	v, err := strconv.ParseFloat(t, 64)
	return v, err == nil
}

// isFigureOnly reports whether a text is nothing but figures and their marks.
func isFigureOnly(s string) bool {
	for i := range len(s) {
		if (s[i] < '0' || s[i] > '9') && s[i] != '.' && s[i] != ',' && s[i] != ' ' && s[i] != '-' && s[i] != '+' {
			return false
		}
	}
	return true
}

// leadingNumber reads the number a text begins with: "7,5 W" gives 7.5.
func leadingNumber(s string) (float64, bool) {
	i := 0
	for i < len(s) && (s[i] >= '0' && s[i] <= '9' || s[i] == '.' || s[i] == ',') {
		i++
	}
	return plainNumber(strings.TrimRight(s[:i], ".,"))
}

// isDitto reports whether a text repeats the cell above.
func isDitto(s string) bool {
	switch strings.Trim(s, " -–.·`'()") {
	case `"`, "″", "”", "“", "„", "〃", `""`, "′′", "’’":
		return true
	}
	if s == "''" || s == "' '" || s == `" "` {
		return true
	}
	return len(s) <= longestDitto && classOf(s)&classDitto != 0 && classOf(s)&classStatus == 0
}

// longestDitto is the bytes of the longest word for "as above", and more.
const longestDitto = 24

// isBlankWord reports whether a text is such a word in brackets: "(blank)".
func isBlankWord(s string) bool {
	return len(s) > 2 && len(s) < 16 && s[0] == '(' && s[len(s)-1] == ')' && classOf(s)&classBlank != 0
}

// isMissing reports whether a text says that there is no value.
func isMissing(s string) bool {
	if strings.Trim(s, "-–—_.?/\\ *") == "" || isBlankWord(s) {
		return true
	}
	return len(s) <= 24 && classOf(s)&classMissing != 0
}
