# METADATA
# scope: package
# title: It is stripped, driven on or loaded before it has the strength
# custom:
#   stage: after
#   severity: fix
#   engineer: true
#   why: "Concrete is hard long before it is strong. At a day it has perhaps a fifth of its strength, in the cold far less; a wheel at the edge cracks it then, and the crack stays. What counts is strength, and strength comes with time and warmth together."
#   do: "Go by strength in place, from a maturity record or from cylinders kept beside the slab; without them wait until the slowest of the curves has the strength."
#   numbers: [strength then, strength then as a share, hour it is reached, hours until side forms may come off]
package practice.strength["loaded-too-soon"]

used if input.strength.action in {"walk", "car", "truck", "load"}

here if used

here if input.strength.action == "strip sides"

wrong contains "the side forms come off too soon" if {
	input.strength.action == "strip sides"
	input.figure.strip_age < data.limit.strength.strip_hours
}

wrong contains "even fast concrete has not the strength by then" if {
	used
	input.range.gained_share.high < input.range.needed_share.low
}

wrong contains "the strength measured is below what is needed" if {
	used
	input.range.gained_share.low < input.range.needed_share.high
	input.figure.in_place_share < input.figure.needed_share
}

number["strength then"] := {"yours": "figure.strength_then", "right": "figure.strength_needed"} if used

number["strength then as a share"] := {"yours": "figure.gained_share", "right": "figure.needed_share"} if used

number["hour it is reached"] := {"yours": "strength.action_after", "right": "figure.hours_to_needed"} if used

number["hours until side forms may come off"] := {"yours": "strength.action_after", "right": "figure.hours_to_strip"}

mend["strength.action_after"] := input.range.hours_to_strip.high if input.strength.action == "strip sides"

mend["strength.action_after"] := input.range.hours_to_needed.high if {
	used
	not input.strength.in_place
}

# What was measured has to lie where the age puts it.
mend["strength.action_after"] := input.range.hours_to_needed.low if {
	used
	input.strength.in_place < input.range.strength_needed.high
	input.strength.action_after > 0
}

mend["strength.in_place"] := input.range.strength_needed.high if {
	used
	input.strength.in_place < input.range.strength_needed.high
}
