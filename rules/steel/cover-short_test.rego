package practice.steel["cover-short_test"]

job(reinforced, cover) := {"metal": {"reinforced": reinforced}, "steel": {"cover": cover}, "figure": {"least_cover": 3}}

test_wrong_when_short if {
	data.practice.steel["cover-short"].wrong["the cover is less than this exposure needs"] with input as job(true, 1.5)
}

test_right_at_the_least_cover if {
	count(data.practice.steel["cover-short"].wrong) == 0 with input as job(true, 3)
	data.practice.steel["cover-short"].here with input as job(true, 3)
}

test_not_here_in_plain_concrete if {
	not data.practice.steel["cover-short"].here with input as job(false, 0)
}
