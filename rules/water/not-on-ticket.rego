# METADATA
# scope: package
# title: The tests and the ticket do not show the water
# custom:
#   stage: during
#   severity: fix
#   why: "Cylinders made before the water went in test a concrete that is not in the slab, and a ticket without the water hides why. When the strength is disputed, neither helps anybody."
#   do: "Write the gallons, the hour and who asked for them on the ticket, and take the sample after all water and admixture are mixed in."
#   numbers: [strength the cylinders may show too much]
package practice.water["not-on-ticket"]

here if input.water.added > 0

wrong contains "the water added is not written on the ticket" if {
	here
	input.water.on_ticket == false
}

wrong contains "the cylinders were made before the water went in" if {
	here
	input.water.cylinders == "before"
}

number["strength the cylinders may show too much"] := {"yours": "figure.strength_lost"}

mend["water.on_ticket"] if input.water.on_ticket == false

mend["water.cylinders"] := "after" if input.water.cylinders == "before"
