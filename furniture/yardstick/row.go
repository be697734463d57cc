package yardstick

// A Row is one requirement of a published text, or one planning figure of this project.
// Its slices are shared between copies: read them, do not write to them.
type Row struct {
	ID        string
	About     string   // bed, opening, ladder, ...; empty for planning figures
	Questions []string // the questions that hold a value against this row
	Quantity  string   // what is measured, from where to where; for yes/no rows a question
	Relation  Relation
	Need      []float64 // in Unit: one number, two for a band (lower, upper), a list or none for some parameters
	Unit      Unit
	Written   string // the need as its source writes it, such as "5 in" or "60..75 mm"; empty for yes/no
	Role      Role
	Own       Force // Need or Advice of a planning figure; NoForce for a published row

	Jurisdiction string // US, EU, FR, UK, CA, AU, NZ, AU/NZ, a state such as US-NY, or any
	Kind         string // law, standard, guide, reference or practice
	Applies      string // what the text binds
	Caution      string // what the row is not
	Source       string
	Basis        string // published, secondary, practice, proposal or derived
	Note         string // planning figures only
	When         []string

	equalLow, equalHigh Equality
}

// A Unit is what the need and the value of a row are counted in. Every length is in mm, whatever unit its source
// writes: a need in inches is that number times 25.4, exact to the nanometre.
type Unit string

// The units of the rows in use.
const (
	MM         Unit = "mm"
	Percent    Unit = "%"
	Count      Unit = "count"
	Year       Unit = "year"
	SquareFoot Unit = "ft2"
	SquareCM   Unit = "cm2"
	Degree     Unit = "deg"
	Share      Unit = "share"
	Pound      Unit = "lb"
	PoundPerFt Unit = "lb per ft"
	TimesU     Unit = "times u"
	YesNo      Unit = "yes/no"
	NoUnit     Unit = "" // a parameter that stands for a table of other sizes
)

// A Role says what a row is for.
type Role string

// The roles of published rows, then those of planning figures.
const (
	RoleLimit     Role = "limit"     // a number to meet
	RoleScope     Role = "scope"     // switches other rows on; no pass or fail
	RoleAttribute Role = "attribute" // an answer given by the maker
	RoleAdvisory  Role = "advisory"  // a remark only
	RoleReference Role = "reference" // an outside figure that binds something else
	RoleJudged    Role = "judged"    // a line of the answer, with the row's own force
	RoleParameter Role = "parameter" // a figure that a measurement takes, never a line
)

func (r Role) known() bool {
	switch r {
	case RoleLimit, RoleScope, RoleAttribute, RoleAdvisory, RoleReference, RoleJudged, RoleParameter:
		return true
	}
	return false
}

// repeats names the planning figure that judges in the stead of a published row with the same content.
var repeats = map[string]string{
	"own-mattress-gap":       "own-mattress-gap-need",
	"own-sill-over-mattress": "own-window-sill",
	"heater-front":           "own-heater-front",
	"heater-side":            "own-heater-side",
	"heater-above":           "own-heater-above",
	"heater-wall-fan":        "own-heater-wall-fan",
	"heater-portable":        "own-heater-portable",
	"heater-stove":           "own-heater-stove",
	"heater-radiator":        "own-heater-radiator",
}

// JudgedBy returns the id of the planning figure that judges in this row's stead. The row is then a source line of
// that figure and no line of its own.
func (r Row) JudgedBy() (id string, ok bool) {
	id, ok = repeats[r.ID]
	return id, ok
}

// alsoAsked lists the questions a row belongs to beside the one its file names: the Australian gap bands bind every
// gap of the bed, so they are asked of the rails as well as of the ends.
var alsoAsked = map[string][]string{
	"au-gap-head": {"rail-openings"},
	"au-gap-limb": {"rail-openings"},
}
