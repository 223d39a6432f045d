package ingest_test

import (
	"cmp"
	"fmt"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"lineaudit/audit/schedule"
	"lineaudit/ingest"
	"lineaudit/ingest/join"
	"lineaudit/samples/answer"
)

// A comparison is one job of the truth against what was read of it.
type comparison struct {
	t     *testing.T
	truth *answer.Archive
	tf    answer.File
	file  *ingest.File
	job   *schedule.Job
	names map[string][]string // kind and name -> every way it is written
	told  map[string]bool     // sheet and row, or sheet and column, that something was said against
	tally
}

// verbose prints every difference: set ACCURACY to a word that the line holds.
var verbose = os.Getenv("ACCURACY")

func (c *comparison) fault(where, field, want, got string) {
	if verbose == "" {
		return
	}
	line := fmt.Sprintf("%s [%s %s %s n%d] %s %s: want %q, got %q", c.tf.File, c.tf.Layout, c.tf.Language, c.tf.Units, c.tf.Noise, where, field, want, got)
	if verbose == "all" || strings.Contains(line, verbose) {
		c.t.Log(line)
	}
}

// findJob finds the job of a file by its number, else by its site.
func (c *comparison) findJob() {
	if len(c.file.Jobs) == 1 {
		c.job = c.file.Jobs[0]
	}
	for _, j := range c.file.Jobs {
		if join.Key(j.Number.Value) == join.Key(c.tf.Job) {
			c.job = j
		}
	}
	c.value(c.job != nil && join.Key(c.job.Number.Value) == join.Key(c.tf.Job), "", "", "job number", c.tf.Job, numberOf(c.job))
	c.value(c.job != nil && join.Key(c.job.Site.Value) == join.Key(c.tf.Site), "", "", "site", c.tf.Site, siteOf(c.job))
	if c.job == nil {
		var got []string
		for _, j := range c.file.Jobs {
			got = append(got, j.Number.Value+" "+j.Name.Value)
		}
		c.fault("", "job", c.tf.Job, strings.Join(got, ", "))
		return
	}
	c.told = make(map[string]bool)
	for _, j := range c.file.Jobs {
		for _, a := range j.Assumptions {
			c.tell(a.At)
			if strings.Contains(a.Written, " cells, first ") {
				c.told[fmt.Sprintf("%s|col %d", a.At.Sheet(), a.At.Col)] = true
			}
		}
		for _, q := range j.Questions {
			c.tell(q.At)
		}
		for _, l := range j.LeftOut {
			c.tell(l.At)
		}
	}
}

func numberOf(j *schedule.Job) string {
	if j == nil {
		return "nothing"
	}
	return j.Number.Value
}

func siteOf(j *schedule.Job) string {
	if j == nil {
		return "nothing"
	}
	return j.Site.Value
}

func (c *comparison) tell(at schedule.Ref) {
	c.told[fmt.Sprintf("%s|row %d", at.Sheet(), at.Row)] = true
	c.told[fmt.Sprintf("%s|at %d %d", at.Sheet(), at.Row, at.Col)] = true
}

// mine reports whether a part of the truth belongs to this job.
func (c *comparison) mine(file, job string) bool { return file == c.tf.File && job == c.tf.Job }

func (c *comparison) run() {
	c.names = make(map[string][]string)
	for _, n := range c.truth.Names {
		if c.mine(n.File, n.Job) {
			c.names[n.Kind+" "+n.Name] = append([]string{n.Name}, n.Forms...)
		}
	}
	c.loudspeakers()
	c.channels()
	c.controls()
	c.lines()
}

// names of parts are right when they are one of the ways in which the part is written.
func (c *comparison) named(kind, want, got string) bool {
	if want == "" || got == "" {
		return want == got
	}
	for _, f := range append(c.names[kind+" "+want], want) {
		if join.Key(f) == join.Key(got) {
			return true
		}
	}
	return false
}

// value compares one value and counts it. wrong says what was read instead;
// where is the row in which it stands.
func (c *comparison) value(right bool, sheet, row string, field, want, got string) bool {
	c.values++
	if right {
		return true
	}
	c.fault(sheet+"!"+row, field, want, got)
	told := false
	for _, r := range strings.FieldsFunc(row, func(r rune) bool { return r == '-' || r == ' ' || r == ',' }) {
		told = told || c.told[sheet+"|row "+strings.TrimLeft(r, "ABCDEFGHIJKLMNOPQRSTUVWXYZ")]
	}
	if !told {
		c.silent++
		c.fault(sheet+"!"+row, field+" SILENT", want, got)
	}
	return false
}

// sameChannel compares an output and the amplifier it belongs to.
func (c *comparison) sameChannel(wantAmp, want, amp, channel string) bool {
	if amp == "" {
		return wantAmp == "" && c.named("channel", wantAmp+"."+want, channel)
	}
	for _, f := range c.names["channel "+wantAmp+"."+want] { // "AMP 1 CH A" is the amplifier AMP 1 and its channel A
		k := join.Key(f)
		if strings.HasPrefix(k, join.Key(amp)) && strings.HasSuffix(k, join.Key(channel)) && k != join.Key(amp) {
			return true
		}
	}
	return c.named("amplifier", wantAmp, amp) && (join.Key(want) == join.Key(channel) || c.named("channel", wantAmp+"."+want, channel))
}

func near(a, b, allowed float64) bool {
	return math.Abs(a-b) <= allowed*math.Max(math.Abs(a), math.Abs(b))
}

func num[T ~float64](q schedule.Quantity[T]) string {
	if !q.Had() {
		return "nothing"
	}
	if q.Low != q.High {
		return fmt.Sprintf("%v to %v", q.Low, q.High)
	}
	return fmt.Sprint(q.Low)
}

// assumed counts a value that rests on an assumption.
func (c *comparison) assumed(s schedule.Source) {
	if s.How.Assumed() {
		c.assumptions++
	}
}

func (c *comparison) loudspeakers() {
	byPlace := make(map[string][]*schedule.Loudspeaker)
	place := func(sheet, rows string) string { return sheet + "|" + rows }
	if c.job != nil {
		for _, l := range c.job.Loudspeakers {
			byPlace[place(l.At.Sheet(), l.Rows.String())] = append(byPlace[place(l.At.Sheet(), l.Rows.String())], l)
			byPlace["cell "+l.Tap.At.String()] = append(byPlace["cell "+l.Tap.At.String()], l)
		}
	}
	used := make(map[*schedule.Loudspeaker]bool)
	for _, want := range c.truth.Loudspeakers {
		if !c.mine(want.File, want.Job) {
			continue
		}
		c.rows++
		got := c.pick(byPlace[place(want.Sheet, want.Rows)], want, used)
		if got == nil {
			c.values += 5
			for range 5 {
				c.value(false, want.Sheet, want.Rows, "row", fmt.Sprintf("%s %d x %v W", want.Zone, want.Count, want.TapW), "nothing")
				c.values--
			}
			continue
		}
		used[got] = true
		ok := true
		zone, control, amp, channel := "", "", "", ""
		if got.Zone != nil {
			zone = got.Zone.Name
		}
		if got.Control != nil {
			control = got.Control.Name
		}
		if got.Channel != nil {
			channel = got.Channel.Name
			if got.Channel.Amplifier != nil {
				amp = got.Channel.Amplifier.Name
			}
		}
		at := func(right bool, field, want1, got1 string) {
			ok = c.value(right, want.Sheet, want.Rows, field, want1, got1) && ok
		}
		at(c.named("zone", want.Zone, zone), "zone", want.Zone, zone)
		at(float64(got.Count.Low) == float64(want.Count) && got.Count.Low == got.Count.High, "count", fmt.Sprint(want.Count), num(got.Count))
		if math.IsNaN(want.TapW) {
			_, exact := got.Tap.Exact()
			at(!exact, "tap", "unknown", num(got.Tap))
		} else {
			at(near(float64(got.Tap.Low), want.TapW, 0.006) && got.Tap.Low == got.Tap.High, "tap", fmt.Sprint(want.TapW), num(got.Tap))
		}
		at(c.sameChannel(want.Amplifier, want.Channel, amp, channel), "channel", want.Amplifier+" / "+want.Channel, amp+" / "+channel)
		at(c.named("control", want.Control, control), "control", want.Control, control)
		if s := got.Status.String(); s != want.Status {
			at(false, "status", want.Status, s)
		}
		if ok {
			c.right++
		}
		c.assumed(got.Count.Source)
		c.assumed(got.Tap.Source)
		c.assumed(got.Tag.Source)
	}
	if c.job == nil {
		return
	}
	for _, l := range c.job.Loudspeakers {
		if !used[l] && l.Status == schedule.Installed {
			c.rows++
			c.value(false, l.At.Sheet(), l.Rows.String(), "row", "no loudspeaker", fmt.Sprintf("%s %s x %s W", l.Tag.Value, num(l.Count), num(l.Tap)))
		}
	}
}

// pick chooses, among the loudspeakers read from a row, the one that the truth means.
func (c *comparison) pick(list []*schedule.Loudspeaker, want answer.Loudspeaker, used map[*schedule.Loudspeaker]bool) *schedule.Loudspeaker {
	var best *schedule.Loudspeaker
	score := -1
	for _, l := range list {
		if used[l] {
			continue
		}
		n := 0
		if near(float64(l.Tap.Low), want.TapW, 0.006) {
			n += 2
		}
		if l.Tap.At.Cell() == want.Cell {
			n += 4
		}
		if l.Zone != nil && c.named("zone", want.Zone, l.Zone.Name) {
			n += 2
		}
		if float64(l.Count.Low) == float64(want.Count) {
			n++
		}
		if n > score {
			best, score = l, n
		}
	}
	return best
}

// rowOf is the row of a cell name.
func rowOf(cell string) string {
	return strings.TrimLeft(cell, "ABCDEFGHIJKLMNOPQRSTUVWXYZ")
}

// part compares one value of a channel, control or line.
func (c *comparison) part(right bool, sheet, cell, field, want, got string) {
	c.parts++
	if c.value(right, sheet, rowOf(cell), field, want, got) {
		c.partsRight++
	}
}

func (c *comparison) channels() {
	for _, want := range c.truth.Channels {
		if !c.mine(want.File, want.Job) || want.Sheet == "" && math.IsNaN(want.RatedW) && want.LoadW == 0 {
			continue
		}
		var got *schedule.Channel
		if c.job != nil {
			for _, ch := range c.job.Channels {
				amp := ""
				if ch.Amplifier != nil {
					amp = ch.Amplifier.Name
				}
				if c.sameChannel(want.Amplifier, want.Channel, amp, ch.Name) {
					got = ch
				}
			}
		}
		name := want.Amplifier + "." + want.Channel
		if got == nil {
			c.part(false, want.Sheet, want.Cell, "channel "+name, name, "nothing")
			continue
		}
		if math.IsNaN(want.RatedW) {
			_, exact := got.Rated.Exact()
			c.part(!exact, want.Sheet, want.Cell, "rating of channel "+name, "unknown", num(got.Rated))
		} else {
			c.part(near(float64(got.Rated.Low), want.RatedW, 0.001) && got.Rated.Low == got.Rated.High, want.Sheet, want.Cell, "rating of channel "+name, fmt.Sprint(want.RatedW), num(got.Rated))
		}
		c.assumed(got.Rated.Source)
	}
}

func (c *comparison) controls() {
	if c.job != nil {
		n := 0
		for _, want := range c.truth.Controls {
			if c.mine(want.File, want.Job) {
				n++
			}
		}
		if n > 0 && len(c.job.Controls) > n {
			c.part(false, "", "", "number of controls", fmt.Sprint(n), fmt.Sprint(len(c.job.Controls)))
		}
	}
	for _, want := range c.truth.Controls {
		if !c.mine(want.File, want.Job) || want.Sheet == "" && want.LoadW == 0 {
			continue
		}
		var got *schedule.Control
		if c.job != nil {
			for _, k := range c.job.Controls {
				if c.named("control", want.Control, k.Name) {
					got = k
				}
			}
		}
		if got == nil {
			c.part(false, want.Sheet, want.Cell, "control "+want.Control, want.Control, "nothing")
			continue
		}
		if math.IsNaN(want.RatedW) {
			_, exact := got.Rated.Exact()
			c.part(!exact, want.Sheet, want.Cell, "rating of control "+want.Control, "unknown", num(got.Rated))
		} else {
			c.part(near(float64(got.Rated.Low), want.RatedW, 0.001) && got.Rated.Low == got.Rated.High, want.Sheet, want.Cell, "rating of control "+want.Control, fmt.Sprint(want.RatedW), num(got.Rated))
		}
		up := ""
		if got.Parent != nil {
			up = got.Parent.Name
		}
		if want.Upstream != "" || up != "" {
			c.part(c.named("control", want.Upstream, up), want.Sheet, want.Cell, "feed of control "+want.Control, want.Upstream, up)
		}
		c.assumed(got.Rated.Source)
	}
}

func (c *comparison) lines() {
	for _, want := range c.truth.Lines {
		if !c.mine(want.File, want.Job) {
			continue
		}
		var got []*schedule.Cable
		if c.job != nil {
			for _, k := range c.job.Cables {
				zone := ""
				if k.Zone != nil {
					zone = k.Zone.Name
				} else if k.To.Zone != nil {
					zone = k.To.Zone.Name
				} else if k.Channel != nil {
					for _, z := range c.job.Zones {
						if z.Channel == k.Channel && c.named("zone", want.Zone, z.Name) {
							zone = z.Name
						}
					}
				}
				if c.named("zone", want.Zone, zone) || want.Line != "" && join.Key(want.Line) == join.Key(k.Name) {
					got = append(got, k)
				}
			}
		}
		slices.SortFunc(got, func(a, b *schedule.Cable) int { return cmp.Compare(a.At.Row, b.At.Row) })
		name := "line " + want.Line + " " + want.Zone
		if len(got) == 0 {
			c.part(false, want.Sheet, want.Cell, name, name, "nothing")
			continue
		}
		area := got[0].Area
		c.part(near(float64(area.Low), want.AreaMM2, 0.002), want.Sheet, want.Cell, "area of "+name, fmt.Sprint(want.AreaMM2), num(area))
		if len(want.Chain) > 0 {
			c.part(len(got) == len(want.Chain), want.Sheet, want.Cell, "pieces of "+name, fmt.Sprint(len(want.Chain)), fmt.Sprint(len(got)))
			continue
		}
		length := got[0].Length
		c.part(near(float64(length.Low), want.LengthM, lengthAllowed) && length.Low == length.High, want.Sheet, want.Cell, "length of "+name, fmt.Sprint(want.LengthM), num(length))
		material := got[0].Material.Value
		if want.Material != "" && want.Material != "copper" {
			c.part(material == want.Material, want.Sheet, want.Cell, "material of "+name, want.Material, material)
		}
		c.assumed(area.Source)
		c.assumed(length.Source)
	}
}
