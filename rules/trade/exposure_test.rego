package trade_test

test_exposure_salted if {
	data.trade.salted with input as {"exposure": {"salted": true}}
	not data.trade.salted with input as {"exposure": {"salted": false}}
	not data.trade.salted with input as {"exposure": {"freezes": true}}
}

test_exposure_freezes_often_wet if {
	data.trade.freezes_often_wet with input as {"exposure": {"freezes": true, "wet": "often"}, "member": {"kind": "wall"}}
	data.trade.freezes_often_wet with input as {"exposure": {"freezes": true}, "member": {"kind": "slab on ground"}}
	not data.trade.freezes_often_wet with input as {"exposure": {"freezes": true, "wet": "sometimes"}, "member": {"kind": "wall"}}
	not data.trade.freezes_often_wet with input as {"exposure": {"freezes": false, "wet": "often"}, "member": {"kind": "slab on ground"}}
	not data.trade.freezes_often_wet with input as {"exposure": {"wet": "often"}}
}

test_exposure_freezes_sometimes_wet if {
	data.trade.freezes_sometimes_wet with input as {"exposure": {"freezes": true, "wet": "sometimes"}, "member": {"kind": "wall"}}
	not data.trade.freezes_sometimes_wet with input as {"exposure": {"freezes": true, "wet": "sometimes"}, "member": {"kind": "slab on ground"}}
	not data.trade.freezes_sometimes_wet with input as {"exposure": {"freezes": true, "wet": "often"}, "member": {"kind": "wall"}}
	not data.trade.freezes_sometimes_wet with input as {"exposure": {"freezes": true, "wet": "sometimes"}}
}

test_exposure_under_code if {
	data.trade.under_code with input as {"exposure": {"structural": true}}
	not data.trade.under_code with input as {"exposure": {"structural": false}}
	not data.trade.under_code with input as {}
}

test_exposure_salt_outside_steel if {
	data.trade.salt_outside_steel with input as {"exposure": {"external_chloride": true}, "metal": {"reinforced": true}}
	not data.trade.salt_outside_steel with input as {"exposure": {"external_chloride": true}, "metal": {"reinforced": false}}
	not data.trade.salt_outside_steel with input as {"exposure": {"external_chloride": true}}
}

test_exposure_sulfate_moderate_from_its_limit_on if {
	data.trade.sulfate_moderate with input as {"exposure": {"sulfate_soil": data.limit.durability.soil_sulfate.S1}}
	not data.trade.sulfate_moderate with input as {"exposure": {"sulfate_soil": data.limit.durability.soil_sulfate.S1 - 0.001}}
	data.trade.sulfate_moderate with input as {"exposure": {"sulfate_water": data.limit.durability.water_sulfate.S1}}
	not data.trade.sulfate_moderate with input as {"exposure": {"sulfate_water": data.limit.durability.water_sulfate.S1 - 1}}
	data.trade.sulfate_moderate with input as {"exposure": {"seawater": true}}
	not data.trade.sulfate_moderate with input as {"exposure": {"seawater": false}}
}

test_exposure_sulfate_severe_from_its_limit_on if {
	data.trade.sulfate_severe with input as {"exposure": {"sulfate_soil": data.limit.durability.soil_sulfate.S2}}
	not data.trade.sulfate_severe with input as {"exposure": {"sulfate_soil": data.limit.durability.soil_sulfate.S2 - 0.001}}
	data.trade.sulfate_severe with input as {"exposure": {"sulfate_water": data.limit.durability.water_sulfate.S2}}
	not data.trade.sulfate_severe with input as {"exposure": {"sulfate_water": data.limit.durability.water_sulfate.S2 - 1}}
	not data.trade.sulfate_severe with input as {"exposure": {"seawater": true}}
}
