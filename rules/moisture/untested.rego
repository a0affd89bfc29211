# METADATA
# scope: package
# title: Dryness is guessed instead of tested
# custom:
#   stage: after
#   severity: fix
#   why: "The top of a slab dries first, turns light and feels dry while the lower part is still wet; the water comes up again under a covering. Age tells little, since thickness, mix and weather make weeks or years of it, and a taped sheet or a surface meter sees the top only."
#   do: "Have humidity probes set into the slab, enough of them and deep enough, with the building at its service conditions, and hold the readings against the covering maker's limit."
#   numbers: [moisture tests, depth of the probes, humidity the covering takes]
package practice.moisture.untested

here if data.trade.covered

wrong contains "it is judged by its age, its look, a taped sheet or a surface meter" if {
	data.trade.covered
	data.trade.dryness_guessed
}

wrong contains "there are too few tests for the area" if {
	data.trade.covered
	input.floor.judged_by in {"probes", "dome"}
	input.floor.tests < input.figure.moisture_tests_needed
}

number["moisture tests"] := {"yours": "floor.tests", "right": "figure.moisture_tests_needed"}

number["depth of the probes"] := {"yours": "floor.probe_depth", "right": "figure.probe_depth"}

number["humidity the covering takes"] := {"yours": "floor.humidity_reading", "right": data.limit.moisture.usual_humidity, "unit": "%"} if not input.floor.humidity_limit

number["humidity the covering takes"] := {"yours": "floor.humidity_reading", "right": "floor.humidity_limit"} if input.floor.humidity_limit

mend["floor.judged_by"] := "probes" if data.trade.dryness_guessed

mend["floor.tests"] := input.figure.moisture_tests_needed
