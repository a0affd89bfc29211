package practice.delivery["cold-joint_test"]

job(gap) := {"load": {"several": true, "planned_joint": false, "gap": gap}, "figure": {"knit_minutes": 100}}

test_wrong_after_a_long_gap if {
	data.practice.delivery["cold-joint"].wrong["the gap is longer than the concrete stays plastic"] with input as job(150)
}

test_right_at_the_edge if {
	count(data.practice.delivery["cold-joint"].wrong) == 0 with input as job(100)
}

test_right_at_a_planned_joint if {
	count(data.practice.delivery["cold-joint"].wrong) == 0 with input as {"load": {"several": true, "planned_joint": true, "gap": 900}, "figure": {"knit_minutes": 100}}
}

test_not_here_for_one_load if {
	not data.practice.delivery["cold-joint"].here with input as {"load": {"several": false}}
}
