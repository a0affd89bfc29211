package figure

// scmFigures are the shares of supplementary materials in the cementitious material, and the alkalis they are set against.
func scmFigures() []Figure {
	share := func(name, fact, what string) Figure {
		return Figure{
			Name: name + "_share", Title: "share of " + what, Unit: "%",
			Method: "its mass over all cementitious material",
			Ways: []Way{
				{Needs: []string{"mix." + fact + "_share"}, Compute: func(c *Calc) (Value, error) { return Exact(c.Num("mix." + fact + "_share")), nil }},
				{Needs: []string{"mix." + fact, "figure.cementitious"}, Compute: func(c *Calc) (Value, error) {
					part, all := c.Num("mix."+fact), c.Figure("cementitious").Best
					c.Step("%s / %s = %s", Q(part, "lb/yd3"), Q(all, "lb/yd3"), Q(100*part/all, "%"))
					return Exact(100 * part / all), nil
				}},
			},
		}
	}
	sum := func(name, title string, parts ...string) Figure {
		return Figure{
			Name: name, Title: title, Unit: "%", Method: "shares added up",
			Ways: []Way{{Needs: parts, Compute: func(c *Calc) (Value, error) {
				total := 0.0
				for _, p := range parts {
					total += c.Figure(p[len("figure."):]).Best
				}
				c.Step("together %s", Q(total, "%"))
				return Exact(total), nil
			}}},
		}
	}
	return append(allowedFigures(),
		share("fly_ash", "fly_ash", "fly ash and other pozzolan"),
		share("slag", "slag", "slag cement"),
		share("silica_fume", "silica_fume", "silica fume"),
		sum("scm_share", "share of all supplementary materials", "figure.fly_ash_share", "figure.slag_share", "figure.silica_fume_share"),
		sum("pozzolan_share", "share of fly ash, other pozzolan and silica fume", "figure.fly_ash_share", "figure.silica_fume_share"),
	)
}

// allowedFigures are the shares and masses that deicing salt leaves of what is in the mix: each within its own share, and
// slag within what the others leave of all together.
func allowedFigures() []Figure {
	var all []Figure
	for _, one := range []struct{ name, what string }{{"fly_ash", "fly ash"}, {"slag", "slag"}, {"silica_fume", "silica fume"}} {
		needs := []string{"figure." + one.name + "_share"}
		if one.name == "slag" {
			needs = append(needs, "figure.fly_ash_allowed", "figure.silica_fume_allowed")
		}
		all = append(all,
			Figure{
				Name: one.name + "_allowed", Title: "share of " + one.what + " under deicing salt", Unit: "%", Private: true,
				Method: "what is there, at most the limit",
				Ways: []Way{{Needs: needs, Compute: func(c *Calc) (Value, error) {
					most, err := c.Limit("durability.scm", one.what)
					if err != nil {
						return Value{}, err
					}
					if one.name == "slag" {
						together, err := c.Limit("durability.scm_total", "all")
						if err != nil {
							return Value{}, err
						}
						most = min(most, together-c.Figure("fly_ash_allowed").Best-c.Figure("silica_fume_allowed").Best)
					}
					return Exact(min(c.Figure(one.name+"_share").Best, most)), nil
				}}},
			},
			Figure{
				Name: one.name + "_allowed_mass", Title: one.what + " in a yard under deicing salt", Unit: "lb/yd3", Private: true,
				Method: "allowed share of the cementitious material",
				Ways: []Way{{Needs: []string{"figure." + one.name + "_allowed", "figure.cementitious"}, Compute: func(c *Calc) (Value, error) {
					return Exact(c.Figure(one.name+"_allowed").Best / 100 * c.Figure("cementitious").Best), nil
				}}},
			})
	}
	masses := []string{"figure.cementitious", "figure.fly_ash_allowed_mass", "figure.slag_allowed_mass", "figure.silica_fume_allowed_mass"}
	return append(all, Figure{
		Name: "portland_allowed_mass", Title: "portland cement in a yard under deicing salt", Unit: "lb/yd3", Private: true,
		Method: "cementitious material less the allowed supplementary materials",
		Ways: []Way{{Needs: masses, Compute: func(c *Calc) (Value, error) {
			rest := c.Figure("cementitious").Best
			for _, m := range masses[1:] {
				rest -= c.Figure(m[len("figure."):]).Best
			}
			return Exact(rest), nil
		}}},
	})
}
