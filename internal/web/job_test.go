package web

import (
	"net/http"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

func TestAJobShowsWhatIsWrongBesideWhatIsRight(t *testing.T) {
	s := newSite(t)
	page := s.get(s.keep(shopFloor)).text
	has(t, page, s.practice("water/over-limit").Title)
	has(t, page, ">0.518<")
	has(t, page, `class="right">0.5<`)
	has(t, page, s.practice("water/over-limit").Do)
	has(t, page, "Show the working")
	has(t, page, `href="/sources/`)
	si := s.get(s.keep(shopFloor) + "?units=si").text
	has(t, si, "27.6 MPa")
	lacks(t, si, "4,000 psi")
}

func TestAnAnswerIsTakenAndKept(t *testing.T) {
	s := newSite(t)
	job := s.keep(shopFloor)
	answer := s.post(job, "set", "member.thickness", "value", "100", "unit", "mm", "to", "question")
	require.Equal(t, http.StatusSeeOther, answer.StatusCode)
	assert.Equal(t, job+"#question", answer.Header.Get("Location"))
	has(t, s.get(job).text, "<span>thickness</span> <b>3.94 in</b>")
}

func TestACorrectionMakesTheFindingGoAway(t *testing.T) {
	s := newSite(t)
	job := s.keep(shopFloor)
	require.Equal(t, http.StatusSeeOther, s.post(job, "mend", "water/over-limit").StatusCode)
	page := s.get(job).text
	lacks(t, page, `id="f-water-over-limit"`)
	assert.Regexp(t, `<span>water added at the site</span> <b>[0-3](\.\d+)? gal</b>`, page[strings.Index(page, `id="chip-water-added"`):][:300])
}

func TestAnAnswerThatCannotBeUsedIsSaidWhereItWasGiven(t *testing.T) {
	s := newSite(t)
	job := s.keep(shopFloor)
	for value, why := range map[string]string{"4 gal": "volume", "": "Fill this in", "900 in": "not possible", "4": "unit"} {
		answer := s.post(job, "set", "order.slump", "value", value)
		assert.Equal(t, http.StatusUnprocessableEntity, answer.StatusCode, value)
		has(t, answer.text, why)
		has(t, answer.text, `aria-invalid="true"`)
	}
	has(t, s.get(job).text, "<span>ordered slump</span> <b>4 in</b>", "nothing was changed")
	unknown := s.post(job, "set", "order.slmp", "value", "4 in")
	assert.Equal(t, http.StatusUnprocessableEntity, unknown.StatusCode)
	has(t, unknown.text, "No fact is called “order.slmp”")
	require.Equal(t, http.StatusSeeOther, s.post(job, "set", " Ordered Slump ", "value", "5 in").StatusCode)
	has(t, s.get(job).text, "<span>ordered slump</span> <b>5 in</b>", "a fact can be given by its name")
}

func TestAnAnswerThatContradictsTheRestIsRefused(t *testing.T) {
	s := newSite(t)
	job := s.keep("member: {use: driveway}\n")
	answer := s.post(job, "set", "exposure.outdoors", "value", "no")
	assert.Equal(t, http.StatusUnprocessableEntity, answer.StatusCode)
	has(t, answer.text, "contradict")
}

func TestAFactIsTakenOutAndAQuestionIsSkipped(t *testing.T) {
	s := newSite(t)
	job := s.keep(shopFloor)
	s.post(job, "drop", "water.added")
	lacks(t, s.get(job).text, `id="chip-water-added"`)
	asked := regexp.MustCompile(`name="skip" value="([a-z_.]+)"`)
	first := asked.FindStringSubmatch(s.get(job).text)[1]
	s.post(job, "skip", first)
	page := s.get(job).text
	assert.NotEqual(t, first, asked.FindStringSubmatch(page)[1])
	has(t, page, "One thing nobody knows")
	s.post(job, "unskip", first)
	assert.Equal(t, first, asked.FindStringSubmatch(s.get(job).text)[1])
}

func TestTwoPeopleInOneBoxLoseNothing(t *testing.T) {
	s := newSite(t)
	job := s.keep("say: nine yards\norder: {slump: 4 in}\n")
	saw := regexp.MustCompile(`name="saw" value="(\w+)"`).FindStringSubmatch(s.get(job).text)[1]
	require.Equal(t, http.StatusSeeOther, s.post(job, "said", "ten yards, says one", "saw", saw).StatusCode)
	clash := s.post(job, "said", "eleven yards, says the other", "saw", saw)
	require.Equal(t, http.StatusConflict, clash.StatusCode)
	has(t, clash.text, "<blockquote>ten yards, says one</blockquote>")
	has(t, clash.text, ">eleven yards, says the other</textarea>")
	saw = regexp.MustCompile(`name="saw" value="(\w+)"`).FindStringSubmatch(clash.text)[1]
	require.Equal(t, http.StatusSeeOther, s.post(job, "said", "eleven yards, says the other", "saw", saw).StatusCode)
	states, err := s.Store.States(t.Context(), strings.TrimPrefix(job, "/jobs/"))
	require.NoError(t, err)
	require.Len(t, states, 2)
	assert.Equal(t, "ten yards, says one", states[1].Said, "what the one said is among the earlier states")
}

func TestAJobGoesOutAndComesInAsTheSameYAML(t *testing.T) {
	s := newSite(t)
	out := s.get(s.keep(shopFloor) + "/job.yaml")
	assert.Contains(t, out.Header.Get("Content-Disposition"), "attachment")
	again := s.get(s.keep(out.text) + "/job.yaml")
	assert.Equal(t, out.text, again.text)
	has(t, out.text, `slump: "4 in"`)
}

func TestAJobFileThatCannotBeReadIsShownWithItsErrors(t *testing.T) {
	s := newSite(t)
	answer := s.post("/jobs", "yaml", "order:\n  slmp: 4 in\n")
	assert.Equal(t, http.StatusUnprocessableEntity, answer.StatusCode)
	has(t, answer.text, "job.yaml:2:3")
	has(t, answer.text, "order.slump")
	has(t, answer.text, "slmp: 4 in", "the text is still there to be corrected")
}

func TestWhatChangedSinceAnEarlierState(t *testing.T) {
	s := newSite(t)
	job := s.keep(shopFloor)
	s.post(job+"/keep", "name", "as ordered")
	s.post(job, "set", "water.added", "value", "0", "unit", "gal")
	page := s.get(job + "/states?with=1").text
	has(t, page, "Since “as ordered”")
	has(t, page, "<td>14\u00a0gal</td><td><b>0\u00a0gal</b></td>")
	has(t, page, "<td>wrong</td>")
	require.Equal(t, http.StatusSeeOther, s.post(job+"/states/1").StatusCode)
	has(t, s.get(job).text, "<b>14 gal</b>", "it went back")
	assert.Equal(t, 3, strings.Count(s.get(job+"/states").text, "<time"), "what it was before stays")
	assert.Equal(t, http.StatusNotFound, s.get(job+"/states?with=99").StatusCode)
}

func TestTicksAndReadingsAreKept(t *testing.T) {
	s := newSite(t)
	job := s.keep(shopFloor)
	require.Equal(t, http.StatusSeeOther, s.post(job+"/checklist", "practice", "water/over-limit", "ticked", "1", "reading", "0.49", "initials", "JR").StatusCode)
	page := s.get(job + "/checklist").text
	has(t, page, `id="tick-water-over-limit" checked`)
	has(t, page, `value="0.49"`)
	has(t, page, "1 of ")
	assert.Equal(t, http.StatusNotFound, s.post(job+"/checklist", "practice", "no/such").StatusCode)
}

func TestTheSheetsStandOnTheirOwn(t *testing.T) {
	s := newSite(t)
	job := s.keep(shopFloor)
	for _, sheet := range []string{"/order", "/checklist"} {
		page := s.get(job + sheet).text
		has(t, page, "What this rests on")
		has(t, page, "ordered strength: 4,000 psi")
		has(t, page, "Wet concrete burns skin")
		has(t, page, "the engineer of record come before anything said here")
	}
	assert.Regexp(t, `<td>14\x{a0}gal</td><td><b>[0-3](\.\d+)?\x{a0}gal</b></td>`, s.get(job+"/corrected").text)
}

func TestADeletedJobIsGone(t *testing.T) {
	s := newSite(t)
	job := s.keep(shopFloor)
	has(t, s.get("/jobs?find=SHOP").text, job)
	s.post(job + "/delete")
	gone := s.get(job)
	assert.Equal(t, http.StatusNotFound, gone.StatusCode)
	has(t, gone.text, "There is no such job here")
	lacks(t, s.get("/jobs").text, job)
}

func TestWhatSomebodyTypesIsNeverPartOfThePage(t *testing.T) {
	s := newSite(t)
	evil := `"><script>alert(1)</script>`
	job := s.keep("title: 'x'\nsay: |\n  " + evil + "\norder: {slump: 4 in}\n")
	s.post(job, "title", evil)
	s.post(job+"/checklist", "practice", "water/over-limit", "reading", evil)
	s.post(job+"/keep", "name", evil)
	for _, path := range []string{job, job + "/checklist", job + "/states", job + "/order", "/jobs", "/", "/library?find=" + "%22%3E%3Cscript%3Ealert(1)%3C/script%3E"} {
		lacks(t, s.get(path).text, "<script>alert", path)
	}
}

// A right number stands with its unit also where nobody has said what the job has.
func TestARightNumberHasItsUnitBesideAnUnknownOne(t *testing.T) {
	s := newSite(t)
	has(t, s.get(s.keep(shopFloor)+"/checklist").text, "concrete temperature against its limit: right 95\u00a0°F")
}

// Beside a number that stands alone there is nothing to be known.
func TestANumberWithoutAnotherSideIsNotCalledUnknown(t *testing.T) {
	s := newSite(t)
	page := s.get(s.keep("member: {use: driveway, length: 40 ft, width: 20 ft, thickness: 4 in}\norder: {volume: 9 yd3, strength: 4000 psi}\n")).text
	row := page[strings.Index(page, "volume of the forms"):]
	row = row[:strings.Index(row, "</tr>")]
	has(t, row, "–")
	lacks(t, row, "not known yet")
}
