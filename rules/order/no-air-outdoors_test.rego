package practice.order["no-air-outdoors_test"]

walk(air) := {"exposure": {"outdoors": true, "freezes": true, "wet": "often"}, "order": {"entrained_air": air}}

test_wrong_without_air if {
	data.practice.order["no-air-outdoors"].wrong["it will freeze while wet, and no air is entrained"] with input as walk(false)
}

test_right_with_air if {
	data.practice.order["no-air-outdoors"].here with input as walk(true)
	count(data.practice.order["no-air-outdoors"].wrong) == 0 with input as walk(true)
}

test_wrong_where_it_is_wet_now_and_then if {
	data.practice.order["no-air-outdoors"].wrong["it will freeze while wet, and no air is entrained"] with input as object.union(walk(false), {"exposure": {"wet": "sometimes"}})
}

test_not_here_where_it_stays_dry if {
	not data.practice.order["no-air-outdoors"].here with input as object.union(walk(false), {"exposure": {"wet": "dry"}})
}

test_not_here_without_frost if {
	not data.practice.order["no-air-outdoors"].here with input as object.union(walk(false), {"exposure": {"freezes": false}})
}

test_wrong_on_the_ground_outdoors_however_wet if {
	data.practice.order["no-air-outdoors"].wrong["it will freeze while wet, and no air is entrained"] with input as {
		"member": {"kind": "slab on ground"},
		"exposure": {"outdoors": true, "freezes": true},
		"order": {"entrained_air": false},
	}
}

test_not_here_in_a_dry_freezer if {
	not data.practice.order["no-air-outdoors"].here with input as {
		"member": {"kind": "slab on ground"},
		"exposure": {"outdoors": false, "freezes": true, "wet": "dry"},
		"order": {"entrained_air": false},
	}
}
