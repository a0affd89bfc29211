# METADATA
# scope: package
# title: More calcium chloride than concrete stands
# custom:
#   stage: order
#   severity: stop
#   why: "Twice the chloride does not make it twice as fast. Beyond the largest dose it can set in the truck, gains less in the long run, shrinks more and rusts whatever steel is in it."
#   do: "Keep to the largest dose, counted on the cement alone and not on the concrete, and add it as a solution. For colder nights take warmer concrete and cover."
#   numbers: [dose of calcium chloride, dose of calcium chloride for this load]
package practice.cold["chloride-overdose"]

here if input.cold.chloride_dose > 0

wrong contains "the dose is above the largest" if {
	here
	input.cold.chloride_dose > data.limit.cold.most_chloride_dose
}

number["dose of calcium chloride"] := {"yours": "cold.chloride_dose", "right": data.limit.cold.most_chloride_dose}

number["dose of calcium chloride for this load"] := {"yours": "figure.chloride_pounds", "right": "figure.chloride_pounds_allowed"}

mend["cold.chloride_dose"] := data.limit.cold.most_chloride_dose
