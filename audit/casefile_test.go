package audit

import (
	"encoding/csv"
	"os"
	"strconv"
	"strings"
	"testing"

	"lineaudit/audit/schedule"
)

// A case file is one job as a small CSV with the columns kind, name, says and
// want. says is "key=value; key=value"; every value gets a cell of its own.
// want is what the audit must say of the row: rule names, each with an
// optional ":grade" and a "?" for a possible finding; "ask:field" for a
// question; blank for nothing at all. Lines starting with # are comments.
type caseFile struct {
	name string
	job  *schedule.Job
	want map[int][]string // by row
	rows map[int]string   // row to its name
}

// hows are the suffixes by which a value says how it was had: "5!model".
var hows = map[string]schedule.How{"default": schedule.Default, "estimated": schedule.Estimated, "model": schedule.FromModelName,
	"date": schedule.RecoveredDate, "assumed": schedule.UnitAssumed, "computed": schedule.Computed, "title": schedule.FromTitle, "likelier": schedule.LikelierReading}

var statuses = map[string]schedule.Status{"": schedule.Installed, "spare": schedule.Spare, "future": schedule.Future,
	"removed": schedule.Removed, "by others": schedule.ByOthers, "standby": schedule.Standby}

var useNamed = map[string]schedule.Use{"": schedule.AnyUse, "music": schedule.Music, "paging": schedule.Paging, "emergency": schedule.Emergency}

var reaches = map[string]schedule.Reach{"": schedule.ReachUnknown, "whole": schedule.WholeLine, "rack": schedule.FromRack,
	"previous": schedule.FromPrevious, "from-to": schedule.FromTo}

// A reader reads one row of a case file.
type reader struct {
	t     *testing.T
	job   *schedule.Job
	at    schedule.Ref
	says  map[string]string
	order []string
	used  map[string]bool
}

func loadCase(t *testing.T, path string) *caseFile {
	t.Helper()
	f, err := os.Open(path)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	r.FieldsPerRecord = -1
	return readCase(t, path, r)
}

func parseCase(t *testing.T, name, text string) *caseFile {
	t.Helper()
	r := csv.NewReader(strings.NewReader(text))
	r.Comment = '#'
	r.FieldsPerRecord = -1
	return readCase(t, name, r)
}

func readCase(t *testing.T, name string, r *csv.Reader) *caseFile {
	t.Helper()
	var records [][]string
	var lines []int
	for {
		rec, err := r.Read()
		if err != nil {
			break
		}
		line, _ := r.FieldPos(0)
		for len(rec) < 4 {
			rec = append(rec, "")
		}
		records, lines = append(records, rec), append(lines, line)
	}
	if len(records) < 2 || records[0][0] != "kind" {
		t.Fatalf("%s: no header kind,name,says,want", name)
	}
	c := &caseFile{name: name, job: &schedule.Job{File: "case.csv"}, want: map[int][]string{}, rows: map[int]string{}}
	// Two passes, so that a row may name one further down.
	for pass := range 2 {
		for i, rec := range records[1:] {
			rd := &reader{t: t, job: c.job, at: schedule.At("case.csv", "", lines[i+1], 0), says: map[string]string{}, used: map[string]bool{}}
			for part := range strings.SplitSeq(rec[2], ";") {
				if k, v, ok := strings.Cut(part, "="); ok {
					k = strings.TrimSpace(k)
					rd.says[k] = strings.TrimSpace(v)
					rd.order = append(rd.order, k)
				} else if strings.TrimSpace(part) != "" {
					t.Fatalf("%s: line %d: %q is not key=value", name, lines[i+1], part)
				}
			}
			if s, ok := rd.says["sheet"]; ok {
				rd.at = schedule.At(rd.at.File(), s, int(rd.at.Row), int(rd.at.Col))
				rd.used["sheet"] = true
			}
			if pass == 0 {
				rd.declare(strings.TrimSpace(rec[0]), strings.TrimSpace(rec[1]))
				c.rows[lines[i+1]] = rec[1]
				if w := strings.Fields(rec[3]); len(w) > 0 {
					c.want[lines[i+1]] = w
				}
				continue
			}
			rd.fill(strings.TrimSpace(rec[0]), strings.TrimSpace(rec[1]))
			for k := range rd.says {
				if !rd.used[k] {
					t.Fatalf("%s: line %d: unknown key %q", name, lines[i+1], k)
				}
			}
		}
	}
	return c
}

// declare makes the part of a row, so that others can point at it.
func (r *reader) declare(kind, name string) {
	j := r.job
	switch kind {
	case "amplifier":
		j.Amplifiers = append(j.Amplifiers, &schedule.Amplifier{At: r.at, Key: name, Name: name})
	case "channel":
		amp, ch, ok := strings.Cut(name, "/")
		c := &schedule.Channel{At: r.at, Key: name, Name: name}
		if ok {
			c.Key, c.Name = ch, ch
			for _, a := range j.Amplifiers {
				if a.Name == amp {
					c.Amplifier = a
					a.Channels = append(a.Channels, c)
				}
			}
			if c.Amplifier == nil {
				a := &schedule.Amplifier{At: r.at, Key: amp, Name: amp, Channels: []*schedule.Channel{c}}
				c.Amplifier = a
				j.Amplifiers = append(j.Amplifiers, a)
			}
		}
		j.Channels = append(j.Channels, c)
	case "zone":
		j.Zones = append(j.Zones, &schedule.Zone{At: r.at, Key: name, Name: name})
	case "control":
		j.Controls = append(j.Controls, &schedule.Control{At: r.at, Key: name, Name: name})
	case "loudspeaker":
		j.Loudspeakers = append(j.Loudspeakers, &schedule.Loudspeaker{At: r.at, Rows: schedule.Span{First: int(r.at.Row), Last: int(r.at.Row)},
			Tag: schedule.Said(name, r.cell("name"))})
	case "cable":
		j.Cables = append(j.Cables, &schedule.Cable{At: r.at, Key: name, Name: name})
	case "job", "total", "measured", "left", "assumed":
	default:
		r.t.Fatalf("row %d: unknown kind %q", r.at.Row, kind)
	}
}

// cell is the cell of a key: its place in the row.
func (r *reader) cell(key string) schedule.Ref {
	at := r.at
	at.Col = 2
	for i, k := range r.order {
		if k == key {
			at.Col = int32(3 + i)
		}
	}
	return at
}

func (r *reader) get(key string) (string, bool) {
	r.used[key] = true
	v, ok := r.says[key]
	return v, ok && v != ""
}

func (r *reader) source(key string) (string, schedule.Source, bool) {
	v, ok := r.get(key)
	if !ok {
		return "", schedule.Source{}, false
	}
	v, how, _ := strings.Cut(v, "!")
	s := schedule.Source{At: r.cell(key), Written: v, How: schedule.Stated}
	if how != "" {
		h, known := hows[how]
		if !known {
			r.t.Fatalf("row %d: unknown suffix !%s", r.at.Row, how)
		}
		s.How = h
		if h.Assumed() {
			r.job.Assumptions = append(r.job.Assumptions, schedule.Assumption{At: s.At, Field: key, Written: v, TakenAs: v, How: h})
		}
	}
	return v, s, true
}

func number(r *reader, text string) float64 {
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		r.t.Fatalf("row %d: %v", r.at.Row, err)
	}
	return v
}

// qty reads "5" or "2.5..10".
func qty[T ~float64](r *reader, key string) schedule.Quantity[T] {
	v, s, ok := r.source(key)
	if !ok {
		return schedule.Quantity[T]{}
	}
	low, high, ranged := strings.Cut(v, "..")
	if ranged {
		return schedule.Between(T(number(r, low)), T(number(r, high)), s)
	}
	return schedule.Exactly(T(number(r, v)), s)
}

func (r *reader) text(key string) schedule.Text {
	v, s, ok := r.source(key)
	if !ok {
		return schedule.Text{}
	}
	return schedule.Text{Value: v, Source: s}
}

func (r *reader) flag(key string) schedule.Flag {
	v, s, ok := r.source(key)
	if !ok {
		return schedule.Flag{}
	}
	return schedule.Flag{Yes: v == "yes", Source: s}
}

func (r *reader) list(key string) []string {
	v, ok := r.get(key)
	if !ok {
		return nil
	}
	return strings.Split(v, "|")
}

func (r *reader) channel(name string) *schedule.Channel {
	for _, c := range r.job.Channels {
		if c.Name == name || c.Amplifier != nil && c.Amplifier.Name+"/"+c.Name == name {
			return c
		}
	}
	r.t.Fatalf("row %d: no channel %q", r.at.Row, name)
	return nil
}

func (r *reader) channels(key string) []*schedule.Channel {
	var out []*schedule.Channel
	for _, n := range r.list(key) {
		out = append(out, r.channel(n))
	}
	return out
}

func (r *reader) oneChannel(key string) *schedule.Channel {
	if v, ok := r.get(key); ok {
		return r.channel(v)
	}
	return nil
}

func (r *reader) zone(key string) *schedule.Zone {
	v, ok := r.get(key)
	if !ok {
		return nil
	}
	for _, z := range r.job.Zones {
		if z.Name == v {
			return z
		}
	}
	z := &schedule.Zone{At: r.at, Key: v, Name: v}
	r.job.Zones = append(r.job.Zones, z)
	return z
}

func (r *reader) control(key string) *schedule.Control {
	v, ok := r.get(key)
	if !ok {
		return nil
	}
	for _, k := range r.job.Controls {
		if k.Name == v {
			return k
		}
	}
	r.t.Fatalf("row %d: no control %q", r.at.Row, v)
	return nil
}

func (r *reader) loudspeaker(name string) *schedule.Loudspeaker {
	for _, l := range r.job.Loudspeakers {
		if l.Tag.Value == name {
			return l
		}
	}
	r.t.Fatalf("row %d: no loudspeaker %q", r.at.Row, name)
	return nil
}

func (r *reader) offers(key string) []schedule.TapOffer {
	var out []schedule.TapOffer
	for _, v := range r.list(key) {
		w, volts, _ := strings.Cut(v, "@")
		o := schedule.TapOffer{Watts: schedule.Watts(number(r, w))}
		if volts != "" {
			o.Volts = schedule.Volts(number(r, volts))
		}
		out = append(out, o)
	}
	return out
}

func (r *reader) fill(kind, name string) {
	j := r.job
	at := func(a schedule.Ref) bool { return a.Row == r.at.Row }
	switch kind {
	case "job":
		j.Name = schedule.Said(name, r.cell("name"))
		j.Number, j.Site, j.Revision, j.Date = r.text("number"), r.text("site"), r.text("revision"), r.text("date")
		j.LineVolts, j.Emergency, j.Override = qty[schedule.Volts](r, "volts"), r.flag("emergency"), r.flag("override")
	case "amplifier":
		for _, a := range j.Amplifiers {
			if at(a.At) {
				a.Model, a.Rated, a.Count = r.text("model"), qty[schedule.Watts](r, "rated"), qty[schedule.Pieces](r, "count")
				a.Status = statuses[r.says["status"]]
				r.used["status"] = true
				for _, n := range r.list("low") {
					a.LowImpedance = append(a.LowImpedance, r.loudspeaker(n))
				}
			}
		}
	case "channel":
		for _, c := range j.Channels {
			if at(c.At) {
				r.fillChannel(c)
			}
		}
	case "zone":
		for _, z := range j.Zones {
			if at(z.At) && z.Name == name {
				z.Room, z.Channel, z.Channels, z.Control = r.text("room"), r.oneChannel("channel"), r.channels("channels"), r.control("control")
				z.Emergency, z.Override, z.ABCircuits = r.flag("emergency"), r.flag("override"), r.flag("ab")
				z.Use = useNamed[r.says["use"]]
				r.used["use"] = true
				z.Stated, z.Count = qty[schedule.Watts](r, "stated"), qty[schedule.Pieces](r, "count")
			}
		}
	case "control":
		for _, k := range j.Controls {
			if at(k.At) {
				r.fillControl(k)
			}
		}
	case "loudspeaker":
		for _, l := range j.Loudspeakers {
			if at(l.At) {
				r.fillLoudspeaker(l)
			}
		}
	case "cable":
		for _, c := range j.Cables {
			if at(c.At) {
				r.fillCable(c)
			}
		}
	case "total":
		t := schedule.Total{At: r.at, Of: name, Stated: qty[schedule.Watts](r, "stated"), Count: qty[schedule.Pieces](r, "count")}
		for _, n := range r.list("rows") {
			t.Rows = append(t.Rows, r.loudspeaker(n))
		}
		if v, ok := r.get("factor"); ok {
			t.Factor = number(r, v)
		}
		j.Totals = append(j.Totals, t)
	case "measured":
		m := schedule.Measurement{At: r.at, Channel: r.oneChannel("channel"), Control: r.control("control"), Zone: r.zone("zone"),
			Ohms: qty[schedule.Ohms](r, "ohms"), Watts: qty[schedule.Watts](r, "watts")}
		if v, ok := r.get("loudspeaker"); ok {
			m.Loudspeaker = r.loudspeaker(v)
		}
		j.Measurements = append(j.Measurements, m)
	case "left":
		l := &schedule.Loudspeaker{At: r.at, Tag: schedule.Said(name, r.at)}
		reason, _ := r.get("reason")
		r.fillLoudspeaker(l)
		kind := schedule.HiddenRow
		if v, _ := r.get("outdated"); v == "yes" {
			kind = schedule.OutdatedRow
		}
		j.LeftOut = append(j.LeftOut, schedule.LeftOut{At: r.at, Kind: kind, Reason: reason, Would: []*schedule.Loudspeaker{l}})
	case "assumed":
		how, _ := r.get("how")
		field, _ := r.get("field")
		a := schedule.Assumption{At: r.at, Field: field, How: hows[how], Written: name, TakenAs: name}
		j.Assumptions = append(j.Assumptions, a)
	}
}

func (r *reader) fillChannel(c *schedule.Channel) {
	c.LineVolts, c.LowImpedance, c.Rated, c.RatedBasis = qty[schedule.Volts](r, "volts"), r.flag("low"), qty[schedule.Watts](r, "rated"), r.text("basis")
	c.Bridged, c.Standby = r.channels("bridged"), r.says["standby"] == "yes"
	c.Pair = strings.Contains(c.Name, "+")
	r.used["standby"] = true
	c.Headroom, c.Emergency, c.Stated = qty[schedule.Fraction](r, "headroom"), r.flag("emergency"), qty[schedule.Watts](r, "stated")
	c.Use = useNamed[r.says["use"]]
	r.used["use"] = true
}

func (r *reader) fillControl(k *schedule.Control) {
	k.Model, k.Rated, k.Zone, k.Room = r.text("model"), qty[schedule.Watts](r, "rated"), r.zone("zone"), r.text("room")
	_, s, _ := r.source("volts")
	for _, v := range r.list("volts") {
		v, _, _ = strings.Cut(v, "!")
		k.RatedVolts = append(k.RatedVolts, schedule.Exactly(schedule.Volts(number(r, v)), s))
	}
	k.Channel, k.Parent, k.Count = r.oneChannel("channel"), r.control("parent"), qty[schedule.Pieces](r, "count")
	k.Override, k.HasOff, k.Remote, k.Stereo = r.flag("override"), r.flag("off"), r.flag("remote"), r.flag("stereo")
	k.Level, k.Stated, k.LossDB = qty[schedule.Fraction](r, "level"), qty[schedule.Watts](r, "stated"), qty[schedule.Decibels](r, "loss")
	k.Box = schedule.Box{Depth: qty[schedule.Millimetres](r, "depth"), Needed: qty[schedule.Millimetres](r, "depth needed"),
		Gangs: qty[schedule.Pieces](r, "gangs"), NeededGangs: qty[schedule.Pieces](r, "gangs needed"), Name: r.text("box")}
	k.Status = statuses[r.says["status"]]
	r.used["status"] = true
}

func (r *reader) fillLoudspeaker(l *schedule.Loudspeaker) {
	l.Tags, l.Model, l.Room, l.Mounting, l.Height = r.list("tags"), r.text("model"), r.text("room"), r.text("mounting"), qty[schedule.Metres](r, "height")
	l.Count, l.Tap, l.TapVolts, l.TapPosition = qty[schedule.Pieces](r, "count"), qty[schedule.Watts](r, "tap"), qty[schedule.Volts](r, "tapv"), r.text("position")
	if _, given := r.says["count"]; !given {
		l.Count = schedule.Exactly[schedule.Pieces](1, schedule.Source{How: schedule.Computed})
	}
	l.Offered, l.Rated, l.LowImpedance = r.offers("offered"), qty[schedule.Watts](r, "rated"), qty[schedule.Ohms](r, "low")
	l.RowTotal, l.Measured = qty[schedule.Watts](r, "row total"), qty[schedule.Ohms](r, "measured")
	l.Zone, l.Control, l.Channel, l.Split = r.zone("zone"), r.control("control"), r.oneChannel("channel"), r.channels("split")
	l.Status = statuses[r.says["status"]]
	r.used["status"] = true
	if v, ok := r.get("tap refused"); ok {
		r.job.Refused = append(r.job.Refused, schedule.Refusal{At: r.cell("tap refused"), Field: "tap", Written: v, Why: "negative"})
	}
	l.Sub, l.Emergency = r.flag("sub"), r.flag("emergency")
}

func (r *reader) fillCable(c *schedule.Cable) {
	c.Zone, c.Channel, c.Control = r.zone("zone"), r.oneChannel("channel"), r.control("control")
	c.Length, c.Count, c.Area, c.AWG = qty[schedule.Metres](r, "length"), qty[schedule.Pieces](r, "count"), qty[schedule.SquareMM](r, "area"), qty[schedule.Pieces](r, "awg")
	c.Gauge, c.Material, c.Temperature, c.Needed = r.text("gauge"), r.text("material"), qty[schedule.Celsius](r, "temperature"), qty[schedule.SquareMM](r, "needed")
	if v, ok := r.get("class"); ok {
		c.Class = int(number(r, v))
	}
	if v, ok := r.get("parallel"); ok {
		c.Parallel = int(number(r, v))
	}
	v, _ := r.get("reach")
	c.Reach = reaches[v]
	c.From, c.To = r.end("from"), r.end("to")
	c.Status = statuses[r.says["status"]]
	r.used["status"] = true
	for _, n := range r.list("run") {
		r.loudspeaker(n).Run = c
	}
	if v := r.control("feeds"); v != nil {
		v.Run = c
	}
}

// end reads "channel:A1/1", "control:VC-1", "zone:Pool", "loudspeaker:LS-1",
// "amplifier:A1", or any other text as an end that names nothing.
func (r *reader) end(key string) schedule.End {
	v, ok := r.get(key)
	if !ok {
		return schedule.End{}
	}
	e := schedule.End{Text: schedule.Said(v, r.cell(key))}
	kind, name, _ := strings.Cut(v, ":")
	switch kind {
	case "channel":
		e.Channel = r.channel(name)
	case "control":
		for _, k := range r.job.Controls {
			if k.Name == name {
				e.Control = k
			}
		}
	case "zone":
		for _, z := range r.job.Zones {
			if z.Name == name {
				e.Zone = z
			}
		}
	case "loudspeaker":
		e.Loudspeaker = r.loudspeaker(name)
	case "amplifier":
		for _, a := range r.job.Amplifiers {
			if a.Name == name {
				e.Amplifier = a
			}
		}
	default:
		return e
	}
	if !e.Resolved() {
		r.t.Fatalf("row %d: no %s", r.at.Row, v)
	}
	return e
}
