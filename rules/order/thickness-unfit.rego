# METADATA
# scope: package
# title: The slab is too thin for its use
# custom:
#   stage: order
#   severity: fix
#   why: "How much a slab carries grows with the square of its thickness: one inch more on four makes it about half as strong again. No mix makes up for a slab that is too thin."
#   do: "Form it at least as thick as shown, over even ground, and ask a designer where trucks, forklifts or racks stand on it."
#   numbers: [least thickness]
package practice.order["thickness-unfit"]

here if data.limit.order.home_thickness[input.member.use] > 0

here if data.limit.order.code_thickness[input.member.use] > 0

here if data.limit.order.work_thickness[input.member.use] > 0

here if data.trade.slab_on_ground

wrong contains "it is thinner than any slab on the ground should be" if {
	data.trade.slab_on_ground
	input.member.thickness < data.limit.order.slab_thickness
}

wrong contains "it is thinner than a slab at a house should be" if {
	input.member.thickness < data.limit.order.home_thickness[input.member.use]
}

wrong contains "it is thinner than the code's least for a floor" if {
	input.member.thickness < data.limit.order.code_thickness[input.member.use]
}

wrong contains "it is thinner than slabs for this work usually are" if {
	input.member.thickness < data.limit.order.work_thickness[input.member.use]
}

number["least thickness"] := {"yours": "member.thickness", "right": data.limit.order.home_thickness[input.member.use], "unit": "in"}

number["least thickness"] := {"yours": "member.thickness", "right": data.limit.order.code_thickness[input.member.use], "unit": "in"}

number["least thickness"] := {"yours": "member.thickness", "right": data.limit.order.work_thickness[input.member.use], "unit": "in"}

number["least thickness"] := {"yours": "member.thickness", "right": data.limit.order.slab_thickness, "unit": "in"} if not input.member.use

mend["member.thickness"] := data.limit.order.slab_thickness if not input.member.use

mend["member.thickness"] := data.limit.order.home_thickness[input.member.use]

mend["member.thickness"] := data.limit.order.code_thickness[input.member.use]

mend["member.thickness"] := data.limit.order.work_thickness[input.member.use]
