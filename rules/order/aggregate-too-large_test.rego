package practice.order["aggregate-too-large_test"]

slab := {"order": {"aggregate": 1.5}, "member": {"kind": "slab on ground"}, "metal": {"reinforced": false}, "figure": {"stone_by_depth": 1.33}}

test_wrong_for_the_depth if {
	data.practice.order["aggregate-too-large"].wrong["it is larger than a third of the depth of the slab"] with input as slab
}

test_wrong_for_the_wall if {
	data.practice.order["aggregate-too-large"].wrong["it is larger than a fifth of the thickness of the wall"] with input as {"order": {"aggregate": 2}, "member": {"kind": "wall"}, "figure": {"stone_by_wall": 1.6}}
}

test_wrong_for_the_form if {
	data.practice.order["aggregate-too-large"].wrong["it is larger than a fifth of the narrowest form"] with input as {"order": {"aggregate": 2}, "member": {"kind": "beam"}, "figure": {"stone_by_form": 1.6}}
}

test_wrong_between_the_bars if {
	data.practice.order["aggregate-too-large"].wrong["it is larger than three quarters of the clear space between bars"] with input as {"order": {"aggregate": 1}, "metal": {"reinforced": true}, "figure": {"stone_by_bars": 0.75}}
}

test_right_at_the_limit if {
	data.practice.order["aggregate-too-large"].here with input as object.union(slab, {"order": {"aggregate": 1.33}})
	count(data.practice.order["aggregate-too-large"].wrong) == 0 with input as object.union(slab, {"order": {"aggregate": 1.33}})
}

test_right_without_bars if {
	count(data.practice.order["aggregate-too-large"].wrong) == 0 with input as object.union(slab, {"order": {"aggregate": 1}, "figure": {"stone_by_bars": 0.5}})
}

test_not_here_without_a_size if {
	not data.practice.order["aggregate-too-large"].here with input as {"member": {"kind": "wall"}}
}
