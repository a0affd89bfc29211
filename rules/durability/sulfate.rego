# METADATA
# scope: package
# title: The cement or the water-cement ratio does not stand up to the sulfate
# custom:
#   stage: order
#   severity: fix
#   engineer: true
#   why: "Sulfate from soil or water goes into the concrete and makes crystals with a part of ordinary cement; the crystals need room, and the concrete swells, cracks and turns soft. A cement with little of that part and a dense concrete withstand it."
#   do: "Have the soil and the water tested, and order cement and water-cement ratio for their class; in severe sulfate Type V or HS cement, in very severe sulfate with fly ash or slag beside it."
#   numbers: [sulfate class, w/cm, sulfate in the soil, sulfate in the water]
package practice.durability.sulfate

here if data.trade.sulfate_moderate

wrong contains "the cement is not made to stand moderate sulfate" if {
	data.trade.sulfate_moderate
	input.mix.sulfate_resistance == "none"
}

wrong contains "the cement stands moderate sulfate only" if {
	data.trade.sulfate_severe
	input.mix.sulfate_resistance == "moderate"
}

wrong contains "ordinary cement does not stand severe sulfate" if {
	data.trade.sulfate_severe
	input.mix.cement_type in {"I", "III"}
}

wrong contains "calcium chloride makes severe sulfate worse" if {
	data.trade.sulfate_severe
	input.cold.accelerator == "calcium chloride"
}

wrong contains "the water-cement ratio is above the limit for moderate sulfate" if {
	data.trade.sulfate_moderate
	input.figure.wcm > input.figure.ratio_s1
}

wrong contains "the water-cement ratio is above the limit for severe sulfate" if {
	data.trade.sulfate_severe
	input.figure.wcm > input.figure.ratio_s2
}

number["sulfate class"] := {"right": "figure.sulfate_class"}

number["w/cm"] := {"yours": "figure.wcm", "right": "figure.ratio_s2"} if data.trade.sulfate_severe

number["w/cm"] := {"yours": "figure.wcm", "right": "figure.ratio_s1"} if not data.trade.sulfate_severe

number["sulfate in the soil"] := {"yours": "exposure.sulfate_soil"}

number["sulfate in the water"] := {"yours": "exposure.sulfate_water"}

mend["mix.cement_type"] := "V"

mend["mix.sulfate_resistance"] := "high"

mend["cold.accelerator"] := "non-chloride" if input.cold.accelerator == "calcium chloride"

mend["cold.chloride_dose"] := 0 if input.cold.accelerator == "calcium chloride"

mend["mix.wcm"] := ratio if input.mix.wcm > ratio

mend["mix.wcm"] := ratio if not input.figure.wcm

mend["mix.water"] := water if input.mix.water > water

ratio := input.range.ratio_s2.low if data.trade.sulfate_severe

ratio := input.range.ratio_s1.low if not data.trade.sulfate_severe

water := input.range.water_s2.low if data.trade.sulfate_severe

water := input.range.water_s1.low if not data.trade.sulfate_severe
