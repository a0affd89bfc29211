package figure

import (
	"slices"

	"hearsay/internal/limit"
)

var curves = []limit.Cite{
	{Source: "aci-209", Where: "table 2.2.1, with the rate of ASTM C1074", Basis: limit.Memory},
	{Source: "carino", Where: "hyperbolic strength curve, with the rate of Freiesleben Hansen and Pedersen", Basis: limit.Memory},
	{Source: "en-1992", Where: "equations 3.2 and B.10", Basis: limit.Published},
	{Source: "schindler", Where: "heat of hydration", Basis: limit.Memory},
	{Source: "etl-365", Where: "equations A-2 and A-3, heat transfer to moving air", Basis: limit.Published},
}

const runMethod = "flow of heat through cover, concrete and ground by the hour, with heat of hydration"

// coldRunFigures are those that follow a placement in cold weather through time.
func coldRunFigures() []Figure {
	planned := slices.Concat(coldNeeds, []string{"protection.cover"})
	return []Figure{
		{
			Name: "hours_to_500", Title: "hours to 500 psi at the slab temperature predicted", Unit: "h",
			Method: runMethod + "; strength at the coldest place by three published pairs of curve and rate, and " +
				"{168 h} where it freezes before or a week does not bring it",
			Cites:  curves,
			Within: noContradiction,
			Ways:   coldWays(planned, slices.Concat(coverBounds, gainBounds), hoursTo500),
		},
		{
			Name: "hours_to_500_plain", Title: "hours to 500 psi without the accelerator", Unit: "h",
			Method: "as the hours to 500 psi, without an accelerator",
			Cites:  curves,
			Within: noContradiction,
			Ways:   coldWays(planned, slices.Concat(coverBounds, gainBounds[:2]), hoursTo500Plain),
		},
		{
			Name: "freeze_hour", Title: "hour the uncovered concrete first reaches freezing: top, bottom or edge", Unit: "h",
			Method: runMethod + "; {336 h}, twice the week that is followed, where it does not freeze",
			Cites:  curves[3:],
			Within: noContradiction,
			Ways:   coldWays(coldNeeds, nil, freezeHour),
		},
		{
			Name: "lowest_surface", Title: "lowest temperature of the uncovered top or edge in three days", Unit: "F",
			Method: runMethod,
			Cites:  curves[3:],
			Within: noContradiction,
			Ways:   coldWays(coldNeeds, nil, lowestSurface),
		},
		{
			Name: "lowest_with_cover", Title: "lowest slab temperature in three days with the cover planned", Unit: "F",
			Method: runMethod,
			Cites:  curves[3:],
			Within: noContradiction,
			Ways:   coldWays(planned, coverBounds, lowestWithCover),
		},
		{
			Name: "strength_when_cover_comes_off", Title: "strength when the cover comes off", Unit: "psi",
			Method: runMethod + "; strength at the coldest place by three published pairs of curve and rate",
			Cites:  curves,
			Within: noContradiction,
			Ways:   coldWays(slices.Concat(planned, []string{"protection.days", "order.strength"}), slices.Concat(coverBounds, gainBounds[1:]), strengthThen),
		},
	}
}
