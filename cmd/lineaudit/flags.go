package main

import (
	"errors"
	"fmt"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"time"

	"github.com/spf13/pflag"

	"lineaudit/audit"
	"lineaudit/ingest/grid"
	textfile "lineaudit/ingest/grid/text"
	"lineaudit/report"
)

// settings are what the flags say.
type settings struct {
	paths        []string
	out          string
	house        string
	dispositions string
	encoding     string
	units        string
	reader       report.Reader
	date         string
	grade        audit.Grade
	failAt       audit.Grade // meaningful when fails is set
	fails        bool
	workers      int
	limits       grid.Limits // of each file
	timeLimit    time.Duration
	quiet        bool
	progress     bool
	explain      string
}

// errHelp and errVersion end a run before it begins, without an error.
var errHelp, errVersion = errors.New("help"), errors.New("version")

const usage = `lineaudit reads device schedules of constant-voltage (70.7 V and 100 V) loudspeaker
systems and audits what every control, channel, amplifier and cable run carries.

Usage:
  lineaudit [flags] PATH...        audit files, folders and zips of schedules
  lineaudit read [flags] PATH...   show how each file was understood
  lineaudit rules [NAME]           what is checked, with limits and sources
  lineaudit house FILE.xlsx        write an empty house book with explanations
  lineaudit schema                 print the JSON schema of findings.json

Examples:
  lineaudit samples/archive
  lineaudit --for bid --out review tender.xlsx
  lineaudit --house house.xlsx --fail-at danger archive
  lineaudit read job.xlsx --explain C12

Flags:
`

// mostWorkers bounds the files that are open, and held in memory, at once.
const mostWorkers = 256

// parse reads the flags of the audit and of read.
func parse(args []string, reading bool) (*settings, string, error) {
	s := &settings{}
	fs := pflag.NewFlagSet("lineaudit", pflag.ContinueOnError)
	fs.SortFlags = false
	fs.SetOutput(nowhere{})
	var grade, failAt, reader string
	var help, version bool
	if !reading {
		fs.StringVarP(&s.out, "out", "o", "out", "`folder` for the results; it appears whole or not at all")
		fs.StringVar(&reader, "for", "service", "`reader` whom the audit is written for: service, bid or compliance")
		fs.StringVar(&grade, "grade", "caution", "lowest `grade` listed on the terminal: danger, fault, caution or unknown")
		fs.StringVar(&failAt, "fail-at", "", "exit with 1 when a finding is at or above this `grade`")
		fs.StringVar(&s.date, "date", "", "`date` of the audit, YYYY-MM-DD, printed in the reports; without it they leave a blank line")
		fs.StringVar(&s.dispositions, "dispositions", "", "the audit.xlsx (`file`) of an earlier run, moved out of the output folder, whose dispositions and remarks are carried over by finding id")
	} else {
		fs.StringVar(&s.explain, "explain", "", "tell the story of one `cell`, such as C12 or 'Rink!C12'")
	}
	fs.StringVar(&s.house, "house", "", "house `book`: a workbook or a folder of CSVs with names, limits and ratings")
	fs.StringVar(&s.units, "units", "", "`unit` of lengths that nothing else tells: m or ft")
	fs.StringVar(&s.encoding, "encoding", "", "`encoding` of text files that are not UTF-8, UTF-16 or Windows-1252, such as iso-8859-2")
	fs.IntVar(&s.workers, "workers", min(runtime.GOMAXPROCS(0), mostWorkers), "`number` of files read at once")
	s.limits = grid.DefaultLimits()
	var seconds int
	var size, unpacked int64
	fs.IntVar(&seconds, "time-limit", 60, "`seconds` that one file may take, and one more for every 1,000 rows that it holds; one that takes longer is listed as unreadable")
	fs.Int64Var(&size, "size-limit", s.limits.MaxBytes>>20, "largest file that is read, `MiB`")
	fs.Int64Var(&unpacked, "unpacked-limit", s.limits.MaxInflated>>20, "most that the parts of one workbook may unpack to, `MiB`")
	fs.IntVar(&s.limits.MaxCells, "cell-limit", s.limits.MaxCells, "most `cells` with content in one file")
	fs.BoolVar(&s.progress, "progress", false, "tell how far a long run is even where the error output is no terminal, every 10 seconds")
	fs.BoolVarP(&s.quiet, "quiet", "q", false, "print the summary line alone")
	fs.BoolVar(&version, "version", false, "print the version")
	fs.BoolVarP(&help, "help", "h", false, "print this help")
	usages := strings.ReplaceAll(fs.FlagUsagesWrapped(100), "[=true|false]", "             ")
	text := usage + usages + exitCodes
	if err := fs.Parse(args); err != nil {
		return nil, text, suggestFlag(fs, err)
	}
	switch {
	case help:
		return nil, text, errHelp
	case version:
		return nil, text, errVersion
	}
	if err := emptyFlag(fs); err != nil {
		return nil, text, err
	}
	var err error
	if !reading {
		if s.grade, err = gradeNamed("--grade", grade); err != nil {
			return nil, text, err
		}
		if s.fails = failAt != ""; s.fails {
			if s.failAt, err = gradeNamed("--fail-at", failAt); err != nil {
				return nil, text, err
			}
		}
		readers := []string{"service", "bid", "compliance"}
		if !slices.Contains(readers, reader) {
			return nil, text, oneOf("--for", reader, readers)
		}
		s.reader = report.Reader(reader)
		if s.date != "" {
			if _, err := time.Parse(time.DateOnly, s.date); err != nil {
				return nil, text, fmt.Errorf("--date %q is not a date such as 2026-11-25", s.date)
			}
		}
		s.out = filepath.Clean(s.out)
	}
	if s.units != "" && s.units != "m" && s.units != "ft" {
		return nil, text, oneOf("--units", s.units, []string{"m", "ft"})
	}
	if s.encoding != "" {
		if _, err := textfile.Encoding(s.encoding); err != nil {
			return nil, text, fmt.Errorf("--encoding: %w", err)
		}
	}
	for _, l := range []struct {
		flag  string
		value int64
		most  int64
	}{{"workers", int64(s.workers), mostWorkers}, {"time-limit", int64(seconds), 86_400}, {"size-limit", size, 4096}, {"unpacked-limit", unpacked, 16_384}, {"cell-limit", int64(s.limits.MaxCells), 1 << 30}} {
		if l.value < 1 || l.value > l.most {
			return nil, text, fmt.Errorf("--%s %d: from 1 to %d", l.flag, l.value, l.most)
		}
	}
	s.timeLimit, s.limits.MaxBytes, s.limits.MaxInflated = time.Duration(seconds)*time.Second, size<<20, unpacked<<20
	if s.paths = fs.Args(); len(s.paths) == 0 {
		return nil, text, errors.New("name at least one file or folder of schedules")
	}
	if slices.Contains(s.paths, "") {
		return nil, text, errors.New("the name of a file or folder is empty")
	}
	return s, text, nil
}

// emptyFlag refuses a flag with nothing behind it: a script whose variable was not
// set would else go without it and not know.
func emptyFlag(fs *pflag.FlagSet) (err error) {
	fs.Visit(func(f *pflag.Flag) {
		if err == nil && strings.TrimSpace(f.Value.String()) == "" {
			err = fmt.Errorf("--%s is empty; give it a value or leave it out", f.Name)
		}
	})
	return err
}

const exitCodes = `
Exit codes: 0 done; 1 findings at or above --fail-at; 2 wrong use; 3 something could not be read,
checked or written (1 beats 3).
`

func gradeNamed(flag, name string) (audit.Grade, error) {
	names := []string{"unknown", "caution", "fault", "danger"}
	if i := slices.Index(names, name); i >= 0 {
		return audit.Grade(i), nil
	}
	slices.Reverse(names)
	return 0, oneOf(flag, name, names)
}

// oneOf says which words are valid and which is the nearest.
func oneOf(flag, got string, valid []string) error {
	return fmt.Errorf("%s %q: one of %s%s", flag, got, strings.Join(valid, ", "), nearest(got, valid))
}

// nearest suggests the valid word that a mistyped one is close to.
func nearest(got string, valid []string) string {
	best, at := 3, -1
	for i, v := range valid {
		if d := distance(strings.ToLower(got), v); d < best {
			best, at = d, i
		}
	}
	if at < 0 {
		return ""
	}
	return fmt.Sprintf("; did you mean %s?", valid[at])
}

// distance is the number of letters to change, add or drop.
func distance(a, b string) int {
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := range len(a) {
		last := row[0]
		row[0] = i + 1
		for j := range len(b) {
			cost := last
			if a[i] != b[j] {
				cost++
			}
			last = row[j+1]
			row[j+1] = min(cost, row[j]+1, last+1)
		}
	}
	return row[len(b)]
}

// suggestFlag adds the nearest flag to the error for an unknown one.
func suggestFlag(fs *pflag.FlagSet, err error) error {
	var unknown *pflag.NotExistError
	if !errors.As(err, &unknown) {
		return err
	}
	var names []string
	fs.VisitAll(func(f *pflag.Flag) { names = append(names, f.Name) })
	return fmt.Errorf("%w%s", err, strings.Replace(nearest(unknown.GetSpecifiedName(), names), "did you mean ", "did you mean --", 1))
}

type nowhere struct{}

func (nowhere) Write(p []byte) (int, error) { return len(p), nil }
