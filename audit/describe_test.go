package audit

import (
	"strings"
	"testing"
)

func TestEveryRuleIsDescribed(t *testing.T) {
	all := DescribeRules(DefaultSettings())
	if len(all) != len(Rules()) {
		t.Fatalf("%d descriptions of %d rules", len(all), len(Rules()))
	}
	page := RulesMarkdown(DefaultSettings())
	for i, d := range all {
		if d.Name != Rules()[i].Name || d.What == "" || d.Do == "" || d.Example == "" || d.ExampleRows == "" || d.OnSite == "" {
			t.Errorf("%s: incomplete: %+v", d.Name, d)
		}
		if !strings.Contains(page, "### "+d.Name+"\n") || !strings.Contains(page, d.Limits[0].Source) {
			t.Errorf("%s is missing from the page", d.Name)
		}
	}
}
