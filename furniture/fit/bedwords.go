package fit

import "bunkwright/furniture/bunk"

// Short names for what the bed offers.
type (
	deckAt  = bunk.DeckAt
	guardAt = bunk.GuardAt
)
