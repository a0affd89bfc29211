package practice.strength["average-hides-low_test"]

series(running, single) := {"strength": {"judged_by": "average"}, "figure": {"running_margin": running, "single_margin": single}}

test_single_test_fails if {
	got := data.practice.strength["average-hides-low"].wrong with input as series(30, -120)
	got == {"a single test is further below the specified strength than is allowed"}
}

test_average_of_three_fails if {
	got := data.practice.strength["average-hides-low"].wrong with input as series(-1, 300)
	got == {"an average of three tests in a row is below the specified strength"}
}

test_at_both_limits_it_passes if {
	got := data.practice.strength["average-hides-low"] with input as series(0, 0)
	got.here
	count(got.wrong) == 0
}

test_judged_by_both_criteria_is_not_here if {
	not data.practice.strength["average-hides-low"].here with input as object.union(series(-1, -1), {"strength": {"judged_by": "criteria"}})
}
