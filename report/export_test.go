package report

import "slices"

// NamedRules are the rules that reports treat in a way of their own.
func NamedRules() []string { return slices.Concat(onPaper, disagreements) }

// JobTables are the names of the tables that a shelf holds, as listed and as told.
func JobTables() (listed, told []string) {
	for _, t := range (&Audit{}).jobTables() {
		told = append(told, t.Name)
	}
	return jobTableNames, told
}
