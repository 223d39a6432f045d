package page

import (
	"fmt"
	"html"
	"math"
	"strings"

	"lineaudit/audit"
	"lineaudit/report"
)

// mostNodes is how many points a line may have to be drawn.
const mostNodes = 400

// pictureOf draws the network that a finding on a line rests on; the key is
// the same for findings on the same line.
func pictureOf(f *audit.Finding, r *audit.Result) (key, drawing string) {
	for i := range r.Lines {
		l := &r.Lines[i]
		if len(l.Nodes) > 1 && len(l.Nodes) <= mostNodes && f.RestsOn(l) {
			return l.At.File() + "|" + l.At.String() + "|" + l.Name, network(l)
		}
	}
	return "", ""
}

// A plan says where the points of a line are drawn: the amplifier at the left,
// the first branch straight on, every other branch on a row of its own below.
type plan struct {
	line          *audit.Line
	order         []int // parents first
	x, y          []float64
	width, height float64
	worst         int // the loudspeaker that loses most, -1 if there is none
}

const (
	rowHeight = 70.0
	stepWidth = 104.0 // from point to point, at least three quarters of it
	edgeLeft  = 46.0
	edgeTop   = 38.0
)

// lay places the points: a quarter by length, the rest by order, so that labels keep apart.
func lay(l *audit.Line) plan {
	n := len(l.Nodes)
	p := plan{line: l, x: make([]float64, n), y: make([]float64, n), worst: -1}
	children := make([][]int, n)
	var stack []int
	for i := n - 1; i >= 0; i-- {
		if parent := l.Nodes[i].Parent; parent >= 0 && parent < n && parent != i {
			children[parent] = append(children[parent], i) // the last first
		} else {
			stack = append(stack, i)
		}
	}
	row, depth, distance := make([]int, n), make([]int, n), make([]float64, n)
	rows, deepest, far := 0, 1, 1e-9
	for len(stack) > 0 {
		i := stack[len(stack)-1]
		stack = stack[:len(stack)-1]
		p.order = append(p.order, i)
		parent := l.Nodes[i].Parent
		switch {
		case parent < 0 || parent >= n || parent == i:
			row[i] = rows
			rows++
		default:
			depth[i], distance[i] = depth[parent]+1, distance[parent]+l.Nodes[i].LengthM
			if first := children[parent][len(children[parent])-1]; first == i {
				row[i] = row[parent]
			} else {
				row[i] = rows
				rows++
			}
		}
		deepest, far = max(deepest, depth[i]), max(far, distance[i])
		if node := l.Nodes[i]; node.Loudspeakers > 0 && (p.worst < 0 || node.LossDB > l.Nodes[p.worst].LossDB) {
			p.worst = i
		}
		stack = append(stack, children[i]...)
	}
	inner := math.Max(560, float64(deepest)*stepWidth)
	for _, i := range p.order {
		p.x[i] = edgeLeft + inner*(0.25*distance[i]/far+0.75*float64(depth[i])/float64(deepest))
		p.y[i] = edgeTop + float64(row[i])*rowHeight
	}
	p.width, p.height = inner+2*edgeLeft, edgeTop+float64(rows)*rowHeight
	return p
}

// network draws a solved tree with volts and loss at every point.
func network(l *audit.Line) string {
	p := lay(l)
	var b strings.Builder
	name := "Network of " + report.Plain(l.Name)
	if p.worst >= 0 {
		w := l.Nodes[p.worst]
		name += fmt.Sprintf(": the worst loudspeaker is %s with %s V, %s dB", nameOf(w), report.Figure(w.Volts), decibels(w.LossDB))
	}
	fmt.Fprintf(&b, `<svg viewBox="0 0 %[1]s %[2]s" width="%[1]s" height="%[2]s" class="network" role="img" aria-label="%[3]s"><title>%[3]s</title>`, at(p.width), at(p.height), html.EscapeString(name))
	for _, i := range p.order {
		parent := l.Nodes[i].Parent
		if parent < 0 || parent >= len(l.Nodes) || parent == i {
			continue
		}
		p.cable(&b, parent, i)
	}
	for _, i := range p.order {
		p.point(&b, i)
	}
	b.WriteString(`</svg>`)
	return b.String()
}

// cable draws the segment that leads to a point; a branch leaves its parent
// beside the figures that stand below it.
func (p *plan) cable(b *strings.Builder, parent, i int) {
	node := p.line.Nodes[i]
	title := fmt.Sprintf("%s m, %s mm2, carries %s W", report.Figure(node.LengthM), report.Figure(node.AreaMM2), report.Figure(node.ThroughW))
	from := p.x[parent]
	if p.y[i] != p.y[parent] {
		from += 32
	}
	fmt.Fprintf(b, `<path d="M%s %s H%s V%s H%s" class="cable"><title>%s</title></path>`, at(p.x[parent]), at(p.y[parent]), at(from), at(p.y[i]), at(p.x[i]), title)
	if room := p.x[i] - from; room > 60 && node.LengthM > 0 {
		fmt.Fprintf(b, `<text x="%s" y="%s" text-anchor="middle" class="length">%s m</text>`, at(from+room/2), at(p.y[i]+13), report.Figure(node.LengthM))
	}
}

// point draws one point with its name, volts and loss.
func (p *plan) point(b *strings.Builder, i int) {
	node := p.line.Nodes[i]
	x, y := p.x[i], p.y[i]
	class := node.Kind
	if i == p.worst {
		class += " worst"
	}
	name := nameOf(node)
	fmt.Fprintf(b, `<g class="node %s"><title>%s %s: %s V, %s dB, %s W</title>`, html.EscapeString(class), html.EscapeString(node.Kind), html.EscapeString(name),
		report.Figure(node.Volts), decibels(node.LossDB), report.Figure(node.Watts))
	switch node.Kind {
	case "amplifier":
		fmt.Fprintf(b, `<rect x="%s" y="%s" width="14" height="14"/>`, at(x-7), at(y-7))
	case "control":
		fmt.Fprintf(b, `<path d="M%s %s l8 8 l-8 8 l-8 -8 z"/>`, at(x), at(y-8))
	case "loudspeaker":
		fmt.Fprintf(b, `<circle cx="%s" cy="%s" r="7"/>`, at(x), at(y))
	default:
		fmt.Fprintf(b, `<circle cx="%s" cy="%s" r="3"/>`, at(x), at(y))
	}
	label := report.Shorten(name, 12)
	if node.Loudspeakers > 1 {
		label = report.Shorten(name, 9) + fmt.Sprintf(" ×%d", node.Loudspeakers)
	}
	fmt.Fprintf(b, `<text x="%s" y="%s" text-anchor="middle" class="label">%s</text>`, at(x), at(y-13), html.EscapeString(label))
	if node.Kind == "joint" {
		b.WriteString(`</g>`)
		return
	}
	fmt.Fprintf(b, `<text x="%[1]s" y="%[2]s" text-anchor="middle" class="value">%[3]s V</text><text x="%[1]s" y="%[4]s" text-anchor="middle" class="value">%[5]s dB</text></g>`,
		at(x), at(y+20), report.Figure(node.Volts), at(y+33), decibels(node.LossDB))
}

// nameOf is the name of a point without the word for what it is.
func nameOf(n audit.Node) string {
	name := strings.TrimPrefix(report.Plain(n.Place), n.Kind+" ")
	return strings.TrimSpace(strings.TrimPrefix(name, "channel "))
}

// decibels always has two decimals, as limits have.
func decibels(v float64) string { return fmt.Sprintf("%.2f", v) }

// at writes a coordinate.
func at(v float64) string { return report.Number(math.Round(v*10) / 10) }
