//! Single-layer coils: from the pipe and the wire at hand to a winding template.

mod answers;
mod bands;
mod cautions;
mod correction;
mod make;
mod pictures;
mod turns;
mod work;

use crate::{
    quantity::Unit,
    value::{Answer, Condition, Field, Start},
};

use super::Calculator;

/// Single-layer coils.
pub(super) static COIL: Calculator =
    Calculator { id: "coil", group: "networks", inputs: INPUTS, answers: ANSWERS, work: work::work };

/// The most turns of a winding: a thousand are more than any that is tuned at radio frequency.
const MOST_TURNS: f64 = 1000.0;

static WIRE: [Field; 4] = [
    Field::quantity("awg", Unit::One, -3.0, 50.0).one_of("gauge").usual(12.0, 30.0),
    Field::quantity("swg", Unit::One, -6.0, 50.0).one_of("gauge").usual(14.0, 32.0),
    Field::quantity("diameter", Unit::Metre, 10e-6, 50e-3).one_of("gauge").usual(0.25e-3, 3e-3),
    Field::quantity("overall_diameter", Unit::Metre, 10e-6, 60e-3).optional().usual(1e-3, 4e-3),
];
static TAP: Field = Field::quantity("tap", Unit::One, 0.01, MOST_TURNS).usual(1.0, 10.0);
static BAND: [Field; 2] = [Field::hertz("hertz").usual(1.8e6, 30e6), Field::farads("farads").usual(50e-12, 500e-12)];
static BAND_ITEM: Field = Field::record("band", &BAND);

const LINKED: &[Condition] = &[Condition::given("link_turns")];
const MEASURED: &[Condition] = &[Condition::given("measured_hertz")];

static INPUTS: &[Field] = &[
    Field::quantity("form_diameter", Unit::Metre, 0.2e-3, 3.0).group("form").start(50e-3).usual(15e-3, 80e-3),
    Field::record("wire", &WIRE)
        .group("form")
        .start_with(Start::Record(&[("awg", Start::Number(18.0)), ("overall_diameter", Start::Number(1.11e-3))])),
    Field::quantity("turns", Unit::One, 0.1, MOST_TURNS)
        .one_of("amount")
        .group("winding")
        .start(40.0)
        .usual(12.0, 60.0),
    Field::henries("henries").one_of("amount").group("winding").usual(1e-6, 100e-6),
    Field::flag("close").one_of("spacing").group("winding").start_with(Start::Flag(true)),
    Field::quantity("pitch", Unit::Metre, 10e-6, 0.5).one_of("spacing").group("winding").usual(1e-3, 5e-3),
    Field::quantity("turns_per_metre", Unit::PerMetre, 2.0, 100e3).one_of("spacing").group("winding").usual(150.0, 1e3),
    Field::quantity("winding_length", Unit::Metre, 10e-6, 20.0).one_of("spacing").group("winding").usual(20e-3, 0.2),
    Field::quantity("lead_length", Unit::Metre, 1e-3, 10.0).or_none().group("winding").start(0.1).usual(0.05, 0.3),
    Field::hertz("hertz").group("use").start(1.9e6).usual(1e6, 30e6),
    Field::quantity("amps", Unit::Ampere, 1e-6, 1e3).optional().group("use").usual(0.1, 10.0),
    Field::quantity("temperature", Unit::Celsius, -50.0, 200.0).group("use").start(20.0).usual(10.0, 60.0),
    Field::list("taps", &TAP, 0, 12).group("taps").start_with(Start::List(&[Start::Number(10.0)])),
    Field::choice("tap_use", &["open", "shorted"]).group("taps").start_with(Start::Text("open")),
    Field::list("bands", &BAND_ITEM, 0, 12).optional().group("taps"),
    Field::quantity("link_turns", Unit::One, 0.1, 50.0).optional().group("link").usual(1.0, 6.0),
    Field::choice("link_place", &["over", "beside"]).group("link").start_with(Start::Text("over")).when(LINKED),
    Field::hertz("measured_hertz").optional().together("measured").group("measured").usual(1e6, 10e6),
    Field::farads("measured_farads").optional().together("measured").group("measured").usual(50e-12, 200e-12),
    Field::hertz("second_hertz").optional().together("second").group("measured").usual(500e3, 1e6).when(MEASURED),
    Field::farads("second_farads").optional().together("second").group("measured").usual(300e-12, 1e-9).when(MEASURED),
    Field::quantity("core_henries", Unit::Henry, 1e-12, 1e-3).optional().group("core").usual(2e-9, 500e-9),
];

static ANSWERS: &[Answer] = &[
    Answer::quantity("henries", Unit::Henry),
    Answer::quantity("turns", Unit::One),
    Answer::quantity("pitch", Unit::Metre),
    Answer::quantity("winding_length", Unit::Metre),
    Answer::quantity("wire_length", Unit::Metre),
    Answer::quantity("wire_to_cut", Unit::Metre),
    Answer::quantity("mean_diameter", Unit::Metre),
    Answer::quantity("exact_turns", Unit::One).optional(),
    Answer::quantity("rounding_percent", Unit::Percent).optional(),
    Answer::quantity("fix_turns", Unit::One).optional(),
    Answer::quantity("fix_pitch", Unit::Metre).optional(),
    Answer::quantity("dc_ohms", Unit::Ohm),
    Answer::quantity("rf_ohms", Unit::Ohm),
    Answer::quantity("q", Unit::One),
    Answer::quantity("q_percent", Unit::Percent),
    Answer::quantity("self_farads", Unit::Farad),
    Answer::quantity("self_farads_percent", Unit::Percent),
    Answer::quantity("self_resonant_hertz", Unit::Hertz),
    Answer::quantity("effective_henries", Unit::Henry).null_means("past_resonance"),
    Answer::quantity("volts", Unit::Volt).optional(),
    Answer::quantity("watts", Unit::Watt).optional(),
    Answer::quantity("rise_celsius", Unit::Celsius).optional(),
    Answer::quantity("tap_henries", Unit::Henry).each("taps"),
    Answer::quantity("tap_coupling", Unit::One).each("taps"),
    Answer::quantity("band_turns", Unit::One).each("bands").optional().null_means("beyond_coil"),
    Answer::quantity("link_coupling", Unit::One).optional(),
    Answer::quantity("link_henries", Unit::Henry).optional(),
    Answer::quantity("correction", Unit::One).optional(),
    Answer::quantity("stray_farads", Unit::Farad).optional(),
    Answer::quantity("corrected_turns", Unit::One).optional().null_means("no_turns"),
    Answer::quantity("core_turns", Unit::One).optional(),
    Answer::other("template", "record"),
];
