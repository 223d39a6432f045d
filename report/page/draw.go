package page

import (
	"fmt"
	"html"
	"html/template"
	"math"
	"strings"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
	"lineaudit/report"
)

// A chart is a drawing with the words that say the same.
type chart struct {
	Title, Words string
	Drawing      template.HTML
}

func charts(a *report.Audit) []chart {
	var out []chart
	add := func(title, words string, series []string, bars []report.Bar, stacked bool) {
		if len(bars) > 0 {
			out = append(out, chart{title, words, template.HTML(barChart(title, series, bars, stacked))})
		}
	}
	add("Sites by risk", "Score of the worst sites, 0 to 100.", []string{"score"}, a.BySite(10), true)
	add("Findings by rule", "How many findings each rule has, by grade.", []string{"danger", "fault", "caution", "unknown"}, a.ByRule(), true)
	add("Load against rating", "The fullest channels and controls, watts of load above watts of rating.", []string{"load", "rated"}, a.Loads(12), false)
	return out
}

// barChart draws horizontal bars with their figures: stacked series, or one bar for each.
func barChart(title string, series []string, bars []report.Bar, stacked bool) string {
	const labelW, barW, lineH = 250.0, 380.0, 26.0
	most := 0.0
	for _, b := range bars {
		total := 0.0
		for _, v := range b.Parts {
			total += v
			if !stacked {
				most = max(most, v)
			}
		}
		if stacked {
			most = max(most, total)
		}
	}
	if most == 0 {
		most = 1
	}
	rows := 1
	if !stacked {
		rows = len(series)
	}
	height := float64(len(bars))*(lineH+float64(rows-1)*12) + 26
	var b strings.Builder
	fmt.Fprintf(&b, `<svg viewBox="0 0 720 %.0f" role="img" aria-label="%s"><title>%s</title>`, height, html.EscapeString(title), html.EscapeString(title))
	y := 4.0
	for _, bar := range bars {
		fmt.Fprintf(&b, `<text x="%.0f" y="%.1f" text-anchor="end" class="label">%s<title>%s</title></text>`, labelW-8, y+15, html.EscapeString(report.Shorten(report.Plain(bar.Label), 38)), html.EscapeString(report.Plain(bar.Label)))
		x := labelW
		var words []string
		for k, v := range bar.Parts {
			w := v / most * barW
			switch {
			case stacked && v > 0:
				fmt.Fprintf(&b, `<rect x="%.1f" y="%.1f" width="%.1f" height="18" class="s-%s"><title>%s: %s</title></rect>`, x, y+2, w, series[k], series[k], report.Figure(v))
				x += w
				words = append(words, figureWords(series, k, v))
			case !stacked:
				fmt.Fprintf(&b, `<rect x="%.1f" y="%.1f" width="%.1f" height="13" class="s-%s"><title>%s: %s W</title></rect>`, x, y+2+float64(k)*14, w, series[k], series[k], report.Figure(v))
				words = append(words, report.Figure(v))
			}
		}
		if !stacked {
			x += max(bar.Parts[0], bar.Parts[len(bar.Parts)-1]) / most * barW
			fmt.Fprintf(&b, `<text x="%.1f" y="%.1f" class="value">%s W</text>`, min(x+6, 640), y+18, strings.Join(words, " of "))
		} else {
			fmt.Fprintf(&b, `<text x="%.1f" y="%.1f" class="value">%s</text>`, min(x+6, 640), y+16, strings.Join(words, ", "))
		}
		y += lineH + float64(rows-1)*12
	}
	if len(series) > 1 {
		x := labelW
		for _, s := range series {
			fmt.Fprintf(&b, `<rect x="%.0f" y="%.1f" width="12" height="12" class="s-%s"/><text x="%.0f" y="%.1f" class="value">%s</text>`, x, y+4, s, x+16, y+14, s)
			x += 90
		}
	}
	b.WriteString(`</svg>`)
	return b.String()
}

func figureWords(series []string, k int, v float64) string {
	if len(series) == 1 {
		return report.Figure(v)
	}
	return report.Figure(v) + " " + series[k]
}

// pictureOf draws the network that a finding on a line rests on; the key is
// the same for findings on the same line.
func pictureOf(f *audit.Finding, r *audit.Result) (key, drawing string) {
	if f.Rule.Name != "line-loss" {
		return "", ""
	}
	for i := range r.Lines {
		l := &r.Lines[i]
		if len(l.Nodes) > 1 && len(l.Nodes) <= 400 && restsOn(f, l) {
			return l.At.File + "|" + l.At.String() + "|" + l.Name, network(l)
		}
	}
	return "", ""
}

func restsOn(f *audit.Finding, l *audit.Line) bool {
	same := func(a, b schedule.Ref) bool { return a.File == b.File && a.Sheet == b.Sheet && a.Row == b.Row }
	if same(f.At, l.At) {
		return true
	}
	for _, c := range l.Cables {
		if same(f.At, c.At) {
			return true
		}
		for _, e := range f.Cells {
			if same(e.At, c.At) {
				return true
			}
		}
	}
	return false
}

// network draws a solved tree: the amplifier at the left, length along the
// line to the right, one row for each branch, volts and loss at every node.
func network(l *audit.Line) string {
	n := len(l.Nodes)
	children := make([][]int, n)
	var roots []int
	distance := make([]float64, n)
	for i, node := range l.Nodes {
		if node.Parent < 0 || node.Parent >= n {
			roots = append(roots, i)
			continue
		}
		children[node.Parent] = append(children[node.Parent], i)
	}
	row := make([]int, n)
	rows, far := 0, 0.0
	var order []int
	stack := make([]int, 0, n)
	for i := len(roots) - 1; i >= 0; i-- {
		stack = append(stack, roots[i])
	}
	for len(stack) > 0 { // depth first; the first child stays on its parent's row
		i := stack[len(stack)-1]
		stack = stack[:len(stack)-1]
		order = append(order, i)
		p := l.Nodes[i].Parent
		switch {
		case p < 0 || p >= n:
			row[i] = rows
			rows++
		case children[p][0] == i:
			row[i], distance[i] = row[p], distance[p]+l.Nodes[i].LengthM
		default:
			row[i], distance[i] = rows, distance[p]+l.Nodes[i].LengthM
			rows++
		}
		far = max(far, distance[i])
		for k := len(children[i]) - 1; k >= 0; k-- {
			stack = append(stack, children[i][k])
		}
	}
	if far == 0 {
		far = 1
	}
	deepest := 0
	depth := make([]int, n)
	for _, i := range order {
		if p := l.Nodes[i].Parent; p >= 0 && p < n {
			depth[i] = depth[p] + 1
		}
		deepest = max(deepest, depth[i])
	}
	width := math.Max(640, float64(deepest+1)*92)
	x := func(i int) float64 { // half by length, half by order, so that labels keep apart
		return 30 + (width-130)*(0.35*distance[i]/far+0.65*float64(depth[i])/float64(max(deepest, 1)))
	}
	const rowH = 64.0
	y := func(i int) float64 { return 34 + float64(row[i])*rowH }
	var b strings.Builder
	name := "Network of " + report.Plain(l.Name)
	fmt.Fprintf(&b, `<svg viewBox="0 0 %.0f %.0f" style="min-width:%.0fpx" role="img" aria-label="%s"><title>%s</title>`, width, 40+float64(rows)*rowH, math.Min(width, 1600), html.EscapeString(name), html.EscapeString(name))
	for _, i := range order {
		p := l.Nodes[i].Parent
		if p < 0 || p >= n {
			continue
		}
		fmt.Fprintf(&b, `<path d="M%.1f %.1f V%.1f H%.1f" class="cable"><title>%s m, %s mm2, carries %s W</title></path>`, x(p), y(p), y(i), x(i),
			report.Figure(l.Nodes[i].LengthM), report.Figure(l.Nodes[i].AreaMM2), report.Figure(l.Nodes[i].ThroughW))
	}
	worst := -1
	for _, i := range order {
		if l.Nodes[i].Loudspeakers > 0 && (worst < 0 || l.Nodes[i].LossDB > l.Nodes[worst].LossDB) {
			worst = i
		}
	}
	for _, i := range order {
		node := l.Nodes[i]
		class := node.Kind
		if i == worst {
			class += " worst"
		}
		what := node.Kind
		if node.Loudspeakers > 1 {
			what = fmt.Sprintf("%d loudspeakers", node.Loudspeakers)
		}
		fmt.Fprintf(&b, `<g class="node %s"><title>%s %s: %s V, %s dB, %s W</title>`, html.EscapeString(class), html.EscapeString(what), html.EscapeString(report.Plain(node.Place)),
			report.Figure(node.Volts), report.Figure(node.LossDB), report.Figure(node.Watts))
		switch node.Kind {
		case "amplifier", "control":
			fmt.Fprintf(&b, `<rect x="%.1f" y="%.1f" width="14" height="14"/>`, x(i)-7, y(i)-7)
		case "loudspeaker":
			fmt.Fprintf(&b, `<circle cx="%.1f" cy="%.1f" r="7"/>`, x(i), y(i))
		default:
			fmt.Fprintf(&b, `<circle cx="%.1f" cy="%.1f" r="3"/>`, x(i), y(i))
		}
		fmt.Fprintf(&b, `<text x="%.1f" y="%.1f" text-anchor="middle" class="label">%s</text>`, x(i), y(i)-12, html.EscapeString(report.Shorten(report.Plain(node.Place), 14)))
		fmt.Fprintf(&b, `<text x="%.1f" y="%.1f" text-anchor="middle" class="value">%s V</text><text x="%.1f" y="%.1f" text-anchor="middle" class="value">%s dB</text></g>`,
			x(i), y(i)+20, report.Figure(node.Volts), x(i), y(i)+33, report.Figure(node.LossDB))
	}
	b.WriteString(`</svg>`)
	return b.String()
}
