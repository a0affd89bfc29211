package quantity_test

import (
	"fmt"

	"hearsay/internal/quantity"
)

func ExampleParseAs() {
	q, err := quantity.ParseAs("3 ft 6 in", "in")
	fmt.Println(q, err)
	_, err = quantity.ParseAs("9", "yd3")
	fmt.Println(err)
	// Output:
	// {42 in} <nil>
	// "9" has no unit: write 9 yd3 or 7 m3
}

func ExampleQuantity_Print() {
	q := quantity.Quantity{Value: 3500, Unit: "psi"}
	fmt.Println(q.Print(quantity.US), "is", q.Print(quantity.SI))
	// Output: 3,500 psi is 24.1 MPa
}

func ExampleSize() {
	fmt.Println(quantity.Size("10x12 ft by 4 in"))
	// Output: [{10 ft} {12 ft} {4 in}] <nil>
}
