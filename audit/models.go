package audit

import (
	"bytes"
	"unicode"
	"unicode/utf8"

	"lineaudit/audit/line"
	"lineaudit/audit/schedule"
)

// A model is what the house book says of one model.
type model struct {
	row  *schedule.RatingRow
	kind string // "loudspeaker", "control", "amplifier"
}

// modelKey is the form in which two spellings of one model meet: lower case,
// without spaces, hyphens, underscores and dots. "WK-35" is "wk 35"; "WK-35+"
// is another product.
func modelKey(name string) string {
	plain := true
	for i := 0; i < len(name) && plain; i++ {
		c := name[i]
		plain = c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '+' || c == '/'
	}
	if plain {
		return name
	}
	var buffer [64]byte
	return string(appendModelKey(buffer[:0], name))
}

// sameModel reports whether two names have one modelKey.
func sameModel(a, b string) bool {
	var x, y [64]byte
	return bytes.Equal(appendModelKey(x[:0], a), appendModelKey(y[:0], b))
}

// appendModelKey appends the modelKey of a name.
func appendModelKey(b []byte, name string) []byte {
	for _, r := range name {
		switch r {
		case ' ', '\t', '\u00a0', '-', '_', '.', '–':
			continue
		}
		if r < utf8.RuneSelf {
			if 'A' <= r && r <= 'Z' {
				r += 'a' - 'A'
			}
			b = append(b, byte(r))
			continue
		}
		b = utf8.AppendRune(b, unicode.ToLower(r))
	}
	return b
}

// model looks a model up, nil when the house book does not know it as that kind.
func (s *Settings) model(name schedule.Text, kind string) *model {
	if len(s.models) == 0 || name.Value == "" {
		return nil
	}
	if m := s.models[modelKey(name.Value)]; m != nil && m.kind == kind {
		return m
	}
	return nil
}

// rated returns the model's rating for a line voltage (0: not known), and the
// line voltage that the rating was given for (0: any). The rating given for
// this very voltage comes first, then one for any voltage, then the one of the
// nearest higher voltage, then that of the nearest lower one.
func (m *model) rated(lineV float64) (schedule.Quantity[schedule.Watts], float64) {
	best, bestV, bestRank := schedule.Quantity[schedule.Watts]{}, 0.0, 5
	for _, r := range m.row.Rated {
		v := float64(r.Volts)
		rank := 4
		switch {
		case v > 0 && lineV > 0 && line.SameClass(v, lineV):
			rank = 0
		case v == 0:
			rank = 1
		case lineV > 0 && v > lineV:
			rank = 2
		case lineV > 0:
			rank = 3
		}
		nearer := rank == bestRank && (rank == 2 && v < bestV || rank == 3 && v > bestV)
		if rank < bestRank || nearer {
			best, bestV, bestRank = r.Watts, v, rank
		}
	}
	if best.Had() {
		best.How = schedule.FromHouseBook
	}
	return best, bestV
}

// weaker reports whether a value was only taken from a name or a habit, so
// that what the house book states replaces it.
func weaker(how schedule.How) bool {
	switch how {
	case schedule.NotHad, schedule.FromModelName, schedule.Estimated, schedule.Default:
		return true
	}
	return false
}
