package ingest

import (
	"regexp"
	"slices"
	"strings"
	"unicode"

	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
)

// Notes rate controls in many words: "Ratings: VA-1 35 W, VA-2 10 W", "Pad VA-3
// is good for 50 W", "VA-1/VA-2: 35 W / 10 W". The names of controls that rows
// use are known; what stands between them and the powers need not be.

// controlsRated reads such a note; nil where it names no control that rows
// name, where a name has no power or several, or where the powers may be loads.
func (b *builder) controlsRated(s seen) []carried {
	if !mayStateWatts(s.text) {
		return nil
	}
	s.text = b.behindAmplifier(s.text)
	powers := wattsIn.FindAllStringSubmatchIndex(s.text, -1)
	if len(powers) == 0 || len(powers) != len(notation.PowersIn(s.text, notation.Auto)) || loadWords.in(join.Fold(s.text)) {
		return nil
	}
	var out []carried
	names, rated := 0, 0 // of the list being read
	end := 0
	var others seen // what all that are not named may carry: "RG1 5 W, the others 20 W"
	for _, p := range powers {
		found, ok := b.controlsNamed(s.text[end:p[0]])
		if !ok {
			return nil
		}
		if len(found) == 0 && len(out) > 0 && !others.had() && restWords.in(join.Fold(s.text[end:p[0]])) {
			others = s
			others.text = s.text[p[2]:p[3]]
			names, rated, end = 1, 1, p[1]
			continue
		}
		if len(found) > 0 {
			if rated != names && rated != 1 {
				return nil // as many powers as names, or one for all
			}
			names, rated = len(found), 0
			for _, name := range found {
				out = append(out, carried{controls: []string{name}})
			}
		}
		rated++
		if rated > names {
			return nil
		}
		watts := s
		watts.text = s.text[p[2]:p[3]]
		list := out[len(out)-names:]
		for i := rated - 1; i < names; i++ {
			list[i].watts = watts
		}
		end = p[1]
	}
	if rest := s.text[end:]; rated != names && rated != 1 || b.namesControl(rest) && !unmarkedWords.in(join.Fold(rest)) { // "P3 says nothing"
		return nil
	}
	if others.had() {
		b.controlsAlike(others)
	}
	return out
}

// behindAmplifier is what a note says of controls behind an amplifier and a comma: "R1 and R2 12 W" of "Rack with 4
// lines of 120 W, R1 and R2 12 W"; all of another text.
func (b *builder) behindAmplifier(text string) string {
	first := wattsIn.FindStringIndex(text)
	if first == nil {
		return text
	}
	mark := strings.IndexAny(text[first[1]:], ",;")
	if mark < 0 {
		return text
	}
	head, rest := text[:first[1]+mark], strings.TrimSpace(text[first[1]+mark+1:])
	if _, err := notation.ParseRatingSentence(head, notation.Auto); err != nil || b.namesControl(head) || !b.namesControl(rest) {
		return text
	}
	return rest
}

// controlsNamed are the controls that rows name in a piece of a text, and
// whether no other word in it holds a figure or names another device.
func (b *builder) controlsNamed(piece string) (names []string, ok bool) {
	words := wordsAt(piece)
	begun := 0 // where the last name stands
	for i := 0; i < len(words); {
		name, n := "", 0
		for k := min(2, len(words)-i); k > 0 && n == 0; k-- {
			t := piece[words[i][0]:words[i+k-1][1]]
			if b.dir.controls[join.Key(t)] && isTag(t) {
				name, n = t, k
			}
		}
		word := piece[words[i][0]:words[i][1]]
		switch k := join.Key(word); {
		case n > 0:
			if slices.Contains(names, name) {
				return nil, false
			}
			if len(names) > 0 {
				names = append(names, b.controlsBetween(piece[begun:words[i+n-1][1]])...)
			}
			begun = words[i][0]
			names = append(names, name)
			i += n
			continue
		case len(names) > 0 && likeTag(word, names[len(names)-1]): // a control that no row names: "R1 to R9"
			names = append(names, b.controlsBetween(piece[begun:words[i][1]])...)
			names, begun = append(names, word), words[i][0]
		case anyDigit(word), len(b.dir.devices[k]) > 0, b.dir.ampRefs[k]:
			return nil, false
		}
		i++
	}
	return names, true
}

// likeTag reports whether two tags differ in their figures alone.
func likeTag(x, y string) bool {
	const figures = "0123456789"
	stem := strings.TrimRight(join.Key(x), figures)
	return stem != "" && stem != join.Key(x) && stem == strings.TrimRight(join.Key(y), figures)
}

// controlsBetween are the controls inside a range that a text is, "ATT-1 to ATT-3", without
// its ends; none for other texts.
func (b *builder) controlsBetween(text string) []string {
	tags, err := notation.ParseTags(text)
	if err != nil || !tags.Ranged || len(tags.List) < 3 {
		return nil
	}
	inner := tags.List[1 : len(tags.List)-1]
	return slices.DeleteFunc(slices.Clone(inner), func(tag string) bool { return !b.dir.controls[join.Key(tag)] })
}

// isTag reports whether a name is a tag: letters and a figure, or capitals alone, in parts or not.
func isTag(name string) bool {
	return strings.ContainsFunc(name, unicode.IsLetter) && (anyDigit(name) || len(name) > 1 && strings.IndexFunc(strings.ReplaceAll(name, "-", ""), notUpper) < 0)
}

// tagOfLetters is a tag that ends in one letter where others have a figure: "VR-A".
var tagOfLetters = regexp.MustCompile(`^\p{Lu}{1,4}[-.]\p{Lu}$`)
