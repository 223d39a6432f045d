package layout

import (
	"regexp"
	"slices"

	"lineaudit/ingest/vocabulary"
)

// roomsByName takes the words beside the numbers of rooms for the rooms, and the numbers for those
// of the rows: "0.01 | Entrance hall | 6 | 3", "T02 | Reception | 4 | 6". Nothing else names a place there, and the words name no device.
func roomsByName(t *Table) {
	room := slices.IndexFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.Room })
	if room < 0 || room+1 >= len(t.Columns) {
		return
	}
	switch beside := t.Columns[room+1].Field; {
	case beside == vocabulary.Describe:
	case beside == vocabulary.To && (t.Kind == Loudspeakers || t.Kind == Mixed) && !slices.ContainsFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.From }): // "Destination": what the room is for
	default:
		return
	}
	if slices.ContainsFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.Zone || c.Field == vocabulary.Item }) {
		return
	}
	rows, names := 0, map[string]bool{}
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class != Device {
			continue
		}
		number, name := r.Values[room].Text, r.Values[room+1].Text
		if name == "" && number == "" {
			continue
		}
		if !isRoomNumber(number) || lookText(name)&lookRoom == 0 || anyDigit(name) || classWithin(name)&classDevice != 0 || vocabulary.DeviceIn(name) != vocabulary.NoDevice {
			return
		}
		if rows++; rows > maxSample {
			break
		}
		names[name] = true
	}
	if rows < fewestNamed || len(names) < 2 {
		return
	}
	t.Columns[room].Field, t.Columns[room].RunnerUp = vocabulary.Item, vocabulary.Unknown
	t.Columns[room].Evidence += "; the rooms are named beside their numbers"
	t.Columns[room+1].Field, t.Columns[room+1].RunnerUp = vocabulary.Room, vocabulary.Unknown
	t.Columns[room+1].Evidence += "; beside the numbers of rooms"
}

// fewestNamed is the fewest rows in which rooms are named beside their numbers.
const fewestNamed = 3

// isRoomNumber reports whether a text is the number of a room: "0.01", "104", "T02".
func isRoomNumber(t string) bool { return t != "" && (isFigureOnly(t) || reRoomNumber.MatchString(t)) }

// reRoomNumber finds a number behind the letters of a floor or a wing.
var reRoomNumber = regexp.MustCompile(`^\p{Lu}{1,3}[ .-]?\d{1,4}(?:\.\d{1,3})?\p{Ll}?$`)
