package phone

import (
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	pages "github.com/chromedp/cdproto/page"
	"github.com/chromedp/chromedp"

	"bunkwright/furniture/ask"
	"bunkwright/room/length"
)

// TestWhereNothingCanBeKept: a phone that refuses to keep anything says so, and the form works all the same.
func TestWhereNothingCanBeKept(t *testing.T) {
	t.Parallel()
	j := sampleJob(t, "half-measured.toml")
	w := open(t, t.TempDir())
	call(w, pages.AddScriptToEvaluateOnNewDocument, pages.AddScriptToEvaluateOnNewDocumentParams{
		Source: `Object.defineProperty(window, 'localStorage', {get () { throw new DOMException('no', 'SecurityError') }})`,
	})
	h := hand{window: w, t: t}
	h.do(chromedp.Navigate(attached(t, j, sheetOf(t, j, false))))
	h.tap("Begin")
	h.do(chromedp.SendKeys(chromedp.CSS("#blank-1-0"), "112"))
	for _, id := range []string{".start", "li[value='1']"} {
		said := eval[string](w, `document.querySelector("`+id+` .kept").textContent`)
		if !strings.HasPrefix(said, "Nothing can be kept here") {
			t.Errorf("%s says %q", id, said)
		}
	}
	h.do(chromedp.Click(chromedp.CSS(".place button")))
	h.tap("See the text")
	if text := get(w, chromedp.TextContent(chromedp.CSS(".end pre"))); !strings.Contains(text, "1 wall.AB.length: 112\n") {
		t.Errorf("text %q", text)
	}
}

// TestWhereNoScriptRuns: a preview shows every card as a list with its drawing, and a reply that reads back when it is filled in.
func TestWhereNoScriptRuns(t *testing.T) {
	t.Parallel()
	j := sampleJob(t, "half-measured.toml")
	sheet := sheetOf(t, j, false)
	w := open(t, t.TempDir())
	call(w, emulation.SetScriptExecutionDisabled, emulation.SetScriptExecutionDisabledParams{Value: true})
	w.do(chromedp.Navigate(attached(t, j, sheet)))
	seen := get(w, chromedp.Text(chromedp.CSS("main")))
	for _, c := range sheet.Cards() {
		for _, words := range []string{c.Title, c.From, c.To, c.Hook, c.Why, c.Caution, c.Photo, c.Other} {
			if !strings.Contains(seen, words) {
				t.Errorf("%s: %q is not shown", c.Key, words)
			}
		}
		if c.Kind != ask.Length && !strings.Contains(seen, c.Ask) {
			t.Errorf("%s: %q is not asked", c.Key, c.Ask)
		}
	}
	if n := len(get(w, chromedp.Nodes(chromedp.CSSAll("li .drawing svg")))); n < 30 {
		t.Errorf("%d drawings for %d cards", n, len(sheet.Cards()))
	}
	blank := get(w, chromedp.Text(chromedp.CSS("pre")))
	filled := strings.NewReplacer("By:", "By: Wim", "1 wall.AB.length: |", "1 wall.AB.length: 9 ft 4-1/8 in | 112 1/4").Replace(blank)
	got := ask.ReadReply(filled, sheetOf(t, j, true), j).Got
	if len(got) != 2 || got[0].Value != 897*length.Inch/8 || got[1].Value != 449*length.Inch/4 || got[0].By != "Wim" {
		t.Errorf("read back: %+v", got)
	}
}

// nasty is a name that would do something if it were taken for anything but words.
const nasty = `<script>window.hit=1</script><img src=x onerror="window.hit=1">'"=cmd()&amp;{{.}}` + "`${hit=1}`" + `</script><!--`

// TestNamesAreWords: whatever stands in a name or is typed into a field is shown as it stands and comes back as it was.
func TestNamesAreWords(t *testing.T) {
	t.Parallel()
	j := sampleJob(t, "half-measured.toml")
	j.Name = nasty
	j.Sleepers[0].Name = "Mo =1+1 <b>"
	sheet := sheetOf(t, j, false)
	sheet.Groups[0].Lead, sheet.Groups[0].Cards[0].Title, sheet.Groups[0].Cards[0].Hook = nasty, nasty, nasty
	h := hand{window: open(t, t.TempDir()), t: t}
	h.do(chromedp.Navigate(attached(t, j, sheet)), chromedp.SendKeys(chromedp.CSS("#by"), "=HYPERLINK(<i>)"))
	h.tap("Begin")
	h.do(chromedp.SendKeys(chromedp.CSS("#blank-1-0"), "112 <u>"))
	h.tap("Add a note")
	h.do(chromedp.SendKeys(chromedp.CSS("#note-1"), nasty))
	h.do(chromedp.Click(chromedp.CSS(".place button")))
	h.tap("See the text")
	if n := eval[int](h.window, `document.querySelectorAll('script').length + 100 * document.querySelectorAll('img, i, u').length`); n != 2 {
		t.Errorf("%d scripts and other elements, want the page's own two", n)
	}
	if eval[bool](h.window, `'hit' in window`) {
		t.Error("a name was run")
	}
	for _, place := range []string{".job", "li[value='1'] h3", "li[value='1'] dd:nth-of-type(3)", ".lead"} {
		if got := eval[string](h.window, `document.querySelector("`+place+`").textContent.trim()`); got != nasty {
			t.Errorf("%s shows %q", place, got)
		}
	}
	reply := ask.ReadReply(get(h.window, chromedp.TextContent(chromedp.CSS(".end pre"))), sheetOf(t, j, true), j)
	if len(reply.By) != 1 || reply.By[0] != "=HYPERLINK(<i>)" || len(reply.Asks) != 1 || reply.Asks[0].Text != "112 <u>" || reply.Cut || reply.Other {
		t.Errorf("read back: %+v", reply)
	}
}

// TestNothingOutside: the page's own rules forbid it to load or send anything.
func TestNothingOutside(t *testing.T) {
	t.Parallel()
	j := sampleJob(t, "half-measured.toml")
	form := strings.ReplaceAll(string(written(t, j, sheetOf(t, j, false))), "http://www.w3.org/2000/svg", "") // a name, not an address
	for _, not := range []string{"http:", "https:", "//www", "@import", "url(data"} {
		if strings.Contains(form, not) {
			t.Errorf("the form names %q", not)
		}
	}
	w := open(t, t.TempDir())
	w.do(chromedp.Navigate(attached(t, j, sheetOf(t, j, false))))
	blocked := get(w, chromedp.Evaluate[[]string](`new Promise(done => {
		const list = []
		document.addEventListener('securitypolicyviolation', e => { if (list.push(e.effectiveDirective) === 3) done(list.sort()) })
		document.body.append(Object.assign(document.createElement('img'), {src: 'picture.png'}))
		document.body.append(Object.assign(document.createElement('script'), {text: 'window.hit = 1'}))
		fetch('sheet.html').catch(() => {})
		setTimeout(() => done(list.sort()), 5000)
	})`, chromedp.EvalAwaitPromise))
	if got := strings.Join(blocked, " "); got != "connect-src img-src script-src-elem" {
		t.Errorf("blocked: %s", got)
	}
}

// TestOtherTape: a relative with a tape in centimetres says so once; numbers without a unit are read so, here and by the program.
func TestOtherTape(t *testing.T) {
	t.Parallel()
	j := sampleJob(t, "half-measured.toml")
	h := hand{window: open(t, t.TempDir()), t: t}
	h.do(chromedp.Navigate(attached(t, j, sheetOf(t, j, false))), chromedp.Click(chromedp.Search(`//label[span[text()="centimetres"]]`)))
	h.tap("Begin")
	h.do(chromedp.SendKeys(chromedp.CSS("#blank-1-0"), "284.5"), chromedp.SendKeys(chromedp.CSS("#blank-1-1"), "112 in"))
	if got := eval[string](h.window, `document.getElementById('blank-1-0-echo').textContent`); got != "Understood: 2845 mm (2.845 m)" {
		t.Errorf("echo %q", got)
	}
	h.do(chromedp.Click(chromedp.CSS(".place button")))
	h.tap("See the text")
	got := ask.ReadReply(get(h.window, chromedp.TextContent(chromedp.CSS(".end pre"))), sheetOf(t, j, true), j).Got
	if len(got) != 2 || got[0].Value != 2845*length.Millimetre || got[1].Value != 112*length.Inch {
		t.Errorf("read back: %+v", got)
	}
}

// TestAskedAgain: a sheet that asks a reading once more shows nothing of what was typed into the sheet before it, and a form
// that is emptied can be had back.
func TestAskedAgain(t *testing.T) {
	t.Parallel()
	j := sampleJob(t, "half-measured.toml")
	again, err := ask.New(j, ask.Options{Keys: []string{"wall.AB.length"}})
	if err != nil {
		t.Fatal(err)
	}
	first, second := attached(t, j, sheetOf(t, j, false)), attached(t, j, again)
	h := hand{window: open(t, t.TempDir()), t: t}
	typed := func() string { return eval[string](h.window, `document.getElementById('blank-1-0').value`) }
	h.do(chromedp.Navigate(first))
	h.tap("Begin")
	h.do(chromedp.SendKeys(chromedp.CSS("#blank-1-0"), "112"), chromedp.Navigate(second))
	if typed() != "" || h.place() != "0 of 1 done" {
		t.Errorf("the second sheet holds %q, %q", typed(), h.place())
	}
	h.do(chromedp.Navigate(first))
	h.tap("Back")
	anew, back := "Start anew with empty cards", "Bring back what was there"
	for _, step := range []struct{ press, then, want string }{{anew, back, ""}, {back, anew, "112"}} {
		h.tap(step.press)
		h.do(chromedp.WaitVisible(chromedp.Search(`//button[text()="` + step.then + `"]`)))
		if got := typed(); got != step.want {
			t.Errorf("%s: %q, want %q", step.press, got, step.want)
		}
	}
}
