package watch_test

import (
	"errors"
	"testing"

	"lineaudit/ingest/watch"
)

var errLate = errors.New("too late")

func TestWorkIsEnded(t *testing.T) {
	asked := 0
	w := watch.New(func() error {
		if asked++; asked == 3 {
			return errLate
		}
		return nil
	})
	steps := 0
	if err := watch.Guard(func() {
		for range 1_000_000 {
			w.Step()
			steps++
		}
	}); !errors.Is(err, errLate) {
		t.Errorf("the error is %v", err)
	}
	if steps < 100 || steps > 1000 {
		t.Errorf("ended after %d steps", steps)
	}
}

func TestWorkThatEndsByItself(t *testing.T) {
	for _, w := range []*watch.Watch{nil, watch.New(nil), watch.New(func() error { return nil })} {
		if err := watch.Guard(func() {
			for range 1000 {
				w.Step()
			}
		}); err != nil {
			t.Error(err)
		}
	}
}

func TestOtherPanicsPass(t *testing.T) {
	defer func() {
		if p := recover(); p != "ours" {
			t.Errorf("recovered %v", p)
		}
	}()
	watch.Guard(func() { panic("ours") })
}
