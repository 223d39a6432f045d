package generate

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"time"

	"lineaudit/samples/answer"
	"lineaudit/samples/book"
)

// num writes a number with the hand's decimal mark.
func (h *hand) num(f float64) string {
	return strings.Replace(strconv.FormatFloat(f, 'f', -1, 64), ".", h.decimal, 1)
}

// way returns the notation of a field: one of the ways open at the present
// noise, kept for the whole file. Way 0 is the bare number. levels gives the
// noise from which each way is used.
func (h *hand) way(field string, levels ...int) int {
	if w, ok := h.notation[field]; ok {
		return w
	}
	var open []int
	for w, from := range levels {
		if from >= 0 && from <= h.noise {
			open = append(open, w)
		}
	}
	w := open[h.rng.IntN(len(open))]
	h.notation[field] = w
	return w
}

// number is a bare number: as such, or at higher noise as text.
func (h *hand) number(f float64) book.Cell {
	if h.noise >= 2 && h.chance(8) {
		return book.Cell{Value: h.num(f)}
	}
	if f == math.Trunc(f) {
		return book.Cell{Value: int(f)}
	}
	return book.Cell{Value: f}
}

func (h *hand) tapWay() int { return h.way("tap", 0, 0, 0, 1, 2, 1, 2) }

// tapCell writes the tap of a group.
func (h *hand) tapCell(g *group, lineV float64) book.Cell {
	switch {
	case g.lowOhm > 0:
		return book.Cell{Value: fmt.Sprintf("%g %s", g.lowOhm, h.ohm())}
	case g.untold:
		return book.Cell{Value: []any{nil, "TBC", "?", "-"}[h.rng.IntN(4)]}
	case g.asDate:
		// 1/2 typed into a sheet that reads dates: the second of January.
		return book.Cell{Value: time.Date(2019, 1, int(math.Round(1/g.tapW)), 0, 0, 0, 0, time.UTC), Style: book.Style{Format: "d-mmm"}}
	case g.tapV > 0:
		return book.Cell{Value: fmt.Sprintf("%s W @ %sV", h.num(g.tapW), voltText(g.tapV))}
	}
	way := h.tapWay()
	if h.noise >= 3 && h.chance(12) {
		way = []int{1, 2, 3, 5}[h.rng.IntN(4)]
	}
	w := h.num(g.tapW)
	switch way {
	case 1:
		if s, ok := fraction(g.tapW); ok && h.noise >= 1 && h.chance(50) {
			return book.Cell{Value: s + " W"}
		}
		return book.Cell{Value: w + " W"}
	case 2:
		return book.Cell{Value: w + "W"}
	case 3:
		return book.Cell{Value: "@" + w + "W"}
	case 4:
		if g.tapW == math.Trunc(g.tapW) && g.tapW > 4 {
			return book.Cell{Value: "T-" + w}
		}
		return book.Cell{Value: w + "W"}
	case 5:
		return book.Cell{Value: w + "W/" + voltText(lineV) + "V"}
	case 6:
		return h.tapOfList(g, w)
	}
	return h.number(g.tapW)
}

// tapOfList writes the taps on offer and the one in use.
func (h *hand) tapOfList(g *group, w string) book.Cell {
	if !slices.Contains(g.kind.taps, g.tapW) {
		return book.Cell{Value: w + " W"}
	}
	list := h.tapList(g.kind)
	if h.chance(50) {
		arrow := " → "
		if h.plain {
			arrow = " -> "
		}
		return book.Cell{Value: list + arrow + w}
	}
	return book.Cell{Value: fmt.Sprintf("%sW %s %s", list, phraseOf[key{"set", h.lang}][0], w)}
}

func (h *hand) tapList(k *kind) string {
	var all []string
	for _, t := range k.taps {
		all = append(all, h.num(t))
	}
	return strings.Join(all, "/")
}

// ohm is the unit as the file can hold it: Windows-1252 has no omega.
func (h *hand) ohm() string {
	if h.plain {
		return "ohm"
	}
	return "Ω"
}

func fraction(w float64) (string, bool) {
	s, ok := map[float64]string{0.5: "1/2", 0.25: "1/4", 0.75: "3/4"}[w]
	return s, ok
}

func voltText(v float64) string {
	if v > 70 && v < 71 {
		return "70"
	}
	return fmt.Sprintf("%g", v)
}

func (h *hand) countWay() int { return h.way("qty", 0, 1, 1, 2, 2, 2) }

func (h *hand) countCell(n int) book.Cell {
	switch h.countWay() {
	case 1:
		return book.Cell{Value: fmt.Sprintf("(%d)", n)}
	case 2:
		return book.Cell{Value: fmt.Sprintf("%d %s", n, phraseOf[key{"each", h.lang}][0])}
	case 3:
		return book.Cell{Value: fmt.Sprintf("%dx", n)}
	case 4:
		return book.Cell{Value: fmt.Sprintf("x%d", n)}
	case 5:
		if h.lang == "en" {
			return book.Cell{Value: fmt.Sprintf("%d no.", n)}
		}
	}
	return h.number(float64(n))
}

func (h *hand) lengthWay() int {
	if h.mixed && h.noise >= 3 {
		return h.way("length", -1, 0, 0)
	}
	return h.way("length", 0, 0, 0, 2)
}

func (h *hand) lengthCell(written float64, inFeet bool) book.Cell {
	w := h.num(written)
	way := h.lengthWay()
	if way == 0 {
		return h.number(written)
	}
	if inFeet {
		if way == 2 {
			return book.Cell{Value: w + "'"}
		}
		return book.Cell{Value: w + " ft"}
	}
	switch {
	case way == 2:
		return book.Cell{Value: w + "m"}
	case way == 3 && written >= 100:
		return book.Cell{Value: h.num(written/1000) + " km"}
	}
	return book.Cell{Value: w + " m"}
}

func (h *hand) lengthUnit() string {
	switch {
	case h.lengthWay() != 0:
		return ""
	case h.feet:
		return "ft"
	}
	return "m"
}

func (h *hand) gaugeWay() int {
	if h.awg {
		return h.way("gauge", 0, 0, 0, 1, 1, 1, 2, 2)
	}
	return h.way("gauge", 0, 0, 0, 1, 1, 2, 2)
}

func (h *hand) gaugeUnit() string {
	switch {
	case h.gaugeWay() != 0:
		return ""
	case h.awg:
		return "AWG"
	}
	return "mm²"
}

func (h *hand) gaugeCell(l *line) book.Cell {
	way := h.gaugeWay()
	tail := ""
	if l.material != "copper" {
		tail = " CCA"
		way = max(way, 1)
	}
	if l.awg > 0 {
		n := strconv.Itoa(l.awg)
		switch way {
		case 0:
			return h.number(float64(l.awg))
		case 1:
			return book.Cell{Value: n + "/2" + tail}
		case 3:
			return book.Cell{Value: "#" + n + tail}
		case 4:
			return book.Cell{Value: n + "-2" + tail}
		case 5:
			return book.Cell{Value: "2C " + n + "AWG" + tail}
		case 6:
			if tail == "" {
				tail = " OFC"
			}
			return book.Cell{Value: n + "/2" + tail}
		case 7:
			return book.Cell{Value: n + "ga" + tail}
		}
		return book.Cell{Value: n + " AWG" + tail}
	}
	a := h.num(l.areaMM2)
	switch way {
	case 0:
		return h.number(l.areaMM2)
	case 2:
		return book.Cell{Value: a + " mm²" + tail}
	case 3:
		return book.Cell{Value: "2x" + a + tail}
	case 4:
		return book.Cell{Value: "2C " + a + tail}
	case 5:
		return book.Cell{Value: "2 x " + a + " mm" + tail}
	case 6:
		return book.Cell{Value: "2×" + a + "²" + tail}
	}
	return book.Cell{Value: "2x" + a + " mm²" + tail}
}

func (h *hand) ratingWay(field string) int { return h.way(field, 0, 0, 0, 1, 2) }

// ratingCell writes the watts of a channel, a frame or a control. atV is the
// line voltage that the rating names, 0 where it names none.
func (h *hand) ratingCell(field string, w, atV, lineV float64) book.Cell {
	if atV > 0 {
		return book.Cell{Value: fmt.Sprintf("%sW @%sV", h.num(w), voltText(atV))}
	}
	switch h.ratingWay(field) {
	case 1:
		return book.Cell{Value: h.num(w) + " W"}
	case 2:
		return book.Cell{Value: h.num(w) + "W"}
	case 3:
		return book.Cell{Value: h.num(w) + "W @" + voltText(lineV) + "V"}
	case 4:
		return book.Cell{Value: h.num(w/1000) + " kW"}
	}
	return h.number(w)
}

// wattUnit is the unit that belongs in the heading of a column of watts.
func wattUnit(way int) string {
	if way == 0 {
		return "W"
	}
	return ""
}

func voltsCell(v float64) book.Cell {
	if v == answer.Class(70) {
		return book.Cell{Value: "70V"}
	}
	return book.Cell{Value: fmt.Sprintf("%gV", v)}
}
