package audit

import (
	"cmp"
	"fmt"
	"slices"
)

// mostCauses is how many causes "what to fix first" names.
const mostCauses = 12

// firstCauses gathers the findings of the current jobs by the equipment or the
// habit behind them, and by rule: what stands behind two findings or more, the
// causes with the highest total score first. A finding may count for several.
func firstCauses(findings []*Finding, current []*Result) []Cause {
	site := map[*Finding]string{}
	for _, r := range current {
		for _, f := range r.Findings {
			site[f] = folded(siteName(r.Job))
		}
	}
	type key struct{ kind, name string }
	at := map[key]int{}
	var causes []Cause
	total := 0.0
	add := func(kind, name string, f *Finding) {
		k := key{kind, modelKey(name)}
		i, ok := at[k]
		if !ok {
			i = len(causes)
			at[k] = i
			causes = append(causes, Cause{Kind: kind, Name: name})
		}
		causes[i].Findings = append(causes[i].Findings, f)
		causes[i].Score += f.Score
	}
	for _, f := range findings {
		total += f.Score
		for _, e := range f.equipment {
			add(e.kind, e.name, f)
		}
		add("rule", f.Rule.Name, f)
	}
	kept := causes[:0]
	for _, c := range causes {
		if len(c.Findings) < 2 {
			continue
		}
		sites := map[string]bool{}
		for _, f := range c.Findings {
			sites[site[f]] = true
		}
		c.Sites = len(sites)
		if total > 0 {
			c.Share = c.Score / total
		}
		c.Text = fmt.Sprintf("%s %s stands behind %d findings at %s", c.Kind, c.Name, len(c.Findings), counted(float64(c.Sites), "site"))
		kept = append(kept, c)
	}
	slices.SortStableFunc(kept, func(a, b Cause) int {
		return cmp.Or(cmp.Compare(b.Score, a.Score), cmp.Compare(a.Kind, b.Kind), cmp.Compare(a.Name, b.Name))
	})
	return kept[:min(len(kept), mostCauses)]
}
