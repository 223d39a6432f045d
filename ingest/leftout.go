package ingest

import (
	"cmp"
	"slices"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/layout"
	"lineaudit/ingest/vocabulary"
)

// leaveOut lists every row that is no part of the job, with its reason and,
// where it can be told, the load that it would add.
func (b *builder) leaveOut() {
	b.lookOnly = true
	for _, t := range b.tables {
		if t.again {
			continue
		}
		for _, r := range t.rows {
			b.leaveRow(r)
		}
	}
	b.lookOnly = false
	slices.SortStableFunc(b.job.LeftOut, func(x, y schedule.LeftOut) int {
		return cmp.Or(x.At.Compare(y.At), cmp.Compare(x.Kind, y.Kind), cmp.Compare(x.Reason, y.Reason))
	})
}

func (b *builder) leaveRow(r *row) {
	o := schedule.LeftOut{At: rowRef(r), Kind: r.out, Reason: r.reason, Text: short(r.Text)}
	switch {
	case r.out == "" && !r.used:
		o.Kind, o.Reason = schedule.NotUnderstood, "nothing in it was understood"
		r.out = o.Kind
	case r.out == "" && (r.kind == loudspeakerRow || r.kind == zoneRow) && r.status != schedule.Installed && r.status != schedule.Standby:
		o.Kind, o.Reason = schedule.NotWantedRow, r.status.String()
		if r.status == schedule.Spare || r.status == schedule.Future {
			o.Kind = schedule.SpareRow
		}
		r.out = o.Kind
		for _, l := range b.job.Loudspeakers {
			if b.origin[l] == r {
				o.Would = append(o.Would, l)
			}
		}
	case r.out == "":
		b.job.RowsRead++
		return
	case (r.out == schedule.StruckRow || r.out == schedule.HiddenRow || r.out == schedule.OutdatedRow && b.standAlone()) && (r.kind == loudspeakerRow || r.kind == zoneRow):
		if r.kind == loudspeakerRow || r.own(vocabulary.Tap).had() {
			saved := b.account
			b.account = newAccount() // what is doubtful in a row that does not count is of no interest
			if r.Class == layout.Struck {
				b.unstrike(r)
			}
			o.Would = b.loudspeakers(r, b.zoneOf(r))
			b.account = saved
			for _, l := range o.Would {
				if l.Channel == nil && l.Zone != nil {
					l.Channel = l.Zone.Channel
				}
				if l.Control == nil && l.Zone != nil {
					l.Control = l.Zone.Control
				}
				l.Run = nil
			}
		}
	}
	for _, l := range o.Would {
		if l.Tap.Had() && l.Count.Had() {
			o.Load = addLoad(o.Load, l)
		}
	}
	b.job.LeftOut = append(b.job.LeftOut, o)
}

// unstrike gives the cells of a struck-through row their text back.
func (b *builder) unstrike(r *row) {
	for i := range r.Values {
		if v := &r.Values[i]; v.Text == "" && v.Cell != nil && v.Cell.Struck == grid.WholeStruck {
			v.Text = tidy(v.Cell.Text)
			if v.How == schedule.NotHad && v.Text != "" {
				v.How = schedule.Stated
			}
		}
	}
}

func addLoad(q schedule.Quantity[schedule.Watts], l *schedule.Loudspeaker) schedule.Quantity[schedule.Watts] {
	src := l.Tap.Source
	src.How, src.Because = schedule.Computed, "count times tap"
	if q.Had() {
		src = q.Source
	}
	return schedule.Between(q.Low+l.Tap.Low*schedule.Watts(l.Count.Low), q.High+l.Tap.High*schedule.Watts(l.Count.High), src)
}

// rowRef is the place of a whole row (of a column, in a transposed table: its first cell).
func rowRef(r *row) schedule.Ref {
	at := r.At
	if !r.Rows.Columns {
		at.Col = 0
	}
	return at
}

// describeTables says how each table was understood.
func (b *builder) describeTables() {
	for _, t := range b.tables {
		if t.again {
			continue
		}
		d := schedule.Table{Sheet: t.Sheet, Kind: string(t.kind), Range: rangeName(t.Range), Transposed: t.Transposed}
		if t.Matrix {
			d.Kind = "matrix"
		}
		if len(t.HeaderRows) > 0 {
			d.HeaderRow = t.HeaderRows[len(t.HeaderRows)-1]
		}
		for _, r := range t.rows {
			if r.out == "" {
				d.RowsRead++
			} else {
				d.RowsLeft++
			}
		}
		for _, c := range t.columns {
			b.closeCall(t, c)
			field := c.Field.String()
			col := c.Col
			if t.Form && c.At.Row > 0 {
				col, d.Transposed, d.HeaderRow = int(c.At.Row), true, int(c.At.Col)
			}
			d.Columns = append(d.Columns, schedule.Column{Col: col, Header: c.Header, Field: field, Confidence: c.Confidence,
				Evidence: c.Evidence, Unit: c.Unit, Samples: samplesOf(t, c), RunnerUp: c.RunnerUp.String()})
		}
		b.job.Tables = append(b.job.Tables, d)
	}
}

// leastOfHeader is the least confidence in a column whose header was
// understood; below it the cells alone decided.
const leastOfHeader = 0.55

// closeCall says of a column that could as well have been something else what
// it was taken for.
func (b *builder) closeCall(t *table, c *column) {
	if c.Field == vocabulary.Unknown || c.Field == vocabulary.Ignored || t.SheetHidden {
		return
	}
	s := seen{t: t, col: c, field: c.Field, source: schedule.Source{At: c.At, Written: c.Header}}
	if c.Replaces != "" {
		b.take(s, "column", c.Field.String(), schedule.LikelierReading, "the last state of what “"+short(c.Replaces)+"” said before")
	}
	if c.RunnerUp == vocabulary.Unknown || c.RunnerUp == c.Field {
		switch {
		case c.Confidence >= leastOfHeader:
		case c.Header == "" && c.Field != vocabulary.Notes && c.Field != vocabulary.Describe:
			b.take(s, "column", c.Field.String(), schedule.LikelierReading, "by its cells: it has no header")
		case numeric[c.Field]:
			b.take(s, "column", c.Field.String(), schedule.LikelierReading, "by its cells: the header is not understood; the names sheet of a house book settles it")
		}
		return
	}
	b.take(s, "column", c.Field.String(), schedule.LikelierReading, "it could also be "+c.RunnerUp.String()+"; the names sheet of a house book settles it")
}

func rangeName(r grid.Range) string {
	if r.Row1 == 0 {
		return ""
	}
	return grid.A1(r.Row1, r.Col1) + ":" + grid.A1(r.Row2, r.Col2)
}

// samplesOf are the first few different texts of a column.
func samplesOf(t *table, c *column) []string {
	const most, look = 3, 200
	var out []string
	for i, r := range t.rows {
		if len(out) == most || i == look {
			break
		}
		if v := &r.Values[c.i]; r.Class == layout.Device && v.Text != "" && !slices.Contains(out, v.Text) {
			out = append(out, short(v.Text))
		}
	}
	return out
}

// prune takes away what only tables shared by several jobs name and nothing of
// this job uses.
func (b *builder) prune() {
	shared := false
	for _, t := range b.tables {
		shared = shared || t.shared
	}
	if !shared {
		return
	}
	usedChannel := make(map[*schedule.Channel]bool)
	usedAmp := make(map[*schedule.Amplifier]bool)
	usedControl := make(map[*schedule.Control]bool)
	usedZone := make(map[*schedule.Zone]bool)
	for _, l := range b.job.Loudspeakers {
		for _, c := range append(feeding(l), l.Channel) {
			if c != nil {
				usedChannel[c] = true
				usedAmp[c.Amplifier] = true
			}
		}
		usedControl[l.Control], usedZone[l.Zone] = true, true
	}
	for _, c := range b.job.Controls {
		if usedControl[c] || usedZone[c.Zone] && c.Zone != nil {
			for k, hops := c, 0; k != nil && hops < len(b.job.Controls); k, hops = k.Parent, hops+1 {
				usedControl[k] = true
			}
		}
	}
	j := b.job
	j.Channels = slices.DeleteFunc(j.Channels, func(c *schedule.Channel) bool { return !usedChannel[c] && !usedAmp[c.Amplifier] })
	j.Amplifiers = slices.DeleteFunc(j.Amplifiers, func(a *schedule.Amplifier) bool { return !usedAmp[a] })
	j.Controls = slices.DeleteFunc(j.Controls, func(c *schedule.Control) bool { return !usedControl[c] })
	j.Zones = slices.DeleteFunc(j.Zones, func(z *schedule.Zone) bool { return !usedZone[z] })
	j.Cables = slices.DeleteFunc(j.Cables, func(c *schedule.Cable) bool {
		return c.Zone != nil && !usedZone[c.Zone] || c.Channel != nil && !usedChannel[c.Channel] || c.Control != nil && !usedControl[c.Control]
	})
}
