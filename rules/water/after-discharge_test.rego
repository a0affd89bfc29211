package practice.water["after-discharge_test"]

test_wrong_by_the_moment if {
	data.practice.water["after-discharge"].wrong["part of the load was discharged before the water went in"] with input as {"water": {"added": 5, "moment": "after discharge"}}
}

test_right_after_the_test_sample if {
	data.practice.water["after-discharge"].here with input as {"water": {"added": 5, "discharged": 0.25, "moment": "before discharge"}}
	count(data.practice.water["after-discharge"].wrong) == 0 with input as {"water": {"added": 5, "discharged": 0.25, "moment": "before discharge"}}
}

test_not_here_without_water if {
	not data.practice.water["after-discharge"].here with input as {"water": {"added": 0, "discharged": 5}}
}
