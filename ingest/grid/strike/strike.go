// Package strike says how much of a cell's text is struck through.
package strike

import (
	"strings"

	"lineaudit/ingest/grid"
)

// A Run is a piece of a cell's text in one style.
type Run struct {
	Text   string
	Struck bool
}

// Of judges the runs of one cell, in order. White space counts for neither
// side: a cell whose words are all struck is WholeStruck whatever its spaces
// are. The kept text is what is not struck, and "" unless part is struck.
func Of(runs []Run) (s grid.Strike, kept string) {
	var struck, plain bool
	for _, r := range runs {
		if strings.TrimSpace(r.Text) == "" {
			continue
		}
		if r.Struck {
			struck = true
		} else {
			plain = true
		}
	}
	switch {
	case !struck:
		return grid.NotStruck, ""
	case !plain:
		return grid.WholeStruck, ""
	}
	var b strings.Builder
	for _, r := range runs {
		if !r.Struck {
			b.WriteString(r.Text)
		}
	}
	return grid.PartStruck, b.String()
}
