package main

import (
	"bufio"
	"cmp"
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"slices"
	"time"

	"lineaudit/audit"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/source"
	"lineaudit/report"
	"lineaudit/report/book"
	"lineaudit/report/data"
	"lineaudit/report/marked"
	"lineaudit/report/page"
	"lineaudit/report/scratch"
	"lineaudit/report/stage"
)

// write writes the whole output folder. It appears whole or not at all.
func write(ctx context.Context, p *pipeline, a *report.Audit) (err error) {
	var inputs []string
	for _, f := range p.files {
		if f.Path != "" {
			inputs = append(inputs, f.Path)
		}
	}
	out, err := stage.New(p.set.out, inputs)
	if err != nil {
		return err
	}
	defer func() {
		if err != nil {
			out.Discard()
		}
	}()
	copies, err := p.mark(ctx, a, out)
	if err != nil {
		return err
	}
	for _, t := range a.Tables() {
		if err := put(out, t.Name+".csv", func(w io.Writer) error { return data.WriteCSV(w, t) }); err != nil {
			return err
		}
	}
	for _, step := range []struct {
		name string
		fill func(io.Writer) error
	}{
		{"findings.json", func(w io.Writer) error { return data.WriteFindings(w, a) }},
		{"audit.xlsx", func(w io.Writer) error { return book.Write(w, a, copies) }},
		{"audit.html", func(w io.Writer) error { return page.Write(w, a, copies) }},
		{"house-todo.xlsx", func(w io.Writer) error { return writeTodo(w, a) }},
	} {
		if err := ctx.Err(); err != nil {
			return err
		}
		if err := put(out, step.name, step.fill); err != nil {
			return err
		}
	}
	if err := cmp.Or(ctx.Err(), a.Shelf.Err()); err != nil {
		return err
	}
	return out.Commit()
}

// resultNames are the files that every run writes.
func resultNames() []string {
	names := []string{"findings.json", "audit.xlsx", "audit.html", "house-todo.xlsx"}
	for _, t := range (&report.Audit{Archive: audit.Rank(nil)}).Tables() {
		names = append(names, t.Name+".csv")
	}
	return names
}

// put writes one file of the output folder.
func put(out *stage.Stage, name string, fill func(io.Writer) error) error {
	path, err := out.Path(name)
	if err != nil {
		return err
	}
	return fillFile(path, name, fill)
}

func fillFile(path, name string, fill func(io.Writer) error) error {
	f, err := os.Create(path)
	if err != nil {
		return fmt.Errorf("%s: %w", name, err)
	}
	w := bufio.NewWriterSize(f, 1<<16)
	err = fill(w)
	if err == nil {
		err = w.Flush()
	}
	if closed := f.Close(); err == nil {
		err = closed
	}
	if err != nil {
		return fmt.Errorf("%s could not be written: %w", name, unwritten(path, err))
	}
	return nil
}

// unwritten says what to do about an error met while the file at path was
// filled. The name of that file, an unfinished one, helps nobody.
func unwritten(path string, err error) error {
	var failed *fs.PathError
	switch {
	case !errors.As(err, &failed):
		return err
	case failed.Path != path:
		return scratch.Failed(err) // the workbook library has temporary files of its own
	}
	return fmt.Errorf("%w; make room on that disk, or name another folder with --out", failed.Err)
}

// mark writes the marked copies of all files with findings and returns where
// each is. A copy that cannot be made costs a line in the reports, never the run.
func (p *pipeline) mark(ctx context.Context, a *report.Audit, out *stage.Stage) (map[string]string, error) {
	type job struct {
		at       int // index of the file
		findings []*audit.Finding
		name     string
		path     string
		problem  error
		why      string
	}
	var jobs []*job
	var sources []string
	for _, f := range a.Files {
		sources = append(sources, f.Name)
	}
	names := report.MarkedNames(sources)
	for i, f := range a.Files {
		var fs []*audit.Finding
		for _, r := range f.Results {
			fs = append(fs, r.Findings...)
		}
		if len(fs) == 0 {
			continue
		}
		name := names[i]
		path, err := out.Path(name)
		if err != nil {
			return nil, err
		}
		slices.SortStableFunc(fs, func(x, y *audit.Finding) int { return cmp.Compare(y.Score, x.Score) })
		jobs = append(jobs, &job{at: i, findings: fs, name: name, path: path})
	}
	err := p.each(ctx, len(jobs), func(i int) {
		j := jobs[i]
		j.problem = fillFile(j.path, j.name, func(w io.Writer) error {
			var err error
			j.why, err = p.copy(ctx, w, p.files[j.at], a.Files[j.at].SHA256, j.findings)
			return err
		})
	})
	if err != nil {
		return nil, err
	}
	copies := map[string]string{}
	for _, j := range jobs {
		switch {
		case j.problem != nil:
			out.Drop(j.name)
			a.Unwritten = append(a.Unwritten, fmt.Sprintf("%s: no marked copy: %v", p.files[j.at].Name, j.problem))
		case j.why != "":
			a.Beside = append(a.Beside, fmt.Sprintf("%s: %s", p.files[j.at].Name, j.why))
		default:
			copies[p.files[j.at].Name] = j.name
		}
	}
	return copies, nil
}

// copy writes the marked copy of one file, which must be what was audited: the
// bytes with that checksum.
func (p *pipeline) copy(ctx context.Context, w io.Writer, f source.File, sum string, findings []*audit.Finding) (why string, err error) {
	defer func() {
		if v := recover(); v != nil {
			err = fmt.Errorf("marking failed (%v)", v)
		}
	}()
	start := time.Now()
	limited, cancel := p.limited(ctx, start, 0)
	defer cancel()
	content, err := f.Bytes(limited, p.reading)
	if err != nil {
		return "", err
	}
	b, err := source.Parse(limited, f.Name, content, p.reading)
	if err != nil {
		return "", err
	}
	if b.SHA256 != sum {
		return "", errors.New("the file has changed since it was audited; run again")
	}
	ctx, longer := p.limited(ctx, start, rowsOf(b))
	defer longer()
	again := func(copied []byte) (*grid.Book, error) { return source.Parse(ctx, f.Name, copied, p.reading) }
	return marked.Write(w, marked.Source{Book: b, Data: content, Read: again}, findings)
}
