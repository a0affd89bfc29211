package web

import (
	"net/http"
	"net/url"
	"slices"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/belief"
	"hearsay/internal/quantity"
)

// folklore gives a sentence that is answered as a myth about water that evaporates.
func (s *site) folklore() string {
	s.Helper()
	e, err := s.Corpus.Entry("water/extra-evaporates")
	require.NoError(s, err)
	for _, said := range slices.Concat(e.Said["homeowner"], e.Said["crew"], e.Said["office"]) {
		if a, err := s.Corpus.Answer(said); err == nil && a.Answered && *a.Belief == e.ID && a.Verdict == belief.Myth {
			return said
		}
	}
	require.Fail(s, "the corpus answers none of its own sentences")
	return ""
}

func TestAClaimIsAnswered(t *testing.T) {
	s := newSite(t)
	answer := s.post("/", "said", s.folklore())
	require.Equal(t, http.StatusSeeOther, answer.StatusCode)
	page := s.get(answer.Header.Get("Location")).text
	has(t, page, "That is not so.")
	has(t, page, "Say it to the customer")
	has(t, page, `href="/beliefs/water/extra-evaporates"`)
	has(t, page, `href="/practices/water/over-limit"`)
	list, err := s.Store.Jobs(t.Context(), "", 10)
	require.NoError(t, err)
	assert.Empty(t, list, "a claim is not kept")
}

func TestANumberInAClaimIsHeldAgainstWhatIsComputed(t *testing.T) {
	page := newSite(t).get("/?said=" + url.QueryEscape("a gallon costs you 1000 psi")).text
	has(t, page, "What the numbers in it come to")
	has(t, page, "“1000 psi” is too much")
	has(t, page, `href="/figures/strength_lost"`)
}

func TestWhatIsNotKnownIsSaid(t *testing.T) {
	s := newSite(t)
	page := s.get("/?said=" + url.QueryEscape("the moon is made of green cheese")).text
	lacks(t, page, "Say it to the customer")
	far, err := s.shownClaim(s.looks["en"].texts, &belief.Answer{Far: true}, quantity.US)
	require.NoError(t, err)
	assert.Equal(t, "I don't know that one.", far.Line)
	unsure, err := s.shownClaim(s.looks["en"].texts, &belief.Answer{Near: []belief.Near{{Belief: "cure/let-it-dry", Saying: "it must dry"}}}, quantity.US)
	require.NoError(t, err)
	assert.Equal(t, "I am not sure what is meant.", unsure.Line)
	assert.Equal(t, []link{{"/beliefs/cure/let-it-dry", "It must dry", "cure/let-it-dry"}}, unsure.Meant)
}

func TestWhatIsTakenAsAJob(t *testing.T) {
	known, unknown := &belief.Answer{Answered: true}, &belief.Answer{}
	s := newSite(t)
	for _, x := range []struct {
		said   string
		answer *belief.Answer
		want   int
	}{
		{"water makes it weak", known, takenAsClaim}, {"water makes it weak", unknown, takenAsClaim},
		{"he is adding 14 gallons", known, takenAsBoth}, {"he is adding 14 gallons", unknown, takenAsJob},
		{"9 yards, adding 14 gallons", known, takenAsJob},
		{"it is for a driveway", unknown, takenAsClaim}, {"driveway, no curing", unknown, takenAsJob}, {"driveway, no curing", known, takenAsBoth},
	} {
		assert.Equal(t, x.want, s.take(s.understand(contentSaid(x.said)), x.answer), x.said)
	}
}

func TestWhatMayBeBothIsShownAsBoth(t *testing.T) {
	s := newSite(t)
	const said = "adding 5 gallons of water won't hurt the concrete"
	answer := s.post("/", "said", said)
	page := s.get(answer.Header.Get("Location")).text
	has(t, page, "That is not so.")
	has(t, page, "It may also be a job")
	has(t, page, "water added at the site <b>5 gal</b>")
	taken := s.post("/", "said", said, "as", "job")
	job := s.get(taken.Header.Get("Location")).text
	has(t, job, "Read from “adding 5 gallons of water”")
	has(t, job, "That is not so.", "the claim in the words of a job is answered beside it")
}

func TestAJobIsKeptAsItIsSaid(t *testing.T) {
	s := newSite(t)
	answer := s.post("/", "said", "nine yards of 4000 psi, 14 gallons added")
	require.Regexp(t, "^/jobs/[a-z0-9]{12}$", answer.Header.Get("Location"))
	job := answer.Header.Get("Location")
	s.post(job, "drop", "water.added")
	page := s.get(job).text
	lacks(t, page, `id="chip-water-added"`)
	has(t, page, "“14 gallons added”</span> put back")
	s.post(job, "restore", "water.added")
	has(t, s.get(job).text, `id="chip-water-added"`)
	s.post(job, "set", "water.added", "value", "2", "unit", "gal")
	page = s.get(job).text
	has(t, page, "<span>water added at the site</span> <b>2 gal</b>", "what is answered counts before what was said")
	has(t, s.get(job+"/job.yaml").text, "As said: nine yards of 4000 psi")
}

func TestWhatContradictsItselfAndWhatIsNotRead(t *testing.T) {
	s := newSite(t)
	job := s.post("/", "said", "9 yards of 4000 psi, 40 blorps").Header.Get("Location")
	has(t, s.get(job).text, "Not read: “40 blorps”")
	s.post(job, "set", "exposure.outdoors", "value", "yes")
	s.post(job, "said", "9 yards of 4000 psi for a basement floor")
	page := s.get(job).text
	has(t, page, "<b>4,000 psi</b>")
	has(t, page, "Not taken: use “basement floor”")
	has(t, page, "contradict each other")
}
