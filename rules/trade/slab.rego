package trade

# A slab on the ground is held by friction alone; what is said of its joints and light steel holds for no other member.
slab_on_ground if input.member.kind == "slab on ground"

# A jointed slab has contraction joints that are meant to open.
jointed_slab if {
	data.trade.slab_on_ground
	input.joints.made == true
}

# Reinforcement that no slab can do without joints on.
too_light_for_no_joints if input.steel.kind in {"none", "mesh", "microfibres"}

too_light_for_no_joints if input.figure.steel_ratio < data.limit.steel.crack_control_ratio
