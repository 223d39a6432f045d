// Package generate writes archives of invented device schedules, of any
// size, in many hands, with the truth about them worked out on its own. It
// knows nothing of the program that is tested with them.
package generate

import (
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"

	"lineaudit/samples/answer"
	"lineaudit/samples/book"
)

// Units is how a hand writes lengths and conductors.
type Units string

// Unit systems. Mixed uses metres with AWG or feet with mm2, and at the
// highest noise both lengths in one column, each with its unit.
const (
	Imperial Units = "imperial"
	Metric   Units = "metric"
	Mixed    Units = "mixed"
)

// Format is the kind of file written.
type Format string

// File kinds. The last three need LibreOffice on the path.
const (
	XLSX       Format = "xlsx"
	CSV        Format = "csv"
	ODS        Format = "ods"
	XLS        Format = "xls"
	OfficeXLSX Format = "office-xlsx"
)

// Config says what to write. The zero value of a field takes the default
// named beside it.
type Config struct {
	Seed         uint64
	Jobs         int      // 1
	Loudspeakers int      // a job, about; 40
	Layouts      []Layout // taken in turn; all
	Units        Units    // Metric, or Imperial where the language is English
	Languages    []string // taken in turn; "en"
	Noise        int      // 0 clean to 3 noisiest
	LineV        float64  // 70.7 or 100; by units
	Faults       float64  // share of jobs with planted faults, 0 to 1
	Rules        []string // rules to plant; all
	Format       Format   // XLSX
}

// Layout names a way of laying out a schedule.
type Layout string

// drawing is one job being written: who writes, into what, and what is true.
type drawing struct {
	*hand
	file  string
	book  *book.Book
	truth answer.Archive
	drawn map[string]bool // the fields that loudspeakers were written with
}

type layout struct {
	name Layout
	draw func(d *drawing, jobs []*job)
	// uniform layouts have room for one kind of loudspeaker a zone.
	uniform bool
	// single layouts give every loudspeaker a row of its own.
	single bool
	// jobs is how many jobs share one file, when it is not one.
	jobs int
	// controls tells whether the layout has a place for controls.
	controls bool
	// cables tells whether the layout has a place for cables.
	cables bool
	// series tells whether a control can name the one that feeds it.
	series bool
	// total tells whether totals are written whatever the noise.
	total bool
	// frames tells whether amplifiers can state what they give in all.
	frames bool
	// ampRows tells whether an amplifier's channels share one rating.
	ampRows bool
	// taps tells whether the taps that a model offers are listed.
	taps bool
	// fixedTap tells whether taps are stated by type, not by loudspeaker.
	fixedTap bool
	// tags tells whether loudspeakers bear tags.
	tags bool
	// oneAmp layouts state one rating and one cable for the whole job.
	oneAmp bool
	// inCSV names the layout that takes its place in a CSV, which has but one
	// sheet.
	inCSV Layout
}

// Layouts lists the names of every layout.
func Layouts() []Layout {
	var out []Layout
	for _, l := range layouts {
		out = append(out, l.name)
	}
	return out
}

// Write writes cfg.Jobs jobs below dir and returns the truth about them.
// The same cfg gives the same files.
func Write(dir string, cfg Config) (answer.Archive, error) {
	cfg, err := cfg.withDefaults()
	if err != nil {
		return answer.Archive{}, err
	}
	if err := os.MkdirAll(dir, 0o755); err != nil {
		return answer.Archive{}, err
	}
	var all answer.Archive
	for n := 0; n < cfg.Jobs; {
		d, used, err := cfg.draw(n)
		if err != nil {
			return answer.Archive{}, err
		}
		if err := d.save(dir, cfg.Format); err != nil {
			return answer.Archive{}, fmt.Errorf("%s: %w", d.file, err)
		}
		all.Add(d.truth)
		n += used
	}
	if err := convert(dir, cfg.Format, &all); err != nil {
		return answer.Archive{}, err
	}
	all.Sort()
	return all, nil
}

func (cfg Config) withDefaults() (Config, error) {
	if cfg.Jobs == 0 {
		cfg.Jobs = 1
	}
	if cfg.Loudspeakers == 0 {
		cfg.Loudspeakers = 40
	}
	if len(cfg.Layouts) == 0 {
		cfg.Layouts = Layouts()
	}
	if len(cfg.Languages) == 0 {
		cfg.Languages = []string{"en"}
	}
	if cfg.Format == "" {
		cfg.Format = XLSX
	}
	for _, l := range cfg.Layouts {
		if findLayout(l) == nil {
			return cfg, fmt.Errorf("unknown layout %q, want one of %v", l, Layouts())
		}
	}
	for _, l := range cfg.Languages {
		if !slices.Contains(Languages(), l) {
			return cfg, fmt.Errorf("unknown language %q, want one of %v", l, Languages())
		}
	}
	for _, r := range cfg.Rules {
		if !slices.Contains(Rules(), r) {
			return cfg, fmt.Errorf("unknown rule %q, want one of %v", r, Rules())
		}
	}
	if !slices.Contains([]Units{"", Imperial, Metric, Mixed}, cfg.Units) {
		return cfg, fmt.Errorf("unknown units %q, want imperial, metric or mixed", cfg.Units)
	}
	if !slices.Contains([]Format{XLSX, CSV, ODS, XLS, OfficeXLSX}, cfg.Format) {
		return cfg, fmt.Errorf("unknown format %q", cfg.Format)
	}
	if cfg.Format == CSV {
		cfg.Layouts = slices.Clone(cfg.Layouts)
		for i, name := range cfg.Layouts {
			if l := findLayout(name); l.inCSV != "" {
				cfg.Layouts[i] = l.inCSV
			}
		}
	}
	if cfg.Noise < 0 || cfg.Noise > 3 {
		return cfg, fmt.Errorf("noise %d is outside 0 to 3", cfg.Noise)
	}
	return cfg, nil
}

// draw makes the file that starts with job n and says how many jobs it holds.
func (cfg Config) draw(n int) (*drawing, int, error) {
	rng := rand.New(rand.NewPCG(cfg.Seed, uint64(n)))
	lay := findLayout(cfg.Layouts[n%len(cfg.Layouts)])
	lang := cfg.Languages[(n/len(cfg.Layouts))%len(cfg.Languages)]
	count := max(1, min(lay.jobs, cfg.Jobs-n))
	h := newHand(rng, cfg, lang)
	var jobs []*job
	for i := range count {
		jobs = append(jobs, newJob(rng, cfg, h, lay, n+i))
	}
	d := &drawing{hand: h, book: &book.Book{}, drawn: map[string]bool{}}
	d.file = fileName(rng, jobs[0], lay)
	lay.draw(d, jobs)
	for _, j := range jobs {
		d.record(j, lay, cfg)
	}
	d.truth.Work()
	for _, j := range jobs {
		d.recordFaults(j)
	}
	return d, count, nil
}

func findLayout(name Layout) *layout {
	for i := range layouts {
		if layouts[i].name == name {
			return &layouts[i]
		}
	}
	return nil
}

func (d *drawing) save(dir string, format Format) error {
	name := d.file + ".xlsx"
	if format == CSV {
		name = d.file + ".csv"
		d.truth.NoSheets()
	}
	d.rename(name)
	f, err := os.Create(filepath.Join(dir, name))
	if err != nil {
		return err
	}
	if format == CSV {
		err = d.book.CSV(f, d.dialect())
	} else {
		err = d.book.XLSX(f, "")
	}
	if cerr := f.Close(); err == nil {
		err = cerr
	}
	return err
}
