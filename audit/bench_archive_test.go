//go:build unix

package audit

import (
	"archive/zip"
	"context"
	"io"
	"path/filepath"
	"runtime"
	"syscall"
	"testing"
	"time"

	"lineaudit/audit/schedule"
	"lineaudit/ingest"
	"lineaudit/ingest/grid/source"
	"lineaudit/samples/generate"
)

// thousandJobs is the size of the archive that is timed; it repeats a tenth of
// as many workbooks.
const thousandJobs = 1000

// archiveOf writes workbooks of about 100 loudspeakers in every layout, and
// reads them: their files and their jobs.
func archiveOf(b *testing.B, jobs int) (files []string, out []*schedule.Job) {
	b.Helper()
	dir := b.TempDir()
	if _, err := generate.Write(dir, generate.Config{Seed: 1, Jobs: jobs, Loudspeakers: 100, Noise: 1, Faults: 0.3, Layouts: []generate.Layout{"flat", "sheets", "sections", "above", "titleblock"}}); err != nil {
		b.Fatal(err)
	}
	listing, err := source.Find(context.Background(), []string{dir}, source.Options{})
	if err != nil {
		b.Fatal(err)
	}
	for _, f := range listing.Files {
		book, err := f.Read(context.Background(), source.Options{})
		if err != nil {
			b.Fatal(err)
		}
		files = append(files, filepath.Join(dir, filepath.Base(f.Name)))
		out = append(out, ingest.Read(book, ingest.Options{}).Jobs...)
	}
	return files, out
}

// inflate unpacks every part of a workbook and looks at none: the floor below
// which no reader can go.
func inflate(b *testing.B, path string) {
	z, err := zip.OpenReader(path)
	if err != nil {
		b.Fatal(err)
	}
	defer z.Close()
	for _, part := range z.File {
		r, err := part.Open()
		if err != nil {
			b.Fatal(err)
		}
		if _, err := io.Copy(io.Discard, r); err != nil {
			b.Fatal(err)
		}
		r.Close()
	}
}

// processor is the processor time that the process has used, garbage collection
// included: what else the machine does weighs little on it.
func processor(b *testing.B) time.Duration {
	var used syscall.Rusage
	if err := syscall.Getrusage(syscall.RUSAGE_SELF, &used); err != nil {
		b.Fatal(err)
	}
	return time.Duration(used.Utime.Nano() + used.Stime.Nano())
}

// BenchmarkThousandJobs audits 1,000 jobs of 100 loudspeakers, rules and
// remedies apart, beside inflating their workbooks. The goal is rules/inflate
// of at most 0.3.
func BenchmarkThousandJobs(b *testing.B) {
	files, jobs := archiveOf(b, thousandJobs/10)
	s := DefaultSettings()
	took := map[string]time.Duration{}
	speakers := 0
	timed := func(name string, do func(i int)) {
		runtime.GC()
		start := processor(b)
		for i := range thousandJobs {
			do(i)
		}
		took[name] += processor(b) - start
	}
	for b.Loop() {
		timed("inflate", func(i int) { inflate(b, files[i%len(files)]) })
		timed("rules", func(i int) {
			r, _ := examine(nil, jobs[i%len(jobs)], s)
			speakers += loudspeakers(r.Job)
		})
		timed("both", func(i int) { Check(jobs[i%len(jobs)], s) })
	}
	each := func(d time.Duration) float64 { return float64(d.Nanoseconds()) / float64(b.N*thousandJobs) / 1e6 }
	b.ReportMetric(each(took["inflate"]), "inflate-ms/job")
	b.ReportMetric(each(took["rules"]), "rules-ms/job")
	b.ReportMetric(each(took["both"]-took["rules"]), "remedies-ms/job")
	b.ReportMetric(float64(took["rules"])/float64(took["inflate"]), "rules/inflate")
	b.ReportMetric(float64(speakers)/float64(b.N*thousandJobs), "loudspeakers/job")
}
