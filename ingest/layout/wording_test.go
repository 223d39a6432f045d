package layout

import (
	"math"
	"math/rand/v2"
	"sync"
	"testing"
)

// What is asked twice is answered alike, whoever asks first.
func TestWordingAnswersAlike(t *testing.T) {
	texts := []string{"", "Ch 1", "A1", "LS-07", "6 W", "100 V line", "4 x 250 W", "LS1/6W", "ditto", "Zone", "Note: all taps checked", "pump", "Deckenlautsprecher\n6 W"}
	var wg sync.WaitGroup
	for range 4 {
		wg.Go(func() {
			for _, text := range texts {
				w, fresh := wordingOf(text), &wording{text: text, line: oneLine(text)}
				for q := range question(questions) {
					if got, want := w.is(q), fresh.answer(q); got != want || w.is(q) != want {
						t.Errorf("%q, question %d: %v, want %v", text, q, got, want)
					}
				}
				if got, want := w.read().look, readLook(oneLine(text)); got != want {
					t.Errorf("%q looks %b, want %b", text, got, want)
				}
			}
		})
	}
	wg.Wait()
	for q, text := range map[question]string{outputAlone: "Ch 1", amplifierTag: "A1", numberedLikeTags: "LS-07", onlyFigure: "6 W", lineVoltage: "100 V line", amplifierRating: "4 x 250 W", oneLoudspeaker: "LS1/6W", dittoMark: "ditto", listedHeader: "Zone"} {
		if !wordingOf(text).is(q) {
			t.Errorf("%q: question %d is not answered by yes", text, q)
		}
	}
}

// The sum of what is assigned is the greatest there is, also where each row
// simply has its best column.
func TestAssignIsBest(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 2))
	var a assigner
	simple := 0
	for range 3000 {
		rows := 1 + r.IntN(4)
		columns := rows + r.IntN(4)
		gain := make([][]float64, rows)
		for i := range gain {
			gain[i] = make([]float64, columns)
			for j := range gain[i] {
				gain[i][j] = float64(r.IntN(20)) / 10
			}
		}
		if a.eachItsBest(gain) {
			simple++
		}
		sum, used := 0.0, map[int]bool{}
		for i, j := range a.assign(gain) {
			sum += gain[i][j]
			if used[j] {
				t.Fatalf("column %d twice in %v", j, gain)
			}
			used[j] = true
		}
		if best := bestSum(gain, 0, map[int]bool{}); math.Abs(sum-best) > 1e-9 {
			t.Fatalf("%v gives %g, not %g", gain, sum, best)
		}
	}
	if simple < 100 {
		t.Errorf("only %d simple cases", simple)
	}
}

func bestSum(gain [][]float64, row int, used map[int]bool) float64 {
	if row == len(gain) {
		return 0
	}
	best := math.Inf(-1)
	for j, g := range gain[row] {
		if !used[j] {
			used[j] = true
			best = max(best, g+bestSum(gain, row+1, used))
			used[j] = false
		}
	}
	return best
}
