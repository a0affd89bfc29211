package heat

import "math"

// Soil is the ground or a base course.
type Soil struct {
	Density  float64 // dry, kg/m³
	Moisture float64 // water by dry mass, a fraction
	Thawed   float64 // conductivity thawed, W/m·K
	Frozen   float64 // conductivity frozen, W/m·K
}

// Heat capacities and latent heat of soil: mineral 0.17 Btu/lb·°F, ice half of water, 144 Btu/lb of water frozen
// (TM 5-852-6 / UFC 3-130-06).
const (
	mineralHeat = 0.17 * 4186.8 // J/kg·K
	waterHeat   = 4186.8        // J/kg·K
	iceHeat     = waterHeat / 2 // J/kg·K
	iceFusion   = 144 * 2326    // J/kg
)

// LatentHeat is the heat that freezing all of its water sets free, J/m³.
func (s Soil) LatentHeat() float64 { return iceFusion * s.Density * s.Moisture }

// HeatThawed is the heat capacity with liquid water, J/m³·K.
func (s Soil) HeatThawed() float64 { return s.Density * (mineralHeat + waterHeat*s.Moisture) }

// HeatFrozen is the heat capacity with ice, J/m³·K.
func (s Soil) HeatFrozen() float64 { return s.Density * (mineralHeat + iceHeat*s.Moisture) }

// Grain tells the two families of Kersten's equations apart.
type Grain int

// The grains.
const (
	Coarse Grain = iota // sand, gravel, crushed stone
	Fine                // silt and clay
)

// Kersten gives soil its conductivities from dry density (kg/m³) and moisture (fraction) by the equations of
// M. S. Kersten, University of Minnesota Bulletin 28, 1949, as in TM 5-852-6. They hold for 1 % moisture and more in
// sand, 7 % and more in silt and clay; drier soil is taken at that bound, which does not understate its conductivity.
func Kersten(g Grain, density, moisture float64) Soil {
	const pcf = 16.018463             // kg/m³ in a lb/ft³
	const unit = 0.1442279            // W/m·K in a Btu·in/h·ft²·°F
	d, w := density/pcf, 100*moisture // the equations are in lb/ft³ and per cent
	var thawed, frozen float64
	if g == Coarse {
		w = math.Max(w, 1)
		thawed = (0.7*math.Log10(w) + 0.4) * math.Pow(10, 0.01*d)
		frozen = 0.076*math.Pow(10, 0.013*d) + 0.032*math.Pow(10, 0.0146*d)*w
	} else {
		w = math.Max(w, 7)
		thawed = (0.9*math.Log10(w) - 0.2) * math.Pow(10, 0.01*d)
		frozen = 0.01*math.Pow(10, 0.022*d) + 0.085*math.Pow(10, 0.008*d)*w
	}
	return Soil{Density: density, Moisture: moisture, Thawed: thawed * unit, Frozen: frozen * unit}
}
