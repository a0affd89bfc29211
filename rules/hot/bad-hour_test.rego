package practice.hot["bad-hour_test"]

start(evaporation, gain) := {
	"member": {"kind": "slab on ground"},
	"weather": {"better_start": true},
	"figure": {"warmest_air": 92, "start_evaporation": evaporation, "start_gain": gain},
}

test_wrong_when_another_hour_is_better if {
	data.practice.hot["bad-hour"].wrong["another hour of the forecast dries it far less"] with input as start(0.25, 60)
}

test_right_when_little_is_gained if {
	count(data.practice.hot["bad-hour"].wrong) == 0 with input as start(0.25, 25)
	data.practice.hot["bad-hour"].here with input as start(0.25, 25)
}

test_right_when_it_hardly_dries if {
	count(data.practice.hot["bad-hour"].wrong) == 0 with input as start(0.1, 60)
}

test_not_here_when_the_start_is_fixed if {
	not data.practice.hot["bad-hour"].here with input as object.union(start(0.25, 60), {"weather": {"better_start": false}})
}

test_not_here_in_cool_air if {
	not data.practice.hot["bad-hour"].here with input as object.union(start(0.25, 60), {"figure": {"warmest_air": 75}})
}

test_not_here_in_a_wall if {
	not data.practice.hot["bad-hour"].here with input as object.union(start(0.25, 60), {"member": {"kind": "wall"}})
}
