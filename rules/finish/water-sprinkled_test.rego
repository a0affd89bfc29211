package practice.finish["water-sprinkled_test"]

job(sprinkled) := {"member": {"kind": "slab on ground"}, "finish": {"water_sprinkled": sprinkled}}

test_wrong_when_sprinkled if {
	data.practice.finish["water-sprinkled"].wrong["water is worked into the surface"] with input as job(true)
}

test_right_without if {
	count(data.practice.finish["water-sprinkled"].wrong) == 0 with input as job(false)
	data.practice.finish["water-sprinkled"].here with input as job(false)
}

test_not_here_in_a_footing if {
	not data.practice.finish["water-sprinkled"].here with input as {"member": {"kind": "footing"}, "finish": {"water_sprinkled": true}}
}
