package main

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// parts compares the figures of what the loudspeakers hang on. Loads follow
// from the rows, so that only what is written itself can be silently wrong.
func (c *hardCase) parts(table string, same func(hardCase, record, record) bool, written []string, class ...string) {
	for _, w := range c.want[table] {
		if table == "amplifiers" && w["amplifier"] == "" && c.sumOfOutputs(w) {
			continue // without a name and a limit of its own it need not be seen
		}
		c.score.parts[table]++
		var best []fault
		found := false
		for _, g := range c.got[table] {
			if !same(*c, w, g) {
				continue
			}
			if f := c.figureFaults(table, w, g, written); !found || len(f) < len(best) {
				best, found = f, true
			}
		}
		if !found && table == "channels" && w["load_w"] == "0" && w["rated_w"] == "" {
			found = true
		}
		if found && len(best) == 0 && c.read {
			c.score.partsRight[table]++
		}
		for i, field := range written {
			if w[field] == "" && table == "amplifiers" {
				continue
			}
			c.score.values++
			at := slices.IndexFunc(best, func(f fault) bool { return f.field == field })
			if found && at < 0 || !found && w[field] == "" {
				continue
			}
			said := !c.read || slices.ContainsFunc(c.got["questions"], func(q record) bool { return c.sameJob(w, q) && classes[q["field"]] == class[i] }) ||
				slices.ContainsFunc(c.got["assumptions"], func(a record) bool { return classes[a["field"]] == class[i] })
			c.silence(!said)
			if at >= 0 {
				best[at].field = mark(!said) + field
			}
		}
		if !c.read {
			continue
		}
		if !found {
			c.differ("%s %s: nothing of that name (rated %s, load %s)", table, nameOf(w), w["rated_w"], w["load_w"])
		}
		for _, f := range best {
			c.differ("%s %s: %s %q, want %q", table, nameOf(w), f.field, f.got, f.want)
		}
	}
}

func nameOf(r record) string {
	return strings.Trim(strings.Join([]string{r["job"], r["amplifier"], r["channel"], r["control"], r["zone"]}, " "), " ")
}

func (c *hardCase) figureFaults(table string, w, g record, written []string) []fault {
	var out []fault
	for _, field := range append([]string{"load_w"}, written...) {
		right := closeTo(w[field], g[field], 1e-6)
		switch {
		case field == "line_v":
			right = w[field] == "" || closeTo(w[field], g[field], 0.011)
		case field == "load_w" && w[field] == "0":
			right = right || g[field] == "" // no load, or none shown
		case field == "load_w" && table == "channels" && w["line_v"] == "":
			right = right || g[field] == "0" // an output for low impedance: nothing on its line
		case field == "load_w" && w["load_max_w"] != "":
			right = right && bounds(w, g)
		case field == "rated_w" && table == "channels" && w["channel"] == "":
			right = right || g[field] == "" && c.frameRated(w)
		case field == "rated_w" && table == "amplifiers":
			right = right || w[field] == "" || g[field] == "" && c.sumOfOutputs(w) // not asserted
		}
		if !right {
			out = append(out, fault{field: field, want: w[field], got: g[field]})
		}
	}
	return out
}

// frameRated reports whether the rating of an output without a name, the only one of its amplifier, was read as that of the frame.
func (c *hardCase) frameRated(w record) bool {
	return slices.ContainsFunc(c.got["amplifiers"], func(a record) bool {
		return c.amplifier(w, a) && closeTo(w["rated_w"], a["rated_w"], 1e-6)
	})
}

// sumOfOutputs reports whether the rating of a frame is no more than the sum of those of its outputs.
func (c *hardCase) sumOfOutputs(amplifier record) bool {
	sum := 0.0
	for _, w := range c.want["channels"] {
		if w["job"] == amplifier["job"] && w["amplifier"] == amplifier["amplifier"] {
			rated, _ := strconv.ParseFloat(w["rated_w"], 64)
			sum += rated
		}
	}
	return closeTo(amplifier["rated_w"], fmt.Sprint(sum), 1e-6)
}

// bounds reports whether the bounds that were worked out hold the true ones.
func bounds(w, g record) bool {
	number := func(s string, otherwise float64) float64 {
		if v, err := strconv.ParseFloat(s, 64); err == nil {
			return v
		}
		return otherwise
	}
	return number(g["load_low_w"], 0) <= number(w["load_min_w"], 0)+1e-6 && number(g["load_high_w"], 1e9) >= number(w["load_max_w"], 1e9)-1e-6
}

func (c hardCase) channel(w, g record) bool { return c.sameJob(w, g) && sameOutput(w, g) }

func (c hardCase) control(w, g record) bool {
	return c.sameJob(w, g) && (key(w["control"]) == key(g["control"]) || unnamed(w))
}

func (c hardCase) amplifier(w, g record) bool {
	return c.sameJob(w, g) && (w["amplifier"] == "" || key(w["amplifier"]) == key(g["amplifier"]))
}

// lines compares cables. The program lists a network once, as long as its
// longest way: a cable is right where a line has its length, area and metal, or
// where one is as long as the longest way through the cables joined with it. A
// cable whose start the truth leaves open may be a home run or a piece of its output's line.
func (c *hardCase) lines() {
	want := c.want["lines"]
	used := make([]bool, len(c.got["lines"]))
	take := func(right func(g record) bool) bool {
		i := slices.IndexFunc(c.got["lines"], func(g record) bool { return right(g) })
		for i >= 0 && used[i] {
			next := slices.IndexFunc(c.got["lines"][i+1:], func(g record) bool { return right(g) })
			if next < 0 {
				return false
			}
			i += 1 + next
		}
		if i >= 0 {
			used[i] = true
		}
		return i >= 0
	}
	right := make([]bool, len(want))
	for i, w := range want {
		right[i] = take(func(g record) bool {
			same := g["reading"] != "segments" && closeTo(w["area_mm2"], g["area_mm2"], 0.001) && (w["material"] == "" || w["material"] == g["material"])
			return same && closeTo(w["length_m"], g["length_m"], 0.001)
		}) || strings.Contains(w["note"], "loose end") && slices.ContainsFunc(c.got["questions"], func(q record) bool {
			return classes[q["field"]] == "line" && strings.Contains(q["question"], " "+w["line"])
		})
	}
	for _, n := range c.networks() {
		if !slices.ContainsFunc(n.cables, func(i int) bool { return !right[i] }) {
			continue
		}
		if take(func(g record) bool { return closeTo(fmt.Sprint(n.longest), g["length_m"], 0.001) }) {
			for _, i := range n.cables {
				right[i] = true
			}
		}
	}
	for i, w := range want {
		c.score.parts["lines"]++
		c.score.values++
		if right[i] && c.read {
			c.score.partsRight["lines"]++
			continue
		}
		about := func(r record) bool { return classes[r["field"]] == "line" && r["field"] != "conductor material" }
		silent := c.read && !slices.ContainsFunc(c.got["questions"], about) && !slices.ContainsFunc(c.got["assumptions"], about)
		c.silence(silent)
		if c.read {
			c.differ("lines %s %s from %q to %q: %sno line of %s m, %s mm², %s", w["line"], w["zone"], w["from"], w["to"], mark(silent), w["length_m"], w["area_mm2"], w["material"])
		}
	}
}

// A network is cables that follow one another, and the longest way through them in m.
type network struct {
	cables  []int
	longest float64
}

// networks joins the true cables: those that leave from where another one
// arrives, and those to loudspeakers of one output where the start is open.
func (c *hardCase) networks() []network {
	want := c.want["lines"]
	length := func(i int) float64 {
		l, _ := strconv.ParseFloat(want[i]["length_m"], 64)
		return l
	}
	var out []network
	outputs := map[string]int{}
	for i, w := range want {
		if w["from"] == "" {
			at := slices.IndexFunc(c.want["loudspeakers"], func(l record) bool {
				return l["tag"] != "" && l["tag"] == w["to"] || l["zone"] != "" && l["zone"] == w["zone"]
			})
			if at < 0 {
				continue
			}
			l := c.want["loudspeakers"][at]
			output := l["amplifier"] + "/" + l["channel"]
			if _, ok := outputs[output]; !ok {
				outputs[output] = len(out)
				out = append(out, network{})
			}
			n := &out[outputs[output]]
			n.cables = append(n.cables, i)
			n.longest += length(i)
			continue
		}
		if slices.ContainsFunc(want, func(b record) bool { return b["to"] == w["from"] }) {
			continue // not the first of its network
		}
		n := network{}
		var follow func(i int, way float64)
		follow = func(i int, way float64) {
			way += length(i)
			n.cables, n.longest = append(n.cables, i), max(n.longest, way)
			for j, b := range want {
				if b["from"] != "" && b["from"] == want[i]["to"] && !slices.Contains(n.cables, j) {
					follow(j, way)
				}
			}
		}
		follow(i, 0)
		out = append(out, n)
	}
	return out
}

// doubts are what the truth wants asked (a question) or assumed (an
// assumption, a question or a row left out). Rows that must not be loudspeakers were met already.
func (c *hardCase) doubts() {
	for _, w := range c.want["questions"] {
		c.score.doubts++
		at := func(r record) bool {
			if w["sheet"] != "" && r["sheet"] != "" && r["sheet"] != w["sheet"] {
				return false
			}
			if m := manyCells.FindStringSubmatch(r["written"]); m != nil && reaches(m[1], m[2], w["rows"]) {
				return true
			}
			for cell := range strings.SplitSeq(r["cell"], "; ") {
				m := cellName.FindStringSubmatch(cell)
				if m != nil && (sameRows(m[2], w["rows"]) || m[1] == w["rows"]) {
					return true
				}
			}
			return false
		}
		answered := c.leftOut(w["sheet"], w["rows"]) || slices.ContainsFunc(c.got["questions"], at) || w["must_be"] == "assumed" && slices.ContainsFunc(c.got["assumptions"], at)
		if answered && c.read {
			c.score.answered++
		} else if c.read {
			c.differ("%s row %s: must be %s: %s", w["sheet"], w["rows"], w["must_be"], w["what"])
		}
	}
}
