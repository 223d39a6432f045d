package notation

import (
	"regexp"
	"strconv"
	"strings"
)

// How people write conductors beside the forms of conductor_read.go, and the
// form that is read. The words are of six languages.
var conductorWords = []struct {
	written *regexp.Regexp
	plain   string
	doubts  Doubts
}{
	{regexp.MustCompile(`(?i)^(?:ca\.?|approx\.?|about|~|env\.?|environ|circa|looks like|probably|etwa|ongeveer|unos|aprox\.?)\s*(\d)`), "$1", Approximate},
	{regexp.MustCompile(`(?i)^(?:old|ex\.|exist\.|existing|bestand|existant|existente|esistente|bestaand)[,:]?\s+(\d)`), "$1", 0},
	{regexp.MustCompile(`\s*\?+$`), "", Approximate},
	{regexp.MustCompile(`(?i)\b\d+(?:[.,]\d+)?/\d+(?:[.,]\d+)?\s*k?V\b`), " ", 0},                                          // 0,6/1 kV
	{regexp.MustCompile(`(?i)(\d)\s*(?:mm\s*)?(?:carrés?|quadrat|cuadrados?|quadri|kw\.|kwadraat)(?:$|\s)`), "$1 mm² ", 0}, // 1,5 carré
	{regexp.MustCompile(`(?i)\b(?:twin\s*(?:&|and|\+)\s*earth|t\s*[&+]\s*e)\b`), "2 core", 0},
	{regexp.MustCompile(`(?i)\b(?:fig(?:ure)?\.?[ -]?(?:of )?(?:8|eight)|twin(?: flex)?|bipolare?|bifilare?|zweiadrig|tweeaderig)\b`), "2 core", 0},
	{regexp.MustCompile(`(?i)^2\s*(?:runs?|cables|no\.?)\s*(?:of\s*)?(\d+[/-]\d)`), "2 x $1", 0},
	{regexp.MustCompile(`(?i)(\d\s*AWG)\s*/\s*(\d+(?:[.,]\d+)?\s*mm²?2?)$`), "$1 ($2)", 0},
	{regexp.MustCompile(`(?i)^(\d{2})\s?g$`), "$1 AWG", 0},
}

// inchStrands is a conductor of wires in fractions of an inch, "7/.029",
// "23/0076": the imperial sizes of old British cables, from memory.
var inchStrands = regexp.MustCompile(`\b(\d{1,3})/(?:0?\.|)(0(?:29|36|44|52|64|076|10|12|18))\b`)

// plainConductor writes a conductor in a form that is read.
func plainConductor(text string) (string, Doubts) {
	var d Doubts
	for _, w := range conductorWords {
		if w.written.MatchString(text) {
			text = strings.TrimSpace(w.written.ReplaceAllString(text, w.plain))
			d |= w.doubts
		}
	}
	text = inchStrands.ReplaceAllStringFunc(text, func(m string) string {
		p := inchStrands.FindStringSubmatch(m)
		inches, err := strconv.ParseFloat("0."+p[2], 64)
		if err != nil {
			return m
		}
		return p[1] + "/" + strconv.FormatFloat(inches*25.4, 'f', 2, 64)
	})
	return text, d
}
