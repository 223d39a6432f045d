package audit

func firstCauses(findings []*Finding, current []*Result) []Cause { return nil }
