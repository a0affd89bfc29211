# METADATA
# scope: package
# title: The steel will end up at the bottom of the slab
# custom:
#   stage: before
#   severity: fix
#   why: "Steel that lies on the ground stays there: hooks bring it up between two steps and boots push it down again. At the bottom it holds no crack together, since cracks open from the top."
#   do: "Hold it up on chairs or bolsters before the first concrete comes, {2 in} below the top or in the upper third, and walk on planks or between bars too far apart to step on."
#   numbers: [depth where it belongs, support spacing]
package practice.steel["on-the-ground"]

here if {
	data.trade.slab_on_ground
	input.metal.reinforced == true
}

here if {
	data.trade.slab_on_ground
	dropped
}

dropped if input.steel.position in {"on the ground", "pulled up", "walked in"}

wrong contains "nothing holds it up while the concrete is placed" if {
	here
	dropped
}

wrong contains "it lies below the middle of the slab" if {
	here
	input.steel.depth > input.figure.mid_depth
}

number["depth where it belongs"] := {"yours": "steel.depth", "right": "figure.steel_depth"}

number["support spacing"] := {"yours": "steel.support_spacing", "right": data.limit.steel.support_spacing[input.steel.kind], "unit": "ft"}

mend["steel.position"] := "supported" if dropped

mend["steel.depth"] := input.figure.steel_depth
