package practice.durability["too-much-scm_test"]

salted(shares) := {
	"exposure": {"salted": true},
	"figure": object.union({"fly_ash_share": 0, "slag_share": 0, "silica_fume_share": 0, "scm_share": 0, "pozzolan_share": 0}, shares),
}

test_fly_ash if {
	got := data.practice.durability["too-much-scm"].wrong with input as salted({"fly_ash_share": 25.1})
	got == {"there is too much fly ash or other pozzolan"}
	edge := data.practice.durability["too-much-scm"] with input as salted({"fly_ash_share": 25})
	edge.here
	count(edge.wrong) == 0
}

test_slag if {
	got := data.practice.durability["too-much-scm"].wrong with input as salted({"slag_share": 51})
	got == {"there is too much slag cement"}
	edge := data.practice.durability["too-much-scm"].wrong with input as salted({"slag_share": 50})
	count(edge) == 0
}

test_silica_fume if {
	got := data.practice.durability["too-much-scm"].wrong with input as salted({"silica_fume_share": 11})
	got == {"there is too much silica fume"}
	edge := data.practice.durability["too-much-scm"].wrong with input as salted({"silica_fume_share": 10})
	count(edge) == 0
}

test_all_together if {
	got := data.practice.durability["too-much-scm"].wrong with input as salted({"scm_share": 51})
	got == {"all of them together are too much"}
}

test_pozzolans_together if {
	got := data.practice.durability["too-much-scm"].wrong with input as salted({"pozzolan_share": 36})
	got == {"fly ash and silica fume together are too much"}
}

test_without_salt_is_not_here if {
	job := object.union(salted({"fly_ash_share": 60}), {"exposure": {"salted": false}})
	not data.practice.durability["too-much-scm"].here with input as job
}
