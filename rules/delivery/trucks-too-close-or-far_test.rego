package practice.delivery["trucks-too-close-or-far_test"]

job(spacing) := {"load": {"several": true, "spacing": spacing}, "range": {"truck_spacing_to_order": {"low": 18, "high": 50}}}

test_wrong_too_close if {
	data.practice.delivery["trucks-too-close-or-far"].wrong["they come faster than they are emptied, so loads age in line"] with input as job(15)
}

test_wrong_too_far if {
	data.practice.delivery["trucks-too-close-or-far"].wrong["they come so far apart that the face stands open"] with input as job(60)
}

test_right_at_either_edge if {
	count(data.practice.delivery["trucks-too-close-or-far"].wrong) == 0 with input as job(18)
	count(data.practice.delivery["trucks-too-close-or-far"].wrong) == 0 with input as job(50)
}

test_not_here_for_one_truck if {
	not data.practice.delivery["trucks-too-close-or-far"].here with input as {"load": {"several": false}}
}
