# METADATA
# scope: package
# title: Slump lost to heat is made up with water
# custom:
#   stage: during
#   severity: fix
#   costs: [reducer_route_cost]
#   why: "Heat and haul take slump, and a hose gives it back at the price of strength, cracks and dusting. The stiffness comes from setting and drying; water hides it for a quarter of an hour."
#   do: "Bring the slump back with a water reducer, order a retarder or hydration stabilizer for the next loads, send smaller loads closer together, and have the concrete cooled."
#   numbers: [slump lost to the heat of the concrete, slump that a water reducer gives back]
package practice.hot["slump-loss-by-water"]

here if input.water.added > 0

wrong contains "water stands in for slump lost to heat or haul" if {
	here
	input.water.purpose == "lost to heat"
}

number["slump lost to the heat of the concrete"] := {"yours": "figure.slump_lost_to_heat"}

number["slump that a water reducer gives back"] := {"right": "figure.reducer_slump_gain"}

mend["water.added"] := 0

mend["water.purpose"] := "none"
