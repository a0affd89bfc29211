# METADATA
# scope: package
# title: Calcium chloride in concrete with metal it attacks
# custom:
#   stage: order
#   severity: stop
#   engineer: true
#   why: "Chloride takes away the film that keeps steel in concrete from rusting. Prestressing steel can snap, aluminum and zinc are eaten by it, and bars in concrete that gets wet rust, swell and burst the cover off."
#   do: "Order a non-chloride accelerator, Type III cement or warmer concrete instead."
#   numbers: [water-soluble chloride by mass of cementitious material]
package practice.cold["chloride-with-metal"]

here if input.cold.accelerator == "calcium chloride"

wrong contains "prestressing steel is in it" if {
	here
	input.metal.prestressed == true
}

wrong contains "aluminum is in it" if {
	here
	input.metal.aluminum == true
}

wrong contains "galvanized steel is in it or below it" if {
	here
	input.metal.galvanized == true
}

wrong contains "with it there is more chloride than its steel may have" if {
	here
	input.metal.reinforced == true
	input.figure.chloride_by_cementitious > input.figure.accelerator_chloride_limit
}

number["water-soluble chloride by mass of cementitious material"] := {"yours": "figure.chloride_by_cementitious", "right": "figure.accelerator_chloride_limit"}

mend["cold.accelerator"] := "non-chloride"

mend["cold.chloride_dose"] := 0
