# METADATA
# scope: package
# title: Warm concrete is uncovered into the cold at once
# custom:
#   stage: after
#   severity: fix
#   why: "The skin cools and shrinks while the inside is still warm and holds it, so the surface cracks. The hotter the concrete was kept, the worse the shock."
#   do: "Turn the heat down and open or lift the covers step by step, so that the surface falls no more than the figure given in a day; then take them off."
#   numbers: [planned drop against the largest drop for that thickness, coldest air for taking it off at once]
package practice.cold["cooled-too-fast"]

here if {
	data.trade.cold_weather
	input.protection.cover != "none"
}

wrong contains "the surface would fall too far in its first day" if {
	here
	input.protection.removal == "at once"
	input.figure.planned_drop > input.figure.largest_drop
}

number["planned drop against the largest drop for that thickness"] := {"yours": "figure.planned_drop", "right": "figure.largest_drop"}

number["coldest air for taking it off at once"] := {"yours": "protection.removal_outside", "right": "figure.coldest_removal"}

mend["protection.removal"] := "gradual"
