package notation

import (
	"regexp"
	"strconv"
	"strings"
)

// A device group in words is a count, a power and what the devices are, in any
// order that people type: "8 x 1.5 W ceiling", "2 @ 5 W wall", "4 no. horns
// tapped 15 W", "6 plafonniers à 3 W".
var (
	groupCount = regexp.MustCompile(`^(?:\((\d{1,3})\)|(\d{1,3})\s*(?:[x×*@]|à|á|(?i:nos?\.?|off|ea\.?|pcs?\.?|st\.?|stk\.?|stück|uds?\.?|pz\.?|pièces|stuks)(?:[^\p{L}]|$))|(\d{1,3})\s)\s*`)
	groupPower = regexp.MustCompile(`(?:^|[\s@(x×*])(\d{1,3}(?:[.,]\d{1,2}|/\d{1,2})?)\s*(?i:watts?|w)(?:[^\p{L}]|$)`)
	groupBreak = regexp.MustCompile(`\s*(?:[;+]|,\s|\s&\s|\s(?i:and|und|et|y|e|en)\s)\s*`)
	groupWords = regexp.MustCompile(`^[\p{L}\s"'’.,:()@x×*/-]*$`)
	groupSizes = regexp.MustCompile(`\b\d{1,2}\s*(?:"|''|”|in\b|inch\b|cm\b)`)
)

// ParseGroups reads groups of devices told in words with their taps, such as
// "8@2.5W clg, 2@5W wall". Each group has a count and one power in watts;
// anything else with a figure in it is not understood.
func ParseGroups(s string, style Style) ([]TapGroup, error) { return knownGroups.of(s, int(style)) }

func parseGroups(s string, style Style) ([]TapGroup, error) {
	const what = "group"
	text, err := prepare(what, s)
	if err != nil {
		return nil, err
	}
	if !strings.ContainsAny(text[:1], "0123456789(,;+") || !strings.ContainsAny(text, "wW") {
		return nil, ErrNotUnderstood // no count in front or no power, as most texts: too many for a message each
	}
	lines := strings.Split(text, "\n")
	text = lines[0]
	for _, line := range lines[1:] {
		if groupCount.MatchString(line) {
			text += "; " + line
		} else {
			text += " " + line
		}
	}
	var out []TapGroup
	for _, part := range groupBreak.Split(text, -1) {
		part = strings.TrimSpace(groupSizes.ReplaceAllString(part, ""))
		if part == "" {
			continue
		}
		g, ok := parseGroup(part, style)
		switch {
		case ok:
			out = append(out, g)
		case len(out) > 0 && groupWords.MatchString(part):
			// more words about the group before
		default:
			return nil, fail(what, s, ErrNotUnderstood)
		}
	}
	if len(out) == 0 {
		return nil, fail(what, s, ErrNotUnderstood)
	}
	return out, nil
}

func parseGroup(part string, style Style) (TapGroup, bool) {
	count := groupCount.FindStringSubmatchIndex(part)
	if count == nil {
		return TapGroup{}, false
	}
	digits := ""
	for i := 2; i < len(count); i += 2 {
		if count[i] >= 0 {
			digits = part[count[i]:count[i+1]]
		}
	}
	rest := part[count[1]-1:] // the last mark of the count may stand before the power
	power := groupPower.FindAllStringSubmatchIndex(rest, -1)
	if len(power) != 1 {
		return TapGroup{}, false
	}
	p := power[0]
	words := strings.TrimPrefix(rest[:p[2]], digits) + " " + rest[p[3]:]
	if first := strings.Fields(words); !groupWords.MatchString(words) || len(first) > 0 && strings.EqualFold(first[0], "w") && p[2] > 2 {
		return TapGroup{}, false
	}
	w, err := ParseWatts(rest[p[2]:p[3]]+" W", style)
	n, err2 := strconv.Atoi(digits)
	if err != nil || err2 != nil || n < 1 || w.W <= 0 {
		return TapGroup{}, false
	}
	return TapGroup{Count: n, W: w.W}, true
}
