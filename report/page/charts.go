package page

import (
	"fmt"
	"html"
	"html/template"
	"strings"

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
	const labelW, barW, valueW, lineH = 250.0, 380.0, 230.0, 26.0 // valueW holds figures of all series in words
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
	fmt.Fprintf(&b, `<svg viewBox="0 0 %.0f %.0f" role="img" aria-label="%s"><title>%s</title>`, labelW+barW+valueW, height, html.EscapeString(title), html.EscapeString(title))
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
			fmt.Fprintf(&b, `<text x="%.1f" y="%.1f" class="value">%s W</text>`, x+6, y+18, strings.Join(words, " of "))
		} else {
			fmt.Fprintf(&b, `<text x="%.1f" y="%.1f" class="value">%s</text>`, x+6, y+16, strings.Join(words, ", "))
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
