package ui

import (
	"slices"
	"strings"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/room/length"
)

// keyParts are the refs of what a table of sizes is of.
var keyParts = map[string][]string{
	"bed.upper": {"upper", "mattress.upper"}, "bed.lower": {"lower", "mattress.lower"}, "bed.guard": {"guard"}, "bed.ladder": {"ladder"},
	"bed.climb": {"climb"}, "bed.books": {"books"}, "bed.drawers": {"drawer"},
}

// keyRoles are the roles of parts that one size is of.
var keyRoles = map[string][]string{
	"bed.post":          {bunk.RolePost, bunk.RoleUpright, bunk.RoleMiddle, bunk.RoleFoot},
	"bed.rail":          {bunk.RoleSideRail, bunk.RoleMember},
	"bed.ledge":         {bunk.RoleLedge},
	"bed.slat":          {bunk.RoleSlat},
	"bed.guard.board":   {bunk.RoleGuard, bunk.RoleEndBoard},
	"bed.ladder.stile":  {bunk.RoleStile},
	"bed.ladder.tread":  {bunk.RoleTread},
	"bed.ladder.treads": {bunk.RoleTread},
	"bed.ladder.block":  {bunk.RoleBlock},
	"bed.climb.slat":    {bunk.RoleClimbSlat},
	"bed.climb.panel":   {bunk.RoleClimbPanel},
	"bed.books.board":   {bunk.RoleBookLedge},
	"bed.books.lip":     {bunk.RoleLip},
	"bed.drawers.side":  {bunk.RoleSide, bunk.RoleBack, bunk.RoleInner},
	"bed.drawers.front": {bunk.RoleFront},
}

// partsOf returns the refs of the parts that a size is of; a ref that is no key stands for itself.
func partsOf(bed *bunk.Bed, key string) []string {
	if key == "" {
		return nil
	}
	if !strings.HasPrefix(key, "bed.") {
		return []string{key}
	}
	for of := key; of != "bed" && of != ""; of = above(of) {
		if roles, ok := keyRoles[of]; ok {
			return ofRoles(bed, roles)
		}
		if refs, ok := keyParts[of]; ok {
			return slats(refs, key)
		}
	}
	return nil
}

// slats narrows the refs of a deck down where a size is of its slats or its mattress.
func slats(refs []string, key string) []string {
	switch last := key[strings.LastIndexByte(key, '.')+1:]; {
	case last == "slats" || last == "slat_gap":
		return []string{refs[0] + ".slat"}
	case strings.HasPrefix(last, "mattress"):
		return refs[1:]
	}
	return refs
}

// above is the table that a key is in.
func above(key string) string { return key[:max(0, strings.LastIndexByte(key, '.'))] }

func ofRoles(bed *bunk.Bed, roles []string) (refs []string) {
	for _, p := range bed.Parts {
		if slices.Contains(roles, p.Role) {
			refs = append(refs, p.ID)
		}
	}
	return refs
}

// partWords are what is known of a part, in a line.
func (b *bedPane) partWords(ref string) string {
	bed := b.bed()
	if bed == nil {
		return ""
	}
	i := slices.IndexFunc(bed.Parts, func(p furniture.Part) bool { return p.ID == ref })
	if i < 0 {
		return spokenRef(ref)
	}
	p := bed.Parts[i]
	show := func(l length.Length) string { return length.Format(l, length.Style{Unit: b.w.live.unit()}) }
	return p.Name + ": " + p.Stock.Name + ", really " + show(p.Stock.Thick) + " x " + show(p.Width()) + ", " + show(p.Length) + " long, " + p.Class.String()
}

func spokenRef(ref string) string { return strings.ReplaceAll(ref, ".", " ") }
