package reporttest

import (
	"lineaudit/audit"
	"lineaudit/audit/schedule"
	"lineaudit/report"
)

// Fixed is an audit made by hand, down to the last word, for golden files: two
// jobs at two sites, a superseded revision, four findings, a question, a line
// with segments, files that were not read. No rule is run, so that a golden
// file changes only when a report does.
func Fixed() *report.Audit {
	palm := Job("gardens/palm.xlsx", "Glass gardens", 240, 50, 10, 8)
	palm.Tables = []schedule.Table{{Sheet: "Schedule", Kind: "loudspeakers", Range: "A5:E13", HeaderRow: 5, RowsRead: 8, RowsLeft: 1,
		Columns: []schedule.Column{{Col: 1, Header: "Tag", Field: "tag", Confidence: 1}, {Col: 5, Header: "Colour"}}}}
	palm.LeftOut = []schedule.LeftOut{{At: schedule.At(palm.File, "Schedule", 14, 0), Kind: schedule.NotUnderstood, Reason: "neither a device nor a total", Text: "see drawing 7"}}
	rink := Job("rink.xlsx", "North rink", 240, 100, 5, 8)
	old := Job("old/rink 2011.xlsx", "North rink", 240, 100, 5, 8)
	old.Revision = schedule.Said("A", schedule.At(old.File, "Schedule", 1, 5))

	s := audit.DefaultSettings()
	results := []*audit.Result{palmResult(palm, s), {Job: rink, Settings: s, Place: 2}, {Job: old, Settings: s, SupersededBy: rink.File}}
	addRink(results[1])
	a := &report.Audit{For: report.Service, Version: "test", Date: "2026-11-25", Shown: audit.Caution,
		Dispositions: map[string]report.Disposition{"id-2": {Decision: "accepted", Remark: "until the refit"}},
		Beside:       []string{"gardens/palm.xlsx: The workbook was left as it is, and its findings are in this one: it cannot be marked in place."},
		Unwritten:    []string{"rink.xlsx: no marked copy: the file has changed"}}
	for i, r := range results {
		a.Files = append(a.Files, report.File{Name: r.Job.File, Kind: report.Schedule, Format: "xlsx", Size: int64(1000 + i), SHA256: "00ff", Results: []*audit.Result{r}})
	}
	a.Files = append(a.Files, report.File{Name: "old/broken.xlsx", Kind: report.Unreadable, Size: 12, SHA256: "ab12", Reason: "the workbook is cut short; ask for it again"},
		report.File{Name: "price list.csv", Kind: report.NotSchedule, Format: "text", Size: 90, SHA256: "cd34", Reason: "no table with a header row of loudspeakers",
			NotTables: []schedule.LeftOut{{At: schedule.At("price list.csv", "", 1, 0), Kind: schedule.TitleRow, Reason: "a title", Text: "Price list"}}})
	a.Archive = archive(results)
	return a
}

func at(j *schedule.Job, row, col int) schedule.Ref {
	return schedule.At(j.File, "Schedule", row, col)
}

// palmResult: 8 x 10 W = 80 W on a 50 W control, 100^2/80 = 125 ohm; a cable that loses 3.4 dB; two figures that disagree.
func palmResult(j *schedule.Job, s *audit.Settings) *audit.Result {
	rule := func(name string) *audit.Rule { return audit.RuleNamed(name) }
	load := audit.Load{Watts: audit.Exact(80), WithGrowth: audit.Exact(80), Count: audit.Exact(8), Sum: "8 x 10 W = 80 W"}
	volts, ohm := audit.Exact(100), audit.Exact(125)
	r := &audit.Result{Job: j, Settings: s, Place: 1, Score: 51.5}
	r.Findings = []*audit.Finding{
		{ID: "id-1", Rule: rule("control-overload"), Place: "control VC-1", Room: "Fern room", Zone: "Palm house", Grade: audit.Danger, Certainty: audit.Certain, At: at(j, 4, 2),
			Cells:    []audit.Evidence{{At: at(j, 4, 2), Written: "50 W", Role: "rating"}, {At: at(j, 6, 3), Written: "10 W", Role: "tap"}, {At: at(j, 7, 3), Written: "10 W", Role: "tap"}},
			Measured: audit.Exact(160), Limit: 125, Unit: "% of rating", LimitSource: "common practice, no source", Message: "8 x 10 W = 80 W on a 50 W control: 160 %",
			Cautions: []string{"Overloaded parts run hot."}, ExpectedOhm: ohm, Score: 51.5, Factors: audit.Factors{Severity: 1, Extent: 0.8, Reach: 0.644, Certainty: 1}, Rank: 1,
			Remedies: []audit.Remedy{{Kind: "next-rating", Change: "replace control VC-1 (50 W) by one of 100 W at 100 V", Short: "100 W control", Part: "control, 100 W at 100 V", Before: 160, After: 80, Unit: "% of rating", Effect: "load 80 W of 100 W, 80 %", Source: "usual ratings"},
				{Kind: "retap", Change: "set 8 loudspeakers from 10 W to 5 W (-3.0 dB)", Short: "tap at 5 W", Before: 160, After: 80, Unit: "% of rating", Effect: "load 40 W of 50 W, 80 %"}}},
		{ID: "id-2", Rule: rule("line-loss"), Place: "line W1", Zone: "Palm house", Grade: audit.Fault, Certainty: audit.Possible, At: at(j, 20, 4),
			Cells: []audit.Evidence{{At: at(j, 20, 4), Written: "300 m", Role: "length"}}, Assumed: []schedule.Assumption{{At: at(j, 20, 6), Field: "conductor material", TakenAs: "copper", How: schedule.Default, Because: "no metal is stated"}},
			Measured: audit.Interval{Low: 2.1, High: 3.4, Known: true}, Limit: 3, Unit: "dB", LimitSource: "a handbook, p. 3", Message: "300 m of 0.75 mm2 copper: 3.4 dB with all load at the far end, 2.1 dB evenly spaced",
			Ask: "at which distances do the loudspeakers stand?", NoRemedy: "measure on site", Score: 15, Factors: audit.Factors{Severity: 0.6, Extent: 0.6, Reach: 0.83, Certainty: 0.5}, Rank: 2},
		{ID: "id-3", Rule: rule("count-mismatch"), Place: "zone Palm house", Zone: "Palm house", Grade: audit.Caution, Certainty: audit.Certain, At: at(j, 4, 5),
			Cells:    []audit.Evidence{{At: at(j, 4, 5), Written: "9", Role: "stated count"}, {At: at(j, 6, 2), Written: "1", Role: "count"}},
			Measured: audit.Exact(8), Limit: 9, Unit: "loudspeakers", Message: "9 loudspeakers are stated, 8 are listed", Score: 9, Factors: audit.Factors{Severity: 0.25, Extent: 0.5, Reach: 0.72, Certainty: 1}, Rank: 3},
	}
	r.Questions = []audit.Question{{At: at(j, 20, 4), Field: "distances", Text: "At which distances do the loudspeakers of W1 stand?", Settles: "whether line W1 loses more than 3 dB", Verdicts: 1}}
	r.Passed = []audit.Pass{{Rule: rule("channel-overload"), Place: "channel A1 / 1", At: at(j, 3, 2), Measured: audit.Exact(33.3), Limit: 100, Unit: "% of rating", Message: "80 W of 240 W: 33.3 %"}}
	r.Unshown = []audit.Unshown{{Rule: rule("box-too-shallow"), Place: "control VC-1", At: at(j, 4, 1), Why: "the depth of the box is not stated"}}
	r.Assumptions = []schedule.Assumption{{At: at(j, 20, 6), Field: "conductor material", TakenAs: "copper", How: schedule.Default, Because: "no metal is stated"}}
	r.Zones = []audit.ZoneLoad{{Zone: j.Zones[0], Load: load, LineV: volts, ExpectedOhm: ohm}}
	r.Channels = []audit.ChannelLoad{{Channel: j.Channels[0], LineV: volts, Rated: audit.Exact(240), Load: load, Share: audit.Exact(1.0 / 3), FreeW: audit.Exact(112), ExpectedOhm: ohm, Verdict: audit.Verdict{Passed: true, Checked: true}}}
	r.Controls = []audit.ControlLoad{{Control: j.Controls[0], LineV: volts, Rated: audit.Exact(50), Load: load, Share: audit.Exact(1.6), FreeW: audit.Exact(-30), ExpectedOhm: ohm, Verdict: audit.Verdict{Checked: true, Grade: audit.Danger, Certainty: audit.Certain}}}
	r.Amplifiers = []audit.AmplifierLoad{{Amplifier: j.Amplifiers[0], Load: load}}
	r.Lines = []audit.Line{{Name: "W1", Zone: j.Zones[0], At: at(j, 20, 1), Reading: "segments", LengthM: audit.Exact(300), AreaMM2: audit.Exact(0.75), Material: "copper", LoadW: audit.Exact(80), LineV: volts,
		LoopOhm: audit.Exact(13.79), WorstDB: audit.Interval{Low: 2.1, High: 3.4, Known: true}, Verdict: audit.Verdict{Checked: true, Grade: audit.Fault, Certainty: audit.Possible},
		Cables: []*schedule.Cable{{At: at(j, 20, 4)}},
		Nodes: []audit.Node{{Parent: -1, Kind: "amplifier", Place: "A1 / 1", Volts: 100}, {Parent: 0, Kind: "control", Place: "control VC-1", LengthM: 150, AreaMM2: 0.75, Volts: 84, LossDB: 1.51, ThroughW: 80},
			{Parent: 1, Kind: "loudspeaker", Place: "loudspeaker LS-01", LengthM: 150, AreaMM2: 0.75, Volts: 67.6, LossDB: 3.4, Watts: 9.1, ThroughW: 40, Loudspeakers: 4},
			{Parent: 1, Kind: "loudspeaker", Place: "loudspeaker LS-05", LengthM: 20, AreaMM2: 0.75, Volts: 82, LossDB: 1.72, Watts: 9.6, ThroughW: 40, Loudspeakers: 4}}}}
	return r
}

// addRink gives the second job one finding that cannot be shown.
func addRink(r *audit.Result) {
	r.Findings = []*audit.Finding{{ID: "id-4", Rule: audit.RuleNamed("cannot-check"), Place: "the job", Grade: audit.Unknown, Certainty: audit.CannotBeShown, At: at(r.Job, 1, 1),
		Message: "no rating is stated for 1 of 1 channel", Ask: "what is the rating of A1?", Score: 0.6, Factors: audit.Factors{Severity: 0.1, Extent: 0.75, Reach: 0.4, Certainty: 0.2}, Rank: 4}}
}

func archive(results []*audit.Result) *audit.Archive {
	palm, rink := results[0], results[1]
	a := &audit.Archive{Results: results, Findings: append(append([]*audit.Finding{}, palm.Findings...), rink.Findings...),
		Counts: audit.Counts{Jobs: 2, Superseded: 1, Danger: 1, Fault: 1, Caution: 1, Unknown: 1, Questions: 1, Passed: 1, Unshown: 1, Loudspeakers: 16, Controls: 2, Channels: 2, Amplifiers: 2, Lines: 1, Zones: 2}}
	a.Sites = []audit.Site{
		{Name: "Glass gardens", Place: 1, Score: 51.5, Results: []*audit.Result{palm}, Findings: palm.Findings, Counts: audit.Counts{Jobs: 1, Danger: 1, Fault: 1, Caution: 1, Questions: 1, Passed: 1, Unshown: 1}},
		{Name: "North rink", Place: 2, Score: 0.6, Results: []*audit.Result{rink}, Findings: rink.Findings, Counts: audit.Counts{Jobs: 1, Unknown: 1}}}
	a.First = []audit.Cause{{Kind: "control model", Name: "WK-50", Text: "control model WK-50 stands behind 1 finding at 1 site", Findings: palm.Findings[:1], Sites: 1, Score: 51.5, Share: 0.68}}
	return a
}
