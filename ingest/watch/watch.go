// Package watch ends work that takes too long without every function on the
// way having to hand an error back.
package watch

// every is the number of steps between two questions.
const every = 64

// A Watch is asked at every step of long work. A nil one never ends anything.
type Watch struct {
	stop  func() error
	steps int
}

// ended is what a step panics with.
type ended struct{ err error }

// New returns a watch that asks stop every few steps; nil if stop is nil.
func New(stop func() error) *Watch {
	if stop == nil {
		return nil
	}
	return &Watch{stop: stop}
}

// Step is called once for a bounded piece of work, such as a row. When stop
// returns an error, it does not return: the error comes out of Guard.
func (w *Watch) Step() {
	if w == nil {
		return
	}
	if w.steps++; w.steps%every != 0 {
		return
	}
	if err := w.stop(); err != nil {
		panic(ended{err})
	}
}

// Guard runs work and returns the error with which a Step ended it, nil if it
// ran to its end. Other panics pass through.
func Guard(work func()) (err error) {
	defer func() {
		switch p := recover().(type) {
		case nil:
		case ended:
			err = p.err
		default:
			panic(p)
		}
	}()
	work()
	return nil
}
