package web

import (
	"bytes"
	"fmt"
	"mime/multipart"
	"net/http"
	"strings"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"
)

const coldTable = "hour, air [F], humidity [%], wind [mph], cloud [%]\n0, 41, 60, 6, 30\n12, 30, 70, 6, 30\n24, 20, 70, 6, 30\n48, 25, 60, 8, 20\n"

// nationalForecast is an hourly forecast in the form of the National Weather Service that begins at a time.
func nationalForecast(begins time.Time, hours int) string {
	var periods []string
	for i := range hours {
		periods = append(periods, fmt.Sprintf(`{"startTime": %q, "temperature": %d, "temperatureUnit": "F", "windSpeed": "5 mph", "relativeHumidity": {"unitCode": "wmoUnit:percent", "value": 60}, "shortForecast": "Clear"}`,
			begins.Add(time.Duration(i)*time.Hour).Format(time.RFC3339), 40-i/4))
	}
	return `{"properties": {"periods": [` + strings.Join(periods, ", ") + `]}}`
}

// upload sends a forecast as a form with a file does.
func (s *site) upload(path, name, text string, with ...string) got {
	s.Helper()
	var body bytes.Buffer
	form := multipart.NewWriter(&body)
	for i := 0; i < len(with); i += 2 {
		require.NoError(s, form.WriteField(with[i], with[i+1]))
	}
	part, err := form.CreateFormFile("file", name)
	require.NoError(s, err)
	_, err = part.Write([]byte(text))
	require.NoError(s, err)
	require.NoError(s, form.Close())
	r, err := http.NewRequest(http.MethodPost, s.address+path, &body)
	require.NoError(s, err)
	r.Header.Set("Content-Type", form.FormDataContentType())
	return s.do(r)
}

func TestAForecastIsBroughtInAsAFileOrAsText(t *testing.T) {
	s := newSite(t)
	job := s.keep(slabInTheCold)
	lacks(t, s.get(job+"/pictures").text, `id="slab"`)
	has(t, s.get(job+"/pictures").text, `name="file"`)
	answer := s.upload(job, "night.csv", coldTable, "set", "weather.forecast", "to", "pictures", "value", "")
	require.Equal(t, http.StatusSeeOther, answer.StatusCode, answer.text)
	assert.Equal(t, job+"/pictures", answer.Header.Get("Location"))
	pictures := s.get(job + "/pictures").text
	for _, name := range []string{"slab", "strength", "evaporation"} {
		has(t, pictures, `<section class="picture" id="`+name+`"`)
	}
	assert.GreaterOrEqual(t, strings.Count(pictures, "<desc"), 3, "each with its text alternative")
	has(t, s.get(job).text, "<span>hourly forecast</span> <b>48 h</b>")
	alone := s.get(job + "/pictures/slab.svg")
	assert.Equal(t, "image/svg+xml", alone.Header.Get("Content-Type"))
	assert.True(t, strings.HasPrefix(alone.text, "<svg"))
	assert.Equal(t, http.StatusNotFound, s.get(job+"/pictures/drying.svg").StatusCode)

	pasted := s.keep(slabInTheCold)
	require.Equal(t, http.StatusSeeOther, s.post(pasted, "set", "weather.forecast", "value", coldTable).StatusCode)
	has(t, s.get(pasted).text, "<span>hourly forecast</span> <b>48 h</b>")
}

func TestAForecastThatCannotBeReadSaysWhatToCorrect(t *testing.T) {
	s := newSite(t)
	job := s.keep(slabInTheCold)
	for text, why := range map[string]string{
		"hour, air\n0, 41\n":              "has no unit",
		"air [F]\n41\n":                   "hour",
		`{"properties": {"periods": []}}`: "forecastHourly",
		"{":                               "National Weather Service",
		"":                                "Choose a file",
		"\x00\x01\xff":                    "",
		"hour, air [F]\n0, 4100\n":        "",
		"hour, air [F]\n4, 41\n2, 40\n":   "",
	} {
		answer := s.upload(job, "night", text, "set", "weather.forecast")
		assert.Equal(t, http.StatusUnprocessableEntity, answer.StatusCode, text)
		has(t, answer.text, why)
		has(t, answer.text, `<details id="forecast" open>`, "where it was given")
	}
	lacks(t, s.get(job).text, "chip-weather-forecast")
	assert.Equal(t, http.StatusRequestEntityTooLarge, s.upload(job, "night.csv", strings.Repeat("0, 41, 60\n", 40<<10), "set", "weather.forecast").StatusCode)
}

// Where the forecast tells its time, the start hour in it follows the day and the hour at which the job starts.
func TestTheStartHourFollowsTheStartOfTheJob(t *testing.T) {
	s := newSite(t)
	job := s.keep(slabInTheCold)
	begins := time.Date(2026, 12, 3, 7, 0, 0, 0, time.FixedZone("", -6*3600))
	require.Equal(t, http.StatusSeeOther, s.upload(job, "f.json", nationalForecast(begins, 96), "set", "weather.forecast").StatusCode)
	lacks(t, s.get(job).text, "chip-weather-start_hour")
	s.post(job, "set", "job.date", "value", "2026-12-03")
	s.post(job, "set", "job.start", "value", "10:00")
	has(t, s.get(job).text, "at which placing starts</span> <b>3 h</b>")
	s.post(job, "set", "job.start", "value", "13:30")
	has(t, s.get(job).text, "at which placing starts</span> <b>6.5 h</b>")
	s.post(job, "set", "job.date", "value", "2026-12-01")
	has(t, s.get(job).text, "Not taken: hour of the forecast at which placing starts")
	s.post(job, "drop", "weather.start_hour")
	lacks(t, s.get(job).text, "Not taken")
}

// slabInTheCold is a job of which all that is drawn by the hour lacks is a forecast.
const slabInTheCold = `member: {use: driveway, length: 24 ft, width: 12 ft, thickness: 4 in}
order: {strength: 4000 psi}
mix: {cementitious: 564 lb/yd3, wcm: 0.47, cement_type: IL}
load: {temperature: 62 F}
ground: {state: not frozen, temperature: 40 F}
cold: {accelerator: none}
protection: {cover: none}
`

// TestAForecastIsDroppedOnThePage drops a file that cannot be read, then one that can; what is typed meanwhile stays.
func TestAForecastIsDroppedOnThePage(t *testing.T) {
	s := newSite(t)
	b := open(t, s, desktop)
	b.visit(s.keep(slabInTheCold))
	drop := func(text string) {
		b.Helper()
		script[any](b, `(() => { const data = new DataTransfer(); data.items.add(new File([`+quote(text)+`], "night.csv"));
			for (const kind of ["dragover", "drop"]) document.body.dispatchEvent(new DragEvent(kind, {bubbles: true, cancelable: true, dataTransfer: data})); })(), 0`)
	}
	b.run(chromedp.SendKeys(chromedp.CSS("#title"), "A "))
	drop("hour, air\n0, 41\n")
	b.says("has no unit")
	drop(coldTable)
	b.says("hourly forecast 48 h")
	assert.Equal(t, "A ", script[string](b, "document.getElementById('title').value"))
	b.press("Pictures")
	b.until("document.querySelector('#evaporation svg')")
	b.picture("pictures")
	b.printed("pictures")
}
