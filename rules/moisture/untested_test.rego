package practice.moisture.untested_test

floor(judged, tests) := {"floor": {"covering": "wood", "judged_by": judged, "tests": tests}, "figure": {"moisture_tests_needed": 4}}

test_guessed if {
	every judged in {"sheet", "meter", "look", "age", "nothing"} {
		data.practice.moisture.untested.wrong["it is judged by its age, its look, a taped sheet or a surface meter"] with input as floor(judged, 0)
	}
}

test_too_few_and_enough if {
	got := data.practice.moisture.untested.wrong with input as floor("probes", 3)
	got == {"there are too few tests for the area"}
	edge := data.practice.moisture.untested with input as floor("dome", 4)
	edge.here
	count(edge.wrong) == 0
}

test_bare_floor_is_not_here if {
	not data.practice.moisture.untested.here with input as object.union(floor("age", 0), {"floor": {"covering": "none"}})
}
