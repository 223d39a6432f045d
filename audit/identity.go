package audit

import (
	"crypto/sha256"
	"encoding/hex"
	"strings"

	"lineaudit/audit/schedule"
)

// findingID is a hash of the job, the rule and the place. It holds no row
// number and no figure, so that it survives re-ordered and added rows, and the
// next revision of the same job.
func findingID(j *schedule.Job, rule, key string) string {
	h := sha256.Sum256([]byte(jobIdentity(j) + "\x00" + rule + "\x00" + key))
	return hex.EncodeToString(h[:6])
}

// jobIdentity is what makes a job the same job from one run to the next: its
// number, name and site where the schedule states one, else its file.
func jobIdentity(j *schedule.Job) string {
	parts := []string{folded(j.Number.Value), folded(j.Name.Value), folded(j.Site.Value)}
	if parts[0] == "" && (parts[1] == "" || !j.Name.Had()) {
		parts = append(parts, j.File)
	}
	return strings.Join(parts, "\x1f")
}

// Keys of places. A key must not hold a row number.
func controlKey(k *schedule.Control) string { return "control\x1f" + k.Key }

func channelKey(ch *schedule.Channel) string {
	if ch.Amplifier == nil {
		return "channel\x1f\x1f" + ch.Key
	}
	return "channel\x1f" + ch.Amplifier.Key + "\x1f" + ch.Key
}

func amplifierKey(a *schedule.Amplifier) string { return "amplifier\x1f" + a.Key }

func zoneKey(z *schedule.Zone) string {
	if z == nil {
		return "zone\x1f"
	}
	return "zone\x1f" + z.Key
}

// rowKey is the tag of a loudspeaker, or, without one, what else tells it
// apart: its zone, room, control, model and tap as written.
func rowKey(l *schedule.Loudspeaker) string {
	if l.Tag.Value != "" {
		return "loudspeaker\x1f" + folded(l.Tag.Value)
	}
	control := ""
	if l.Control != nil {
		control = l.Control.Key
	}
	zone := ""
	if l.Zone != nil {
		zone = l.Zone.Key
	}
	return strings.Join([]string{"row", zone, folded(l.Room.Value), control, folded(l.Model.Value), l.Tap.Written}, "\x1f")
}

// Names of places as a person would say them.
func controlName(k *schedule.Control) string { return k.Label() }

func channelName(ch *schedule.Channel) string { return "channel " + ch.Label() }

// amplifierName is an amplifier as a person would say it: "amplifier A1"; "the amplifier" that has no name.
func amplifierName(a *schedule.Amplifier) string {
	if a.Name == "" {
		return "the amplifier"
	}
	return "amplifier " + a.Name
}

func rowName(l *schedule.Loudspeaker) string {
	switch {
	case l.Tag.Value != "":
		return "loudspeaker " + l.Tag.Value
	case l.Room.Value != "":
		return "loudspeakers in " + l.Room.Value
	case l.Zone != nil:
		return "loudspeakers in " + l.Zone.Name
	case l.Model.Value != "":
		return "loudspeakers " + l.Model.Value
	}
	return "loudspeakers in row " + l.Rows.String()
}

func zoneName(z *schedule.Zone) string {
	if z == nil {
		return ""
	}
	return z.Name
}
