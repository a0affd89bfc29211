package practice.order["short-volume_test"]

test_wrong_just_what_the_drawing_measures if {
	data.practice.order["short-volume"].wrong["it is less than the forms hold with an allowance for uneven ground and waste"] with input as {"order": {"volume": 5}, "figure": {"least_volume": 5.2}}
}

test_right_at_the_limit if {
	data.practice.order["short-volume"].here with input as {"order": {"volume": 5.2}, "figure": {"least_volume": 5.2}}
	count(data.practice.order["short-volume"].wrong) == 0 with input as {"order": {"volume": 5.2}, "figure": {"least_volume": 5.2}}
}

test_right_with_more if {
	count(data.practice.order["short-volume"].wrong) == 0 with input as {"order": {"volume": 5.5}, "figure": {"least_volume": 5.2}}
}

test_not_here_without_a_volume if {
	not data.practice.order["short-volume"].here with input as {"figure": {"least_volume": 5.2}}
}
