package phone

import (
	"fmt"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/browser"
	pages "github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"
	"github.com/google/go-cmp/cmp"

	"bunkwright/furniture/ask"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room/length"
)

// TestFilledInHalfwayAndSent fills a sheet in as a person would: from a file, without a network, closed half way and opened
// again on the same phone, sent, read back. The job then holds what was typed, to the last 1/64 in.
func TestFilledInHalfwayAndSent(t *testing.T) {
	t.Parallel()
	j := sampleJob(t, "half-measured.toml")
	sheet := sheetOf(t, j, false)
	address, phone := attached(t, j, sheet), t.TempDir()
	h := hand{t: t, filled: ask.Filled{By: "Aunt Zoë", Unit: "in", Answers: map[string]ask.Answered{}}, read: map[string][2]length.Length{}}
	cards := sheet.Cards()
	half := len(cards) / 2

	h.window = open(t, phone)
	h.do(chromedp.Navigate(address), chromedp.SendKeys(chromedp.CSS("#by"), h.filled.By))
	h.tap("Begin")
	for _, c := range cards[:half] {
		h.answer(c)
	}
	if got, want := h.place(), fmt.Sprintf("card %d of %d", half+1, len(cards)); got != want {
		t.Errorf("half way: %q, want %q", got, want)
	}
	h.close()

	h.window = open(t, phone)
	call(h.window, pages.AddScriptToEvaluateOnNewDocument, pages.AddScriptToEvaluateOnNewDocumentParams{
		Source: `navigator.share = what => { window.shared = what.text; return Promise.resolve() }`, // a phone's way to share
	})
	h.do(chromedp.Navigate(address))
	if got, want := h.place(), fmt.Sprintf("card %d of %d", half+1, len(cards)); got != want {
		t.Errorf("opened again: %q, want %q", got, want)
	}
	for _, c := range cards[half:] {
		h.answer(c)
	}
	h.filled.When = get(h.window, chromedp.Evaluate[string](`new Date().toLocaleDateString('sv')`)) // Swedish days are written 2027-06-05
	text := h.sent()
	h.checkText(text, &sheet)
	h.checkJob(text, j)
}

// hand works the form, and remembers what it typed.
type hand struct {
	*window
	t      *testing.T
	filled ask.Filled
	read   map[string][2]length.Length // by key: the reading, and the one from the other end, 0 for none
	n      int                         // answers so far
}

// tap presses the button of a word, of those that can be seen.
func (h *hand) tap(words string) {
	h.t.Helper()
	h.do(chromedp.Click(chromedp.Search(`//button[text()="` + words + `"][not(ancestor-or-self::*[@hidden])]`)))
}

// place is what the tape strip says.
func (h *hand) place() string {
	h.t.Helper()
	return get(h.window, chromedp.Text(chromedp.CSS(".strip .place")))
}

// answer fills in the card that is shown, and goes on.
func (h *hand) answer(c ask.Card) {
	h.t.Helper()
	h.n++
	blank := fmt.Sprintf("#blank-%d-", c.Number)
	var a ask.Answered
	switch c.Kind {
	case ask.Length:
		a = h.lengths(c, blank)
	case ask.Count:
		a.Value = "1"
		if strings.HasPrefix(c.Key, "room.absent.") {
			a.Value = strconv.Itoa(h.n % 3)
		}
		h.do(chromedp.SendKeys(chromedp.CSS(blank+"0"), a.Value))
	case ask.Word:
		a.Value = c.Words[1].Value
		h.do(chromedp.Click(chromedp.Search(fmt.Sprintf(`//li[@value="%d"]//label[span[text()="%s"]]`, c.Number, c.Words[1].Label))))
	case ask.YesNo:
		a.Value = "yes"
		h.do(chromedp.Click(chromedp.Search(fmt.Sprintf(`//li[@value="%d"]//label[span[text()="yes"]]`, c.Number))))
	}
	h.filled.Answers[c.Key] = a
	h.tap("Next")
}

// lengths types one or two readings that differ by 1/64 in, and a note on every seventh card; the fifth card is left out.
func (h *hand) lengths(c ask.Card, blank string) ask.Answered {
	h.t.Helper()
	if h.n == 5 {
		h.tap("Not now")
		h.tap("cannot get at it")
		h.do(chromedp.Click(chromedp.Search(`//button[text()="Back"][not(ancestor-or-self::*[@hidden])]`)))
		return ask.Answered{}
	}
	sixtyFourths := 74*64 + 97*h.n
	a := ask.Answered{Value: typed(sixtyFourths, h.n)}
	h.do(chromedp.SendKeys(chromedp.CSS(blank+"0"), a.Value))
	read := [2]length.Length{length.Length(sixtyFourths) * length.Inch / 64}
	if c.Other != "" {
		a.Turned = typed(sixtyFourths+1, h.n+1)
		read[1] = read[0] + length.Inch/64
		h.do(chromedp.SendKeys(chromedp.CSS(blank+"1"), a.Turned))
	}
	if h.n%7 == 0 {
		a.Note = `soft carpet; 50 % sure | "so" it <b>says</b> ½`
		h.tap("Add a note")
		h.do(chromedp.SendKeys(chromedp.CSS(fmt.Sprintf("#note-%d", c.Number)), a.Note))
	}
	h.read[c.Key] = read
	return a
}

// typed writes a number of 1/64 in the way people do, one way after the other.
func typed(n, way int) string {
	whole, part := n/64, n%64
	fraction, below := part, 64
	for fraction > 0 && fraction%2 == 0 {
		fraction, below = fraction/2, below/2
	}
	tail := fmt.Sprintf("%d/%d", fraction, below)
	if part == 0 {
		return []string{fmt.Sprintf(`%d' %d"`, whole/12, whole%12), fmt.Sprintf("%d in", whole)}[way%2]
	}
	switch way % 7 {
	case 0:
		return fmt.Sprintf(`%d' %d-%s"`, whole/12, whole%12, tail)
	case 1:
		return fmt.Sprintf("%d %s", whole, tail)
	case 2:
		return fmt.Sprintf("%d ft %d %s in", whole/12, whole%12, tail)
	case 3:
		return fmt.Sprintf("%d’ %d %s”", whole/12, whole%12, tail)
	case 4:
		return strconv.FormatFloat(float64(n)/64, 'f', -1, 64)
	case 5:
		return fmt.Sprintf("%d %s inches", whole, tail)
	}
	return fmt.Sprintf("%d-%s", whole, tail)
}

// sent presses all that sends, and returns the text, which is the same whichever way it goes.
func (h *hand) sent() string {
	h.t.Helper()
	downloads := h.t.TempDir()
	allow := browser.SetDownloadBehaviorParams{Behavior: browser.SetDownloadBehaviorBehaviorAllow, DownloadPath: downloads}
	if _, err := chromedp.CallBrowser(h.ctx, browser.SetDownloadBehavior, allow); err != nil {
		h.t.Fatal(err)
	}
	h.tap("Send this")
	h.tap("Save a file")
	h.tap("See the text")
	shown := get(h.window, chromedp.TextContent(chromedp.CSS(".end pre")))
	if shared := get(h.window, chromedp.Evaluate[string](`window.shared`)); shared != shown {
		h.t.Errorf("shared %q, shown %q", shared, shown)
	}
	if saved := waitForFile(h.t, downloads); saved != shown {
		h.t.Errorf("saved %q, shown %q", saved, shown)
	}
	return shown
}

func waitForFile(t *testing.T, folder string) string {
	t.Helper()
	for range 50 {
		files, err := filepath.Glob(filepath.Join(folder, "*.txt"))
		if err != nil {
			t.Fatal(err)
		}
		if len(files) == 1 {
			data, err := os.ReadFile(files[0])
			if err != nil {
				t.Fatal(err)
			}
			return string(data)
		}
		time.Sleep(100 * time.Millisecond)
	}
	t.Fatal("no file was saved")
	return ""
}

// checkText holds the text against the one that the program writes for the same answers; why a card was left out stands in a
// line that only the form writes.
func (h *hand) checkText(text string, sheet *ask.Sheet) {
	h.t.Helper()
	var kept []string
	for line := range strings.Lines(text) {
		if !strings.Contains(line, "left out: cannot get at it") {
			kept = append(kept, line)
		}
	}
	if diff := cmp.Diff(sheet.Text(h.filled), strings.Join(kept, "")); diff != "" || len(kept) == strings.Count(text, "\n") {
		h.t.Errorf("the program writes the reply otherwise: %s", diff)
	}
}

// checkJob reads the text back and looks for each reading in the job.
func (h *hand) checkJob(text string, j *job.Job) {
	h.t.Helper()
	reply := ask.ReadReply(text, sheetOf(h.t, j, true), j)
	if reply.Other || reply.Older || reply.Cut || len(reply.Asks)+len(reply.Unread) > 0 {
		h.t.Fatalf("not read as a whole: %+v", reply)
	}
	if len(reply.By) != 1 || reply.By[0] != h.filled.By || len(reply.Notes) != 1 || !strings.Contains(reply.Notes[0], "cannot get at it") {
		h.t.Errorf("by %q, notes %q", reply.By, reply.Notes)
	}
	merged, err := ask.Merge(j, reply)
	if err != nil {
		h.t.Fatal(err)
	}
	for key, want := range h.read {
		have := kept(h.t, merged, key)
		for _, l := range want {
			if l != 0 && !have[l] {
				h.t.Errorf("%s: typed %v, the job has %v", key, l, have)
			}
		}
	}
}

// kept are the readings of a key that a job holds.
func kept(t *testing.T, j *job.Job, key string) map[length.Length]bool {
	t.Helper()
	out := map[length.Length]bool{}
	for i := 1; jobfile.Shown(j, fmt.Sprintf("%s.%d", key, i)) != ""; i++ {
		l, err := length.Parse(jobfile.Shown(j, fmt.Sprintf("%s.%d", key, i)), length.Context{Unit: length.Inches})
		if err != nil {
			t.Fatal(err)
		}
		out[l] = true
	}
	return out
}
