// Package heat owns the temperature and the strength of young concrete through time: weather, heat flow through cover,
// concrete and ground, heat of hydration, frost in soil, maturity and strength, and what follows from them. It knows
// nothing of jobs, facts or rules.
//
// Everything is in SI: °C, m, kg/m³, W/m·K, J/kg·K, m²·K/W, and hours. Strengths may be in any unit, the same throughout
// one call.
package heat

import (
	"errors"
	"fmt"
)

// Section is what heat flows through, from the top (or the outer face of a wall) to the far side.
type Section struct {
	Concrete  Concrete
	Thickness float64 // of the concrete, m; 0 for bare ground
	Ground    []Layer // below the concrete, top first; none: the far face stands in air
	Edge      *Edge   // the strip along a free edge is followed too; nil: it is not
}

// Concrete is the fresh concrete as placed.
type Concrete struct {
	Celsius      float64 // temperature as placed, °C
	Density      float64 // kg/m³
	SpecificHeat float64 // J/kg·K
	Conductivity float64 // W/m·K
	Cementitious float64 // kg/m³
	Water        float64 // free mixing water, kg/m³; what is not bound yet can freeze
	Heat         Hydration
	Freezing     float64 // °C at which its water begins to freeze, a little below 0
}

// NormalConcrete gives normal-weight concrete of the usual thermal properties: 2350 kg/m³, 1000 J/kg·K (about
// 0.24 Btu/lb·°F, fresh concrete with its water: ACI 306R, ACI 207.2R) and 2.2 W/m·K (ACI 207.2R gives 1.7 to 3.5 by
// aggregate). Its water begins to freeze at -1 °C (dissolved alkalis lower it by 0.5 to 2 °C; Korhonen, CRREL).
// Cementitious material and water are in kg/m³, temperature in °C.
func NormalConcrete(celsius, cementitious, water float64, cement Cement) Concrete {
	return Concrete{
		Celsius: celsius, Density: 2350, SpecificHeat: 1000, Conductivity: 2.2,
		Cementitious: cementitious, Water: water, Heat: cement.Hydration(water / cementitious), Freezing: -1,
	}
}

// Layer is a layer of ground, its temperature at the start running straight from Top to Bottom, °C. The ground below
// the last layer keeps that layer's Bottom temperature throughout.
type Layer struct {
	Soil        Soil
	Thickness   float64 // m
	Top, Bottom float64 // °C
}

// Face is what one face of the section meets.
type Face struct {
	Kind    FaceKind
	R       float64 // of the cover on it, m²·K/W
	Sky     float64 // share of the sky it sees: 1 a slab, 0.5 a wall, 0 an underside
	Celsius float64 // of the air in an enclosure, or at which the face is held
}

// FaceKind says what sets the temperature outside a face.
type FaceKind int

// The kinds of face.
const (
	Outdoors FaceKind = iota // the weather: air, wind, sky and sun
	Enclosed                 // still air of the temperature Celsius
	Held                     // the outside of the cover is held at Celsius
)

// Edge is a free edge of a slab. The strip along it, half as wide as the concrete is thick, loses heat through its top
// and through the side, and gains some from the slab beside it.
type Edge struct{ R float64 } // cover on the side, m²·K/W

// Change sets what the faces meet from an hour on.
type Change struct {
	Hour     float64
	Top, Far Face // Far counts only where there is no ground
}

// Span is how long to run and how finely.
type Span struct {
	Hours float64 // > 0
	Step  float64 // longest time step, h; 0: a quarter of an hour
	Every float64 // hours between records; 0: one hour
	Cells int     // cells through the concrete; 0: twelve
}

func (s Span) filled() Span {
	if s.Step == 0 {
		s.Step = 0.25
	}
	if s.Every == 0 {
		s.Every = 1
	}
	if s.Cells == 0 {
		s.Cells = 12
	}
	return s
}

func check(s Section, plan []Change, span Span) error {
	c := s.Concrete
	switch {
	case !(span.Hours > 0) || !(span.Step > 0) || !(span.Every > 0) || span.Cells < 1:
		return errors.New("a run needs hours, a step and a record interval above zero")
	case len(plan) == 0 || plan[0].Hour > 0:
		return errors.New("the first change of the plan must say what the faces meet from hour 0")
	case s.Thickness == 0 && len(s.Ground) == 0:
		return errors.New("the section has neither concrete nor ground")
	case !(s.Thickness >= 0):
		return fmt.Errorf("a thickness of %g m is not possible", s.Thickness)
	case s.Thickness > 0 && !(c.Density > 0 && c.SpecificHeat > 0 && c.Conductivity > 0):
		return errors.New("the concrete needs density, specific heat and conductivity above zero")
	case s.Thickness > 0 && !(c.Cementitious >= 0 && c.Water >= 0 && c.Freezing <= 0):
		return errors.New("the concrete needs cementitious material and water of zero or more and a freezing point of at most 0 °C")
	}
	for i := range plan {
		if i > 0 && plan[i].Hour <= plan[i-1].Hour {
			return fmt.Errorf("change %d of the plan comes at hour %g, not after the one before it", i+1, plan[i].Hour)
		}
		if plan[i].Top.R < 0 || plan[i].Far.R < 0 {
			return fmt.Errorf("change %d of the plan has a cover of negative R", i+1)
		}
	}
	for i, l := range s.Ground {
		if !(l.Thickness > 0) || !(l.Soil.Density > 0) || !(l.Soil.Thawed > 0) || !(l.Soil.Frozen > 0) {
			return fmt.Errorf("layer %d of the ground needs thickness, dry density and conductivities above zero", i+1)
		}
	}
	return nil
}
