package schedule

// A HouseBook is the firm's own book as plain rows with positions: names,
// limits, ratings and waivers. Nothing in it has been interpreted beyond numbers.
type HouseBook struct {
	File    string
	Names   []NameRow
	Limits  []LimitRow
	Ratings []RatingRow
	Waivers []WaiverRow
}

// A NameRow says "this header means that field" or "this text means that value".
type NameRow struct {
	At      Ref
	Kind    Text // "header" or "value"
	Written Text
	Means   Text
	Field   Text // for a value: the field it stands in, may be blank
	Files   Text // a file pattern, blank for all
}

// A LimitRow changes one limit of one rule.
type LimitRow struct {
	At                             Ref
	Rule, Limit, Unit, Use, Source Text
	Value                          Text // as written; audit checks number and unit together
}

// A RatingRow says what a model is.
type RatingRow struct {
	At         Ref
	Model      Text
	OtherNames []string
	Kind       Text // loudspeaker, control, amplifier
	Rated      []RatingAt
	Taps       []TapOffer
	Impedance  Quantity[Ohms]
	Channels   Quantity[Pieces]
	Frame      Quantity[Watts]
	BoxDepth   Quantity[Millimetres]
	LossDB     Quantity[Decibels]
}

// A RatingAt is a rating at one line voltage.
type RatingAt struct {
	Watts Quantity[Watts]
	Volts Volts // 0: at any line voltage
}

// A WaiverRow accepts one finding or one rule at one place.
type WaiverRow struct {
	At                           Ref
	Rule, Job, Place, Reason, By Text
}

// A HouseError is one thing wrong with the house book, at one cell.
type HouseError struct {
	At   Ref
	Text string // lower case, without the place
}
