package survey

import "testing"

func TestTapingCases(t *testing.T) {
	for _, r := range readCases(t, "tape_error.csv", "reading_step_u", "even_graduation", "temperature", "off_line", "budget") {
		in := r.inputs()
		switch r["topic"] {
		case "reading_step_u":
			r.compare(t, ReadingStepU(in.float(t, "step_in")))
		case "even_graduation":
			r.compare(t, NearestGraduation(in.float(t, "value_in"), in.float(t, "step_in")))
		case "temperature":
			r.compare(t, TemperatureChange(12*in.float(t, "length_ft"), in.float(t, "dT_F")))
		case "off_line":
			r.compare(t, OffLineExcess(in.float(t, "length_in"), in.float(t, "offset_in")))
		case "budget":
			r.compare(t, CombinedU(in.numbers(t, "terms")...))
		}
	}
}

func TestSagCases(t *testing.T) {
	for _, r := range readCases(t, "tape_sag.csv", "sag") {
		in := r.inputs()
		r.compare(t, 12*SagExcess(in.float(t, "weight_lb_per_ft"), in.float(t, "span_ft"), in.float(t, "pull_lb")))
	}
}

func TestTapingCorrection(t *testing.T) {
	for _, r := range readCases(t, "tape_error.csv", "taping_correction") {
		in := r.inputs()
		r.compare(t, Taping{
			Measured: in.float(t, "measured_ft"), Nominal: 100, True: in.float(t, "tape_true_ft"),
			StandardPull: in.float(t, "std_pull_lb"), UsedPull: in.float(t, "used_pull_lb"),
			StandardTemp: in.float(t, "std_temp_F"), UsedTemp: in.float(t, "used_temp_F"),
			WeightPerFoot: in.float(t, "weight_lb") / in.float(t, "weight_length_ft"),
			Area:          in.float(t, "area_in2"), Elasticity: in.float(t, "E_psi"), Expansion: in.float(t, "expansion_per_F"),
			HangingSpans: in.numbers(t, "hanging_spans_ft"),
		}.Corrected())
	}
}

func TestClosureTolerance(t *testing.T) {
	for _, r := range readCases(t, "misread_cases.csv", "closure_tolerance") {
		r.compare(t, ClosureTolerance(int(r.inputs().float(t, "pieces"))))
	}
}
