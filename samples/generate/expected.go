package generate

import (
	"math"

	"lineaudit/samples/answer"
)

// recordFaults writes down each planted fault with its figures, worked out
// from the loads of the truth.
func (d *drawing) recordFaults(j *job) {
	for _, p := range j.planted {
		f := fault{answer.Fault{Job: j.number, Rule: p.rule, Measured: answer.Unknown, Limit: answer.Unknown, Low: answer.Unknown, High: answer.Unknown}}
		if p.zone != nil {
			f.Place = p.zone.name
		}
		switch p.rule {
		case "control-overload":
			f.place(p.control.row.sheet, p.control.row.cell(), p.control.tag)
			f.over(j.controlLoad(p.control), p.control.ratedW)
		case "measured-load-differs":
			f.place(p.channel.measuredAt.sheet, p.channel.measuredAt.cell(), p.channel.amp.tag+"."+p.channel.name)
			ohm := j.lineV * j.lineV / j.channelLoad(p.channel)
			f.Measured, f.Limit, f.Unit = math.Round(ohm*misreadBy*10)/10, ohm, "ohm"
		case "count-mismatch":
			f.place(j.countAt.sheet, j.countAt.cell(), j.number)
			f.Measured, f.Limit = float64(j.loudspeakers()+2), float64(j.loudspeakers())
		case "loose-end":
			f.place(p.control.tagAt.sheet, p.control.tagAt.cell(), p.control.tag)
		case "control-voltage-mismatch":
			f.place(p.control.row.sheet, p.control.row.cell(), p.control.tag)
			f.Grade, f.Measured, f.Limit, f.Unit = "fault", j.lineV, p.control.ratedV, "V"
			if j.lineV < p.control.ratedV {
				f.Measured, f.Limit, f.Unit = j.controlLoad(p.control), p.control.ratedW*j.lineV/p.control.ratedV, "W"
			}
		case "controls-in-series":
			f.place(p.control.row.sheet, p.control.row.cell(), p.control.tag)
		case "channel-overload":
			f.place(p.channel.row.sheet, p.channel.row.cell(), p.channel.amp.tag+"."+p.channel.name)
			f.over(j.channelLoad(p.channel), p.channel.ratedW)
		case "headroom-short":
			f.place(p.channel.row.sheet, p.channel.row.cell(), p.channel.amp.tag+"."+p.channel.name)
			f.Grade, f.Measured, f.Limit, f.Unit = "caution", j.channelLoad(p.channel), 0.8*p.channel.ratedW, "W"
		case "cannot-check":
			f.Grade = "unknown"
			if p.group != nil {
				f.place(p.group.row.sheet, p.group.row.cell(), p.group.tags[0])
				break
			}
			f.Place = p.channel.amp.tag + "." + p.channel.name
		case "frame-overload":
			f.place(p.amp.row.sheet, p.amp.row.cell(), p.amp.tag)
			f.over(j.ampLoad(p.amp), p.amp.frameW)
		case "line-loss", "clad-aluminium":
			d.lineFault(&f, p)
		case "total-mismatch":
			f.place(p.at.sheet, p.at.cell(), p.zone.name)
			sum := 0.0
			for _, g := range j.groupsIn(p.zone) {
				sum += g.stated()
			}
			f.Measured, f.Limit, f.Unit = p.stated, sum, "W"
		case "voltage-mismatch":
			f.place(p.group.row.sheet, p.group.row.cell(), p.group.room.zone.name)
			f.Grade, f.Measured, f.Limit, f.Unit = "fault", p.group.tapV, j.lineV, "V"
			if p.group.tapV > j.lineV {
				f.Grade = "caution"
			}
		default:
			f.place(p.group.row.sheet, p.group.row.cell(), p.group.tags[0])
		}
		f.File = d.file
		d.truth.Faults = append(d.truth.Faults, f.Fault)
	}
}

// fault is one planted fault while its figures are filled in.
type fault struct{ answer.Fault }

func (f *fault) place(sheet, cell, place string) { f.Sheet, f.Cell, f.Place = sheet, cell, place }

// over fills in a load above a rating: danger beyond a quarter too much.
func (f *fault) over(load, rated float64) {
	f.Grade, f.Measured, f.Limit, f.Unit = "fault", load, rated, "W"
	if load > 1.25*rated {
		f.Grade = "danger"
	}
}

func (d *drawing) lineFault(f *fault, p plant) {
	for _, l := range d.truth.Lines {
		if l.Job != f.Job || l.Zone != p.zone.name {
			continue
		}
		f.Sheet, f.Cell = l.Sheet, l.Cell
		if p.rule != "line-loss" {
			return
		}
		f.Low, f.High, f.Measured, f.Unit = l.EvenDB, l.FarDB, l.FarDB, "dB"
		f.Grade, f.Limit = "caution", 1
		if math.Min(l.EvenDB, l.FarDB) > 3 {
			f.Grade, f.Limit = "fault", 3
		}
	}
}
