package notation

// A Status is what a schedule says has become of a device.
type Status string

// The states.
const (
	StatusNone      Status = ""
	StatusInstalled Status = "installed"
	StatusNew       Status = "new"
	StatusExisting  Status = "existing"
	StatusSpare     Status = "spare"
	StatusFuture    Status = "future"
	StatusRemoved   Status = "removed"
	StatusByOthers  Status = "by others"
	StatusStandby   Status = "standby"
)

// Statuses finds status words in a text, in order.
func Statuses(s string) []Mention { return nil }

// Emergency finds words for emergency use: voice alarm, evacuation, A/B circuits.
func Emergency(s string) []Mention { return nil }

// Override finds words for an emergency override of a control.
func Override(s string) []Mention { return nil }

// OffStep reports whether a text says that a control has an OFF position
// (has), or that it has none, and whether it says so at all (stated).
func OffStep(s string) (has, stated bool) { return false, false }

// A Column says what a column holds, for RecoverFraction.
type Column uint8

// The columns that a spreadsheet program turns into dates.
const (
	TapColumn Column = iota
	GaugeColumn
	ChannelColumn
	QuantityColumn
)

// A Recovered is what was probably typed where a cell shows a date.
type Recovered struct {
	Texts     []string // likeliest first, such as "1/2"
	Ambiguous bool     // two readings fit the column
}

// RecoverFraction says what was typed in a cell that the spreadsheet program
// turned into a date.
func RecoverFraction(year, month, day int, shown string, column Column) (Recovered, error) {
	return Recovered{}, fail("date", shown, ErrNotUnderstood)
}

// RecoverSerial is RecoverFraction for a date serial of the 1900 system.
func RecoverSerial(serial float64, shown string, column Column) (Recovered, error) {
	return Recovered{}, fail("date", shown, ErrNotUnderstood)
}

// A Level is the setting of a control.
type Level struct {
	Percent   float64 // of full travel; valid if IsPercent
	DB        float64 // decibels, 0 or below; valid if not IsPercent
	IsPercent bool
	Doubts    Doubts
}

// ParseLevel reads "75 %", "-6 dB".
func ParseLevel(s string, style Style) (Level, error) {
	return Level{}, fail("level", s, ErrNotUnderstood)
}
