package notation

import (
	"fmt"
	"strings"
	"testing"
	"time"
)

// A chain of outputs or devices is no range, and is seen to be none at once: every mark
// in it could part two ranges, of which each mark could again.
func TestChainsOfOutputs(t *testing.T) {
	for _, form := range []string{"A%d", "A%d.1", "LS-%d", "%d", "1.%d", "A/%d", "A.%d"} {
		for _, joint := range []string{" - ", "-", " to ", " bis ", "..", " / ", " – "} {
			for _, n := range []int{3, 12, 40} {
				var list []string
				for i := range n {
					list = append(list, fmt.Sprintf(form, i+1))
				}
				text := strings.Join(list, joint)
				start := time.Now()
				_, _ = ParseChannel(text)
				if took := time.Since(start); took > 2*time.Second {
					t.Fatalf("%q took %v", text, took)
				}
			}
		}
	}
}
