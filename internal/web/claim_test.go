package web

import (
	"net/http"
	"net/url"
	"testing"
	"time"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/belief"
	"hearsay/internal/desk"
	"hearsay/internal/quantity"
)

// hear is a reader that finds the facts it was given, whatever is said.
func hear(facts ...desk.Said) func(*Config) {
	return func(c *Config) {
		c.Listen = func(string, time.Time) ([]desk.Said, []string) { return facts, nil }
	}
}

var (
	volume9  = desk.Said{Fact: "load.volume", Value: "9 yd3", Text: "nine yards"}
	strength = desk.Said{Fact: "order.strength", Value: "4000 psi", Text: "4000 psi"}
	gallons  = desk.Said{Fact: "water.added", Value: "14 gal", Text: "14 gallons"}
	driveway = desk.Said{Fact: "member.use", Value: "driveway", Text: "driveway"}
	uncured  = desk.Said{Fact: "cure.method", Value: "none", Text: "no curing"}
)

const folklore = "the extra water evaporates and leaves no trace"

func TestAClaimIsAnswered(t *testing.T) {
	s := newSite(t)
	answer := s.post("/", "said", folklore)
	require.Equal(t, http.StatusSeeOther, answer.StatusCode)
	page := s.get(answer.Header.Get("Location")).text
	assert.Contains(t, page, "That is not so.")
	assert.Contains(t, page, "Say it to the customer")
	assert.Contains(t, page, `href="/beliefs/water/extra-evaporates"`)
	assert.Contains(t, page, `href="/practices/water/over-limit"`)
	list, err := s.Store.Jobs(t.Context(), "", 10)
	require.NoError(t, err)
	assert.Empty(t, list, "a claim is not kept")
}

func TestWhatIsNotKnownIsSaid(t *testing.T) {
	s := newSite(t)
	page := s.get("/?said=" + url.QueryEscape("the moon is made of green cheese")).text
	assert.NotContains(t, page, "Say it to the customer")
	far := s.shownClaim(s.looks["en"].texts, &belief.Answer{Far: true}, quantity.US)
	assert.Equal(t, "I don't know that one.", far.Line)
	unsure := s.shownClaim(s.looks["en"].texts, &belief.Answer{Near: []belief.Near{{Belief: "cure/let-it-dry", Saying: "it must dry"}}}, quantity.US)
	assert.Equal(t, "I am not sure what is meant.", unsure.Line)
	assert.Equal(t, []link{{"/beliefs/cure/let-it-dry", "It must dry", "cure/let-it-dry"}}, unsure.Meant)
}

func TestWhatIsTakenAsAJob(t *testing.T) {
	known, unknown := &belief.Answer{Answered: true}, &belief.Answer{}
	for _, x := range []struct {
		facts  []desk.Said
		answer *belief.Answer
		want   int
	}{
		{nil, known, takenAsClaim}, {nil, unknown, takenAsClaim},
		{[]desk.Said{gallons}, known, takenAsBoth}, {[]desk.Said{gallons}, unknown, takenAsJob},
		{[]desk.Said{volume9, strength, gallons}, known, takenAsJob},
		{[]desk.Said{driveway}, unknown, takenAsClaim}, {[]desk.Said{driveway, uncured}, unknown, takenAsJob}, {[]desk.Said{driveway, uncured}, known, takenAsBoth},
	} {
		s := newSite(t, hear(x.facts...))
		assert.Equal(t, x.want, s.take(s.understand(contentSaid("words")), x.answer), "%v", x)
	}
}

func TestWhatMayBeBothIsShownAsBoth(t *testing.T) {
	s := newSite(t, hear(gallons))
	answer := s.post("/", "said", folklore)
	page := s.get(answer.Header.Get("Location")).text
	assert.Contains(t, page, "That is not so.")
	assert.Contains(t, page, "It may also be a job")
	assert.Contains(t, page, "water added at the site <b>14 gal</b>")
	taken := s.post("/", "said", folklore, "as", "job")
	job := s.get(taken.Header.Get("Location")).text
	assert.Contains(t, job, "Read from “14 gallons”")
	assert.Contains(t, job, "That is not so.", "the claim in the words of a job is answered beside it")
}

func TestAJobIsKeptAsItIsSaid(t *testing.T) {
	s := newSite(t, hear(volume9, strength, gallons))
	answer := s.post("/", "said", "nine yards of 4000 psi, 14 gallons added")
	require.Regexp(t, "^/jobs/[a-z0-9]{12}$", answer.Header.Get("Location"))
	job := answer.Header.Get("Location")
	s.post(job, "drop", "water.added")
	page := s.get(job).text
	assert.NotContains(t, page, `id="chip-water-added"`)
	assert.Contains(t, page, "“14 gallons”</span> put back")
	s.post(job, "restore", "water.added")
	assert.Contains(t, s.get(job).text, `id="chip-water-added"`)
	s.post(job, "set", "water.added", "value", "2", "unit", "gal")
	page = s.get(job).text
	assert.Contains(t, page, "<span>water added at the site</span> <b>2 gal</b>", "what is answered counts before what was said")
	assert.Contains(t, s.get(job+"/job.yaml").text, "As said: nine yards of 4000 psi")
}
