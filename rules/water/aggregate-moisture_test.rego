package practice.water["aggregate-moisture_test"]

test_wrong_left_in if {
	data.practice.water["aggregate-moisture"].wrong["it was not taken out of the batch water"] with input as {"mix": {"moisture_correction": "none"}}
}

test_wrong_measured_too_early if {
	data.practice.water["aggregate-moisture"].wrong["it was measured before it changed"] with input as {"mix": {"moisture_correction": "stale"}}
}

test_right_measured_now if {
	data.practice.water["aggregate-moisture"].here with input as {"mix": {"moisture_correction": "current"}}
	count(data.practice.water["aggregate-moisture"].wrong) == 0 with input as {"mix": {"moisture_correction": "current"}}
}

test_not_here_where_nothing_is_said_of_it if {
	not data.practice.water["aggregate-moisture"].here with input as {"mix": {"water": 280}}
}
