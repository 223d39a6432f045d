package notation

import (
	"regexp"
	"strings"
)

// A Level is the setting of a control.
type Level struct {
	IsPercent bool
	Percent   float64 // of full travel, 0 to 100, where IsPercent
	DB        float64 // decibels below full, 0 or negative, where not IsPercent
	Doubts    Doubts
}

// mostDB is the largest attenuation that is believed, in dB.
const mostDB = 120

// String returns the level so that ParseLevel reads it again with Point.
func (l Level) String() string {
	if l.IsPercent {
		return plainFigure(l.Percent) + " %"
	}
	return plainFigure(l.DB) + " dB"
}

var (
	levelPercent = regexp.MustCompile(`^~?\(?` + reNumber + ` ?(?:%|per ?cent|pct\.?|prozent|pour cent|por ciento|per cento|procent)\)?$`)
	levelDB      = regexp.MustCompile(`^~?\(?(-? ?)` + reNumber + ` ?dbs?\)?$`)
	levelSteps   = regexp.MustCompile(`^(\d{1,2}) ?(?:/|of|von|sur|de|su|van) ?(\d{1,2})$`)
	levelBare    = regexp.MustCompile(`^~?` + reNumber + `$`)
	levelMinus   = regexp.MustCompile(`^- ?\d`)
)

// ParseLevel reads the setting of a control: "75 %", "-6 dB", "7/10", "3/4". A
// bare figure is a percentage with the doubt Bare; up to 1 it is a share
// ("0.75"). An attenuation without its sign ("6 dB") has the doubt SignTaken.
// The error wraps ErrTooLarge above 100 %, ErrNegative below 0 %, and
// ErrAmbiguous for a range.
func ParseLevel(s string, style Style) (Level, error) {
	const what = "level"
	text, err := prepare(what, s)
	if err != nil {
		return Level{}, err
	}
	folded := strings.ReplaceAll(fold(text), string(fractionSlash), "/")
	var l Level
	if strings.HasPrefix(folded, "~") {
		l.Doubts |= Approximate
	}
	number := func(text string) (float64, bool) {
		f, n := resolve(text, style)
		l.Doubts |= f.doubts
		return f.value, !f.bad && n == len(text)
	}
	ok := false
	switch {
	case levelPercent.MatchString(folded):
		l.IsPercent = true
		l.Percent, ok = number(levelPercent.FindStringSubmatch(folded)[1])
	case levelDB.MatchString(folded):
		m := levelDB.FindStringSubmatch(folded)
		l.DB, ok = number(m[2])
		if l.DB != 0 {
			l.DB = -l.DB
			if m[1] == "" {
				l.Doubts |= SignTaken
			}
		}
	case levelSteps.MatchString(folded):
		m := levelSteps.FindStringSubmatch(folded)
		part, all := whole(m[1]), whole(m[2])
		if all == 0 || part > all || isPadded(m[1]) || isPadded(m[2]) {
			return Level{}, fail(what, text, ErrNotUnderstood)
		}
		l.IsPercent, l.Percent, ok = true, 100*float64(part)/float64(all), true
	case levelBare.MatchString(folded):
		l.IsPercent = true
		l.Percent, ok = number(levelBare.FindStringSubmatch(folded)[1])
		l.Doubts |= Bare
		if l.Percent <= 1 && strings.ContainsAny(folded, ".,") {
			l.Percent *= 100
		}
	case levelMinus.MatchString(folded):
		return Level{}, fail(what, text, ErrNegative)
	case strings.Count(folded, "%")+strings.Count(folded, "db") > 0 && strings.ContainsAny(folded, "-/") && strings.ContainsAny(folded, "0123456789"):
		return Level{}, fail(what, text, ErrAmbiguous)
	}
	switch {
	case !ok:
		return Level{}, fail(what, text, ErrNotUnderstood)
	case l.Percent > 100 || l.DB < -mostDB:
		return Level{}, fail(what, text, ErrTooLarge)
	}
	return l, nil
}
