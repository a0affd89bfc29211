package practice.cold["protection-too-short_test"]

covered(days) := {
	"protection": {"cover": "blankets", "days": days},
	"figure": {"coldest_air": 15, "protection_days_needed": 3},
}

test_wrong_with_fewer_days if {
	data.practice.cold["protection-too-short"].wrong["what it must stand needs more days"] with input as covered(1)
}

test_wrong_into_frost if {
	data.practice.cold["protection-too-short"].wrong["it comes out into frost too soon"] with input as {
		"protection": {"cover": "blankets", "days": 1, "removal_outside": 5},
		"figure": {"coldest_air": 15, "protection_days_needed": 1},
	}
}

test_right_with_the_days if {
	count(data.practice.cold["protection-too-short"].wrong) == 0 with input as covered(3)
	data.practice.cold["protection-too-short"].here with input as covered(3)
}

test_not_here_without_cover if {
	not data.practice.cold["protection-too-short"].here with input as object.union(covered(1), {"protection": {"cover": "none"}})
}

test_not_here_in_mild_weather if {
	not data.practice.cold["protection-too-short"].here with input as object.union(covered(1), {"figure": {"coldest_air": 44}})
}
