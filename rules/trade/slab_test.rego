package trade_test

test_slab_on_ground if {
	data.trade.slab_on_ground with input as {"member": {"kind": "slab on ground"}}
	not data.trade.slab_on_ground with input as {"member": {"kind": "pad"}}
	not data.trade.slab_on_ground with input as {}
}

test_slab_jointed if {
	data.trade.jointed_slab with input as {"member": {"kind": "slab on ground"}, "joints": {"made": true}}
	not data.trade.jointed_slab with input as {"member": {"kind": "slab on ground"}, "joints": {"made": false}}
	not data.trade.jointed_slab with input as {"member": {"kind": "slab on ground"}}
	not data.trade.jointed_slab with input as {"member": {"kind": "wall"}, "joints": {"made": true}}
}

test_slab_steel_too_light if {
	data.trade.too_light_for_no_joints with input as {"steel": {"kind": "mesh"}}
	not data.trade.too_light_for_no_joints with input as {"steel": {"kind": "bars"}}
	data.trade.too_light_for_no_joints with input as {"steel": {"kind": "bars"}, "figure": {"steel_ratio": data.limit.steel.crack_control_ratio - 0.01}}
	not data.trade.too_light_for_no_joints with input as {"steel": {"kind": "bars"}, "figure": {"steel_ratio": data.limit.steel.crack_control_ratio}}
}
