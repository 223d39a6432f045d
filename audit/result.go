package audit

import "lineaudit/audit/schedule"

// A Result is everything that the audit of one job found out, passed, could
// not show and worked out on the way. Reports read it; they compute nothing.
type Result struct {
	Job      *schedule.Job
	Settings *Settings // the limits in force

	Findings  []*Finding // in rank order of the job
	Questions []Question // the reading's and the audit's own, most settling first
	Passed    []Pass     // every check that held, with its figures
	Unshown   []Unshown  // every check that could not be decided
	Broken    []string   // rules that failed to run: "rule: what happened"
	Waived    []Waived   // findings that the house book accepts; in no count and no rank

	// Assumptions are those of the reading and those of the audit itself
	// (a line voltage taken from the taps, a metal that was not stated).
	Assumptions []schedule.Assumption

	Zones      []ZoneLoad
	Channels   []ChannelLoad
	Controls   []ControlLoad
	Amplifiers []AmplifierLoad
	Lines      []Line

	// Bytes is the same for the same job of two files with equal bytes, set by
	// whoever knows the bytes before Rank looks at it; "" if nobody does.
	Bytes string

	// Set by Rank.
	SupersededBy string // the file (and sheet) of the newer revision of the same job, or of what it is a copy of; "" if none
	Score        float64
	Place        int // the job's place among the current jobs, from 1; 0 when superseded

	shed  *Counts          // of a result that has shed its parts; see Shed
	parts []uint64         // and what stood for their names
	lacks []lack           // models of which too little is said, for HouseTodo
	said  []said           // what is said of models
	uses  map[causeID]bool // types of equipment and cable in use
}

// A Grade says how bad a finding is.
type Grade uint8

// The grades, from the mildest. Unknown is a thing that cannot be shown.
const (
	Unknown Grade = iota
	Caution
	Fault
	Danger
)

var gradeNames = [...]string{"unknown", "caution", "fault", "danger"}

func (g Grade) String() string { return gradeNames[g] }

// A Certainty says how far the evidence goes.
type Certainty uint8

// Certain: the whole interval is past the limit. Possible: it straddles it.
const (
	CannotBeShown Certainty = iota
	Possible
	Certain
)

var certaintyNames = [...]string{"cannot be shown", "possible", "certain"}

func (c Certainty) String() string { return certaintyNames[c] }

// An Interval is a number that is known, or known to lie between two bounds.
// The zero Interval is unknown. High may be +Inf.
type Interval struct {
	Low, High float64
	Known     bool
}

// Exact returns an interval without width.
func Exact(v float64) Interval { return Interval{v, v, true} }

// Exactly returns the number when the interval has no width.
func (i Interval) Exactly() (float64, bool) { return i.Low, i.Known && i.Low == i.High }

// A Finding is one cause at one place.
type Finding struct {
	ID        string // survives re-ordering and added rows
	Rule      *Rule
	Place     string // "control VC-3", "channel A1 / 2"
	Room      string // where to go, when the schedule says
	Zone      string
	Grade     Grade
	Certainty Certainty
	At        schedule.Ref // where to look first
	Cells     []Evidence   // every cell the result rests on, At first
	Assumed   []schedule.Assumption

	Measured    Interval // in Unit
	Limit       float64
	Unit        string // "% of rating", "dB", "W", "V", ...
	LimitSource string // where the limit comes from

	Message  string // the fact with its arithmetic on one line: "12 x 5 W + 4 x 10 W = 100 W on a 75 W control: 133 %"
	Higher   string // a higher grade that is possible: "danger if ..."; "" if none
	Ask      string // what would settle a possible finding
	Cautions []string

	Remedies []Remedy
	NoRemedy string // why paper offers none, and what to measure on site

	ExpectedOhm Interval // what an impedance meter should show there at 1 kHz, where the place is a line

	Score   float64 // 0 to 100
	Factors Factors
	Rank    int // over the archive, from 1; set by Rank, 0 for superseded jobs

	key       string      // the place within the job, as it entered the ID
	equipment []equipment // what kind of thing or habit stands behind it
	emergency bool
	pieces    float64 // loudspeakers that hang on it
}

// A Waived is a finding that the house book accepts as it is.
type Waived struct {
	Finding *Finding
	Reason  string
	By      string
	At      schedule.Ref // the row of the house book
}

// Factors are what a score is made of; each is shown beside it.
type Factors struct {
	Severity  float64 // by grade, 0 to 1
	Extent    float64 // how far past the limit, 0 to 1
	Reach     float64 // how much hangs on it (loudspeakers, watts, emergency use), 0 to 1
	Certainty float64 // 0 to 1
}

// Evidence is a cell that a finding rests on.
type Evidence struct {
	At      schedule.Ref
	Written string // the text as written
	Role    string // what it says here: "rating", "tap", "count"
}

// A Remedy is a computed way out, re-audited before it is printed.
type Remedy struct {
	Kind          string  // retap, next-rating, cable, move, split, measure
	Change        string  // "set 12 loudspeakers in Orangery from 10 W to 5 W (-3.0 dB)"
	Short         string  // a few words for a narrow table
	Part          string  // the part to bring, with its rating: "control, 100 W at 100 V"
	Before, After float64 // the measured figure before and after
	Unit          string
	Effect        string // "load 60 W of 75 W, 80 %; the channel falls to 62 %"
	Source        string // where a next rating or a tap comes from: the house book, this job, a usual series
}

// A Question is the one answer that would settle a check.
type Question struct {
	At       schedule.Ref
	Field    string
	Text     string
	Settles  string // what it would decide
	Verdicts int    // how many verdicts the answer settles
}

// A Pass is a check that held.
type Pass struct {
	Rule     *Rule
	Place    string
	At       schedule.Ref
	Measured Interval
	Limit    float64
	Unit     string
	Message  string
}

// An Unshown is a check that could not be decided.
type Unshown struct {
	Rule  *Rule
	Place string
	At    schedule.Ref
	Why   string // what is missing
}

// A Load is what a place carries: nominal watts, every control fully on, cable ignored.
type Load struct {
	Watts      Interval   // installed loudspeakers
	WithGrowth Interval   // spare and future ones as well
	Count      Interval   // installed loudspeakers
	Incomplete string     // why the sum does not say everything; "" if it does
	Sum        string     // the arithmetic: "12 x 5 W + 4 x 10 W = 100 W"
	Cells      []Evidence // of a load that did not pass; empty for others
}

// A ZoneLoad is what one zone draws.
type ZoneLoad struct {
	Zone        *schedule.Zone
	Load        Load
	LineV       Interval
	ExpectedOhm Interval // what an impedance meter should show at 1 kHz
}

// A ChannelLoad is what one channel carries against its rating.
type ChannelLoad struct {
	Channel     *schedule.Channel
	LineV       Interval
	Rated       Interval
	Load        Load
	Share       Interval // load over rating: 1 is fully loaded
	FreeW       Interval // watts left before the caution limit of headroom-short is passed; negative when past it
	ExpectedOhm Interval
	Verdict     Verdict
}

// A ControlLoad is what one control carries against its rating.
type ControlLoad struct {
	Control     *schedule.Control
	LineV       Interval
	Rated       Interval // at this line voltage
	Load        Load
	Share       Interval
	FreeW       Interval // watts left before the rating is passed
	ExpectedOhm Interval
	Verdict     Verdict
}

// An AmplifierLoad is what one frame carries.
type AmplifierLoad struct {
	Amplifier *schedule.Amplifier
	Rated     Interval // the frame's total
	Load      Load
	Share     Interval
	Verdict   Verdict
}

// A Verdict is how a place came out: passed, not checked, or a grade.
type Verdict struct {
	Passed    bool
	Checked   bool
	Grade     Grade // when it did not pass
	Certainty Certainty
}

// String returns "passed", "not shown", or the grade.
func (v Verdict) String() string {
	switch {
	case !v.Checked:
		return "not shown"
	case v.Passed:
		return "passed"
	case v.Certainty == Possible:
		return "possible " + v.Grade.String()
	}
	return v.Grade.String()
}

// A Line is one cable network, or one length, with what it loses.
type Line struct {
	Name       string
	Zone       *schedule.Zone
	Channel    *schedule.Channel
	Control    *schedule.Control
	Cables     []*schedule.Cable
	At         schedule.Ref
	Reading    string   // "segments" (an exact tree), "one length" (two readings)
	LengthM    Interval // of the one length, or the longest path of the tree
	AreaMM2    Interval // the thinnest conductor on it
	Material   string
	LoadW      Interval
	LineV      Interval
	LoopOhm    Interval
	FarDB      Interval // all load at the far end; unknown for segments
	EvenDB     Interval // evenly spaced; unknown for segments
	WorstDB    Interval // the figure judged: the worst loudspeaker
	Emergency  bool
	Nodes      []Node // the solved tree; empty for one length
	Incomplete string // why it could not be solved, or what is missing
	Verdict    Verdict
}

// A Node is one point of a solved line.
type Node struct {
	Parent       int    // index into Nodes; -1 at the amplifier
	Kind         string // amplifier, control, loudspeaker, joint
	Place        string
	At           schedule.Ref
	LengthM      float64 // of the segment that leads here
	AreaMM2      float64
	Volts        float64
	LossDB       float64
	Watts        float64 // delivered here
	ThroughW     float64 // carried by the segment that leads here
	Loudspeakers int
}
