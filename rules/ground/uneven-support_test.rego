package practice.ground["uneven-support_test"]

test_wrong_on_each_poor_base if {
	data.practice.ground["uneven-support"].wrong["there are soft or loose spots"] with input as {"ground": {"support": "soft spots"}}
	data.practice.ground["uneven-support"].wrong["the fill is not compacted"] with input as {"ground": {"support": "uncompacted fill"}}
	data.practice.ground["uneven-support"].wrong["it is uneven"] with input as {"ground": {"support": "uneven"}}
}

test_right_on_an_even_base if {
	count(data.practice.ground["uneven-support"].wrong) == 0 with input as {"ground": {"support": "uniform"}}
	data.practice.ground["uneven-support"].here with input as {"ground": {"support": "uniform"}}
}

test_not_here_when_nobody_said if {
	not data.practice.ground["uneven-support"].here with input as {}
}
