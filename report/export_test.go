package report

import "slices"

// NamedRules are the rules that reports treat in a way of their own.
func NamedRules() []string { return slices.Concat(onPaper, disagreements) }
