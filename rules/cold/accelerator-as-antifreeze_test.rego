package practice.cold["accelerator-as-antifreeze_test"]

test_wrong_when_relied_on if {
	data.practice.cold["accelerator-as-antifreeze"].wrong["an accelerator does not keep concrete from freezing"] with input as {"cold": {"accelerator": "calcium chloride", "relied_on": true}}
	data.practice.cold["accelerator-as-antifreeze"].wrong["an accelerator does not keep concrete from freezing"] with input as {"cold": {"accelerator": "non-chloride", "relied_on": true}}
}

test_right_when_it_only_hastens if {
	count(data.practice.cold["accelerator-as-antifreeze"].wrong) == 0 with input as {"cold": {"accelerator": "calcium chloride", "relied_on": false}}
	data.practice.cold["accelerator-as-antifreeze"].here with input as {"cold": {"accelerator": "calcium chloride", "relied_on": false}}
}

test_not_here_without_one if {
	not data.practice.cold["accelerator-as-antifreeze"].here with input as {"cold": {"accelerator": "none", "relied_on": true}}
}
