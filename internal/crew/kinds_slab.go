package crew

func slabKinds() []kind {
	thickness := draw{"member.thickness", 4, 8, 0.5, "in"}
	ofThickness := func(key string, factor float64) slip {
		return slip{key: key, value: func(v values, _ float64) float64 { return factor * v["member.thickness"] }}
	}
	return []kind{
		{figure: "volume_to_order", belief: "order/exact-volume",
			draws: []draw{{"member.area", 240, 2000, 40, "ft2"}, {"member.thickness", 4, 6, 0.5, "in"}},
			slips: []slip{{key: "no_allowance", value: func(v values, _ float64) float64 { return v["member.area"] * v["member.thickness"] / 324 }},
				times("by_nine", 3), times("inches_as_feet", 12)}},
		{figure: "least_joint_depth", belief: "joints/shallow-cut-is-enough", draws: []draw{thickness}, fixed: map[string]string{"joints.saw": "conventional"},
			slips: []slip{{key: "half_inch", value: func(values, float64) float64 { return 0.5 }}, ofThickness("tenth_of_depth", 0.1), ofThickness("half_of_depth", 0.5)}},
		{figure: "largest_joint_spacing", belief: "joints/spacing-any",
			draws: []draw{{"member.thickness", 3.5, 6, 0.5, "in"}, {"order.slump", 4, 6, 1, "in"}, {"order.aggregate", 0.75, 1, 0.25, "in"}},
			slips: []slip{{key: "twenty_feet", value: func(values, float64) float64 { return 20 }}, ofThickness("foot_for_inch", 1), ofThickness("five_feet_for_inch", 5)}},
		{figure: "stone_by_depth", belief: "order/small-stone-is-stronger", draws: []draw{{"member.thickness", 3, 9, 0.5, "in"}},
			slips: []slip{ofThickness("half_of_depth", 0.5), ofThickness("fifth_of_depth", 0.2), ofThickness("of_gap", 0.75)}},
		{figure: "fall_needed", belief: "durability/moisture-behind-all", draws: []draw{{"member.length", 10, 60, 2, "ft"}},
			slips: []slip{times("halved", 0.5), {key: "one_inch", value: func(values, float64) float64 { return 1 }}, times("inch_in_foot", 8)}},
		{figure: "steel_area", belief: "steel/no-joints-needed", draws: []draw{{"steel.bar_size", 3, 6, 1, "bar"}, {"steel.spacing", 10, 24, 2, "in"}},
			slips: []slip{{key: "one_bar", value: func(v values, right float64) float64 { return right * v["steel.spacing"] / 12 }},
				{key: "turned_over", value: func(v values, right float64) float64 {
					return right * v["steel.spacing"] / 12 * v["steel.spacing"] / 12
				}}, times("doubled", 2)}},
		{figure: "yield", belief: "delivery/every-truck-same",
			draws: []draw{{"load.volume", 9, 9, 1, "yd3"}, {"load.weight", 33500, 37500, 250, "lb"}, {"mix.density", 140, 150, 1, "lb/ft3"}},
			slips: []slip{same("load.volume"), {key: "turned_over", value: func(v values, right float64) float64 { return v["load.volume"] * v["load.volume"] / right }},
				times("by_nine", 3)}},
		{figure: "worst_load_age", belief: "delivery/stockpile-trucks",
			draws: []draw{{"load.haul", 15, 45, 5, "min"}, {"load.spacing", 10, 20, 5, "min"}, {"load.unloading", 25, 40, 5, "min"}, {"order.volume", 40, 80, 10, "yd3"}, {"load.volume", 10, 10, 1, "yd3"}},
			slips: []slip{same("load.haul"), {key: "first_load", value: func(v values, _ float64) float64 { return v["load.haul"] + v["load.unloading"] }},
				{key: "no_queue", value: func(v values, _ float64) float64 { return v["load.haul"] + v["load.spacing"] }}}},
	}
}
