package audit

import (
	"fmt"
	"strings"
	"testing"
)

// check audits the case and compares with what it wants.
func (c *caseFile) check(t *testing.T) *Result {
	t.Helper()
	r := Check(c.job, DefaultSettings())
	for _, b := range r.Broken {
		t.Errorf("%s: broken rule: %s", c.name, b)
	}
	got := map[int][]string{}
	for _, f := range r.Findings {
		name := f.Rule.Name + ":" + f.Grade.String()
		if f.Certainty == Possible {
			name += "?"
		}
		got[int(f.At.Row)] = append(got[int(f.At.Row)], name)
	}
	asked := map[int][]string{}
	for _, q := range r.Questions {
		asked[int(q.At.Row)] = append(asked[int(q.At.Row)], "ask:"+q.Field)
	}
	for row, wants := range c.want {
		for _, w := range wants {
			pool := got
			if strings.HasPrefix(w, "ask:") {
				w = strings.ReplaceAll(w, "_", " ")
				pool = asked
			}
			if !take(pool, row, w) {
				t.Errorf("%s: line %d (%s): want %s, got findings %v, questions %v", c.name, row, c.rows[row], w, got[row], asked[row])
			}
		}
	}
	for row, left := range got {
		if len(left) > 0 {
			t.Errorf("%s: line %d (%s): unexpected %v: %s", c.name, row, c.rows[row], left, messages(r, row))
		}
	}
	if strings.Contains(c.name, "quiet") {
		for _, q := range r.Questions {
			t.Errorf("%s: unexpected question at %v: %s", c.name, q.At, q.Text)
		}
	}
	return r
}

// take removes the first entry that w describes: "rule", "rule:grade" or "rule:grade?".
func take(pool map[int][]string, row int, w string) bool {
	for i, g := range pool[row] {
		bare, _, _ := strings.Cut(g, ":")
		if g == w || bare == w && !strings.HasSuffix(g, "?") {
			pool[row] = append(pool[row][:i:i], pool[row][i+1:]...)
			return true
		}
	}
	return false
}

func messages(r *Result, row int) string {
	var out []string
	for _, f := range r.Findings {
		if int(f.At.Row) == row {
			out = append(out, fmt.Sprintf("%s: %s", f.Rule.Name, f.Message))
		}
	}
	return strings.Join(out, " | ")
}
