package audit

import (
	"path"
	"regexp"
	"strconv"
	"strings"

	"lineaudit/audit/schedule"
)

// Revisions. Two results are revisions of one job when they state the same job
// number; or no number, the same job name, and the same site or folder; or
// come from files of one folder whose names differ only in a revision mark or a
// date; and nothing that both state tells them apart. They are ordered by "as built" before everything else, then by
// revision mark, then by date; where that does not decide, both stay current:
// a job that is wrongly left out is worse than one that is shown twice.

// A version is where one result stands among the revisions of its job.
type version struct {
	r       *Result
	keys    []string  // what it may share with another revision
	job     [4]string // number, name, site, sheet: plain, "" where not stated
	asBuilt bool
	series  int // 0: no mark; preliminary marks before others; see revisionMark
	number  int
	date    string // ISO, "" if unknown
}

// supersede finds, for every job, whether a newer revision of it is among the
// results.
func supersede(results []*Result) {
	versions := make([]version, len(results))
	byKey := map[string][]int{}
	for i, r := range results {
		r.SupersededBy = ""
		versions[i] = versionOf(r)
		for _, k := range versions[i].keys {
			byKey[k] = append(byKey[k], i)
		}
	}
	for i := range versions {
		v := &versions[i]
		best := -1
		for _, k := range v.keys {
			for _, j := range byKey[k] {
				if j != i && sameJob(v, &versions[j]) && newer(&versions[j], v) && (best < 0 || newer(&versions[j], &versions[best])) {
					best = j
				}
			}
		}
		if best >= 0 {
			v.r.SupersededBy = fileAndSheet(versions[best].r.Job)
		}
	}
	leaveOutCopies(results)
}

// leaveOutCopies keeps the first of the results that come from equal bytes and
// are of one site: backups, and zips beside their content, count once. Where the
// schedule names neither site nor job, its file must have the same name but for
// the marks of a copy: "Rink 1" and "Rink 2" may be two rinks built alike.
func leaveOutCopies(results []*Result) {
	type copied struct{ bytes, site, file string }
	first := map[copied]*Result{}
	for _, r := range results {
		if r.Bytes == "" || r.SupersededBy != "" {
			continue
		}
		j := r.Job
		c := copied{bytes: r.Bytes, site: folded(siteName(j))}
		if !stated(j.Site) && !stated(j.Number) && !stated(j.Name) {
			stem := strings.TrimSuffix(path.Base(j.File), path.Ext(j.File))
			c.file = folded(strings.TrimSpace(copyMark.ReplaceAllString(stem, "")))
		}
		if original, ok := first[c]; ok {
			r.SupersededBy = fileAndSheet(original.Job)
			continue
		}
		first[c] = r
	}
}

// copyMark is what systems and people add to the name of a copy.
var copyMark = regexp.MustCompile(`(?i)^(copy of|kopie van|kopie von|copie de|copia de|copia di) |([ _-]+(copy|kopie|copie|copia))?( ?\(\d+\))?$`)

func fileAndSheet(j *schedule.Job) string {
	if j.Sheet != "" {
		return j.File + ", " + j.Sheet
	}
	return j.File
}

func versionOf(r *Result) version {
	j := r.Job
	v := version{r: r, job: [...]string{plainName(j.Number), plainName(j.Name), plainName(j.Site), modelKey(stripMarks(j.Sheet))}}
	number, name, site := v.job[0], v.job[1], v.job[2]
	folder := path.Dir(j.File)
	if number != "" {
		v.keys = append(v.keys, "number "+number)
	} else if name != "" {
		// A title such as "device schedule" names no job by itself.
		v.keys = append(v.keys, "name "+name+"\x1f"+folder)
		if site != "" {
			v.keys = append(v.keys, "name "+name+" site "+site)
		}
	}
	stem := strings.TrimSuffix(path.Base(j.File), path.Ext(j.File))
	if plain := modelKey(stripMarks(stem)); plain != "" {
		v.keys = append(v.keys, "file "+folder+"/"+plain+"\x1f"+v.job[3])
	}
	for _, text := range []string{j.Revision.Value, stem, j.Sheet, j.Name.Value} {
		if asBuilt.MatchString(spaced(text)) {
			v.asBuilt = true
		}
	}
	for _, text := range []string{"rev " + j.Revision.Value, stem, j.Sheet, j.Name.Value} {
		if s, n := revisionMark(text); s > 0 {
			v.series, v.number = s, n
			break
		}
	}
	v.date = isoDate(j.Date.Value)
	if v.date == "" {
		v.date = isoDate(stem)
	}
	return v
}

// plainName is a text without revision marks, "" when it was not stated.
func plainName(t schedule.Text) string {
	if !stated(t) {
		return ""
	}
	return modelKey(stripMarks(t.Value))
}

// stated reports whether a text was written in the schedule rather than put
// there for want of one.
func stated(t schedule.Text) bool {
	return t.Value != "" && t.Had() && t.How != schedule.Default && t.How != schedule.Computed
}

// sameJob reports whether nothing that two results both state tells them apart.
func sameJob(a, b *version) bool {
	for i := range 3 {
		if a.job[i] != "" && b.job[i] != "" && a.job[i] != b.job[i] {
			return false
		}
	}
	// Two sheets of one file are two jobs, unless their names are one but for a mark.
	if a.r.Job.File == b.r.Job.File && a.job[3] != b.job[3] {
		return false
	}
	return shareParts(a.r, b.r)
}

// shareParts reports whether two jobs have a zone or a control in common, or
// one of them names none: two parts of one job are no revisions of each other.
func shareParts(a, b *Result) bool {
	x, y := a.partNames(), b.partNames()
	if len(x) == 0 || len(y) == 0 {
		return true
	}
	for i, j := 0, 0; i < len(x) && j < len(y); {
		switch {
		case x[i] == y[j]:
			return true
		case x[i] < y[j]:
			i++
		default:
			j++
		}
	}
	return false
}

// newer reports whether a is certainly a later revision than b.
func newer(a, b *version) bool {
	if a.asBuilt != b.asBuilt {
		return a.asBuilt
	}
	if a.series > 0 && b.series > 0 && a.series == b.series && a.number != b.number {
		return a.number > b.number
	}
	if a.series > 0 && b.series > 0 && a.series != b.series {
		if a.series == preliminary || b.series == preliminary {
			return b.series == preliminary
		}
	}
	if a.date != "" && b.date != "" {
		return a.date > b.date
	}
	// A copy without a mark is the first issue of one that has a mark.
	return a.series > 0 && b.series == 0 && a.number > 0 && a.r.Job.File != b.r.Job.File
}

// Series of revision marks. Numbers and letters are not compared with each
// other, since firms use them in either order; preliminary marks (P1, draft)
// come before both.
const (
	numbered    = 1
	lettered    = 2
	contract    = 3 // C1, C2: for construction
	preliminary = 4
)

var (
	asBuilt  = regexp.MustCompile(`(?i)\b(as[ _-]?built|as[ _-]?fitted|as[ _-]?installed|record drawings?|record set)\b`)
	markText = regexp.MustCompile(`(?i)(?:^|[ _.\-(\[])(?:rev(?:ision)?|issue|iss|version|ver|v|indice|index|stand)[ ._\-:]*([a-z]\d{0,2}|\d{1,3})(?:$|[ _.\-)\]])`)
	dateText = regexp.MustCompile(`(\d{4})[-_.]?(0[1-9]|1[0-2])[-_.]?(0[1-9]|[12]\d|3[01])`)
)

// spaced turns underscores into spaces, so that word boundaries hold.
func spaced(s string) string { return strings.ReplaceAll(s, "_", " ") }

// revisionMark reads the revision mark out of a text: "rev C", "P2", "issue 3".
// The number of a letter counts from 1. It returns 0 when there is none.
func revisionMark(text string) (series, number int) {
	m := markText.FindStringSubmatch(text)
	if m == nil {
		return 0, 0
	}
	mark := strings.ToLower(m[1])
	if n, err := strconv.Atoi(mark); err == nil {
		return numbered, n + 1
	}
	letter := mark[0]
	n, err := strconv.Atoi(mark[1:])
	switch {
	case err != nil && len(mark) > 1:
		return 0, 0
	case len(mark) == 1:
		return lettered, int(letter-'a') + 1
	case letter == 'p':
		return preliminary, n + 1
	case letter == 'c':
		return contract, n + 1
	}
	return lettered, (int(letter-'a')+1)*100 + n
}

// stripMarks takes revision marks, dates and "as built" out of a name.
func stripMarks(s string) string {
	s = spaced(s)
	s = asBuilt.ReplaceAllString(s, " ")
	s = dateText.ReplaceAllString(s, " ")
	for range 2 {
		s = markText.ReplaceAllString(s, " ")
	}
	return strings.Trim(strings.Join(strings.Fields(s), " "), " -.,()[]")
}

// isoDate finds a date that orders by its text, "" when there is none.
func isoDate(s string) string {
	m := dateText.FindStringSubmatch(s)
	if m == nil {
		return ""
	}
	return m[1] + "-" + m[2] + "-" + m[3]
}
