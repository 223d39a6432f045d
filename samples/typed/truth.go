package typed

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"maps"
	"regexp"
	"slices"
	"strconv"
	"strings"
)

// columns are the truth tables and their columns: those of the program's own outputs, and a note on the trap.
var columns = map[string][]string{
	"files":        {"file", "kind", "job", "site", "revision", "superseded", "note"},
	"loudspeakers": {"file", "sheet", "rows", "job", "zone", "tag", "model", "count", "tap_w", "tap_v", "line_v", "control", "amplifier", "channel", "status", "room", "low_ohm", "note"},
	"channels":     {"file", "job", "amplifier", "channel", "line_v", "rated_w", "load_w", "load_min_w", "load_max_w", "note"},
	"amplifiers":   {"file", "job", "amplifier", "model", "rated_w", "load_w", "note"},
	"controls":     {"file", "job", "control", "zone", "rated_w", "load_w", "upstream", "note"},
	"lines":        {"file", "job", "line", "zone", "from", "to", "length_m", "area_mm2", "material", "note"},
	"rows":         {"file", "sheet", "row", "kind", "note"},
	"questions":    {"file", "job", "sheet", "rows", "must_be", "what"},
}

type record map[string]string

// Truth gathers what is known of the files.
type Truth struct {
	file, job string
	tables    map[string][]record
}

// told asks every case for its truth.
func told(all []Case) *Truth {
	t := &Truth{tables: map[string][]record{}}
	for _, c := range all {
		t.file, t.job = c.File, ""
		t.tables["files"] = append(t.tables["files"], record{"file": c.File, "kind": c.Kind})
		if c.Truth != nil {
			c.Truth(t)
		}
	}
	return t
}

// Is says what the file is: the job it belongs to (empty: none named), its site, and what makes it hard.
func (t *Truth) Is(job, site, note string) {
	t.job = job
	last := t.tables["files"][len(t.tables["files"])-1]
	last["job"], last["site"], last["note"] = job, site, note
}

// Also adds another job of the same file.
func (t *Truth) Also(job, site, note string) {
	t.job = job
	t.tables["files"] = append(t.tables["files"], record{"file": t.file, "kind": "schedule", "job": job, "site": site, "note": note})
}

// Revision marks the file's revision and whether a later one replaces it.
func (t *Truth) Revision(name string, superseded bool) {
	last := t.tables["files"][len(t.tables["files"])-1]
	last["revision"] = name
	if superseded {
		last["superseded"] = "yes"
	}
}

func (t *Truth) Speakers(common, block string) {
	t.add("loudspeakers", "count=1; status=installed; "+common, block)
}
func (t *Truth) Channels(common, block string)   { t.add("channels", common, block) }
func (t *Truth) Amplifiers(common, block string) { t.add("amplifiers", common, block) }
func (t *Truth) Controls(common, block string)   { t.add("controls", common, block) }
func (t *Truth) Lines(common, block string)      { t.add("lines", common, block) }

// Left lists rows that must not count as loudspeakers: row | kind | note.
func (t *Truth) Left(sheet, block string) {
	t.add("rows", "sheet="+sheet, "row|kind|note\n"+strings.Trim(block, "\n"))
}

// Asks lists what must be asked or assumed: rows | must be (asked, assumed) | what.
func (t *Truth) Asks(sheet, block string) {
	t.add("questions", "sheet="+sheet, "rows|must_be|what\n"+strings.Trim(block, "\n"))
}

// add reads a block: its first line names columns, each further line is a record on top of the common values ("name=value; name=value").
// "5..8" under rows stands for four records, with a tag such as "H1..H4" counted along.
func (t *Truth) add(table, common, block string) {
	base := record{"file": t.file, "job": t.job}
	for pair := range strings.SplitSeq(common, ";") {
		if name, val, ok := strings.Cut(strings.TrimSpace(pair), "="); ok {
			base[name] = val
		}
	}
	lines := strings.Split(strings.Trim(block, "\n"), "\n")
	names := strings.Split(lines[0], "|")
	for _, line := range lines[1:] {
		r := maps.Clone(base)
		cells := strings.Split(line, "|")
		if len(cells) > len(names) {
			panic(fmt.Sprintf("%s: %s: too many cells: %s", t.file, table, line))
		}
		for i, cell := range cells {
			r[strings.TrimSpace(names[i])] = strings.TrimSpace(cell)
		}
		for name := range r {
			if name != "job" && !slices.Contains(columns[table], name) {
				panic(fmt.Sprintf("%s: %s has no column %q", t.file, table, name))
			}
		}
		t.tables[table] = append(t.tables[table], spread(r)...)
	}
}

// spread makes one record a row of a record that stands for several.
func spread(r record) []record {
	from, to, ok := strings.Cut(r["rows"], "..")
	if !ok {
		return []record{r}
	}
	first, err := strconv.Atoi(from)
	Must(err)
	last, err := strconv.Atoi(to)
	Must(err)
	var out []record
	for row := first; row <= last; row++ {
		one := maps.Clone(r)
		one["rows"] = strconv.Itoa(row)
		if tag, _, ok := strings.Cut(r["tag"], ".."); ok {
			one["tag"] = counted(tag, row-first)
		}
		out = append(out, one)
	}
	return out
}

var trailing = regexp.MustCompile(`^(.*?)(\d+)$`)

// counted returns the tag n places after the given one: counted("LS-08", 2) is "LS-10".
func counted(tag string, n int) string {
	m := trailing.FindStringSubmatch(tag)
	number, err := strconv.Atoi(m[2])
	Must(err)
	return fmt.Sprintf("%s%0*d", m[1], len(m[2]), number+n)
}

// csv returns the tables by file name.
func (t *Truth) csv() map[string][]byte {
	out := map[string][]byte{}
	for name, cols := range columns {
		var buf bytes.Buffer
		w := csv.NewWriter(&buf)
		Must(w.Write(cols))
		for _, r := range t.tables[name] {
			line := make([]string, len(cols))
			for i, c := range cols {
				line[i] = r[c]
			}
			Must(w.Write(line))
		}
		w.Flush()
		Must(w.Error())
		out[name+".csv"] = buf.Bytes()
	}
	return out
}
