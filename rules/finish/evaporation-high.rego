# METADATA
# scope: package
# title: The surface will dry faster than the concrete can stand
# custom:
#   stage: before
#   severity: stop
#   why: "Wind, dry air and warm concrete take water out of the top before it has any strength, and it tears: long cracks, some right through, within hours. It needs no heat; a cold dry wind over warm concrete does it as well."
#   do: "Put up windbreaks or fog above the slab, spray an evaporation retarder after every pass, or start when the figures below fall within the limit. Have the means on site before the first truck."
#   numbers: [evaporation rate, limit for this concrete, evaporation rate at its worst hour, wind that keeps it within, concrete temperature that keeps it within, humidity that keeps it within, hours to put the start off]
package practice.finish["evaporation-high"]

here if data.trade.flatwork

wrong contains "nothing is done against drying, and evaporation is beyond the limit" if {
	here
	input.finish.drying_measure == "none"
	data.trade.dries_too_fast
}

wrong contains "nothing is done against drying, and evaporation goes beyond the limit later" if {
	here
	input.finish.drying_measure == "none"
	data.trade.dries_too_fast_later
}

number["evaporation rate"] := {"yours": "figure.evaporation", "right": "figure.evaporation_limit"}

number["limit for this concrete"] := {"right": "figure.evaporation_limit"}

number["evaporation rate at its worst hour"] := {"yours": "figure.evaporation_worst"}

number["wind that keeps it within"] := {"yours": "weather.wind", "right": "figure.wind_for_evaporation"}

number["concrete temperature that keeps it within"] := {"yours": "load.temperature", "right": "figure.concrete_for_evaporation"}

number["humidity that keeps it within"] := {"yours": "weather.humidity", "right": "figure.humidity_for_evaporation"}

number["hours to put the start off"] := {"right": "figure.start_for_evaporation"}

mend["finish.drying_measure"] := "fogging"
