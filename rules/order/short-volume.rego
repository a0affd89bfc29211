# METADATA
# scope: package
# title: The volume ordered is short
# custom:
#   stage: order
#   severity: fix
#   why: "Forms bulge, the ground is never quite level, and some concrete stays in the drum and the barrows. A pour that runs out leaves a joint in the middle of the slab and a small load at a high price."
#   do: "Measure the forms with a string line over the ground, add the allowance, round up to the next quarter yard, and keep a place ready for what is left over."
#   numbers: [volume to order, volume of the forms, allowance, truckloads]
#   costs: [short_load_cost]
package practice.order["short-volume"]

here if input.order.volume > 0

wrong contains "it is less than the forms hold with an allowance for uneven ground and waste" if {
	here
	input.order.volume < input.figure.least_volume
}

number["volume to order"] := {"yours": "order.volume", "right": "figure.volume_to_order"}

number["volume of the forms"] := {"yours": "figure.forms_volume"}

number["allowance"] := {"yours": "figure.allowance"}

number["truckloads"] := {"yours": "figure.truckloads"}

mend["order.volume"] := input.figure.volume_to_order
