package notation

// A ChannelRef names one or more outputs of an amplifier.
type ChannelRef struct {
	Amplifier string   // as written without its kind word: "1", "A1", "PA-02"; "" if none
	Channels  []string // in order: "1", "B"; empty when only the amplifier is named
	Bridged   bool
	Parallel  bool
	AB        bool // a pair of interleaved circuits A and B
	Doubts    Doubts
}

// ParseChannel reads "A1.2", "AMP 1 CH B", "1-3", "Amp 2 / ch 3+4 bridged".
func ParseChannel(s string) (ChannelRef, error) {
	return ChannelRef{}, fail("channel", s, ErrNotUnderstood)
}

// Tags is a list of device tags.
type Tags struct {
	List   []string // expanded, as written, zero padding kept
	Ranged bool     // at least one range was expanded
}

// MaxTags is the most tags that one cell may expand to.
const MaxTags = 10000

// ParseTags expands "LS-1..LS-8", "S101-S108, S110", "SPK 1/2/3".
func ParseTags(s string) (Tags, error) { return Tags{}, fail("tags", s, ErrNotUnderstood) }

// A KeyKind is the kind of thing that a name starts with.
type KeyKind string

// The kinds of key.
const (
	KeyNone        KeyKind = ""
	KeyZone        KeyKind = "zone"
	KeyChannel     KeyKind = "channel"
	KeyAmplifier   KeyKind = "amplifier"
	KeyControl     KeyKind = "control"
	KeyLine        KeyKind = "line"
	KeyLoudspeaker KeyKind = "loudspeaker"
	KeyCable       KeyKind = "cable"
	KeyRack        KeyKind = "rack"
)

// A Key is a name in comparable form: "Zone 1", "Z-01", "1 - Orangery".
type Key struct {
	Kind    KeyKind
	Letters string // lower-case letters before the number that name no kind
	ID      string // number without zero padding, with suffix: "1", "1.2", "1a"; "" if none
	Name    string // free name, folded: "orangery"
}

// KeyOf returns the key of a name. A blank or missing mark has the zero Key.
func KeyOf(s string) Key { return Key{} }

// A Likeness says how well two keys fit.
type Likeness uint8

// From worst to best.
const (
	Different Likeness = iota
	Possible           // nothing against it, little for it
	Likely             // one side says less: "Zone 1" and "1 - Orangery"
	Same
)

// Match compares two keys.
func (k Key) Match(other Key) Likeness { return Different }

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
