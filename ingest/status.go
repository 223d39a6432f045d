package ingest

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// statuses are what a word of a schedule makes of a part.
var statuses = map[string]schedule.Status{
	string(notation.StatusSpare): schedule.Spare, string(notation.StatusFuture): schedule.Future,
	string(notation.StatusRemoved): schedule.Removed, string(notation.StatusByOthers): schedule.ByOthers,
	string(notation.StatusStandby): schedule.Standby,
}

// fewWords is the most words of a remark in which a status word is taken for
// the status of the row rather than part of a sentence.
const fewWords = 6

// remarkFields are the fields whose cells may say what has become of a part.
var remarkFields = []vocabulary.Field{vocabulary.Notes, vocabulary.Describe, vocabulary.Tag, vocabulary.Item, vocabulary.Model, vocabulary.Quantity,
	vocabulary.Tap, vocabulary.Control}

// statusOf finds out whether a part is installed. A column for it decides;
// else a code that a legend explains; else a sure word in a short remark,
// description or tag, in brackets behind a place, or in a section title.
func (b *builder) statusOf(r *row) schedule.Status {
	if r.absent {
		return schedule.Future
	}
	if s := r.own(vocabulary.Status); s.col != nil {
		if status, ok := b.legend[join.Fold(strings.Trim(s.text, " ()[]"))]; ok && s.text != "" {
			return status
		}
		if status, said := b.statusOfAnswer(r, s); said {
			return status
		}
	}
	if status, said := columnStatus(r); said {
		s := r.own(vocabulary.Status)
		switch {
		case status != schedule.Installed:
		case faulty(s.text):
			b.askFaulty(s)
		case notation.MentionsStatus(s.text, notation.StatusToFit):
			return b.toFit(r, s)
		case b.newLater(r, s):
			return schedule.Future
		default:
			b.askAgainst(r, s)
		}
		return status
	}
	if status, said := b.statusByLegend(r); said {
		return status
	}
	if status, said := b.statusByNote(r); said {
		return status
	}
	if s := r.own(vocabulary.Status); s.had() && unknownState(s.text) && r.t.statesKnown(s.col) {
		b.ask(s.source.At, "status", "“"+short(s.text)+"”: does this mean that it loads the line? It is counted.", "whether the row counts as load")
	}
	for _, f := range remarkFields {
		for s := range r.every(f) {
			if f == vocabulary.Control && controlGone(s.text) {
				b.take(s, "control", "none", schedule.LikelierReading, "the control is what “"+short(s.text)+"” is said of")
				continue
			}
			if f == vocabulary.Control {
				s.text = behindNo(s.text)
			}
			if f == vocabulary.Notes && anotherSpare(r, s.text) {
				b.ask(s.source.At, "status", "“"+short(s.text)+"”: is that another one, beside what this row lists? The row is counted as installed.", "whether the row counts as load")
				continue
			}
			if f == vocabulary.Notes && partOfRow(r, s.text) {
				b.ask(s.source.At, "status", "“"+short(s.text)+"”: do fewer of this row load the line? All of them are counted.", "the load of this row")
				continue
			}
			if f == vocabulary.Notes && r.goneOnDay(s.text) {
				b.take(s, "status", "removed", schedule.LikelierReading, "“"+short(s.text)+"” tells the day")
				return schedule.Removed
			}
			if status := b.stateUntapped(r, s, f); status != schedule.Installed {
				return status
			}
			if status := b.statusInCell(s, f); status != schedule.Installed {
				return status
			}
			if f == vocabulary.Notes && countWords(s.text) <= fewWords && notation.MentionsStatus(s.text, notation.StatusToFit) && r.t.fewToFit() {
				return b.toFit(r, s)
			}
		}
	}
	for _, f := range []vocabulary.Field{vocabulary.Channel, vocabulary.Amplifier, vocabulary.Circuit, vocabulary.Zone, vocabulary.Room} {
		if status := statusInBrackets(r.own(f).text); status != schedule.Installed { // "A-3 (to follow)"
			return status
		}
	}
	for _, f := range []vocabulary.Field{vocabulary.Channel, vocabulary.Amplifier, vocabulary.Circuit} {
		if status := statusAlone(r.own(f).text); status != schedule.Installed { // in place of what feeds it
			return status
		}
	}
	for _, f := range []vocabulary.Field{vocabulary.Zone, vocabulary.Room} {
		s := r.own(f)
		if s.source.How == schedule.Stated && s.spare() { // in place of a room
			return sureStatus(s.text)
		}
		if status := stateAhead(s.text, unfed(r)); s.source.How == schedule.Stated && status != schedule.Installed {
			return status
		}
		if status := stateOfUnfed(r, s); status != schedule.Installed {
			return status
		}
		b.askAhead(s)
	}
	for _, c := range r.t.columns {
		if s := r.at(c); numeric[c.Field] && s.had() && !anyDigit(s.text) { // in place of a figure
			if status := statusAlone(s.text); status != schedule.Installed {
				return status
			}
		}
	}
	if r.title != nil && r.title.Field == vocabulary.Status {
		return sureStatus(r.title.Text)
	}
	for i := len(r.Sections) - 1; i >= 0; i-- {
		f := &r.Sections[i]
		if status := statusInBrackets(f.Text); status != schedule.Installed {
			return status
		}
		if status := statusAhead(f.Text); status != schedule.Installed {
			return status
		}
		if b.headsOptions(f) {
			return schedule.Future
		}
		if sparesWords.ahead(join.Fold(f.Text)) != "" {
			return schedule.Spare
		}
		if f.Field == vocabulary.Room || f.Field == vocabulary.Zone || countWords(f.Text) > fewWords {
			continue
		}
		if status := sureStatus(f.Text); status != schedule.Installed {
			return status
		}
	}
	return schedule.Installed
}

// statesKnown reports whether most cells of a column of states are known ones,
// so that an odd one among them matters.
func (t *table) statesKnown(c *column) bool {
	if t.knownStates == nil {
		t.knownStates = make(map[*column]bool)
	}
	known, ok := t.knownStates[c]
	if !ok {
		n, cells := 0, 0
		for _, r := range t.rows {
			if s := r.at(c); s.had() {
				cells++
				if !unknownState(s.text) {
					n++
				}
			}
		}
		known = 4*n >= 3*cells
		t.knownStates[c] = known
	}
	return known
}

// columnStatus is what a column of states says; what keeps a part from loading
// its line goes first: "existing, taken down" is taken down.
func columnStatus(r *row) (status schedule.Status, said bool) {
	s := r.own(vocabulary.Status)
	if s.text == "" {
		return schedule.Installed, false
	}
	for _, m := range notation.Statuses(s.text) {
		if m.Negated {
			continue
		}
		said = true
		if status := statuses[m.Kind]; status != schedule.Installed && (m.Sure || !ofAPiece(s.text)) {
			return status, true
		}
	}
	if !said && s.missing == notation.MissingByOthers {
		return schedule.ByOthers, true
	}
	return schedule.Installed, said
}

// statusOfAnswer reads a cell that says no under a header that asks whether
// the part is there: "Installed? N".
func (b *builder) statusOfAnswer(r *row, s seen) (status schedule.Status, said bool) {
	if slices.Contains(outWords, join.Fold(s.text)) { // "out" beside "in"
		b.take(s, "status", "removed", schedule.LikelierReading, "“"+short(s.text)+"” under “"+short(s.col.Header)+"”")
		return schedule.Removed, true
	}
	if notation.AnswerOf(s.text) == notation.No && worksWords.in(join.Fold(strings.Trim(s.col.Header, "¿? "))) {
		b.askFaulty(s)
		return schedule.Installed, true
	}
	if notation.AnswerOf(s.text) != notation.No || !thereWords.in(join.Fold(s.col.Header)) {
		return schedule.Installed, false
	}
	b.take(s, "status", "not installed", schedule.LikelierReading, "“"+short(s.text)+"” under “"+short(s.col.Header)+"”")
	return schedule.Future, true
}

// askAgainst asks about remarks beside a state that says all is there, where they say
// that something is not: "2 removed" beside "ok".
func (b *builder) askAgainst(r *row, state seen) {
	for s := range r.every(vocabulary.Notes) {
		for _, m := range notation.Statuses(s.text) {
			if status, known := statuses[m.Kind]; known && m.Sure && !m.Negated && unloads[status] && countWords(s.text) <= fewWords {
				b.ask(s.source.At, "status", "“"+short(s.text)+"” beside “"+short(state.text)+"”: how many of this row load the line? All are counted.", "whether the row counts as load")
				return
			}
		}
	}
}

// unloads are the states in which a loudspeaker loads no line.
var unloads = map[schedule.Status]bool{schedule.Removed: true, schedule.Future: true, schedule.Spare: true}

// toFit is the state of a part that is to be fitted: in a list that tells it
// from parts that are, it is not there yet; in one of a design it is new.
func (b *builder) toFit(r *row, s seen) schedule.Status {
	because := "other rows say that they are installed"
	if !r.t.saysInstalled() {
		if !r.t.fewToFit() {
			return schedule.Installed
		}
		because = "most rows do not say so"
	}
	b.take(s, "status", "not yet installed", schedule.LikelierReading, because)
	return schedule.Future
}

// statusInCell looks for a status in a cell that may say something else too. A
// word that may be one is a question.
func (b *builder) statusInCell(s seen, f vocabulary.Field) schedule.Status {
	switch {
	case s.text == "", f == vocabulary.Tag && plainTag(s.text):
		return schedule.Installed
	case f == vocabulary.Notes && s.missing == notation.MissingByOthers:
		return schedule.ByOthers
	case f == vocabulary.Tap && anyDigit(s.text):
		if status := stateOfCount(s.text); status != schedule.Installed {
			return status
		}
		_, status := tapWithState(s.text)
		return status
	case s.cell != nil && s.cell.Number != 0:
		return schedule.Installed
	case f == vocabulary.Quantity && stateBehind.MatchString(s.text):
		return statusInBrackets(s.text) // "2 x 15 W (future)"
	case f == vocabulary.Quantity && anyDigit(s.text):
		return stateOfCount(s.text)
	}
	if f == vocabulary.Notes {
		if status := statusAhead(s.text); status != schedule.Installed { // "future - duct only"
			return status
		}
		if status := statesAgree(s.text); status != schedule.Installed {
			return status
		}
		if status := stateWithDate(s.text); status != schedule.Installed {
			return status
		}
		if goneTwice(s.text) || goneWhen(s.text) {
			return schedule.Removed
		}
		if status := stateOfSentence(s.text); status != schedule.Installed {
			return status
		}
	} else {
		if status := statusInBrackets(s.text); status != schedule.Installed {
			return status
		}
		if status := stateOfDescribed(s.text); f == vocabulary.Describe && status != schedule.Installed {
			return status
		}
	}
	for _, m := range notation.Statuses(s.text) {
		alone := (f == vocabulary.Notes || f == vocabulary.Tap || f == vocabulary.TapBefore) && len(m.Text) == len(strings.TrimSpace(s.text)) // "Lager" in a remark is no room
		if m.Negated || !m.Sure && !alone {
			continue
		}
		status, known := statuses[m.Kind]
		if m.Kind == string(notation.StatusFaulty) && f == vocabulary.Notes {
			b.askFaulty(s)
		}
		if !known {
			continue
		}
		back := status == schedule.Removed && backAfter(s.text, m.Text)
		if status == schedule.Removed && !back && pastWords.begins(join.Fold(s.text)) {
			return status // "was 1 horn at 10 W, taken away 2015"
		}
		words, of := countWords(m.Text), countWords(s.text)
		ahead := strings.HasPrefix(join.Fold(s.text), join.Fold(m.Text))
		if of <= fewWords && !back && (2*words > of || ahead) || ahead && status == schedule.Spare && kindInWords(s.text) == loudspeakerRow {
			return status // "Spare ceiling loudspeaker as item B, handed over boxed"
		}
		if status == schedule.Removed && words == 1 && of == 2 && f == vocabulary.Notes && kindInWords(s.text) == loudspeakerRow {
			return status // "HP déposé"
		}
		b.ask(s.source.At, "status", "“"+short(s.text)+"” may mean that this row is "+status.String()+": is it installed?", "whether the row counts as load")
	}
	return schedule.Installed
}

var statusesInBrackets = remember.New(2048, func(text string, _ int) schedule.Status {
	for _, m := range inBrackets.FindAllStringSubmatch(text, -1) {
		if countWords(m[1]) > fewWords {
			continue
		}
		status := sureStatus(m[1])
		if list := notation.Statuses(m[1]); len(list) == 1 && list[0].Text == strings.TrimSpace(m[1]) && status == schedule.Installed {
			status = statuses[list[0].Kind] // a word with other meanings, alone
		}
		if status != schedule.Installed {
			return status
		}
	}
	return schedule.Installed
})

// unfed reports whether a row names nothing that feeds it, where its list has
// columns for that; zones beside rooms are such a column where there is no other.
func unfed(r *row) bool {
	list := false
	for _, f := range []vocabulary.Field{vocabulary.Amplifier, vocabulary.Channel, vocabulary.Circuit} {
		list = list || r.t.has(f)
		if r.own(f).had() {
			return false
		}
	}
	if !list && r.t.has(vocabulary.Zone) && r.t.has(vocabulary.Room) {
		return !r.own(vocabulary.Zone).had()
	}
	return list
}

// controlGone reports whether all that a cell of a column of controls says is that
// there is none any more: the loudspeaker is still there.
func controlGone(text string) bool { return statusAlone(text) == schedule.Removed }

// stateOfUnfed is the state with which the name of a place begins, "reserve in the
// cupboard", of a row that nothing feeds while something feeds all others.
func stateOfUnfed(r *row, s seen) schedule.Status {
	if s.source.How != schedule.Stated || !unfed(r) {
		return schedule.Installed
	}
	for _, m := range notation.Statuses(s.text) {
		status, known := statuses[m.Kind]
		if known && !m.Negated && strings.HasPrefix(join.Fold(s.text)+" ", join.Fold(m.Text)+" ") && r.t.fedOtherwise(r) {
			return status
		}
	}
	return schedule.Installed
}

// askAhead asks about the name of a place that begins with a word for what is to come,
// "Future kiosk", of a row that something feeds.
func (b *builder) askAhead(s seen) {
	if s.source.How != schedule.Stated {
		return
	}
	for _, m := range notation.Statuses(s.text) {
		if status, known := statuses[m.Kind]; known && m.Sure && !m.Negated && status == schedule.Future && strings.HasPrefix(join.Fold(s.text), join.Fold(m.Text)+" ") {
			b.ask(s.source.At, "status", "“"+short(s.text)+"”: are these loudspeakers "+status.String()+"? They are counted.", "whether the row counts as load")
			return
		}
	}
}

// fedOtherwise reports whether every other row of loudspeakers names what feeds it.
func (t *table) fedOtherwise(r *row) bool {
	fed := 0
	for _, o := range t.rows {
		if o == r || o.kind != loudspeakerRow || o.out != "" {
			continue
		}
		if unfed(o) {
			return false
		}
		fed++
	}
	return fed > 0
}

// askFaulty asks whether a part that does not work loads its line.
func (b *builder) askFaulty(s seen) {
	b.ask(s.source.At, "status", "“"+short(s.text)+"”: is it still connected, so that it loads the line? It is counted.", "whether the row counts as load")
}

// legendEntry is a code and what a legend says that it means: in brackets,
// "(R) REMOVE", or with a sign of equality, "R = remove".
var legendEntry = regexp.MustCompile(`[(\[](\p{L}{1,4})[)\]]\s*[:=–-]?\s*([^()\[\]]{3,40})|\b(\p{L}{1,3})\s*=\s*([^()\[\],;=/|]{3,40})`)

// gatherLegend reads the codes that notes explain. A legend has two at least.
func (b *builder) gatherLegend() {
	for _, s := range b.spoken {
		if !strings.ContainsAny(s.text, "([=") {
			continue
		}
		entries := legendEntry.FindAllStringSubmatch(s.text, -1)
		if len(entries) < 2 {
			continue
		}
		for _, m := range entries {
			code, means := m[1]+m[3], m[2]+m[4]
			if len(notation.Statuses(means)) == 0 {
				continue
			}
			if b.legend == nil {
				b.legend = make(map[string]schedule.Status)
			}
			b.legend[join.Fold(code)] = sureStatus(means)
		}
	}
}

// statusByLegend is what a code of the legend in one of the row's cells says.
func (b *builder) statusByLegend(r *row) (schedule.Status, bool) {
	if len(b.legend) == 0 {
		return schedule.Installed, false
	}
	for i := range r.Values {
		for _, m := range inBrackets.FindAllStringSubmatch(r.Values[i].Text, -1) {
			if status, ok := b.legend[join.Fold(strings.TrimSpace(m[1]))]; ok {
				return status, true
			}
		}
	}
	return schedule.Installed, false
}

// stateTitles finds rows of one cell that say what has become of the rows below
// ("Spare - on the shelf", "Installed"), where rows of a list are fuller.
func (b *builder) stateTitles() {
	for _, t := range b.tables {
		var title *layout.Fact
		for _, r := range t.rows {
			if r.Class != layout.Device || r.isTitle || r.title != nil {
				continue
			}
			if n, text := r.stated(); n == 1 && len(t.columns) > 2 && saysOnlyState(text) {
				r.isTitle = true
				title = &layout.Fact{Field: vocabulary.Status, Text: text, At: r.At}
			}
			r.title = title
		}
	}
}

// saysOnlyState reports whether a text is a state and a remark on it, and no
// device in such a state.
func saysOnlyState(text string) bool {
	if countWords(text) > fewWords || statusInBrackets(text) != schedule.Installed {
		return statusInBrackets(text) != schedule.Installed && countWords(text) <= fewWords && kindInWords(text) == noKind
	}
	if statusAhead(text) != schedule.Installed {
		return true
	}
	for _, m := range notation.Statuses(text) {
		if m.Sure && len(m.Text)+2 >= len(strings.TrimSpace(text)) {
			return true
		}
	}
	return false
}
