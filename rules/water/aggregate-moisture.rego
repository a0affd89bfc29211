# METADATA
# scope: package
# title: The water on the aggregates is not taken out
# custom:
#   stage: before
#   severity: fix
#   why: "Wet sand brings its own water: one per cent in a yard's sand is a gallon and a half. Left in, it makes the load wetter and weaker than the ticket says, and no two loads the same."
#   do: "Have the plant measure the moisture now and whenever the piles change, take that water out of the batch water, and add its weight to the aggregates."
#   numbers: [water to batch, water the aggregates carry, w/cm with the correction, w/cm without it, slump added, strength taken]
package practice.water["aggregate-moisture"]

here if input.mix.moisture_correction in {"current", "stale", "none"}

wrong contains "it was not taken out of the batch water" if {
	here
	input.mix.moisture_correction == "none"
}

wrong contains "it was measured before it changed" if {
	here
	input.mix.moisture_correction == "stale"
}

number["water to batch"] := {"yours": "mix.water", "right": "figure.batch_water"}

number["water the aggregates carry"] := {"yours": "figure.water_in_aggregates"}

number["w/cm with the correction"] := {"right": "figure.wcm"}

number["w/cm without it"] := {"yours": "figure.wcm_uncorrected"}

number["slump added"] := {"yours": "figure.moisture_slump"}

number["strength taken"] := {"yours": "figure.moisture_strength"}

mend["mix.moisture_correction"] := "current"
