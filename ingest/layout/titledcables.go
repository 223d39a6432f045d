package layout

import (
	"regexp"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/notation"
)

// Titles of sections may end in the cable of what they name, in a cell of its own or in the same one: "Output 1 -
// Classrooms | 16 AWG, 340 ft to the last loudspeaker", "Ausgang 2 - Hof, 2 x 1,5 mm², 60 m".

// TitledCable is the key of the fact that holds the cable of a title.
const TitledCable = "cable of the title"

// reCableMarks finds what stands between the parts of a title that may end in a cable.
var reCableMarks = regexp.MustCompile(`\s*[,;]\s+|\s+[-–—|]\s+|\s*\(|:\s+`)

// cableBeside is the cable in the cells behind the first of a title that names what feeds a section or a place by a
// word for it; false where they hold anything else.
func cableBeside(slots []slot) (string, bool) {
	if len(slots) < 2 || !namesPart(slots[0].cell.line()) {
		return "", false
	}
	var words []string
	for _, s := range slots[1:] {
		if s.cell.Kind != grid.String {
			return "", false
		}
		words = append(words, s.cell.line())
	}
	cable := strings.Join(words, ", ")
	return cable, isCable(cable)
}

// cutCable parts a title from the cable that it ends in.
func cutCable(t string) (title, cable string, ok bool) {
	if !anyDigit(t) || len(t) > 90 {
		return t, "", false
	}
	for _, m := range reCableMarks.FindAllStringIndex(t, -1) {
		title, cable = strings.TrimSpace(t[:m[0]]), strings.Trim(t[m[1]:], " ()")
		if isCable(cable) {
			return title, cable, namesPart(title)
		}
	}
	return t, "", false
}

// namesPart reports whether a title begins with a numbered output, line, amplifier or zone.
func namesPart(t string) bool {
	parts := titleParts(t)
	return len(parts) > 0 && anyDigit(parts[0]) && (feeders[sectionField(parts[0])] || reZone.MatchString(parts[0]))
}

// isCable reports whether each part of a text is a conductor or a length with its unit, and maybe where that ends, and
// one of them a length.
func isCable(t string) bool {
	if !anyDigit(t) {
		return false
	}
	length := false
	for _, part := range reCableMarks.Split(t, -1) {
		if _, rest, ok := notation.ConductorIn(part, notation.Auto); ok {
			if part = strings.Trim(rest, " -–"); !anyDigit(part) {
				continue
			}
		}
		if _, ok := notation.LengthAhead(part); !ok {
			return false
		}
		length = true
	}
	return length
}
