package layout

import (
	"regexp"

	"lineaudit/ingest/vocabulary"
)

// Bills head what is no loudspeaker with its word, and the rows below say no word for it: "D | AMPLIFIERS" above
// "PA-1, two channel, 2 x 150 W".

// reCodeAhead finds the code that a description begins with: "PA-1, two channel", "AMP2 (120 W)".
var reCodeAhead = regexp.MustCompile(`^\p{Lu}{1,5}[-. ]?(?:\d{1,2}|\p{Lu})\s*[,;:(–-]\s*\S`)

// titleWords are the words that a row below the title of amplifiers or controls reads with.
var titleWords = map[vocabulary.Device]string{vocabulary.AmplifierDevice: "amplifier ", vocabulary.ControlDevice: "attenuator "}

// kindsOfTitles puts the kind of device that a title is the word for before the descriptions below it that begin with a code
// and have no such word.
func (f *finder) kindsOfTitles(t *Table) {
	describe := columnOf(t, vocabulary.Describe)
	if describe < 0 || t.Matrix {
		return
	}
	lead := ""
	for i := range t.Records {
		r := &t.Records[i]
		if r.Class == Title {
			lead = ""
			if len(r.Sections) == 1 && r.Sections[0].Field == vocabulary.Unknown && f.headsThings(r.Sections[0].Text) {
				lead = titleWords[vocabulary.DeviceIn(r.Sections[0].Text)]
			}
			continue
		}
		if v := &r.Values[describe]; lead != "" && r.Class == Device && reCodeAhead.MatchString(v.Text) && vocabulary.DeviceIn(v.Text) == vocabulary.NoDevice {
			v.Text = lead + v.Text
		}
	}
}
