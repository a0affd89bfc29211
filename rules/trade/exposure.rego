# Exposure from plain facts: what freezes while wet, what is salted, what is under the concrete code. The letters are the
# classes of ACI 318 since 2008. Each rule says that an exposure is at least so severe.
package trade

# F3: deicing salt is used on it.
salted if input.exposure.salted == true

# F2 or worse: it freezes while often wet. Slabs on the ground that freeze do, since snow and rain lie on them and the
# ground keeps them wet (commentary of 318-19 on Table 19.3.1.1).
freezes_often_wet if {
	input.exposure.freezes == true
	input.exposure.wet == "often"
}

freezes_often_wet if {
	input.exposure.freezes == true
	input.member.kind == "slab on ground"
}

# F1 and no worse: it freezes, and is wet only now and then.
freezes_sometimes_wet if {
	input.exposure.freezes == true
	input.exposure.wet == "sometimes"
	input.member.kind != "slab on ground"
}

# The structural code governs it; the slabs of drives, walks and patios are outside it.
under_code if input.exposure.structural == true

# C2: reinforced concrete that chloride reaches from outside.
salt_outside_steel if {
	input.exposure.external_chloride == true
	input.metal.reinforced == true
}

# S1 and S2 or worse: sulfate in the soil or the water. Sea water counts as S1.
sulfate_moderate if input.exposure.sulfate_soil >= data.limit.durability.soil_sulfate.S1

sulfate_moderate if input.exposure.sulfate_water >= data.limit.durability.water_sulfate.S1

sulfate_moderate if input.exposure.seawater == true

sulfate_severe if input.exposure.sulfate_soil >= data.limit.durability.soil_sulfate.S2

sulfate_severe if input.exposure.sulfate_water >= data.limit.durability.water_sulfate.S2
