package practice.durability["ratio-over-limit_test"]

driveway := {
	"member": {"use": "driveway", "kind": "slab on ground"},
	"exposure": {"salted": true, "freezes": true, "outdoors": true, "wet": "often", "structural": false},
}

limits := {"ratio_salted_flatwork": 0.45, "ratio_wet_flatwork": 0.5, "ratio_f1": 0.55, "ratio_f2": 0.45, "ratio_c2": 0.4, "ratio_watertight": 0.5}

figures(wcm) := {"figure": object.union(limits, {"wcm": wcm})}

wall(exposure) := {"member": {"use": "retaining wall", "kind": "wall"}, "exposure": object.union({"structural": true, "salted": false}, exposure)}

test_salted_driveway_over if {
	data.practice.durability["ratio-over-limit"].wrong["it is above the limit of every edition for concrete that meets deicing salt"] with input as object.union(driveway, figures(0.5))
}

test_salted_driveway_at_the_limit if {
	got := data.practice.durability["ratio-over-limit"] with input as object.union(driveway, figures(0.45))
	got.here
	count(got.wrong) == 0
}

test_order_allows_too_much if {
	job := object.union(driveway, {"order": {"ratio_limit": 0.5}, "figure": limits})
	data.practice.durability["ratio-over-limit"].wrong["the order allows more than any edition for concrete that meets deicing salt"] with input as job
}

test_salted_and_far_over if {
	got := data.practice.durability["ratio-over-limit"].wrong with input as object.union(driveway, figures(0.55))
	got == {"it is above the limit for concrete that freezes while often wet", "it is above the limit of every edition for concrete that meets deicing salt"}
}

test_reinforced_in_sea_water if {
	job := object.union(wall({"external_chloride": true}), object.union(figures(0.45), {"metal": {"reinforced": true}}))
	got := data.practice.durability["ratio-over-limit"].wrong with input as job
	got == {"it is above the limit for reinforced concrete that salt reaches (class C2)"}
	edge := data.practice.durability["ratio-over-limit"].wrong with input as object.union(job, {"figure": {"wcm": 0.4}})
	count(edge) == 0
}

test_structural_often_wet if {
	job := object.union(wall({"freezes": true, "wet": "often"}), figures(0.48))
	got := data.practice.durability["ratio-over-limit"].wrong with input as job
	got == {"it is above the limit for structural concrete that freezes while often wet (class F2)"}
}

test_patio_without_salt_may_have_half if {
	patio := object.union(driveway, {"exposure": {"salted": false}})
	got := data.practice.durability["ratio-over-limit"] with input as object.union(patio, figures(0.5))
	got.here
	count(got.wrong) == 0
}

test_patio_over_half if {
	patio := object.union(driveway, {"exposure": {"salted": false}})
	data.practice.durability["ratio-over-limit"].wrong["it is above the limit for concrete that freezes while often wet"] with input as object.union(patio, figures(0.51))
}

test_structural_wet_now_and_then if {
	job := object.union(wall({"freezes": true, "wet": "sometimes"}), figures(0.56))
	got := data.practice.durability["ratio-over-limit"].wrong with input as job
	got == {"it is above the limit for structural concrete that freezes while wet now and then (class F1)"}
}

test_tank if {
	job := {"member": {"use": "tank", "watertight": true}, "exposure": {"structural": true, "freezes": false, "salted": false}, "figure": object.union(limits, {"wcm": 0.52})}
	got := data.practice.durability["ratio-over-limit"].wrong with input as job
	got == {"it is above the limit for structural concrete that must keep water out"}
}

test_not_here_indoors if {
	job := object.union(
		{"member": {"use": "interior floor", "kind": "slab on ground", "watertight": false}, "exposure": {"outdoors": false, "freezes": false, "salted": false, "structural": false, "wet": "dry"}},
		figures(0.6),
	)
	not data.practice.durability["ratio-over-limit"].here with input as job
}
