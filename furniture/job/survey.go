package job

import (
	"fmt"

	"bunkwright/furniture/yardstick"
	"bunkwright/room"
	"bunkwright/room/length"
	"bunkwright/room/survey"
)

// Survey solves the room of the job, together with the sizes of its sleepers.
func (j *Job) Survey() (*survey.Survey, error) {
	o := survey.Options{U: j.Uncertainties(), Agree: yardstick.Figure(yardstick.Agree)}
	o.Unit, _ = length.ParseUnit(j.Unit)
	for i, s := range j.Sleepers {
		name := s.Key(i)
		o.Also = append(o.Also,
			survey.Quantity{Key: name + ".seated", Measure: s.Seated},
			survey.Quantity{Key: name + ".stature", Measure: s.Stature})
	}
	return survey.OfRoom(&j.Room, o)
}

// Key returns the key of a sleeper: by name, else by place in the list.
func (s Sleeper) Key(i int) string {
	if s.Name != "" {
		return "sleeper." + s.Name
	}
	return fmt.Sprintf("sleeper.%d", i+1)
}

// Uncertainties returns the standard uncertainties of the job: the usual ones with its own in their place.
func (j *Job) Uncertainties() survey.Uncertainties {
	u := survey.DefaultUncertainties()
	own := map[room.How]length.Length{
		room.Mine: j.Readings.Mine, room.Twice: j.Readings.Twice, room.Once: j.Readings.Once,
		room.Photo: j.Readings.Photo, room.Told: j.Readings.Told, room.Assumed: j.Readings.Assumed,
	}
	for how, l := range own {
		if l > 0 {
			u.Reading[how] = l.MM()
		}
	}
	return u
}
