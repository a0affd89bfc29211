package job_test

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/job"
	"hearsay/rules"
)

func dictionary(t testing.TB) *job.Dictionary {
	t.Helper()
	d, err := job.LoadDictionary(rules.Files)
	require.NoError(t, err)
	return d
}

func TestReadTakesWhatPeopleWrite(t *testing.T) {
	j, say, err := job.Read(dictionary(t), "job.yaml", []byte(`
title: Shed floor
say: twelve by thirty
member:
  size: 12 ft x 30 ft
  thickness: 3 1/2 in
  use: shed floor
order:
  slump: 100 mm
  entrained_air: no
job:
  start: 7:30
  date: 2026-11-26
strength:
  tests: [4520 psi, 29.7 MPa]
water.added: 38 L
`))
	require.NoError(t, err)
	assert.Equal(t, "twelve by thirty", say)
	for path, want := range map[string]any{
		"member.length": 12.0, "member.width": 30.0, "member.thickness": 3.5, "member.use": "shed floor",
		"order.entrained_air": false, "job.start": 7.5, "job.date": "2026-11-26", "member.kind": "slab on ground",
	} {
		got, ok := j.Value(path)
		assert.True(t, ok, path)
		assert.Equal(t, want, got, path)
	}
	slump, _ := j.Value("order.slump")
	assert.InDelta(t, 3.937, slump, 0.001)
	tests, _ := j.Value("strength.tests")
	assert.InDelta(t, 4307.6, tests.([]float64)[1], 0.1)
	kind, _ := j.Find("member.kind")
	assert.Equal(t, "member.use", kind.From, "what follows is marked as such")
}

func TestReadRefusesWithPlaceAndWayOut(t *testing.T) {
	for name, c := range map[string]struct{ text, want string }{
		"unknown fact":   {"order:\n  slumpp: 4 in\n", `job.yaml:2:3: no fact is called "order.slumpp": did you mean order.slump?`},
		"wrong kind":     {"order:\n  slump: 4 psi\n", "job.yaml:2:3: order.slump: "},
		"missing unit":   {"order:\n  slump: 4\n", "job.yaml:2:3: order.slump: "},
		"impossible":     {"order:\n  slump: 40 in\n", "40 in is not possible for the ordered slump: it lies between 0 in and 12 in"},
		"unknown choice": {"member:\n  use: airport\n", `"airport" is not a choice for the use: write one of driveway`},
		"unknown group":  {"ordre:\n  slump: 4 in\n", `job.yaml:1:1: no group is called "ordre"`},
		"outside group":  {"slump: 4 in\n", `"slump" stands outside its group: write slump below order`},
		"not yes nor no": {"order:\n  entrained_air: perhaps\n", "perhaps is neither yes nor no"},
		"twice":          {"order.slump: 4 in\norder:\n  slump: 5 in\n", "stated twice"},
		"contradiction":  {"ground:\n  frost_depth: 2 in\n  state: not frozen\n", "contradict each other"},
		"not YAML":       {"order: [1, 2\n", "this is not YAML"},
		"empty":          {"", "the job is empty"},
		"not groups":     {"- 1\n", "a job is groups of facts"},
		"same key twice": {"order:\n  slump: 4 in\n  slump: 5 in\n", "job.yaml:3:3"},
	} {
		t.Run(name, func(t *testing.T) {
			_, _, err := job.Read(dictionary(t), "job.yaml", []byte(c.text))
			require.Error(t, err)
			assert.Contains(t, err.Error(), c.want)
		})
	}
}

// Covers laid one on another add up, as do gallons poured in by turns; temperatures do not.
func TestQuantitiesAddUp(t *testing.T) {
	j, _, err := job.Read(dictionary(t), "job.yaml", []byte("protection: {r_value: R-2 + R-3 + 0.5 R}\nwater: {added: 4 gal + 10 L}\n"))
	require.NoError(t, err)
	r, _ := j.Value("protection.r_value")
	assert.InDelta(t, 5.5, r, 1e-9)
	gallons, _ := j.Value("water.added")
	assert.InDelta(t, 4+10/3.785412, gallons, 1e-6)
	_, _, err = job.Read(dictionary(t), "job.yaml", []byte("weather: {low: 20 F + 5 F}\n"))
	assert.ErrorContains(t, err, "temperatures do not add up")
	_, _, err = job.Read(dictionary(t), "job.yaml", []byte("protection: {r_value: R-60 + R-60}\n"))
	assert.ErrorContains(t, err, "is not possible")
}

func TestTheOneValueLeftFollows(t *testing.T) {
	j, _, err := job.Read(dictionary(t), "job.yaml", []byte("metal:\n  prestressed: no\n"))
	require.NoError(t, err)
	prestressed, ok := j.Value("member.prestressed")
	assert.True(t, ok)
	assert.Equal(t, false, prestressed, "a prestressed member has prestressing steel in it, so what has none is not prestressed")
}

// A building without heat freezes, and salt drips in it from cars; a house that people live in does not freeze.
func TestAFloorIndoorsMayFreeze(t *testing.T) {
	for text, freezes := range map[string]any{
		"member: {use: garage floor}\nexposure: {outdoors: no, freezes: yes, salted: yes}\n": true,
		"member: {use: garage floor}\nexposure: {outdoors: no, salted: yes}\n":               true, // salt is for ice
		"member: {use: garage floor}\nexposure: {outdoors: no}\n":                            nil,
		"member: {use: warehouse floor}\n":                                                   nil,
		"member: {use: interior floor}\n":                                                    nil,
		"member: {use: house floor}\n":                                                       false,
		"exposure: {freezes: no}\n":                                                          false,
	} {
		j, _, err := job.Read(dictionary(t), "job.yaml", []byte(text))
		require.NoError(t, err, text)
		v, _ := j.Value("exposure.freezes")
		assert.Equal(t, freezes, v, text)
	}
	j, _, err := job.Read(dictionary(t), "job.yaml", []byte("exposure: {freezes: yes}\n"))
	require.NoError(t, err)
	_, known := j.Value("exposure.outdoors")
	assert.False(t, known, "what freezes may stand in a building")
}

func TestUnusualValueIsTakenWithAWarning(t *testing.T) {
	j, _, err := job.Read(dictionary(t), "job.yaml", []byte("order:\n  slump: 11 in\n"))
	require.NoError(t, err)
	require.Len(t, j.Warnings, 1)
	assert.Contains(t, j.Warnings[0], "ordered slump 11 in is unusual (1 in to 9 in is usual)")
}

func TestEveryProblemIsSaidAtOnce(t *testing.T) {
	_, _, err := job.Read(dictionary(t), "job.yaml", []byte("order:\n  slump: 4\n  strenght: 4000 psi\n"))
	var problems job.Problems
	require.ErrorAs(t, err, &problems)
	assert.Len(t, problems, 2)
}

// FuzzRead: whatever stands in a job file, it is read or refused, and what was read is read again from what is written of it.
func FuzzRead(f *testing.F) {
	d := dictionary(f)
	f.Add([]byte("order:\n  slump: 4 in\n"))
	f.Add([]byte("{order: {slump: \"4 in\"}}"))
	for _, pattern := range []string{"../../testdata/jobs/*.yaml", "../../testdata/practices/*/*.yaml"} {
		files, err := filepath.Glob(pattern)
		require.NoError(f, err)
		for _, file := range files {
			text, err := os.ReadFile(file)
			require.NoError(f, err)
			f.Add(text)
		}
	}
	f.Fuzz(func(t *testing.T, text []byte) {
		j, _, err := job.Read(d, "job.yaml", text)
		if (j == nil) == (err == nil) {
			t.Fatal("a job and an error, or neither")
		}
		if err != nil || len(j.Stated) == 0 { // of a job that states nothing, nothing is written
			return
		}
		var written bytes.Buffer
		require.NoError(t, job.Write(&written, d, j, nil))
		again, _, err := job.Read(d, "job.yaml", written.Bytes())
		require.NoError(t, err, "written as:\n%s", written.String())
		for _, s := range j.Stated {
			if _, ok := again.Value(s.Fact.Path); !ok {
				t.Fatalf("%s was lost:\n%s", s.Fact.Path, written.String())
			}
		}
	})
}

// A bare number is nobody's quantity: a unit is never guessed.
func TestNoUnitIsGuessed(t *testing.T) {
	d := dictionary(t)
	for _, path := range []string{"order.slump", "weather.air", "mix.cementitious", "water.added"} {
		for _, bare := range []any{4, 40.5, "41", map[string]any{"value": 42}} {
			assert.Error(t, job.New().State(d, path, bare), "%s: %v", path, bare)
		}
	}
	assert.NoError(t, job.New().State(d, "mix.wcm", 0.5), "a ratio has none")
}
