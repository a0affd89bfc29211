package heat

// matter is how the heat content of a cell depends on its temperature. Heat counts from the temperature at which
// freezing begins, in the liquid state: J/m³.
type matter struct {
	liquid, solid float64 // heat capacity, J/m³·K
	latent        float64 // J/m³
	begin, end    float64 // °C at which freezing begins and ends
}

// soilRange is the range below 0 °C in which the water of soil is taken to freeze, K. Sand freezes within less, clay
// within more.
const soilRange = 0.25

// concreteRange is the range in which the free water of young concrete is taken to freeze, K: as water turns to ice the
// rest grows saltier.
const concreteRange = 2.0

func (m *matter) heat(celsius float64) float64 {
	t := celsius - m.begin
	switch {
	case t >= 0:
		return m.liquid * t
	case celsius > m.end:
		return m.slush() * t
	}
	return m.slush()*(m.end-m.begin) + m.solid*(celsius-m.end)
}

func (m *matter) celsius(heat float64) float64 {
	if heat >= 0 {
		return m.begin + heat/m.liquid
	}
	full := m.slush() * (m.end - m.begin)
	if heat > full {
		return m.begin + heat/m.slush()
	}
	return m.end + (heat-full)/m.solid
}

// capacity is the heat for a degree more at a heat content, J/m³·K.
func (m *matter) capacity(heat float64) float64 {
	switch {
	case heat >= 0:
		return m.liquid
	case heat > m.slush()*(m.end-m.begin):
		return m.slush()
	}
	return m.solid
}

// slush is the capacity while freezing: latent heat and the mean of both capacities.
func (m *matter) slush() float64 {
	return m.latent/(m.begin-m.end) + (m.liquid+m.solid)/2
}

// ice is the share that is frozen.
func (m *matter) ice(celsius float64) float64 {
	switch {
	case celsius >= m.begin:
		return 0
	case celsius <= m.end:
		return 1
	}
	return (m.begin - celsius) / (m.begin - m.end)
}

func (s Soil) matter() matter {
	return matter{liquid: s.HeatThawed(), solid: s.HeatFrozen(), latent: s.LatentHeat(), begin: 0, end: -soilRange}
}

// matter of concrete at a degree of hydration: what is chemically bound and held in gel (0.23 and 0.19 of the hydrated
// cement, Powers and Brownyard) does not freeze.
func (c Concrete) matter(degree float64) matter {
	capacity := c.Density * c.SpecificHeat
	free := c.Water - (0.23+0.19)*degree*c.Cementitious
	if free < 0 {
		free = 0
	}
	return matter{liquid: capacity, solid: capacity - free*(waterHeat-iceHeat), latent: free * iceFusion,
		begin: c.Freezing, end: c.Freezing - concreteRange}
}
