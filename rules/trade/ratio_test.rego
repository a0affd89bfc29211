package trade_test

in_frost := {"exposure": {"freezes": true, "wet": "often", "structural": true}, "member": {"kind": "wall"}}

test_ratio_salt_on_steel_governs if {
	job := {"exposure": {"structural": true, "external_chloride": true, "salted": true, "freezes": true, "wet": "often"}, "metal": {"reinforced": true}}
	data.trade.governing_ratio == "figure.ratio_c2" with input as job
	data.trade.governing_strength == "figure.strength_c2" with input as job
	data.trade.governing_least == 0.4 with input as object.union(job, {"range": {"ratio_c2": {"low": 0.4}}})
	data.trade.governing_water == 7 with input as object.union(job, {"range": {"water_c2": {"low": 7}}})
}

test_ratio_salt_governs_plain_flatwork if {
	job := {"exposure": {"salted": true, "structural": false}}
	data.trade.governing_ratio == "figure.ratio_salted_flatwork" with input as job
	data.trade.governing_strength == data.limit.durability.salting_strength with input as job
	data.trade.governing_water == 3 with input as object.union(job, {"range": {"water_salted_flatwork": {"low": 3}}})
}

test_ratio_frost_governs_by_the_code if {
	data.trade.governing_ratio == "figure.ratio_f2" with input as in_frost
	data.trade.governing_strength == "figure.strength_f2" with input as in_frost
	data.trade.governing_least == 0.45 with input as object.union(in_frost, {"range": {"ratio_f2": {"low": 0.45}}})
}

test_ratio_frost_governs_outside_the_code if {
	data.trade.governing_ratio == "figure.ratio_wet_flatwork" with input as {"exposure": {"freezes": true, "structural": false}, "member": {"kind": "slab on ground"}}
	not data.trade.governing_strength with input as {"exposure": {"freezes": true, "structural": false}, "member": {"kind": "slab on ground"}}
}

test_ratio_keeping_water_out_governs if {
	job := {"exposure": {"structural": true, "freezes": false}, "member": {"kind": "wall", "watertight": true}}
	data.trade.governing_ratio == "figure.ratio_watertight" with input as job
	data.trade.governing_strength == "figure.strength_watertight" with input as job
}

test_ratio_light_frost_governs_last if {
	job := {"exposure": {"structural": true, "freezes": true, "wet": "sometimes"}, "member": {"kind": "wall"}}
	data.trade.governing_ratio == "figure.ratio_f1" with input as job
	data.trade.governing_ratio == "figure.ratio_watertight" with input as object.union(job, {"member": {"kind": "wall", "watertight": true}})
}

test_ratio_nothing_governs_indoors if {
	not data.trade.governing_ratio with input as {"exposure": {"structural": true, "freezes": false, "salted": false}, "member": {"kind": "column"}}
	not data.trade.governing_ratio with input as {}
}
