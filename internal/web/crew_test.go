package web

import (
	"fmt"
	"net/http"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/crew"
	"hearsay/internal/rulebook"
)

// TestCrewSession holds a session: begun on a desktop, answered on a phone, closed on the projector, and due a week later.
func TestCrewSession(t *testing.T) {
	at := time.Now()
	s := newSite(t, func(c *Config) { c.Now = func() time.Time { return at } })
	b := open(t, s, projector)
	b.visit("/crew")
	b.run(chromedp.SendKeys(chromedp.CSS("#crew"), "north yard"), chromedp.SetValue(chromedp.CSS("#topic"), "water"))
	b.press("Begin a session")
	b.says("The number to remember")
	b.says("0 answers")
	b.fits()
	b.picture("session")
	code := script[string](b, "document.getElementById('code').innerText")

	p := open(t, s, phone)
	p.visit("/join?code=" + strings.ToLower(code))
	p.run(chromedp.SendKeys(chromedp.CSS("#name"), "14"))
	p.press("Begin")
	z, _, err := crew.Kept(t.Context(), s.Store, code)
	require.NoError(t, err)
	for i, q := range z.Questions {
		p.until(fmt.Sprintf("document.getElementById('asked')?.innerText.startsWith('%d. ')", i+1))
		p.fits()
		chosen := q.Key
		if i == 0 {
			chosen = (q.Key + 1) % len(q.Options)
		}
		script[any](p, fmt.Sprintf("document.querySelectorAll('.answers button')[%d].click()", chosen))
	}
	p.until("document.getElementById('done')")
	p.says("Right.")

	b.visit("/crew/" + code)
	b.says("6 answers")
	assert.NotContains(t, script[string](b, "document.querySelector('main').innerText"), "1 of 1 right")
	b.press("Close, and show the answers")
	b.says("1 of 1 right")
	b.says("0 of 1 right")
	b.picture("closed")
	b.visit("/crew")
	assert.NotContains(t, script[string](b, "document.querySelector('main').innerText"), "3 things to ask again")
	at = at.AddDate(0, 0, 7)
	b.visit("/crew")
	b.says("3 things to ask again")
}

// TestTwentyPhonesAnswerAtOnce has twenty people answer every question through the page, all at the same time.
func TestTwentyPhonesAnswerAtOnce(t *testing.T) {
	s := newSite(t, func(c *Config) { c.Rate = 2000 })
	started := s.post("/crew", "crew", "north yard", "topic", "joints", "language", "es")
	require.Equal(t, http.StatusSeeOther, started.StatusCode, started.text)
	code := strings.TrimPrefix(started.Header.Get("Location"), "/crew/")
	var phones sync.WaitGroup
	var lock sync.Mutex
	var slowest time.Duration
	for person := range 20 {
		phones.Go(func() {
			for question := range sessionQuestions {
				began := time.Now()
				answer, err := s.client.PostForm(s.address+"/join/"+code, map[string][]string{
					"name": {fmt.Sprint(person)}, "question": {fmt.Sprint(question)}, "chosen": {fmt.Sprint(person % 3)}})
				if !assert.NoError(t, err) {
					return
				}
				answer.Body.Close()
				assert.Equal(t, http.StatusOK, answer.StatusCode)
				lock.Lock()
				slowest = max(slowest, time.Since(began))
				lock.Unlock()
			}
		})
	}
	phones.Wait()
	t.Logf("the slowest of %d answers took %v", 20*sessionQuestions, slowest)
	answers, err := s.Store.SessionAnswers(t.Context(), code)
	require.NoError(t, err)
	assert.Len(t, answers, 20*sessionQuestions)
	assert.Less(t, slowest, 5*time.Second)
}

func TestJoiningNeedsTheCodeAndNoToken(t *testing.T) {
	s := newSite(t, func(c *Config) { c.Token = "abcde-fghij-klmno-pqrst-uvwxy" })
	assert.Equal(t, http.StatusSeeOther, s.get("/crew").StatusCode, "the trainer's side asks for the token")
	assert.Equal(t, http.StatusOK, s.get("/join").StatusCode)
	assert.Equal(t, http.StatusNotFound, s.get("/join/NOSUCH?name=14").StatusCode)
}

func TestAClosedSessionAndABadAnswerAreRefused(t *testing.T) {
	s := newSite(t)
	code := strings.TrimPrefix(s.post("/crew", "crew", "north", "topic", "water", "language", "en").Header.Get("Location"), "/crew/")
	assert.Equal(t, http.StatusBadRequest, s.post("/join/"+code, "name", "14", "question", "99", "chosen", "0").StatusCode)
	assert.Equal(t, http.StatusBadRequest, s.post("/join/"+code, "name", " ", "question", "0", "chosen", "0").StatusCode)
	assert.Equal(t, http.StatusBadRequest, s.post("/crew", "crew", "", "topic", "water", "language", "en").StatusCode)
	assert.Equal(t, http.StatusBadRequest, s.post("/crew", "crew", "north", "topic", "no such", "language", "en").StatusCode)
	s.post("/crew/"+code+"/close", "open", "no")
	assert.Equal(t, http.StatusConflict, s.post("/join/"+code, "name", "14", "question", "0", "chosen", "0").StatusCode)
}

// begin begins a session and gives its code.
func (s *site) begin(fields ...string) string {
	s.Helper()
	answer := s.post("/crew", append([]string{"crew", "north yard", "language", "en"}, fields...)...)
	require.Equal(s, http.StatusSeeOther, answer.StatusCode, answer.text)
	return strings.TrimPrefix(answer.Header.Get("Location"), "/crew/")
}

func TestASessionIsAboutAJobOrAboutWhatWasChosen(t *testing.T) {
	s := newSite(t)
	job := s.keep(shopFloor)
	code := s.begin("job", strings.TrimPrefix(job, "/jobs/"))
	session, err := s.Store.CrewSession(t.Context(), code)
	require.NoError(t, err)
	wrong, err := s.practicesOf(t.Context(), strings.TrimPrefix(job, "/jobs/"), func(one *rulebook.Judgement) bool { return one.Status == rulebook.Wrong })
	require.NoError(t, err)
	for _, id := range session.Beliefs {
		e, err := s.Corpus.Entry(id)
		require.NoError(t, err)
		assert.True(t, slices.ContainsFunc(e.Practices, func(p string) bool { return slices.Contains(wrong, p) }), "%s has to do with the job", id)
	}
	chosen := []string{"water/extra-evaporates", "joints/spacing-any"}
	session, err = s.Store.CrewSession(t.Context(), s.begin("belief", chosen[0], "belief", chosen[1]))
	require.NoError(t, err)
	assert.Equal(t, chosen, session.Beliefs)

	sound := s.keep("member: {use: driveway}\n")
	for _, x := range []struct {
		status int
		fields []string
	}{
		{http.StatusBadRequest, nil}, // nothing chosen, and nothing known of the crew
		{http.StatusBadRequest, []string{"job", strings.TrimPrefix(sound, "/jobs/")}},
		{http.StatusNotFound, []string{"job", "none"}},
		{http.StatusNotFound, []string{"belief", "water/none"}},
		{http.StatusBadRequest, []string{"belief", "a/b", "belief", "a/c", "belief", "a/d", "belief", "a/e", "belief", "a/f"}},
	} {
		assert.Equal(t, x.status, s.post("/crew", append([]string{"crew", "south", "language", "en"}, x.fields...)...).StatusCode, x.fields)
	}
}

// TestProgress keeps answers from paper and shows how the crew stands, and a week later what is due, asked again with one press.
func TestProgress(t *testing.T) {
	at := time.Now()
	s := newSite(t, func(c *Config) { c.Now = func() time.Time { return at } })
	code := s.begin("topic", "water")
	z, _, err := crew.Kept(t.Context(), s.Store, code)
	require.NoError(t, err)
	var ana, luis []string
	for _, q := range z.Questions {
		ana, luis = append(ana, q.KeyLetter()), append(luis, crew.Letter((q.Key+1)%len(q.Options)))
	}
	bad := s.post("/crew/"+code+"/paper", "answers", "Ana: A B")
	assert.Equal(t, http.StatusUnprocessableEntity, bad.StatusCode)
	has(t, bad.text, "2 letters for 6 questions")
	has(t, bad.text, "Ana: A B</textarea>", "what was typed is not lost")
	paper := "Ana: " + strings.Join(ana, " ") + "\r\nLuis: " + strings.Join(luis, " ")
	require.Equal(t, http.StatusSeeOther, s.post("/crew/"+code+"/paper", "answers", paper).StatusCode)

	b := open(t, s, phone)
	b.visit("/crew")
	b.press("north yard")
	b.says("Wrong now")
	b.says("2 people: Ana, Luis.")
	b.says("Nothing is due.")
	b.fits()
	b.picture("phone")
	at = at.AddDate(0, 0, 7)
	b.visit(b.address() + "?crew=north+yard")
	b.says("luis was wrong when last asked")
	b.picture("due")
	b.press("Talk about 3 of it and ask again now")
	b.says("Session code")
	assert.NotEqual(t, "/crew/"+code, b.address())
	assert.Equal(t, http.StatusNotFound, s.get("/crew/progress?crew=nobody").StatusCode)
}
