package audit

import "slices"

// registry is every rule in the order of the documentation.
var registry = []*Rule{
	controlOverload,
	channelOverload,
	headroomShort,
	frameOverload,
	lineLoss,
	voltageMismatch,
	lowImpedanceOnLine,
	totalMismatch,
	implausible,
	cannotCheck,
}

// Rules returns every rule in the order of the documentation. The rules are
// shared and must not be changed.
func Rules() []*Rule { return slices.Clone(registry) }

// RuleNamed returns the rule of that name, nil when there is none.
func RuleNamed(name string) *Rule {
	for _, r := range registry {
		if r.Name == name {
			return r
		}
	}
	return nil
}
