package practice.finish.rain_test

job(finish, rain) := {"member": {"kind": "slab on ground"}, "finish": finish, "figure": {"rain_before_set": rain}}

test_wrong_without_cover if {
	data.practice.finish.rain.wrong["rain comes before it has set, and there is no cover"] with input as job({"rain_cover": false}, 1)
}

test_wrong_when_worked_in if {
	data.practice.finish.rain.wrong["rain water is to be worked into the surface"] with input as job({"rain_cover": true, "rain_worked_in": true}, 1)
}

test_right_with_cover if {
	count(data.practice.finish.rain.wrong) == 0 with input as job({"rain_cover": true, "rain_worked_in": false}, 1)
}

test_right_without_rain if {
	count(data.practice.finish.rain.wrong) == 0 with input as job({"rain_cover": false}, 0)
	data.practice.finish.rain.here with input as job({"rain_cover": false}, 0)
}

test_not_here_in_a_wall if {
	not data.practice.finish.rain.here with input as {"member": {"kind": "wall"}}
}
