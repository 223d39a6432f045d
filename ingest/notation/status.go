package notation

import (
	"regexp"
	"slices"
	"strings"
)

// A Status is what a schedule says has become of a device.
type Status string

// The states. Only installed, new, existing and relocated devices load a line;
// whether one that is to be fitted does depends on what the others are.
const (
	StatusNone      Status = ""
	StatusInstalled Status = "installed"
	StatusNew       Status = "new"
	StatusExisting  Status = "existing"
	StatusRelocated Status = "relocated"
	StatusSpare     Status = "spare"
	StatusStandby   Status = "standby"
	StatusFuture    Status = "future"
	StatusToFit     Status = "to fit" // new in a design, not yet there in a list of what is
	StatusRemoved   Status = "removed"
	StatusByOthers  Status = "by others"
	StatusFaulty    Status = "faulty" // still there: it may load the line or not
)

// byConsequence orders the states: where several are written, the first counts.
var byConsequence = []Status{
	StatusRemoved, StatusByOthers, StatusFuture, StatusSpare, StatusStandby, StatusFaulty, StatusToFit, StatusRelocated, StatusNew, StatusExisting, StatusInstalled,
}

// Statuses finds status words in a text, in order; Kind holds a Status. A
// letter in brackets, "(E)", or alone in the cell is a mention that is not
// sure. What is to be done in a year that is named is StatusFuture.
func Statuses(s string) []Mention {
	return knownStatusMentions.Of(s, 0)
}

// yearBehind finds the year in which something is to happen: "à poser en 2027".
var yearBehind = regexp.MustCompile(`^\D{0,12}\b(?:19|20)\d\d\b`)

// replacedBehind finds the date behind a word for a spare that tells when it was put in: "Ersatz vom 20.07.", "repuesto el 3/5".
var replacedBehind = regexp.MustCompile(`^\s+(?:vom|am|seit|el|del|dal|du|van)\s+\d`)

func parseStatuses(s string) []Mention {
	out := slices.DeleteFunc(words("status").mentions(s), func(m Mention) bool {
		_, rest, ok := strings.Cut(Clean(s), m.Text)
		return m.Kind == string(StatusSpare) && ok && replacedBehind.MatchString(rest)
	})
	for i := range out {
		planned := out[i].Kind == string(StatusToFit) || out[i].Kind == string(StatusFuture)
		if _, rest, ok := strings.Cut(Clean(s), out[i].Text); planned && ok && yearBehind.MatchString(rest) {
			out[i].Kind, out[i].Sure = string(StatusFuture), true
		}
	}
	tokens := lexCodes(Clean(s))
	for i, t := range tokens {
		if t.kind != wordToken {
			continue
		}
		bracketed := i > 0 && i+1 < len(tokens) && tokens[i-1].is("(") && tokens[i+1].is(")")
		if e, ok := words("letter").phrases[t.text]; ok && (bracketed || len(tokens) == 1) {
			out = append(out, Mention{Kind: e.kind, Text: t.raw})
		}
	}
	return out
}

// StatusOf returns the status that counts among those that a text mentions:
// what keeps a device from loading the line goes first. sure is false where it
// rests on a word or letter with other meanings. Negated mentions are passed
// over. It returns StatusNone where the text mentions none.
func StatusOf(s string) (status Status, sure bool) {
	found := Statuses(s)
	for _, want := range byConsequence {
		for _, m := range found {
			if Status(m.Kind) == want && !m.Negated {
				sure = sure || m.Sure
				status = want
			}
		}
		if status != StatusNone {
			return status, sure
		}
	}
	return StatusNone, false
}

// MentionsStatus reports whether a text mentions a status without denying it.
func MentionsStatus(s string, status Status) bool {
	return slices.ContainsFunc(Statuses(s), func(m Mention) bool { return m.Kind == string(status) && !m.Negated })
}

// The kinds of emergency mention.
const (
	VoiceAlarm = "voice alarm"
	Evacuation = "evacuation"
	ABCircuits = "a/b circuits"
)

// Emergency finds words for emergency use in a text: VoiceAlarm ("voice
// alarm", "SAA", "EN 54"), Evacuation ("EVAC", "ontruiming"), ABCircuits
// ("A/B circuits", "doppia linea"). Abbreviations with other meanings ("VA",
// "emergency") are not sure.
func Emergency(s string) []Mention {
	return knownEmergencyMentions.Of(s, 0)
}

func parseEmergency(s string) []Mention { return words("emergency").mentions(s) }

// The kinds of override mention.
const (
	OverrideRelay     = "relay"
	OverrideThreeWire = "three-wire"
)

// Override finds words for an emergency override of a control: OverrideRelay
// ("24 V override relay", "Pflichtempfang", "forçage"), OverrideThreeWire
// ("3-wire", "4 Draht"). A mention behind "no", "ohne", "sans" is Negated.
func Override(s string) []Mention {
	return knownOverrideMentions.Of(s, 0)
}

func parseOverride(s string) []Mention { return words("override").mentions(s) }

// OffStep reports whether a text about a control says that it has an OFF
// position ("10 step + off") or has none ("without off"), and whether it says
// so at all.
func OffStep(s string) (has, stated bool) {
	for _, m := range words("off").mentions(s) {
		stated = true
		if m.Kind == "no off" || m.Negated {
			return false, true
		}
		has = true
	}
	return has, stated
}
