package practice.moisture["covered-too-soon_test"]

floor(facts) := {
	"floor": object.union({"covering": "resilient", "judged_by": "probes", "humidity_reading": 74, "humidity_limit": 75, "emission_reading": 2, "emission_limit": 3}, facts),
	"figure": {"drying_time": 120, "days_to_dry": 100},
	"range": {"drying_time": {"low": 120, "high": 120}, "days_to_dry": {"low": 82, "high": 120}},
}

days(n, judged) := object.union(floor({"judged_by": judged}), {"figure": {"drying_time": n}, "range": {"drying_time": {"low": n, "high": n}}})

test_dry_is_right if {
	got := data.practice.moisture["covered-too-soon"] with input as floor({})
	got.here
	count(got.wrong) == 0
}

test_probes_too_wet_and_at_the_limit if {
	got := data.practice.moisture["covered-too-soon"].wrong with input as floor({"humidity_reading": 76})
	got == {"the humidity in the slab is above what the covering allows"}
	edge := data.practice.moisture["covered-too-soon"].wrong with input as floor({"humidity_reading": 75})
	count(edge) == 0
}

test_dome_too_wet if {
	got := data.practice.moisture["covered-too-soon"].wrong with input as floor({"judged_by": "dome", "emission_reading": 5})
	got == {"the vapor emission is above what the covering allows"}
}

test_sooner_than_any_slab if {
	got := data.practice.moisture["covered-too-soon"].wrong with input as days(81, "probes")
	got == {"no published slab like it has dried so soon"}
	edge := data.practice.moisture["covered-too-soon"].wrong with input as days(82, "probes")
	count(edge) == 0
}

test_guessed_dryness_takes_the_usual_time if {
	got := data.practice.moisture["covered-too-soon"].wrong with input as days(99, "age")
	got == {"it has hardly had the time to dry, and no test shows otherwise"}
	edge := data.practice.moisture["covered-too-soon"].wrong with input as days(100, "age")
	count(edge) == 0
}

test_a_limit_tells_of_a_covering if {
	job := {"floor": {"judged_by": "dome", "emission_reading": 6, "emission_limit": 3}}
	data.practice.moisture["covered-too-soon"].wrong["the vapor emission is above what the covering allows"] with input as job
}

test_bare_floor_is_not_here if {
	job := object.union(days(10, "nothing"), {"floor": {"covering": "none"}})
	not data.practice.moisture["covered-too-soon"].here with input as job
}
