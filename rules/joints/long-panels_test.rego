package practice.joints["long-panels_test"]

job(aspect, corner) := {"member": {"kind": "slab on ground"}, "joints": {"reentrant": corner}, "figure": {"panel_aspect": aspect}}

test_wrong_when_twice_as_long_as_wide if {
	data.practice.joints["long-panels"].wrong["a panel is too long for its width"] with input as job(2, "none")
}

test_wrong_with_an_inside_corner_without_joint if {
	data.practice.joints["long-panels"].wrong["an inside corner has no joint"] with input as job(1, "unjointed")
}

test_right_at_the_largest_aspect if {
	count(data.practice.joints["long-panels"].wrong) == 0 with input as job(1.5, "jointed")
	data.practice.joints["long-panels"].here with input as job(1.5, "jointed")
}

test_not_here_in_a_wall if {
	not data.practice.joints["long-panels"].here with input as {"member": {"kind": "wall"}, "joints": {"reentrant": "unjointed"}}
}
