package practice.cold["wet-and-young_test"]

young(psi) := {
	"protection": {"saturated_freezing": true, "strength_then": psi},
	"figure": {"strength_for_frosts": 3500},
}

test_wrong_when_weaker if {
	data.practice.cold["wet-and-young"].wrong["it is not strong enough for wet frosts by then"] with input as young(2200)
}

test_right_at_the_strength if {
	count(data.practice.cold["wet-and-young"].wrong) == 0 with input as young(3500)
	data.practice.cold["wet-and-young"].here with input as young(3500)
}

test_not_here_when_dry if {
	not data.practice.cold["wet-and-young"].here with input as object.union(young(2200), {"protection": {"saturated_freezing": false}})
}
