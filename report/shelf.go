package report

import (
	"encoding/binary"
	"iter"
	"math"
	"slices"
	"sync"

	"lineaudit/audit"
	"lineaudit/report/scratch"
)

// A Shelf holds the rows of tables that only repeat what a job says - every
// loudspeaker, every check that held - in a temporary file: an archive has too
// many of them to hold in memory. Rows come back as they went in, job by job.
type Shelf struct {
	mu   sync.Mutex
	file *scratch.File
	size int64 // bytes written or about to be
	jobs map[*audit.Result]*shelved
	err  error // the first that reading or writing met

	places map[string]int // of the job tables, by name
}

// shelved says where the rows of one job lie: those of table i end at ends[i],
// counted from at, and there are counts[i] of them.
type shelved struct {
	at     int64
	ends   []uint32
	counts []uint32
}

// NewShelf makes a shelf in the folder for temporary files. Its caller must close it.
func NewShelf() (*Shelf, error) {
	f, err := scratch.New("lineaudit-*.rows")
	if err != nil {
		return nil, err
	}
	s := &Shelf{file: f, jobs: map[*audit.Result]*shelved{}, places: map[string]int{}}
	for i, t := range (&Audit{}).jobTables() {
		s.places[t.Name] = i
	}
	return s, nil
}

// Close takes the file away.
func (s *Shelf) Close() error { return s.file.Close() }

// Err returns what went wrong with the file, if anything: tables then lack rows.
func (s *Shelf) Err() error {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.err
}

func (s *Shelf) fail(err error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	if s.err == nil {
		s.err = err
	}
}

// Keep writes the rows of a result to the shelf and returns the result without
// what stands in them. Several goroutines may keep results at once.
func (s *Shelf) Keep(r *audit.Result) *audit.Result {
	one := &Audit{Files: []File{{Results: []*audit.Result{r}}}}
	var out []byte
	place := &shelved{}
	for _, t := range one.jobTables() {
		n := uint32(0)
		for row := range t.Rows {
			out = appendRow(out, row)
			n++
		}
		place.ends = append(place.ends, uint32(len(out)))
		place.counts = append(place.counts, n)
	}
	light := r.Shed()
	s.mu.Lock()
	place.at = s.size
	s.size += int64(len(out))
	s.jobs[light] = place
	s.mu.Unlock()
	if _, err := s.file.WriteAt(out, place.at); err != nil {
		s.fail(err)
	}
	return light
}

// rows returns the rows of one table of a result that was kept. Each row holds
// until the next one.
func (s *Shelf) rows(p *shelved, table int) iter.Seq[[]Value] {
	return func(yield func([]Value) bool) {
		from := uint32(0)
		if table > 0 {
			from = p.ends[table-1]
		}
		packed := make([]byte, p.ends[table]-from)
		if _, err := s.file.ReadAt(packed, p.at+int64(from)); err != nil && len(packed) > 0 {
			s.fail(err)
			return
		}
		text := string(packed)
		var row []Value
		for range p.counts[table] {
			row, text = cutRow(row, text)
			if !yield(row) {
				return
			}
		}
	}
}

// How a value begins: nothing, a number of 8 bytes, or else a text whose
// length stands in front of it, plus wordsFrom.
const (
	blankValue = iota
	numberValue
	wordsFrom
)

func appendRow(b []byte, row []Value) []byte {
	b = binary.AppendUvarint(b, uint64(len(row)))
	for _, v := range row {
		switch {
		case v.IsNum:
			b = binary.LittleEndian.AppendUint64(append(b, numberValue), math.Float64bits(v.Number))
		case v.Words == "":
			b = append(b, blankValue)
		default:
			b = append(binary.AppendUvarint(b, uint64(len(v.Words))+wordsFrom), v.Words...)
		}
	}
	return b
}

// cutRow takes a row off the front of what appendRow wrote, in the memory of another.
func cutRow(row []Value, s string) ([]Value, string) {
	n, s := cutUvarint(s)
	row = slices.Grow(row[:0], int(n))[:n]
	for i := range row {
		row[i] = Value{}
		var kind uint64
		switch kind, s = cutUvarint(s); kind {
		case blankValue:
		case numberValue:
			row[i] = number(math.Float64frombits(binary.LittleEndian.Uint64([]byte(s[:8]))))
			s = s[8:]
		default:
			row[i] = words(s[:kind-wordsFrom])
			s = s[kind-wordsFrom:]
		}
	}
	return row, s
}

func cutUvarint(s string) (uint64, string) {
	v := uint64(0)
	for i := 0; ; i++ {
		v |= uint64(s[i]&0x7f) << (7 * i)
		if s[i] < 0x80 {
			return v, s[i+1:]
		}
	}
}

// A jobRows yields the rows of one job in a table.
type jobRows func(r *audit.Result, yield func(...Value) bool) bool

// jobTables are the tables, and lists that several tables are made of, whose
// rows come from one job at a time and are the same before and after ranking.
func (a *Audit) jobTables() []Table {
	return []Table{a.LoudspeakersTable(), a.ZonesTable(), a.ChannelsTable(), a.ControlsTable(), a.AmplifiersTable(), a.LinesTable(), a.PassedTable(),
		a.AssumptionsTable(), a.list("extent", extentRows), a.list("left out", leftOutRows), a.list("unshown", unshownRows),
		a.list("outcomes", outcomeRows), a.list("loads", loadRows)}
}

// list is a list of which no one but other tables know.
func (a *Audit) list(name string, rows jobRows) Table {
	return Table{Name: name, Rows: a.eachJob(name, rows)}
}

// eachJob walks the results in input order, yielding the rows of each.
func (a *Audit) eachJob(name string, rows jobRows) iter.Seq[[]Value] {
	return func(yield func([]Value) bool) {
		for _, r := range a.Results() {
			for row := range a.ofJob(r, name, rows) {
				if !yield(row) {
					return
				}
			}
		}
	}
}

// ofJob is the rows of one result in a table, from the shelf if it is there.
func (a *Audit) ofJob(r *audit.Result, name string, rows jobRows) iter.Seq[[]Value] {
	if p := a.shelved(r); p != nil {
		return a.Shelf.rows(p, a.Shelf.places[name])
	}
	return func(yield func([]Value) bool) { rows(r, func(v ...Value) bool { return yield(v) }) }
}

// count adds up the rows of all results in a table; n counts those of a result
// that is not on the shelf.
func (a *Audit) count(name string, n func(r *audit.Result) int) int {
	sum := 0
	for _, r := range a.Results() {
		if p := a.shelved(r); p != nil {
			sum += int(p.counts[a.Shelf.places[name]])
		} else {
			sum += n(r)
		}
	}
	return sum
}

func (a *Audit) shelved(r *audit.Result) *shelved {
	if a.Shelf == nil {
		return nil
	}
	return a.Shelf.jobs[r]
}
