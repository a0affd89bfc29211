package trade_test

test_flatwork if {
	data.trade.flatwork with input as {"member": {"kind": "slab on ground"}}
	data.trade.flatwork with input as {"member": {"kind": "suspended slab"}}
	data.trade.flatwork with input as {"member": {"kind": "topping"}}
	not data.trade.flatwork with input as {"member": {"kind": "wall"}}
	not data.trade.flatwork with input as {"member": {"kind": "pad"}}
	not data.trade.flatwork with input as {"member": {}}
}
