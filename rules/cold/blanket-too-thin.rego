# METADATA
# scope: package
# title: The cover is too thin for this cold
# custom:
#   stage: before
#   severity: fix
#   why: "Concrete makes some heat of its own, but a thin slab makes little and loses it fast. A cover only slows the loss, so it must be thick enough for the night, the wind and the ground."
#   do: "Lay covers that add up to the R-value given, double at edges and corners, weighted against wind, and dry underneath."
#   numbers: [R-value of the cover, lowest slab temperature with the cover planned, lowest slab temperature with the cover needed]
package practice.cold["blanket-too-thin"]

here if {
	data.trade.cold_weather
	input.protection.cover in {"plastic", "blankets", "straw", "foam board"}
}

wrong contains "the cover does not hold it until it stands freezing" if {
	here
	input.protection.r_value < input.figure.r_needed
}

wrong contains "a bare plastic sheet holds next to no warmth, and a thin section lies under it in hard frost" if {
	data.trade.cold_weather
	input.protection.cover == "plastic"
	input.figure.coldest_air < data.limit.cold.hard_frost
	input.member.thickness < data.limit.cold.section_classes.thin
}

number["R-value of the cover"] := {"yours": "protection.r_value", "right": "figure.r_needed"} if not data.trade.no_cover_is_enough

number["lowest slab temperature with the cover planned"] := {"yours": "figure.lowest_with_cover"}

number["lowest slab temperature with the cover needed"] := {"right": "figure.lowest_with_needed_cover"}

mend["protection.r_value"] := input.range.r_needed.high if data.trade.a_cover_is_enough

mend["protection.cover"] := "enclosure" if data.trade.a_cover_may_fall_short

mend["protection.cover"] := "blankets" if {
	input.protection.cover == "plastic"
	not data.trade.a_cover_may_fall_short
}
