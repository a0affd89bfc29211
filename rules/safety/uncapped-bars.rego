# METADATA
# scope: package
# title: Upright bars stand uncapped
# custom:
#   stage: before
#   severity: stop
#   why: "Somebody who stumbles onto an upright bar is run through by it, from a fall no higher than his own height."
#   do: "Cap, bend over or fence off every bar that somebody could fall on, of any size and length, with covers made to stop a body; the round plastic caps stop scratches only."
#   cautions: [impalement]
package practice.safety["uncapped-bars"]

here if input.safety.upright_bars == true

wrong contains "somebody could fall on them" if {
	input.safety.upright_bars == true
	input.safety.bars_capped == false
}

mend["safety.bars_capped"] := true
