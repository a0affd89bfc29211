package practice.moisture["test-conditions_test"]

floor(judged, closed, hours) := {"floor": {"judged_by": judged, "closed_in": closed, "conditioned_hours": hours}}

test_open_building if {
	got := data.practice.moisture["test-conditions"].wrong with input as floor("probes", false, 60)
	got == {"the building is not closed in"}
}

test_too_short_and_just_enough if {
	got := data.practice.moisture["test-conditions"].wrong with input as floor("dome", true, 47)
	got == {"the room was not at service conditions for long enough"}
	edge := data.practice.moisture["test-conditions"] with input as floor("dome", true, 48)
	edge.here
	count(edge.wrong) == 0
}

test_untested_floor_is_not_here if {
	not data.practice.moisture["test-conditions"].here with input as floor("age", false, 0)
}
