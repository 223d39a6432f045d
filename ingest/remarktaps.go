package ingest

import (
	"slices"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/remember"
	"lineaudit/ingest/vocabulary"
)

// Remarks tell what became of a tap since the list was made: "set to 5 W since
// March", "2 of them now 3 W", "auf 3 W eingestellt", "full power". What is
// remarked holds, aloud; what is only asked for is a question.

// remarkedTap applies what the remarks of a row say of its tap.
func (b *builder) remarkedTap(r *row, t *tapped) {
	for _, f := range []vocabulary.Field{vocabulary.Notes, vocabulary.Status} {
		for s := range r.every(f) {
			if !s.had() || len(s.text) > longestSpoken {
				continue
			}
			if set := settings.Of(s.text, 0); set != (notation.Setting{}) {
				b.settleRemark(r, t, s, set)
				return
			}
		}
	}
}

// settings are the taps that remarks set; one that speaks of an amplifier or a
// control sets none, as what it says may be theirs.
var settings = remember.New(8192, func(text string, _ int) notation.Setting {
	d := vocabulary.DeviceIn(text)
	if d == vocabulary.ControlDevice || d == vocabulary.AmplifierDevice || notation.SpeaksOfAmplifier(text) {
		return notation.Setting{}
	}
	set, _ := notation.SettingIn(text, notation.Auto)
	return set
})

func (b *builder) settleRemark(r *row, t *tapped, s seen, set notation.Setting) {
	const tap = "tap"
	was, known := t.watts.Exact()
	w := schedule.Watts(set.W)
	if set.Share > 0 {
		if known || len(t.offered) == 0 {
			if !t.had() {
				t.fraction, t.source = set.Share, s.source
			}
			return // beside one tap it says nothing more
		}
		full := slices.MaxFunc(t.offered, func(x, y schedule.TapOffer) int { return int(2 * (x.Watts - y.Watts)) }).Watts
		w = full * schedule.Watts(set.Share)
	}
	if known && was == w {
		return
	}
	if set.Pending {
		if known {
			b.askCell(s, "“"+short(s.text)+"”: is the tap changed from "+plain(float64(was))+" W? It is counted as listed.", "the tap of this row")
		}
		return
	}
	src := s.source
	src.How, src.Because = schedule.LikelierReading, "the remark says what it is set to"
	if n := b.countWritten(r); set.Count > 0 && n > set.Count {
		if !known || len(t.groups) > 0 {
			b.askCell(s, "“"+short(s.text)+"”: what are the other loudspeakers of this row set to?", "the tap of this row")
			return
		}
		t.groups = []notation.TapGroup{{Count: set.Count, W: float64(w)}, {Count: n - set.Count, W: float64(was)}}
		b.take(s, tap, itoa(set.Count)+" at "+plain(float64(w))+" W, the others at "+plain(float64(was))+" W", schedule.LikelierReading, src.Because)
		t.source = src
		return
	}
	if len(t.groups) > 1 {
		b.askCell(s, "“"+short(s.text)+"”: of which loudspeakers of this row is this said?", "the tap of this row")
		return
	}
	t.watts, t.groups = schedule.Exactly(w, src), nil
	t.ohms, t.fraction, t.position = 0, 0, schedule.Text{}
	t.source = src
	b.take(s, tap, plain(float64(w))+" W", schedule.LikelierReading, src.Because)
}
