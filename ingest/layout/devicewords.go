package layout

import "lineaudit/ingest/vocabulary"

// devicesInWords takes a column that may hold tags or descriptions, "Device", for descriptions where its cells call
// amplifiers or controls by words, "Power amplifier LV1", and none is a tag alone.
func devicesInWords(cols []*heading, base []worth) {
	for i, h := range cols {
		if h.of(vocabulary.Tag) >= sureWords && h.of(vocabulary.Describe) >= sureWords && h.cells.share(lookTag) == 0 && h.otherDevices() >= 0.3 {
			adjust(base, i, vocabulary.Tag, -0.7)
		}
	}
}
