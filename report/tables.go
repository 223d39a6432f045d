package report

import (
	"math"
	"slices"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
)

// Tables returns every data table in the order of the documentation. A table
// that is too long for a sheet is among them whatever it is.
func (a *Audit) Tables() []Table {
	tables := []Table{
		a.FilesTable(), a.LoudspeakersTable(), a.ZonesTable(), a.ChannelsTable(), a.AmplifiersTable(),
		a.ControlsTable(), a.LinesTable(), a.FindingsTable(), a.QuestionsTable(), a.RemediesTable(),
		a.AssumptionsTable(), a.RowsTable(),
	}
	for _, t := range a.SheetTables() {
		if t.Count > MaxSheetRows && !slices.ContainsFunc(tables, func(x Table) bool { return x.Name == t.Name }) {
			tables = append(tables, t) // else it would stand nowhere
		}
	}
	return tables
}

// MaxSheetRows is how many rows of a table a workbook takes; a longer table
// stays a data file.
const MaxSheetRows = 1_000_000

// SheetTables returns every table that the workbook and the page show.
func (a *Audit) SheetTables() []Table {
	return []Table{a.FindingsTable(), a.VisitsTable(), a.SitesTable(), a.FirstTable(), a.QuestionsTable(), a.UndersizedTable(), a.DisagreementsTable(),
		a.CompletenessTable(), a.OverviewTable(), a.RegisterTable(), a.NotExaminedTable(), a.ChannelsTable(), a.ControlsTable(), a.AmplifiersTable(), a.LinesTable(),
		a.ZonesTable(), a.LoudspeakersTable(), a.RemediesTable(), a.PassedTable(), a.AssumptionsTable(), a.RowsTable(), a.FilesTable(), a.RulesTable()}
}

// total adds up a number over all results.
func total(a *Audit, n func(r *audit.Result) int) int {
	sum := 0
	for _, r := range a.Results() {
		sum += n(r)
	}
	return sum
}

func (a *Audit) fileRows() int {
	n := 0
	for _, f := range a.Files {
		n += max(1, len(f.Results))
	}
	return n
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
			text("format", "Format", 9), counted("bytes", "Bytes"), text("sha256", "SHA-256", 64)},
		Count: a.fileRows(),
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
					j, e := r.Job, a.extent(r)
					row := []Value{words(f.Name), words(string(f.Kind)), words(JobName(j)), words(j.Site.Value), words(j.Revision.Value),
						words(r.SupersededBy), e[extentTables], count(j.RowsRead), e[extentLeftOut]}
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
		Count: a.count("loudspeakers", func(r *audit.Result) int { return len(r.Job.Loudspeakers) }),
		Rows: a.eachJob("loudspeakers", func(r *audit.Result, yield func(...Value) bool) bool {
			j := r.Job
			for _, l := range j.Loudspeakers {
				volts := j.LineVoltsOf(l.Channel)
				tapVolts := l.TapVolts.Or(volts)
				if !yield(words(j.File), words(l.At.Sheet()), words(l.Rows.String()), words(JobName(j)), words(zoneName(l.Zone)),
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
		Count: a.count("zones", func(r *audit.Result) int { return len(r.Zones) }),
		Rows: a.eachJob("zones", func(r *audit.Result, yield func(...Value) bool) bool {
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
		Count: a.count("channels", func(r *audit.Result) int { return len(r.Channels) }),
		Rows: a.eachJob("channels", func(r *audit.Result, yield func(...Value) bool) bool {
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
		Count: a.count("amplifiers", func(r *audit.Result) int { return len(r.Amplifiers) }),
		Rows: a.eachJob("amplifiers", func(r *audit.Result, yield func(...Value) bool) bool {
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
		Count: a.count("controls", func(r *audit.Result) int { return len(r.Controls) }),
		Rows: a.eachJob("controls", func(r *audit.Result, yield func(...Value) bool) bool {
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
		Count: a.count("lines", func(r *audit.Result) int { return len(r.Lines) }),
		Rows: a.eachJob("lines", func(r *audit.Result, yield func(...Value) bool) bool {
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
