package reading_test

import (
	"errors"
	"fmt"

	"modeler/arithmetic/reading"
)

func ExampleRead() {
	r, err := reading.Read("56 ÷ 8 = ?")
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(r.Problem.Kind, r.Problem)
	for _, p := range r.Also {
		fmt.Println("or:", p)
	}
	// Output:
	// divide 56 ÷ 8
	// or: 56 in groups of 8
}

func ExampleError_Block() {
	_, err := reading.Read("23 45")
	var e *reading.Error
	if errors.As(err, &e) {
		fmt.Print(e.Block())
	}
	// Output:
	// there is no sign between the two numbers
	//
	//     23 45
	//     ^^^^^
	// hint: put + or - between them
	// try:  23 + 45
}

func ExampleRestorePlus() {
	fmt.Println(reading.RestorePlus("345 278"))
	fmt.Println(reading.RestorePlus("1 1/2 3/4"))
	// Output:
	// 345 + 278
	// 1 1/2 + 3/4
}
