package practice.joints.curling_test

job(outdoors, measure, lift) := {
	"member": {"kind": "slab on ground"}, "exposure": {"outdoors": outdoors},
	"joints": {"curl_measure": measure}, "figure": {"edge_lift": lift},
}

test_wrong_when_edges_lift_and_nothing_is_done if {
	data.practice.joints.curling.wrong["the panels are long enough for their edges to lift, and nothing is done against it"] with input as job(false, "none", 0.22)
}

test_wrong_when_uncured_on_a_sheet if {
	data.practice.joints.curling.wrong["it dries from its top only, without curing, in panels long enough for their edges to lift"] with input as object.union(
		job(false, "steel", 0.22),
		{"floor": {"retarder": "direct"}, "cure": {"method": "none"}},
	)
}

test_right_when_cured_on_a_sheet if {
	count(data.practice.joints.curling.wrong) == 0 with input as object.union(
		job(false, "steel", 0.22),
		{"floor": {"retarder": "direct"}, "cure": {"method": "wet"}},
	)
}

test_right_with_a_measure if {
	count(data.practice.joints.curling.wrong) == 0 with input as job(false, "wet cure", 0.22)
	data.practice.joints.curling.here with input as job(false, "wet cure", 0.22)
}

test_right_at_the_largest_lift if {
	count(data.practice.joints.curling.wrong) == 0 with input as job(false, "none", 0.1875)
}

test_not_here_outdoors if {
	not data.practice.joints.curling.here with input as job(true, "none", 0.3)
}
