# METADATA
# scope: package
# title: Deicing salt comes too early, or onto concrete that cannot stand it
# custom:
#   stage: after
#   severity: fix
#   why: "Young concrete is full of water and still weak at the surface. Salt keeps it wet and makes it thaw and freeze many times more; the skin flakes off in the first winter and the flaking goes on."
#   do: "Use sand for grip in the first winter. Salt only mature, dried, air-entrained concrete, and never with ammonium nitrate or ammonium sulfate."
#   numbers: [age at the first salt, strength at the first salt]
package practice.durability["deicer-first-winter"]

here if data.trade.salted

here if input.exposure.first_winter_salt == true

wrong contains "it is salted in its first winter" if input.exposure.first_winter_salt == true

wrong contains "it is too young at the first salt" if {
	data.trade.salted
	input.exposure.age_at_salting < data.limit.durability.salting_age
}

wrong contains "it is too weak at the first salt" if {
	data.trade.salted
	input.exposure.strength_at_salting < data.limit.durability.salting_strength
}

wrong contains "it is salted without entrained air" if {
	data.trade.salted
	input.order.entrained_air == false
}

number["age at the first salt"] := {"yours": "exposure.age_at_salting", "right": data.limit.durability.salting_age, "unit": "d"}

number["strength at the first salt"] := {"yours": "exposure.strength_at_salting", "right": data.limit.durability.salting_strength, "unit": "psi"}

mend["exposure.first_winter_salt"] := false

mend["exposure.age_at_salting"] := data.limit.durability.salting_age if not input.exposure.age_at_salting >= data.limit.durability.salting_age

mend["exposure.strength_at_salting"] := data.limit.durability.salting_strength if not input.exposure.strength_at_salting >= data.limit.durability.salting_strength

mend["order.entrained_air"] := true
