package layout

import (
	"slices"

	"lineaudit/ingest/vocabulary"
)

// roomsByName takes the words beside the numbers of rooms for the rooms, and the numbers for those
// of the rows: "0.01 | Entrance hall | 6 | 3". Nothing else names a place there, and the words name no device.
func roomsByName(t *Table) {
	room := slices.IndexFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.Room })
	if room < 0 || room+1 >= len(t.Columns) || t.Columns[room+1].Field != vocabulary.Describe {
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
		if !isFigureOnly(number) || number == "" || lookText(name)&lookRoom == 0 || anyDigit(name) || classWithin(name)&classDevice != 0 || vocabulary.DeviceIn(name) != vocabulary.NoDevice {
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
