package audit

// An Archive is all results together: ranked findings, ranked sites, and what to fix first.
type Archive struct {
	Results  []*Result  // in input order
	Findings []*Finding // all of the current jobs, ranked; superseded ones are not among them
	Sites    []Site     // ranked, worst first
	First    []Cause    // the few equipment types, cables or habits behind most of the risk
	Counts   Counts
}

// A Site is one place with its jobs.
type Site struct {
	Name     string
	Place    int // from 1
	Score    float64
	Results  []*Result // current jobs of the site
	Findings []*Finding
	Counts   Counts
}

// Counts are the numbers of a summary, superseded jobs left out.
type Counts struct {
	Jobs, Superseded                                           int
	Danger, Fault, Caution, Unknown                            int // findings by grade
	Questions                                                  int
	Passed, Unshown                                            int // checks
	Loudspeakers, Controls, Channels, Amplifiers, Lines, Zones int
}

// A Cause is one thing that stands behind findings at several places.
type Cause struct {
	Kind     string // "control model", "cable type", ..., or "habit": what one rule finds
	Name     string // "WK-35"; of a habit, the title of its rule
	Text     string // "control model WK-35 stands behind 9 findings at 4 sites, in 6 of 7 jobs with it"
	Findings []*Finding
	Sites    int
	With     int     // jobs with such findings
	Jobs     int     // jobs that use the equipment; 0 for a habit
	Score    float64 // the sum of their scores
	Share    float64 // of the archive's total score
}
