package trade_test

test_ground if {
	data.trade.on_ground with input as {"member": {"kind": "slab on ground"}}
	data.trade.on_ground with input as {"member": {"kind": "footing"}}
	data.trade.on_ground with input as {"member": {"kind": "pad"}}
	not data.trade.on_ground with input as {"member": {"kind": "topping"}}
	not data.trade.on_ground with input as {"member": {"kind": "suspended slab"}}
	not data.trade.on_ground with input as {"member": {}}
}
