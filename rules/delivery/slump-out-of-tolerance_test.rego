package practice.delivery["slump-out-of-tolerance_test"]

job(slump) := {"load": {"slump": slump}, "figure": {"slump_least": 3, "slump_most": 5}}

test_wrong_too_wet if {
	data.practice.delivery["slump-out-of-tolerance"].wrong["it is wetter than the slump ordered allows"] with input as job(5.5)
}

test_wrong_too_stiff if {
	data.practice.delivery["slump-out-of-tolerance"].wrong["it is stiffer than the slump ordered allows"] with input as job(2.5)
}

test_wrong_unlike_the_other_trucks if {
	data.practice.delivery["slump-out-of-tolerance"].wrong["the trucks differ by more than the tolerance"] with input as {
		"load": {"slump": 4, "several": true},
		"figure": {"slump_least": 3, "slump_most": 5, "slump_spread": 2.5, "slump_spread_allowed": 2},
	}
}

test_wrong_unlike_the_other_trucks_where_this_one_was_not_measured if {
	data.practice.delivery["slump-out-of-tolerance"].wrong["the trucks differ by more than the tolerance"] with input as {
		"load": {"several": true},
		"figure": {"slump_spread_of_others": 2.5, "slump_spread_allowed": 2},
	}
}

test_right_at_either_edge if {
	count(data.practice.delivery["slump-out-of-tolerance"].wrong) == 0 with input as job(3)
	count(data.practice.delivery["slump-out-of-tolerance"].wrong) == 0 with input as job(5)
}

test_not_here_without_a_measured_slump if {
	not data.practice.delivery["slump-out-of-tolerance"].here with input as {"load": {}}
}

others(most) := {
	"load": {"slump": 4, "several": true},
	"figure": {"slump_least": 3, "slump_most": 5, "slump_most_of_others": most, "slump_spread": 1, "slump_spread_allowed": 2},
}

test_wrong_where_another_truck_is_too_wet if {
	data.practice.delivery["slump-out-of-tolerance"].wrong["one of the other trucks is wetter than the slump ordered allows"] with input as others(5.5)
	count(data.practice.delivery["slump-out-of-tolerance"].wrong) == 0 with input as others(5)
}
