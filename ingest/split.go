package ingest

import (
	"slices"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
	"lineaudit/ingest/watch"
)

// A part is what of a book belongs to one job.
type part struct {
	tables  []*table
	facts   []layout.Fact
	said    []said
	spoken  []spoken
	sheet   string // for a job with a sheet of its own
	outside []layout.Outside
	first   *table // for a job of a register: the table whose first row names it
}

// build makes the jobs of a book, one after the other, and holds on to none. An
// error from each ends it.
func build(file string, reading *layout.Reading, opts *Options, each func(*schedule.Job) error) error {
	if len(reading.AllTables()) == 0 {
		return nil // what else stands there is nobody's
	}
	names := valueNames(opts.House, file)
	all := parts(reading, names, opts.watch)
	for i := range all {
		p := all[i]
		all[i] = part{}
		if len(p.tables) == 0 {
			continue
		}
		var first *row
		for _, t := range p.tables {
			if t.rows == nil {
				t.fillRows(t.which)
			}
		}
		if p.first != nil {
			first = p.first.rows[0]
		}
		b := newBuilder(file, opts, &p)
		b.job.Sheet = p.sheet
		b.register(first)
		job := b.build()
		leaveOutside(job, p.outside)
		nameJob(job, file, p.sheet, p.first != nil)
		if err := each(job); err != nil {
			return err
		}
	}
	return nil
}

// parts divides a book into jobs: by the job column of a register, else by
// sheets that are jobs of their own, else it is one job.
func parts(reading *layout.Reading, names map[string][]valueName, w *watch.Watch) []part {
	var all []sheetPart
	number := 0
	for i := range reading.Sheets {
		s := &reading.Sheets[i]
		sp := sheetPart{sheet: s}
		titles := titleReader{w: w}
		sp.facts = sheetFacts(s, &titles)
		if !s.Hidden {
			sp.spoken = spokenOn(s)
			sp.said = saidIn(sp.spoken, w)
		}
		for _, t := range s.Tables {
			controlsBehindPlaces(sp.spoken, t)
			number++
			n := newTable(t, number, &titles)
			n.names = names
			sp.tables = append(sp.tables, n)
		}
		tapKeys(sp.spoken, sp.tables)
		all = append(all, sp)
	}
	var tables []*table
	for _, sp := range all {
		tables = append(tables, sp.tables...)
	}
	harmonise(tables)
	var notes []spoken
	for _, sp := range all {
		notes = append(notes, sp.spoken...)
	}
	ratedTags(notes, tables)
	linesExplained(all, tables, w)
	numberTitles(all)
	for i := range all {
		for _, t := range all[i].tables {
			t.decideStyles()
		}
		all[i].identify()
	}
	if p := byRegister(all); p != nil {
		return p
	}
	if p := bySheet(all); p != nil {
		return p
	}
	one := part{}
	for _, s := range all {
		for _, t := range s.tables {
			t.fillRows(nil)
		}
		one.tables = append(one.tables, s.tables...)
		if !s.sheet.Hidden {
			one.facts = append(one.facts, s.facts...)
		}
		one.said = append(one.said, s.said...)
		one.spoken = append(one.spoken, s.spoken...)
		one.outside = append(one.outside, s.sheet.Outside...)
	}
	return []part{one}
}

// fillRows makes the rows of a table: all, or those with the given places.
func (t *table) fillRows(which []int) {
	n := len(t.Records)
	if which != nil {
		n = len(which)
	}
	rows := make([]row, n)
	said := make([]*wording, n*len(t.columns))
	t.rows = make([]*row, n)
	above := make([]*wording, len(t.columns))
	for i := range rows {
		k := i
		if which != nil {
			k = which[i]
		}
		rows[i] = row{Record: &t.Records[k], t: t}
		r := &rows[i]
		r.wordings, said = said[:len(t.columns):len(t.columns)], said[len(t.columns):]
		for c := range r.wordings {
			r.wordings[c] = wordingOf(&r.Values[c], above[c])
		}
		above = r.wordings
		t.rows[i] = r
	}
}

// copyFor is the table for a further job, with the records of the given places or
// with all. Its rows are made when the turn comes to its job: those of all jobs
// together are many.
func (t *table) copyFor(which []int, shared bool) *table {
	n := *t
	n.tagCount, n.tagStems, n.ranges, n.itemLists, n.zoneOutputs, n.bothCount, n.installed, n.runsRepeat, n.knownStates, n.roomControls, n.shared = nil, nil, 0, nil, nil, 0, 0, 0, nil, nil, shared
	n.toFit, n.tapped = 0, 0
	n.rows, n.which, n.naming, n.hangs = nil, which, nil, nil
	return &n
}

// sheetFacts are the facts of a sheet: those outside its tables, and those
// above each table, each once.
func sheetFacts(s *layout.Sheet, titles *titleReader) []layout.Fact {
	type said struct {
		at    schedule.Ref
		field vocabulary.Field
		text  string
	}
	out := plainFacts(s.Facts, titles.w)
	seen := make(map[said]bool, len(out))
	for _, f := range out {
		seen[said{f.At, f.Field, f.Text}] = true
	}
	for _, t := range s.Tables {
		if titles.again(t.Titles) {
			continue
		}
		for _, f := range titles.read(t.Titles) {
			if k := (said{f.At, f.Field, f.Text}); !seen[k] {
				seen[k] = true
				out = append(out, f)
			}
		}
	}
	return out
}

// A sheetPart is one sheet and the job that its title block names.
type sheetPart struct {
	sheet  *layout.Sheet
	facts  []layout.Fact
	said   []said
	spoken []spoken
	tables []*table
	no     string // keys of the job's number and name, "" if not named
	name   string
	full   bool            // it lists loudspeakers
	amps   map[string]bool // keys of the amplifiers that its tables define
}

func (s *sheetPart) identify() {
	for i := range s.facts {
		switch f := &s.facts[i]; f.Field {
		case vocabulary.JobNo:
			if s.no == "" {
				s.no = join.Key(f.Text)
			}
		case vocabulary.Job:
			if s.name == "" {
				s.name = join.Key(f.Text)
			}
		}
	}
	s.amps = make(map[string]bool)
	for _, t := range s.tables {
		switch t.kind {
		case layout.Loudspeakers, layout.Zones, layout.Mixed:
			s.full = true
		case layout.Amplifiers, layout.Channels:
			for _, f := range []vocabulary.Field{vocabulary.Amplifier, vocabulary.Tag} {
				for _, c := range t.byField[f] {
					for i := range t.Records {
						if v := &t.Records[i].Values[c.i]; t.Records[i].Class == layout.Device && v.How == schedule.Stated {
							s.amps[join.Key(v.Text)] = true
						}
					}
				}
			}
		}
	}
}

// sameJob reports whether two sheets name one job.
func (s *sheetPart) sameJob(o *sheetPart) bool {
	return s.no != "" && s.no == o.no || s.name != "" && s.name == o.name
}

// bySheet divides a book into a job a sheet, nil if it is one job. Sheets are
// jobs of their own when each lists loudspeakers and their title blocks name
// different jobs, or when each defines an amplifier of the same name anew.
func bySheet(all []sheetPart) []part {
	var own []int
	for i := range all {
		if s := &all[i]; s.full && !s.sheet.Hidden {
			own = append(own, i)
		}
	}
	if len(own) < 2 {
		return nil
	}
	job := make([]int, len(all)) // which job each sheet belongs to, from 1; 0: all
	n := 0
	for _, i := range own {
		s := &all[i]
		if s.no == "" && s.name == "" {
			continue
		}
		for _, k := range own {
			if k < i && job[k] > 0 && s.sameJob(&all[k]) {
				job[i] = job[k]
			}
		}
		if job[i] == 0 {
			n++
			job[i] = n
		}
	}
	if n >= 2 {
		for _, i := range own { // a list without a title block of its own among jobs is a job too
			if job[i] == 0 {
				n++
				job[i] = n
			}
		}
	}
	if n < 2 {
		clear(job)
		n = 0
		for _, i := range own {
			for _, k := range own {
				if k != i && shared(all[i].amps, all[k].amps) > 0 && !all[i].sameJob(&all[k]) && job[i] == 0 {
					n++
					job[i] = n
				}
			}
		}
	}
	if n < 2 {
		return nil
	}
	for i := range all {
		for _, k := range own {
			if job[i] == 0 && job[k] > 0 && all[i].sameJob(&all[k]) {
				job[i] = job[k]
			}
		}
	}
	out := make([]part, n)
	for i := range all {
		s := &all[i]
		for k := range out {
			p := &out[k]
			switch job[i] {
			case k + 1:
				for _, t := range s.tables {
					t.fillRows(nil)
				}
				p.tables = append(p.tables, s.tables...)
				p.facts = append(p.facts, s.facts...)
				p.said = append(p.said, s.said...)
				p.spoken = append(p.spoken, s.spoken...)
				p.outside = append(p.outside, s.sheet.Outside...)
				if p.sheet == "" {
					p.sheet = s.sheet.Name
				}
			case 0:
				for _, t := range s.tables {
					c := t.copyFor(nil, len(out) > 1)
					c.again = k > 0
					p.tables = append(p.tables, c)
				}
				if !s.sheet.Hidden {
					p.facts = append(p.facts, withoutJob(s.facts)...)
					p.said = append(p.said, s.said...)
					p.spoken = append(p.spoken, s.spoken...)
				}
				if k == 0 {
					p.outside = append(p.outside, s.sheet.Outside...)
				}
			}
		}
	}
	return out
}

// withoutJob are facts that may hold for several jobs.
func withoutJob(facts []layout.Fact) []layout.Fact {
	return slices.DeleteFunc(slices.Clone(facts), func(f layout.Fact) bool {
		return f.Field == vocabulary.Job || f.Field == vocabulary.JobNo
	})
}

// jobColumn is the column of a table that divides it into jobs: numbers, else
// names, else sites; nil if there is none with two values.
func jobColumn(t *table) *column {
	for _, f := range []vocabulary.Field{vocabulary.JobNo, vocabulary.Job, vocabulary.Site} {
		for _, c := range t.byField[f] {
			first := ""
			for i := range t.Records {
				v := &t.Records[i].Values[c.i]
				if t.Records[i].Class != layout.Device || v.Text == "" {
					continue
				}
				if _, ok := notation.Missing(v.Text); ok {
					continue
				}
				if len(notation.PowersIn(v.Text, notation.Auto)) > 0 {
					break // a device, whatever the header says
				}
				k := join.Key(v.Text)
				if first != "" && k != first {
					return c
				}
				first = k
			}
		}
	}
	return nil
}

// byRegister divides a book by the job columns of its tables, nil if no table
// has one. Tables without such a column serve all jobs.
func byRegister(all []sheetPart) []part {
	var out []part
	at := make(map[string]int)
	type division struct {
		t    *table
		rows [][]int // by job
	}
	var divided []division
	for _, s := range all {
		for _, t := range s.tables {
			c := jobColumn(t)
			if c == nil {
				continue
			}
			d := division{t: t}
			now := -1
			for i := range t.Records {
				r := &t.Records[i]
				if v := &r.Values[c.i]; v.Text != "" && r.Class != layout.Total && r.Class != layout.Note {
					k := join.Key(v.Text)
					n, ok := at[k]
					if !ok {
						n = len(out)
						at[k] = n
						out = append(out, part{})
					}
					now = n
				}
				if now < 0 {
					now = 0
					if len(out) == 0 {
						out = append(out, part{})
					}
				}
				for len(d.rows) <= now {
					d.rows = append(d.rows, nil)
				}
				d.rows[now] = append(d.rows[now], i)
			}
			divided = append(divided, d)
		}
	}
	if len(divided) == 0 {
		return nil
	}
	for _, s := range all {
		for _, t := range s.tables {
			i := slices.IndexFunc(divided, func(d division) bool { return d.t == t })
			for k := range out {
				switch {
				case i < 0:
					c := t.copyFor(nil, len(out) > 1)
					c.again = k > 0
					out[k].tables = append(out[k].tables, c)
				case k < len(divided[i].rows) && len(divided[i].rows[k]) > 0:
					c := t.copyFor(divided[i].rows[k], false)
					out[k].tables = append(out[k].tables, c)
					if out[k].first == nil {
						out[k].first = c
					}
				}
			}
		}
		for k := range out {
			if !s.sheet.Hidden {
				out[k].facts = append(out[k].facts, withoutJob(s.facts)...)
				out[k].said = append(out[k].said, s.said...)
				out[k].spoken = append(out[k].spoken, s.spoken...)
			}
		}
		out[0].outside = append(out[0].outside, s.sheet.Outside...)
	}
	return out
}

// orText is a text, or what stands for it.
func orText(t schedule.Text, instead string, source schedule.Source) schedule.Text {
	if t.Had() {
		return t
	}
	return schedule.Text{Value: instead, Source: source}
}
