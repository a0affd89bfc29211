# METADATA
# scope: package
# title: The acceptance cylinders are not kept as the test asks
# custom:
#   stage: during
#   severity: fix
#   why: "Acceptance cylinders judge the concrete as delivered, so they all have to begin life in the same way: still, moist and at room temperature. One cold or hot night, or a shaking tailgate, takes strength from the cylinder that the concrete in the slab never lost."
#   do: "Put them into a curing box between the two temperatures with a recording thermometer, keep them still, and bring them to the laboratory within two days. Cylinders for stripping or loading are made beside them and kept with the structure."
#   numbers: [temperature in the first day, warmest, hours on site]
package practice.strength["cylinders-mishandled"]

here if acceptance

acceptance if input.strength.field_cured == false

acceptance if input.strength.cylinder_place in {"box", "ground", "truck"}

wrong contains "they stand on the ground or in the sun" if input.strength.cylinder_place == "ground"

wrong contains "they ride on a truck or tailgate" if input.strength.cylinder_place == "truck"

wrong contains "acceptance cylinders are cured with the structure" if {
	input.strength.cylinder_place == "with the slab"
	input.strength.field_cured == false
}

wrong contains "they are too cold at first" if {
	acceptance
	input.strength.initial_temperature < input.figure.cylinder_coldest
}

wrong contains "they are too warm at first" if {
	acceptance
	input.strength.initial_temperature > input.figure.cylinder_warmest
}

wrong contains "they stay on site too long" if {
	acceptance
	input.strength.initial_hours > data.limit.strength.initial_hours
}

number["temperature in the first day"] := {
	"yours": "strength.initial_temperature", "right": "figure.cylinder_coldest",
	"low": input.range.cylinder_coldest.low, "high": input.range.cylinder_warmest.high,
}

number["warmest"] := {"right": "figure.cylinder_warmest"}

number["hours on site"] := {"yours": "strength.initial_hours", "right": data.limit.strength.initial_hours, "unit": "h"}

mend["strength.cylinder_place"] := "box"

mend["strength.initial_temperature"] := input.range.cylinder_coldest.high if not input.strength.initial_temperature > input.range.cylinder_warmest.low

mend["strength.initial_temperature"] := input.range.cylinder_warmest.low if input.strength.initial_temperature > input.range.cylinder_warmest.low

mend["strength.initial_hours"] := data.limit.strength.initial_hours if not input.strength.initial_hours <= data.limit.strength.initial_hours
