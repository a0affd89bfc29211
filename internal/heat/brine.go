package heat

// FreezingDrop is how far a salt lowers the freezing point of water, K, as an ideal solution: 1.86 K for each mole of
// particles in a kilogram of water. ratio is salt over water by mass, mole its molar mass in g/mol, ions the particles a
// unit of it falls apart into. It holds for weak solutions; a strong one of calcium chloride freezes lower.
func FreezingDrop(ratio, mole float64, ions int) float64 {
	const perMole = 1.86
	return perMole * float64(ions) * 1000 * ratio / mole
}
