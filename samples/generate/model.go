package generate

// job is one invented job as it was built.
type job struct {
	n        int
	number   string
	site     string
	rev      string
	lineV    float64
	amps     []*amp
	zones    []*zone
	controls []*control
	groups   []*group
	planted  []plant
	ampRated bool  // amplifiers are rated by frame, all channels alike
	chainLen bool  // every loudspeaker gives the length from the one before
	countAt  where // the stated number of loudspeakers
}

type amp struct {
	tag, model string
	channels   []*channel
	frameW     float64 // 0: only the channels are rated
	row        where   // where the frame rating is written
	modelDrawn bool
}

type channel struct {
	amp        *amp
	name       string
	ratedW     float64
	hidden     bool // the rating is left out of the schedule
	misread    bool // the impedance measured does not fit the load
	measuredAt where
	row        where
}

type zone struct {
	name    string
	n       int
	channel *channel
	rooms   []*room
	line    *line
	total   float64 // a stated total that is wrong, 0 for none
}

type room struct {
	name    string
	zone    *zone
	control *control
}

type control struct {
	tag, model string
	zone       *zone
	room       *room
	ratedW     float64
	ratedV     float64 // 0: not stated
	upstream   *control
	lost       bool  // missing from the list of controls
	tagAt      where // where a loudspeaker first names it
	row        where
}

// kind is a model of loudspeaker with the taps its transformer offers.
type kind struct {
	model string
	what  string // key of its name and of its mounting
	taps  []float64
}

type group struct {
	tags    []string
	count   int
	kind    *kind
	tapW    float64
	tapV    float64 // 0: the line's own
	room    *room
	control *control
	status  string
	lowOhm  float64
	asDate  bool // the tap is stored as a date
	absurd  bool
	untold  bool // the tap is left open
	row     where
	step    *step // the cable from the loudspeaker before it
}

type step struct {
	lengthM float64
	written float64 // in the unit of the job
}

type line struct {
	tag      string
	zone     *zone
	lengthM  float64
	written  float64 // in the unit of the job
	inFeet   bool
	awg      int // 0: areaMM2 is written
	areaMM2  float64
	material string
	row      where
	tagDrawn bool
}

// where is a place in the drawn book.
type where struct {
	sheet    string
	row, col int
	rows     string // as the answer's rows column wants it
}

func (w where) drawn() bool { return w.sheet != "" }

// plant is a fault put into the job on purpose.
type plant struct {
	rule    string
	control *control
	channel *channel
	amp     *amp
	zone    *zone
	group   *group
	stated  float64 // what the schedule says, for totals
	at      where   // where a wrong total is written
}

func (g *group) watts(lineV float64) float64 {
	if g.status != "installed" || g.lowOhm > 0 || g.absurd || g.untold {
		return 0
	}
	r := lineV
	v := g.tapV
	if v == 0 {
		v = r
	}
	return float64(g.count) * g.tapW * (r / v) * (r / v)
}

// counted and stated are what a person adds up in a total: the installed
// loudspeakers and their taps as written, whatever line they are meant for.
func (g *group) counted() int {
	if g.status != "installed" {
		return 0
	}
	return g.count
}

func (g *group) stated() float64 {
	if g.status != "installed" || g.lowOhm > 0 || g.untold {
		return 0
	}
	return float64(g.count) * g.tapW
}

func (j *job) controlLoad(c *control) float64 {
	sum := 0.0
	for _, g := range j.groups {
		for up := g.control; up != nil; up = up.upstream {
			if up == c {
				sum += g.watts(j.lineV)
			}
		}
	}
	return sum
}

func (j *job) zoneLoad(z *zone) float64 {
	sum := 0.0
	for _, g := range j.groups {
		if g.room.zone == z {
			sum += g.watts(j.lineV)
		}
	}
	return sum
}

func (j *job) zoneCount(z *zone) int {
	n := 0
	for _, g := range j.groups {
		if g.room.zone == z && g.status == "installed" {
			n += g.count
		}
	}
	return n
}

func (j *job) channelLoad(c *channel) float64 {
	sum := 0.0
	for _, z := range j.zones {
		if z.channel == c {
			sum += j.zoneLoad(z)
		}
	}
	return sum
}

func (j *job) ampLoad(a *amp) float64 {
	sum := 0.0
	for _, c := range a.channels {
		sum += j.channelLoad(c)
	}
	return sum
}

func (j *job) loudspeakers() int {
	n := 0
	for _, g := range j.groups {
		if g.status == "installed" {
			n += g.count
		}
	}
	return n
}

// groupsIn returns the groups of a zone in the order they are written.
func (j *job) groupsIn(z *zone) []*group {
	var out []*group
	for _, g := range j.groups {
		if g.room.zone == z {
			out = append(out, g)
		}
	}
	return out
}

func (j *job) controlsIn(z *zone) []*control {
	var out []*control
	for _, c := range j.controls {
		if c.zone == z {
			out = append(out, c)
		}
	}
	return out
}
