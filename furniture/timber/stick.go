package timber

import (
	"fmt"
	"strconv"
	"strings"

	"bunkwright/room/length"
)

// StockLengths returns the lengths that sticks of softwood are usually sold in, shortest first. Basis: memory of common
// practice; the shop decides.
func StockLengths() []length.Length { return must(feet(rule("lr-12")["value"])) }

func feet(text string) ([]length.Length, error) {
	var out []length.Length
	for _, word := range strings.Fields(text) {
		n, err := strconv.Atoi(word)
		if err != nil || n <= 0 || n > 100 {
			return nil, fmt.Errorf("%q is no stock length in feet", word)
		}
		out = append(out, length.Length(n)*length.Foot)
	}
	return out, nil
}
