package practice.order["bags-without-water_test"]

test_wrong_bags_alone if {
	data.practice.order["bags-without-water"].wrong["it says how much cement, and neither what strength nor what water-cement ratio"] with input as {"order": {"basis": "bags"}, "mix": {"cementitious": 517}}
}

test_right_by_strength if {
	data.practice.order["bags-without-water"].here with input as {"order": {"basis": "performance", "strength": 4000}}
	count(data.practice.order["bags-without-water"].wrong) == 0 with input as {"order": {"basis": "performance", "strength": 4000}}
}

test_right_by_strength_with_a_floor_of_cement if {
	count(data.practice.order["bags-without-water"].wrong) == 0 with input as {"order": {"basis": "performance"}, "mix": {"cementitious": 564}}
}

test_not_here_without_an_order if {
	not data.practice.order["bags-without-water"].here with input as {"cure": {"days": 7}}
}
