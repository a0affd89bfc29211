# METADATA
# scope: package
# title: The slab would freeze before it is strong enough
# custom:
#   stage: before
#   severity: stop
#   costs: [tear_out_cost]
#   why: "Water in young concrete turns to ice, swells and tears the paste apart. What freezes before it has some {500 psi} can lose up to half of its strength for good; it looks sound when it thaws and is not."
#   do: "Have blankets on site before the first truck, lay them as soon as the surface bears them, double at the edges, and leave them for the hours given. Or place on a warmer day."
#   numbers: [R-value of the cover, hours the cover must stay, hours to 500 psi, hour the surface freezes, lowest surface temperature]
#   cautions: [ice]
package practice.cold["no-protection"]

here if {
	data.trade.cold_weather
	input.protection.cover == "none"
}

wrong contains "the surface would freeze before the concrete stands freezing" if {
	here
	input.figure.freeze_hour < input.figure.hours_to_500
}

wrong contains "a thin section lies bare in hard frost" if {
	here
	input.figure.coldest_air < data.limit.cold.hard_frost
	input.member.thickness < data.limit.cold.section_classes.thin
}

number["R-value of the cover"] := {"yours": 0, "right": "figure.r_needed"} if not data.trade.no_cover_is_enough

number["hours the cover must stay"] := {"right": "figure.cover_hours_needed"}

number["hours to 500 psi"] := {"yours": "figure.hours_to_500"}

number["hour the surface freezes"] := {"yours": "figure.freeze_hour"}

number["lowest surface temperature"] := {"yours": "figure.lowest_surface"}

mend["protection.cover"] := "blankets" if not data.trade.a_cover_may_fall_short

mend["protection.cover"] := "enclosure" if data.trade.a_cover_may_fall_short

mend["protection.r_value"] := input.range.r_needed.high if data.trade.a_cover_is_enough
