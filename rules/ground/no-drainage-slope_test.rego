package practice.ground["no-drainage-slope_test"]

flatwork(fall) := {"exposure": {"outdoors": true}, "member": {"kind": "slab on ground", "fall": fall}}

test_wrong_when_flat_or_toward_the_house if {
	data.practice.ground["no-drainage-slope"].wrong["it falls too little"] with input as flatwork(0)
	data.practice.ground["no-drainage-slope"].wrong["it falls too little"] with input as flatwork(-0.25)
}

test_right_at_the_least if {
	count(data.practice.ground["no-drainage-slope"].wrong) == 0 with input as flatwork(0.125)
	data.practice.ground["no-drainage-slope"].here with input as flatwork(0.125)
}

test_not_here_indoors if {
	not data.practice.ground["no-drainage-slope"].here with input as object.union(flatwork(0), {"exposure": {"outdoors": false}})
}
