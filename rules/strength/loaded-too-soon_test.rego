package practice.strength["loaded-too-soon_test"]

drive(low, high, need) := {
	"strength": {"action": "car"},
	"range": {"gained_share": {"low": low, "high": high}, "needed_share": {"low": need, "high": need}},
	"figure": {"needed_share": need},
}

test_even_the_fastest_is_short if {
	got := data.practice.strength["loaded-too-soon"].wrong with input as drive(40, 60, 70)
	got == {"even fast concrete has not the strength by then"}
}

test_fastest_at_the_limit_is_not_certain if {
	got := data.practice.strength["loaded-too-soon"].wrong with input as drive(50, 70, 70)
	count(got) == 0
}

test_measured_too_weak if {
	job := object.union(drive(50, 80, 70), {"figure": {"in_place_share": 69}})
	got := data.practice.strength["loaded-too-soon"].wrong with input as job
	got == {"the strength measured is below what is needed"}
}

test_slowest_at_the_limit_is_right if {
	job := object.union(drive(70, 80, 70), {"figure": {"in_place_share": 70}})
	got := data.practice.strength["loaded-too-soon"] with input as job
	got.here
	count(got.wrong) == 0
}

test_side_forms if {
	early := data.practice.strength["loaded-too-soon"].wrong with input as {"strength": {"action": "strip sides"}, "figure": {"strip_age": 11}}
	early == {"the side forms come off too soon"}
	edge := data.practice.strength["loaded-too-soon"].wrong with input as {"strength": {"action": "strip sides"}, "figure": {"strip_age": 12}}
	count(edge) == 0
}

test_nothing_yet_is_not_here if {
	not data.practice.strength["loaded-too-soon"].here with input as object.union(drive(0, 1, 70), {"strength": {"action": "nothing"}})
}
