package notation

import (
	"math"
	"regexp"
	"strings"
)

// Counts of loudspeakers beside a tap, and what a tap is a part of.

// groups reads "12 @ 1W, 6 @ 1/2W".
func (r *tapReading) groups() (Tap, bool, error) {
	items := without(r.items, "k")
	shape := shapeOf(items)
	if !tapGroups.MatchString(shape) {
		if tapGroupsOr.MatchString(shape) && strings.Contains(shape, "o") {
			return Tap{}, false, ErrAmbiguous // alternatives
		}
		return Tap{}, false, nil
	}
	tap := Tap{Kind: TapWatts, AtV: r.atV, LowW: math.Inf(1)}
	bare := true
	for i := 0; i < len(items); i += 4 {
		if !isCount(items[i]) {
			return Tap{}, false, ErrNotUnderstood
		}
		g := TapGroup{Count: int(items[i].value), W: items[i+2].value}
		bare = bare && items[i+2].code != codePower
		tap.Groups = append(tap.Groups, g)
		tap.LowW, tap.HighW = min(tap.LowW, g.W), max(tap.HighW, g.W)
	}
	if bare {
		r.doubts |= Bare
	}
	return tap, true, nil
}

// Shapes of a count beside a tap; k are the devices' words, n "no.".
var (
	countFirst = regexp.MustCompile(`^(?:N[kn]?[x@]|N[kn]B|n[.]?N[x@]|\(N[kn]?x?\)[x@B]?k?@?|N[kn]@?|xN[@,]?)[PNF]`)
	countLast  = regexp.MustCompile(`[PNF](?:x[N]|\(xN\)|\(Nx\)|[,/;(]?N[kn]\)?|\(?N[kn]\)?)$`)
)

// takeCount moves a number of loudspeakers out of the items.
func (r *tapReading) takeCount() error {
	shape := r.shape()
	switch {
	case countFirst.MatchString(shape) && !strings.HasPrefix(shape, "NN") && !strings.HasPrefix(shape, "NP"):
		end := len(countFirst.FindString(shape)) - 1
		if err := r.setCount(r.items[:end]); err != nil {
			return err
		}
		r.items = r.items[end:]
	case countLast.MatchString(shape):
		at := countLast.FindStringIndex(shape)[0] + 1
		if err := r.setCount(r.items[at:]); err != nil {
			return err
		}
		r.items = r.items[:at]
	}
	r.items = without(r.items, "k")
	return nil
}

func (r *tapReading) setCount(items []item) error {
	for _, it := range items {
		if it.code != codeNumber {
			continue
		}
		if !isCount(it) || r.count != 0 {
			return ErrNotUnderstood
		}
		r.count = int(it.value)
	}
	return nil
}

// countedEach turns the word between a count and a tap into a sign: "2 je 6 W".
func (r *tapReading) countedEach() {
	for i := 1; i+1 < len(r.items); i++ {
		if r.items[i].code == codeEach && isCount(r.items[i-1]) && r.items[i+1].code == codePower {
			r.items[i].code = codeTimes
		}
	}
}

// outOfRated reads the word between a tap and the rated power, "3 W von 6 W",
// as one that says so. Elsewhere it means nothing here: "6 W sur 100 V".
func (r *tapReading) outOfRated() {
	for i := range r.items {
		if r.items[i].code != codeOutOf {
			continue
		}
		r.items[i].code = codeEach
		next, before := i+1, i-1
		if next == len(r.items) {
			continue
		}
		if before > 0 && r.items[before].code == '(' {
			before--
		}
		switch {
		case r.items[next].code == codeVolts:
			r.items[i].code = codeAt
		case before >= 0 && isValue(r.items[before].code) && isValue(r.items[next].code) && r.items[before].value < r.items[next].value:
			r.items[i].code = codeRated
		}
	}
}
