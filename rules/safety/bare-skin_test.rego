package practice.safety["bare-skin_test"]

test_bare if {
	data.practice.safety["bare-skin"].wrong["somebody touches it with bare skin or without eye protection"] with input as {"safety": {"skin_protected": false}}
}

test_protected_is_right if {
	got := data.practice.safety["bare-skin"] with input as {"safety": {"skin_protected": true}}
	got.here
	count(got.wrong) == 0
}

test_unknown_is_not_judged if {
	got := data.practice.safety["bare-skin"].wrong with input as {"safety": {}}
	count(got) == 0
}
