package trade

# A surface dries too fast when evaporation goes beyond what concrete of its kind can bleed.
dries_too_fast if input.figure.evaporation > data.limit.finish.most_evaporation

dries_too_fast if {
	input.mix.low_bleed == true
	input.figure.evaporation > data.limit.finish.most_evaporation_low_bleed
}

dries_too_fast if {
	input.mix.low_bleed == true
	input.member.kind == "topping"
	input.figure.evaporation > data.limit.finish.most_evaporation_overlay
}

# The same at the worst hour of the forecast.
dries_too_fast_later if input.figure.evaporation_worst > data.limit.finish.most_evaporation

dries_too_fast_later if {
	input.mix.low_bleed == true
	input.figure.evaporation_worst > data.limit.finish.most_evaporation_low_bleed
}

dries_too_fast_later if {
	input.mix.low_bleed == true
	input.member.kind == "topping"
	input.figure.evaporation_worst > data.limit.finish.most_evaporation_overlay
}
