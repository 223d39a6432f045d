package ingest

import (
	"slices"
	"strconv"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/join"
	"lineaudit/ingest/vocabulary"
)

// Rows that name only an amplifier of several outputs, and a zone: where it has
// as many zones as outputs, each zone has one of them, in turn.

// outputOfZone is the output of an amplifier that a row's zone has in turn, ""
// if that cannot be told. n is how many outputs the amplifier has.
func (b *builder) outputOfZone(r *row, a *schedule.Amplifier, n int) string {
	if r == nil {
		return ""
	}
	if b.zonesOnAmps == nil {
		b.gatherZonesOnAmps()
	}
	zones := b.zonesOnAmps[a.Key]
	if len(zones) != n {
		return ""
	}
	i := slices.Index(zones, join.Key(r.zoneText().text))
	if i < 0 {
		return ""
	}
	if number, ok := ownNumbers(zones, n); ok {
		return strconv.Itoa(number[i])
	}
	return strconv.Itoa(i + 1)
}

// gatherZonesOnAmps notes the zones of each amplifier in the order of their rows;
// none where a row of it names an output or no zone, or a zone has several amplifiers.
func (b *builder) gatherZonesOnAmps() {
	b.zonesOnAmps = make(map[string][]string)
	owner := make(map[string]string)
	unclear := make(map[string]bool)
	for _, t := range b.tables {
		for _, r := range t.rows {
			if r.out != "" || r.kind != loudspeakerRow && r.kind != zoneRow {
				continue
			}
			o := b.outletOf(r)
			if o.amp == "" {
				continue
			}
			amp, zone := b.ampNames.Find(o.amp).Key, join.Key(r.zoneText().text)
			if len(o.channels) > 0 || zone == "" || r.own(vocabulary.Circuit).had() {
				unclear[amp] = true
				continue
			}
			switch was, known := owner[zone]; {
			case !known:
				owner[zone] = amp
				b.zonesOnAmps[amp] = append(b.zonesOnAmps[amp], zone)
			case was != amp:
				unclear[was], unclear[amp] = true, true
			}
		}
	}
	for amp := range unclear {
		delete(b.zonesOnAmps, amp)
	}
}

// ownNumbers are the numbers of zones that are numbered as n outputs are.
func ownNumbers(zones []string, n int) (list []int, ok bool) {
	for _, zone := range zones {
		name := join.Parse(join.Zone, zone)
		v, err := strconv.Atoi(name.Number)
		if err != nil || v < 1 || v > n || slices.Contains(list, v) {
			return nil, false
		}
		list = append(list, v)
	}
	return list, true
}
