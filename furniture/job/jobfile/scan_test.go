package jobfile

import (
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/BurntSushi/toml"
	"github.com/google/go-cmp/cmp"
)

// keysOf returns what the library says of the keys of a text, in order; ok is false where it is no TOML.
func keysOf(text string) (keys []string, ok bool) {
	var v map[string]any
	meta, err := toml.Decode(text, &v)
	if err != nil {
		return nil, false
	}
	for _, k := range meta.Keys() {
		keys = append(keys, strings.Join(k, "\x00"))
	}
	return keys, true
}

func scanned(text string) []string {
	var keys []string
	for _, v := range scan(text).visits {
		keys = append(keys, strings.Join(v.path(), "\x00"))
	}
	return keys
}

var tricky = []string{
	"",
	"a = 1",
	"\ufeffa = 1\r\nb = 2\r\n",
	"a.b.c = 1\n a . d = 2\n'x y'.\"z\\u0041\" = 3\n\"\" = 4",
	"[a]\nx = 1\n[a.b]\ny = 2\n[c]\nz = 3\n[[l]]\nx=1\n[[l]]\nx=2\n[l.t]\nx=3\n[[l.m]]\nx=4\n[[l.m]]\n",
	"[ a . 'b c' ] # with [brackets] = here\nx = \"# no comment\" # a comment with \"quotes\"",
	"a = \"\"\"\nb = 1\n[c]\n\\\"\"\" d = 2\n\"\"\"\"\"\ne = 3",
	"a = '''\nb = 1\n'' '\n'''''\ne = 3",
	"a = \"\"\"x\\\n   y\"\"\"\nb = \"\\\\\"\nc = \"\\\"\"\nd = '\\'",
	"a = [ 1, # one ] two\n  [2, {b = 3, c.d = [4]}], # ]\n]\nf = {g = {h = 1, i = []}, 'j k' = \"}\"}",
	"a = 1979-05-27 07:32:00Z\nb = 1979-05-27\nc = 07:32:00\nd = -inf\ne = 0xdead_beef",
	"a = [\n\"x\",\n'y',\n\"\"\"z\n]\"\"\",\n]\nb = true",
	"a = {b = 1,\n c = 2, # no }\n d = {\n}}\ne = 5",
	"x = [{read = \"1 in\"}, \"2 in\", {read = '3\"', how = 'once'}]",
}

// TestScan holds the scan against the library, which is written by others: the same keys in the same order.
func TestScan(t *testing.T) {
	for _, text := range tricky {
		want, ok := keysOf(text)
		if !ok {
			t.Errorf("the library refuses %q", text)
		}
		if diff := cmp.Diff(want, scanned(text)); diff != "" {
			t.Errorf("%q: keys of the library (-) and of the scan (+):\n%s", text, diff)
		}
	}
}

// TestScanLines looks up lines that were counted by hand.
func TestScanLines(t *testing.T) {
	root := scan("a = 1\n\n[b] # two\nc = [\n  1,\n  {d = 2},\n]\n[[e]]\nf = 1\n[[e]]\nf = '''\n\n'''\ng.h = 3\n").root
	b, e := root.key("b"), root.key("e")
	for i, c := range []struct {
		n    *node
		want int
	}{
		{root.key("a"), 1}, {b, 3}, {b.key("c"), 4}, {b.key("c").at(0), 5}, {b.key("c").at(1).key("d"), 6},
		{e, 8}, {e.at(0), 8}, {e.at(0).key("f"), 9}, {e.at(1), 10}, {e.at(1).key("f"), 11}, {e.at(1).key("g"), 14},
		{e.at(1).key("g").key("h"), 14}, {e.at(2), 0}, {e.at(1).key("x").key("y"), 0},
	} {
		if got := c.n.where(); got != c.want {
			t.Errorf("node %d: line %d, want %d", i, got, c.want)
		}
	}
}

func FuzzScan(f *testing.F) {
	for _, text := range tricky {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		s := scan(text)
		if s.deep > 0 || !utf8.ValidString(text) {
			return
		}
		if want, ok := keysOf(text); ok && !slices.Equal(want, scanned(text)) {
			t.Errorf("keys of the library (-) and of the scan (+):\n%s", cmp.Diff(want, scanned(text)))
		}
	})
}
