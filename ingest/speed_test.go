package ingest

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/layout"
)

// manyJobs draws a register of jobs with rows of loudspeakers each.
func manyJobs(jobs, rows int) *layout.Table {
	var b strings.Builder
	b.WriteString("job number | tag | room | zone | tap | control | channel | length | gauge\n")
	for j := range jobs {
		for r := range rows {
			fmt.Fprintf(&b, "J%d | LS-%d | Room %d | Zone %d | %d W | VC-%d | A%d.%d | %d m | 2x1.5 mm²\n", j, r, r/3, r/10, 1+r%10, r/10, 1+r/40, 1+r/10%4, 5+r%7)
		}
	}
	return draw(layout.Loudspeakers, "All", b.String())
}

// A register of 200,000 rows is built in time that grows with its rows: ten
// times the rows of a tenth, give or take what a busy machine does. Both are
// timed in the same test, each as the best of a few.
func TestLargeRegister(t *testing.T) {
	if testing.Short() {
		t.Skip("takes seconds")
	}
	n := 2000
	if slower > 1 {
		n = 100
	}
	few := manyJobs(n/10, 100)
	tenth := time.Duration(math.MaxInt64)
	for range 3 {
		start := time.Now()
		jobsOf(&Options{}, few)
		tenth = min(tenth, time.Since(start))
	}
	table := manyJobs(n, 100)
	took := time.Duration(math.MaxInt64)
	var jobs []*schedule.Job
	for range 2 {
		start := time.Now()
		jobs = jobsOf(&Options{}, table)
		took = min(took, time.Since(start))
	}
	t.Logf("%d jobs in %v, a tenth in %v", len(jobs), took, tenth)
	if len(jobs) != n || len(jobs[n-1].Loudspeakers) != 100 {
		t.Fatalf("%d jobs", len(jobs))
	}
	if took > 30*tenth || took > slower*2*time.Minute { // quadratic time would be 100 times
		t.Errorf("took %v, a tenth of it %v: more than its rows", took, tenth)
	}
}

func BenchmarkBuild(b *testing.B) {
	for _, rows := range []int{100, 1000, 10000} {
		table := draw(layout.Loudspeakers, "L", strings.ReplaceAll(drawn(rows), "job number | ", ""))
		b.Run(fmt.Sprint(rows), func(b *testing.B) {
			for b.Loop() {
				jobsOf(&Options{}, table)
			}
			b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N*rows), "ns/row")
		})
	}
}

func drawn(rows int) string {
	var b strings.Builder
	b.WriteString("tag | room | zone | tap | control | channel | length | gauge\n")
	for r := range rows {
		fmt.Fprintf(&b, "LS-%d | Room %d | Zone %d | %d W | VC-%d | A%d.%d | %d m | 2x1.5 mm²\n", r, r/3, r/10, 1+r%10, r/10, 1+r/40, 1+r/10%4, 5+r%7)
	}
	return b.String()
}
