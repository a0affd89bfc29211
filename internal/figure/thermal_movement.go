package figure

import "hearsay/internal/limit"

// movementFigures are those of lengths that change: with temperature over a member, with drying at a joint.
func movementFigures() []Figure {
	pca := []limit.Cite{{Source: "pca", Where: "chapter 15", Basis: limit.Published}}
	return []Figure{
		{
			Name: "thermal_movement", Title: "shortening of the member by cooling", Unit: "in",
			Method: "length times thermal expansion times the fall of temperature, free to move",
			Cites:  []limit.Cite{{Source: "concrete-construction", Where: "Thermal movement of slabs", Basis: limit.Published}},
			Ways: []Way{{
				Needs:    []string{"member.length", "joints.cooling"},
				Sharpens: []Bound{{Fact: "mix.thermal_expansion", Lowest: 3.8, Highest: 7.0}},
				Compute: func(c *Calc) (Value, error) {
					length, fall, k := c.Num("member.length"), c.Num("joints.cooling"), c.Num("mix.thermal_expansion")
					v := length * 12 * fall * k / 1e6
					c.Step("%s × %s × %s = %s", Q(length, "ft"), Q(fall, "dF"), Q(k, "millionths/F"), Q(v, "in"))
					return Exact(v), nil
				},
			}},
		},
		{
			Name: "joint_opening", Title: "joint opening by drying", Unit: "in",
			Method: "joint spacing times drying shrinkage, free to move",
			Cites:  pca,
			Ways: []Way{{Needs: []string{"joints.spacing", "figure.shrinkage"}, Compute: func(c *Calc) (Value, error) {
				spacing, strain := c.Num("joints.spacing"), c.Figure("shrinkage").Best
				v := spacing * 12 * strain / 1e6
				c.Step("%s × %s = %s", Q(spacing, "ft"), Q(strain, "millionths"), Q(v, "in"))
				lost, err := c.Limit("joints.interlock_lost")
				if v > lost {
					c.Step("beyond %s the stones of the two faces no longer carry load across: dowels do", Q(lost, "in"))
				}
				c.Assume("every joint moves; where some stay shut the others open wider")
				return Exact(v), err
			}}},
		},
		{
			Name: "joint_opening_to_come", Title: "joint opening still to come after filling", Unit: "in",
			Method: "joint opening by drying times the share of the shrinkage still to come",
			Cites:  pca,
			Ways: []Way{{Needs: []string{"figure.joint_opening", "figure.shrinkage_to_come"}, Compute: func(c *Calc) (Value, error) {
				all, share := c.Figure("joint_opening").Best, c.Figure("shrinkage_to_come")
				c.Step("%s × %s to %s = %s to %s", Q(all, "in"), Q(share.Low, "%"), Q(share.High, "%"), Q(all*share.Low/100, "in"), Q(all*share.High/100, "in"))
				return Between(all*share.Low/100, all*share.Best/100, all*share.High/100), nil
			}}},
		},
	}
}
