package audit

import "slices"

// registry is every rule in the order of the documentation. Checks run in this
// order: a rule may read the verdicts of those before it.
var registry = []*Rule{
	controlOverload,
	channelOverload,
	headroomShort,
	frameOverload,
	lineLoss,
	unevenLevel,
	voltageMismatch,
	lowImpedanceOnLine,
	controlVoltageMismatch,
	controlsInSeries,
	controlWithoutOverride,
	emergencyOnOneCircuit,
	bothOutputsLoaded,
	boxTooShallow,
	levelSetting,
	tapNotOffered,
	tapAboveRating,
	conductorTooSmall,
	cladAluminium,
	measuredLoadDiffers,
	totalMismatch,
	duplicateTag,
	countMismatch,
	looseEnd,
	turnedIntoDate,
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
