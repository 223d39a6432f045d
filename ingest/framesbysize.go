package ingest

import (
	"cmp"
	"slices"

	"lineaudit/audit/schedule"
)

// framesBySize finds, for sentences that rate amplifiers without names, the amplifiers that
// they mean by how many outputs the rows use: of "4 x 100 W amp + 60 W mixer amp" the first
// is the one whose four outputs are used. Each fits only one way, or none is found.
func (b *builder) framesBySize() map[int]*schedule.Amplifier {
	var unnamed []int
	for i := range b.said {
		switch s := &b.said[i]; {
		case s.W == 0:
		case s.Name != "" || s.Amplifiers > 1 || len(s.Ways) > 0:
			return nil
		default:
			unnamed = append(unnamed, i)
		}
	}
	amps := slices.Clone(b.job.Amplifiers)
	if len(unnamed) < 2 || len(unnamed) != len(amps) {
		return nil
	}
	outputs := func(i int) int { return max(b.said[i].Outputs, 1) }
	slices.SortStableFunc(unnamed, func(i, j int) int { return cmp.Compare(outputs(j), outputs(i)) })
	slices.SortStableFunc(amps, func(a, o *schedule.Amplifier) int { return cmp.Compare(len(o.Channels), len(a.Channels)) })
	found := make(map[int]*schedule.Amplifier, len(amps))
	for k, i := range unnamed {
		used := len(amps[k].Channels)
		if used > outputs(i) || k+1 < len(unnamed) && used <= outputs(unnamed[k+1]) {
			return nil
		}
		found[i] = amps[k]
	}
	return found
}
