# METADATA
# scope: package
# title: Wash water is left in the drum and not counted
# custom:
#   stage: before
#   severity: stop
#   why: "What stays in the drum after the last wash becomes mixing water of the next load, whether anybody wrote it down or not."
#   do: "Run the drum empty before loading, or have the plant batch that much less water and write it on the ticket."
#   numbers: [w/cm without the wash water, w/cm with the wash water, strength lost]
package practice.water["wash-water-left"]

here if input.water.wash > 0

wrong contains "it was not counted as mixing water" if {
	here
	input.water.wash_counted == false
}

number["w/cm without the wash water"] := {"right": "figure.wcm"}

number["w/cm with the wash water"] := {"yours": "figure.wcm_with_wash"}

number["strength lost"] := {"yours": "figure.wash_strength_lost"}

mend["water.wash_counted"] := true
