package practice.durability.chloride_test

reinforced(percent) := {
	"metal": {"reinforced": true, "prestressed": false},
	"figure": {"chloride_by_cementitious": percent, "chloride_by_cement": percent, "chloride_limit": 0.3},
	"job": {"concrete_code": "318-19"},
}

test_over if {
	got := data.practice.durability.chloride.wrong with input as reinforced(0.31)
	got == {"it is above the limit for reinforced concrete"}
}

test_at_the_limit if {
	got := data.practice.durability.chloride with input as reinforced(0.3)
	got.here
	count(got.wrong) == 0
}

test_prestressed_over if {
	job := {"metal": {"prestressed": true}, "figure": {"chloride_by_cementitious": 0.07, "chloride_limit": 0.06}}
	data.practice.durability.chloride.wrong["it is above the limit for prestressed concrete"] with input as job
}

test_by_cement_in_older_editions if {
	job := object.union(reinforced(0.28), {"figure": {"chloride_by_cement": 0.35}, "job": {"concrete_code": "318-14"}})
	got := data.practice.durability.chloride.wrong with input as job
	got == {"by mass of cement it is above the limit for reinforced concrete"}
	prestressed := object.union(job, {"metal": {"reinforced": false, "prestressed": true}, "figure": {"chloride_by_cementitious": 0.05}})
	data.practice.durability.chloride.wrong["by mass of cement it is above the limit for prestressed concrete"] with input as prestressed
	newer := data.practice.durability.chloride.wrong with input as object.union(job, {"job": {"concrete_code": "318-19"}})
	count(newer) == 0
}

test_plain_concrete_is_not_here if {
	not data.practice.durability.chloride.here with input as object.union(reinforced(2), {"metal": {"reinforced": false}})
}
