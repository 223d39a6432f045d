// Command cmd writes an archive of invented schedules and, beside it, the
// truth about them as CSV tables.
package main

import (
	"fmt"
	"io"
	"os"
	"path/filepath"

	"lineaudit/samples/generate"

	"github.com/spf13/pflag"
)

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

func run(args []string, stdout, stderr io.Writer) int {
	var cfg generate.Config
	var out, truth, units, format string
	var layouts []string
	flags := pflag.NewFlagSet("generate", pflag.ContinueOnError)
	flags.SetOutput(stderr)
	flags.StringVarP(&out, "out", "o", "", "folder to write the schedules to (required)")
	flags.StringVar(&truth, "truth", "", "folder for the truth; default: the out folder with -truth behind its name")
	flags.Uint64Var(&cfg.Seed, "seed", 1, "seed; the same one gives the same archive")
	flags.IntVarP(&cfg.Jobs, "jobs", "n", 10, "number of jobs")
	flags.IntVar(&cfg.Loudspeakers, "loudspeakers", 40, "loudspeakers a job, about")
	flags.StringSliceVar(&layouts, "layout", nil, fmt.Sprintf("layouts, taken in turn; default all of %v", generate.Layouts()))
	flags.StringSliceVar(&cfg.Languages, "language", []string{"en"}, fmt.Sprintf("languages, taken in turn, of %v", generate.Languages()))
	flags.StringVar(&units, "units", "", "imperial, metric or mixed; default by language")
	flags.IntVar(&cfg.Noise, "noise", 0, "0 clean to 3 noisiest")
	flags.Float64Var(&cfg.LineV, "line-volts", 0, "line voltage in V, 70.7 or 100; default by units")
	flags.Float64Var(&cfg.Faults, "faults", 0, "share of jobs with planted faults, 0 to 1")
	flags.StringSliceVar(&cfg.Rules, "rule", nil, fmt.Sprintf("faults to plant; default all of %v", generate.Rules()))
	flags.StringVar(&format, "format", "xlsx", "xlsx, csv, or through LibreOffice: ods, xls, office-xlsx")
	if err := flags.Parse(args); err != nil {
		if err == pflag.ErrHelp {
			return 0
		}
		fmt.Fprintln(stderr, err)
		return 2
	}
	if out == "" {
		fmt.Fprintln(stderr, "--out is missing; see --help")
		return 2
	}
	cfg.Units, cfg.Format = generate.Units(units), generate.Format(format)
	for _, l := range layouts {
		cfg.Layouts = append(cfg.Layouts, generate.Layout(l))
	}
	if truth == "" {
		truth = filepath.Clean(out) + "-truth"
	}
	all, err := generate.Write(out, cfg)
	if err == nil {
		err = all.Write(truth)
	}
	if err != nil {
		fmt.Fprintln(stderr, err)
		return 3
	}
	fmt.Fprintf(stdout, "%d jobs, %d loudspeaker rows, %d planted faults; truth in %s\n",
		len(all.Files), len(all.Loudspeakers), len(all.Faults), truth)
	return 0
}
