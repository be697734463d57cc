package jobfile

import (
	"slices"
	"strconv"
)

// A node is one key of the text, or one element of a list, with where it stands. The tree of nodes runs beside the values that the
// TOML library returns: the library keeps one position per key name, so of five walls it knows the line of one.
type node struct {
	up      *node
	name    string // key; "" for an element
	line    int    // first line it stands on; 0 for the whole file
	keys    map[string]*node
	order   []*node // its keys in the order in which they came
	list    []*node // its elements
	comment comment
}

// child returns the node of a key, making it where it is new. Under a list it is a key of the last element, as TOML has it.
func (n *node) child(name string, line int) *node {
	n = n.last()
	if c, ok := n.keys[name]; ok {
		return c
	}
	c := &node{up: n, name: name, line: line}
	if n.keys == nil {
		n.keys = map[string]*node{}
	}
	n.keys[name] = c
	n.order = append(n.order, c)
	return c
}

// element adds an element to a list.
func (n *node) element(line int) *node {
	e := &node{up: n, line: line}
	n.list = append(n.list, e)
	return e
}

// last returns the element that headers and keys go to, the node itself where it is no list.
func (n *node) last() *node {
	for len(n.list) > 0 {
		n = n.list[len(n.list)-1]
	}
	return n
}

// key returns the node of a key, and at that of an element; nil where the text has none.
func (n *node) key(name string) *node {
	if n == nil {
		return nil
	}
	return n.keys[name]
}

func (n *node) at(i int) *node {
	if n == nil || i >= len(n.list) {
		return nil
	}
	return n.list[i]
}

// where returns the line of a node, 0 for none.
func (n *node) where() int {
	if n == nil {
		return 0
	}
	return n.line
}

// numbered returns the keys that lead to a node with the places of elements in their lists, the first 1: "wall.2.length".
func (n *node) numbered() string {
	switch {
	case n.up == nil:
		return ""
	case n.name == "" && n.up.keys[""] != n:
		return join(n.up.numbered(), strconv.Itoa(1+slices.Index(n.up.list, n)))
	}
	return join(n.up.numbered(), n.name)
}

// path returns the keys that lead to a node, without the numbers of elements.
func (n *node) path() []string {
	if n.up == nil {
		return nil
	}
	p := n.up.path()
	if n.name != "" || n.up.keys[""] == n {
		p = append(p, n.name)
	}
	return p
}
