package practice.strength["core-limits_test"]

test_full_strength_asked_of_cores if {
	data.practice.strength["core-limits"].wrong["cores need not reach the full specified strength"] with input as {"strength": {"cores_judged_by": "cylinder limit"}}
}

test_core_limits_are_right if {
	got := data.practice.strength["core-limits"] with input as {"strength": {"cores_judged_by": "core limit"}}
	got.here
	count(got.wrong) == 0
}
