package practice.cold["cooled-too-fast_test"]

uncovered(removal, drop) := {
	"protection": {"cover": "enclosure", "removal": removal},
	"figure": {"coldest_air": 5, "planned_drop": drop, "largest_drop": 50},
}

test_wrong_at_once if {
	data.practice.cold["cooled-too-fast"].wrong["the surface would fall too far in its first day"] with input as uncovered("at once", 65)
}

test_right_step_by_step if {
	count(data.practice.cold["cooled-too-fast"].wrong) == 0 with input as uncovered("gradual", 65)
}

test_right_at_the_largest_drop if {
	count(data.practice.cold["cooled-too-fast"].wrong) == 0 with input as uncovered("at once", 50)
	data.practice.cold["cooled-too-fast"].here with input as uncovered("at once", 50)
}

test_not_here_without_cover if {
	not data.practice.cold["cooled-too-fast"].here with input as object.union(uncovered("at once", 65), {"protection": {"cover": "none"}})
}
