package people

// SittingLater returns the sitting height in mm that somebody of a measured sitting height will have at a later age, followed at a steady distance
// from the mean in standard deviations (an assumption through puberty): along the children's table up to LastChildAge, above it to that of
// grown-ups. Somebody who is grown keeps the height measured. An unknown sex takes the larger of the two.
func SittingLater(sex Sex, age, sitting, later float64) (float64, error) {
	if age > LastChildAge || later <= age {
		return sitting, nil
	}
	return larger(sex, func(s Sex) (float64, error) {
		z, err := NamedZ(s, age, sitting)
		if err != nil {
			return 0, err
		}
		if later <= LastChildAge {
			return sittingAtZ(s, later, z)
		}
		mean, err := AdultSize(SittingHeightErect, s, Mean)
		if err != nil {
			return 0, err
		}
		sd, err := AdultSize(SittingHeightErect, s, SD)
		return max(sitting, mean+z*sd), err
	})
}
