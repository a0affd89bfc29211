package practice.delivery["air-out-of-tolerance_test"]

job(air) := {"order": {"air": 6}, "load": {"air": air}, "figure": {"air_least": 4.5, "air_most": 7.5}}

test_wrong_too_much if {
	data.practice.delivery["air-out-of-tolerance"].wrong["there is more air than the order allows"] with input as job(8)
}

test_wrong_too_little if {
	data.practice.delivery["air-out-of-tolerance"].wrong["there is less air than the order allows"] with input as job(3.5)
}

test_right_at_either_edge if {
	count(data.practice.delivery["air-out-of-tolerance"].wrong) == 0 with input as job(4.5)
	count(data.practice.delivery["air-out-of-tolerance"].wrong) == 0 with input as job(7.5)
}

test_not_here_when_no_air_is_ordered if {
	not data.practice.delivery["air-out-of-tolerance"].here with input as {"order": {}, "load": {"air": 2}}
}
