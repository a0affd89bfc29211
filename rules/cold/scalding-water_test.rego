package practice.cold["scalding-water_test"]

water(hot, first) := {"materials": {"water_temperature": hot, "hot_water_first": first}}

test_wrong_onto_the_cement if {
	data.practice.cold["scalding-water"].wrong["it is batched straight onto the cement"] with input as water(175, "cement")
}

test_right_onto_the_aggregates if {
	count(data.practice.cold["scalding-water"].wrong) == 0 with input as water(175, "aggregate")
	data.practice.cold["scalding-water"].here with input as water(175, "aggregate")
}

test_not_here_up_to_the_limit if {
	not data.practice.cold["scalding-water"].here with input as water(140, "cement")
}
