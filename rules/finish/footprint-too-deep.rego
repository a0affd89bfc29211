# METADATA
# scope: package
# title: The machine goes on while footprints are still deep
# custom:
#   stage: during
#   severity: fix
#   why: "A machine on soft concrete digs, leaves waves and seals the top over water that has still to come out. A riding machine weighs more on less and needs it firmer than a walk-behind."
#   do: "Wait until a footprint is no deeper than the machine allows. Start by hand along the edges, where it sets first."
#   numbers: [largest indentation of a footprint]
package practice.finish["footprint-too-deep"]

here if {
	data.trade.flatwork
	input.finish.machine in {"walk-behind", "riding"}
}

wrong contains "the concrete is too soft for this machine" if {
	here
	input.finish.footprint > data.limit.finish.most_footprint[input.finish.machine]
}

number["largest indentation of a footprint"] := {"yours": "finish.footprint", "right": data.limit.finish.most_footprint[input.finish.machine]}

mend["finish.footprint"] := data.limit.finish.most_footprint[input.finish.machine]
