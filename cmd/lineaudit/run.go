package main

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"os"
	"strings"

	"lineaudit/audit"
	"lineaudit/report"
	"lineaudit/report/data"
	"lineaudit/report/stage"
	"lineaudit/report/terminal"
)

// version is set when a release is built.
var version = "dev"

// run is the whole program: it returns the exit code.
func run(ctx context.Context, args []string, s screen) int {
	if len(args) > 0 {
		switch args[0] {
		case "read":
			return runRead(ctx, args[1:], s)
		case "rules":
			return runRules(args[1:], s)
		case "house":
			return runHouse(args[1:], s)
		case "schema":
			return runSchema(args[1:], s)
		case "help", "version": // unless a file has that name
			if _, err := os.Stat(args[0]); err != nil && len(args) == 1 {
				return runAudit(ctx, []string{"--" + args[0]}, s)
			}
		}
	}
	return runAudit(ctx, args, s)
}

// wrong reports wrong use in one line and a hint.
func wrong(s screen, err error) int {
	fmt.Fprintf(s.err, "lineaudit: %s\nlineaudit --help says what there is.\n", report.Plain(err.Error()))
	return wrongUse
}

// failed reports what could not be done.
func failed(s screen, err error) int {
	if errors.Is(err, context.Canceled) {
		fmt.Fprintln(s.err, "lineaudit: stopped; nothing was written")
		return incomplete
	}
	fmt.Fprintf(s.err, "lineaudit: %s\n", report.Plain(err.Error()))
	return incomplete
}

// print writes a text to the screen's output.
func print(s screen, text string) int {
	if _, err := fmt.Fprint(s.out, text); err != nil {
		return failed(s, err)
	}
	return done
}

// flagged handles --help, --version and errors of the flags.
func flagged(s screen, text string, err error) int {
	switch {
	case errors.Is(err, errHelp):
		return print(s, text)
	case errors.Is(err, errVersion):
		return print(s, "lineaudit "+version+"\n")
	}
	return wrong(s, err)
}

func runAudit(ctx context.Context, args []string, s screen) int {
	set, text, err := parse(args, false)
	if err != nil {
		return flagged(s, text, err)
	}
	p, code := prepare(ctx, set, s)
	if p == nil {
		return code
	}
	if err := stage.Ready(set.out, resultNames()); err != nil {
		return failed(s, err) // told before the work, not after it
	}
	dispositions, err := readDispositions(ctx, set)
	if err != nil {
		return wrong(s, err)
	}
	if p.shelf, err = report.NewShelf(); err != nil {
		return failed(s, err)
	}
	defer p.shelf.Close()
	defer paceCollection(p.files)()
	if err := cmp.Or(p.readAll(ctx, s), p.shelf.Err()); err != nil {
		return failed(s, err)
	}
	a := p.audit()
	a.Dispositions = dispositions
	if err := write(ctx, p, a); err != nil {
		return failed(s, err)
	}
	o := terminal.Options{Width: s.outWidth, Colour: s.outWidth > 0 && !s.noColour, Quiet: set.quiet, Out: set.out}
	if s.outWidth == 0 {
		o.Width = 120
	}
	if err := terminal.Write(s.out, a, o); err != nil {
		return failed(s, err)
	}
	return exitCode(set, a)
}

// exitCode is what a finished audit ends with.
func exitCode(set *settings, a *report.Audit) int {
	if set.fails {
		for _, f := range a.Archive.Findings {
			if f.Grade >= set.failAt {
				return found
			}
		}
	}
	schedules := 0
	for _, f := range a.Files {
		if f.Kind == report.Unreadable {
			return incomplete
		}
		if f.Kind == report.Schedule {
			schedules++
		}
		for _, r := range f.Results {
			if len(r.Broken) > 0 {
				return incomplete
			}
		}
	}
	if schedules == 0 || len(a.Unwritten) > 0 {
		return incomplete
	}
	return done
}

func runRules(args []string, s screen) int {
	switch {
	case len(args) == 1 && (args[0] == "--help" || args[0] == "-h"):
		return print(s, "Usage: lineaudit rules [NAME]\n\nLists every rule with its limits and their sources, or tells one in full.\n")
	case len(args) == 0:
		return print(s, terminal.Rules(audit.DefaultSettings(), s.outWidth))
	case len(args) > 1:
		return wrong(s, errors.New("rules takes one name"))
	}
	rule := audit.RuleNamed(args[0])
	if rule == nil {
		var names []string
		for _, r := range audit.Rules() {
			names = append(names, r.Name)
		}
		return wrong(s, fmt.Errorf("there is no rule %q%s; lineaudit rules lists them", args[0], nearest(args[0], names)))
	}
	return print(s, terminal.Rule(rule, audit.DefaultSettings(), s.outWidth))
}

func runSchema(args []string, s screen) int {
	if len(args) > 0 {
		return wrong(s, fmt.Errorf("schema takes nothing more, not %q", strings.Join(args, " ")))
	}
	return print(s, string(data.Schema()))
}
