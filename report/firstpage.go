package report

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"lineaudit/audit"
)

// A Block is one part of the first page: what to do today, which sites first.
type Block struct {
	Title string
	Items []Item
	More  string // what was left out, and where it is
}

// An Item is one line of a block.
type Item struct {
	Sign    string // a grade or a number, "" for none
	Head    string // the site and place, the thing to fix
	Text    string // the fact with its figures
	Do      string // what to do about it
	Finding string // id of the finding behind it, "" if none
}

// maxItems is how many lines a block has.
const maxItems = 6

// FirstPage is what a reader should see first, in the order of what they decide.
func (a *Audit) FirstPage() []Block {
	var blocks []Block
	switch a.For {
	case Bid:
		blocks = []Block{a.trust(), a.undersized(), a.addUp(), a.ask()}
	case Compliance:
		blocks = []Block{a.openDangers(), a.emergency(), a.standing()}
	default:
		blocks = []Block{a.today(), a.sitesFirst(), a.fixFirst()}
	}
	blocks = append(blocks, a.unexamined())
	if len(a.Archive.Results) == 0 {
		nothing := Block{Title: "Nothing was audited", Items: []Item{{Text: fmt.Sprintf("None of %s could be read as a schedule; the reasons stand below. This says nothing about any system.", Plural(len(a.Files), "file"))}}}
		blocks = slices.Insert(blocks, 0, nothing)
	}
	return slices.DeleteFunc(blocks, func(b Block) bool { return len(b.Items) == 0 })
}

// itemsOf turns findings into lines, at most maxItems.
func (a *Audit) itemsOf(fs []*audit.Finding) (items []Item, more string) {
	sites := a.SiteNames()
	for i, f := range fs {
		if i == maxItems {
			return items, fmt.Sprintf("%s more, in Findings.", Plural(len(fs)-i, "finding"))
		}
		items = append(items, Item{Sign: gradeText(f), Head: placeOf(sites[f], f), Text: Found(f), Do: cmp.Or(RemedyText(f), f.Ask), Finding: f.ID})
	}
	return items, ""
}

func placeOf(site string, f *audit.Finding) string {
	parts := []string{site}
	if f.Room != "" && !strings.EqualFold(f.Room, site) {
		parts = append(parts, f.Room)
	}
	return strings.Join(append(parts, f.Place), ", ")
}

func (a *Audit) having(keep func(f *audit.Finding) bool) []*audit.Finding {
	var out []*audit.Finding
	for _, f := range a.Archive.Findings {
		if keep(f) {
			out = append(out, f)
		}
	}
	return out
}

// today is what a service manager acts on at once.
func (a *Audit) today() Block {
	b := Block{Title: "What to do today"}
	dangers := a.having(func(f *audit.Finding) bool { return f.Grade == audit.Danger })
	b.Items, b.More = a.itemsOf(dangers)
	if len(dangers) > 0 || len(a.Archive.Results) == 0 {
		return b
	}
	b.Items = []Item{{Text: "Nothing in these schedules is a danger. " + nothingElse(a.Archive.Counts)}}
	if fullest := a.Loads(1); len(fullest) > 0 && len(a.Archive.Findings) == 0 {
		f := fullest[0]
		b.Items = append(b.Items, Item{Text: fmt.Sprintf("The fullest place is %s with %s W of %s W.", f.Label, Figure(f.Parts[0]), Figure(f.Parts[1]))})
	}
	return b
}

func nothingElse(n audit.Counts) string {
	if n.Fault+n.Caution+n.Unknown == 0 {
		return fmt.Sprintf("No finding at all: %s passed, %d could not be shown.", Plural(n.Passed, "check"), n.Unshown)
	}
	return fmt.Sprintf("%s, %s and %d unknown can wait for the next visit.", Plural(n.Fault, "fault"), Plural(n.Caution, "caution"), n.Unknown)
}

func (a *Audit) sitesFirst() Block {
	b := Block{Title: "Sites to visit first"}
	left := 0
	for _, s := range a.Archive.Sites {
		if len(s.Findings) == 0 {
			continue
		}
		if len(b.Items) == maxItems {
			left++
			continue
		}
		n := s.Counts
		b.Items = append(b.Items, Item{Sign: fmt.Sprint(s.Place), Head: s.Name, Text: countWords(n) + "; score " + Figure(s.Score), Do: partsOf(s)})
	}
	if left > 0 {
		b.More = Plural(left, "site") + " more with findings, in Sites."
	}
	return b
}

// countWords tells the findings of a site by grade, without the grades it has none of.
func countWords(n audit.Counts) string {
	var out []string
	for _, x := range []struct {
		n    int
		name string
	}{{n.Danger, "danger"}, {n.Fault, "fault"}, {n.Caution, "caution"}, {n.Unknown, "unknown"}} {
		if x.n > 0 {
			out = append(out, fmt.Sprint(x.n, " ", x.name))
		}
	}
	return strings.Join(out, ", ")
}

// partsOf are the parts to bring to a site, each with how many.
func partsOf(s audit.Site) string {
	var parts []string
	n := map[string]int{}
	for _, f := range s.Findings {
		if p := Part(f); p != "" && !OnPaper(f) {
			if n[p] == 0 {
				parts = append(parts, p)
			}
			n[p]++
		}
	}
	for i, p := range parts {
		if i == 3 {
			parts = append(parts[:i], fmt.Sprintf("%d other parts", len(parts)-i))
			break
		}
		if n[p] > 1 {
			parts[i] = fmt.Sprintf("%d x %s", n[p], p)
		}
	}
	if len(parts) == 0 {
		return ""
	}
	return "bring " + strings.Join(parts, "; ")
}

func (a *Audit) fixFirst() Block {
	b := Block{Title: "What to fix first across the archive"}
	for i, c := range a.Archive.First {
		if i == maxItems {
			break
		}
		head := strings.TrimSpace(c.Kind + " " + c.Name)
		if strings.HasPrefix(c.Text, head) || strings.HasPrefix(c.Text, c.Name) {
			head = ""
		}
		b.Items = append(b.Items, Item{Sign: fmt.Sprint(i + 1), Head: head, Text: c.Text, Do: fmt.Sprintf("%.0f %% of all risk", c.Share*100)})
	}
	return b
}

// trust answers whether a bid holds as it is listed.
func (a *Audit) trust() Block {
	n := a.Archive.Counts
	b := Block{Title: "Can this bid be trusted?"}
	if n.Jobs == 0 {
		return b
	}
	item := Item{Sign: "yes", Text: fmt.Sprintf("On paper it holds: %s passed and nothing is past a limit.", Plural(n.Passed, "check"))}
	switch {
	case n.Danger+n.Fault > 0:
		item = Item{Sign: "no", Text: fmt.Sprintf("As listed it does not work: %s and %s.", Plural(n.Danger, "danger"), Plural(n.Fault, "fault")), Do: "send the questions; price the sizes that would do"}
	case n.Questions > 0 && n.Unshown > 0:
		item = Item{Sign: "ask", Text: fmt.Sprintf("Nothing is past a limit, but %s could not be shown.", Plural(n.Unshown, "check")), Do: "send the questions first"}
	}
	b.Items = append(b.Items, item)
	read, left := 0, a.leftOut()
	for _, r := range a.Archive.Results {
		read += r.Job.RowsRead
	}
	b.Items = append(b.Items, Item{Head: "completeness", Text: fmt.Sprintf("%s read, %d left out with a reason; %s open", Plural(read, "row"), left, Plural(n.Questions, "question"))})
	return b
}

func (a *Audit) undersized() Block {
	t := a.UndersizedTable()
	b := Block{Title: "Under-sized, and the size that would do"}
	for row := range t.Rows {
		if len(b.Items) == maxItems {
			b.More = Plural(t.Count-maxItems, "item") + " more, in Under-sized."
			break
		}
		at := func(name string) string { return row[t.Column(name)].Words }
		b.Items = append(b.Items, Item{Sign: at("grade"), Head: strings.Trim(at("site")+", "+at("place"), ", "), Text: at("message"), Do: at("part"), Finding: at("id")})
	}
	return b
}

func (a *Audit) addUp() Block {
	b := Block{Title: "Does not add up"}
	b.Items, b.More = a.itemsOf(a.having(func(f *audit.Finding) bool { return slices.Contains(disagreements, f.Rule.Name) }))
	return b
}

func (a *Audit) ask() Block {
	b := Block{Title: "Ask now"}
	type asked struct {
		audit.Question
		job string
	}
	var all []asked
	for _, r := range a.Archive.Results {
		if r.SupersededBy == "" {
			for _, q := range r.Questions {
				all = append(all, asked{q, JobName(r.Job)})
			}
		}
	}
	slices.SortStableFunc(all, func(x, y asked) int { return cmp.Compare(y.Verdicts, x.Verdicts) })
	for i, q := range all {
		if i == maxItems {
			b.More = Plural(len(all)-i, "question") + " more, in Questions."
			break
		}
		b.Items = append(b.Items, Item{Head: q.job + ", " + q.At.String(), Text: q.Text, Do: q.Settles})
	}
	return b
}

func (a *Audit) openDangers() Block {
	b := Block{Title: "Open points that concern danger"}
	dangers := a.having(func(f *audit.Finding) bool { return f.Grade == audit.Danger })
	b.Items, b.More = a.itemsOf(dangers)
	if len(dangers) == 0 && len(a.Archive.Results) > 0 {
		b.Items = []Item{{Text: "None in these schedules."}}
	}
	return b
}

func (a *Audit) emergency() Block {
	b := Block{Title: "Emergency use"}
	b.Items, b.More = a.itemsOf(a.having(func(f *audit.Finding) bool { return f.Rule.Emergency }))
	met, unshown := 0, 0
	rules := audit.Rules()
	for _, r := range a.Archive.Results {
		if r.SupersededBy != "" {
			continue
		}
		for i, o := range a.outcomes(r) {
			if rules[i].Emergency {
				met += o.Met
			}
		}
		for u := range a.ofJob(r, "unshown", unshownRows) {
			if rule := audit.RuleNamed(u[2].Words); rule != nil && rule.Emergency {
				unshown++
			}
		}
	}
	if met+unshown+len(b.Items) == 0 {
		b.Items = []Item{{Text: "No place in these schedules could be held against a requirement of emergency use alone. A system that serves emergency messages and does not say so in its schedule was not judged as one."}}
		return b
	}
	b.Items = append(b.Items, Item{Text: fmt.Sprintf("Requirements of emergency use alone: %s met, %d could not be shown. Losses and loads of lines in emergency use are held against limits of their own.", Plural(met, "place"), unshown)})
	return b
}

// standing counts every rule against every job.
func (a *Audit) standing() Block {
	b := Block{Title: "Every rule against every job"}
	n := map[string]int{}
	jobs := 0
	for _, r := range a.Archive.Results {
		if r.SupersededBy != "" {
			continue
		}
		jobs++
		for _, o := range a.outcomes(r) {
			n[o.Outcome]++
		}
	}
	if jobs == 0 {
		return b
	}
	for _, o := range []string{"met", "not met", "cannot be shown", "not applicable"} {
		b.Items = append(b.Items, Item{Sign: fmt.Sprint(n[o]), Head: o, Text: map[string]string{
			"met":             "every place that the rule applies to is inside the limit",
			"not met":         "at least one place is past the limit; see the register",
			"cannot be shown": "the schedule does not say enough; see Not examined and Questions",
			"not applicable":  "the schedule lists nothing that the rule could be held against",
		}[o]})
	}
	return b
}

// unexamined is what the audit says nothing of.
func (a *Audit) unexamined() Block {
	b := Block{Title: "What this audit says nothing of"}
	files, notSchedules := 0, 0
	for _, f := range a.Files {
		switch f.Kind {
		case Unreadable:
			if files++; files <= maxItems {
				b.Items = append(b.Items, Item{Sign: "not read", Head: f.Name, Text: f.Reason})
			}
		case NotSchedule:
			notSchedules++
		}
	}
	if files > maxItems {
		b.Items = append(b.Items, Item{Text: Plural(files-maxItems, "unreadable file") + " more, in Files."})
	}
	lost, broken := 0, 0
	for _, r := range a.Archive.Results {
		broken += len(r.Broken)
		lost += int(a.extent(r)[extentNotUnderstood].Number)
	}
	say := func(n int, text string, args ...any) {
		if n > 0 {
			b.Items = append(b.Items, Item{Text: fmt.Sprintf(text, args...)})
		}
	}
	n := a.Archive.Counts
	say(notSchedules, "%s no schedule; see Files.", Plural(notSchedules, "file")+is(notSchedules))
	asked := ""
	if n.Questions > 0 {
		asked = " Where an answer could change a verdict it is asked for: " + Plural(n.Questions, "question") + "."
	}
	say(n.Unshown, "%s could not be decided for want of data; see Not examined.%s", Plural(n.Unshown, "check"), asked)
	say(lost, "%s not understood; see Rows left out.", Plural(lost, "row")+was(lost))
	say(n.Superseded, "%s superseded by a newer revision, or the copy of another, and left out of counts and ranks.", Plural(n.Superseded, "job")+is(n.Superseded))
	say(broken, "%s failed to run and decided nothing; see Not examined.", Plural(broken, "check"))
	for _, list := range [][]string{a.Unwritten, a.Beside} {
		for i, text := range list {
			if i == 3 {
				b.Items = append(b.Items, Item{Text: Plural(len(list)-i, "file") + " more, in Not examined."})
				break
			}
			b.Items = append(b.Items, Item{Sign: "no copy", Text: text})
		}
	}
	return b
}

func is(n int) string {
	if n == 1 {
		return " is"
	}
	return " are"
}

func was(n int) string {
	if n == 1 {
		return " was"
	}
	return " were"
}

// Counted is the audit in one sentence: what was read.
func (a *Audit) Counted() string {
	n := a.Archive.Counts
	s := fmt.Sprintf("%s at %s, from %s: %s, %s, %s, %s, %s", Plural(n.Jobs, "job"), Plural(len(a.Archive.Sites), "site"), Plural(len(a.Files), "file"),
		Plural(n.Loudspeakers, "loudspeaker"), Plural(n.Zones, "zone"), Plural(n.Controls, "control"), Plural(n.Channels, "channel"), Plural(n.Lines, "line"))
	if n.Superseded > 0 {
		s += fmt.Sprintf("; %s left out as superseded", Plural(n.Superseded, "job"))
	}
	return s + "."
}

// PaperCaution is said wherever a report is read.
const PaperCaution = "A schedule is paper: this says what was written, not what was built. Line voltages are hazardous; heat and emergency messages concern people. " +
	"Measure before you rely on a figure; local codes and a licensed practitioner decide. A rule of thumb is marked as one in Rules and sources."
