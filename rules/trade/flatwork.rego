package trade

# Flatwork is what is screeded, floated and cured as a wide face: slabs and toppings.
flatwork if input.member.kind in {"slab on ground", "suspended slab", "topping"}
