package strike

// A Builder gathers the text of a cell piece by piece.
type Builder struct {
	text []byte
	ends []end
}

// end closes a run: the length of the text up to it, and its style.
type end struct {
	at     int
	struck bool
}

// Add appends a piece of text in one style.
func (b *Builder) Add(text string, struck bool) {
	if text == "" {
		return
	}
	b.text = append(b.text, text...)
	if n := len(b.ends); n > 0 && b.ends[n-1].struck == struck {
		b.ends[n-1].at = len(b.text)
		return
	}
	b.ends = append(b.ends, end{len(b.text), struck})
}

// Len returns the number of bytes so far.
func (b *Builder) Len() int { return len(b.text) }

// String returns the whole text.
func (b *Builder) String() string { return string(b.text) }

// Runs returns the pieces, neighbours of one style joined.
func (b *Builder) Runs() []Run {
	runs := make([]Run, len(b.ends))
	from := 0
	for i, e := range b.ends {
		runs[i] = Run{string(b.text[from:e.at]), e.struck}
		from = e.at
	}
	return runs
}
