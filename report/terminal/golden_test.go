package terminal_test

import (
	"fmt"
	"testing"

	"lineaudit/report/reporttest"
	"lineaudit/report/terminal"
)

func TestWholeScreen(t *testing.T) {
	for _, width := range []int{80, 120} {
		reporttest.Golden(t, fmt.Sprint("screen", width), screen(t, reporttest.Fixed(), terminal.Options{Width: width, Out: "out"}))
	}
}
