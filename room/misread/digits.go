package misread

import (
	"strconv"

	"bunkwright/room/length"
)

// lookAlikes are digits taken for each other, by hand or upside down.
var lookAlikes = [][2]byte{{'6', '9'}, {'1', '7'}, {'4', '9'}}

// swapped returns a length with any two unequal digits of its whole inches, or whole millimetres, exchanged.
func swapped(l, unit length.Length) []length.Length {
	return eachDigits(l, unit, func(digits []byte) [][]byte {
		var out [][]byte
		for i := range digits {
			for j := i + 1; j < len(digits); j++ {
				if digits[i] != digits[j] {
					d := append([]byte(nil), digits...)
					d[i], d[j] = d[j], d[i]
					out = append(out, d)
				}
			}
		}
		return out
	})
}

// mistaken returns a length with one digit of its whole inches or millimetres taken for its look-alike.
func mistaken(l, unit length.Length) []length.Length {
	out := eachDigits(l, unit, mistakenDigits)
	if unit == length.Inch && l >= length.Foot { // as it may be written with feet: 11 ft 6 for 11 ft 9
		for _, in := range eachDigits(l%length.Foot, unit, mistakenDigits) {
			if in < length.Foot {
				out = append(out, l-l%length.Foot+in)
			}
		}
	}
	return out
}

func mistakenDigits(digits []byte) [][]byte {
	var out [][]byte
	for i, d := range digits {
		for _, pair := range lookAlikes {
			for k := range pair {
				if d == pair[k] {
					other := append([]byte(nil), digits...)
					other[i] = pair[1-k]
					out = append(out, other)
				}
			}
		}
	}
	return out
}

// eachDigits changes the digits of the whole units of a length; what would begin with a zero is no number somebody read.
func eachDigits(l, unit length.Length, change func([]byte) [][]byte) []length.Length {
	if l < 0 {
		return nil
	}
	var out []length.Length
	for _, d := range change([]byte(strconv.FormatInt(int64(l/unit), 10))) {
		n, err := strconv.ParseInt(string(d), 10, 64)
		if d[0] != '0' && err == nil && length.Length(n) < length.Max/unit {
			out = append(out, length.Length(n)*unit+l%unit)
		}
	}
	return out
}
