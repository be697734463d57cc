package phone

import (
	"context"
	"os/exec"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"
)

// chromium finds the browser; without one the form is not tested, and the tests say so by failing.
func chromium(t *testing.T) string {
	t.Helper()
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome"} {
		if path, err := exec.LookPath(name); err == nil {
			return path
		}
	}
	t.Fatal("no browser to open the form in; hint: on Debian or Ubuntu, apt-get install chromium")
	return ""
}

// window is one run of a browser without a network. Runs with the same profile folder are the same phone.
type window struct {
	t   *testing.T
	ctx context.Context
}

func open(t *testing.T, profile string) *window {
	t.Helper()
	flags := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(chromium(t)), chromedp.UserDataDir(profile),
		chromedp.NoSandbox, chromedp.DisableGPU, chromedp.Flag("disable-dev-shm-usage", true))
	process, killed := chromedp.NewExecAllocator(t.Context(), flags...)
	timed, expired := context.WithTimeout(process, 2*time.Minute) // a busy machine takes its time
	ctx, closed := chromedp.NewContext(timed)
	t.Cleanup(func() { closed(); expired(); killed() })
	w := &window{t, ctx}
	w.do()
	w.unplug()
	return w
}

// unplug turns the network off, and fails the test when a page asks for anything but files.
func (w *window) unplug() {
	w.t.Helper()
	off := network.EmulateNetworkConditionsByRuleParams{MatchedNetworkConditions: []*network.Conditions{{Offline: true}}}
	if _, err := chromedp.Call(w.ctx, network.EmulateNetworkConditionsByRule, off); err != nil {
		w.t.Fatal(err)
	}
	if _, err := chromedp.Call(w.ctx, network.OverrideNetworkState, network.OverrideNetworkStateParams{Offline: true}); err != nil {
		w.t.Fatal(err)
	}
	if _, err := chromedp.Call(w.ctx, network.Enable, network.EnableParams{}); err != nil {
		w.t.Fatal(err)
	}
	err := chromedp.Listen(w.ctx, func(event any) {
		sent, ok := event.(*network.EventRequestWillBeSent)
		if ok && !strings.HasPrefix(sent.Request.URL, "file:") && !strings.HasPrefix(sent.Request.URL, "data:") {
			w.t.Errorf("the page asks for %s", sent.Request.URL)
		}
	})
	if err != nil {
		w.t.Fatal(err)
	}
}

// close ends the browser as a hand would, so that it writes what it keeps.
func (w *window) close() {
	w.t.Helper()
	if err := chromedp.Cancel(w.ctx); err != nil {
		w.t.Fatal(err)
	}
}

func (w *window) do(steps ...chromedp.Action[chromedp.Void]) {
	w.t.Helper()
	if err := chromedp.Do(w.ctx, steps...); err != nil {
		w.t.Fatal(err)
	}
}

// get runs one action in a window and returns its value.
func get[T any](w *window, action chromedp.Action[T]) T {
	w.t.Helper()
	v, err := chromedp.Run(w.ctx, action)
	if err != nil {
		w.t.Fatal(err)
	}
	return v
}
