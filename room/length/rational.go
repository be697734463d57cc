package length

import (
	"math/big"
	"strings"
)

func rat(l Length) *big.Rat { return new(big.Rat).SetInt64(int64(l)) }

// written is the unit mark of a job's unit.
func (u Unit) written() unit {
	switch u {
	case Inches:
		return inch
	case Millimetres:
		return millimetre
	}
	return bare
}

// exact returns a number of nanometres as a length where it is one that can be read.
func exact(nm *big.Rat) (Length, bool) {
	if nm == nil || !nm.IsInt() || nm.Sign() < 0 || nm.Cmp(rat(MaxRead)) > 0 {
		return 0, false
	}
	return Length(nm.Num().Int64()), true
}

// nearestNM rounds a number of nanometres up to MaxRead to a whole one.
func nearestNM(nm *big.Rat) (Length, bool) {
	if nm.Sign() < 0 || nm.Cmp(rat(MaxRead)) > 0 {
		return 0, false
	}
	twice := new(big.Int).Lsh(nm.Num(), 1)
	twice.Add(twice, nm.Denom())
	return Length(twice.Quo(twice, new(big.Int).Lsh(nm.Denom(), 1)).Int64()), true
}

// numberText shows a number with at most four decimals.
func numberText(v *big.Rat) string {
	return trimZeros(v.FloatString(4))
}

func trimZeros(s string) string {
	if !strings.Contains(s, ".") {
		return s
	}
	return strings.TrimSuffix(strings.TrimRight(s, "0"), ".")
}
