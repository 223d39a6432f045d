package audit

import (
	"fmt"
	"testing"

	"lineaudit/audit/schedule"
)

// revision makes a result of a job with a title block.
func revision(file, number, name, rev, date string) *Result {
	at := schedule.At(file, "", 1, 1)
	return &Result{Job: &schedule.Job{File: file, Number: schedule.Said(number, at), Name: schedule.Said(name, at),
		Revision: schedule.Said(rev, at), Date: schedule.Said(date, at)}, Settings: DefaultSettings()}
}

func TestRevisions(t *testing.T) {
	for _, tt := range []struct {
		name string
		jobs []*Result
		want []string // SupersededBy
	}{
		{"letters of one number", []*Result{revision("a.xlsx", "J1001", "Palm House", "A", ""), revision("b.xlsx", "J1001", "Palm House", "C", ""), revision("c.xlsx", "J1001", "", "B", "")},
			[]string{"b.xlsx", "", "b.xlsx"}},
		{"another number", []*Result{revision("a.xlsx", "J1001", "Palm House", "A", ""), revision("b.xlsx", "J1002", "Palm House", "B", "")}, []string{"", ""}},
		{"same number, another name", []*Result{revision("a.xlsx", "J1001", "Palm House", "A", ""), revision("b.xlsx", "J1001", "Boathouse", "B", "")}, []string{"", ""}},
		{"as built beats a later letter", []*Result{revision("a.xlsx", "J1", "", "as built", ""), revision("b.xlsx", "J1", "", "D", "")}, []string{"", "a.xlsx"}},
		{"preliminary before construction", []*Result{revision("a.xlsx", "J1", "", "P3", ""), revision("b.xlsx", "J1", "", "C1", "")}, []string{"b.xlsx", ""}},
		{"letters and numbers do not compare, dates do", []*Result{revision("a.xlsx", "J1", "", "B", "2019-05-01"), revision("b.xlsx", "J1", "", "2", "2020-01-01")}, []string{"b.xlsx", ""}},
		{"nothing decides: both stay", []*Result{revision("a.xlsx", "J1", "", "B", ""), revision("b.xlsx", "J1", "", "2", "")}, []string{"", ""}},
		{"by file name", []*Result{revision("x/rink rev A.xlsx", "", "", "", ""), revision("x/rink rev B.xlsx", "", "", "", ""), revision("y/rink rev C.xlsx", "", "", "", "")},
			[]string{"x/rink rev B.xlsx", "", ""}},
		{"no mark is the first issue", []*Result{revision("x/rink.xlsx", "", "", "", ""), revision("x/rink_rev2.xlsx", "", "", "", "")}, []string{"x/rink_rev2.xlsx", ""}},
		{"by date in the file name", []*Result{revision("x/rink 2019-03-01.xlsx", "", "", "", ""), revision("x/rink 20200401.xlsx", "", "", "", "")},
			[]string{"x/rink 20200401.xlsx", ""}},
		{"rink 1 and rink 2 are two jobs", []*Result{revision("x/rink 1.xlsx", "", "", "", ""), revision("x/rink 2.xlsx", "", "", "", "")}, []string{"", ""}},
		{"same revision twice", []*Result{revision("a.xlsx", "J1", "", "B", ""), revision("b.xlsx", "J1", "", "B", "")}, []string{"", ""}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			a := Rank(tt.jobs)
			current := 0
			for i, want := range tt.want {
				if got := tt.jobs[i].SupersededBy; got != want {
					t.Errorf("%s: superseded by %q, want %q", tt.jobs[i].Job.File, got, want)
				}
				if want == "" {
					current++
				}
			}
			if a.Counts.Jobs != current || a.Counts.Superseded != len(tt.jobs)-current {
				t.Errorf("counts %d jobs and %d superseded, want %d and %d", a.Counts.Jobs, a.Counts.Superseded, current, len(tt.jobs)-current)
			}
		})
	}
}

// Copies of one file are one job; files that merely hold the same are not.
func TestCopiesCountOnce(t *testing.T) {
	job := func(file, site, name, bytes string) *Result {
		at := schedule.At(file, "", 1, 1)
		r := revision(file, "", name, "", "")
		r.Job.Site, r.Bytes = schedule.Said(site, at), bytes
		return r
	}
	for _, tt := range []struct {
		name string
		jobs []*Result
		want []string
	}{
		{"a backup", []*Result{job("backup/palm.xlsx", "Palm house", "", "aa 0"), job("gardens/palm.xlsx", "Palm house", "", "aa 0")}, []string{"", "backup/palm.xlsx"}},
		{"renamed", []*Result{job("a.xlsx", "Palm house", "", "aa 0"), job("z/b.xlsx", "PALM HOUSE", "", "aa 0"), job("z/c.xlsx", "Palm house", "", "aa 0")}, []string{"", "a.xlsx", "a.xlsx"}},
		{"one changed since", []*Result{job("a.xlsx", "Palm house", "", "aa 0"), job("z/a.xlsx", "Palm house", "", "bb 0")}, []string{"", ""}},
		{"two jobs of one file", []*Result{job("a.xlsx", "Palm house", "", "aa 0"), job("a.xlsx", "Palm house", "", "aa 1")}, []string{"", ""}},
		{"in the folders of two sites", []*Result{job("rink 1/job.xlsx", "rink 1", "", "aa 0"), job("rink 2/job.xlsx", "rink 2", "", "aa 0")}, []string{"", ""}},
		{"bytes that nobody knows", []*Result{job("a.xlsx", "Palm house", "", ""), job("z/a.xlsx", "Palm house", "", "")}, []string{"", ""}},
		{"a copy by its name", []*Result{job("x/Copy of job.xlsx", "", "", "aa 0"), job("x/job - Copy (2).xlsx", "", "", "aa 0"), job("x/job.xlsx", "", "", "aa 0")},
			[]string{"", "x/Copy of job.xlsx", "x/Copy of job.xlsx"}},
		{"two rinks built alike", []*Result{job("x/rink 1.xlsx", "", "", "aa 0"), job("x/rink 2.xlsx", "", "", "aa 0")}, []string{"", ""}},
	} {
		t.Run(tt.name, func(t *testing.T) {
			for _, r := range tt.jobs { // as the reading does where the schedule names no site
				if r.Job.Site.Value == "" {
					r.Job.Site = schedule.Text{Value: "x", Source: schedule.Source{How: schedule.Default}}
				}
			}
			Rank(tt.jobs)
			for i, want := range tt.want {
				if got := tt.jobs[i].SupersededBy; got != want {
					t.Errorf("%s: superseded by %q, want %q", tt.jobs[i].Job.File, got, want)
				}
			}
		})
	}
}

func TestRankLeavesSupersededOut(t *testing.T) {
	old := loadCase(t, "testdata/control-overload/fires.csv").job
	now := loadCase(t, "testdata/control-overload/fires.csv").job
	at := schedule.At("b.csv", "", 1, 1)
	now.File = "b.csv"
	old.Number, now.Number = schedule.Said("J7", at), schedule.Said("J7", at)
	old.Revision, now.Revision = schedule.Said("A", at), schedule.Said("B", at)
	results := []*Result{Check(old, DefaultSettings()), Check(now, DefaultSettings())}
	a := Rank(results)
	if results[0].SupersededBy != "b.csv" || len(a.Findings) != len(results[1].Findings) || a.Counts.Danger != 1 || a.Counts.Fault != 1 {
		t.Fatalf("superseded by %q, %d findings ranked, counts %+v", results[0].SupersededBy, len(a.Findings), a.Counts)
	}
	ids := map[string]bool{}
	for _, r := range results {
		for _, f := range r.Findings {
			if ids[f.ID] {
				t.Errorf("id %s twice", f.ID)
			}
			ids[f.ID] = true
			if (f.Rank == 0) != (r == results[0]) {
				t.Errorf("%s of %s has rank %d", f.Rule.Name, r.Job.File, f.Rank)
			}
		}
	}
	if a.Findings[0].Rank != 1 || a.Sites[0].Place != 1 || results[1].Place != 1 || results[0].Place != 0 {
		t.Error("places are not set")
	}
	again := Rank(results)
	if again.Findings[0].ID != a.Findings[0].ID {
		t.Error("ranking twice changes ids")
	}
}

func TestWhatToFixFirst(t *testing.T) {
	job := func(file, site string) *Result {
		c := parseCase(t, file, `kind,name,says,want
job,J,site=`+site+`,
channel,A1/1,volts=100; rated=480,
control,VC-1,channel=A1/1; rated=35; model=WK-35,
control,VC-2,channel=A1/1; rated=100; model=WK-100,
loudspeaker,L1,count=10; tap=5; control=VC-1,
loudspeaker,L2,count=10; tap=5; control=VC-2,
`)
		c.job.File = file
		return Check(c.job, DefaultSettings())
	}
	jobs := []*Result{job("a.csv", "Rink"), job("b.csv", "Boathouse"), job("c.csv", "Rink"), job("d.csv", "Rink")}
	jobs[3].Findings = nil // it uses the same models and has no finding
	for i, r := range jobs {
		jobs[i] = r.Shed()
	}
	a := Rank(jobs)
	if len(a.First) == 0 || len(a.Sites) != 2 {
		t.Fatalf("causes %v, %d sites", a.First, len(a.Sites))
	}
	c := a.First[0]
	if c.Kind != "control model" || c.Name != "WK-35" || len(c.Findings) != 3 || c.Sites != 2 || c.Share < 0.99 {
		t.Errorf("first cause %s %s with %d findings at %d sites, share %g", c.Kind, c.Name, len(c.Findings), c.Sites, c.Share)
	}
	if want := "control model WK-35 stands behind 3 findings at 2 sites, in 3 of 4 jobs with it"; c.Text != want {
		t.Errorf("%q, want %q", c.Text, want)
	}
	if h := a.First[1]; len(a.First) != 2 || h.Kind != habit || h.Name != controlOverload.Title || len(h.Findings) != 3 {
		t.Errorf("the habit after it: %+v", h)
	}
	if a.Sites[0].Score != a.Findings[0].Score || a.Sites[0].Name != "Rink" {
		t.Errorf("worst site %s with %g", a.Sites[0].Name, a.Sites[0].Score)
	}
}

// TestWhatEverybodyUsesIsNoCause: two long runs among fifty jobs with the same
// cable are not laid to the cable.
func TestWhatEverybodyUsesIsNoCause(t *testing.T) {
	var results []*Result
	for i := range 50 {
		length := "50"
		if i < 2 {
			length = "900"
		}
		c := parseCase(t, "runs", `kind,name,says,want
channel,A1/1,volts=100; rated=480,
zone,Pool,channel=A1/1,
loudspeaker,L1,count=10; tap=10; zone=Pool,
cable,C1,zone=Pool; length=`+length+`; area=1.5; reach=whole,
`)
		c.job.File = fmt.Sprintf("%d.csv", i)
		results = append(results, Check(c.job, DefaultSettings()))
	}
	for _, c := range Rank(results).First {
		if c.Kind != habit {
			t.Errorf("laid to %s %s: %s", c.Kind, c.Name, c.Text)
		}
	}
}

// TestScore works the documented formula out by hand: 100 W on 75 W, 16
// loudspeakers: danger 1 x (0.5 + 0.5 x (100/75 - 1)) x (0.5 + 0.15 log10 17) x 1.
func TestScore(t *testing.T) {
	r := Check(loadCase(t, "testdata/control-overload/fires.csv").job, DefaultSettings())
	f := r.Findings[0]
	near(t, "extent", f.Factors.Extent, 0.5+0.5*(100.0/75-1), 1e-9)
	near(t, "reach", f.Factors.Reach, 0.5+0.15*1.2304489213782739, 1e-9)
	near(t, "score", f.Score, 100*f.Factors.Severity*f.Factors.Extent*f.Factors.Reach*f.Factors.Certainty, 1e-12)
	if f.Factors.Severity != 1 || f.Factors.Certainty != 1 {
		t.Errorf("factors %+v", f.Factors)
	}
}
