# METADATA
# scope: package
# title: It is placed on frozen ground
# custom:
#   stage: before
#   severity: stop
#   costs: [tear_out_cost]
#   why: "Frozen ground holds more water than it can carry when it thaws. It chills the bottom of the slab, then melts from above into mud and settles unevenly, and the slab over it cracks. The warmth of fresh concrete thaws an inch or two of it, and freezes doing so."
#   do: "Thaw it all the way down with a hydronic heater under blankets, compact what has softened, and keep it covered until the truck is there. Scrape off snow and ice."
#   numbers: [depth of frost, depth thawed, hours of thawing still needed]
#   act: true
package practice.ground.frozen

here if input.ground.state in {"frozen", "thawed"}

wrong contains "the ground is frozen" if {
	here
	input.ground.state == "frozen"
}

number["depth of frost"] := {"yours": "ground.frost_depth", "right": 0}

number["depth thawed"] := {"yours": "ground.thawed_depth", "right": "ground.frost_depth"}

number["hours of thawing still needed"] := {"yours": "ground.thaw_hours", "right": "figure.thaw_hours_needed"}

mend["ground.state"] := "thawed"

mend["ground.frost_depth"] := 0 if input.ground.frost_depth > 0

mend["ground.temperature"] := data.limit.ground.freezing if input.ground.temperature < data.limit.ground.freezing
