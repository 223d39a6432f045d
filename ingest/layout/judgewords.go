package layout

import (
	"slices"
	"strings"

	"lineaudit/ingest/vocabulary"
)

// What the words of a table say of the devices and powers in it.

// rowsJudged is how many rows of a table are looked at for what their words say.
const rowsJudged = 200

// inWords counts the rows of a table in which a cell of the given columns names a
// device, and a power, in words, and the rows that were looked at.
func inWords(t *Table, column func(vocabulary.Field) bool, names func(text string) bool) (hits, rows int) {
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class != Device {
			continue
		}
		if rows++; rows > rowsJudged {
			break
		}
		for j, c := range t.Columns {
			if v := r.Values[j].Text; column(c.Field) && len(v) < 200 && reLabelWatts.MatchString(v) && names(v) {
				hits++
				break
			}
		}
	}
	return hits, rows
}

// wattsInWords reports whether the descriptions of a bill name loudspeakers with their watts.
func wattsInWords(t *Table) bool {
	hits, rows := inWords(t, func(f vocabulary.Field) bool { return f == vocabulary.Describe || f == vocabulary.Model },
		func(text string) bool { return classWithin(text)&classDevice != 0 })
	return hits >= 2 && 3*hits >= rows
}

// groupsInCounts reports whether the counts of a list are groups of loudspeakers with their watts: "8 horns @ 30 W".
func groupsInCounts(t *Table) bool {
	hits, rows := inWords(t, func(f vocabulary.Field) bool { return f == vocabulary.Quantity },
		func(text string) bool { return classWithin(text)&(classDevice|classMounting) != 0 })
	return hits >= 2 && 3*hits >= rows
}

// equipmentInWords reports whether rows of a table describe amplifiers or controls
// with their powers: beside other tables of a schedule it rates what they name.
func equipmentInWords(t *Table) bool {
	hits, rows := inWords(t, func(f vocabulary.Field) bool { return describing[f] }, func(text string) bool {
		d := vocabulary.DeviceIn(text)
		return d == vocabulary.AmplifierDevice || d == vocabulary.ControlDevice
	})
	return hits > 0 && 3*hits >= rows
}

// ratesAmplifiers reports whether two rows of a table or more name amplifiers, with a figure under a header for powers:
// what a rack holds, fans and players among it.
func ratesAmplifiers(t *Table) bool {
	hits := 0
	for i := range t.Records[:min(len(t.Records), rowsJudged)] {
		r := &t.Records[i]
		amp, power := false, false
		for j, c := range t.Columns {
			v := r.Values[j].Text
			amp = amp || describing[c.Field] && len(v) < 100 && vocabulary.DeviceIn(v) == vocabulary.AmplifierDevice
			power = power || v != "" && (c.Unit == "W" || slices.Contains(powerFields, c.Field))
		}
		if r.Class == Device && amp && power {
			hits++
		}
	}
	return hits >= 2
}

// fewestOnLines is how many rows of loudspeakers of a line tell a list of them from one of everything that is insured.
const fewestOnLines = 3

// loudspeakersOnLines counts the rows of a table in which one cell names a loudspeaker and the voltage of its line, or its
// tap: in a list of fixed equipment they stand among clocks and pumps, "Loudspeaker, horn, 100 V line, 15 W".
func loudspeakersOnLines(t *Table) int {
	hits, rows := 0, 0
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class != Device {
			continue
		}
		if rows++; rows > rowsJudged {
			break
		}
		for j, c := range t.Columns {
			if !describing[c.Field] {
				continue
			}
			if v := oneLine(r.Values[j].Text); len(v) < 200 && classWithin(v)&classDevice != 0 && (lineVoltsWord(v) || lookText(v)&lookTapSaid != 0) {
				hits++
				break
			}
		}
	}
	return hits
}

// SaysLoudspeaker reports whether a short text is a word for a loudspeaker, or for how one is mounted, with no
// number behind it: "horn", "ceiling".
func SaysLoudspeaker(text string) bool {
	return len(strings.Fields(text)) <= 2 && !anyDigit(text) &&
		(classWithin(text)&(classDevice|classMounting) != 0 || vocabulary.DeviceIn(text) == vocabulary.LoudspeakerDevice)
}
