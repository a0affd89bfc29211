package practice.cold["no-protection_test"]

night(freeze, strong) := {
	"protection": {"cover": "none"},
	"figure": {"coldest_air": 20, "freeze_hour": freeze, "hours_to_500": strong},
}

test_wrong_when_it_freezes_first if {
	data.practice.cold["no-protection"].wrong["the surface would freeze before the concrete stands freezing"] with input as night(14, 30)
}

test_wrong_in_hard_frost if {
	data.practice.cold["no-protection"].wrong["a thin section lies bare in hard frost"] with input as object.union(night(50, 30), {"member": {"thickness": 4}})
}

test_right_at_the_edge_of_hard_frost if {
	count(data.practice.cold["no-protection"].wrong) == 0 with input as object.union(night(50, 30), {"member": {"thickness": 4}, "figure": {"coldest_air": 25}})
	count(data.practice.cold["no-protection"].wrong) == 0 with input as object.union(night(50, 30), {"member": {"thickness": 12}})
}

test_right_when_it_is_strong_first if {
	count(data.practice.cold["no-protection"].wrong) == 0 with input as night(50, 30)
	data.practice.cold["no-protection"].here with input as night(50, 30)
}

test_right_at_the_same_hour if {
	count(data.practice.cold["no-protection"].wrong) == 0 with input as night(30, 30)
}

test_not_here_under_a_cover if {
	not data.practice.cold["no-protection"].here with input as object.union(night(14, 30), {"protection": {"cover": "blankets"}})
}

test_not_here_in_mild_weather if {
	not data.practice.cold["no-protection"].here with input as object.union(night(14, 30), {"figure": {"coldest_air": 40}})
}
