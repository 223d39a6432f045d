package schedule

import "testing"

// A table that lies on its side has its devices in columns: C to E, and not row 4.
func TestSpanHolds(t *testing.T) {
	rows, columns := Span{First: 3, Last: 5}, Span{First: 3, Last: 5, Columns: true}
	for _, tt := range []struct {
		span Span
		at   Ref
		want bool
	}{
		{rows, Ref{Row: 4, Col: 1}, true}, {rows, Ref{Row: 1, Col: 4}, false}, {rows, Ref{Row: 6, Col: 4}, false},
		{columns, Ref{Row: 1, Col: 4}, true}, {columns, Ref{Row: 4, Col: 1}, false},
		{Span{First: 3}, Ref{Row: 3}, true}, {Span{}, Ref{}, false},
	} {
		if got := tt.span.Holds(tt.at); got != tt.want {
			t.Errorf("%s holds %s: %v", tt.span, tt.at, got)
		}
	}
}

func TestControlLabel(t *testing.T) {
	for name, want := range map[string]string{"R1": "control R1", "control (Terrace)": "control (Terrace)", "knob (Terrace)": "control knob (Terrace)", "Control 3": "Control 3"} {
		if got := (&Control{Name: name}).Label(); got != want {
			t.Errorf("%q: %q, want %q", name, got, want)
		}
	}
}
