package notation

import (
	"regexp"
	"strings"
)

// itemRef finds a word for an item of a list with the number or letter of one
// behind it: "item C", "Pos. 3", "n° 2", "partida 9.2", "item W7".
var itemRef = regexp.MustCompile(`(?i)(?:^|[^\pL\pN])(?:[ií]tems?|postes?|post(?:en)?|pos(?:ition(?:en)?)?|nr|n[°ºr]|no\.|partidas?|articles?|art|voc[ei]|regel|lines? item)\.?\s*([A-Z]{1,2}\d{1,3}\b|[A-Z]\b|\d+(?:\.\d+)*[a-z]?\b)`)

// itemMore finds another item with letters behind one: "W7, W8 and W9".
var itemMore = regexp.MustCompile(`(?i)^\s*(?:[,;&+/]|(?:and|und|et|y|e|ed|en)\b)\s*(?:(?:and|und|et|y|e|ed|en)\s+)?([A-Z]{1,2}\d{1,3})\b`)

// ItemRefs returns the numbers or letters of the items of a list that a text
// refers to, as written.
func ItemRefs(s string) []string {
	text := Clean(s)
	if len(text) > maxText {
		return nil
	}
	var out []string
	for _, m := range itemRef.FindAllStringSubmatchIndex(text, -1) {
		out = append(out, strings.TrimSpace(text[m[2]:m[3]]))
		for rest := text[m[3]:]; ; {
			more := itemMore.FindStringSubmatchIndex(rest)
			if more == nil {
				break
			}
			out = append(out, rest[more[2]:more[3]])
			rest = rest[more[3]:]
		}
	}
	return out
}
