// Package vocabulary is what the words of a device schedule mean: header words
// to fields, in six languages, kept as data.
package vocabulary

import (
	"fmt"
	"slices"
)

// A Field is what a column (or a key of a title block) of a schedule states.
type Field uint16

// The fields that lineaudit understands, in the order of their names, so that fields are
// ordered as their names are. Unknown is a column that was not understood;
// Ignored one that was, and says nothing that an audit needs (a price, a maker).
const (
	Unknown Field = iota
	Amplifier
	AreaNeeded
	Author
	BoxName
	BoxDepth
	Building
	Cable
	CableType
	Channel
	ChannelWatts
	ChannelCount
	Circuit
	Client
	Material
	Conductors
	Control
	ControlModel
	ControlWatts
	Date
	Describe
	Floor
	FrameWatts
	From
	Gauge
	Headroom
	Ignored
	Impedance
	InsertionLoss
	Item // a running number
	Jacket
	Job
	JobNo
	Kind // what sort of device the row is
	Length
	Level
	LineVoltage
	RatedWatts
	Maker
	Measured
	MeasuredLoad
	Model
	Mounting
	Height
	Notes
	Override
	Price
	Quantity
	Revision
	Room
	Route
	Site
	Load
	Status
	Tag
	Tap
	TapBefore  // that was found, beside the one that is to be
	TapVoltage // of the line that the tap is marked for
	TapList
	Temperature
	To
	TotalWatts
	Use // music, paging, voice alarm
	Zone

	// Fields is how many there are.
	Fields int = iota
)

// fieldNames are the names of the fields, as tables and house books write them.
var fieldNames = [Fields]string{
	Unknown:       "",
	Amplifier:     "amplifier",
	AreaNeeded:    "area needed",
	Author:        "author",
	BoxName:       "box",
	BoxDepth:      "box depth",
	Building:      "building",
	Cable:         "cable",
	CableType:     "cable type",
	Channel:       "channel",
	ChannelWatts:  "channel rating",
	ChannelCount:  "channels of the amplifier",
	Circuit:       "circuit",
	Client:        "client",
	Material:      "conductor material",
	Conductors:    "conductors",
	Control:       "control",
	ControlModel:  "control model",
	ControlWatts:  "control rating",
	Date:          "date",
	Describe:      "description",
	Floor:         "floor",
	FrameWatts:    "frame rating",
	From:          "from",
	Gauge:         "gauge",
	Headroom:      "headroom",
	Ignored:       "ignored",
	Impedance:     "impedance",
	InsertionLoss: "insertion loss",
	Item:          "item",
	Jacket:        "jacket",
	Job:           "job",
	JobNo:         "job number",
	Kind:          "kind",
	Length:        "length",
	Level:         "level setting",
	LineVoltage:   "line voltage",
	RatedWatts:    "loudspeaker rating",
	Maker:         "manufacturer",
	Measured:      "measured impedance",
	MeasuredLoad:  "measured load",
	Model:         "model",
	Mounting:      "mounting",
	Height:        "mounting height",
	Notes:         "notes",
	Override:      "override",
	Price:         "price",
	Quantity:      "quantity",
	Revision:      "revision",
	Room:          "room",
	Route:         "route",
	Site:          "site",
	Load:          "stated load",
	Status:        "status",
	Tag:           "tag",
	Tap:           "tap",
	TapBefore:     "tap before",
	TapVoltage:    "tap voltage",
	TapList:       "taps offered",
	Temperature:   "temperature",
	To:            "to",
	TotalWatts:    "total watts",
	Use:           "use",
	Zone:          "zone",
}

// String is the name of the field, "" for Unknown.
func (f Field) String() string { return fieldNames[f] }

// fieldOf is the field with exactly that name.
func fieldOf(name string) (Field, error) {
	if i := slices.Index(fieldNames[:], name); i >= 0 {
		return Field(i), nil
	}
	return Unknown, fmt.Errorf("no field %q", name)
}
