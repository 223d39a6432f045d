// Package vocabulary is what the words of a device schedule mean: header words
// to fields, in six languages, kept as data.
package vocabulary

// A Field is what a column (or a key of a title block) of a schedule states.
type Field string

// The fields that lineaudit understands. FieldUnknown is a column that was not understood;
// FieldIgnored one that was, and says nothing that an audit needs (a price, a maker).
const (
	Unknown Field = ""
	Ignored Field = "ignored"

	// who and where
	Tag       Field = "tag"
	Item      Field = "item" // a running number
	Model     Field = "model"
	Describe  Field = "description"
	Maker     Field = "manufacturer"
	Room      Field = "room"
	Floor     Field = "floor"
	Building  Field = "building"
	Zone      Field = "zone"
	Circuit   Field = "circuit"
	Amplifier Field = "amplifier"
	Channel   Field = "channel"
	Control   Field = "control"
	Status    Field = "status"
	Notes     Field = "notes"
	Mounting  Field = "mounting"
	Height    Field = "mounting height"
	Use       Field = "use"  // music, paging, voice alarm
	Kind      Field = "kind" // what sort of device the row is

	// how much
	Quantity      Field = "quantity"
	Tap           Field = "tap"
	TapBefore     Field = "tap before" // that was found, beside the one that is to be
	TapList       Field = "taps offered"
	TotalWatts    Field = "total watts"
	RatedWatts    Field = "loudspeaker rating"
	Impedance     Field = "impedance"
	LineVoltage   Field = "line voltage"
	ChannelWatts  Field = "channel rating"
	FrameWatts    Field = "frame rating"
	ChannelCount  Field = "channels of the amplifier"
	ControlWatts  Field = "control rating"
	ControlModel  Field = "control model"
	Override      Field = "override"
	Level         Field = "level setting"
	Headroom      Field = "headroom"
	Load          Field = "stated load"
	Measured      Field = "measured impedance"
	MeasuredLoad  Field = "measured load"
	BoxDepth      Field = "box depth"
	BoxName       Field = "box"
	InsertionLoss Field = "insertion loss"

	// cable
	Cable       Field = "cable"
	CableType   Field = "cable type"
	Gauge       Field = "gauge"
	Material    Field = "conductor material"
	Conductors  Field = "conductors"
	Length      Field = "length"
	From        Field = "from"
	To          Field = "to"
	Temperature Field = "temperature"
	AreaNeeded  Field = "area needed"
	Route       Field = "route"
	Jacket      Field = "jacket"

	// the job
	Job      Field = "job"
	JobNo    Field = "job number"
	Site     Field = "site"
	Client   Field = "client"
	Revision Field = "revision"
	Date     Field = "date"
	Author   Field = "author"
	Price    Field = "price"
)
