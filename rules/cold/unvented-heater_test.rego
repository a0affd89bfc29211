package practice.cold["unvented-heater_test"]

test_wrong_when_unvented if {
	data.practice.cold["unvented-heater"].wrong["its exhaust reaches the young concrete"] with input as {"protection": {"heater": "unvented"}}
}

test_right_when_vented if {
	count(data.practice.cold["unvented-heater"].wrong) == 0 with input as {"protection": {"heater": "vented"}}
	data.practice.cold["unvented-heater"].here with input as {"protection": {"heater": "vented"}}
}

test_not_here_without_a_heater if {
	not data.practice.cold["unvented-heater"].here with input as {"protection": {"heater": "none"}}
}
