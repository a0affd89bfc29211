package web

import (
	"context"
	"encoding/json"
	"errors"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/log"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/cdproto/runtime"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

// The tests with a browser need Chromium: CHROMIUM names it, otherwise it is looked for. SCREENSHOTS names a folder to keep
// pictures in, AXE the file axe.min.js. Where one is missing the tests that need it are skipped, save with CI=true.

// wanting skips a test for what is not there, or fails it where everything must be there.
func wanting(t *testing.T, what string) {
	t.Helper()
	if os.Getenv("CI") == "true" {
		t.Fatal(what)
	}
	t.Skip(what)
}

func chromium() (string, error) {
	if path := os.Getenv("CHROMIUM"); path != "" {
		return path, nil
	}
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome"} {
		if path, err := exec.LookPath(name); err == nil {
			return path, nil
		}
	}
	return "", errors.New("there is no Chromium: install it, or name it in CHROMIUM")
}

// closeBrowser ends the one browser that all tests share.
var closeBrowser = func() {}

var theBrowser = sync.OnceValues(func() (context.Context, error) {
	path, err := chromium()
	if err != nil {
		return nil, err
	}
	options := append(chromedp.DefaultExecAllocatorOptions[:], chromedp.ExecPath(path), chromedp.NoSandbox, chromedp.DisableGPU,
		chromedp.Flag("disable-dev-shm-usage", true), chromedp.WSURLReadTimeout(60*time.Second))
	allocator, endAllocator := chromedp.NewExecAllocator(context.Background(), options...)
	browser, end := chromedp.NewContext(allocator)
	closeBrowser = func() { end(); endAllocator() }
	return browser, chromedp.Do(browser, chromedp.Navigate("about:blank"))
})

func TestMain(m *testing.M) {
	if path := os.Getenv("SERVE_FROM"); path != "" {
		serveUntilKilled(path, os.Getenv("SERVE_AT"))
	}
	status := m.Run()
	closeBrowser()
	os.Exit(status)
}

// Sizes of what the page is read on.
var (
	phone     = [2]int64{360, 740}
	desktop   = [2]int64{1280, 900}
	projector = [2]int64{1920, 1080}
)

// tab is a page opened in the browser.
type tab struct {
	*testing.T
	context.Context
	site *site
	lock sync.Mutex
	bad  []string // what went wrong in the page: errors, refused content, requests to elsewhere
}

// open opens a tab of its own, with cookies of its own. When the test ends, nothing may have gone wrong in it.
func open(t *testing.T, s *site, size [2]int64, before ...step) *tab {
	t.Helper()
	browser, err := theBrowser()
	if err != nil {
		wanting(t, err.Error())
	}
	ctx, end := chromedp.NewContext(browser, chromedp.WithNewBrowserContext())
	require.NoError(t, chromedp.Do(ctx, chromedp.Navigate("about:blank"))) // the tab lives as long as the context of its first action
	b := &tab{T: t, site: s}
	require.NoError(t, chromedp.Listen(ctx, b.listen))
	var stop context.CancelFunc
	b.Context, stop = context.WithTimeout(ctx, 60*time.Second)
	b.run(append([]step{chromedp.Func(watch), chromedp.EmulateViewport(size[0], size[1])}, before...)...)
	t.Cleanup(func() {
		b.lock.Lock()
		assert.Empty(t, b.bad)
		b.lock.Unlock()
		stop()
		end()
	})
	return b
}

// step is one thing done in a tab.
type step = chromedp.Action[chromedp.Void]

// watch turns on the events that listen hears.
func watch(ctx context.Context, t *chromedp.Target) error {
	_, err1 := cdp.Call(ctx, t, network.Enable, network.EnableParams{})
	_, err2 := cdp.Call(ctx, t, log.Enable, cdp.Empty{})
	_, err3 := cdp.Call(ctx, t, runtime.Enable, cdp.Empty{})
	return errors.Join(err1, err2, err3)
}

func (b *tab) listen(event any) {
	var wrong string
	switch e := event.(type) {
	case *network.EventRequestWillBeSent:
		if !strings.HasPrefix(e.Request.URL, b.site.address+"/") && !strings.HasPrefix(e.Request.URL, "about:") && !strings.HasPrefix(e.Request.URL, "data:") {
			wrong = "asked elsewhere: " + e.Request.URL
		}
	case *runtime.EventExceptionThrown:
		wrong = "script: " + e.ExceptionDetails.Text
		if e.ExceptionDetails.Exception != nil {
			wrong += " " + e.ExceptionDetails.Exception.Description
		}
	case *log.EventEntryAdded:
		if e.Entry.Level == log.EntryLevelError && !strings.Contains(e.Entry.Text, "status of 4") {
			wrong = "log: " + e.Entry.Text
		}
	}
	if wrong != "" {
		b.lock.Lock()
		b.bad = append(b.bad, wrong)
		b.lock.Unlock()
	}
}

func (b *tab) run(actions ...step) {
	b.Helper()
	require.NoError(b, chromedp.Do(b.Context, actions...))
}

func (b *tab) visit(path string) { b.Helper(); b.run(chromedp.Navigate(b.site.address + path)) }

// script runs a script in the page and gives its result.
func script[T any](b *tab, text string) T {
	b.Helper()
	out, err := chromedp.Run(b.Context, chromedp.Evaluate[T](text, chromedp.EvalAwaitPromise))
	require.NoError(b, err, text)
	return out
}

// until waits until a script is true, through pages that come and go meanwhile.
func (b *tab) until(what string) {
	b.Helper()
	var err error
	for end := time.Now().Add(25 * time.Second); time.Now().Before(end); time.Sleep(10 * time.Millisecond) {
		var so bool
		if so, err = chromedp.Run(b.Context, chromedp.Evaluate[bool]("!!("+what+")")); so {
			return
		}
	}
	seen, _ := chromedp.Run(b.Context, chromedp.Evaluate[string]("document.querySelector('main')?.innerText ?? document.documentElement.outerHTML"))
	require.Fail(b, "waited in vain", "for %s (%v) on %s", what, err, seen)
}

// says waits until the page says something.
func (b *tab) says(text string) {
	b.Helper()
	quoted, _ := json.Marshal(text)
	b.until("document.querySelector('main')?.innerText.replace(/\\s+/g, ' ').includes(" + string(quoted) + ")")
}

// say types into the box.
func (b *tab) say(text string) { b.Helper(); b.run(chromedp.SendKeys(chromedp.CSS("#said"), text)) }

// press presses the button, or follows the link, that bears a text.
func (b *tab) press(label string) {
	b.Helper()
	quoted, _ := json.Marshal(label)
	found := `[...document.querySelectorAll('button, a, summary')].find(x => x.checkVisibility() && x.innerText.trim() === ` + string(quoted) + `)`
	b.until(found)
	script[any](b, found+".click(), 0")
}

func (b *tab) key(keys ...string) {
	b.Helper()
	for _, k := range keys {
		b.run(chromedp.KeyEvent(k))
	}
}

// focused gives what stands on what has the focus.
func (b *tab) focused() string {
	b.Helper()
	return script[string](b, `(x => x.id || x.innerText || x.value || x.name || x.nodeName)(document.activeElement)`)
}

// picture keeps a picture of the whole page where SCREENSHOTS says.
func (b *tab) picture(name string) {
	b.Helper()
	folder := os.Getenv("SCREENSHOTS")
	if folder == "" {
		return
	}
	image, err := chromedp.Run(b.Context, chromedp.FullScreenshot(100))
	require.NoError(b, err)
	require.NoError(b, os.MkdirAll(folder, 0o755))
	require.NoError(b, os.WriteFile(filepath.Join(folder, strings.ReplaceAll(b.Name(), "/", "-")+"-"+name+".png"), image, 0o644))
}

// fits checks that nothing stands out at the side.
func (b *tab) fits() {
	b.Helper()
	wide := script[string](b, `[...document.querySelectorAll('body *')].filter(x => !x.closest('.hidden, .drawing > *') && x.checkVisibility() && x.getBoundingClientRect().right > innerWidth + 1).map(x => x.outerHTML.slice(0, 120)).join('\n')`)
	assert.Empty(b, wide, "wider than the screen")
}

// address is the path of the page shown.
func (b *tab) address() string {
	b.Helper()
	u, err := url.Parse(script[string](b, "location.href"))
	require.NoError(b, err)
	return u.Path
}

const backspace = kb.Backspace
