package audit

import (
	_ "embed"
	"fmt"

	"lineaudit/audit/schedule"
)

//go:embed doc/control-overload.md
var controlOverloadDoc string

// controlOverload finds controls that carry more than their rating.
var controlOverload = &Rule{
	Name:  "control-overload",
	Title: "a control carries more loudspeaker watts than its rating",
	Why: "An overloaded autotransformer or resistor overheats, burns or opens: the room is stuck at one level or silent, " +
		"and long before that it distorts.",
	Doc: controlOverloadDoc,
	Limits: []Limit{
		{Name: "fault", Grade: Fault, Default: 100, Unit: "% of rating",
			Source: "a control carries loads up to its rating: Bogen AT10A and AT35A installation manual 54-2126-01A (2005); RCF AT 40T and CT 61 product pages"},
		{Name: "danger", Grade: Danger, Default: 125, Unit: "% of rating", Source: "common practice, no source",
			Note: "a quarter above the rating is called tolerable as a mismatch in an old technical page (wa7zcz, qsl.net), no more"},
	},
	Silent: []string{
		"the sum equals the rating exactly: the control is full, not overloaded",
		"the control is a remote one that carries no loudspeaker power",
		"the sum is past the rating only because of taps of another line voltage: that is voltage-mismatch",
		"the sum is past the rating only because the control is rated for a higher line voltage: that is control-voltage-mismatch",
	},
	Cautions: []string{cautionHeat, cautionVolts, cautionPaper},
	OnSite:   "measure the impedance of the line behind the control at 1 kHz, and feel whether the control runs warm",
	Tool:     "impedance meter",
	Check:    checkControlOverload,
}

func checkControlOverload(x *Examination) error {
	c := x.circuit
	for i, k := range x.Job.Controls {
		n := &c.controls[i]
		if k.Remote.Yes || k.Status != schedule.Installed || n.load.Watts.High == 0 {
			continue
		}
		cl := x.controlClaim(i)
		if x.causedElsewhere(n, cl) {
			n.verdict, n.elsewhere = x.silentVerdict(cl), true
			continue
		}
		n.verdict = x.judge(cl)
	}
	return nil
}

// controlClaim is the load of a control against its rating.
func (x *Examination) controlClaim(i int) *claim {
	c := x.circuit
	n, k := &c.controls[i], x.Job.Controls[i]
	share := n.load.Watts.over(n.rating.watts).scaled(100)
	cl := &claim{
		key: controlKey(k), place: controlName(k), room: k.Room.Value, zone: zoneName(k.Zone), at: ratingCell(n, k.At),
		emergency: n.emergency, use: useOf(n.emergency, k.Zone, c.channelOfControl(k)), pieces: n.pieces(),
		measured: share, unit: "% of rating", show: n.inWatts(), ohms: expectedOhm(n.lineV, n.load.Watts),
		message:   n.load.Sum + " on a " + n.ratingText("control") + ": " + percents(share),
		cells:     func() []Evidence { return n.withRating(c.cells(n), k.At) },
		gaps:      func() []gap { return append(c.rowGaps(n), controlRatingGap(n, k)...) },
		settles:   "whether " + controlName(k) + " is overloaded",
		equipment: modelEquipment("control model", k.Model),
	}
	return x.keptOut(n, cl)
}

func controlRatingGap(n *node, k *schedule.Control) []gap {
	var out []gap
	if q, ok := k.Count.Exact(); ok && q > 1 {
		out = append(out, gap{placeOf(k.Count.Source, k.At), "control", fmt.Sprintf("Which loudspeakers hang on which of the %s controls %s?", figure(float64(q)), k.Name)})
	}
	if k.Stereo.Yes {
		out = append(out, gap{placeOf(k.Stereo.Source, k.At), "control", "Which loudspeakers hang on which side of control " + k.Name + ", and is its rating for each side?"})
	}
	if n.rating.watts.Known {
		return out
	}
	what := k.Name
	if k.Model.Value != "" {
		what = "model " + k.Model.Value
	}
	return append(out, gap{k.At, "control rating", "What total load may control " + what + " carry, at which line voltage?"})
}

// modelEquipment is the model behind a finding, none when it is not stated.
func modelEquipment(kind string, model schedule.Text) []equipment {
	if model.Value == "" {
		return nil
	}
	return []equipment{{kind, model.Value}}
}
