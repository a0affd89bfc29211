package practice.finish["footprint-too-deep_test"]

job(machine, depth) := {"member": {"kind": "slab on ground"}, "finish": {"machine": machine, "footprint": depth}}

test_wrong_below_a_riding_machine if {
	data.practice.finish["footprint-too-deep"].wrong["the concrete is too soft for this machine"] with input as job("riding", 0.25)
}

test_wrong_below_a_walk_behind if {
	data.practice.finish["footprint-too-deep"].wrong["the concrete is too soft for this machine"] with input as job("walk-behind", 0.5)
}

test_right_at_the_edge if {
	count(data.practice.finish["footprint-too-deep"].wrong) == 0 with input as job("walk-behind", 0.25)
	count(data.practice.finish["footprint-too-deep"].wrong) == 0 with input as job("riding", 0.125)
}

test_not_here_by_hand if {
	not data.practice.finish["footprint-too-deep"].here with input as job("hand", 0.5)
}
