# METADATA
# scope: package
# title: The cover comes off too soon
# custom:
#   stage: after
#   severity: fix
#   why: "Standing one freeze takes a day or two of warmth; carrying load or weather through the winter takes more. What is uncovered early stops gaining while it is still weak."
#   do: "Leave cover or heat for the days given, and check the temperature under it each morning and evening."
#   numbers: [days of protection, strength when it comes off, hour from which it may come off at once, fall of the surface in the day after]
package practice.cold["protection-too-short"]

here if {
	data.trade.cold_weather
	input.protection.cover != "none"
}

wrong contains "what it must stand needs more days" if {
	here
	input.protection.days < input.figure.protection_days_needed
}

wrong contains "it comes out into frost too soon" if {
	here
	input.protection.removal_outside < data.limit.ground.freezing
	input.protection.days < data.limit.cold.least_days_into_frost
}

number["days of protection"] := {"yours": "protection.days", "right": "figure.protection_days_to_plan"}

number["strength when it comes off"] := {"yours": "figure.strength_when_cover_comes_off"}

number["hour from which it may come off at once"] := {"right": "figure.uncover_hour"}

number["fall of the surface in the day after"] := {"yours": "figure.uncover_drop"}

mend["protection.days"] := input.range.protection_days_to_plan.high
