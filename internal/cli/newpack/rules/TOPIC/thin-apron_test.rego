package practice.TOPIC["thin-apron_test"]

drive(thickness) := {"member": {"use": "driveway", "thickness": thickness}, "TOPIC": {"apron": true}}

test_wrong_when_thin if {
	data.practice.TOPIC["thin-apron"].wrong["it is thinner than the sidewalk needs"] with input as drive(4)
}

test_right_at_the_limit if {
	count(data.practice.TOPIC["thin-apron"].wrong) == 0 with input as drive(data.limit.TOPIC.apron_thickness)
}
