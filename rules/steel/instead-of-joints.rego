# METADATA
# scope: package
# title: Steel is to do what only joints can do
# custom:
#   stage: before
#   severity: fix
#   engineer: true
#   why: "Concrete cracks at a strain several times smaller than its own shrinkage, and steel cannot stretch it further. Light steel gives way where the crack opens; only a great deal of it, close together, splits the movement into many cracks too fine to see."
#   do: "Keep the joints at the spacing of a plain slab and let light steel only hold them and stray cracks together. To do without joints have an engineer design continuous steel of half a per cent of the slab or more."
#   numbers: [steel that would really do without joints, strain the slab must take, strain it cracks at, crack opening with this steel, crack width taken as reasonable]
package practice.steel["instead-of-joints"]

here if prevent

here if left_out

prevent if {
	data.trade.slab_on_ground
	input.steel.purpose == "prevent cracks"
}

left_out if {
	data.trade.slab_on_ground
	input.metal.reinforced == true
	instead
}

instead if input.steel.purpose == "no joints"

instead if input.steel.joints_left_out == true

wrong contains "the steel is expected to keep the slab from cracking" if prevent

wrong contains "joints are left out or spread over light mesh" if {
	left_out
	input.steel.kind == "mesh"
}

wrong contains "joints are left out or spread with less steel than that takes" if {
	left_out
	input.figure.steel_ratio < data.limit.steel.crack_control_ratio
}

number["steel that would really do without joints"] := {"yours": "figure.steel_area", "right": "figure.crack_control_steel"}

number["strain the slab must take"] := {"yours": "figure.restrained_strain"}

number["strain it cracks at"] := {"right": "figure.cracking_strain"}

number["crack opening with this steel"] := {"yours": "figure.crack_opening"}

number["crack width taken as reasonable"] := {"right": "figure.crack_width_reasonable"}

mend["steel.purpose"] := "drag"

mend["steel.joints_left_out"] := false
