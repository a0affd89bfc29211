package crew

func weatherKinds() []kind {
	concrete := func(from, to float64) draw { return draw{"load.temperature", from, to, 5, "F"} }
	with := func(key, fact string, value func(v values) float64) slip {
		return slip{key: key, instead: func(v values) map[string]float64 { return map[string]float64{fact: value(v)} }}
	}
	return []kind{
		{figure: "evaporation", belief: "hot/only-air-temperature-counts",
			draws: []draw{{"weather.air", 50, 95, 5, "F"}, {"weather.humidity", 20, 70, 10, "%"}, {"weather.wind", 5, 25, 5, "mph"}, concrete(65, 95)},
			slips: []slip{with("no_wind", "weather.wind", func(values) float64 { return 0 }),
				with("air_for_concrete", "load.temperature", func(v values) float64 { return v["weather.air"] }), times("doubled", 2)}},
		{figure: "set_hours", belief: "ground/cold-soil-no-matter", draws: []draw{concrete(40, 100)},
			fixed: map[string]string{"cold.accelerator": "none", "cold.chloride_dose": "0 %", "order.retarder": "no"},
			slips: []slip{with("any_temperature", "load.temperature", func(values) float64 { return 70 }),
				with("wrong_way", "load.temperature", func(v values) float64 { return 140 - v["load.temperature"] }), times("doubled", 2), times("halved", 0.5)}},
		{figure: "slump_lost_to_heat", belief: "hot/water-for-heat", draws: []draw{{"load.temperature", 76, 105, 1, "F"}},
			slips: []slip{times("doubled", 2), {key: "from_zero", value: func(v values, _ float64) float64 { return v["load.temperature"] / 20 }}, times("halved", 0.5)}},
		{figure: "thaw_hours_needed", belief: "ground/blankets-thaw-it",
			draws: []draw{{"ground.frost_depth", 4, 30, 2, "in"}, {"ground.moisture", 10, 20, 2, "%"}},
			fixed: map[string]string{"ground.soil": "silt", "ground.thaw_method": "hydronic heater"},
			slips: []slip{times("halved", 0.5), times("doubled", 2), {key: "hour_for_inch", value: func(v values, _ float64) float64 { return v["ground.frost_depth"] }}}},
		{figure: "r_needed", belief: "cold/one-night-of-cover",
			draws: []draw{{"weather.low", -10, 20, 2, "F"}, {"member.thickness", 4, 8, 1, "in"}, concrete(55, 70)},
			fixed: map[string]string{"job.start": "13:00", "member.kind": "slab on ground", "mix.cementitious": "564 lb/yd3", "order.strength": "4000 psi",
				"cold.accelerator": "none", "ground.temperature": "35 F", "mix.cement_type": "I", "weather.high": "25 F", "weather.wind": "10 mph"},
			slips: []slip{times("halved", 0.5), times("doubled", 2), times("inches_as_r", 0.25)}},
		{figure: "coldest_curing_water", belief: "cure/sprinkle-now-and-then", draws: []draw{{"cure.surface_temperature", 62, 110, 1, "F"}},
			slips: []slip{{key: "any_water", value: func(values, float64) float64 { return 40 }}, same("cure.surface_temperature"),
				{key: "fifty_off", value: func(v values, _ float64) float64 { return v["cure.surface_temperature"] - 50 }}}},
		{figure: "curing_days_needed", belief: "cure/one-day-is-plenty", draws: []draw{{"cure.temperature", 40, 75, 1, "F"}}, fixed: map[string]string{"mix.cement_type": "I"},
			slips: []slip{{key: "one_night", value: func(values, float64) float64 { return 1 }}, {key: "test_age", value: func(values, float64) float64 { return 28 }}, times("halved", 0.5)}},
		{figure: "strength_share_at_days", belief: "cure/longer-is-stronger", draws: []draw{{"cure.days", 1, 6, 1, "d"}},
			slips: []slip{{key: "day_by_day", value: func(v values, _ float64) float64 { return v["cure.days"] / 28 * 100 }}, {key: "test_age", value: func(values, float64) float64 { return 100 }}, times("halved", 0.5)}},
	}
}
