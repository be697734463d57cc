package survey

// Block is a set of unknowns that share readings with each other and with nothing else; it is solved by itself.
// A reading that depends on no unknown (between two fixed points) is a block with no unknowns.
type Block struct {
	Unknowns, Equations []int   // in rising order
	F                   int     // equations beyond those needed; with 1 a blunder is seen but cannot be located
	VPV                 float64 // the block's weighted sum of squared residuals
	Deficiency          int     // how many directions the equations leave open (above zero only with a free datum)

	cov  []float64 // unknowns x unknowns, upper triangle
	gain []float64 // unknowns x equations
	null []float64 // Deficiency orthonormal rows, one number an unknown: the directions left open
}

// partition is the split of a problem into blocks, with the place of everything in them.
type partition struct {
	blocks                      []Block
	unknownBlock, equationBlock []int
	column, row                 []int // position of an unknown or an equation inside its block
}

// split sorts a problem into blocks, in the order of their first unknown.
func split(p *Problem) partition {
	n, m := len(p.Start), len(p.Equations)
	ints := make([]int, 3*n+2*m)
	cut := func(k int) []int { s := ints[:k:k]; ints = ints[k:]; return s }
	root := joinUnknowns(p, cut(n))
	part := partition{unknownBlock: cut(n), column: cut(n), equationBlock: cut(m), row: cut(m)}

	count := 0
	for u := range root {
		if r := find(root, u); r == u { // the root is the smallest of its set
			part.unknownBlock[u] = count
			count++
		} else {
			part.unknownBlock[u] = part.unknownBlock[r]
		}
	}
	for i := range p.Equations {
		if on := p.Equations[i].Unknowns; len(on) > 0 {
			part.equationBlock[i] = part.unknownBlock[on[0]]
		} else {
			part.equationBlock[i] = count
			count++
		}
	}
	part.gather(count)
	return part
}

// gather cuts the members of every block from two common arrays.
func (part *partition) gather(count int) {
	part.blocks = make([]Block, count)
	unknowns := group(part.unknownBlock, part.column, count)
	equations := group(part.equationBlock, part.row, count)
	for b := range part.blocks {
		part.blocks[b].Unknowns, part.blocks[b].Equations = unknowns[b], equations[b]
	}
}

// group lists the members of every block and writes into place where in its block each member stands.
func group(blockOf, place []int, count int) [][]int {
	size := make([]int, count)
	for i, b := range blockOf {
		place[i] = size[b]
		size[b]++
	}
	members, all := make([][]int, count), make([]int, len(blockOf))
	for b, k := range size {
		members[b], all = all[:k:k], all[k:]
	}
	for i, b := range blockOf {
		members[b][place[i]] = i
	}
	return members
}

// joinUnknowns links the unknowns of every equation; the root of a set is its smallest member.
func joinUnknowns(p *Problem, root []int) []int {
	for u := range root {
		root[u] = u
	}
	for i := range p.Equations {
		on := p.Equations[i].Unknowns
		for k := 1; k < len(on); k++ {
			a, b := find(root, on[0]), find(root, on[k])
			root[max(a, b)] = min(a, b)
		}
	}
	return root
}

// find returns the root of u and halves the path to it.
func find(root []int, u int) int {
	for root[u] != u {
		root[u] = root[root[u]]
		u = root[u]
	}
	return u
}
