package practice.joints["too-far-apart_test"]

job(kind, used) := {"member": {"kind": kind}, "figure": {"panels_in_stretch": used}}

test_wrong_when_the_stretch_is_too_long if {
	data.practice.joints["too-far-apart"].wrong["a stretch without a joint is longer than thickness and concrete allow"] with input as job("slab on ground", 2)
}

test_right_at_the_largest_spacing if {
	count(data.practice.joints["too-far-apart"].wrong) == 0 with input as job("slab on ground", 1)
	data.practice.joints["too-far-apart"].here with input as job("slab on ground", 1)
}

test_not_here_in_a_wall if {
	not data.practice.joints["too-far-apart"].here with input as job("wall", 2)
	count(data.practice.joints["too-far-apart"].wrong) == 0 with input as job("wall", 2)
}
