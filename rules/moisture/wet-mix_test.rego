package practice.moisture["wet-mix_test"]

job(covering, watertight, ratio) := {"floor": {"covering": covering}, "member": {"watertight": watertight}, "figure": {"wcm": ratio}, "order": {"ratio_limit": 0.45}}

test_floor_to_be_covered if {
	got := data.practice.moisture["wet-mix"].wrong with input as job("wood", false, 0.51)
	got == {"it is too wet for a floor that must dry before it is covered"}
	edge := data.practice.moisture["wet-mix"] with input as job("wood", false, 0.5)
	edge.here
	count(edge.wrong) == 0
}

test_tank if {
	got := data.practice.moisture["wet-mix"].wrong with input as job("none", true, 0.51)
	got == {"it is too wet to keep water out"}
}

test_order_allows_too_much if {
	floor := object.union(job("wood", false, 0.45), {"order": {"ratio_limit": 0.55}})
	got := data.practice.moisture["wet-mix"].wrong with input as floor
	got == {"the order allows more water than a floor should have that must dry"}
	tank := object.union(job("none", true, 0.45), {"order": {"ratio_limit": 0.55}})
	got_tank := data.practice.moisture["wet-mix"].wrong with input as tank
	got_tank == {"the order allows more water than concrete should have that keeps water out"}
}

test_bare_floor_is_not_here if {
	not data.practice.moisture["wet-mix"].here with input as job("none", false, 0.7)
}
