package layout

import (
	"cmp"
	"slices"
	"strings"

	"lineaudit/audit/schedule"
	"lineaudit/ingest/notation"
	"lineaudit/ingest/vocabulary"
)

// What a database writes is often a tree: each row names the row that it hangs
// on, "LS-12 on VC-3 on AMP-1/2". It becomes upright by giving each loudspeaker
// the names of all that it hangs on.

// A tree is the rows of one list, and for each the row that it hangs on.
type tree struct {
	name    int                // the column with what a row is called
	id      int                // the column with what other rows call it
	parent  int                // the column with what it hangs on
	on      []int              // for each row the one that it hangs on, -1 for none
	carries []bool             // whether others hang on it
	roles   []Kind             // what device it is; "" where nothing tells
	places  []vocabulary.Field // what place it is
	records []Record
}

// fewestHung is the fewest rows of a tree that hang on others.
const fewestHung = 3

// describers are the fields that say what a row is, the plainest first.
var describers = []vocabulary.Field{vocabulary.Kind, vocabulary.Describe, vocabulary.Model, vocabulary.Tag, vocabulary.Item}

// findTree finds the column that names the rows that others hang on, and
// reports whether there is one: at least one row hangs on a row that hangs on
// another, no loudspeaker carries anything, and none hangs on itself. A list of cables, or of
// loudspeakers in a chain, is none.
func (f *finder) findTree(t *Table) (*tree, bool) {
	if t.Kind == Cables || t.Matrix || len(t.Records) <= fewestHung {
		return nil, false
	}
	rows := make(map[string]int, len(t.Records))
	for id := range t.Columns {
		if !rowsByText(t, id, rows) {
			continue
		}
		for parent := range t.Columns {
			if parent == id {
				continue
			}
			f.watch.Step()
			if on := hungOn(t, parent, rows); on != nil {
				tr := &tree{id: id, name: id, parent: parent, on: on, carries: make([]bool, len(on)), records: t.Records}
				for _, j := range on {
					if j >= 0 {
						tr.carries[j] = true
					}
				}
				if i := slices.IndexFunc(t.Columns, func(c Column) bool { return c.Field == vocabulary.Tag }); i >= 0 && i != parent {
					tr.name = i
				}
				tr.tellRoles(t, f.s)
				tr.tellOutputs()
				return tr, tr.sound()
			}
		}
	}
	return nil, false
}

// rowsByText leaves in rows the place of the record of each text of a column;
// it is false where some row has none, or two have the same.
func rowsByText(t *Table, col int, rows map[string]int) bool {
	if f := t.Columns[col].Field; f == vocabulary.To || f == vocabulary.Cable {
		return false
	}
	clear(rows)
	for i := range t.Records {
		r := &t.Records[i]
		if col >= len(r.Values) {
			continue
		}
		text := r.Values[col].Text
		if text == "" || r.Values[col].How != schedule.Stated {
			if r.Class == Device {
				return false
			}
			continue
		}
		if _, twice := rows[text]; twice {
			return false
		}
		rows[text] = i
	}
	return true
}

// hungOn is for each record the one that its cell of a column names, -1 for
// none; nil where the column does not name rows.
func hungOn(t *Table, parent int, rows map[string]int) []int {
	var on []int // from the first that names a row
	hung, strays := 0, 0
	for i := range t.Records {
		if parent >= len(t.Records[i].Values) {
			continue
		}
		text := t.Records[i].Values[parent].Text
		if text == "" || isMissing(text) {
			continue
		}
		switch j, ok := rows[text]; {
		case !ok:
			strays++
		case j == i:
			return nil
		default:
			if on == nil {
				on = slices.Repeat([]int{-1}, len(t.Records))
			}
			on[i] = j
			hung++
		}
		if strays > 3 && strays > hung {
			return nil
		}
	}
	deep := slices.ContainsFunc(on, func(j int) bool { return j >= 0 && on[j] >= 0 })
	if hung < fewestHung || 10*strays > hung || !deep {
		return nil
	}
	return on
}

// tellRoles tells what each row is from its words, else from its tag. What
// carries nothing and has a tap is a loudspeaker.
func (tr *tree) tellRoles(t *Table, s *vocabulary.Scorer) {
	tr.roles = make([]Kind, len(tr.records))
	tr.places = make([]vocabulary.Field, len(tr.records))
	for i := range tr.records {
		values, described := tr.records[i].Values, false
		for _, f := range describers {
			c := slices.IndexFunc(t.Columns, func(c Column) bool { return c.Field == f })
			if c < 0 || c >= len(values) || c == tr.parent {
				continue
			}
			tr.roles[i], tr.places[i] = roleOf(values[c].Text, s)
			if tr.told(i) {
				break
			}
			described = described || values[c].Text != "" && c != tr.name && c != tr.id
		}
		if !tr.told(i) && !described && tr.name < len(values) {
			tr.roles[i] = keyRoles[notation.KeyOf(values[tr.name].Text).Kind]
		}
		if !tr.told(i) && !tr.carries[i] && filledIn(t, values, vocabulary.Tap) {
			tr.roles[i] = Loudspeakers
		}
	}
}

// tellOutputs: an amplifier that hangs on an amplifier is an output of it.
func (tr *tree) tellOutputs() {
	for i, j := range tr.on {
		if j >= 0 && tr.roles[i] == Amplifiers && tr.roles[j] == Amplifiers {
			tr.roles[i] = Channels
		}
	}
}

// told reports whether something tells what a row is.
func (tr *tree) told(i int) bool { return tr.roles[i] != "" || tr.places[i] != vocabulary.Unknown }

func filledIn(t *Table, values []Value, f vocabulary.Field) bool {
	c := slices.IndexFunc(t.Columns, func(c Column) bool { return c.Field == f })
	return c >= 0 && c < len(values) && values[c].Text != ""
}

// rolesOf are the kinds of the sorts of devices, and namesOf the fields that name them in other rows.
var (
	rolesOf  = map[vocabulary.Device]Kind{vocabulary.LoudspeakerDevice: Loudspeakers, vocabulary.ControlDevice: Controls, vocabulary.AmplifierDevice: Amplifiers}
	keyRoles = map[notation.KeyKind]Kind{notation.KeyLoudspeaker: Loudspeakers, notation.KeyControl: Controls, notation.KeyAmplifier: Amplifiers}
	namesOf  = map[Kind]vocabulary.Field{Controls: vocabulary.Control, Amplifiers: vocabulary.Amplifier, Channels: vocabulary.Channel}
	placesOf = map[string]vocabulary.Field{"zone": vocabulary.Zone, "room": vocabulary.Room, "line": vocabulary.Circuit, "floor": vocabulary.Floor, "building": vocabulary.Building}
)

// roleOf tells from a text what kind of device a row is, or what kind of place.
func roleOf(t string, s *vocabulary.Scorer) (Kind, vocabulary.Field) {
	concepts := s.Concepts(t)
	if len(concepts) > 0 && concepts[0] == "channel" {
		return Channels, vocabulary.Unknown
	}
	if role := rolesOf[vocabulary.DeviceIn(t)]; role != "" {
		if role == Amplifiers && slices.Contains(concepts, "channel") && !anyDigit(t) { // "amplifier output"
			role = Channels
		}
		return role, vocabulary.Unknown
	}
	for _, c := range concepts {
		if place, ok := placesOf[c]; ok {
			return "", place
		}
	}
	return "", vocabulary.Unknown
}

// sound reports whether what the rows are fits how they hang: there are
// loudspeakers, which carry nothing, on devices or places; and no row hangs on itself in the end.
func (tr *tree) sound() bool {
	loudspeakers, carriers := false, false
	for i, j := range tr.on {
		loudspeakers = loudspeakers || tr.roles[i] == Loudspeakers && j >= 0
		carriers = carriers || tr.carries[i] && tr.told(i)
		if j >= 0 && tr.roles[j] == Loudspeakers {
			return false
		}
		for steps := 0; j >= 0; j = tr.on[j] {
			if steps++; steps > mostLevels {
				return false
			}
		}
	}
	return loudspeakers && carriers
}

// mostLevels is the most rows that hang one on the other, from the building down to the loudspeaker.
const mostLevels = 24

// upright makes of the tree a list for each kind of its rows; what the rows
// hang on stands in columns of its own.
func (tr *tree) upright(t *Table) []*Table {
	hangs := &t.Columns[tr.parent]
	hangs.Field, hangs.RunnerUp, hangs.Confidence = vocabulary.Ignored, vocabulary.Unknown, 0.9
	hangs.Evidence = "names the row that a row hangs on"
	t.Columns[tr.name].Field = vocabulary.Tag
	guessed := tr.guessControls(t)
	tr.classify()
	for _, i := range guessed {
		if r := &tr.records[i]; r.Class == Device {
			r.Reason = GuessedControl
		}
	}
	lists := map[Kind]*Table{}
	var out []*Table
	for i := range tr.records {
		role := cmp.Or(tr.roles[i], Loudspeakers)
		if lists[role] == nil {
			lists[role] = tr.list(t, role)
			out = append(out, lists[role])
		}
		lists[role].Records = append(lists[role].Records, tr.stand(i, lists[role]))
	}
	for role, list := range lists {
		for i := range list.Columns {
			if !list.filled(i) { // it has nothing to be in doubt about
				list.Columns[i].RunnerUp = vocabulary.Unknown
			}
		}
		if role != Loudspeakers {
			rate(list, ratingFields[role])
		}
	}
	return out
}

// classify says of each row whether it is a device; what looked like a title
// because little stands on it is none.
func (tr *tree) classify() {
	titles := map[int]bool{}
	for i := range tr.records {
		if r := &tr.records[i]; tr.carries[i] {
			titles[r.Rows.First] = true
			switch {
			case r.Class == Struck || r.Class == Hidden:
			case tr.roles[i] != "":
				r.Class, r.Reason = Device, ""
			default:
				r.Class, r.Reason, r.Text = NoDevice, "other rows hang on it", textOf(r.Values)
			}
		}
	}
	for i := range tr.records {
		r := &tr.records[i]
		r.Sections = slices.DeleteFunc(slices.Clone(r.Sections), func(f Fact) bool { return titles[int(f.At.Row)] })
	}
}

// textOf is the text of a row.
func textOf(values []Value) string {
	var texts []string
	for _, v := range values {
		if v.Text != "" {
			texts = append(texts, v.Text)
		}
	}
	return strings.Join(texts, " | ")
}

// hungFields are the fields of the columns for what rows hang on.
var hungFields = []vocabulary.Field{vocabulary.Control, vocabulary.Channel, vocabulary.Amplifier, vocabulary.Circuit, vocabulary.Zone, vocabulary.Room, vocabulary.Floor, vocabulary.Building}

// list makes the empty list of one kind of rows.
func (tr *tree) list(t *Table, role Kind) *Table {
	list := *t
	list.Kind, list.Tree, list.Records, list.Columns = role, true, nil, slices.Clone(t.Columns)
	if f := namesOf[role]; f != vocabulary.Unknown {
		list.Columns[tr.name].Field = f
	}
	parent := t.Columns[tr.parent]
	for _, f := range hungFields {
		if f == namesOf[role] || !tr.hangOn(f, role) || slices.ContainsFunc(list.Columns, func(c Column) bool { return c.Field == f }) {
			continue
		}
		list.Columns = append(list.Columns, Column{At: parent.At, Header: parent.Header, Field: f, Confidence: 0.85, Evidence: "what the rows hang on, by their words"})
	}
	return &list
}

// ratingFields are the fields for the watts of rows that are no loudspeakers, and
// powers those that a list of all kinds of rows has for watts.
var (
	ratingFields = map[Kind]vocabulary.Field{Controls: vocabulary.ControlWatts, Channels: vocabulary.ChannelWatts, Amplifiers: vocabulary.ChannelWatts}
	powers       = []vocabulary.Field{vocabulary.Tap, vocabulary.RatedWatts, vocabulary.ControlWatts, vocabulary.ChannelWatts}
)

// rate takes the one column of watts that is filled in a list for its ratings.
func rate(list *Table, as vocabulary.Field) {
	var filled []*Column
	for i := range list.Columns {
		switch c := &list.Columns[i]; {
		case !slices.Contains(powers, c.Field):
		case list.filled(i):
			filled = append(filled, c)
		default:
			c.Field = vocabulary.Ignored
		}
	}
	if len(filled) == 1 {
		filled[0].Field, filled[0].RunnerUp = as, vocabulary.Unknown
	}
}

// filled reports whether some row has a value in a column.
func (t *Table) filled(col int) bool {
	return slices.ContainsFunc(t.Records, func(r Record) bool { return col < len(r.Values) && r.Values[col].Text != "" })
}

// hangOn reports whether some row of a kind hangs on what a field names.
func (tr *tree) hangOn(f vocabulary.Field, role Kind) bool {
	for i := range tr.on {
		if tr.roles[i] == role && tr.over(i, f) >= 0 {
			return true
		}
	}
	return false
}

// over is the nearest row that row i hangs on and that a field names, -1 for none.
func (tr *tree) over(i int, f vocabulary.Field) int {
	for j := tr.on[i]; j >= 0; j = tr.on[j] {
		if tr.places[j] == f || tr.roles[j] != "" && namesOf[tr.roles[j]] == f {
			return j
		}
	}
	return -1
}

// stand is the record of row i with what it hangs on.
func (tr *tree) stand(i int, list *Table) Record {
	r := tr.records[i]
	n := len(r.Values)
	r.Values = pad(r.Values, len(list.Columns))
	for c := n; c < len(list.Columns); c++ {
		j := tr.over(i, list.Columns[c].Field)
		if j < 0 {
			continue
		}
		if r.Values[c] = tr.records[j].Values[tr.name]; r.Values[c].Text == "" {
			r.Values[c] = tr.records[j].Values[tr.id]
		}
	}
	return r
}
