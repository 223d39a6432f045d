package audit

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"lineaudit/audit/schedule"
)

// Rank puts the results of all jobs together: it decides which revisions are
// superseded, ranks the findings and the sites of the current jobs, and finds
// what to fix first. It sets SupersededBy and Place of the results, and ID and
// Rank of their findings; results stay in input order.
func Rank(results []*Result) *Archive {
	a := &Archive{Results: results}
	supersede(results)
	uniqueIDs(results)
	var current []*Result
	for _, r := range results {
		r.Place = 0
		for _, f := range r.Findings {
			f.Rank = 0
		}
		a.Counts.add(r)
		if r.SupersededBy == "" {
			current = append(current, r)
			a.Findings = append(a.Findings, r.Findings...)
		}
	}
	slices.SortStableFunc(a.Findings, compareFindings)
	for i, f := range a.Findings {
		f.Rank = i + 1
	}
	a.Sites = rankSites(current)
	ordered := slices.Clone(current)
	slices.SortStableFunc(ordered, func(x, y *Result) int {
		return cmp.Or(compareWorst(x.Findings, y.Findings), cmp.Compare(x.Job.File, y.Job.File), cmp.Compare(x.Job.Sheet, y.Job.Sheet))
	})
	for i, r := range ordered {
		r.Place = i + 1
	}
	a.First = firstCauses(a.Findings, current)
	return a
}

// compareWorst orders two ranked lists of findings by their worst, then their
// next worst, and so on; the list that ends first is the better one.
func compareWorst(x, y []*Finding) int {
	for i := range min(len(x), len(y)) {
		if c := cmp.Compare(y[i].Score, x[i].Score); c != 0 {
			return c
		}
	}
	return cmp.Compare(len(y), len(x))
}

// rankSites gathers the current jobs by site, worst site first.
func rankSites(current []*Result) []Site {
	at := map[string]int{}
	var sites []Site
	for _, r := range current {
		name := siteName(r.Job)
		i, ok := at[folded(name)]
		if !ok {
			i = len(sites)
			at[folded(name)] = i
			sites = append(sites, Site{Name: name})
		}
		s := &sites[i]
		s.Results = append(s.Results, r)
		s.Findings = append(s.Findings, r.Findings...)
		s.Counts.add(r)
	}
	for i := range sites {
		slices.SortStableFunc(sites[i].Findings, compareFindings)
		if len(sites[i].Findings) > 0 {
			sites[i].Score = sites[i].Findings[0].Score
		}
	}
	slices.SortStableFunc(sites, func(a, b Site) int {
		return cmp.Or(compareWorst(a.Findings, b.Findings), cmp.Compare(a.Name, b.Name))
	})
	for i := range sites {
		sites[i].Place = i + 1
	}
	return sites
}

// siteName is the site of a job, else the job, else its file.
func siteName(j *schedule.Job) string {
	return cmp.Or(j.Site.Value, j.Name.Value, j.Number.Value, j.File)
}

// add counts one result; a superseded one counts only as superseded.
func (c *Counts) add(r *Result) {
	if r.SupersededBy != "" {
		c.Superseded++
		return
	}
	c.Jobs++
	for _, f := range r.Findings {
		switch f.Grade {
		case Danger:
			c.Danger++
		case Fault:
			c.Fault++
		case Caution:
			c.Caution++
		default:
			c.Unknown++
		}
	}
	n := r.counts()
	c.Questions += n.Questions
	c.Passed += n.Passed
	c.Unshown += n.Unshown
	c.Loudspeakers += n.Loudspeakers
	c.Controls += n.Controls
	c.Channels += n.Channels
	c.Amplifiers += n.Amplifiers
	c.Zones += n.Zones
	c.Lines += n.Lines
}

// loudspeakers is the number of installed loudspeakers of a job, each row at
// least one.
func loudspeakers(j *schedule.Job) int {
	n := 0
	for _, l := range j.Loudspeakers {
		if l.Status != schedule.Installed {
			continue
		}
		if k := countOf(l); k.Low < 1e6 {
			n += int(max(0, k.Low))
		}
	}
	return n
}

// uniqueIDs tells findings apart that two revisions, or two jobs of one name,
// have in common: the first keeps its ID, current jobs before superseded ones.
func uniqueIDs(results []*Result) {
	seen := map[string]int{}
	for _, superseded := range []bool{false, true} {
		for _, r := range results {
			if (r.SupersededBy != "") != superseded {
				continue
			}
			for _, f := range r.Findings {
				f.ID, _, _ = strings.Cut(f.ID, "-")
				seen[f.ID]++
				if n := seen[f.ID]; n > 1 {
					f.ID += "-" + strconv.Itoa(n)
				}
			}
		}
	}
}
