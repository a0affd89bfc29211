package practice.steel["instead-of-joints_test"]

job(steel, ratio) := {"member": {"kind": "slab on ground"}, "metal": {"reinforced": true}, "steel": steel, "figure": {"steel_ratio": ratio}}

test_wrong_when_meant_to_prevent_cracks if {
	data.practice.steel["instead-of-joints"].wrong["the steel is expected to keep the slab from cracking"] with input as job({"purpose": "prevent cracks"}, 0.7)
}

test_wrong_over_light_mesh if {
	data.practice.steel["instead-of-joints"].wrong["joints are left out or spread over light mesh"] with input as {
		"member": {"kind": "slab on ground"}, "metal": {"reinforced": true},
		"steel": {"kind": "mesh", "joints_left_out": true},
	}
}

test_wrong_with_too_little_steel if {
	data.practice.steel["instead-of-joints"].wrong["joints are left out or spread with less steel than that takes"] with input as job({"kind": "bars", "purpose": "no joints"}, 0.3)
}

test_right_at_the_ratio if {
	count(data.practice.steel["instead-of-joints"].wrong) == 0 with input as job({"kind": "bars", "purpose": "no joints"}, 0.5)
	data.practice.steel["instead-of-joints"].here with input as job({"kind": "bars", "purpose": "no joints"}, 0.5)
}

test_not_here_when_joints_stay if {
	not data.practice.steel["instead-of-joints"].here with input as job({"kind": "bars", "purpose": "drag", "joints_left_out": false}, 0.1)
}
