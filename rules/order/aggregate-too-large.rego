# METADATA
# scope: package
# title: The stone is too large to fit
# custom:
#   stage: order
#   severity: fix
#   why: "Stone that is too large for the slab, the form or the gaps between the bars hangs up there. Below it stays a hollow, the bars lie bare, and the mortar runs to one side."
#   do: "Order the largest stone that fits, and not smaller without need: smaller stone wants more water and cement."
#   numbers: [largest size that fits, by the slab or the form, by the space between bars]
package practice.order["aggregate-too-large"]

here if input.order.aggregate > 0

wrong contains "it is larger than a third of the depth of the slab" if {
	here
	input.member.kind in {"slab on ground", "suspended slab", "topping"}
	input.order.aggregate > input.figure.stone_by_depth
}

wrong contains "it is larger than a fifth of the thickness of the wall" if {
	here
	input.member.kind == "wall"
	input.order.aggregate > input.figure.stone_by_wall
}

wrong contains "it is larger than a fifth of the narrowest form" if {
	here
	input.member.kind in {"footing", "column", "beam", "pad"}
	input.order.aggregate > input.figure.stone_by_form
}

wrong contains "it is larger than three quarters of the clear space between bars" if {
	here
	input.metal.reinforced == true
	input.order.aggregate > input.figure.stone_by_bars
}

number["largest size that fits"] := {"yours": "order.aggregate", "right": "figure.largest_aggregate"}

number["by the slab or the form"] := {"right": "figure.stone_by_depth"} if input.member.kind in {"slab on ground", "suspended slab", "topping"}

number["by the slab or the form"] := {"right": "figure.stone_by_wall"} if input.member.kind == "wall"

number["by the slab or the form"] := {"right": "figure.stone_by_form"} if input.member.kind in {"footing", "column", "beam", "pad"}

number["by the space between bars"] := {"right": "figure.stone_by_bars"} if input.metal.reinforced == true

mend["order.aggregate"] := input.range.largest_aggregate.high
