package layout

import (
	"strings"

	"lineaudit/ingest/grid"
	"lineaudit/ingest/vocabulary"
)

// mostOfTitle is the most words of a title above a list of controls: "Volume controls outside the rack:".
const mostOfTitle = 6

// beforeControls is how many lines of the body of a draft of two columns stand above a list of controls that a title heads and
// whose lines are one cell each, down to the end: "Amplifier | Line" over "VA (120 W) | 1", and below "Controls:" over
// "RA (20 W) hall". It is all of them where there is no such list.
func beforeControls(lines []line, body []int, d *draft) int {
	if d.to-d.from != 1 {
		return len(body)
	}
	lone := func(k int) (cell, bool) {
		l := &lines[body[k]]
		slots := l.between(d.from, d.to)
		if len(slots) != 1 || len(l.slots) != 1 || slots[0].cell.Kind != grid.String || d.repeated[l.n] != "" {
			return cell{}, false
		}
		return slots[0].cell, true
	}
	end := len(body)
	for k := len(body) - 1; k > 0; k-- {
		c, ok := lone(k)
		if !ok {
			break
		}
		if t := c.line(); k+1 < len(body) && !anyDigit(t) && len(strings.Fields(t)) <= mostOfTitle && vocabulary.DeviceIn(t) == vocabulary.ControlDevice {
			end = k
		}
	}
	if _, ok := lone(end - 1); ok { // no row of two cells above
		return len(body)
	}
	return end
}
