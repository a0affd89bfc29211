package practice.TOPIC["no-permit_test"]

test_wrong_without_a_permit if {
	data.practice.TOPIC["no-permit"].wrong["no permit was given"] with input as {"member": {"use": "driveway"}, "TOPIC": {"permit": false}}
}

test_right_with_a_permit if {
	count(data.practice.TOPIC["no-permit"].wrong) == 0 with input as {"member": {"use": "driveway"}, "TOPIC": {"permit": true}}
}
