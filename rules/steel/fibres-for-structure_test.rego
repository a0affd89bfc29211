package practice.steel["fibres-for-structure_test"]

job(kind, purpose) := {"steel": {"kind": kind, "fibres_for": purpose}}

test_wrong_for_steel if {
	data.practice.steel["fibres-for-structure"].wrong["they are to replace structural steel"] with input as job("microfibres", "structure")
}

test_wrong_for_joints if {
	data.practice.steel["fibres-for-structure"].wrong["they are to replace joints"] with input as job("microfibres", "joints")
}

test_right_for_early_cracks if {
	count(data.practice.steel["fibres-for-structure"].wrong) == 0 with input as job("microfibres", "plastic cracks")
	data.practice.steel["fibres-for-structure"].here with input as job("microfibres", "plastic cracks")
}

test_not_here_with_steel_fibers if {
	not data.practice.steel["fibres-for-structure"].here with input as job("steel fibres", "structure")
}

test_edge_the_same_use_of_bars_is_no_matter_here if {
	count(data.practice.steel["fibres-for-structure"].wrong) == 0 with input as job("bars", "structure")
}
