package quantity

// unit is one row of the tables of units.
type unit struct {
	symbol  string  // canonical symbol
	kind    Kind    //
	factor  float64 // size in the base unit of the kind: base = (value - zero) * factor
	us, si  string  // natural unit in each system; "" where there is none
	show    string  // printed form; "" where it follows from the symbol
	aliases string  // further spellings, parted by |
	zero    float64 // value at which the base unit is 0; for temperatures only
}

// Sizes of the units that the tables are built from, in SI base units. All
// are exact by definition.
const (
	inch  = 0.0254
	foot  = 12 * inch
	yard  = 3 * foot
	mile  = 5280 * foot
	gal   = 231 * inch * inch * inch
	flOz  = gal / 128
	litre = 1e-3
	in2   = inch * inch
	ft2   = foot * foot
	yd2   = yard * yard
	in3   = in2 * inch
	ft3   = ft2 * foot
	yd3   = yd2 * yard
	hour  = 3600
	day   = 24 * hour
	month = 30.4375 * day
)

// spaceUnits are the units of length, area, volume, time and what is made of
// those alone. Bases: m, m2, m3, s.
var spaceUnits = []unit{
	{"in", Length, inch, "in", "mm", "", "''", 0},
	{"ft", Length, foot, "ft", "m", "", "lineal ft|linear ft|lin ft", 0},
	{"yd", Length, yard, "yd", "m", "", "", 0},
	{"mi", Length, mile, "mi", "km", "", "", 0},
	{"mil", Length, inch / 1000, "mil", "mm", "", "", 0},
	{"um", Length, 1e-6, "mil", "um", "", "", 0},
	{"mm", Length, 1e-3, "in", "mm", "", "", 0},
	{"cm", Length, 1e-2, "in", "cm", "", "", 0},
	{"m", Length, 1, "ft", "m", "", "", 0},
	{"km", Length, 1e3, "mi", "km", "", "", 0},

	{"in2", Area, in2, "in2", "mm2", "", "", 0},
	{"ft2", Area, ft2, "ft2", "m2", "", "", 0},
	{"yd2", Area, yd2, "yd2", "m2", "", "", 0},
	{"acre", Area, 43560 * ft2, "acre", "ha", "", "", 0},
	{"mm2", Area, 1e-6, "in2", "mm2", "", "", 0},
	{"cm2", Area, 1e-4, "in2", "cm2", "", "", 0},
	{"m2", Area, 1, "ft2", "m2", "", "", 0},
	{"ha", Area, 1e4, "acre", "ha", "", "", 0},

	{"in3", Volume, in3, "in3", "cm3", "", "", 0},
	{"ft3", Volume, ft3, "ft3", "m3", "", "", 0},
	{"yd3", Volume, yd3, "yd3", "m3", "", "", 0},
	{"gal", Volume, gal, "gal", "L", "", "U.S. gal|U.S. gallon|U.S. gallons", 0},
	{"qt", Volume, gal / 4, "qt", "L", "", "", 0},
	{"pt", Volume, gal / 8, "pt", "L", "", "", 0},
	{"fl oz", Volume, flOz, "fl oz", "mL", "", "", 0},
	{"imp gal", Volume, 4.54609e-3, "gal", "L", "", "UK gal|UK gallon|UK gallons", 0},
	{"mL", Volume, 1e-6, "fl oz", "mL", "", "", 0},
	{"cm3", Volume, 1e-6, "in3", "cm3", "", "", 0},
	{"L", Volume, litre, "gal", "L", "", "", 0},
	{"m3", Volume, 1, "yd3", "m3", "", "", 0},

	{"s", Time, 1, "", "", "", "", 0},
	{"min", Time, 60, "", "", "", "", 0},
	{"h", Time, hour, "", "", "", "", 0},
	{"d", Time, day, "", "", "days", "", 0},
	{"week", Time, 7 * day, "", "", "weeks", "", 0},
	{"month", Time, month, "", "", "months", "", 0},
	{"year", Time, 12 * month, "", "", "years", "", 0},

	{"mph", Speed, mile / hour, "mph", "km/h", "", "mi/h", 0},
	{"ft/s", Speed, foot, "ft/s", "m/s", "", "fps", 0},
	{"ft/min", Speed, foot / 60, "ft/min", "m/min", "", "fpm", 0},
	{"ft/h", Speed, foot / hour, "ft/h", "m/h", "", "", 0},
	{"in/h", Speed, inch / hour, "in/h", "mm/h", "", "", 0},
	{"kn", Speed, 1852.0 / hour, "kn", "km/h", "", "nautical miles per hour", 0},
	{"m/s", Speed, 1, "mph", "m/s", "", "", 0},
	{"m/min", Speed, 1.0 / 60, "ft/min", "m/min", "", "", 0},
	{"m/h", Speed, 1.0 / hour, "ft/h", "m/h", "", "", 0},
	{"mm/h", Speed, 1e-3 / hour, "in/h", "mm/h", "", "", 0},
	{"km/h", Speed, 1e3 / hour, "mph", "km/h", "", "kph|kmh|kmph", 0},

	{"Hz", Frequency, 1, "", "", "", "cycles per second|cycles/s", 0},
	{"rpm", Frequency, 1.0 / 60, "", "", "", "rev/min", 0},
	{"vpm", Frequency, 1.0 / 60, "", "", "", "vibrations/min|vibrations per minute", 0},

	{"yd3/h", Rate, yd3 / hour, "yd3/h", "m3/h", "", "yd/h", 0},
	{"ft3/h", Rate, ft3 / hour, "ft3/h", "m3/h", "", "", 0},
	{"ft3/min", Rate, ft3 / 60, "ft3/min", "m3/min", "", "cfm", 0},
	{"gal/min", Rate, gal / 60, "gal/min", "L/min", "", "gpm", 0},
	{"gal/h", Rate, gal / hour, "gal/h", "L/h", "", "gph", 0},
	{"m3/h", Rate, 1.0 / hour, "yd3/h", "m3/h", "", "", 0},
	{"m3/min", Rate, 1.0 / 60, "ft3/min", "m3/min", "", "", 0},
	{"L/s", Rate, litre, "gal/min", "L/s", "", "", 0},
	{"L/min", Rate, litre / 60, "gal/min", "L/min", "", "lpm", 0},
	{"L/h", Rate, litre / hour, "gal/h", "L/h", "", "", 0},

	{"ft2/h", AreaPerTime, ft2 / hour, "ft2/h", "m2/h", "", "", 0},
	{"ft2/d", AreaPerTime, ft2 / day, "ft2/d", "m2/d", "", "", 0},
	{"m2/h", AreaPerTime, 1.0 / hour, "ft2/h", "m2/h", "", "", 0},
	{"m2/d", AreaPerTime, 1.0 / day, "ft2/d", "m2/d", "", "", 0},
	{"mm2/s", AreaPerTime, 1e-6, "ft2/h", "mm2/s", "", "", 0},

	{"in2/ft", SteelArea, in2 / foot, "in2/ft", "mm2/m", "", "", 0},
	{"mm2/m", SteelArea, 1e-6, "in2/ft", "mm2/m", "", "", 0},
	{"ft2/gal", Coverage, ft2 / gal, "ft2/gal", "m2/L", "", "", 0},
	{"m2/L", Coverage, 1 / litre, "ft2/gal", "m2/L", "", "", 0},
	{"gal/ft2", Application, gal / ft2, "gal/ft2", "L/m2", "", "", 0},
	{"gal/100 ft2", Application, gal / ft2 / 100, "gal/100 ft2", "L/m2", "", "", 0},
	{"L/m2", Application, litre, "gal/100 ft2", "L/m2", "", "", 0},
	{"mpg", Fuel, mile / gal, "mpg", "km/L", "", "mi/gal", 0},
	{"km/L", Fuel, 1e3 / litre, "mpg", "km/L", "", "", 0},

	{"in/ft", Slope, 1.0 / 12, "in/ft", "mm/m", "", "", 0},
	{"mm/m", Slope, 1e-3, "in/ft", "mm/m", "", "", 0},
	{"% slope", Slope, 1e-2, "", "", "", "% grade|percent slope|percent grade", 0},
	{"deg", Angle, 1, "", "", "°", "", 0},
	{"rad", Angle, 57.295779513082320876798154814105170332405472466564, "", "", "", "", 0},
}
