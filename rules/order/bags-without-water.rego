# METADATA
# scope: package
# title: The order names bags of cement and leaves the water open
# custom:
#   stage: order
#   severity: fix
#   why: "Bags say how much cement is bought. How strong and how tight it gets is decided by how much water goes with them, and that changes with the stone, the slump and the air."
#   do: "Order the strength, the largest w/cm and the air, with the slump and the stone. Leave the number of bags to the plant."
#   numbers: [strength to order, w/cm to order, air to order, water those bags may get, w/cm those bags may get, strength those bags may give]
package practice.order["bags-without-water"]

here if input.order.basis in {"bags", "performance"}

wrong contains "it says how much cement, and neither what strength nor what water-cement ratio" if {
	here
	input.order.basis == "bags"
}

number["strength to order"] := {"right": "figure.least_strength"}

number["w/cm to order"] := {"right": "figure.ratio_to_order"}

number["air to order"] := {"right": "figure.air_to_order"}

number["water those bags may get"] := {"yours": "figure.water_for_slump"}

number["w/cm those bags may get"] := {"yours": "figure.wcm_from_bags"}

number["strength those bags may give"] := {"yours": "figure.strength_from_bags"}

mend["order.basis"] := "performance"

mend["order.strength"] := input.range.least_strength.high

mend["order.ratio_limit"] := input.range.ratio_to_order.low
