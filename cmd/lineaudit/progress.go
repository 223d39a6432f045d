package main

import (
	"fmt"
	"strings"
	"sync"
	"sync/atomic"
	"time"

	"lineaudit/report"
)

// A meter tells how far the reading of an archive is: on a terminal in one line
// that is written over and over, elsewhere in a line now and then.
type meter struct {
	total                 int
	files, rows, findings atomic.Int64
	start                 time.Time
	done                  chan struct{}
	shown                 sync.WaitGroup
}

const (
	quickEnough  = 700 * time.Millisecond // a run that needs no progress
	onTerminal   = 300 * time.Millisecond
	notATerminal = 10 * time.Second
)

// newMeter begins to tell of so many files on the screen's error output, if that is a
// terminal or the flag asks for it.
func newMeter(s screen, set *settings, total int) *meter {
	m := &meter{total: total, start: time.Now(), done: make(chan struct{})}
	terminal := s.errWidth > 0
	if set.quiet || !terminal && !set.progress {
		return m
	}
	m.shown.Go(func() {
		wait := quickEnough
		for {
			select {
			case <-m.done:
				if terminal {
					fmt.Fprint(s.err, "\r\x1b[K")
				}
				return
			case <-time.After(wait):
			}
			line := m.line(time.Since(m.start))
			if wait = notATerminal; !terminal {
				fmt.Fprintln(s.err, line)
				continue
			}
			wait = onTerminal
			fmt.Fprintf(s.err, "\r%s\x1b[K", report.Shorten(line, s.errWidth-1))
		}
	})
	return m
}

// add counts a file that was read and audited.
func (m *meter) add(f *report.File) {
	m.files.Add(1)
	for _, r := range f.Results {
		m.rows.Add(int64(r.Job.RowsRead))
		m.findings.Add(int64(len(r.Findings)))
	}
}

// stop ends the telling and takes the line away.
func (m *meter) stop() {
	close(m.done)
	m.shown.Wait()
}

// line is what is told after some time.
func (m *meter) line(took time.Duration) string {
	files := m.files.Load()
	parts := []string{fmt.Sprintf("%d of %s", files, report.Plural(m.total, "file")), report.Plural(int(m.rows.Load()), "row"), report.Plural(int(m.findings.Load()), "finding")}
	if left := int64(m.total) - files; files > 0 && left > 0 {
		parts = append(parts, "about "+roughly(time.Duration(float64(took)*float64(left)/float64(files)))+" left")
	}
	return strings.Join(parts, ", ")
}

// roughly is a time as exact as a guess can be.
func roughly(d time.Duration) string {
	switch {
	case d < 10*time.Second:
		return "a few seconds"
	case d < 100*time.Second:
		return fmt.Sprintf("%d seconds", int(d.Seconds()/10+0.5)*10)
	case d < 100*time.Minute:
		return fmt.Sprintf("%d minutes", int(d.Minutes()+0.5))
	}
	return fmt.Sprintf("%d hours", int(d.Hours()+0.5))
}
