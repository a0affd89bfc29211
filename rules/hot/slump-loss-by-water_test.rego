package practice.hot["slump-loss-by-water_test"]

test_wrong_for_lost_slump if {
	data.practice.hot["slump-loss-by-water"].wrong["water stands in for slump lost to heat or haul"] with input as {"water": {"added": 8, "purpose": "lost to heat"}}
}

test_right_up_to_the_slump_ordered if {
	count(data.practice.hot["slump-loss-by-water"].wrong) == 0 with input as {"water": {"added": 8, "purpose": "to the slump ordered"}}
	data.practice.hot["slump-loss-by-water"].here with input as {"water": {"added": 8, "purpose": "to the slump ordered"}}
}

test_not_here_without_water if {
	not data.practice.hot["slump-loss-by-water"].here with input as {"water": {"added": 0, "purpose": "lost to heat"}}
}
