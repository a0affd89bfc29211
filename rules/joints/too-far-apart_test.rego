package practice.joints["too-far-apart_test"]

job(kind, made, panels, steel) := {
	"member": {"kind": kind}, "joints": {"made": made, "spacing": 18},
	"steel": {"kind": steel}, "figure": {"panels_in_stretch": panels},
}

test_wrong_when_the_joints_are_too_far_apart if {
	data.practice.joints["too-far-apart"].wrong["they are farther apart than thickness and concrete allow"] with input as job("slab on ground", true, 2, "none")
}

test_wrong_without_joints_in_a_long_slab if {
	data.practice.joints["too-far-apart"].wrong["there are none, and the slab is longer than it can be without"] with input as job("slab on ground", false, 2, "mesh")
}

test_wrong_without_joints_over_light_bars if {
	data.practice.joints["too-far-apart"].wrong["there are none, and the slab is longer than it can be without"] with input as {
		"member": {"kind": "slab on ground"}, "joints": {"made": false},
		"steel": {"kind": "bars"}, "figure": {"panels_in_stretch": 2, "steel_ratio": 0.3},
	}
}

test_right_without_joints_over_continuous_steel if {
	count(data.practice.joints["too-far-apart"].wrong) == 0 with input as {
		"member": {"kind": "slab on ground"}, "joints": {"made": false},
		"steel": {"kind": "bars"}, "figure": {"panels_in_stretch": 2, "steel_ratio": 0.5},
	}
}

test_wrong_far_apart_over_light_bars if {
	data.practice.joints["too-far-apart"].wrong["they are so far apart that only continuous steel could do without more"] with input as {
		"member": {"kind": "slab on ground"}, "joints": {"made": true, "spacing": 60},
		"steel": {"kind": "bars"}, "figure": {"panels_in_stretch": 2, "steel_ratio": 0.3},
	}
}

test_right_far_apart_over_continuous_steel if {
	count(data.practice.joints["too-far-apart"].wrong) == 0 with input as {
		"member": {"kind": "slab on ground"}, "joints": {"made": true, "spacing": 60},
		"steel": {"kind": "bars"}, "figure": {"panels_in_stretch": 2, "steel_ratio": 0.6},
	}
}

test_right_at_the_largest_spacing if {
	count(data.practice.joints["too-far-apart"].wrong) == 0 with input as job("slab on ground", true, 1, "none")
	data.practice.joints["too-far-apart"].here with input as job("slab on ground", true, 1, "none")
}

test_right_when_a_small_slab_has_none if {
	count(data.practice.joints["too-far-apart"].wrong) == 0 with input as job("slab on ground", false, 1, "none")
}

test_not_here_in_a_wall if {
	not data.practice.joints["too-far-apart"].here with input as job("wall", true, 2, "none")
	count(data.practice.joints["too-far-apart"].wrong) == 0 with input as job("wall", true, 2, "none")
}
