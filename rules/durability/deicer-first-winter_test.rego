package practice.durability["deicer-first-winter_test"]

salted(facts) := {"exposure": object.union({"salted": true, "first_winter_salt": false, "age_at_salting": 300, "strength_at_salting": 5000}, facts), "order": {"entrained_air": true}}

test_first_winter if {
	got := data.practice.durability["deicer-first-winter"].wrong with input as salted({"first_winter_salt": true})
	got == {"it is salted in its first winter"}
}

test_too_young_and_at_the_edge if {
	got := data.practice.durability["deicer-first-winter"].wrong with input as salted({"age_at_salting": 41})
	got == {"it is too young at the first salt"}
	edge := data.practice.durability["deicer-first-winter"].wrong with input as salted({"age_at_salting": 42})
	count(edge) == 0
}

test_too_weak if {
	got := data.practice.durability["deicer-first-winter"].wrong with input as salted({"strength_at_salting": 3500})
	got == {"it is too weak at the first salt"}
}

test_without_air if {
	got := data.practice.durability["deicer-first-winter"].wrong with input as object.union(salted({}), {"order": {"entrained_air": false}})
	got == {"it is salted without entrained air"}
}

test_mature_concrete_is_right if {
	got := data.practice.durability["deicer-first-winter"] with input as salted({})
	got.here
	count(got.wrong) == 0
}

test_without_salt_is_not_here if {
	not data.practice.durability["deicer-first-winter"].here with input as {"exposure": {"salted": false, "first_winter_salt": false, "age_at_salting": 1}}
}
