package page_test

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"time"
	"unicode"

	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/page"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"

	"lineaudit/audit/schedule"
	"lineaudit/report"
	ours "lineaudit/report/page"
	"lineaudit/report/reporttest"
)

func written(t *testing.T, a *report.Audit) string {
	t.Helper()
	var b bytes.Buffer
	if err := ours.Write(&b, a, map[string]string{"gardens/palm.xlsx": "marked/gardens/palm.xlsx"}); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// many is an audit of n jobs, every second one with an overloaded control.
func many(n int) *report.Audit {
	var jobs []*schedule.Job
	for i := range n {
		control := 100.0
		if i%2 == 0 {
			control = 50
		}
		jobs = append(jobs, reporttest.Job(fmt.Sprintf("job %03d.xlsx", i), fmt.Sprintf("Site %03d", i), 240, control, 10, 8))
	}
	return reporttest.Of(jobs...)
}

func TestHostileTextStaysText(t *testing.T) {
	text := written(t, reporttest.Hostile())
	if at := strings.IndexFunc(text, func(r rune) bool {
		return unicode.IsControl(r) && r != '\n' || r >= '\u202a' && r <= '\u202e' || r >= '\u2066' && r <= '\u2069'
	}); at >= 0 {
		t.Errorf("a character that controls how the rest is shown: %q", text[max(0, at-40):at+10])
	}
	for _, bad := range []string{"</script><script>", "<img src=x", "<b>=cmd"} {
		if strings.Contains(text, bad) {
			t.Errorf("%q stands in the page as markup", bad)
		}
	}
	for _, want := range []string{"http://", "https://", "//cdn"} {
		if strings.Contains(strings.ReplaceAll(text, "http://example.invalid", ""), want) {
			t.Errorf("the page refers to %q", want)
		}
	}
}

// What could not be marked or written, what was decided earlier, and the questions as they are sent are told.
func TestPageTellsWhatWasLeftOut(t *testing.T) {
	text := written(t, reporttest.Fixed())
	for _, want := range []string{"gardens/palm.xlsx: The workbook was left as it is", "rink.xlsx: no marked copy", "accepted; until the refit", "1. gardens/palm.xlsx, sheet Schedule, cell D20: At which distances",
		`href="#f-id-1"`, "marked/gardens/palm.xlsx", "Network of W1: the worst loudspeaker is LS-01 with 67.6 V, 3.40 dB"} {
		if !strings.Contains(text, want) {
			t.Errorf("%q is missing", want)
		}
	}
}

// browser starts a headless Chromium, or skips the test where there is none.
func browser(t *testing.T) context.Context {
	t.Helper()
	path := ""
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome"} {
		if p, err := exec.LookPath(name); err == nil {
			path = p
			break
		}
	}
	if path == "" {
		t.Skip("Chromium is not installed")
	}
	// The browser may still write while it ends, so its folder is taken away as far as it goes.
	profile, err := os.MkdirTemp("", "page-test-")
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { os.RemoveAll(profile) })
	alloc, cancelAlloc := chromedp.NewExecAllocator(context.Background(), append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(path), chromedp.NoSandbox, chromedp.UserDataDir(profile))...)
	ctx, cancel := chromedp.NewContext(alloc)
	ctx, cancelTime := context.WithTimeout(ctx, 90*time.Second)
	t.Cleanup(func() { cancelTime(); cancel(); cancelAlloc() })
	if err := chromedp.Run(ctx); err != nil { // starts it
		t.Fatal(err)
	}
	return ctx
}

func TestPageInChromium(t *testing.T) {
	ctx := browser(t)
	path := filepath.Join(t.TempDir(), "audit.html")
	if err := os.WriteFile(path, []byte(written(t, many(300))), 0o644); err != nil {
		t.Fatal(err)
	}
	var problems, requests []string
	chromedp.ListenTarget(ctx, func(ev any) {
		switch e := ev.(type) {
		case *runtime.EventConsoleAPICalled:
			problems = append(problems, string(e.Type))
		case *runtime.EventExceptionThrown:
			problems = append(problems, e.ExceptionDetails.Error())
		case *network.EventRequestWillBeSent:
			if !strings.HasPrefix(e.Request.URL, "data:") {
				requests = append(requests, e.Request.URL)
			}
		}
	})
	const rows = `document.querySelectorAll("#findings tbody tr:not(.detail)").length`
	const first = `document.querySelector("#findings tbody tr td:nth-child(5)").textContent`
	var shown, filtered, opened int
	var best, last, expanded, message, name, linked string
	var pdf []byte
	err := chromedp.Run(ctx, network.Enable(), runtime.Enable(), chromedp.Navigate("file://"+path), chromedp.WaitVisible("#findings table"),
		chromedp.Evaluate(rows, &shown), chromedp.Evaluate(first, &best),
		// sort by site, twice: the last site comes first
		chromedp.Click(`//section[@id="findings"]//th[5]/button`, chromedp.BySearch), chromedp.Click(`//section[@id="findings"]//th[5]/button`, chromedp.BySearch),
		chromedp.Evaluate(first, &last),
		// filter by words
		chromedp.SendKeys("#q", "site 042"), chromedp.Evaluate(rows, &filtered),
		// open the finding with the keyboard
		chromedp.Focus("#findings tbody button.open"), chromedp.KeyEvent("\r"), chromedp.Evaluate(`document.querySelectorAll("tr.detail").length`, &opened),
		chromedp.AttributeValue("#findings tbody button.open", "aria-expanded", &expanded, nil),
		chromedp.Evaluate(`document.querySelector("tr.detail").textContent`, &message),
		chromedp.Evaluate(`document.querySelector("#findings tbody button.open").getAttribute("aria-label")`, &name),
		// follow a link to the last finding, which is filtered away and not among the first hundred
		chromedp.Evaluate(`location.hash = "#f-" + JSON.parse(document.getElementById("data").textContent).findings.at(-1).id; 0`, new(int)), chromedp.Sleep(200*time.Millisecond),
		chromedp.Evaluate(`String(document.querySelector("tr:has(+ tr.detail)")?.id === location.hash.slice(1) && document.activeElement.getAttribute("aria-expanded"))`, &linked),
		chromedp.ActionFunc(func(ctx context.Context) (err error) {
			pdf, _, err = page.PrintToPDF().WithLandscape(true).Do(ctx)
			return err
		}))
	if err != nil {
		t.Fatal(err)
	}
	if len(problems) > 0 {
		t.Errorf("console: %v", problems)
	}
	if len(requests) != 1 {
		t.Errorf("requests: %v, want the page alone", requests)
	}
	if shown != 100 || filtered != 1 || opened != 1 || expanded != "true" {
		t.Errorf("shown %d, want 100; filtered %d, want 1; opened %d (%s), want 1 (true)", shown, filtered, opened, expanded)
	}
	if best == "" || last != "Site 298" {
		t.Errorf("sorted by site, downwards, the first is %q, want Site 298", last)
	}
	if !strings.Contains(message, "8 x 10 W = 80 W on a 50 W control: 160 %") || !strings.HasPrefix(name, "Details of finding") {
		t.Errorf("the opened finding reads %q, its button %q", message, name)
	}
	if linked != "true" {
		t.Errorf("a link to a finding that is not shown does not open it: %q", linked)
	}
	if !bytes.HasPrefix(pdf, []byte("%PDF")) {
		t.Error("it does not print to PDF")
	}
}

// copies is an audit with one finding n times, at places of their own.
func copies(n int) *report.Audit {
	a := reporttest.Overloaded()
	one := *a.Archive.Findings[0]
	a.Archive.Findings = nil
	for i := range n {
		f := one
		f.ID, f.Rank, f.Place = fmt.Sprint("id", i), i+1, fmt.Sprintf("control %05d", i)
		a.Archive.Findings = append(a.Archive.Findings, &f)
	}
	a.Archive.Results[0].Findings, a.Archive.Sites[0].Findings = a.Archive.Findings, a.Archive.Findings
	return a
}

func TestManyFindingsStayQuick(t *testing.T) {
	ctx := browser(t)
	path := filepath.Join(t.TempDir(), "audit.html")
	if err := os.WriteFile(path, []byte(written(t, copies(10_000))), 0o644); err != nil {
		t.Fatal(err)
	}
	var took float64
	var n int
	err := chromedp.Run(ctx, chromedp.Navigate("file://"+path), chromedp.WaitVisible("#findings table"),
		chromedp.Evaluate(`(() => { const q = document.getElementById("q"), t = performance.now(); q.value = "control 0999"; q.dispatchEvent(new Event("input")); return performance.now() - t })()`, &took),
		chromedp.Evaluate(`document.querySelectorAll("#findings tbody tr").length`, &n))
	if err != nil {
		t.Fatal(err)
	}
	t.Logf("filtering 10,000 findings took %.0f ms", took)
	if took > 2000 || n != 11 { // 00999, 09990 to 09999
		t.Errorf("filtering took %.0f ms and left %d rows, want 11", took, n)
	}
}

// On a narrow screen the page itself never scrolls sideways; every field and
// button has a name, every table heads; the picture of a line is drawn.
func TestNarrowScreenAndNames(t *testing.T) {
	ctx := browser(t)
	path := filepath.Join(t.TempDir(), "audit.html")
	if err := os.WriteFile(path, []byte(written(t, reporttest.Fixed())), 0o644); err != nil {
		t.Fatal(err)
	}
	var wide, pictures int
	var unnamed string
	err := chromedp.Run(ctx, chromedp.EmulateViewport(380, 800), chromedp.Navigate("file://"+path+"#f-id-2"), chromedp.WaitVisible("tr.detail svg"),
		chromedp.Evaluate(`document.documentElement.scrollWidth - document.documentElement.clientWidth`, &wide),
		chromedp.Evaluate(`document.querySelectorAll("tr.detail svg[role=img] .worst").length`, &pictures),
		chromedp.Evaluate(`[...document.querySelectorAll("input, select, textarea, button, svg, table, [role=region]")].filter((e) =>
			!(e.getAttribute("aria-label") || e.labels?.length || e.textContent.trim() || e.querySelector("title"))).map((e) => e.outerHTML.slice(0, 80)).join(" ; ")`, &unnamed))
	if err != nil {
		t.Fatal(err)
	}
	if wide > 0 || pictures != 1 || unnamed != "" {
		t.Errorf("%d pixels too wide; %d pictures with a worst loudspeaker; without a name: %s", wide, pictures, unnamed)
	}
	// The list that is taken along: read down on a phone, each cell with its
	// heading, and without scrolling sideways on a screen.
	const sideways = `(() => { const s = document.querySelector("#t-visits .scroll"); return s.scrollWidth - s.clientWidth; })()`
	var phone, screen int
	var label string
	err = chromedp.Run(ctx, chromedp.Evaluate(sideways, &phone),
		chromedp.Evaluate(`getComputedStyle(document.querySelector("#t-visits td:nth-child(2)"), "::before").content`, &label),
		chromedp.EmulateViewport(1280, 900), chromedp.Evaluate(sideways, &screen))
	if err != nil {
		t.Fatal(err)
	}
	if phone > 0 || screen > 0 || !strings.Contains(label, "Site") {
		t.Errorf("the visit list is %d pixels too wide on a phone, %d on a screen; a cell is headed %s", phone, screen, label)
	}
}
