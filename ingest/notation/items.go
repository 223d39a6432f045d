package notation

import (
	"regexp"
	"strings"
)

// itemRef finds a word for an item of a list with the number or letter of one
// behind it: "item C", "Pos. 3", "n° 2", "partida 9.2".
var itemRef = regexp.MustCompile(`(?i)(?:^|[^\pL\pN])(?:items?|pos(?:ition(?:en)?)?|nr|n[°ºr]|no\.|partidas?|postes?|articles?|art|voc[ei]|regel|lines? item)\.?\s*([A-Z]\b|\d+(?:\.\d+)*[a-z]?\b)`)

// ItemRefs returns the numbers or letters of the items of a list that a text
// refers to, as written.
func ItemRefs(s string) []string {
	text := Clean(s)
	if len(text) > maxText {
		return nil
	}
	var out []string
	for _, m := range itemRef.FindAllStringSubmatch(text, -1) {
		out = append(out, strings.TrimSpace(m[1]))
	}
	return out
}
