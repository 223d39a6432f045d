package notation

import "strconv"

// A Setting is what a remark says that loudspeakers are tapped at.
type Setting struct {
	W       float64 // watts; 0 where a share of the rated power is said
	Share   float64 // of the rated power, 1 for "full power"; 0 where watts are said
	Count   int     // of how many loudspeakers it is said; 0 where of all
	Pending bool    // it is asked for, or not yet done
}

// longestSetting is the most tokens of a remark about a setting; what is longer is a letter.
const longestSetting = 40

// SettingIn finds the tap that a remark among other words sets loudspeakers to:
// "set to 5 W since March", "auf 3 W eingestellt", "2 of them now 3W", "full
// power". What was is passed over; a remark that names several settings, or a
// power without a word that sets it, says none.
func SettingIn(s string, style Style) (Setting, bool) {
	tokens := lex(Clean(s), style)
	if len(tokens) > longestSetting {
		return Setting{}, false
	}
	c := &clauseReading{tokens: tokens}
	var out Setting
	found := false
	for i := 0; i < len(tokens); {
		one, n := c.settingAt(i)
		if n == 0 {
			i++
			continue
		}
		if found && (one.W != out.W || one.Share != out.Share) {
			return Setting{}, false
		}
		if !found {
			one.Count = c.countBefore(i)
		}
		out, found = one, true
		i += n
	}
	if !found {
		return Setting{}, false
	}
	out.Pending = len(words("wish").mentions(s)) > 0 || DoneOf(s) == No
	return out, true
}

// settingAt reads a setting at tokens[i], and the number of its tokens: a word
// that sets and a power or a share behind it, or words for a share alone.
func (c *clauseReading) settingAt(i int) (s Setting, n int) {
	if i > 0 && (isNegation(c.tokens[i-1]) || wasWord(c.tokens[i-1])) {
		return Setting{}, 0
	}
	e, n, ok := words("tap").at(c.tokens, i)
	if !ok || e.kind != "set" {
		share, n, ok := words("share").at(c.tokens, i)
		if ok && n > 1 {
			return Setting{Share: shareOf(share)}, n
		}
		return Setting{}, 0
	}
	j := i + n
	for k := 0; k < 2 && j < len(c.tokens); k++ { // "set on tap 5 W", "now at 5 W"
		t := c.tokens[j]
		tap, m, ok := words("tap").at(c.tokens, j)
		switch {
		case ok && (tap.kind == "tap" || tap.kind == "set" || tap.kind == "at"):
			j += m
		case t.is(":") || t.is("@") || t.is("=") || t.kind == wordToken && (isAt(t.text) || isRangeWord(t.text)):
			j++
		}
	}
	if w, m := c.power(j); m > 0 && w <= MaxTapW {
		if c.deviceAt(j+m) || j+m < len(c.tokens) && (c.tokens[j+m].is("/") || c.tokens[j+m].is("-")) {
			return Setting{}, 0 // a list of what is offered
		}
		return Setting{W: w}, j + m - i
	}
	if share, m, ok := words("share").at(c.tokens, j); ok {
		return Setting{Share: shareOf(share)}, j + m - i
	}
	return Setting{}, 0
}

// countBefore is the number of loudspeakers of which a setting at tokens[i] is
// said: the figure or word for one before it; 0 if there is none.
func (c *clauseReading) countBefore(i int) int {
	for k := i - 1; k >= 0; k-- {
		if _, n := c.power(k); n > 0 || c.tokens[k].is(";") {
			return 0
		}
		if n, ok := numeralOf(c.tokens[k]); ok {
			return n
		}
	}
	return 0
}

func shareOf(e entry) float64 {
	v, _ := strconv.ParseFloat(e.kind, 64)
	return v
}

func wasWord(t token) bool {
	e, ok := words("tap").phrases[t.text]
	return ok && t.kind == wordToken && e.kind == "was"
}
