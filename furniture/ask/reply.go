package ask

import (
	"slices"
	"strings"

	"bunkwright/furniture/job"
	"bunkwright/room/length"
)

// A Reply is what a text that came back says. Nothing of the text is dropped: what is no answer is asked about or kept as it is.
//
// The text is made by the form, or filled in or typed by hand. Its grammar, a line each, in plain ASCII:
//
//	reply  = { block }
//	block  = head { by | on | unit | note | answer | end }
//	head   = "Reply to sheet " 4 figures " of job " 6 figures [ ": " name of the job ]
//	by     = "By: " who measured
//	on     = "On: " day, such as 2027-06-05
//	unit   = "Unit: " ( "in" | "ft" | "mm" | "cm" | "m" )     of numbers without one; the sheet's where it is not said
//	note   = "Note: " anything
//	answer = number of the card [ " " key ] ": " value [ " | " value from the other end [ " | " note ] ]
//	end    = "End: " number of answers
//
// A value is a length in any notation, a count, one of the words of its card, or yes or no; an empty one is no answer. Within names, values
// and notes "%", "|", line breaks and everything outside printable ASCII are written as UTF-8 bytes, each "%" and two hexadecimal figures;
// keys also escape blanks, ":" and whatever else encodeURIComponent does. A "%" that begins no such byte stands for itself.
//
// A form writes the key and the end. Whoever types may leave out everything but numbers and values, and the order of answers does not
// matter. Letter case, blanks, ">" of a quoted mail and curly quotes do not matter either.
type Reply struct {
	Job     string     `json:"job"`     // number of the job that it names, "" for none
	Sheet   string     `json:"sheet"`   // number of the sheet
	Other   bool       `json:"other"`   // it answers another job: nothing of it is merged
	Older   bool       `json:"older"`   // it answers another sheet of this job: what names its key is read, a number alone is asked about
	Cut     bool       `json:"cut"`     // its end is missing, or answers are: the last answer is asked about
	By      []string   `json:"by"`      // who measured
	Got     []Got      `json:"got"`     // what came in, in the order of the sheet
	Already int        `json:"already"` // answers that the job holds already
	Differ  []Differ   `json:"differ"`  // what does not agree
	Asks    []Question `json:"asks"`    // what can mean two things
	Unread  []Line     `json:"unread"`  // lines that are no answer, as they stand
	Notes   []string   `json:"notes"`
	Missing []string   `json:"missing"` // keys of the cards that nobody answered and the job does not know
}

// Got is one answer that can mean only one thing.
type Got struct {
	Key    string        `json:"key"`
	Number int           `json:"number"`
	Title  string        `json:"title"`
	Kind   Kind          `json:"kind"`
	Turned bool          `json:"turned"` // read from the other end
	Text   string        `json:"text"`   // as typed
	Value  length.Length `json:"nm"`     // of a length
	Light  int           `json:"light"`  // strong or light, in 64ths of an inch
	Word   string        `json:"word"`   // of everything else, as the job keeps it
	By     string        `json:"by"`
	When   string        `json:"when"`
	Note   string        `json:"note"`
	Line   int           `json:"line"`
	Known  bool          `json:"known"` // the job holds it already
}

// Differ is an answer that does not agree with another one, of the job or of the same reply.
type Differ struct {
	Key  string   `json:"key"`
	Have []string `json:"have"` // all that is known of it, as read, with by whom; the new ones last
	Off  string   `json:"off"`  // how far apart lengths are; "" for words
}

// A Question is a part of a reply that can mean more than one thing.
type Question struct {
	Line   int      `json:"line"`
	Text   string   `json:"text"`
	Ask    string   `json:"ask"`
	Why    string   `json:"why"`
	Offers []string `json:"offers"` // lines of a reply, one of which settles it
}

// A Line is a line of a reply that is no answer.
type Line struct {
	Number int    `json:"number"`
	Text   string `json:"text"`
	Why    string `json:"why"`
}

// ReadReply reads a text that came back for a job. The sheet is the one of the job as it is now, with all its cards (Options.All): it tells
// which numbers mean what.
func ReadReply(text string, s Sheet, j *job.Job) Reply {
	r := &reading{j: j, sheet: &s, cards: map[string]Card{}, seen: map[string]bool{}, per: map[string]int{}, nears: map[string][]length.Length{}}
	for _, c := range s.Cards() {
		r.cards[c.Key] = c
	}
	r.walker = newWalker(j, nil, 0)
	for _, b := range blocks(text, &r.out) {
		r.block(b)
	}
	r.finish()
	return r.out
}

// reading is a reply in the making.
type reading struct {
	j      *job.Job
	sheet  *Sheet
	walker *walker
	cards  map[string]Card
	seen   map[string]bool            // answers, so that one that stands twice counts once
	per    map[string]int             // how many of a card
	hand   int                        // lines typed by hand so far
	nears  map[string][]length.Length // first readings of the job, by key
	out    Reply
}

// block reads the answers of one person.
func (r *reading) block(b block) {
	if b.job != "" {
		r.out.Job, r.out.Sheet = b.job, b.sheet
	}
	if b.job != "" && b.job != r.sheet.Job {
		r.out.Other = true
		for _, l := range b.lines {
			r.unread(l, "it answers another job")
		}
		return
	}
	b.older = b.sheet != "" && b.sheet != r.sheet.Version
	r.out.Older = r.out.Older || b.older
	if b.by != "" && !slices.Contains(r.out.By, b.by) {
		r.out.By = append(r.out.By, b.by)
	}
	last := b.cutAt()
	r.out.Cut = r.out.Cut || last >= 0 || b.short()
	for i, l := range b.lines {
		r.line(&b, l, i == last)
	}
}

func (r *reading) unread(l Line, why string) {
	l.Why = why
	r.out.Unread = append(r.out.Unread, l)
}

func (r *reading) ask(l Line, text, ask, why string, offers ...string) {
	r.out.Asks = append(r.out.Asks, Question{Line: l.Number, Text: text, Ask: ask, Why: why, Offers: offers})
}

// What a line may hold, in bytes, and how many lines typed by hand are read: more than anybody types.
const (
	mostLine  = 4000
	mostTyped = 400
)

// line reads one line that is no head.
func (r *reading) line(b *block, l Line, last bool) {
	if len(l.Text) > mostLine {
		r.unread(l, "too long for an answer")
		return
	}
	a, ok := answerLine(l.Text)
	if !ok {
		r.typed(b, l)
		return
	}
	c, ok := r.cardOf(b, l, a)
	if !ok {
		return
	}
	if last {
		r.ask(l, l.Text, "is this line whole?", "the reply ends here without its last line, so that the end of a number may be missing", l.Text)
		return
	}
	for i, text := range a.values {
		r.value(b, l, c, text, i == 1, a.note)
	}
	if a.note != "" && blankAnswer(a.values) {
		r.out.Notes = append(r.out.Notes, c.Title+": "+a.note)
	}
}

// cardOf finds the card of an answer, or asks which it is.
func (r *reading) cardOf(b *block, l Line, a answer) (Card, bool) {
	numbered, there := r.sheet.Numbered(a.number)
	switch {
	case a.key == "" && blankAnswer(a.values):
		if a.note != "" {
			r.unread(l, "a note without a value")
		}
		return Card{}, false
	case a.key == "" && !there:
		r.ask(l, l.Text, "which card is it?", "this sheet has no such number")
		return Card{}, false
	case a.key == "" && (b.sheet == "" || b.older):
		why := "the reply does not name its sheet"
		if b.older {
			why = "it answers another sheet, whose numbers may mean other things"
		}
		r.ask(l, l.Text, "is it "+quoted(numbered.Title)+"?", why, replyLine(numbered, a.values, a.note))
		return Card{}, false
	case a.key == "":
		return numbered, true
	}
	c, known := r.byKey(a.key)
	switch {
	case !known:
		r.ask(l, l.Text, "what is "+quoted(a.key)+"?", "the job has nothing of that name")
		return Card{}, false
	case there && b.sheet != "" && !b.older && numbered.Key != c.Key && a.numbered:
		r.ask(l, l.Text, "is it "+quoted(c.Title)+" or "+quoted(numbered.Title)+"?", "its number and its key are of two cards",
			replyLine(c, a.values, a.note), replyLine(numbered, a.values, a.note))
		return Card{}, false
	}
	return c, true
}

// byKey returns the card of a key, also of one that this sheet does not ask for.
func (r *reading) byKey(key string) (Card, bool) {
	if c, ok := r.cards[key]; ok {
		return c, true
	}
	i := strings.LastIndexByte(key, '.')
	if i < 0 || !exists(r.j, key[:i]) && !canBe(&r.j.Room, key[:i]) {
		return Card{}, false
	}
	c, _, ok := r.walker.card(key)
	if ok {
		r.cards[key] = c
	}
	return c, ok
}

func quoted(text string) string { return "\u201c" + text + "\u201d" }

// mostOfOne is how many answers of one card a reply may hold: more come from no tape.
const mostOfOne = 12

// take keeps an answer, once however often it stands there.
func (r *reading) take(l Line, g Got) {
	id := strings.Join([]string{g.Key, g.By, g.When, g.Word, g.Value.String(), string(rune('a' + g.Light + 2)), map[bool]string{true: "turned"}[g.Turned]}, "\x00")
	switch {
	case r.seen[id]:
		return
	case r.per[g.Key] == mostOfOne:
		r.unread(l, "more than twelve answers to one card")
		return
	}
	r.seen[id] = true
	r.per[g.Key]++
	r.out.Got = append(r.out.Got, g)
}

// finish puts the answers in order and holds them against each other and the job.
func (r *reading) finish() {
	slices.SortStableFunc(r.out.Got, byCard)
	r.known()
	r.differ()
	for _, c := range r.sheet.Cards() {
		if r.per[c.Key] == 0 && open(r.j, c) {
			r.out.Missing = append(r.out.Missing, c.Key)
		}
	}
}
