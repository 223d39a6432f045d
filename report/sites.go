package report

// SitesTable ranks the sites.
func (a *Audit) SitesTable() Table {
	return Table{
		Name: "sites", Title: "Sites", Note: "Ranked by their worst findings; a site without findings is at the end.",
		Columns: []Column{counted("place", "Place"), text("site", "Site", 30), figure("score", "Score", ""), counted("jobs", "Jobs"), counted("danger", "Danger"),
			counted("fault", "Fault"), counted("caution", "Caution"), counted("unknown", "Unknown"), counted("passed", "Checks passed"),
			counted("unshown", "Not shown"), counted("questions", "Questions"), long("worst", "Worst finding", 60)},
		Count: len(a.Archive.Sites),
		Rows: func(yield func([]Value) bool) {
			for _, s := range a.Archive.Sites {
				worst := ""
				if len(s.Findings) > 0 {
					worst = s.Findings[0].Place + ": " + Found(s.Findings[0])
				}
				if !yield([]Value{count(s.Place), words(s.Name), number(s.Score), count(len(s.Results)), count(s.Counts.Danger), count(s.Counts.Fault),
					count(s.Counts.Caution), count(s.Counts.Unknown), count(s.Counts.Passed), count(s.Counts.Unshown), count(s.Counts.Questions), words(worst)}) {
					return
				}
			}
		},
	}
}

// FirstTable is what to fix first across the archive.
func (a *Audit) FirstTable() Table {
	return Table{
		Name: "first", Title: "What to fix first", Note: "The few equipment types, cables and habits behind most of the risk.",
		Columns: []Column{counted("place", "Place"), text("kind", "Kind", 18), text("name", "Name", 24), long("text", "What it stands behind", 60),
			counted("findings", "Findings"), counted("sites", "Sites"), figure("share_pct", "Share of all risk", "%")},
		Count: len(a.Archive.First),
		Rows: func(yield func([]Value) bool) {
			for i, c := range a.Archive.First {
				if !yield([]Value{count(i + 1), words(c.Kind), words(c.Name), words(c.Text), count(len(c.Findings)), count(c.Sites), number(c.Share * 100)}) {
					return
				}
			}
		},
	}
}
