// Command lineaudit audits an archive of device schedules of constant-voltage
// loudspeaker systems.
package main

import (
	"context"
	"io"
	"os"
	"os/signal"
	"syscall"

	"golang.org/x/term"
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	code := run(ctx, os.Args[1:], screen{out: os.Stdout, err: os.Stderr, outWidth: width(os.Stdout), errWidth: width(os.Stderr), noColour: os.Getenv("NO_COLOR") != ""})
	stop()
	os.Exit(code)
}

// A screen is where a run writes and what it is like. A width of 0 means that
// it is no terminal.
type screen struct {
	out, err           io.Writer
	outWidth, errWidth int
	noColour           bool
}

func width(f *os.File) int {
	if !term.IsTerminal(int(f.Fd())) {
		return 0
	}
	w, _, err := term.GetSize(int(f.Fd()))
	if err != nil {
		return 80
	}
	return w
}

// The exit codes.
const (
	done       = 0
	found      = 1 // findings at or above --fail-at
	wrongUse   = 2
	incomplete = 3 // something could not be read, checked or written
)
