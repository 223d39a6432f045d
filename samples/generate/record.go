package generate

import (
	"fmt"
	"math/rand/v2"
	"strings"

	"lineaudit/samples/answer"
)

// fileName invents a file name without its ending. It carries the job number.
func fileName(rng *rand.Rand, j *job, lay *layout) string {
	place := strings.ReplaceAll(j.site, " ", "_")
	switch rng.IntN(3) {
	case 0:
		return fmt.Sprintf("%s_%s", j.number, place)
	case 1:
		return fmt.Sprintf("%s %s %s", j.number, lay.name, j.site)
	}
	return fmt.Sprintf("%s - %s", j.number, j.site)
}

// rename puts the final file name into the truth.
func (d *drawing) rename(name string) {
	d.file = name
	d.truth.EachFile(func(string) string { return name })
}

func (d *drawing) leftOut(sheet string, row int, kind, text string) {
	d.truth.Rows = append(d.truth.Rows, answer.Row{Sheet: sheet, Row: row, Kind: kind, Text: strings.Join(strings.Fields(text), " ")})
}

// record writes down what the drawn job says. What the layout had no place
// for is blank.
func (d *drawing) record(j *job, lay *layout, cfg Config) {
	t := &d.truth
	t.Files = append(t.Files, answer.File{Kind: "schedule", Job: j.number, Site: j.site, Revision: j.rev,
		Layout: string(lay.name), Units: d.unitWord(), Language: d.lang, Noise: cfg.Noise, Faulty: len(j.planted) > 0})
	for _, g := range j.groups {
		t.Loudspeakers = append(t.Loudspeakers, d.loudspeaker(j, g))
	}
	for _, a := range j.amps {
		model, frame := "", answer.Unknown
		if a.modelDrawn {
			model = a.model
		}
		if a.row.drawn() {
			frame = a.frameW
		}
		t.Amplifiers = append(t.Amplifiers, answer.Amplifier{Job: j.number, Amplifier: a.tag, Model: model, RatedW: frame,
			Sheet: a.row.sheet, Cell: a.row.cell()})
		d.addName(j, "amplifier", a.tag, d.names[a])
		for _, c := range a.channels {
			rated := answer.Unknown
			if c.row.drawn() {
				rated = c.ratedW
			}
			t.Channels = append(t.Channels, answer.Channel{Job: j.number, Amplifier: a.tag, Channel: c.name, LineV: j.lineV, RatedW: rated,
				Sheet: c.row.sheet, Cell: c.row.cell()})
			d.addName(j, "channel", a.tag+"."+c.name, d.names[c])
		}
	}
	for _, c := range j.controls {
		rated, up := answer.Unknown, ""
		if c.row.drawn() {
			rated = c.ratedW
		}
		if c.upstream != nil {
			up = c.upstream.tag
		}
		t.Controls = append(t.Controls, answer.Control{Job: j.number, Control: c.tag, Zone: c.zone.name, RatedW: rated, RatedV: c.ratedV,
			LineV: j.lineV, Upstream: up, Sheet: c.row.sheet, Cell: c.row.cell()})
		d.addName(j, "control", c.tag, d.names[c])
	}
	for _, z := range j.zones {
		d.addName(j, "zone", z.name, d.names[z])
		if z.line != nil && z.line.row.drawn() {
			t.Lines = append(t.Lines, d.line(j, z.line))
		}
	}
}

func (d *drawing) addName(j *job, kind, name string, forms []string) {
	d.truth.Names = append(d.truth.Names, answer.Name{Job: j.number, Kind: kind, Name: name, Forms: forms})
}

func (d *drawing) loudspeaker(j *job, g *group) answer.Loudspeaker {
	out := answer.Loudspeaker{Job: j.number, Sheet: g.row.sheet, Rows: g.row.rows, Cell: g.row.cell(),
		Zone: g.room.zone.name, Room: g.room.name, Tag: d.tagText(g), Model: g.kind.model, Count: g.count,
		TapW: g.tapW, TapV: g.tapV, LineV: j.lineV, Status: g.status, LowOhm: g.lowOhm, Excluded: g.absurd || g.untold}
	if g.tapV == 0 {
		out.TapV = j.lineV
	}
	if g.lowOhm > 0 || g.untold {
		out.TapW, out.TapV = answer.Unknown, 0
	}
	if c := g.control; c != nil && d.drawn["control"] {
		out.Control = c.tag
	}
	if !d.drawn["tag"] {
		out.Tag = ""
	}
	if !d.drawn["model"] {
		out.Model = ""
	}
	if !d.drawn["room"] {
		out.Room = ""
	}
	c := g.room.zone.channel
	out.Amplifier, out.Channel = c.amp.tag, c.name
	return out
}

func (d *drawing) line(j *job, l *line) answer.Line {
	out := answer.Line{Job: j.number, Zone: l.zone.name, LengthM: l.lengthM, AreaMM2: l.areaMM2, Material: l.material, LineV: j.lineV,
		Amplifier: l.zone.channel.amp.tag, Channel: l.zone.channel.name, Sheet: l.row.sheet, Cell: l.row.cell()}
	if l.tagDrawn {
		out.Line = l.tag
	}
	for _, g := range j.groupsIn(l.zone) {
		if g.step != nil {
			out.Chain = append(out.Chain, answer.Step{Ohm: answer.LoopOhm(g.step.lengthM, l.areaMM2, l.material), W: g.watts(j.lineV)})
		}
	}
	return out
}

func (h *hand) unitWord() string {
	switch {
	case h.mixed:
		return string(Mixed)
	case h.feet:
		return string(Imperial)
	}
	return string(Metric)
}
