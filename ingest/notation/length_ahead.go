package notation

import "strings"

// LengthAhead is the length with its unit that a text begins with, behind a word for cables or runs maybe, where no
// other figure follows: "340 ft" of "340 ft to the last speaker", "60 m" of "cable 60 m".
func LengthAhead(text string) (string, bool) {
	words := strings.Fields(text)
	for len(words) > 0 && !strings.ContainsAny(words[0], "0123456789") {
		words = words[1:]
	}
	for n := min(2, len(words)); n > 0; n-- {
		length := strings.Join(words[:n], " ")
		l, err := ParseLength(length, Auto, UnitUnknown)
		if err != nil || l.Unit == UnitUnknown {
			continue
		}
		return length, !strings.ContainsAny(strings.Join(words[n:], " "), "0123456789")
	}
	return "", false
}
