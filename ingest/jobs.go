package ingest

import (
	"regexp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// register takes over what the first row of a job of a register says of the job.
func (b *builder) register(r *row) {
	if r == nil {
		return
	}
	j := b.job
	no, name := r.own(vocabulary.JobNo), r.own(vocabulary.Job)
	setText(&j.Name, name.asText())
	if !no.had() && anyDigit(name.text) && countWords(name.text) == 1 {
		no = name
	}
	setText(&j.Number, no.asText())
	setText(&j.Site, r.first(vocabulary.Site, vocabulary.Building).asText())
	setText(&j.Revision, r.own(vocabulary.Revision).asText())
	if s := r.own(vocabulary.Date); s.had() {
		setText(&j.Date, b.date(s))
	}
	if !j.Site.Had() {
		b.siteOfRegister(r.t)
	}
}

// siteOfRegister takes for the site a column that was not understood and says
// the same words in all rows of the job, and others in other jobs.
func (b *builder) siteOfRegister(t *table) {
	for _, c := range t.columns {
		if c.Field != vocabulary.Unknown && c.Field != vocabulary.Client {
			continue
		}
		first := t.rows[0].at(c)
		if !first.had() || anyDigit(first.text) || len(first.text) < 4 {
			continue
		}
		same := true
		for _, r := range t.rows {
			if s := r.at(c); r.Class == layout.Device && s.had() && s.text != first.text {
				same = false
				break
			}
		}
		others := false
		for i := range t.Records {
			if v := &t.Records[i].Values[c.i]; v.Text != "" && v.Text != first.text && t.Records[i].Class == layout.Device {
				others = true
				break
			}
		}
		if same && others {
			b.job.Site = first.asText()
			b.take(first, "site", first.text, schedule.LikelierReading, "the same in all rows of the job")
			return
		}
	}
}

// leaveOutside lists the rows outside all tables.
func leaveOutside(job *schedule.Job, outside []layout.Outside) {
	for _, o := range outside {
		kind := rowKinds[o.Class]
		if kind == "" {
			kind = schedule.NotUnderstood
		}
		job.LeftOut = append(job.LeftOut, schedule.LeftOut{At: o.At, Kind: kind, Reason: o.Reason, Text: short(o.Text)})
	}
	slices.SortStableFunc(job.LeftOut, func(x, y schedule.LeftOut) int { return x.At.Compare(y.At) })
}

// numberInName finds a job number at the start of a file's name: "J1000", "2019-114".
var numberInName = regexp.MustCompile(`^(?:[A-Za-z]{1,3}-?\d{3,6}|(?:19|20)\d\d-\d{2,5}|\d{4,6})(?:[ _-]|$)`)

// nameJob gives a job without a name or site what stands for it: the sheet of
// its own, else the file's name; for the site the job, else the folder.
func nameJob(j *schedule.Job, file, sheet string, register bool) {
	at := schedule.At(file, sheet, 0, 0)
	dir, base := splitPath(file)
	if !j.Number.Had() && sheet == "" && !register {
		if m := numberInName.FindString(base); m != "" {
			j.Number = schedule.Text{Value: strings.Trim(m, "_ -"), Source: schedule.Source{At: schedule.At(file, "", 0, 0), Written: base, How: schedule.Default, Because: "from the file's name"}}
		}
	}
	m := codeFirst.FindString(j.Name.Value)
	if !strings.ContainsFunc(j.Name.Value[len(m):], isLetter) {
		m = "" // "2010-77" is one number
	}
	if code := strings.Trim(m, "_ :–-"); m != "" && (!j.Number.Had() || j.Number.Value == code) && len(m) < len(j.Name.Value) { // "JX104 Winter garden"
		j.Number = schedule.Text{Value: code, Source: j.Name.Source}
		j.Number.How, j.Number.Because = schedule.Computed, "in front of the job's name"
		j.Site = orText(j.Site, strings.TrimSpace(j.Name.Value[len(m):]), j.Number.Source)
		j.Name.Value = j.Number.Value
	}
	if !j.Name.Had() {
		name := base
		switch {
		case j.Number.Had() && j.Number.How != schedule.Default:
			name = j.Number.Value
		case sheet != "":
			name = sheet
		}
		j.Name = schedule.Text{Value: name, Source: schedule.Source{At: at, How: schedule.Default, Because: "no title block names the job"}}
	}
	if !j.Site.Had() {
		siteByDefault(j, at, dir, j.Name.How != schedule.Default)
	}
}
