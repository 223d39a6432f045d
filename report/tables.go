package report

import (
	"cmp"
	"iter"
	"math"
	"strings"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
)

// Tables returns every data table in the order of the documentation.
func (a *Audit) Tables() []Table {
	return []Table{
		a.FilesTable(), a.LoudspeakersTable(), a.ZonesTable(), a.ChannelsTable(), a.AmplifiersTable(),
		a.ControlsTable(), a.LinesTable(), a.FindingsTable(), a.QuestionsTable(), a.RemediesTable(),
		a.AssumptionsTable(), a.RowsTable(),
	}
}

// eachJob walks the results in input order, yielding the rows of each.
func eachJob(a *Audit, rows func(r *audit.Result, yield func(...Value) bool) bool) iter.Seq[[]Value] {
	return func(yield func([]Value) bool) {
		for _, r := range a.Results() {
			if !rows(r, func(v ...Value) bool { return yield(v) }) {
				return
			}
		}
	}
}

func text(name, label string, width int) Column {
	return Column{Name: name, Label: label, Width: width}
}
func long(name, label string, width int) Column {
	return Column{Name: name, Label: label, Width: width, Kind: Long}
}
func counted(name, label string) Column {
	return Column{Name: name, Label: label, Kind: Count, Width: 8}
}
func figure(name, label, unit string) Column {
	return Column{Name: name, Label: label, Unit: unit, Kind: Figures, Width: 10}
}
func dataOnly(c Column) Column { c.Data = true; return c }

// FilesTable has one row per file and job.
func (a *Audit) FilesTable() Table {
	return Table{
		Name: "files", Title: "Files", Note: "Every file that was met, and what became of it.",
		Columns: []Column{text("file", "File", 36), text("kind", "Kind", 14), text("job", "Job", 24), text("site", "Site", 24),
			text("revision", "Revision", 10), text("superseded", "Superseded by", 24), counted("tables", "Tables"),
			counted("rows_read", "Rows read"), counted("rows_left_out", "Rows left out"), long("reason", "Reason", 60),
			text("format", "Format", 9), counted("bytes", "Bytes"), dataOnly(text("sha256", "SHA-256", 64))},
		Rows: func(yield func([]Value) bool) {
			for _, f := range a.Files {
				tail := []Value{words(f.Reason), words(f.Format), number(float64(f.Size)), words(f.SHA256)}
				if len(f.Results) == 0 {
					row := []Value{words(f.Name), words(string(f.Kind)), {}, {}, {}, {}, {}, {}, {}}
					if !yield(append(row, tail...)) {
						return
					}
				}
				for _, r := range f.Results {
					j := r.Job
					row := []Value{words(f.Name), words(string(f.Kind)), words(JobName(j)), words(j.Site.Value), words(j.Revision.Value),
						words(r.SupersededBy), count(len(j.Tables)), count(j.RowsRead), count(len(j.LeftOut))}
					if !yield(append(row, tail...)) {
						return
					}
				}
			}
		},
	}
}

// LoudspeakersTable is the normalised archive, one row per loudspeaker or group.
func (a *Audit) LoudspeakersTable() Table {
	return Table{
		Name: "loudspeakers", Title: "Loudspeakers", Note: "One row for each loudspeaker or group, in one vocabulary and one set of units.",
		Columns: []Column{text("file", "File", 30), text("sheet", "Sheet", 16), text("rows", "Rows", 8), text("job", "Job", 22),
			text("zone", "Zone", 20), text("tag", "Tag", 12), text("model", "Model", 16), counted("count", "Count"),
			figure("tap_w", "Tap", "W"), figure("tap_v", "Tap stated for", "V"), figure("line_v", "Line", "V"),
			text("control", "Control", 12), text("amplifier", "Amplifier", 12), text("channel", "Channel", 10), text("status", "Status", 10),
			text("room", "Room", 20), dataOnly(figure("tap_low_w", "Tap at least", "W")), dataOnly(figure("tap_high_w", "Tap at most", "W"))},
		Rows: eachJob(a, func(r *audit.Result, yield func(...Value) bool) bool {
			j := r.Job
			for _, l := range j.Loudspeakers {
				volts := j.LineVoltsOf(l.Channel)
				tapVolts := l.TapVolts.Or(volts)
				if !yield(words(j.File), words(l.At.Sheet), words(l.Rows.String()), words(JobName(j)), words(zoneName(l.Zone)),
					words(l.Tag.Value), words(l.Model.Value), quantity(l.Count), quantity(l.Tap), lineVolts(quantity(tapVolts)), lineVolts(quantity(volts)),
					words(controlName(l.Control)), words(amplifierName(l.Channel)), words(channelName(l.Channel)), words(l.Status.String()),
					words(l.Room.Value), lowOf(l.Tap), highOf(l.Tap)) {
					return false
				}
			}
			return true
		}),
	}
}

// lineVolts writes a line voltage by its class, as the trade does: 70, 70.7 and
// 71 V all read 70.7.
func lineVolts(v Value) Value {
	if v.IsNum {
		v.Number = math.Round(audit.NominalVolts(v.Number)*10) / 10
	}
	return v
}

func lowOf[T ~float64](q schedule.Quantity[T]) Value {
	return low(audit.Interval{Low: float64(q.Low), High: float64(q.High), Known: q.Had()})
}

func highOf[T ~float64](q schedule.Quantity[T]) Value {
	return high(audit.Interval{Low: float64(q.Low), High: float64(q.High), Known: q.Had()})
}

func zoneName(z *schedule.Zone) string {
	if z == nil {
		return ""
	}
	return z.Name
}

func controlName(c *schedule.Control) string {
	if c == nil {
		return ""
	}
	return c.Name
}

func channelName(c *schedule.Channel) string {
	if c == nil {
		return ""
	}
	return c.Name
}

func amplifierName(c *schedule.Channel) string {
	if c == nil || c.Amplifier == nil {
		return ""
	}
	return c.Amplifier.Name
}

// ZonesTable is what every zone draws.
func (a *Audit) ZonesTable() Table {
	return Table{
		Name: "zones", Title: "Zones", Note: "What each zone draws, and the impedance a meter should show at 1 kHz.",
		Columns: []Column{text("file", "File", 30), text("job", "Job", 22), text("zone", "Zone", 22), counted("loudspeakers", "Loudspeakers"),
			figure("load_w", "Load", "W"), figure("expected_ohm", "Expected at 1 kHz", "ohm"),
			figure("load_low_w", "Load at least", "W"), figure("load_high_w", "Load at most", "W"), long("sum", "Sum", 40), long("incomplete", "Incomplete", 30)},
		Rows: eachJob(a, func(r *audit.Result, yield func(...Value) bool) bool {
			for _, z := range r.Zones {
				if !yield(words(r.Job.File), words(JobName(r.Job)), words(z.Zone.Name), exact(z.Load.Count), exact(z.Load.Watts),
					exact(z.ExpectedOhm), low(z.Load.Watts), high(z.Load.Watts), words(z.Load.Sum), words(z.Load.Incomplete)) {
					return false
				}
			}
			return true
		}),
	}
}

// ChannelsTable is every channel against its rating.
func (a *Audit) ChannelsTable() Table {
	return Table{
		Name: "channels", Title: "Channels", Note: "Load is the sum of the taps at the line voltage, every control fully on, cable ignored. Free watts are those left before the headroom limit.",
		Columns: []Column{text("file", "File", 30), text("job", "Job", 22), text("amplifier", "Amplifier", 14), text("channel", "Channel", 10),
			figure("line_v", "Line", "V"), figure("rated_w", "Rated", "W"), figure("load_w", "Load", "W"), figure("load_pct", "Load of rating", "%"),
			figure("free_w", "Free", "W"), figure("expected_ohm", "Expected at 1 kHz", "ohm"), text("verdict", "Verdict", 12),
			figure("load_low_w", "Load at least", "W"), figure("load_high_w", "Load at most", "W"), figure("with_growth_w", "With spares", "W"),
			long("sum", "Sum", 40), long("incomplete", "Incomplete", 30)},
		Rows: eachJob(a, func(r *audit.Result, yield func(...Value) bool) bool {
			for _, c := range r.Channels {
				if !yield(words(r.Job.File), words(JobName(r.Job)), words(amplifierName(c.Channel)), words(c.Channel.Name),
					lineVolts(exact(c.LineV)), exact(c.Rated), exact(c.Load.Watts), percent(c.Share), exact(c.FreeW), exact(c.ExpectedOhm),
					words(c.Verdict.String()), low(c.Load.Watts), high(c.Load.Watts), exact(c.Load.WithGrowth), words(c.Load.Sum), words(c.Load.Incomplete)) {
					return false
				}
			}
			return true
		}),
	}
}

func percent(i audit.Interval) Value {
	v := exact(i)
	v.Number *= 100
	return v
}

// AmplifiersTable is every frame against its total.
func (a *Audit) AmplifiersTable() Table {
	return Table{
		Name: "amplifiers", Title: "Amplifiers", Note: "The load on all channels of a frame against what the frame may give in total.",
		Columns: []Column{text("file", "File", 30), text("job", "Job", 22), text("amplifier", "Amplifier", 14), text("model", "Model", 18),
			figure("rated_w", "Frame total", "W"), figure("load_w", "Load", "W"), figure("load_pct", "Load of total", "%"), text("verdict", "Verdict", 12),
			figure("load_low_w", "Load at least", "W"), figure("load_high_w", "Load at most", "W"), text("status", "Status", 10), long("sum", "Sum", 40)},
		Rows: eachJob(a, func(r *audit.Result, yield func(...Value) bool) bool {
			for _, m := range r.Amplifiers {
				if !yield(words(r.Job.File), words(JobName(r.Job)), words(m.Amplifier.Name), words(m.Amplifier.Model.Value), exact(m.Rated),
					exact(m.Load.Watts), percent(m.Share), words(m.Verdict.String()), low(m.Load.Watts), high(m.Load.Watts),
					words(m.Amplifier.Status.String()), words(m.Load.Sum)) {
					return false
				}
			}
			return true
		}),
	}
}

// ControlsTable is every control against its rating.
func (a *Audit) ControlsTable() Table {
	return Table{
		Name: "controls", Title: "Controls", Note: "Load is everything downstream of the control, controls below it included.",
		Columns: []Column{text("file", "File", 30), text("job", "Job", 22), text("control", "Control", 14), text("zone", "Zone", 20),
			figure("rated_w", "Rated", "W"), figure("load_w", "Load", "W"), figure("load_pct", "Load of rating", "%"), figure("free_w", "Free", "W"),
			figure("expected_ohm", "Expected at 1 kHz", "ohm"), text("verdict", "Verdict", 12), text("model", "Model", 16), text("room", "Room", 18),
			figure("load_low_w", "Load at least", "W"), figure("load_high_w", "Load at most", "W"), long("sum", "Sum", 40), long("incomplete", "Incomplete", 30)},
		Rows: eachJob(a, func(r *audit.Result, yield func(...Value) bool) bool {
			for _, c := range r.Controls {
				if !yield(words(r.Job.File), words(JobName(r.Job)), words(c.Control.Name), words(zoneName(c.Control.Zone)),
					exact(c.Rated), exact(c.Load.Watts), percent(c.Share), exact(c.FreeW), exact(c.ExpectedOhm), words(c.Verdict.String()),
					words(c.Control.Model.Value), words(c.Control.Room.Value), low(c.Load.Watts), high(c.Load.Watts), words(c.Load.Sum), words(c.Load.Incomplete)) {
					return false
				}
			}
			return true
		}),
	}
}

// LinesTable is every cable network with what it loses.
func (a *Audit) LinesTable() Table {
	return Table{
		Name: "lines", Title: "Lines", Note: "Loss is the fall of level at the loudspeaker, 20 log10 of the voltages. With one length only, the far-end reading puts all load at its end, the even one spreads it.",
		Columns: []Column{text("file", "File", 30), text("job", "Job", 22), text("line", "Line", 18), text("zone", "Zone", 20),
			figure("length_m", "Length", "m"), figure("area_mm2", "Conductor", "mm2"), text("material", "Material", 16), figure("load_w", "Load", "W"),
			figure("line_v", "Line", "V"), figure("loop_ohm", "Loop", "ohm"), figure("loss_far_db", "Loss, far end", "dB"),
			figure("loss_even_db", "Loss, even", "dB"), figure("loss_worst_db", "Worst loudspeaker", "dB"), text("verdict", "Verdict", 12),
			text("reading", "Reading", 12), long("incomplete", "Incomplete", 30)},
		Rows: eachJob(a, func(r *audit.Result, yield func(...Value) bool) bool {
			for _, l := range r.Lines {
				if !yield(words(r.Job.File), words(JobName(r.Job)), words(l.Name), words(zoneName(l.Zone)), exact(l.LengthM), exact(l.AreaMM2),
					words(l.Material), exact(l.LoadW), lineVolts(exact(l.LineV)), exact(l.LoopOhm), exact(l.FarDB), exact(l.EvenDB), exact(l.WorstDB),
					words(l.Verdict.String()), words(l.Reading), words(l.Incomplete)) {
					return false
				}
			}
			return true
		}),
	}
}

// FindingsTable has every finding in rank order; those of superseded jobs follow without a rank.
func (a *Audit) FindingsTable() Table {
	return Table{
		Name: "findings", Title: "Findings", Note: "Ranked over the whole archive: score = 100 x severity x extent x reach x certainty.",
		Columns: []Column{counted("rank", "Rank"), figure("score", "Score", ""), text("grade", "Grade", 9), text("certainty", "Certainty", 12), text("rule", "Rule", 22),
			text("job", "Job", 22), text("site", "Site", 22), text("place", "Place", 24), text("file", "File", 28), text("sheet", "Sheet", 16),
			text("cell", "Cells", 14), figure("measured", "Measured", ""), figure("limit", "Limit", ""), text("unit", "Unit", 12),
			dataOnly(figure("measured_low", "At least", "")), dataOnly(figure("measured_high", "At most", "")), long("remedy", "Remedy", 44), dataOnly(text("id", "Id", 14)),
			long("message", "What was found", 60), figure("severity", "Severity", ""), figure("extent", "Extent", ""), figure("reach", "Reach", ""),
			figure("certainty_factor", "Certainty factor", ""), text("room", "Room", 18), text("zone", "Zone", 18), long("higher", "Possibly worse", 30), long("ask", "To settle it", 36),
			long("source", "Limit from", 40), long("cautions", "Cautions", 60), text("superseded", "Superseded by", 20)},
		Rows: func(yield func([]Value) bool) {
			superseded := map[*audit.Finding]string{}
			jobs := map[*audit.Finding]*schedule.Job{}
			for _, r := range a.Results() {
				for _, f := range r.Findings {
					jobs[f] = r.Job
					superseded[f] = r.SupersededBy
				}
			}
			for _, f := range a.AllFindings() {
				j := jobs[f]
				if j == nil {
					continue
				}
				m := Value{}
				if v, ok := Measured(f); ok {
					m = finite(v)
				}
				rank := Value{}
				if f.Rank > 0 {
					rank = count(f.Rank)
				}
				row := []Value{rank, number(f.Score), words(f.Grade.String()), words(f.Certainty.String()), words(f.Rule.Name),
					words(JobName(j)), words(j.Site.Value), words(f.Place), words(f.At.File), words(f.At.Sheet), words(Cells(f)),
					m, finite(f.Limit), words(f.Unit), low(f.Measured), high(f.Measured), words(RemedyText(f)), words(f.ID), words(f.Message),
					number(f.Factors.Severity), number(f.Factors.Extent), number(f.Factors.Reach), number(f.Factors.Certainty),
					words(f.Room), words(f.Zone), words(f.Higher), words(f.Ask), words(f.LimitSource), words(strings.Join(f.Cautions, " ")), words(superseded[f])}
				if !yield(row) {
					return
				}
			}
		},
	}
}

// RemedyText is the first remedy of a finding, or why there is none.
func RemedyText(f *audit.Finding) string {
	if len(f.Remedies) > 0 {
		return f.Remedies[0].Change
	}
	return f.NoRemedy
}

// QuestionsTable is what one answer each would settle.
func (a *Audit) QuestionsTable() Table {
	return Table{
		Name: "questions", Title: "Questions", Note: "What the schedules do not say and what an answer would settle, most first within a job.",
		Columns: []Column{text("file", "File", 30), text("job", "Job", 22), text("sheet", "Sheet", 16), text("cell", "Cell", 8), text("field", "Field", 16),
			long("question", "Question", 60), long("settles", "Settles", 40), counted("verdicts", "Verdicts settled")},
		Rows: eachJob(a, func(r *audit.Result, yield func(...Value) bool) bool {
			for _, q := range r.Questions {
				if !yield(words(r.Job.File), words(JobName(r.Job)), words(q.At.Sheet), words(q.At.Cell()), words(q.Field), words(q.Text),
					words(q.Settles), count(q.Verdicts)) {
					return false
				}
			}
			return true
		}),
	}
}

// RemediesTable has every computed remedy.
func (a *Audit) RemediesTable() Table {
	return Table{
		Name: "remedies", Title: "Remedies", Note: "Computed on the network and audited again before they were written here. Confirm on site before work begins.",
		Columns: []Column{text("finding", "Finding", 14), text("kind", "Kind", 12), long("change", "Change", 60), figure("before", "Before", ""),
			figure("after", "After", ""), text("unit", "Unit", 12), long("effect", "Effect", 50), long("part", "Part", 30), text("source", "Source", 26),
			text("rule", "Rule", 20), text("place", "Place", 24), text("file", "File", 28)},
		Rows: func(yield func([]Value) bool) {
			for _, f := range a.AllFindings() {
				for _, r := range f.Remedies {
					if !yield([]Value{words(f.ID), words(r.Kind), words(r.Change), finite(r.Before), finite(r.After), words(r.Unit), words(r.Effect),
						words(r.Part), words(r.Source), words(f.Rule.Name), words(f.Place), words(f.At.File)}) {
						return
					}
				}
			}
		},
	}
}

// AssumptionsTable is everything taken rather than stated.
func (a *Audit) AssumptionsTable() Table {
	return Table{
		Name: "assumptions", Title: "Assumptions", Note: "Everything that was taken rather than stated.",
		Columns: []Column{text("file", "File", 30), text("sheet", "Sheet", 16), text("cell", "Cell", 8), text("field", "Field", 18), text("written", "Written", 22),
			text("taken_as", "Taken as", 22), text("how", "How", 20), long("because", "Because", 50)},
		Rows: eachJob(a, func(r *audit.Result, yield func(...Value) bool) bool {
			for _, s := range r.Assumptions {
				if !yield(words(cmp.Or(s.At.File, r.Job.File)), words(s.At.Sheet), words(s.At.Cell()), words(s.Field), words(s.Written), words(s.TakenAs),
					words(s.How.String()), words(s.Because)) {
					return false
				}
			}
			return true
		}),
	}
}

// RowsTable is every row that was left out or not understood.
func (a *Audit) RowsTable() Table {
	row := func(l schedule.LeftOut, file string) []Value {
		at := Value{}
		if l.At.Row > 0 {
			at = count(l.At.Row)
		}
		return []Value{words(cmp.Or(l.At.File, file)), words(l.At.Sheet), at, words(string(l.Kind)), words(l.Reason), words(l.Text), quantity(l.Load)}
	}
	return Table{
		Name: "rows", Title: "Rows left out", Note: "Every row that is no device, was struck out or hidden, or was not understood, with the reason.",
		Columns: []Column{text("file", "File", 30), text("sheet", "Sheet", 16), counted("row", "Row"), text("kind", "Kind", 16), long("reason", "Reason", 40),
			long("text", "Text", 60), figure("load_w", "Load if counted", "W")},
		Rows: func(yield func([]Value) bool) {
			for _, f := range a.Files {
				for _, l := range f.NotTables {
					if !yield(row(l, f.Name)) {
						return
					}
				}
				for _, r := range f.Results {
					for _, l := range r.Job.LeftOut {
						if !yield(row(l, f.Name)) {
							return
						}
					}
				}
			}
		},
	}
}
