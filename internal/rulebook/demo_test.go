package rulebook_test

import (
	"context"
	"os"
	"path"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"hearsay/internal/job"
	"hearsay/internal/rulebook"
)

// demo judges one of the jobs that the documentation shows.
func demo(t *testing.T, b *rulebook.Book, name string) (*rulebook.Review, map[string][]*rulebook.Judgement) {
	t.Helper()
	text, err := os.ReadFile(path.Join("../../testdata/jobs", name+".yaml"))
	require.NoError(t, err)
	j, _, err := job.Read(b.Facts, name, text)
	require.NoError(t, err)
	review, err := b.Judge(context.Background(), j)
	require.NoError(t, err)
	byStatus := map[string][]*rulebook.Judgement{}
	for _, one := range review.Judgements {
		byStatus[one.Status] = append(byStatus[one.Status], one)
	}
	return review, byStatus
}

func ids(judgements []*rulebook.Judgement) []string {
	list := []string{}
	for _, one := range judgements {
		list = append(list, one.Practice.ID)
	}
	return list
}

// The bad jobs are wrong in many ways, and every number in a finding comes with where it is from.
func TestTheBadDemosAreWrongInManyWays(t *testing.T) {
	b := load(t)
	for name, wrong := range map[string][]string{
		"shop-floor": {"finish/water-sprinkled", "order/aggregate-too-large", "order/short-volume", "water/after-discharge", "water/for-slump",
			"water/not-on-ticket", "water/not-remixed", "water/over-limit"},
		"tollgate-driveway": {"cold/accelerator-as-antifreeze", "cold/chloride-overdose", "cure/none", "ground/frozen", "order/bags-without-water",
			"order/no-air-outdoors", "order/short-volume", "order/slump-unfit", "order/thickness-unfit", "steel/on-the-ground"},
	} {
		_, byStatus := demo(t, b, name)
		assert.Subset(t, ids(byStatus[rulebook.Wrong]), wrong, name)
		for _, one := range byStatus[rulebook.Wrong] {
			if len(one.Numbers) > 0 {
				assert.NotEmpty(t, one.Cites, "%s: the numbers of %s cite nothing", name, one.Practice.ID)
			}
		}
	}
}

// The good job states all that can matter: nothing is wrong, and nothing is left to ask.
func TestTheGoodDemoIsRightAndAsksNothing(t *testing.T) {
	b := load(t)
	review, byStatus := demo(t, b, "quillon-patio")
	assert.Empty(t, ids(byStatus[rulebook.Wrong]))
	assert.Empty(t, ids(byStatus[rulebook.Ask]))
	assert.Empty(t, b.Questions(review))
	assert.Greater(t, len(byStatus[rulebook.Right]), 30)
}

// The half-told job asks, and asking comes to an end.
func TestTheHalfToldDemoAsks(t *testing.T) {
	b := load(t)
	review, byStatus := demo(t, b, "corder-garage")
	assert.Empty(t, ids(byStatus[rulebook.Wrong]))
	assert.NotEmpty(t, byStatus[rulebook.Ask])
	assert.Greater(t, len(b.Questions(review)), 10)
}

// The chloride of one dose is one number, whichever practice names it.
func TestTheSameChlorideInEveryFinding(t *testing.T) {
	b := load(t)
	review, _ := demo(t, b, "tollgate-driveway")
	var yours []float64
	for _, one := range review.Judgements {
		for _, n := range one.Numbers {
			if n.Figure == "chloride_by_cementitious" || n.Name == "chloride from all sources" || n.Name == "water-soluble chloride by mass of cementitious material" {
				require.NotNil(t, n.Yours, one.Practice.ID)
				yours = append(yours, *n.Yours)
			}
		}
	}
	require.Len(t, yours, 2)
	assert.InDelta(t, yours[0], yours[1], 1e-9)
	assert.InDelta(t, 4*0.77*0.639/2, yours[0], 0.001, "at the least: half of the material counts as cement")
}
