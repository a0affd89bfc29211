# METADATA
# scope: package
# title: The strength ordered is too low for what it has to stand
# custom:
#   stage: order
#   severity: fix
#   why: "What wears, freezes or meets salt needs dense concrete, and the code sets a least strength for it. A weaker mix may carry the load and still scale, dust or wear out in a few years."
#   do: "Order at least the strength shown, and more where the drawings or local code ask for it."
#   numbers: [least strength]
package practice.order["unfit-strength"]

here if input.order.strength > 0

wrong contains "it is below the least strength for this use and exposure" if {
	here
	input.order.strength < input.figure.least_strength
}

number["least strength"] := {"yours": "order.strength", "right": "figure.least_strength"}

mend["order.strength"] := input.range.least_strength.high
