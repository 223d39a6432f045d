package audit

import "lineaudit/audit/schedule"

// stepsAQuestion is the number of steps between two questions whether to stop.
const stepsAQuestion = 64

// ended is what a step panics with when the work is to stop.
type ended struct{ err error }

// CheckUntil is Check of work that may have to end early: it asks stop every
// few verdicts, and before each rule and remedy. An error from stop ends the
// audit of the job and is returned without a result. A nil stop never does.
func CheckUntil(stop func() error, job *schedule.Job, s *Settings) (r *Result, err error) {
	defer func() {
		switch p := recover().(type) {
		case nil:
		case ended:
			r, err = nil, p.err
		default:
			panic(p)
		}
	}()
	return check(stop, job, s), nil
}

// step is called once for a bounded piece of work, such as a verdict. It does
// not return when the work is to stop.
func (x *Examination) step() {
	if x.stop == nil {
		return
	}
	if x.steps++; x.steps%stepsAQuestion == 0 {
		x.pause()
	}
}

// pause asks at once: before work that takes long in itself.
func (x *Examination) pause() {
	if x.stop == nil {
		return
	}
	if err := x.stop(); err != nil {
		panic(ended{err})
	}
}
