// Package reporttest makes small audits for the tests of the reports: a clean
// one, one with findings, an empty one, one full of hostile text.
package reporttest

import (
	"fmt"
	"strings"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
	"lineaudit/report"
)

// A job under construction.
type jobMaker struct {
	job *schedule.Job
	row int
}

func (m *jobMaker) at(col int) schedule.Ref {
	return schedule.At(m.job.File, "Schedule", m.row, col)
}

func (m *jobMaker) source(col int, written string) schedule.Source {
	return schedule.Source{At: m.at(col), Written: written, How: schedule.Stated}
}

// Job makes a job with one amplifier channel rated channelW, one control rated
// controlW and n loudspeakers of tapW behind it, at 100 V.
func Job(file, site string, channelW, controlW, tapW float64, n int) *schedule.Job {
	m := &jobMaker{job: &schedule.Job{File: file}, row: 1}
	j := m.job
	j.Name = schedule.Said(site+" sound system", m.at(1))
	j.Site = schedule.Said(site, m.at(2))
	j.LineVolts = schedule.Exactly(schedule.Volts(100), m.source(3, "100 V"))
	amp := &schedule.Amplifier{At: m.at(1), Key: "a1", Name: "A1"}
	m.row = 3
	ch := &schedule.Channel{At: m.at(1), Key: "a1/1", Name: "1", Amplifier: amp, Rated: schedule.Exactly(schedule.Watts(channelW), m.source(2, fmt.Sprint(channelW, " W")))}
	amp.Channels = []*schedule.Channel{ch}
	zone := &schedule.Zone{At: m.at(4), Key: "palm", Name: "Palm house", Channel: ch, Channels: []*schedule.Channel{ch}}
	m.row = 4
	control := &schedule.Control{At: m.at(1), Key: "vc1", Name: "VC-1", Zone: zone, Channel: ch, Rated: schedule.Exactly(schedule.Watts(controlW), m.source(2, fmt.Sprint(controlW, " W")))}
	zone.Control = control
	for i := range n {
		m.row = 6 + i
		j.Loudspeakers = append(j.Loudspeakers, &schedule.Loudspeaker{
			At: m.at(1), Rows: schedule.Span{First: m.row, Last: m.row}, Tag: schedule.Said(fmt.Sprintf("LS-%02d", i+1), m.at(1)),
			Count: schedule.Exactly(schedule.Pieces(1), m.source(2, "1")), Tap: schedule.Exactly(schedule.Watts(tapW), m.source(3, fmt.Sprint(tapW, " W"))),
			Zone: zone, Control: control, Channel: ch,
		})
		j.RowsRead++
	}
	j.Amplifiers, j.Channels, j.Zones, j.Controls = []*schedule.Amplifier{amp}, []*schedule.Channel{ch}, []*schedule.Zone{zone}, []*schedule.Control{control}
	return j
}

// Of audits jobs and gathers them as a run would.
func Of(jobs ...*schedule.Job) *report.Audit {
	a := &report.Audit{For: report.Service, Version: "test", Shown: audit.Caution}
	s := audit.DefaultSettings()
	for _, j := range jobs {
		a.Files = append(a.Files, report.File{Name: j.File, Kind: report.Schedule, Format: "xlsx", Size: 1000, Results: []*audit.Result{audit.Check(j, s)}})
	}
	a.Archive = audit.Rank(a.Results())
	return a
}

// Overloaded is one overloaded control, one clean job and one file that could not be read.
func Overloaded() *report.Audit {
	a := Of(Job("gardens/palm.xlsx", "Glass gardens", 240, 50, 10, 8), Job("rink.xlsx", "North rink", 240, 100, 5, 8))
	a.Files = append(a.Files, report.File{Name: "old/broken.xlsx", Kind: report.Unreadable, Reason: "the workbook is cut short; ask for it again"})
	return a
}

// Hostile is an audit whose texts try to break out of every report.
func Hostile() *report.Audit {
	j := Job("../../etc/<b>=cmd|' /C calc'!A0.xlsx", "=HYPERLINK(\"http://example.invalid\",\"x\")\x1b[31m\u202e</script><script>alert(1)</script>", 100, 50, 10, 8)
	j.Controls[0].Name = "@SUM(1+1)\x00\x07"
	j.Zones[0].Name = "-1+1\r\n</td><img src=x onerror=alert(1)>"
	j.Loudspeakers[0].Tag.Value = "+1;\"quote\",comma"
	j.Loudspeakers[1].Tag.Value = "\uff1d1+1"
	j.Loudspeakers[2].Tag.Value = strings.Repeat("x", 40_000)
	j.Loudspeakers[3].Room.Value = "e\u0301\u0301\u0301 \u05d0\u05d1\u200f \u5317\u5317 \xff\xfe"
	for i, l := range j.Loudspeakers {
		l.Zone.Room.Value = j.Loudspeakers[3].Room.Value
		l.Model.Value = fmt.Sprintf("=%d", i)
	}
	j.Controls[0].Room.Value = strings.Repeat("very long room ", 3000)
	return Of(j)
}
