package length

// Maybe is a length that may be left unset; unset is not zero.
type Maybe struct {
	Value Length
	Set   bool
}

// Some returns a length that is set, 0 too.
func Some(l Length) Maybe { return Maybe{Value: l, Set: true} }
