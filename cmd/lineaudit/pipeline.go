package main

import (
	"context"
	"crypto/sha256"
	"errors"
	"fmt"
	"io/fs"
	"slices"
	"strings"
	"sync"
	"sync/atomic"
	"time"

	"lineaudit/audit"
	"lineaudit/audit/schedule"
	"lineaudit/ingest"
	"lineaudit/ingest/grid"
	"lineaudit/ingest/grid/source"
	"lineaudit/ingest/house"
	"lineaudit/report"
	"lineaudit/report/marked"
	"lineaudit/report/stage"
)

// A pipeline is one run over an archive.
type pipeline struct {
	set      *settings
	house    *schedule.HouseBook
	limits   *audit.Settings
	reading  source.Options
	files    []source.File
	earlier  []source.Results // results of earlier runs among them, left out
	shelf    *report.Shelf    // nil: results stay whole
	outlines bool             // jobs are only read: their outlines are kept, and nothing is audited
	outcomes []report.File    // one slot for each file: no lock, no order of arrival
	contents []content        // of each file that is a schedule, likewise
}

// A content is what the cells of a schedule say, and whether they stand in a
// marked copy of an earlier audit.
type content struct {
	sum    [sha256.Size]byte
	marked bool
}

// prepare reads the house book and lists the files. Without a pipeline the
// code is what to end with.
func prepare(ctx context.Context, set *settings, s screen) (*pipeline, int) {
	p := &pipeline{set: set, reading: source.Options{Encoding: set.encoding, Limits: set.limits, TimeLimit: set.timeLimit, Results: stage.Results}}
	if set.out != "" {
		p.reading.Exclude = append(p.reading.Exclude, set.out)
	}
	if set.house != "" {
		if liesBelow(set.out, set.house) {
			return nil, wrong(s, fmt.Errorf("--house %s lies in the output folder, which this run replaces: move it elsewhere first", set.house))
		}
		p.reading.Exclude = append(p.reading.Exclude, set.house)
		book, problems, err := readHouse(ctx, set.house, p.reading)
		if err != nil {
			return nil, wrong(s, err)
		}
		limits, more := audit.NewSettings(book)
		if problems = append(problems, more...); len(problems) > 0 {
			fmt.Fprint(s.err, houseProblems(set.house, problems))
			return nil, wrongUse
		}
		p.house, p.limits = book, limits
	} else {
		p.limits = audit.DefaultSettings()
	}
	listing, err := source.Find(ctx, set.paths, p.reading)
	switch {
	case errors.Is(err, context.Canceled):
		return nil, failed(s, err)
	case err != nil && errors.Is(err, fs.ErrNotExist):
		return nil, wrong(s, fmt.Errorf("%w%s", err, nearest(set.paths[0], []string{"read", "rules", "house", "schema"})))
	case err != nil:
		return nil, wrong(s, err)
	case len(listing.Files) == 0:
		return nil, failed(s, nothingToRead(set, listing))
	}
	p.files, p.earlier = listing.Files, listing.Results
	return p, done
}

// nothingToRead says why there is no file to read below the paths that were named.
func nothingToRead(set *settings, l *source.Listing) error {
	text := "no file to read in " + strings.Join(set.paths, ", ")
	switch {
	case len(l.Results) > 0:
		text += ": results of an earlier audit are left out; name the folder of the schedules"
	case slices.ContainsFunc(set.paths, func(path string) bool { return set.out != "" && samePlace(path, set.out) }):
		text += ": results go to it and are never read; name another folder with --out"
	case len(l.Skipped) > 0:
		text += fmt.Sprintf(": %s, %s", l.Skipped[0].Name, l.Skipped[0].Reason)
	}
	return errors.New(text)
}

// leftOut lists folders with results of earlier runs among the files, each as
// one that is no schedule.
func (p *pipeline) leftOut() (out []report.File) {
	for _, r := range p.earlier {
		out = append(out, report.File{Name: r.Folder, Kind: report.NotSchedule, Reason: fmt.Sprintf("%s of an earlier audit, left out", report.Plural(r.Files, "result"))})
	}
	return out
}

// earlierResult is why a file is no schedule.
const earlierResult = "a result of an earlier audit, no schedule"

// each runs a step for every index, on as many workers as the flags say. It
// stops early when the context ends.
func (p *pipeline) each(ctx context.Context, n int, step func(i int)) error {
	var next atomic.Int64
	var wg sync.WaitGroup
	for range min(p.set.workers, n) {
		wg.Go(func() {
			for {
				i := int(next.Add(1)) - 1
				if i >= n || ctx.Err() != nil {
					return
				}
				step(i)
			}
		})
	}
	wg.Wait()
	return ctx.Err()
}

// readAll reads and audits every file, and tells how far it is.
func (p *pipeline) readAll(ctx context.Context, s screen) error {
	p.outcomes, p.contents = make([]report.File, len(p.files)), make([]content, len(p.files))
	m := newMeter(s, p.set, len(p.files))
	defer m.stop()
	err := p.each(ctx, len(p.files), func(i int) {
		p.outcomes[i], p.contents[i] = p.one(ctx, p.files[i])
		m.add(&p.outcomes[i])
	})
	p.leaveOutMarked()
	return err
}

// leaveOutMarked counts no marked copy as a schedule whose original is among the
// files, and says what each of them is. One that somebody corrected says
// something else than its original and is a schedule.
func (p *pipeline) leaveOutMarked() {
	originals := map[[sha256.Size]byte]string{}
	for i, f := range p.outcomes {
		if c := p.contents[i]; f.Kind == report.Schedule && !c.marked && originals[c.sum] == "" {
			originals[c.sum] = f.Name
		}
	}
	for i := range p.outcomes {
		f, c := &p.outcomes[i], p.contents[i]
		switch original := originals[c.sum]; {
		case f.Kind != report.Schedule || !c.marked:
		case original != "":
			f.Kind, f.Results, f.Reason = report.NotSchedule, nil, "a marked copy of "+original+", left out"
		default:
			f.Reason = "a marked copy of an earlier audit; no other file says the same, so that it counts"
		}
	}
}

// one reads and audits one file, in the time that a file may take. A fault of
// ours costs that file alone.
func (p *pipeline) one(ctx context.Context, f source.File) (out report.File, said content) {
	defer func() {
		if v := recover(); v != nil {
			out = report.File{Name: f.Name, Kind: report.Unreadable, Reason: fmt.Sprintf("the audit failed on it (%v); please report the file", v)}
		}
	}()
	start := time.Now()
	limited, cancel := p.limited(ctx, start, 0)
	defer cancel()
	out = report.File{Name: f.Name}
	data, err := f.Bytes(limited, p.reading)
	if err != nil {
		out.Kind, out.Reason = report.Unreadable, told(err)
		if data, err := f.Bytes(ctx, p.reading); err == nil { // its time alone was up
			identify(data, &out)
		}
		return out, said
	}
	if report.IsResultText(data) {
		out.Kind, out.Reason = report.NotSchedule, earlierResult
		identify(data, &out)
		return out, said
	}
	book, err := source.Parse(limited, f.Name, data, p.reading)
	if err != nil {
		out.Kind, out.Reason = report.Unreadable, told(err)
		identify(data, &out)
		return out, said
	}
	plain := marked.WithoutFindings(book)
	said = content{marked.Content(plain), plain != book}
	return p.understood(ctx, start, out, plain), said
}

// understood fills in what is found out about a file, begun at start, from its cells.
func (p *pipeline) understood(ctx context.Context, start time.Time, out report.File, book *grid.Book) report.File {
	limited, longer := p.limited(ctx, start, rowsOf(book))
	defer longer()
	var results []*audit.Result
	read := p.interpret(limited, book, func(job *schedule.Job) error {
		if p.outlines {
			results = append(results, &audit.Result{Job: job.Outline()})
			return nil
		}
		result, err := audit.CheckUntil(func() error { return ended(limited) }, job, p.limits)
		if err != nil {
			return errors.New(told(err))
		}
		if p.shelf != nil {
			result = p.shelf.Keep(result)
		}
		result.Bytes = fmt.Sprintf("%s %d", book.SHA256, len(results))
		results = append(results, result)
		return nil
	})
	out.Kind, out.Reason = report.Kind(read.Kind), read.Reason
	out.Format, out.Size, out.SHA256 = string(book.Format), book.Size, book.SHA256
	out.NotTables = read.LeftOut
	if read.Kind != ingest.Unreadable {
		out.Results = results
	}
	return out
}

// perThousandRows is the time that a file gets beyond the limit of the flag for
// every 1,000 rows that it turned out to hold: about seven times what a register
// of 200,000 rows needs on an idle machine. Rows are bounded (grid.Limits), so
// that the time is.
const perThousandRows = time.Second

// allowed is the time that a file with so many rows may take.
func (s *settings) allowed(rows int) time.Duration {
	return s.timeLimit + time.Duration(rows)*perThousandRows/1000
}

// limited is a context that ends when a file with so many rows, begun at start,
// has had its time. Until its rows are read it has none.
func (p *pipeline) limited(ctx context.Context, start time.Time, rows int) (context.Context, context.CancelFunc) {
	allowed := p.set.allowed(rows)
	return context.WithDeadlineCause(ctx, start.Add(allowed), source.TimedOut(allowed))
}

// rowsOf is the number of rows of a book that hold something.
func rowsOf(b *grid.Book) (n int) {
	for _, s := range b.Sheets {
		n += len(s.Rows)
	}
	return n
}

// told is why a file could not be read and what to do about it.
func told(err error) string {
	var bad *grid.Unreadable
	if errors.As(err, &bad) && bad.Advice != "" {
		return bad.Reason + "; " + bad.Advice
	}
	return err.Error()
}

// identify tells which bytes a file had that was not read into cells.
func identify(data []byte, out *report.File) {
	out.Size, out.SHA256 = int64(len(data)), fmt.Sprintf("%x", sha256.Sum256(data))
}

// interpret turns cells into jobs and has each audited as soon as it is made, so
// that a long register is not held job by job; a fault of ours costs that file alone.
func (p *pipeline) interpret(ctx context.Context, book *grid.Book, check func(*schedule.Job) error) (read *ingest.File) {
	checking := false
	defer func() {
		if v := recover(); v != nil {
			if checking {
				panic(v) // it is told as a fault of the audit
			}
			read = &ingest.File{Name: book.File, Kind: ingest.Unreadable, Reason: fmt.Sprintf("the reader failed on it (%v); please report the file", v)}
		}
	}()
	if report.IsResult(book) {
		return &ingest.File{Name: book.File, Kind: ingest.NotASchedule, Reason: earlierResult}
	}
	if house.IsBook(book) {
		return &ingest.File{Name: book.File, Kind: ingest.NotASchedule, Reason: "a house book, no schedule; name it with --house where it is to count"}
	}
	return ingest.Read(book, ingest.Options{House: p.house, Units: p.set.units, Stop: func() error {
		if err := ended(ctx); err != nil {
			return errors.New(told(err))
		}
		return nil
	}, Each: func(job *schedule.Job) error {
		checking = true
		err := check(job)
		checking = false
		return err
	}})
}

// ended is why work under the context has to end, nil while it may go on.
func ended(ctx context.Context) error {
	if ctx.Err() == nil {
		return nil
	}
	return context.Cause(ctx)
}

// audit ranks the results and gathers what the reports need.
func (p *pipeline) audit() *report.Audit {
	a := &report.Audit{Files: append(p.outcomes, p.leftOut()...), For: p.set.reader, Date: p.set.date, Version: version, House: p.set.house, Shown: p.set.grade, Shelf: p.shelf}
	a.Archive = audit.Rank(a.Results())
	return a
}
