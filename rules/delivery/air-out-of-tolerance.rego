# METADATA
# scope: package
# title: The air content is outside its tolerance
# custom:
#   stage: during
#   severity: fix
#   costs: [rejected_load_cost]
#   why: "Too little air and the surface flakes off in the first hard winters; too much and every point of it costs about a twentieth of the strength."
#   do: "Test again at once from another part of the sample; a second failure fails the load. Have the plant correct the dose, and test at the end of the pump line as well as at the chute."
#   numbers: [air measured, tolerance band]
package practice.delivery["air-out-of-tolerance"]

here if {
	input.order.air >= 0
	input.load.air >= 0
}

wrong contains "there is more air than the order allows" if {
	here
	input.load.air > input.figure.air_most
}

wrong contains "there is less air than the order allows" if {
	here
	input.load.air < input.figure.air_least
}

number["air measured"] := {"yours": "load.air", "right": "order.air"}

number["tolerance band"] := {"low": input.figure.air_least, "high": input.figure.air_most, "unit": "%"}

mend["load.air"] := input.order.air
