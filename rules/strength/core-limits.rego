# METADATA
# scope: package
# title: Cores are judged by the limit for cylinders
# custom:
#   stage: after
#   severity: fix
#   engineer: true
#   why: "A core is cut from concrete that was placed, vibrated and cured on the site, and drilling hurts it; it tests lower than a cylinder of the very same concrete. Its limits are lower for that reason, not out of leniency."
#   do: "Take three cores for each doubtful place: the average has to reach the one share of the specified strength, and each core the other."
#   numbers: [average of the cores, lowest core, average as a share, lowest as a share]
package practice.strength["core-limits"]

here if input.strength.cores_judged_by in {"cylinder limit", "core limit"}

wrong contains "cores need not reach the full specified strength" if input.strength.cores_judged_by == "cylinder limit"

number["average of the cores"] := {"yours": "figure.core_average", "right": "figure.core_average_least"}

number["lowest core"] := {"yours": "figure.lowest_core", "right": "figure.core_single_least"}

number["average as a share"] := {"yours": "figure.core_average_share", "right": data.limit.strength.core_average, "unit": "%"}

number["lowest as a share"] := {"yours": "figure.lowest_core_share", "right": data.limit.strength.core_single, "unit": "%"}

mend["strength.cores_judged_by"] := "core limit"
