package heat

import (
	"errors"
	"math"
)

// Ingredients is what a batch is made of: masses in one unit throughout (kg or kg/m³), temperatures in °C. Water on the
// aggregate is counted apart from the aggregate, and is ice where the aggregate is below freezing.
type Ingredients struct {
	Cement, CementAt       float64
	Aggregate, AggregateAt float64
	Moisture               float64 // free water on the aggregate, at its temperature
	Water, WaterAt         float64
	Ice                    float64 // at 0 °C
}

// solidHeat is the specific heat of cement and aggregate over that of water, and of ice (ACI 305R, ACI 306R).
const (
	solidHeat  = 0.22
	iceRatio   = 0.5
	iceFusionC = 80.0 // heat of fusion over the specific heat of water, K (144 °F·lb: ACI 305R)
)

// balance gives the heat content, in units of water warmed by a degree from 0 °C, and the capacity when all is liquid.
func (m Ingredients) balance() (content, capacity float64) {
	content = solidHeat*(m.Cement*m.CementAt+m.Aggregate*m.AggregateAt) + m.Water*m.WaterAt - iceFusionC*m.Ice
	if m.AggregateAt < 0 {
		content += m.Moisture * (iceRatio*m.AggregateAt - iceFusionC)
	} else {
		content += m.Moisture * m.AggregateAt
	}
	return content, solidHeat*(m.Cement+m.Aggregate) + m.Water + m.Moisture + m.Ice
}

// Temperature of the concrete as mixed, °C, by a heat balance of the ingredients (ACI 305R, appendix A; ACI 306R,
// chapter 3, for frozen moisture). The error is where the ice would not all melt.
func (m Ingredients) Temperature() (float64, error) {
	content, capacity := m.balance()
	if capacity <= 0 {
		return 0, errors.New("the batch has no mass")
	}
	if content < 0 {
		return 0, errors.New("the ice would not all melt: use less of it or warmer ingredients")
	}
	return content / capacity, nil
}

// WaterFor is the temperature of the mixing water that gives the concrete a temperature, both in °C. It may come out
// above boiling or below freezing, which means that water alone cannot do it.
func (m Ingredients) WaterFor(celsius float64) (float64, error) {
	if m.Water <= 0 {
		return 0, errors.New("there is no mixing water whose temperature could be chosen")
	}
	m.WaterAt = 0
	content, capacity := m.balance()
	return (celsius*capacity - content) / m.Water, nil
}

// IceFor is the mass of ice to be put in place of as much mixing water so that the concrete comes to a temperature in
// °C: 0 where it does not need any. It may come out above the mixing water, which means that ice alone cannot do it.
func (m Ingredients) IceFor(celsius float64) float64 {
	content, capacity := m.balance()
	// An exchange of a mass x takes away x·(80 + water temperature) and leaves the capacity as it is.
	return math.Max(0, (content-celsius*capacity)/(iceFusionC+m.WaterAt))
}

// AggregateFor is the temperature of the aggregate that gives the concrete a temperature, both in °C; valid when it
// comes out above freezing.
func (m Ingredients) AggregateFor(celsius float64) float64 {
	m.AggregateAt = 0
	content, capacity := m.balance()
	return (celsius*capacity - content) / (solidHeat*m.Aggregate + m.Moisture)
}

// DeliveryLoss is how much concrete cools in so many hours of delivery, K, when it is to arrive at celsius through air at
// air °C: 0.25 of the difference an hour in a revolving drum (ACI 306R-88, 3.8, after Petersons, 1966).
func DeliveryLoss(celsius, air, hours float64) float64 {
	return math.Max(0, 0.25*(celsius-air)*hours)
}
