# METADATA
# scope: package
# title: Salt is spread to thaw the ground
# custom:
#   stage: before
#   severity: stop
#   why: "Salt melts the top and leaves brine in the base. It draws into the fresh concrete, hastens its bottom, rusts steel and pipes for years, and the ground below stays frozen."
#   do: "Scrape the salt off with the soil it has wetted, and thaw with a hydronic heater under blankets or warm air under a tarp."
package practice.ground["thawed-with-chloride"]

here if input.ground.thaw_method in {"blankets", "hydronic heater", "hot air", "salt", "straw"}

wrong contains "salt goes where concrete will lie" if {
	here
	input.ground.thaw_method == "salt"
}

mend["ground.thaw_method"] := "hydronic heater"
