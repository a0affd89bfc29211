package figure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// ACI 347 removal times, days above 50 °F, entry by entry. One copy garbles the heads of its columns; the longer time belongs
// to the live load that is below the dead load, since the member then carries most of its load from the first day.
func TestFormRemoval(t *testing.T) {
	for _, c := range []struct {
		kind        string
		span        float64
		below, over float64
	}{
		{"beam", 9, 7, 4}, {"beam", 15, 14, 7}, {"beam", 21, 21, 14},
		{"suspended slab", 9, 4, 3}, {"suspended slab", 15, 7, 4}, {"suspended slab", 21, 10, 7},
	} {
		f := facts{"member.kind": c.kind, "safety.span": c.span, "safety.live_above_dead": false}
		assert.Equal(t, c.below, known(t, "removal_days", f).Best, "%+v", c)
		f["safety.live_above_dead"] = true
		assert.Equal(t, c.over, known(t, "removal_days", f).Best, "%+v", c)
	}
}

// Concrete Construction: a roof slab of 18 ft span with less live than dead load stays in its forms for 7 days.
func TestFormRemovalOfARoof(t *testing.T) {
	f := facts{"member.kind": "suspended slab", "safety.span": 18.0, "safety.live_above_dead": false}
	assert.Equal(t, 7.0, known(t, "removal_days", f).Best)
}
