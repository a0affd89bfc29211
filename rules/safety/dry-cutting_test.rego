package practice.safety["dry-cutting_test"]

cut(how) := {"safety": {"cutting": how}}

test_dry if {
	data.practice.safety["dry-cutting"].wrong["neither water nor a shroud with a vacuum keeps the dust down"] with input as cut("dry")
}

test_wet_or_shrouded_is_right if {
	every how in {"wet", "shroud"} {
		got := data.practice.safety["dry-cutting"] with input as cut(how)
		got.here
		count(got.wrong) == 0
	}
}

test_nothing_cut_is_not_here if {
	not data.practice.safety["dry-cutting"].here with input as cut("none")
}
