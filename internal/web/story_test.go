package web

import (
	"bytes"
	"context"
	"encoding/json"
	"fmt"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/job"
)

// TestDispatcher takes an order by phone, from the first words to the printed sheet.
func TestDispatcher(t *testing.T) {
	b := open(t, newSite(t), desktop)
	b.visit("/")
	b.say("shop floor, nine yards of 4000 psi, he wants to add 14 gallons")
	b.says("water added at the site 14 gal")
	assert.Contains(t, b.address(), "/jobs/", "the job is kept as it is typed")
	assert.Equal(t, "said", b.focused(), "the caret stays where one types")
	b.say(" and it is for a good friend")
	assert.True(t, strings.HasSuffix(script[string](b, "document.getElementById('said').value"), "and it is for a good friend"))
	job := b.address()

	b.press("Add something else")
	b.run(chromedp.SetValue(chromedp.CSS("#add-fact"), "largest w/cm the order allows"), chromedp.SendKeys(chromedp.CSS("#add-value"), "0.50"+kb.Enter))
	b.says("largest w/cm the order allows 0.5")
	for _, fact := range [][2]string{{"mix.cementitious", "5.5 bags/yd3"}, {"mix.water", "255 lb/yd3"}} {
		b.run(chromedp.SetValue(chromedp.CSS("#add-fact"), fact[0]), chromedp.SetValue(chromedp.CSS("#add-value"), fact[1]))
		script[any](b, "document.querySelector('#add button').click()")
		b.until("document.getElementById('" + elementID("chip", fact[0]) + "')")
	}
	b.says(b.site.practice("water/over-limit").Title)
	b.picture("wrong")
	script[any](b, "document.querySelector('#f-water-over-limit [name=mend]').click(), 0")
	b.until(`!/ 14 gal/.test(document.getElementById("chip-water-added").innerText)`)
	b.until("!document.getElementById('f-water-over-limit')")

	b.answer()
	b.press("Order sheet")
	b.says("The order, as it should be placed")
	b.says("4,000 psi")
	b.picture("order")
	b.printed("order")
	b.visit(job)
}

// TestForeman checks a claim on a phone.
func TestForeman(t *testing.T) {
	b := open(t, newSite(t), phone)
	b.visit("/")
	b.fits()
	b.picture("empty")
	b.say(b.site.folklore())
	b.says("That is not so.")
	b.says("Say it to the customer")
	b.fits()
	b.picture("claim")
	b.press(b.site.practice("water/over-limit").Title)
	b.says("What it looks at")
	b.fits()
}

// TestTrainer reads a belief on a projector.
func TestTrainer(t *testing.T) {
	b := open(t, newSite(t), projector)
	b.visit("/library")
	b.run(chromedp.SendKeys(chromedp.CSS("#find"), "evaporates and leaves"))
	b.says("The extra water evaporates and leaves no trace")
	b.press("The extra water evaporates and leaves no trace")
	b.says("Myth.")
	assert.GreaterOrEqual(t, script[float64](b, "parseFloat(getComputedStyle(document.querySelector('.fact')).fontSize)"), 25.0, "to be read from the back row")
	b.picture("belief")
}

// TestPhone goes through every kind of page on a small phone, and at the width that 400 % zoom leaves: nothing stands out,
// nothing must be pushed sideways save a picture, everything is large enough for a thumb.
func TestPhone(t *testing.T) {
	s := newSite(t)
	job, cold := s.keep(shopFloor), s.keep("title: A very long title of a job that somebody gave it so that it is found again\n"+slabInTheCold)
	s.post(cold, "set", "weather.forecast", "value", coldTable)
	code := s.begin("topic", "water")
	for _, size := range [][2]int64{phone, {320, 640}} {
		b := open(t, s, size)
		for _, path := range []string{"/", "/?said=" + url.QueryEscape(s.folklore()), job, job + "/order", job + "/checklist", job + "/corrected", job + "/states?with=1", cold + "/pictures", "/jobs",
			"/library", "/library?kind=fact", "/library?find=water", "/beliefs/water/extra-evaporates", "/practices/water/over-limit", "/limits/water/gallon", "/figures/wcm?mix.water=280",
			"/sources/aci-318", "/facts/member.use", "/crew", "/crew/" + code, "/crew/progress?crew=north+yard", "/join?code=" + code, "/join/" + code + "?name=14"} {
			b.visit(path)
			b.fits()
			small := script[string](b, `[...document.querySelectorAll('button, select, summary, input:not([type=hidden]), textarea, nav a, .list a')].filter(x => x.checkVisibility() && !x.closest('.hidden, .skip')).filter(x => { const r = x.getBoundingClientRect(); return r.height < 43.9 || r.width < 24 }).map(x => x.outerHTML.slice(0, 100)).join('\n')`)
			assert.Empty(t, small, "too small to touch: %s", path)
			if size == phone && strings.HasPrefix(path, job) {
				b.picture("side" + strings.ReplaceAll(elementID(strings.TrimPrefix(path, job)), "?", "-"))
			}
		}
	}
}

// TestWithoutScripts does the same by forms alone.
func TestWithoutScripts(t *testing.T) {
	b := open(t, newSite(t), desktop, chromedp.Func(noScripts))
	click := func(selector string) {
		b.Helper()
		_, err := chromedp.RunResponse(b.Context, chromedp.Click(chromedp.CSS(selector)))
		require.NoError(b, err)
	}
	see := func(selector string) string {
		b.Helper()
		text, err := chromedp.Run(b.Context, chromedp.TextContent(chromedp.CSS(selector)))
		require.NoError(b, err)
		return text
	}
	b.visit("/")
	b.say("nine yards of 4000 psi, 14 gallons added")
	click(".box button")
	assert.Contains(t, see("#chip-water-added summary"), "14 gal")
	b.run(chromedp.Click(chromedp.CSS("#chip-water-added summary")))
	b.run(chromedp.SetValue(chromedp.CSS("#set-water-added"), "3"))
	click("#chip-water-added .row button.main")
	assert.Contains(t, see("#chip-water-added summary"), "3 gal")
	click(`.tabs a[href$="/checklist"]`)
	b.run(chromedp.Click(chromedp.CSS(`.check input[type=checkbox]`)))
	click(`.check button.plain`)
	assert.Contains(t, see("#done"), "1 of ")
}

// TestKeyboard does it with the keyboard alone, from the first Tab on.
func TestKeyboard(t *testing.T) {
	b := open(t, newSite(t), desktop)
	b.visit("/")
	assert.Equal(t, "said", b.focused(), "the box has the focus when the page opens")
	for _, letter := range "9 yards, adding 4 gal" {
		b.key(string(letter))
	}
	b.says("water added at the site 4 gal")
	assert.Equal(t, "said", b.focused())
	b.tabTo("water added at the site 4 gal")
	b.key(kb.Enter)
	b.until("document.querySelector('#chip-water-added details').open")
	b.key(kb.Tab, kb.End, backspace, "6", kb.Enter)
	b.says("water added at the site 6 gal")
	b.until("!document.querySelector('#chip-water-added details').open")
	b.until("document.activeElement.matches('#chip-water-added summary')")

	question := script[string](b, "document.getElementById('question-title').innerText")
	b.tabTo("Nobody knows")
	b.key(kb.Enter)
	b.until(`document.getElementById('question-title').innerText !== ` + quote(question))
	b.until("document.activeElement.closest('#question')") // the next question can be answered at once
}

// TestARedrawLeavesOtherFieldsAlone types into a field while the answer to another is under way.
func TestARedrawLeavesOtherFieldsAlone(t *testing.T) {
	s := newSite(t)
	b := open(t, s, desktop)
	b.visit(s.keep(shopFloor))
	b.press("Add something else")
	b.run(chromedp.SendKeys(chromedp.CSS("#add-value"), "4 in"), chromedp.SendKeys(chromedp.CSS("#title"), "Shop"))
	b.say("adding 3 gallons")
	b.until(`document.querySelector('[name=saw]').value === ` + quote(mark("adding 3 gallons")))
	assert.Equal(t, "4 in", script[string](b, "document.getElementById('add-value').value"))
	assert.Equal(t, "ShopShop floor", script[string](b, "document.getElementById('title').value"))
	assert.True(t, script[bool](b, "document.getElementById('add').open"), "what was opened stays open")
}

// TestTheFirstTabLeadsPastTheHead is what somebody with a screen reader does first on every page.
func TestTheFirstTabLeadsPastTheHead(t *testing.T) {
	b := open(t, newSite(t), desktop)
	b.visit("/library")
	b.key(kb.Tab)
	assert.Equal(t, "Skip to the page", b.focused())
	b.key(kb.Enter)
	assert.Equal(t, "main", b.focused())
	assert.Equal(t, "polite", func() string { b.visit("/"); return script[string](b, "document.getElementById('verdict').ariaLive") }())
}

// TestTwoPeople edit two jobs at once.
func TestTwoPeople(t *testing.T) {
	s := newSite(t)
	jobs := []string{s.keep(shopFloor), s.keep("order: {slump: 5 in}\n")}
	tabs := []*tab{open(t, s, desktop), open(t, s, phone)}
	for i, b := range tabs {
		b.visit(jobs[i])
	}
	for _, word := range []string{"one", "two", "three"} {
		for _, b := range tabs {
			b.say(word + " ")
		}
	}
	script[any](tabs[0], "document.querySelector('#f-water-over-limit [name=mend]').click(), 0")
	tabs[0].until(`!/ 14 gal/.test(document.getElementById("chip-water-added").innerText)`)
	for i, b := range tabs {
		b.until(`document.getElementById('said').value === "one two three "`)
		b.until(`document.querySelector('[name=saw]').value === ` + quote(mark("one two three ")))
		j, err := s.Store.Job(t.Context(), strings.TrimPrefix(jobs[i], "/jobs/"))
		require.NoError(t, err)
		assert.Equal(t, "one two three ", j.Said)
	}
	lacks(t, s.get(jobs[1]).text, "water added at the site</span> <b>", "what one does is not in the other's job")
}

// TestChecklist ticks and reads on a phone; what was ticked is there when the page is opened anew.
func TestChecklist(t *testing.T) {
	s := newSite(t)
	job := s.keep(shopFloor)
	b := open(t, s, phone)
	b.visit(job + "/checklist")
	b.run(chromedp.Click(chromedp.CSS("#tick-water-over-limit")), chromedp.SendKeys(chromedp.CSS(`#check-water-over-limit [name=reading]`), "0.49"))
	b.says("1 of ")
	b.until(`document.querySelector('#check-water-over-limit [name=reading]').getAttribute('value') === "0.49"`)
	b.visit(job + "/checklist")
	assert.True(t, script[bool](b, "document.getElementById('tick-water-over-limit').checked"))
	assert.Equal(t, "0.49", script[string](b, `document.querySelector('#check-water-over-limit [name=reading]').value`))
	b.printed("checklist")
}

// TestAccessible lets axe look at every kind of page, against WCAG 2.2 A and AA and its own best practice.
func TestAccessible(t *testing.T) {
	path := os.Getenv("AXE")
	if path == "" {
		wanting(t, "axe-core is not here: install it and name its axe.min.js in AXE")
	}
	axe, err := os.ReadFile(path)
	require.NoError(t, err)
	s := newSite(t)
	job := s.keep(shopFloor)
	s.post(job+"/keep", "name", "as ordered")
	cold := s.keep(slabInTheCold)
	s.post(cold, "set", "weather.forecast", "value", coldTable)
	open1, closed := s.begin("topic", "water"), s.begin("topic", "joints")
	s.post("/join/"+closed, "name", "14", "question", "0", "chosen", "0")
	s.post("/crew/"+closed+"/close", "open", "no")
	check := func(b *tab, path string) {
		b.Helper()
		b.visit(path)
		script[any](b, "document.querySelectorAll('details').forEach(x => { x.removeAttribute('name'); x.open = true })")
		script[any](b, string(axe)+";0")
		found := script[[]string](b, `axe.run({ runOnly: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"] }).then(r => r.violations.flatMap(v => v.nodes.slice(0, 3).map(n => v.id + ": " + n.html.slice(0, 160) + " " + n.failureSummary)))`)
		assert.Empty(t, found, path)
	}
	b := open(t, s, desktop)
	for _, path := range []string{"/", "/?said=" + url.QueryEscape(s.folklore()), "/?said=xylophones", job, job + "/order", job + "/pictures", job + "/checklist", job + "/corrected", job + "/states?with=1",
		"/jobs", "/library", "/library?find=water", "/beliefs/water/extra-evaporates", "/practices/water/over-limit", "/limits/water/gallon",
		"/figures/wcm?mix.water=280", "/sources/aci-318", "/facts/order.slump", "/token", "/no/page"} {
		check(b, path)
	}
	b = open(t, s, desktop)
	for _, path := range []string{cold, cold + "/pictures", "/crew", "/crew/" + open1, "/crew/" + closed, "/crew/progress?crew=north+yard", "/join", "/join/" + open1 + "?name=14"} {
		check(b, path)
	}
	b.run(chromedp.Func(inTheDark))
	for _, path := range []string{"/", job, cold + "/pictures", "/crew/" + closed} {
		check(b, path)
	}
}

// answer answers the next question, and waits for the one after it.
func (b *tab) answer() {
	b.Helper()
	asked := script[string](b, "document.getElementById('question-title').innerText")
	fact, ok := b.site.Book.Facts.Fact(script[string](b, "document.querySelector('#question [name=set]').value"))
	require.True(b, ok)
	if fact.Kind == job.KindQuantity {
		b.run(chromedp.SendKeys(chromedp.CSS("#question input[type=text]"), fmt.Sprint(fact.Usual.Low)))
	}
	script[any](b, "document.querySelector('#question .answers button').click()")
	b.until(`document.getElementById('question-title').innerText !== ` + quote(asked))
}

// tabTo presses Tab until the focus is on what bears a text.
func (b *tab) tabTo(label string) {
	b.Helper()
	var passed []string
	for range 80 {
		b.key(kb.Tab)
		passed = append(passed, b.focused())
		if script[bool](b, `document.activeElement.innerText?.replace(/\s+/g, ' ').trim().startsWith(`+quote(label)+`) ?? false`) {
			return
		}
	}
	require.Fail(b, "the Tab key does not lead to "+label, strings.Join(passed, " | "))
}

// printed prints the page on letter and A4, and keeps it where SCREENSHOTS says.
func (b *tab) printed(name string) {
	b.Helper()
	for paper, size := range map[string]chromedp.PaperSize{"letter": {Width: 8.5, Height: 11}, "a4": {Width: 8.27, Height: 11.69}} {
		sheet, err := chromedp.Run(b.Context, chromedp.PrintToPDF(chromedp.PDFPaper(size)))
		require.NoError(b, err)
		pages := bytes.Count(sheet, []byte("/Type /Page\n"))
		assert.True(b, pages == 1 || pages == 2, "a sheet has one or two pages, not %d", pages)
		if folder := os.Getenv("SCREENSHOTS"); folder != "" {
			require.NoError(b, os.WriteFile(filepath.Join(folder, b.Name()+"-"+name+"-"+paper+".pdf"), sheet, 0o644))
		}
	}
}

func quote(text string) string {
	quoted, _ := json.Marshal(text)
	return string(quoted)
}

func inTheDark(ctx context.Context, t *chromedp.Target) error {
	_, err := cdp.Call(ctx, t, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: "dark"}}})
	return err
}

func noScripts(ctx context.Context, t *chromedp.Target) error {
	_, err := cdp.Call(ctx, t, emulation.SetScriptExecutionDisabled, emulation.SetScriptExecutionDisabledParams{Value: true})
	return err
}
