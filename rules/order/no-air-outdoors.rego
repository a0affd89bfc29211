# METADATA
# scope: package
# title: Concrete that will freeze is ordered without entrained air
# custom:
#   stage: order
#   severity: stop
#   costs: [tear_out_cost]
#   why: "Water in the concrete swells as it freezes. Entrained air leaves it millions of tiny rooms to swell into; without them the surface flakes off, first where it is wet and salted."
#   do: "Order air-entrained concrete with the air content shown, and have it tested where the truck discharges."
#   numbers: [air to order, air where the truck discharges]
package practice.order["no-air-outdoors"]

# What freezes is outdoors: the one follows from the other.
here if {
	input.exposure.freezes == true
	input.exposure.wet in {"sometimes", "often"}
}

# Rain and snow lie on a slab on the ground outdoors: nobody need say that it is wet when it freezes.
here if {
	input.exposure.freezes == true
	input.exposure.outdoors == true
	input.member.kind == "slab on ground"
}

wrong contains "it will freeze while wet, and no air is entrained" if {
	here
	input.order.entrained_air == false
}

number["air to order"] := {"yours": "order.air", "right": "figure.air_to_order"}

number["air where the truck discharges"] := {"low": input.figure.air_low, "high": input.figure.air_high, "unit": "%"}

mend["order.entrained_air"] := true

mend["order.air"] := input.range.air_to_order.high
