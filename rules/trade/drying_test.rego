package trade_test

test_drying_beyond_the_limit if data.trade.dries_too_fast with input as {"figure": {"evaporation": 0.21}}

test_drying_at_the_limit_is_not_too_fast if {
	not data.trade.dries_too_fast with input as {"figure": {"evaporation": data.limit.finish.most_evaporation}}
}

test_drying_unknown_is_not_too_fast if not data.trade.dries_too_fast with input as {"mix": {"low_bleed": true}}

test_drying_of_what_hardly_bleeds if {
	limit := data.limit.finish.most_evaporation_low_bleed
	data.trade.dries_too_fast with input as {"mix": {"low_bleed": true}, "figure": {"evaporation": limit + 0.001}}
	not data.trade.dries_too_fast with input as {"mix": {"low_bleed": true}, "figure": {"evaporation": limit}}
	not data.trade.dries_too_fast with input as {"mix": {"low_bleed": false}, "figure": {"evaporation": limit + 0.001}}
}

test_drying_of_an_overlay if {
	over := data.limit.finish.most_evaporation_overlay + 0.001
	data.trade.dries_too_fast with input as {"mix": {"low_bleed": true}, "member": {"kind": "topping"}, "figure": {"evaporation": over}}
	not data.trade.dries_too_fast with input as {"mix": {"low_bleed": true}, "member": {"kind": "slab on ground"}, "figure": {"evaporation": over}}
}

test_drying_later if {
	data.trade.dries_too_fast_later with input as {"figure": {"evaporation_worst": data.limit.finish.most_evaporation + 0.01}}
	not data.trade.dries_too_fast_later with input as {"figure": {"evaporation_worst": data.limit.finish.most_evaporation}}
	not data.trade.dries_too_fast_later with input as {"figure": {"evaporation": 1}}
	data.trade.dries_too_fast_later with input as {"mix": {"low_bleed": true}, "figure": {"evaporation_worst": data.limit.finish.most_evaporation_low_bleed + 0.001}}
	not data.trade.dries_too_fast_later with input as {"mix": {"low_bleed": true}, "figure": {"evaporation_worst": data.limit.finish.most_evaporation_overlay}}
	data.trade.dries_too_fast_later with input as {"mix": {"low_bleed": true}, "member": {"kind": "topping"}, "figure": {"evaporation_worst": data.limit.finish.most_evaporation_overlay + 0.001}}
}
