package figure

// fields lists the figures field by field. A new field adds its line here; a new figure of a field adds nothing.
func fields() [][]Figure {
	return [][]Figure{
		mixFigures(),
		waterFigures(),
		gallonFigures(),
		slumpFigures(),
		mixingWaterFigures(),
		ratioFigures(),
		volumeFigures(),
		aggregateFigures(),
		moistureFigures(),
		yieldFigures(),
		airFigures(),
		leastFigures(),
		proportionFigures(),
		costFigures(),
		evaporationFigures(),
		dryingFigures(),
		settingFigures(),
		deliveryFigures(),
		curingFigures(),
		finishingFigures(),
	}
}
