package figure_test

import (
	"testing"

	"github.com/stretchr/testify/assert"
)

// design is a mix worked out in print: what went in and what the pages say came out. Where a page rounds or misprints, the
// tolerance and the note say so.
type design struct {
	source string
	in     facts
	want   map[string]float64
	within map[string]float64
}

var designs = []design{
	{
		source: "U.S. Navy, Engineering Aid (NAVEDTRA 14070 and 14071), chapter 17: retaining wall, absolute volume",
		in: facts{
			"order.slump": 3.0, "order.aggregate": 0.75, "order.entrained_air": true, "order.strength": 3000.0, "order.ratio_limit": 0.50,
			"exposure.freezes": true, "exposure.wet": "sometimes", "exposure.salted": false, "order.air": 5.0,
			"mix.water": 305.0, "mix.cementitious": 610.0, "mix.fineness": 2.70, "mix.rodded_weight": 102.0,
			"mix.coarse_aggregate": 1735.0, "mix.fine_gravity": 2.65, "mix.coarse_gravity": 2.60,
		},
		want: map[string]float64{"water_for_slump": 305, "air_to_order": 5, "ratio_for_strength": 0.59, "cement_for_ratio": 610, "stone_content": 1735,
			"sand_content": 1152.6}, // the page gives 1,152 and in its recap 1,153
	},
	{
		source: "Mix design of 4,000 psi with 3/8 in dry stone, not air-entrained",
		in: facts{
			"order.slump": 3.0, "order.aggregate": 0.375, "order.entrained_air": false, "order.strength": 4000.0, "exposure.freezes": false,
			"order.air": 3.0, "mix.water": 385.0, "mix.cementitious": 675.44, "mix.fineness": 2.9, "mix.rodded_weight": 103.0,
			"mix.coarse_aggregate": 1251.0, "mix.fine_gravity": 2.67, "mix.coarse_gravity": 2.68,
		},
		want:   map[string]float64{"water_for_slump": 385, "air_to_order": 3, "ratio_for_strength": 0.57, "cement_for_strength": 675.44, "stone_content": 1251, "sand_content": 1516},
		within: map[string]float64{"sand_content": 2}, // the page rounds its volumes
	},
	{
		source: "Mix design of 5,000 psi, air-entrained, for freezing and thawing",
		in: facts{
			"order.slump": 2.0, "order.aggregate": 0.75, "order.entrained_air": true, "order.strength": 5000.0,
			"exposure.freezes": true, "exposure.wet": "often", "exposure.salted": false, "order.air": 6.0,
			"mix.water": 280.0, "mix.cementitious": 700.0, "mix.fineness": 2.7, "mix.rodded_weight": 100.0,
			"mix.coarse_aggregate": 1701.0, "mix.fine_gravity": 2.65, "mix.coarse_gravity": 2.70,
		},
		want:   map[string]float64{"water_for_slump": 280, "air_to_order": 6, "ratio_for_strength": 0.40, "cement_for_strength": 700, "stone_content": 1701, "sand_content": 1195.55},
		within: map[string]float64{"sand_content": 2},
	},
	{
		source: "Mix design of 7,000 psi: the page gives water, air, w/c and cement; stone and sand are computed from its other figures",
		in: facts{
			"order.slump": 4.0, "order.aggregate": 0.75, "order.entrained_air": false, "order.strength": 7000.0, "exposure.freezes": false,
			"order.air": 2.0, "mix.water": 340.0, "mix.cementitious": 1030.0, "mix.fineness": 2.70, "mix.rodded_weight": 100.0,
			"mix.coarse_aggregate": 1701.0, "mix.fine_gravity": 2.60, "mix.coarse_gravity": 2.65,
		},
		want:   map[string]float64{"water_for_slump": 340, "air_to_order": 2, "ratio_for_strength": 0.33, "cement_for_strength": 1030, "stone_content": 1701, "sand_content": 890},
		within: map[string]float64{"sand_content": 2},
	},
	{
		source: "ACI 211.1-91, example 1, by volume (from memory)",
		in: facts{
			"order.slump": 4.0, "order.aggregate": 1.5, "order.entrained_air": false, "order.strength": 3500.0, "exposure.freezes": false,
			"order.air": 1.0, "mix.water": 300.0, "mix.cementitious": 484.0, "mix.fineness": 2.8, "mix.rodded_weight": 100.0,
			"mix.coarse_aggregate": 1917.0, "mix.fine_gravity": 2.64, "mix.coarse_gravity": 2.68,
		},
		want: map[string]float64{"water_for_slump": 300, "air_to_order": 1, "ratio_for_strength": 0.62, "cement_for_strength": 484, "stone_content": 1917, "sand_content": 1318},
		// The example takes 0.62 where the table gives 0.625.
		within: map[string]float64{"ratio_for_strength": 0.006, "cement_for_strength": 4.1},
	},
}

func TestDesignsInPrint(t *testing.T) {
	for _, d := range designs {
		t.Run(d.source, func(t *testing.T) {
			for name, want := range d.want {
				within := d.within[name]
				if within == 0 {
					within = 0.0008 * want
				}
				assert.InDelta(t, want, known(t, name, d.in).Best, within, name)
			}
		})
	}
}

// The recipe of the Navy's wall fills the yard it was made for.
func TestTheRecipeFillsAYard(t *testing.T) {
	in := facts{"mix.fine_aggregate": 1152.6}
	for k, v := range designs[0].in {
		in[k] = v
	}
	assert.InDelta(t, 27, known(t, "recipe_volume", in).Best, 0.01)
}

// A page on absolute volume prints the four volumes of W1 rounded, and their sum; each solid one is redone here.
func TestAbsoluteVolumeOfCement(t *testing.T) {
	// Virginia DOT, chapter 3 (2011): 588 lb of cement fill 588/(3.15 x 62.4) = 2.99 ft3.
	in := facts{"mix.cementitious": 588.0, "mix.water": 0.0, "mix.fine_aggregate": 0.0, "mix.coarse_aggregate": 0.0, "mix.fine_gravity": 2.65, "mix.coarse_gravity": 2.65, "order.air": 0.0}
	assert.InDelta(t, 2.99, known(t, "recipe_volume", in).Best, 0.005)
}
