package ingest

import (
	"regexp"
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/join"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// A controlMention is what a row that is no control says of its control.
type controlMention struct {
	name   string // its tag, "" for one that is only described
	model  seen
	rating seen // a rating beside the tag, or alone
	place  seen // where it hangs, as its title says
	at     seen
	any    bool // there is a control, named or not
}

// ratingBehind finds a rating behind a name: "VC-3 (35 W)", "Amp 1 (4 x 125 W)".
var ratingBehind = regexp.MustCompile(`(?i)^(.*?\S)[\s,;(/:–-]+((?:\d+\s?[x×*]\s?)?\d+(?:[.,]\d+)?\s?k?W(?:atts?)?\b.*?)\)?$`)

// controlText reads the control of a row that describes something else.
func (b *builder) controlText(r *row) controlMention {
	r = b.speaker(r)
	c := controlMention{}
	if r.feed != nil && r.feed.control.had() && !r.own(vocabulary.Control).had() {
		return controlMention{name: tidy(r.feed.control.text), at: r.feed.control, any: true}
	}
	s := r.say(vocabulary.Control)
	if m := r.own(vocabulary.ControlModel); m.had() {
		c.model, c.any, c.at = m, true, m
	}
	if w := r.own(vocabulary.ControlWatts); w.had() {
		c.rating, c.any = w, true
		if !c.at.had() {
			c.at = w
		}
	}
	if d, by := b.hangsOn(r); d != nil && d.kind == controlRow && r.kind != cableRow {
		c.name, c.at, c.any = b.ownControlName(d).text, by, true
		return c
	}
	if !s.had() && !c.any && s.missing == notation.MissingNone {
		return b.controlRemark(r)
	}
	if !s.had() || s.col != nil && b.otherFeed(r).source.At == s.source.At {
		return c
	}
	if notation.AnswerOf(s.text) == notation.No {
		return controlMention{}
	}
	c.at, c.any = s, true
	if notation.AnswerOf(s.text) == notation.Yes {
		return c
	}
	if parts := slashMark.Split(listMarks.ReplaceAllString(s.text, "/"), -1); len(parts) > 1 && b.areControls(parts) {
		b.ask(s.source.At, "control", "“"+short(s.text)+"” are several controls: how many of these loudspeakers hang behind each?", "the load of each of these controls")
		return controlMention{}
	}
	t := takeApart(s.text)
	switch {
	case t.watts != "" && t.name != "":
		if !c.rating.had() {
			c.rating = s
			c.rating.text, c.rating.cell = t.watts, nil
		}
		if notation.AnswerOf(t.name) == notation.Yes {
			return c // "Y - 35 W"
		}
	case s.cell != nil && s.cell.Kind == grid.Number || pureRating(tidy(s.text)):
		if !c.rating.had() {
			c.rating = s
		}
		return c
	}
	if s.col != nil && b.modelColumns[s.col] {
		if !c.model.had() {
			c.model = s
			c.model.text = t.name
		}
		return c
	}
	c.name = t.name
	if s.col == nil && t.place != "" {
		c.place = s
		c.place.text, c.place.cell = t.place, nil
	}
	return c
}

// areControls reports whether all of several names are tags of controls that
// have rows of their own.
func (b *builder) areControls(names []string) bool {
	for _, name := range names {
		list := b.dir.devices[join.Key(name)]
		if !b.dir.ownControls[join.Key(name)] && (len(list) == 0 || list[0].kind != controlRow) {
			return false
		}
	}
	return true
}

// A controlParts is the text of a control taken apart.
type controlParts struct{ name, watts, place string }

var (
	controlWatts  = regexp.MustCompile(`(?i)[\s,;(/:–-]*\(?\b((?:\d+\s?[x×*]\s?)?\d+(?:[.,]\d+)?\s?k?W(?:atts?)?\b[^)–]*?)(?:\)|$|\s+[–-]\s+)`)
	controlJoiner = regexp.MustCompile(`(?i)[\s,;(/:–-]+(?:da|de|di|d'|of|with|rated|for|max\.?|maxi|up to|bis|mit|von|für|à|a|con|tot|van|met|jusqu'à)\.?$`)
	controlBehind = regexp.MustCompile(`(?i)^(?:behind|via|through|after|on|derrière|sur|après|hinter|über|an|tras|detrás de|dietro|su|achter|op)\s+(?:the |a |an |le |la |l'|un |une |dem |der |einem |el |il |lo |de |het |een )?`)
	controlTag    = regexp.MustCompile(`^(?:\p{L}{1,4}[-. ]?\d{1,3}\p{L}?|\p{Lu}{1,4}-\p{Lu}{1,3})$`)
)

// takeApart finds the name of a control, its rating and its place in a text:
// "VC-1 (10 W) - Seed room", "R1 da 10 W", "behind attenuator T1, 12 W". The
// words for a control in front of a tag are left out.
func takeApart(text string) controlParts {
	name := tidy(strings.TrimRight(text, " :"))
	p := controlParts{}
	if m := controlWatts.FindStringSubmatchIndex(name); m != nil && m[0] > 0 {
		p.watts = strings.TrimRight(name[m[2]:m[3]], " ,;:-–")
		p.place = strings.Trim(name[m[1]:], " ,;:()-–")
		name = strings.TrimRight(name[:m[0]], " ,;(/:–-")
		name = strings.TrimRight(controlJoiner.ReplaceAllString(name, ""), " ,;(/:–-")
	} else if before, after, ok := cutAny(name, " - ", " – "); ok && controlTag.MatchString(before) {
		name, p.place = before, after
	}
	name = controlBehind.ReplaceAllString(name, "")
	words := strings.Fields(name)
	for n := 1; n <= 2 && n < len(words); n++ {
		tag, kind := strings.Join(words[len(words)-n:], " "), strings.Join(words[:len(words)-n], " ")
		if k := join.Parse(join.Control, kind+" x"); controlTag.MatchString(tag) && k.Title == "x" && k.Number == "" {
			name = tag
			break
		}
	}
	p.name = name
	return p
}

func cutAny(s string, marks ...string) (before, after string, ok bool) {
	for _, m := range marks {
		if before, after, ok = strings.Cut(s, m); ok {
			return strings.TrimSpace(before), strings.TrimSpace(after), true
		}
	}
	return s, "", false
}

// mostRemark is the most words of a remark that names a control.
const mostRemark = 8

// controlRemark reads the control that a remark beside a loudspeaker names:
// "local att. ATT-1, 6 W".
func (b *builder) controlRemark(r *row) controlMention {
	s := r.own(vocabulary.Notes)
	if !s.had() || r.kind != loudspeakerRow && r.kind != zoneRow || countWords(s.text) > mostRemark {
		return controlMention{}
	}
	list, err := notation.ParseControls(s.text, notation.Auto)
	if err != nil || list[0].Name == "" && list[0].W == 0 {
		return controlMention{}
	}
	m := controlMention{at: s, any: true, name: list[0].Name}
	if list[0].W > 0 {
		m.rating = s
		m.rating.text, m.rating.cell = plain(list[0].W)+" W", nil
	}
	return m
}

// pureRating reports whether the text is a power and nothing else. It begins
// with a figure: "R1" is a tag.
func pureRating(s string) bool {
	if s == "" || s[0] < '0' || s[0] > '9' {
		return false
	}
	p, err := notation.ParseWatts(s, notation.Auto)
	return err == nil && !p.Doubts.Has(notation.Bare)
}
