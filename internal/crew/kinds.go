package crew

// kinds are the questions with numbers. The jobs they draw are ordinary ones; what is right about them is the figure's to
// say, and the slips are what people on site work out in its place.
func kinds() []kind {
	return append(append(waterKinds(), slabKinds()...), weatherKinds()...)
}

// Slips that fit several questions.
func times(key string, factor float64) slip {
	return slip{key: key, value: func(_ values, right float64) float64 { return factor * right }}
}

// byFact is right times a fact: "whole_load" is what comes out when nobody divides by the yards.
func byFact(key, fact string) slip {
	return slip{key: key, value: func(v values, right float64) float64 { return right * v[fact] }}
}

// same is a fact given as the answer: nothing changes.
func same(fact string) slip {
	return slip{key: "unchanged", value: func(v values, _ float64) float64 { return v[fact] }}
}

// addition is a wrong share of what the answer adds to the ratio of the mix.
func addition(key string, factor func(v values) float64) slip {
	return slip{key: key, value: func(v values, right float64) float64 { return v["mix.wcm"] + factor(v)*(right-v["mix.wcm"]) }}
}

const poundsInGallon = 8.33 // of water at ordinary temperature; figures print the same

var mixDraws = []draw{
	{"mix.wcm", 0.40, 0.50, 0.01, ""},
	{"mix.cementitious", 517, 658, 47, "lb/yd3"},
}

func waterKinds() []kind {
	water := []draw{{"water.added", 8, 24, 1, "gal"}, {"load.volume", 4, 10, 0.5, "yd3"}}
	return []kind{
		{figure: "slump_gained", belief: "water/little-water-is-harmless", draws: water,
			slips: []slip{byFact("whole_load", "load.volume"), times("doubled", 2), times("halved", 0.5)}},
		{figure: "strength_lost", belief: "water/rule-of-one-gallon", draws: water,
			slips: []slip{byFact("whole_load", "load.volume"), {key: "nothing", value: func(values, float64) float64 { return 0 }}, times("tenth", 0.1)}},
		{figure: "wcm_after_water", belief: "water/wetter-is-stronger", draws: append(append([]draw{}, mixDraws...), water...),
			slips: []slip{addition("whole_load", func(v values) float64 { return v["load.volume"] }), same("mix.wcm"),
				addition("gallons_as_pounds", func(values) float64 { return 1 / poundsInGallon }), addition("taken_off", func(values) float64 { return -1 })}},
		{figure: "wcm_of_rest", belief: "water/water-late-is-fine",
			draws: append(append([]draw{}, mixDraws...), draw{"water.added", 8, 20, 1, "gal"}, draw{"load.volume", 8, 10, 0.5, "yd3"}, draw{"water.discharged", 3, 7, 0.5, "yd3"}),
			slips: []slip{addition("full_load", func(v values) float64 { return (v["load.volume"] - v["water.discharged"]) / v["load.volume"] }), same("mix.wcm"),
				addition("discharged_part", func(v values) float64 { return (v["load.volume"] - v["water.discharged"]) / v["water.discharged"] }),
				addition("whole_load", func(v values) float64 { return v["load.volume"] - v["water.discharged"] })}},
		{figure: "wcm_with_wash", belief: "water/wash-water-no-matter",
			draws: append(append([]draw{}, mixDraws...), draw{"water.wash", 5, 20, 1, "gal"}, draw{"load.volume", 2, 5, 0.5, "yd3"}),
			slips: []slip{same("mix.wcm"), addition("full_drum", func(v values) float64 { return v["load.volume"] / 10 }),
				addition("whole_load", func(v values) float64 { return v["load.volume"] })}},
		{figure: "wcm_with_ground_water", belief: "ground/puddles-mix-in",
			draws: append(append([]draw{}, mixDraws...), draw{"ground.standing_water", 0.25, 0.75, 0.125, "in"}, draw{"member.thickness", 4, 8, 0.5, "in"}),
			slips: []slip{same("mix.wcm"), addition("halved", func(values) float64 { return 0.5 }), addition("doubled", func(values) float64 { return 2 }),
				addition("gallons_as_pounds", func(values) float64 { return 1 / poundsInGallon })}},
		{figure: "cement_wasted", belief: "water/cement-makes-up-for-it",
			draws: []draw{{"water.added", 4, 20, 1, "gal"}, {"mix.wcm", 0.40, 0.55, 0.01, ""}},
			slips: []slip{{key: "gallons_as_pounds", value: func(v values, _ float64) float64 { return v["water.added"] / v["mix.wcm"] }},
				{key: "multiplied", value: func(v values, _ float64) float64 { return v["water.added"] * poundsInGallon * v["mix.wcm"] }},
				{key: "one_to_one", value: func(v values, _ float64) float64 { return v["water.added"] * poundsInGallon }}}},
		{figure: "batch_water", belief: "water/wet-aggregate-no-matter",
			draws: []draw{{"mix.water", 260, 310, 5, "lb/yd3"}, {"mix.fine_aggregate", 1150, 1400, 50, "lb/yd3"}, {"mix.fine_moisture", 2, 7, 0.5, "%"},
				{"mix.coarse_aggregate", 1700, 1900, 50, "lb/yd3"}, {"mix.coarse_moisture", 0.5, 1.5, 0.5, "%"}},
			slips: []slip{same("mix.water"), {key: "added_on", value: func(v values, right float64) float64 { return 2*v["mix.water"] - right }},
				{key: "sand_only", value: func(v values, _ float64) float64 {
					return v["mix.water"] - v["mix.fine_aggregate"]*v["mix.fine_moisture"]/100
				}}}},
		{figure: "chloride_pounds", belief: "cold/more-chloride-faster",
			draws: []draw{{"cold.chloride_dose", 1, 2, 0.5, "%"}, {"mix.cementitious", 517, 658, 23.5, "lb/yd3"}, {"load.volume", 4, 10, 0.5, "yd3"}},
			slips: []slip{{key: "of_concrete", value: func(v values, right float64) float64 { return right / v["mix.cementitious"] * 4000 }},
				{key: "one_yard", value: func(v values, right float64) float64 { return right / v["load.volume"] }}, times("tenth", 0.1)}},
	}
}
