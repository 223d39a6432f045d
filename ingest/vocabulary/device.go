package vocabulary

import (
	"slices"
	"strings"
	"sync"

	"lineaudit/ingest/remember"
)

// A Device is a sort of device that words name.
type Device uint8

// The sorts of devices. OtherDevice is equipment of a sound system that loads
// no line: a microphone, a player, a cabinet.
const (
	NoDevice Device = iota
	LoudspeakerDevice
	AmplifierDevice
	ControlDevice
	CableDevice
	OtherDevice

	// Devices is how many sorts there are, none included.
	Devices int = iota
)

var deviceNames = map[string]Device{"loudspeaker": LoudspeakerDevice, "amplifier": AmplifierDevice, "control": ControlDevice, "cable": CableDevice, "other": OtherDevice}

// deviceOrder is the order in which sorts are looked for in the head of a
// text: a control for loudspeakers is a control, a loudspeaker cable a cable.
var deviceOrder = []Device{ControlDevice, OtherDevice, CableDevice, AmplifierDevice, LoudspeakerDevice}

// A deviceList is the words of one sort of device.
type deviceList struct {
	stems []string        // pieces of words, spaces left out
	words map[string]bool // whole words
	last  map[string]bool // whole words that count only where no other device is named
}

// devices is devices.csv, read once.
var devices = sync.OnceValue(func() map[Device]*deviceList {
	rows, err := records("devices.csv", 4)
	if err != nil {
		panic(err) // part of the program; a test reads it
	}
	out := map[Device]*deviceList{}
	for _, row := range rows {
		d, ok := deviceNames[row[0]]
		if !ok {
			panic("devices.csv: no device " + row[0])
		}
		if out[d] == nil {
			out[d] = &deviceList{words: map[string]bool{}, last: map[string]bool{}}
		}
		for w := range strings.SplitSeq(row[3], ";") {
			switch w = Fold(w); row[2] {
			case "word":
				out[d].words[w] = true
			case "last":
				out[d].last[w] = true
			default:
				out[d].stems = append(out[d].stems, strings.ReplaceAll(w, " ", ""))
			}
		}
	}
	return out
})

// besides are words behind which a text says what a device has, or is for: the
// head of the text stands before them.
var besides = set("with incl including inclusive complete c w on off from via behind through fed an am uber hinter derriere tras dietro tramite achter sur su op aan for to suit per mit inkl einschliesslich samt fur avec y compris pour con incluido incluso para incluyendo completo compreso met inclusief voor")

// cableHead is how many words of a text must speak of nothing but a cable, the first of them a word for it, to make it one.
const cableHead = 3

// DeviceIn returns the sort of device that a text names, NoDevice if none. The head
// of the text decides: "Loudspeaker with 5 m of cable" is a loudspeaker.
func DeviceIn(text string) Device { return devicesIn.Of(text, 0) }

var devicesIn = remember.New(8192, func(text string, _ int) Device { return deviceIn(text) })

func deviceIn(text string) Device {
	words := strings.Fields(Fold(text))
	if n := len(words); n > cableHead && deviceAmong(words[:1]) == CableDevice && deviceAmong(words[:cableHead]) == CableDevice {
		return CableDevice // "Cable 2 core 2.5 mm², rack to end of line": where it runs comes behind
	}
	head := words
	if i := slices.IndexFunc(words, func(w string) bool { return besides[w] }); i > 0 {
		head = words[:i]
	}
	if d := deviceAmong(head); d != NoDevice || len(head) == len(words) {
		return d
	}
	return deviceAmong(words)
}

func deviceAmong(words []string) Device {
	joined := strings.Join(words, "")
	for _, d := range deviceOrder {
		list := devices()[d]
		for _, w := range words {
			if list.words[w] {
				return d
			}
		}
		for _, stem := range list.stems {
			if strings.Contains(joined, stem) {
				return d
			}
		}
	}
	for _, d := range deviceOrder {
		if slices.ContainsFunc(words, func(w string) bool { return devices()[d].last[w] }) {
			return d
		}
	}
	return NoDevice
}
