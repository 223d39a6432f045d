package audit

import (
	"errors"
	"math/rand/v2"
	"strconv"
	"strings"
	"testing"

	"lineaudit/audit/schedule"
)

var errEnough = errors.New("enough")

// Wherever the work is told to end it ends, with the error and without a
// result; left alone it gives what Check gives.
func TestCheckCanBeEnded(t *testing.T) {
	job := randomJob(rand.New(rand.NewPCG(3, 1)), 300, true)
	s := DefaultSettings()
	questions := 0
	whole, err := CheckUntil(func() error { questions++; return nil }, job, s)
	if err != nil {
		t.Fatal(err)
	}
	if told, want := tell(whole), tell(Check(job, s)); told != want || strings.Count(told, "\n") < 10 {
		t.Errorf("asked, it finds\n%s\nleft alone\n%s", told, want)
	}
	if questions < 100 {
		t.Fatalf("asked %d times only: remedies are not reached", questions)
	}
	for _, last := range []int{1, 2, 10, questions / 2, questions - 1} {
		asked := 0
		r, err := CheckUntil(func() error {
			if asked++; asked > last {
				t.Fatalf("asked again after %d questions", last)
			} else if asked == last {
				return errEnough
			}
			return nil
		}, job, s)
		if !errors.Is(err, errEnough) || r != nil {
			t.Errorf("ended at question %d: result %v, error %v", last, r != nil, err)
		}
	}
}

// tell is the findings of a result and their remedies, a line each.
func tell(r *Result) string {
	var b strings.Builder
	for _, f := range r.Findings {
		b.WriteString(f.Rule.Name + " " + f.Place + ": " + f.Message + " " + f.NoRemedy)
		for _, m := range f.Remedies {
			b.WriteString(" | " + m.Change)
		}
		b.WriteString("\n")
	}
	return b.String()
}

// A job of very many findings is worked through in bounded time: the worst have
// remedies, the others say why they have none.
func TestRemediesAreBounded(t *testing.T) {
	job := &schedule.Job{File: "many.csv"}
	ch := &schedule.Channel{Name: "1", LineVolts: stateQuantity(schedule.Volts(100))}
	job.Channels = append(job.Channels, ch)
	for i := range 100 {
		k := &schedule.Control{Name: "VC-" + strconv.Itoa(i), Key: "vc" + strconv.Itoa(i), Channel: ch, Rated: stateQuantity(schedule.Watts(50)), At: schedule.Ref{Row: int32(i + 1), Col: 2}}
		l := &schedule.Loudspeaker{Tag: schedule.Text{Value: "LS-" + strconv.Itoa(i)}, Control: k, Channel: ch, Tap: stateQuantity(schedule.Watts(60)), Count: stateQuantity(schedule.Pieces(1)), At: schedule.Ref{Row: int32(i + 1), Col: 1}}
		job.Controls, job.Loudspeakers = append(job.Controls, k), append(job.Loudspeakers, l)
	}
	for _, tt := range []struct{ tries, least, most int }{{triesOf(job), 100, 100}, {30 * devices(job), 5, 40}} {
		r, x := examine(nil, job, DefaultSettings())
		w := newWorkshop(x)
		w.remedy(tt.tries)
		answered := 0
		for i, f := range r.Findings {
			late := strings.HasPrefix(f.NoRemedy, "No remedy was worked out")
			if late == (len(f.Remedies) > 0) {
				t.Errorf("finding %d: %d remedies, %q", i, len(f.Remedies), f.NoRemedy)
			}
			if late && i < answered || !late && i > answered {
				t.Errorf("finding %d is not in turn", i)
			} else if !late {
				answered++
			}
		}
		if len(r.Findings) != 100 || answered < tt.least || answered > tt.most || w.tried > tt.tries+20*devices(job) {
			t.Errorf("%d findings, %d with remedies, %d devices tried of %d", len(r.Findings), answered, w.tried, tt.tries)
		}
	}
}
