package practice.ground["colder-than-concrete_test"]

base(ground) := {
	"member": {"kind": "slab on ground"},
	"ground": {"state": "not frozen", "temperature": ground},
	"figure": {"coldest_air": 35, "least_ground_temperature": 45},
}

test_wrong_when_colder if {
	data.practice.ground["colder-than-concrete"].wrong["it is colder than this section allows"] with input as base(36)
}

test_right_at_the_least if {
	count(data.practice.ground["colder-than-concrete"].wrong) == 0 with input as base(45)
	data.practice.ground["colder-than-concrete"].here with input as base(45)
}

test_not_here_when_frozen if {
	not data.practice.ground["colder-than-concrete"].here with input as object.union(base(30), {"ground": {"state": "frozen"}})
}

test_not_here_in_warm_weather if {
	not data.practice.ground["colder-than-concrete"].here with input as object.union(base(36), {"figure": {"coldest_air": 50}})
}

test_not_here_above_the_ground if {
	not data.practice.ground["colder-than-concrete"].here with input as object.union(base(36), {"member": {"kind": "suspended slab"}})
}

test_above_freezing_its_state_need_not_be_told if {
	data.practice.ground["colder-than-concrete"].wrong["it is colder than this section allows"] with input as {
		"member": {"kind": "slab on ground"},
		"ground": {"temperature": 36},
		"figure": {"coldest_air": 35, "least_ground_temperature": 45},
	}
}
