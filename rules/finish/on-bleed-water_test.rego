package practice.finish["on-bleed-water_test"]

job(water, working) := {"member": {"kind": "slab on ground"}, "finish": {"bleed_water": water, "working_on": working}}

test_wrong_with_water_on_it if {
	data.practice.finish["on-bleed-water"].wrong["they are working it while bleed water is there or still rising"] with input as job("on the slab", true)
}

test_wrong_with_water_rising if {
	data.practice.finish["on-bleed-water"].wrong["they are working it while bleed water is there or still rising"] with input as job("rising", true)
}

test_right_when_they_wait if {
	count(data.practice.finish["on-bleed-water"].wrong) == 0 with input as job("on the slab", false)
}

test_right_when_it_is_gone if {
	count(data.practice.finish["on-bleed-water"].wrong) == 0 with input as job("gone", true)
	data.practice.finish["on-bleed-water"].here with input as job("gone", true)
}

test_not_here_in_a_wall if {
	not data.practice.finish["on-bleed-water"].here with input as {"member": {"kind": "wall"}}
}
