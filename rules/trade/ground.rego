package trade

# It is placed on the ground.
on_ground if input.member.kind in {"slab on ground", "footing", "pad"}
