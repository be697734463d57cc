package phone

import (
	"fmt"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
)

// call runs a command of the browser.
func call[P, R any](w *window, command cdp.Command[P, R], params P) R {
	w.t.Helper()
	result, err := chromedp.Call(w.ctx, command, params)
	if err != nil {
		w.t.Fatal(err)
	}
	return result
}

// eval returns what a script of the test sees on the page.
func eval[T any](w *window, script string) T {
	w.t.Helper()
	return get(w, chromedp.Evaluate[T](script))
}

// faults lists what is too small, cut off or without a name in the view that is shown: targets under 44 px (WCAG 2.2, 2.5.5:
// 44 by 44), texts under 16 px, fields without a label (WCAG 2.2, 1.3.1), and a page wider than the phone.
const faults = `(() => {
  const out = []
  const seen = e => e.getClientRects().length > 0 && !e.closest('.away')
  const all = s => Array.from(document.querySelectorAll(s)).filter(seen)
  const name = e => e.tagName + ' ' + (e.id || e.textContent).slice(0, 40)
  if (document.documentElement.scrollWidth > innerWidth) out.push('wider than the phone: ' + document.documentElement.scrollWidth)
  for (const e of all('button, input:not([type=radio]), textarea, label.choice')) {
    const r = e.getBoundingClientRect()
    if (r.height < 44 || r.width < 44) out.push(name(e) + ' is ' + r.width + ' x ' + r.height)
    if (r.left < 0 || r.right > innerWidth) out.push(name(e) + ' is cut off')
  }
  for (const e of all('input, textarea')) if (!e.labels.length || !e.labels[0].textContent.trim()) out.push(name(e) + ' has no label')
  for (const e of all('body *')) {
    const own = Array.from(e.childNodes).some(c => c.nodeType === 3 && c.data.trim())
    if (!own || e.closest('script, style')) continue
    const scale = e.ownerSVGElement ? e.ownerSVGElement.getBoundingClientRect().width / e.ownerSVGElement.viewBox.baseVal.width : 1
    if (parseFloat(getComputedStyle(e).fontSize) * scale < 15.99) out.push(name(e) + ' is ' + getComputedStyle(e).fontSize)
    if (e.scrollWidth > e.clientWidth + 1 && e.clientWidth && !e.matches('.job')) out.push(name(e) + ' runs over')
  }
  return out
})()`

// TestLooks goes through every card of a full sheet on a narrow phone and a usual one.
func TestLooks(t *testing.T) {
	t.Parallel()
	j := sampleJob(t, "town-house.toml")
	sheet := sheetOf(t, j, true)
	w := open(t, t.TempDir())
	address := attached(t, j, sheet)
	for _, width := range []int64{320, 390} {
		w.do(chromedp.EmulateViewport(width, 844), chromedp.Navigate(address))
		bad := eval[[]string](w, `(() => {
			const all = [], press = words => Array.from(document.querySelectorAll('button')).find(b => b.offsetParent && b.textContent === words).click()
			const look = () => all.push(...`+faults+`)
			look()
			press('Begin')
			for (let i = 0; i < `+fmt.Sprint(len(sheet.Cards()))+`; i++) { look(); press('Next') }
			press('See the text')
			look()
			localStorage.clear()
			return all
		})()`)
		for _, b := range bad {
			t.Errorf("%d px wide: %s", width, b)
		}
	}
}

// TestKeysAlone goes through two cards with the keyboard alone and hears what a screen reader would say.
func TestKeysAlone(t *testing.T) {
	t.Parallel()
	j := sampleJob(t, "half-measured.toml")
	w := open(t, t.TempDir())
	w.do(chromedp.Navigate(attached(t, j, sheetOf(t, j, false))))
	focus := func() string {
		return eval[string](w, `document.activeElement.id || document.activeElement.textContent.trim()`)
	}
	expect := func(want string) {
		t.Helper()
		if got := focus(); got != want {
			t.Errorf("the focus is on %q, want %q", got, want)
		}
	}
	expect("Measuring the room")
	w.do(chromedp.KeyEvent(kb.Tab))
	expect("by")
	w.do(chromedp.KeyEvent("Zoë"), chromedp.KeyEvent(kb.Tab), chromedp.KeyEvent(kb.Tab), chromedp.KeyEvent(kb.Enter))
	expect("Corner A to corner B, 4 ft up")
	w.do(chromedp.KeyEvent(kb.Tab), chromedp.KeyEvent("9 4 1/2"))
	expect("blank-1-0")
	get(w, chromedp.Poll[bool](`document.querySelector('[aria-live]').textContent.includes("9' 4-1/2")`))
	w.do(chromedp.KeyEvent(kb.Tab), chromedp.KeyEvent(kb.Enter))
	expect("blank-1-0")
	if got := eval[string](w, `document.activeElement.value`); got != `9' 4-1/2"` {
		t.Errorf("the choice puts %q", got)
	}
	if got := eval[string](w, `document.getElementById(document.activeElement.getAttribute('aria-describedby')).textContent`); got != "Understood: 9 feet 4-1/2 inches (112-1/2 in)" {
		t.Errorf("the blank is described as %q", got)
	}
	w.do(chromedp.KeyEvent(kb.Enter))
	expect("blank-1-1")
	w.do(chromedp.KeyEvent(kb.Enter))
	expect("Corner B to corner C, 4 ft up")
}
