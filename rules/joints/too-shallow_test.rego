package practice.joints["too-shallow_test"]

job(made, depth) := {"member": {"kind": "slab on ground"}, "joints": {"made": made, "depth": depth}, "figure": {"least_joint_depth": 1.5}}

test_wrong_when_shallow if {
	data.practice.joints["too-shallow"].wrong["the joints are shallower than the slab and the saw need"] with input as job(true, 0.5)
}

test_right_at_the_least_depth if {
	count(data.practice.joints["too-shallow"].wrong) == 0 with input as job(true, 1.5)
	data.practice.joints["too-shallow"].here with input as job(true, 1.5)
}

test_not_here_without_joints if {
	not data.practice.joints["too-shallow"].here with input as job(false, 0)
}
