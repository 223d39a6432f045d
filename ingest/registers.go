package ingest

import (
	"slices"
	"strings"

	"lineaudit/ingest/join"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// placesOfJobs takes a column of places in a register of jobs for that of their
// sites: each job has one, with several rows in it, and zones stand beside.
func (t *table) placesOfJobs() {
	if t.has(vocabulary.Site) || !t.has(vocabulary.Zone) {
		return
	}
	jobs := t.byField[vocabulary.JobNo]
	if len(jobs) == 0 {
		jobs = t.byField[vocabulary.Job]
	}
	if len(jobs) != 1 {
		return
	}
	for _, f := range []vocabulary.Field{vocabulary.Room, vocabulary.Building} {
		for _, c := range t.byField[f] {
			if t.onePlaceEach(jobs[0], c) {
				t.become(c, vocabulary.Site, "each job has one of its own")
				return
			}
		}
	}
}

// codesOfSites takes a column of buildings in a register for that of the numbers of its
// jobs where its cells are codes and each stands for one site: "Obj. G-12", always the
// boathouse. Lists of equipment that name the code alone under the same header follow.
// Where the codes stand below a header for sites, the names beside them are the sites.
func codesOfSites(tables []*table) {
	headers := make(map[string]bool)
	for _, t := range tables {
		t.codesBesideSites()
		t.numbersOfSites()
		t.numbersOfClients()
		codes, names := t.byField[vocabulary.Site], t.byField[vocabulary.Building]
		if len(codes) == 1 && len(names) == 1 && !t.namesJobs() && t.areCodes(codes[0]) && !t.areCodes(names[0]) && t.onePlaceEach(codes[0], names[0]) && t.onePlaceEach(names[0], codes[0]) {
			t.become(codes[0], vocabulary.JobNo, "its codes stand for one building each")
			t.become(names[0], vocabulary.Site, "each has a code of its own")
		}
	}
	for _, t := range tables {
		sites, codes := t.byField[vocabulary.Site], t.byField[vocabulary.Building]
		if len(sites) == 1 && len(codes) == 1 && !t.namesJobs() && t.areCodes(codes[0]) && t.onePlaceEach(codes[0], sites[0]) && t.onePlaceEach(sites[0], codes[0]) {
			headers[headerKey(codes[0])] = true
		}
	}
	delete(headers, "")
	if len(headers) == 0 {
		return
	}
	for _, t := range tables {
		if codes := t.byField[vocabulary.Building]; len(codes) == 1 && headers[headerKey(codes[0])] && !t.namesJobs() {
			t.become(codes[0], vocabulary.JobNo, "its codes stand for one site each")
		}
	}
}

// codesBesideSites takes a column that was not understood for that of the numbers of jobs where its cells are
// codes and each stands for one site of the register: "Objectnr" beside "Object".
func (t *table) codesBesideSites() {
	sites := t.byField[vocabulary.Site]
	if len(sites) != 1 || t.namesJobs() || t.areCodes(sites[0]) {
		return
	}
	for _, c := range t.byField[vocabulary.Unknown] {
		if c.i < sites[0].i && t.areCodes(c) && t.onePlaceEach(c, sites[0]) && t.onePlaceEach(sites[0], c) {
			t.become(c, vocabulary.JobNo, "its codes stand for one site each")
			return
		}
	}
}

// numbersOfSites takes a column of tags or numbers for that of jobs where each stands for one place, in several
// rows as no device does, and the header over the places may as well be that of sites: "Obj.-Nr." beside "Objekt".
func (t *table) numbersOfSites() {
	places := t.byField[vocabulary.Building]
	if len(places) != 1 || t.has(vocabulary.Site) || t.namesJobs() || t.areCodes(places[0]) || !saysSite(places[0].Header) {
		return
	}
	for _, f := range []vocabulary.Field{vocabulary.Tag, vocabulary.Item, vocabulary.Unknown} {
		for _, c := range t.byField[f] {
			if c.i < places[0].i && t.areCodes(c) && t.onePlaceEach(c, places[0]) && t.onePlaceEach(places[0], c) {
				t.become(c, vocabulary.JobNo, "its codes stand for one place each")
				t.become(places[0], vocabulary.Site, "each has a number of its own")
				return
			}
		}
	}
}

// numbersOfClients takes a column of codes whose header says nothing of it for that of the numbers of jobs where
// each stands for one client, in several rows: "Kontrakt" beside "Client".
func (t *table) numbersOfClients() {
	clients := t.byField[vocabulary.Client]
	if len(clients) != 1 || t.has(vocabulary.Site) || t.namesJobs() {
		return
	}
	for _, f := range []vocabulary.Field{vocabulary.Model, vocabulary.Tag, vocabulary.Item, vocabulary.Unknown} {
		for _, c := range t.byField[f] {
			if c.i < clients[0].i && (f == vocabulary.Unknown || strings.HasPrefix(c.Evidence, "by its cells")) && t.areCodes(c) && t.onePlaceEach(c, clients[0]) && t.onePlaceEach(clients[0], c) {
				t.become(c, vocabulary.JobNo, "its codes stand for one client each")
				return
			}
		}
	}
}

// saysSite reports whether header words may name sites: "Objekt".
func saysSite(header string) bool {
	return slices.ContainsFunc(vocabulary.NewScorer().Header(header).Candidates, func(c vocabulary.Candidate) bool {
		return c.Field == vocabulary.Site && c.Score >= sureHeader
	})
}

// namesJobs reports whether a table has a column of jobs or their numbers.
func (t *table) namesJobs() bool { return t.has(vocabulary.JobNo) || t.has(vocabulary.Job) }

// areCodes reports whether the cells of a column are single words with a figure.
func (t *table) areCodes(c *column) bool {
	yes := true
	t.eachText(c, func(text string) { yes = yes && anyDigit(text) && countWords(text) == 1 && len(text) <= longestOutput })
	return yes
}

// onePlaceEach reports whether the rows of every job name one place, the jobs
// more than one together, and most jobs have several rows.
func (t *table) onePlaceEach(jobs, places *column) bool {
	place, rows := make(map[string]string), make(map[string]int)
	distinct := make(map[string]bool)
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class != layout.Device {
			continue
		}
		job, at := join.Key(r.Values[jobs.i].Text), join.Key(r.Values[places.i].Text)
		if was, ok := place[job]; job == "" || at == "" || ok && was != at {
			return false
		}
		place[job] = at
		rows[job]++
		distinct[at] = true
	}
	several := 0
	for _, n := range rows {
		if n > 1 {
			several++
		}
	}
	return len(rows) > 1 && len(distinct) > 1 && 2*several >= len(rows)
}

// ratingsOfEach takes a column of ratings in a list of devices of several kinds for that
// of each row's own device, where its header names neither controls nor outputs and
// amplifiers or controls have rows with a rating in it: what stands beside a loudspeaker
// is then its own.
func (b *builder) ratingsOfEach() {
	for _, t := range b.tables {
		cols := slices.Concat(t.byField[vocabulary.ControlWatts], t.byField[vocabulary.ChannelWatts])
		if t.kind != layout.Mixed || len(cols) != 1 || t.has(vocabulary.RatedWatts) || !t.has(vocabulary.Tap) || saysControl(cols[0]) || speaksOfOutputs(cols[0].Header) || speaksOfFrames(cols[0]) {
			continue
		}
		own := func(r *row) bool {
			return r.out == "" && (r.kind == controlRow || r.kind == amplifierRow) && !r.own(vocabulary.Tap).had() && r.at(cols[0]).had()
		}
		beside := func(r *row) bool { return r.out == "" && r.kind == loudspeakerRow && r.at(cols[0]).had() }
		if slices.ContainsFunc(t.rows, own) && slices.ContainsFunc(t.rows, beside) {
			t.become(cols[0], vocabulary.RatedWatts, "the rows are devices of several kinds, each with its own")
		}
	}
}

// saysControl reports whether the header of a column has a word for a control.
func saysControl(c *column) bool {
	return strings.Contains(c.Evidence, "control") || join.HasWord(join.Control, c.Header)
}
