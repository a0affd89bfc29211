# METADATA
# scope: package
# title: Curing starts too late
# custom:
#   stage: after
#   severity: fix
#   why: "The hours just after finishing are the worst to be uncovered in: the surface is young, warm and full of water, and what dries out of it then does not come back. Hosing it down now and then lets it dry in between, which cracks the skin."
#   do: "Start as soon as the surface will not mar: compound the same hour, or fog and film until sheet or burlap can go down, and then keep it wet all the time."
#   numbers: [latest start of curing, evaporation rate, water lost by then]
package practice.cure["too-late"]

here if {
	input.cure.delay >= 0
	input.cure.method in {"wet", "sheet", "compound", "sprinkled"}
}

here if input.cure.method == "sprinkled"

wrong contains "it dries out before curing starts" if {
	here
	input.figure.water_lost_before_curing > data.limit.cure.most_loss
}

wrong contains "it stands uncovered for hours after finishing" if {
	here
	input.cure.delay > data.limit.cure.longest_delay
}

wrong contains "hosed down now and then, it dries out between the wettings" if {
	here
	input.cure.method == "sprinkled"
}

number["latest start of curing"] := {"yours": "cure.delay", "right": "figure.latest_curing"}

number["evaporation rate"] := {"yours": "figure.evaporation"}

number["water lost by then"] := {"yours": "figure.water_lost_before_curing", "right": data.limit.cure.most_loss}

mend["cure.delay"] := 0

mend["cure.method"] := "wet" if input.cure.method == "sprinkled"
