// Package answer holds what an archive of schedules truly says: every
// loudspeaker, control, channel, cable and planted fault, with the loads and
// losses worked out from a few formulas of its own. The program under test is
// compared with it, so it imports nothing of that program.
package answer

import (
	"cmp"
	"math"
	"slices"
)

// Unknown marks a number that the schedule does not state. It is written as
// a blank.
var Unknown = math.NaN()

// Loudspeaker is one row of a schedule: one loudspeaker or several alike.
type Loudspeaker struct {
	File, Sheet, Rows, Job string
	Zone, Tag, Model       string
	Count                  int
	TapW, TapV, LineV      float64 // TapW is Unknown for a low-impedance row
	Control                string
	Amplifier, Channel     string
	Status                 string // installed, spare, future, removed
	Room                   string
	LowOhm                 float64 // ohm, where the row is no line loudspeaker; else 0
	Excluded               bool    // kept out of the sums: absurd or low impedance
	Cell                   string  // where the tap is written
}

// Watts returns what the row draws from its line, and whether it counts.
func (l Loudspeaker) Watts() (float64, bool) {
	if l.Status != "installed" || l.Excluded || l.LowOhm > 0 {
		return 0, false
	}
	return float64(l.Count) * Draw(l.TapW, l.TapV, l.LineV), true
}

// Control is a volume control on the wall. Upstream names the control that
// feeds it, if any.
type Control struct {
	File, Job, Control, Zone string
	RatedW, RatedV           float64 // RatedV is 0 where not stated
	Upstream                 string
	Sheet, Cell              string // where the rating is written
	LoadW, LineV             float64
}

// Channel is one output of an amplifier.
type Channel struct {
	File, Job, Amplifier, Channel string
	LineV, RatedW                 float64
	Sheet, Cell                   string
	LoadW                         float64
}

// Amplifier is a frame. RatedW is what the frame can give in all; Unknown
// where only its channels are rated.
type Amplifier struct {
	File, Job, Amplifier, Model string
	RatedW                      float64
	Sheet, Cell                 string
	LoadW                       float64
}

// Line is one cable from an amplifier channel or a control to loudspeakers.
// Chain holds the steps where the schedule gives the length of every piece;
// otherwise LengthM is all that is known.
type Line struct {
	File, Job, Line, Zone     string
	LengthM, AreaMM2          float64
	Material                  string
	LineV, LoadW              float64
	Count                     int // loudspeakers on it
	Chain                     []Step
	Sheet, Cell               string
	LoopOhm, FarDB, EvenDB    float64
	WorstDB                   float64
	Amplifier, Channel, Feeds string // Feeds names the room where the line serves only one
}

// Zone is an area with its load.
type Zone struct {
	File, Job, Zone string
	Loudspeakers    int
	LoadW, LineV    float64
}

// Fault is one planted defect. Measured and Limit are in Unit; Low and High
// bound Measured where the schedule leaves it open.
type Fault struct {
	File, Job, Rule, Grade, Place string
	Sheet, Cell                   string
	Measured, Limit               float64
	Unit                          string
	Low, High                     float64
}

// Row is a row of a sheet that is no device: a total, a note, a title.
type Row struct {
	File, Sheet string
	Row         int
	Kind, Text  string
}

// Name lists the ways in which one zone, control, amplifier or channel is
// written in its job, the plainest first.
type Name struct {
	File, Job, Kind, Name string
	Forms                 []string
}

// File is one file and job of the archive.
type File struct {
	File, Kind, Job, Site, Revision string
	Superseded                      bool
	Layout, Units, Language         string
	Noise                           int
	Faulty                          bool
}

// Archive is the whole answer.
type Archive struct {
	Files        []File
	Loudspeakers []Loudspeaker
	Zones        []Zone
	Channels     []Channel
	Amplifiers   []Amplifier
	Controls     []Control
	Lines        []Line
	Faults       []Fault
	Rows         []Row
	Names        []Name
}

// Add appends all of b to a.
func (a *Archive) Add(b Archive) {
	a.Files = append(a.Files, b.Files...)
	a.Loudspeakers = append(a.Loudspeakers, b.Loudspeakers...)
	a.Zones = append(a.Zones, b.Zones...)
	a.Channels = append(a.Channels, b.Channels...)
	a.Amplifiers = append(a.Amplifiers, b.Amplifiers...)
	a.Controls = append(a.Controls, b.Controls...)
	a.Lines = append(a.Lines, b.Lines...)
	a.Faults = append(a.Faults, b.Faults...)
	a.Rows = append(a.Rows, b.Rows...)
	a.Names = append(a.Names, b.Names...)
}

// place identifies a thing within its job.
type place struct{ file, job, a, b string }

// Work fills the zones, the loads and the losses from the loudspeakers.
// A line's load is that of its zone (and room, where it names one); a
// control carries its own loudspeakers and those of every control it feeds.
func (a *Archive) Work() {
	zone := map[place]float64{}
	room := map[place]float64{}
	roomCount := map[place]int{}
	count := map[place]int{}
	volts := map[place]float64{}
	control := map[place]float64{}
	channel := map[place]float64{}
	frame := map[place]float64{}
	var order []place
	for _, l := range a.Loudspeakers {
		w, ok := l.Watts()
		z := place{l.File, l.Job, l.Zone, ""}
		if l.Status == "installed" {
			if _, seen := count[z]; !seen && l.Zone != "" {
				order = append(order, z)
			}
			count[z] += l.Count
		}
		if !ok {
			continue
		}
		zone[z] += w
		volts[z] = l.LineV
		r := place{l.File, l.Job, l.Zone, l.Room}
		room[r] += w
		roomCount[r] += l.Count
		control[place{l.File, l.Job, l.Control, ""}] += w
		channel[place{l.File, l.Job, l.Amplifier, l.Channel}] += w
		frame[place{l.File, l.Job, l.Amplifier, ""}] += w
	}
	a.Zones = a.Zones[:0]
	for _, z := range order {
		a.Zones = append(a.Zones, Zone{z.file, z.job, z.a, count[z], zone[z], volts[z]})
	}
	for i := range a.Controls {
		c := &a.Controls[i]
		c.LoadW = control[place{c.File, c.Job, c.Control, ""}]
	}
	a.feedUpstream()
	for i := range a.Channels {
		c := &a.Channels[i]
		c.LoadW = channel[place{c.File, c.Job, c.Amplifier, c.Channel}]
	}
	for i := range a.Amplifiers {
		f := &a.Amplifiers[i]
		f.LoadW = frame[place{f.File, f.Job, f.Amplifier, ""}]
	}
	for i := range a.Lines {
		l := &a.Lines[i]
		at := place{l.File, l.Job, l.Zone, ""}
		l.LoadW, l.Count = zone[at], count[at]
		if l.Feeds != "" {
			at.b = l.Feeds
			l.LoadW, l.Count = room[at], roomCount[at]
		}
		l.work()
	}
}

// feedUpstream adds the load of each control to every control above it.
func (a *Archive) feedUpstream() {
	at := map[place]int{}
	own := make([]float64, len(a.Controls))
	for i, c := range a.Controls {
		at[place{c.File, c.Job, c.Control, ""}] = i
		own[i] = c.LoadW
	}
	for i, c := range a.Controls {
		for up, hops := c.Upstream, 0; up != "" && hops < len(own); hops++ {
			j, ok := at[place{c.File, c.Job, up, ""}]
			if !ok {
				break
			}
			a.Controls[j].LoadW += own[i]
			up = a.Controls[j].Upstream
		}
	}
}

// work fills the resistance and the losses of one line.
func (l *Line) work() {
	l.FarDB, l.EvenDB, l.WorstDB = Unknown, Unknown, Unknown
	if len(l.Chain) > 0 {
		l.LoopOhm = 0
		for _, s := range l.Chain {
			l.LoopOhm += s.Ohm
		}
		l.WorstDB = LossChain(l.LineV, l.Chain)
		return
	}
	l.LoopOhm = LoopOhm(l.LengthM, l.AreaMM2, l.Material)
	if l.LoadW == 0 || l.Count == 0 || math.IsNaN(l.LoopOhm) {
		return
	}
	l.FarDB = LossFar(l.LoopOhm, l.LineV, l.LoadW)
	l.EvenDB = LossEven(l.LoopOhm, l.LineV, l.LoadW, l.Count)
	l.WorstDB = max(l.FarDB, l.EvenDB)
}

// Sort brings every list into the order of its file, then of its job, and
// leaves the order within a job alone.
func (a *Archive) Sort() {
	slices.SortStableFunc(a.Files, func(x, y File) int {
		return cmp.Or(cmp.Compare(x.File, y.File), cmp.Compare(x.Job, y.Job))
	})
	slices.SortStableFunc(a.Loudspeakers, func(x, y Loudspeaker) int { return cmp.Compare(x.File, y.File) })
	slices.SortStableFunc(a.Zones, func(x, y Zone) int { return cmp.Compare(x.File, y.File) })
	slices.SortStableFunc(a.Channels, func(x, y Channel) int { return cmp.Compare(x.File, y.File) })
	slices.SortStableFunc(a.Amplifiers, func(x, y Amplifier) int { return cmp.Compare(x.File, y.File) })
	slices.SortStableFunc(a.Controls, func(x, y Control) int { return cmp.Compare(x.File, y.File) })
	slices.SortStableFunc(a.Lines, func(x, y Line) int { return cmp.Compare(x.File, y.File) })
	slices.SortStableFunc(a.Faults, func(x, y Fault) int { return cmp.Compare(x.File, y.File) })
	slices.SortStableFunc(a.Rows, func(x, y Row) int {
		return cmp.Or(cmp.Compare(x.File, y.File), cmp.Compare(x.Sheet, y.Sheet), cmp.Compare(x.Row, y.Row))
	})
	slices.SortStableFunc(a.Names, func(x, y Name) int { return cmp.Compare(x.File, y.File) })
}

// EachFile replaces the file name of every row by what rename makes of it.
func (a *Archive) EachFile(rename func(string) string) {
	for i := range a.Files {
		a.Files[i].File = rename(a.Files[i].File)
	}
	for i := range a.Loudspeakers {
		a.Loudspeakers[i].File = rename(a.Loudspeakers[i].File)
	}
	for i := range a.Zones {
		a.Zones[i].File = rename(a.Zones[i].File)
	}
	for i := range a.Channels {
		a.Channels[i].File = rename(a.Channels[i].File)
	}
	for i := range a.Amplifiers {
		a.Amplifiers[i].File = rename(a.Amplifiers[i].File)
	}
	for i := range a.Controls {
		a.Controls[i].File = rename(a.Controls[i].File)
	}
	for i := range a.Lines {
		a.Lines[i].File = rename(a.Lines[i].File)
	}
	for i := range a.Faults {
		a.Faults[i].File = rename(a.Faults[i].File)
	}
	for i := range a.Rows {
		a.Rows[i].File = rename(a.Rows[i].File)
	}
	for i := range a.Names {
		a.Names[i].File = rename(a.Names[i].File)
	}
}

// NoSheets blanks the sheet of every row: a CSV has none.
func (a *Archive) NoSheets() {
	for i := range a.Loudspeakers {
		a.Loudspeakers[i].Sheet = ""
	}
	for i := range a.Channels {
		a.Channels[i].Sheet = ""
	}
	for i := range a.Amplifiers {
		a.Amplifiers[i].Sheet = ""
	}
	for i := range a.Controls {
		a.Controls[i].Sheet = ""
	}
	for i := range a.Lines {
		a.Lines[i].Sheet = ""
	}
	for i := range a.Faults {
		a.Faults[i].Sheet = ""
	}
	for i := range a.Rows {
		a.Rows[i].Sheet = ""
	}
}
