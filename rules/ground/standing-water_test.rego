package practice.ground["standing-water_test"]

test_wrong_in_water if {
	data.practice.ground["standing-water"].wrong["water stands where it is placed"] with input as {"ground": {"wet": "standing water"}}
}

test_wrong_on_mud if {
	data.practice.ground["standing-water"].wrong["there is mud where it is placed"] with input as {"ground": {"wet": "mud"}}
}

test_right_on_firm_ground if {
	count(data.practice.ground["standing-water"].wrong) == 0 with input as {"ground": {"wet": "no"}}
	data.practice.ground["standing-water"].here with input as {"ground": {"wet": "no"}}
}

test_not_here_when_nobody_said if {
	not data.practice.ground["standing-water"].here with input as {}
}
