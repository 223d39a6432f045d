// Package schedule is the model of one job: what a device schedule says of a
// constant-voltage loudspeaker system, in SI units, with the cell each value
// was written in. It holds no electricity and no rules.
package schedule

import "strings"

// A Job is one system as one schedule describes it. A file may hold several
// jobs, a job has exactly one file.
//
// The parts point at each other (a loudspeaker at its control, a control at
// its channel); every pointer leads to an element of this job's own slices.
type Job struct {
	File  string // slash-separated path as people see it
	Sheet string // the sheet, for a workbook with a job on each sheet

	Name     Text // the title block's project or job name, or what stands for it
	Number   Text // job or project number
	Site     Text // the title block's site, else the job, else the folder
	Revision Text // "C", "3", "as built"
	Date     Text // the date of the schedule as written, ISO when it could be read

	LineVolts Quantity[Volts] // said once for the whole job
	Emergency Flag            // the schedule says that the system serves emergency use
	Override  Flag            // the schedule says that all controls have an override

	Amplifiers   []*Amplifier
	Channels     []*Channel
	Zones        []*Zone
	Controls     []*Control
	Loudspeakers []*Loudspeaker
	Cables       []*Cable
	Totals       []Total
	Measurements []Measurement

	Assumptions []Assumption // everything taken rather than stated
	LeftOut     []LeftOut    // every row that is not part of the above
	Questions   []Question   // what the reading itself could not settle
	Refused     []Refusal    // values that cannot be, kept out of every field
	Tables      []Table      // how the file was understood

	RowsRead int // table rows that became parts of the job
}

// An Amplifier is one frame.
type Amplifier struct {
	At       Ref
	Key      string // normalised name, unique in the job
	Name     string // as people wrote it first
	Model    Text
	Rated    Quantity[Watts] // the frame's total over all channels, when stated
	Channels []*Channel
	Count    Quantity[Pieces]
	Status   Status // Standby for a unit that only waits
	Site     Text
	// LowImpedanceLoad: rows on a low-impedance output of this amplifier.
	LowImpedance []*Loudspeaker
}

// A Channel is one output of an amplifier.
type Channel struct {
	At           Ref
	Key          string
	Name         string     // "1", "B", "3+4"
	Amplifier    *Amplifier // nil when the schedule names no amplifier
	LineVolts    Quantity[Volts]
	LowImpedance Flag            // the channel drives low-impedance loudspeakers, not a line
	Rated        Quantity[Watts] // continuous, at the line voltage
	RatedBasis   Text            // the condition of the rating where it is not the line: "250 W at 4 ohm", "peak"
	Bridged      []*Channel      // the partners whose outputs this one also uses
	Pair         bool            // the channel is several bridged outputs under one name, "3+4": no rating of one output is its own
	Standby      bool
	Headroom     Quantity[Fraction] // the share that the job's own brief wants free
	Emergency    Flag
	Use          Use
	Stated       Quantity[Watts] // the load that the schedule itself claims for the channel
}

// Label is the channel with its amplifier, as a person would say it.
func (c *Channel) Label() string {
	if c.Amplifier == nil || c.Amplifier.Name == "" {
		return c.Name
	}
	return c.Amplifier.Name + " / " + c.Name
}

// A Zone is an area that is switched or paged together.
type Zone struct {
	At         Ref
	Key        string
	Name       string
	Room       Text
	Channel    *Channel
	Channels   []*Channel // more than one when the zone is split over channels, Channel included
	Control    *Control   // the control that the whole zone hangs on
	Emergency  Flag
	Override   Flag
	Use        Use
	Stated     Quantity[Watts]  // the load that the schedule claims for the zone
	Count      Quantity[Pieces] // the number of loudspeakers that the schedule claims
	ABCircuits Flag             // the zone is served by two interleaved circuits
}

// A Control is a wall volume control or attenuator in the line.
type Control struct {
	At         Ref
	Key        string
	Name       string // its tag
	Model      Text
	Rated      Quantity[Watts]   // the total load it may carry
	RatedVolts []Quantity[Volts] // line voltages the rating holds for; several when the sheet names several
	Zone       *Zone
	Room       Text
	Channel    *Channel
	Parent     *Control // the control upstream of this one
	Count      Quantity[Pieces]
	Override   Flag // relay, third wire or fail-safe wiring that lifts an emergency message over the setting
	HasOff     Flag
	Remote     Flag // a level control by data or volts that carries no loudspeaker power
	Stereo     Flag
	Box        Box
	Level      Quantity[Fraction] // written setting, share of travel
	LossDB     Quantity[Decibels] // insertion loss, when the house book or the sheet says so
	Status     Status
	Stated     Quantity[Watts] // the load that the schedule claims for it
	Run        *Cable          // the run that ends at this control
}

// Label is the control as a person would say it: "control R1", "Control 3", or "control (Terrace)" for one
// without a tag that goes by its place.
func (c *Control) Label() string {
	if strings.HasPrefix(strings.ToLower(c.Name), "control ") {
		return c.Name
	}
	return "control " + c.Name
}

// A Box is the back box of a control.
type Box struct {
	Name        Text
	Depth       Quantity[Millimetres] // the depth there is
	Needed      Quantity[Millimetres] // the depth the control asks for
	Gangs       Quantity[Pieces]
	NeededGangs Quantity[Pieces]
}

// A Loudspeaker is one loudspeaker, or a group that one row describes.
type Loudspeaker struct {
	At           Ref
	Rows         Span
	Tag          Text
	Tags         []string // the single tags, where the row names several or a range
	Model        Text
	Room         Text
	Mounting     Text
	Height       Quantity[Metres]
	Count        Quantity[Pieces]
	Tap          Quantity[Watts] // of one loudspeaker
	TapVolts     Quantity[Volts] // the line voltage the tap is stated for; unknown means that of the line
	TapPosition  Text            // a tap written as a position of the switch, not in watts
	Offered      []TapOffer      // the taps its model offers, as far as the row or the house book says
	Rated        Quantity[Watts] // the loudspeaker's own rated power
	LowImpedance Quantity[Ohms]  // a direct loudspeaker without a line transformer; 8 ohm and the like
	RowTotal     Quantity[Watts] // the row's own total
	Measured     Quantity[Ohms]  // measured on site
	Zone         *Zone
	Control      *Control
	Channel      *Channel
	Split        []*Channel // the channels, where one row names several
	FeedUnread   bool       // where it hangs is written, and was not understood
	Run          *Cable     // the cable that ends at this loudspeaker or group
	Status       Status
	Sub          Flag // a bass loudspeaker
	Emergency    Flag
}

// A TapOffer is a tap that a transformer has.
type TapOffer struct {
	Watts Watts
	Volts Volts // 0: the line voltage of the job
}

// A Cable is one run from one place to another, or a single length for a line.
type Cable struct {
	At          Ref
	Key         string
	Name        string
	From, To    End
	Zone        *Zone
	Channel     *Channel
	Control     *Control
	Length      Quantity[Metres]   // one way, one cable
	Loop        bool               // the length was written as a loop and has been halved
	Count       Quantity[Pieces]   // equal runs that the row stands for
	Area        Quantity[SquareMM] // of one conductor
	Gauge       Text               // as written
	AWG         Quantity[Pieces]
	Material    Text // "copper", "tinned copper", "copper-clad aluminium", "aluminium"
	Class       int  // IEC 60228 class when the schedule states it, else 0
	Temperature Quantity[Celsius]
	Parallel    int                // conductors in parallel per leg; 0 means 1
	Needed      Quantity[SquareMM] // the smallest area the schedule asks for
	Reach       Reach
	Status      Status
}

// Reach says what the length of a cable counts.
type Reach uint8

// A run ends at its To; a whole-line length reaches the last loudspeaker; a
// piece leads from the loudspeaker before to this one.
const (
	ReachUnknown Reach = iota
	WholeLine
	FromRack
	FromPrevious
	FromTo
)

// An End is one end of a cable: a text and, when it was found, the part of the
// job that it names.
type End struct {
	Text        Text
	Amplifier   *Amplifier
	Channel     *Channel
	Control     *Control
	Zone        *Zone
	Loudspeaker *Loudspeaker
}

// Resolved reports whether the end names a part of the job.
func (e End) Resolved() bool {
	return e.Amplifier != nil || e.Channel != nil || e.Control != nil || e.Zone != nil || e.Loudspeaker != nil
}

// A Total is a sum that the schedule itself states.
type Total struct {
	At     Ref
	Of     string // what it sums, as a person would say: "zone Orangery", "sheet Taps"
	Stated Quantity[Watts]
	Count  Quantity[Pieces]
	Rows   []*Loudspeaker // the rows it sums
	Factor float64        // a factor the schedule says is included (1.2), else 0
}

// A Measurement is a value measured on site.
type Measurement struct {
	At          Ref
	Channel     *Channel
	Control     *Control
	Zone        *Zone
	Loudspeaker *Loudspeaker
	Ohms        Quantity[Ohms]
	Watts       Quantity[Watts]
}

// Status says whether a part counts.
type Status uint8

// Only Installed counts as load. Standby is for amplifiers that only wait.
const (
	Installed Status = iota
	Spare
	Future
	Removed
	ByOthers
	Standby
)

var statusNames = [...]string{"installed", "spare", "future", "removed", "by others", "standby"}

func (s Status) String() string { return statusNames[s] }

// Use is what a system serves, as far as the schedule says.
type Use uint8

// Limits differ by use.
const (
	AnyUse Use = iota
	Music
	Paging
	Emergency
)

var useNames = [...]string{"any", "music", "paging", "emergency"}

func (u Use) String() string { return useNames[u] }
