package rulebook_test

import (
	"context"
	"testing"
	"testing/fstest"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/job"
	"hearsay/internal/rulebook"
	"hearsay/rules"
)

func pack(t *testing.T, files map[string]string) *rulebook.Pack {
	t.Helper()
	p, err := rulebook.OpenPack(inMemory(files), nil)
	require.NoError(t, err)
	return p
}

func inMemory(files map[string]string) fstest.MapFS {
	fsys := fstest.MapFS{}
	for name, text := range files {
		fsys[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return fsys
}

const head = "name: Heron County\nby: the county engineer\n"

const rule = `# METADATA
# scope: package
# title: The driveway has no permit
# custom:
#   stage: order
#   severity: stop
#   why: "The county asks for one."
#   do: "Get the permit first."
package practice.county["no-permit"]

here if input.member.use == "driveway"

wrong contains "no permit was given" if {
	here
	input.county.permit == false
}

mend["county.permit"] := true
`

func judged(t *testing.T, b *rulebook.Book, text, id string) *rulebook.Judgement {
	t.Helper()
	j, _, err := job.Read(b.Facts, "job", []byte(text))
	require.NoError(t, err)
	one, err := b.JudgeOne(context.Background(), j, id)
	require.NoError(t, err)
	return one
}

func TestPackAddsAFactAndAPractice(t *testing.T) {
	b, err := rulebook.Load(rules.Files, pack(t, map[string]string{
		"pack.yaml":                   head,
		"rules/facts.yaml":            "county:\n  about: What the county asks\n  facts:\n    permit: {kind: flag, name: a permit was given, ask: \"Was a permit given?\"}\n",
		"rules/county/no-permit.rego": rule,
	}))
	require.NoError(t, err)
	one := judged(t, b, "member: {use: driveway}\ncounty: {permit: no}\n", "county/no-permit")
	assert.Equal(t, rulebook.Wrong, one.Status)
	assert.Equal(t, []string{"rule of pack Heron County"}, one.Changed)
}

func TestPackChangesALimitAndSaysSo(t *testing.T) {
	late := "load: {age: 70 min, limit_source: standard, limit_waived: no}\njob: {delivery_standard: 2013 to 2020}\n"
	plain := load(t)
	assert.Equal(t, rulebook.Right, judged(t, plain, late, "delivery/too-old").Status)
	b, err := rulebook.Load(rules.Files, pack(t, map[string]string{
		"pack.yaml":          head,
		"rules/sources.yaml": "county-spec: {title: County Paving Specification, by: Heron County}\n",
		"rules/limits/delivery.yaml": "default_time_limit: {value: {\"2013 to 2020\": 60}, unit: min, what: time limit for discharge, " +
			"condition: in the county, source: county-spec, where: section 4, basis: published}\n",
	}))
	require.NoError(t, err)
	one := judged(t, b, late, "delivery/too-old")
	assert.Equal(t, rulebook.Wrong, one.Status)
	require.Len(t, one.Changed, 1)
	assert.Contains(t, one.Changed[0], "by pack Heron County, built in")
	assert.NotEqual(t, plain.Revision(), b.Revision())
}

func TestPackSwitchesAPracticeOffWithItsReason(t *testing.T) {
	b, err := rulebook.Load(rules.Files, pack(t, map[string]string{"pack.yaml": head + "off:\n  cure/none: the county cures itself\n"}))
	require.NoError(t, err)
	one := judged(t, b, "member: {use: patio}\ncure: {method: none}\n", "cure/none")
	assert.Equal(t, rulebook.NotHere, one.Status)
	assert.Equal(t, []string{"switched off by pack Heron County: the county cures itself"}, one.Changed)
}

func TestPackThatDoesNotFitSaysWhere(t *testing.T) {
	for name, c := range map[string]struct {
		files map[string]string
		want  string
	}{
		"no head":        {map[string]string{"rules/facts.yaml": ""}, "a pack is a folder with a pack.yaml"},
		"no name":        {map[string]string{"pack.yaml": "by: me\n"}, "give the pack a name"},
		"unknown key":    {map[string]string{"pack.yaml": head + "colour: red\n"}, `line 3: "colour" does not belong here`},
		"no reason":      {map[string]string{"pack.yaml": head + "off: {cure/none: \"\"}\n"}, "say why cure/none is switched off"},
		"unknown off":    {map[string]string{"pack.yaml": head + "off: {cure/nothing: because}\n"}, "cure/nothing, which is no practice"},
		"unknown source": {map[string]string{"pack.yaml": head, "rules/limits/water.yaml": "gallon: {value: 9, unit: lb/gal, what: x, source: nobody, basis: published}\n"}, `source "nobody" is not in sources.yaml`},
		"other unit":     {map[string]string{"pack.yaml": head, "rules/limits/water.yaml": "gallon: {value: 9, unit: kg/L, what: x, source: trade, basis: memory}\n"}, "its unit must stay"},
		"wrong place":    {map[string]string{"pack.yaml": head, "rules/county/permit.rego": rule}, "its package must be practice.county"},
		"unknown fact":   {map[string]string{"pack.yaml": head, "rules/county/no-permit.rego": rule}, "reads input.county.permit, which is not in facts.yaml"},
	} {
		t.Run(name, func(t *testing.T) {
			p, err := rulebook.OpenPack(inMemory(c.files), nil)
			if err == nil {
				_, err = rulebook.Load(rules.Files, p)
			}
			require.Error(t, err)
			assert.Contains(t, err.Error(), c.want)
		})
	}
}
