package schedule

// The physical quantities of a schedule, each in its SI unit (cable
// cross-sections in square millimetres, as the trade writes them).
type (
	Watts       float64
	Volts       float64
	Ohms        float64
	Metres      float64
	SquareMM    float64
	Decibels    float64
	Celsius     float64
	Pieces      float64 // a number of devices; whole, kept as a float so that it shares Quantity
	Fraction    float64 // 0.75 is 75 %
	Millimetres float64
)

// How says how a value was had.
type How uint8

// The ways a value can be had, from the strongest to the weakest.
// NotHad is the zero value: a blank is unknown, never zero.
const (
	NotHad          How = iota
	Stated              // written in the cell, with its unit
	CarriedDown         // merged cell, ditto mark, blank under a filled cell
	FromTitle           // said once for the sheet or the job, in a title block or section title
	UnitAssumed         // written without a unit
	LikelierReading     // one text, two readings: the likelier was taken
	FromHouseBook       // the firm's own ratings, limits and names
	FromModelName       // read out of a model name such as "WK-35"
	RecoveredDate       // a fraction that the spreadsheet turned into a date
	Computed            // worked out from other cells
	Estimated           // what the other rows of its zone say
	Default             // the tool's own default
)

var howNames = [...]string{"not had", "stated", "carried down", "from the title", "unit assumed", "likelier reading", "from the house book",
	"from the model name", "recovered from a date", "computed", "estimated", "default"}

func (h How) String() string { return howNames[h] }

// Assumed reports whether the value was taken rather than written: such a
// value is listed among the assumptions.
func (h How) Assumed() bool { return h >= UnitAssumed && h != FromHouseBook && h != Computed }

// Source is where a value was written and how it was had.
type Source struct {
	At      Ref    // the cell; the zero Ref for a default
	Written string // the text as written
	How     How
	Because string // for a value that was taken: why, in a few words
}

// Had reports whether there is a value at all.
func (s Source) Had() bool { return s.How != NotHad }

// A Quantity is a number in SI units that remembers where it came from. A
// number that is not known exactly has bounds: Low < High. The zero Quantity
// is unknown.
type Quantity[T ~float64] struct {
	Low, High T
	Source
}

// Exactly returns a quantity without bounds.
func Exactly[T ~float64](v T, s Source) Quantity[T] { return Quantity[T]{Low: v, High: v, Source: s} }

// Between returns a quantity that lies somewhere from low to high.
func Between[T ~float64](low, high T, s Source) Quantity[T] {
	if high < low {
		low, high = high, low
	}
	return Quantity[T]{Low: low, High: high, Source: s}
}

// Exact returns the number if it is known and has no bounds.
func (q Quantity[T]) Exact() (T, bool) { return q.Low, q.Had() && q.Low == q.High }

// Or returns q if it is known, else other.
func (q Quantity[T]) Or(other Quantity[T]) Quantity[T] {
	if q.Had() {
		return q
	}
	return other
}

// A Text is a word or name that remembers where it was written.
type Text struct {
	Value string
	Source
}

func (t Text) String() string { return t.Value }

// Said returns a text written in a cell.
func Said(value string, at Ref) Text {
	if value == "" {
		return Text{}
	}
	return Text{Value: value, Source: Source{At: at, Written: value, How: Stated}}
}

// A Flag is a yes or no that a schedule may leave open.
type Flag struct {
	Yes bool
	Source
}
