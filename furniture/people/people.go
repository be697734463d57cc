// Package people says how tall a sleeper or a parent sits and how far one reaches, by age and sex.
package people

import "fmt"

// A Sex is a column of the tables. An unknown sex takes whichever of the two is the careful choice: the larger for a body
// that must fit or a reach that must not get there, the smaller for a reach that must be enough, the earlier for an age.
type Sex string

// The sexes. Everyone is the row of the tables that pools both; it does not stand for an unknown sex.
const (
	Unknown  Sex = ""
	Male     Sex = "M"
	Female   Sex = "F"
	Everyone Sex = "all"
)

var sexWords = map[string]Sex{
	"M": Male, "male": Male, "F": Female, "female": Female, "all": Everyone, "unknown": Unknown,
}

// ParseSex reads M, male, F, female, all or unknown.
func ParseSex(text string) (Sex, error) {
	if s, ok := sexWords[text]; ok {
		return s, nil
	}
	return Unknown, &WordError{"sex", text, "M, F, all or unknown"}
}

func (s Sex) String() string {
	if s == Unknown {
		return "unknown"
	}
	return string(s)
}

// A Stat is a statistic of a size in a group.
type Stat string

// The statistics.
const (
	Mean Stat = "mean"
	SD   Stat = "sd"
	P5   Stat = "p5"
	P50  Stat = "p50"
	P95  Stat = "p95"
)

var allStats = [...]Stat{Mean, SD, P5, P50, P95}

// ParseStat reads mean, sd, p5, p50 or p95.
func ParseStat(text string) (Stat, error) {
	for _, s := range allStats {
		if text == string(s) {
			return s, nil
		}
	}
	return "", &WordError{"stat", text, "mean, sd, p5, p50 or p95"}
}

// Z returns the standard normal quantile of a percentile, as the CDC growth charts use it; false for mean and sd.
func (s Stat) Z() (z float64, ok bool) {
	z, ok = map[Stat]float64{P5: -1.644854, P50: 0, P95: 1.644854}[s]
	return z, ok
}

// A WordError reports a word that names no sex or statistic.
type WordError struct{ What, Text, Want string }

func (e *WordError) Error() string { return fmt.Sprintf("%s %q: want %s", e.What, e.Text, e.Want) }
