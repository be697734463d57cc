package svg

import (
	"bytes"
	"encoding/binary"
	"slices"

	"golang.org/x/image/font/sfnt"

	"bunkwright/render"
)

// table is one table of a TrueType file.
type table struct {
	tag  string
	data []byte
}

// subset returns the font of a face with the outlines of all other letters left out. Letters
// keep their numbers, so that every other table stays as it is; the letters' names are dropped.
// The layout of the file is that of the OpenType specification (chapters "Organization of an
// OpenType font", "loca", "glyf", "post").
func subset(f render.Face, letters string) []byte {
	tables := tablesOf(f.TTF())
	keep := keptGlyphs(f.Font(), letters)
	long := find(tables, "head")[51] == 1 // indexToLocFormat: offsets as they are, or halved
	offsets := readLoca(find(tables, "loca"), long)
	glyf := find(tables, "glyf")
	for i := 0; i < len(keep); i++ { // grows: a composed letter needs its components
		g := glyf[offsets[keep[i]]:offsets[keep[i]+1]]
		for _, c := range components(g) {
			if !slices.Contains(keep, c) {
				keep = append(keep, c)
			}
		}
	}
	var cut bytes.Buffer
	places := make([]int, len(offsets))
	for i := range len(offsets) - 1 {
		places[i] = cut.Len()
		if slices.Contains(keep, i) {
			cut.Write(glyf[offsets[i]:offsets[i+1]])
			cut.Write(make([]byte, -cut.Len()&3))
		}
	}
	places[len(offsets)-1] = cut.Len()
	replace(tables, "glyf", cut.Bytes())
	replace(tables, "loca", writeLoca(places, long))
	replace(tables, "post", withoutNames(find(tables, "post")))
	return assemble(tables)
}

// keptGlyphs returns the numbers of the letters and of the box for missing ones, which a font
// must have.
func keptGlyphs(f *sfnt.Font, letters string) []int {
	keep := []int{0}
	var buf sfnt.Buffer
	for _, r := range letters {
		if i, err := f.GlyphIndex(&buf, r); err == nil && !slices.Contains(keep, int(i)) {
			keep = append(keep, int(i))
		}
	}
	return keep
}

func tablesOf(ttf []byte) []table {
	n := int(binary.BigEndian.Uint16(ttf[4:]))
	tables := make([]table, n)
	for i := range tables {
		record := ttf[12+16*i:]
		at, size := binary.BigEndian.Uint32(record[8:]), binary.BigEndian.Uint32(record[12:])
		tables[i] = table{string(record[:4]), ttf[at : at+size]}
	}
	return tables
}

func find(tables []table, tag string) []byte {
	for _, t := range tables {
		if t.tag == tag {
			return t.data
		}
	}
	return nil
}

func replace(tables []table, tag string, data []byte) {
	for i := range tables {
		if tables[i].tag == tag {
			tables[i].data = data
		}
	}
}

func readLoca(loca []byte, long bool) []int {
	var offsets []int
	for i := 0; i < len(loca); {
		if long {
			offsets = append(offsets, int(binary.BigEndian.Uint32(loca[i:])))
			i += 4
		} else {
			offsets = append(offsets, 2*int(binary.BigEndian.Uint16(loca[i:])))
			i += 2
		}
	}
	return offsets
}

func writeLoca(offsets []int, long bool) []byte {
	var loca []byte
	for _, o := range offsets {
		if long {
			loca = binary.BigEndian.AppendUint32(loca, uint32(o))
		} else {
			loca = binary.BigEndian.AppendUint16(loca, uint16(o/2))
		}
	}
	return loca
}

// Flags of a component of a composed letter ("glyf", composite glyph description).
const (
	argsAreWords  = 0x0001
	hasScale      = 0x0008
	more          = 0x0020
	hasXYScale    = 0x0040
	hasTwoByTwo   = 0x0080
	componentHead = 4 // flags and number
)

// components returns the numbers of the letters that a letter is composed of.
func components(g []byte) []int {
	if len(g) < 10 || int16(binary.BigEndian.Uint16(g)) >= 0 {
		return nil
	}
	var list []int
	for at := 10; ; {
		flags := binary.BigEndian.Uint16(g[at:])
		list = append(list, int(binary.BigEndian.Uint16(g[at+2:])))
		if flags&more == 0 {
			return list
		}
		at += componentHead + argumentBytes(flags)
	}
}

func argumentBytes(flags uint16) int {
	n := 2
	if flags&argsAreWords != 0 {
		n = 4
	}
	switch {
	case flags&hasScale != 0:
		n += 2
	case flags&hasXYScale != 0:
		n += 4
	case flags&hasTwoByTwo != 0:
		n += 8
	}
	return n
}

// withoutNames returns the head of a post table as version 3, which has no letter names.
func withoutNames(post []byte) []byte {
	head := slices.Clone(post[:32])
	binary.BigEndian.PutUint32(head, 0x00030000)
	return head
}

// assemble writes the tables, which are in the order of their tags, as a font file.
func assemble(tables []table) []byte {
	n := len(tables)
	power := 1
	for power*2 <= n {
		power *= 2
	}
	head := []byte{0, 1, 0, 0}
	for _, v := range []int{n, power * 16, log2(power), (n - power) * 16} {
		head = binary.BigEndian.AppendUint16(head, uint16(v))
	}
	var body []byte
	headAt := 0
	for _, t := range tables {
		at := 12 + 16*n + len(body)
		data := slices.Clone(t.data)
		if t.tag == "head" {
			headAt = at
			clear(data[8:12]) // the sum over the file counts with this field zero
		}
		head = append(head, t.tag...)
		for _, v := range []uint32{checksum(data), uint32(at), uint32(len(data))} {
			head = binary.BigEndian.AppendUint32(head, v)
		}
		body = append(body, data...)
		body = append(body, make([]byte, -len(data)&3)...)
	}
	file := append(head, body...)
	binary.BigEndian.PutUint32(file[headAt+8:], 0xB1B0AFBA-checksum(file))
	return file
}

func log2(power int) int {
	n := 0
	for power > 1 {
		power /= 2
		n++
	}
	return n
}

// checksum is the sum of the big-endian words, the last filled up with zeros.
func checksum(data []byte) uint32 {
	var sum uint32
	for len(data) >= 4 {
		sum += binary.BigEndian.Uint32(data)
		data = data[4:]
	}
	var rest [4]byte
	copy(rest[:], data)
	return sum + binary.BigEndian.Uint32(rest[:])
}
