package timber

// A Section holds what bending takes of a rectangle: area, section modulus S and moment of inertia I, standing on edge
// (bent across its width) and lying flat.
type Section struct {
	Area         float64
	SEdge, IEdge float64
	SFlat, IFlat float64
}

// SectionOf returns the section of a rectangle in powers of the unit of its sides. On edge S = t w^2 / 6 and
// I = t w^3 / 12; flat the same with the sides exchanged.
func SectionOf(thickness, width float64) Section {
	return Section{
		Area:  thickness * width,
		SEdge: thickness * width * width / 6,
		IEdge: thickness * width * width * width / 12,
		SFlat: width * thickness * thickness / 6,
		IFlat: width * thickness * thickness * thickness / 12,
	}
}

// Section returns the section in inches: in2, in3, in4.
func (s Size) Section() Section { return SectionOf(s.Thick.Inches(), s.Wide.Inches()) }

// PoundsPerFoot returns the weight of a foot of lumber whose section is in inches, at a density in lb/ft3.
func (s Section) PoundsPerFoot(density float64) float64 { return s.Area / 144 * density }
