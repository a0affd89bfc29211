# METADATA
# scope: package
# title: The slump is outside its tolerance
# custom:
#   stage: during
#   severity: fix
#   costs: [rejected_load_cost]
#   why: "Slump says little about strength, but a change of slump says that something changed: water, sand moisture, air, temperature or age. A truck unlike the one before is a different concrete."
#   do: "Test again from another part of the sample; if it fails again the load fails. Then look first at the moisture of the sand and the batch water on the ticket, next at age and temperature, next at air."
#   numbers: [slump measured, tolerance band, spread between trucks]
package practice.delivery["slump-out-of-tolerance"]

here if input.load.slump >= 0

# Where there are several trucks it concerns them, whichever was measured.
here if input.load.several == true

wrong contains "it is wetter than the slump ordered allows" if {
	here
	input.load.slump > input.figure.slump_most
}

wrong contains "it is stiffer than the slump ordered allows" if {
	here
	input.load.slump < input.figure.slump_least
}

wrong contains "the trucks differ by more than the tolerance" if {
	here
	differ
}

wrong contains "one of the other trucks is wetter than the slump ordered allows" if {
	input.load.several == true
	input.figure.slump_most_of_others > input.figure.slump_most
}

differ if {
	input.load.several == true
	input.figure.slump_spread > input.figure.slump_spread_allowed
}

differ if {
	input.load.several == true
	input.figure.slump_spread_of_others > input.figure.slump_spread_allowed
}

number["slump measured"] := {"yours": "load.slump", "right": "order.slump"}

number["tolerance band"] := {"low": input.range.slump_least.low, "high": input.range.slump_most.high, "unit": "in"}

number["spread between trucks"] := {"yours": "figure.slump_spread", "right": "figure.slump_spread_allowed"}

mend["load.slump"] := input.order.slump

mend["load.other_slumps"] := [input.order.slump] if input.figure.slump_spread > input.figure.slump_spread_allowed

mend["load.other_slumps"] := [input.order.slump] if input.figure.slump_most_of_others > input.figure.slump_most
