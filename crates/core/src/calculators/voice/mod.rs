//! A microphone stage with a switched coupling capacitor, tone and level.

#[cfg(test)]
mod checks;
mod lift;
mod microphone;
mod netlist;
mod render;
mod speech;
mod wish;
mod work;

use crate::{
    quantity::Unit,
    value::{Answer, Condition, Field, Start},
};

pub use render::{Rendered, render};

use super::{Calculator, fields};

/// A microphone stage with a switched coupling capacitor, tone and level.
pub(super) static VOICE: Calculator =
    Calculator { id: "voice", group: "audio", inputs: INPUTS, answers: ANSWERS, work: work::work };

const TONE: &[Condition] = &[Condition::is("tone", "two-knob")];

static POSITION_FIELDS: [Field; 2] =
    [Field::text("label", 24).start_with(Start::Text("")), Field::farads("farads").usual(100e-12, 1e-6)];
static POSITION: Field = Field::record("position", &POSITION_FIELDS);

static TONE_PARTS: [Field; 7] = [
    Field::ohms("r_in").start(100e3).usual(10e3, 1e6),
    Field::ohms("r_low").start(10e3).usual(1e3, 100e3),
    Field::ohms("r_mix").start(100e3).usual(10e3, 1e6),
    Field::farads("c_bass_top").start(2.2e-9).usual(100e-12, 100e-9),
    Field::farads("c_bass_bottom").start(22e-9).usual(1e-9, 1e-6),
    Field::farads("c_treble_top").start(220e-12).usual(22e-12, 10e-9),
    Field::farads("c_treble_bottom").start(2.2e-9).usual(220e-12, 100e-9),
];

/// What `voice` takes.
static INPUTS: &[Field] = &[
    fields::TUBE,
    fields::SUPPLY_VOLTS,
    fields::PLATE_OHMS,
    fields::CATHODE_OHMS,
    fields::CATHODE_FARADS,
    fields::GRID_OHMS,
    fields::GRID_VOLTS,
    fields::DECOUPLING_OHMS,
    fields::DECOUPLING_FARADS,
    Field::volts("microphone_volts", 1e-6).group("microphone").start(30e-3).usual(1e-3, 1.0),
    Field::ohms("microphone_ohms").or_none().group("microphone").start(50e3).usual(200.0, 500e3),
    Field::farads("microphone_farads").optional().group("microphone").usual(300e-12, 10e-9),
    microphone::SENSITIVITY,
    microphone::DISTANCE,
    microphone::RATIO,
    microphone::CARBON_VOLTS,
    microphone::CARBON_OHMS,
    microphone::CARBON_FEED_OHMS,
    Field::list("positions", &POSITION, 1, 6).group("switch").start_with(Start::List(&[
        Start::Record(&[("label", Start::Text("Round")), ("farads", Start::Number(20e-9))]),
        Start::Record(&[("label", Start::Text("Clear")), ("farads", Start::Number(470e-12))]),
    ])),
    Field::choice("tone", &["none", "two-knob"]).group("tone").start_with(Start::Text("two-knob")),
    Field::ohms("bass_ohms").group("tone").start(1e6).usual(50e3, 2e6).when(TONE),
    Field::ohms("treble_ohms").group("tone").start(1e6).usual(50e3, 2e6).when(TONE),
    Field::record("tone_parts", &TONE_PARTS).group("tone").when(TONE),
    Field::fraction("bass").group("tone").start(0.2).when(TONE),
    Field::fraction("treble").group("tone").start(0.45).when(TONE),
    Field::ohms("level_ohms").group("level").start(500e3).usual(50e3, 2e6),
    Field::fraction("level").group("level").start(0.6),
    Field::ohms("load_ohms").group("load").start(1e6).usual(10e3, 10e6),
    Field::farads("load_farads").or_none().group("load").start(100e-12).usual(10e-12, 1e-9),
    Field::choice("noise", &["quiet", "band", "heavy"]).group("hearing").start_with(Start::Text("band")),
    Field::quantity("receiver_hertz", Unit::Hertz, 160.0, 20e3).group("hearing").start(4000.0).usual(2000.0, 8000.0),
    Field::quantity("want_lift_db", Unit::Decibel, -40.0, 40.0).optional().group("wish").usual(0.0, 12.0),
    Field::quantity("want_intelligibility", Unit::One, 0.01, 0.99).optional().group("wish").usual(0.2, 0.6),
    Field::quantity("want_position", Unit::One, 1.0, 6.0).start(2.0).group("wish"),
    fields::RIPPLE_VOLTS,
    fields::RIPPLE_HERTZ,
    fields::METER,
];

/// What `voice` answers.
static ANSWERS: &[Answer] = &[
    Answer::quantity("gain_db_1k", Unit::Decibel).each("positions").null_means("level_at_zero"),
    Answer::quantity("lift_db", Unit::Decibel).each("positions").null_means("level_at_zero"),
    Answer::quantity("output_volts", Unit::Volt).each("positions"),
    Answer::quantity("headroom_db", Unit::Decibel).null_means("no_swing"),
    Answer::quantity("level_change_db", Unit::Decibel).each("positions").null_means("level_at_zero"),
    Answer::quantity("loudness_change_db", Unit::Decibel).each("positions").null_means("level_at_zero"),
    Answer::quantity("intelligibility", Unit::One).each("positions").null_means("level_at_zero"),
    microphone::ANSWERS[0],
    microphone::ANSWERS[1],
    microphone::ANSWERS[2],
    microphone::ANSWERS[3],
    microphone::ANSWERS[4],
    Answer::quantity("lift_farads", Unit::Farad).optional().null_means("out_of_reach"),
    Answer::quantity("intelligibility_farads", Unit::Farad).optional().null_means("out_of_reach"),
    Answer::quantity("sold_farads", Unit::Farad).each("free").optional().null_means("out_of_reach"),
    Answer::quantity("sold_lift_db", Unit::Decibel).each("free").optional().null_means("out_of_reach"),
    Answer::quantity("sold_intelligibility", Unit::One).each("free").optional().null_means("out_of_reach"),
    Answer::quantity("sold_output_volts", Unit::Volt).each("free").optional().null_means("out_of_reach"),
    Answer::quantity("plate_amps", Unit::Ampere),
    Answer::quantity("plate_volts", Unit::Volt),
    Answer::quantity("cathode_volts", Unit::Volt),
    Answer::quantity("bias_volts", Unit::Volt),
    Answer::quantity("plate_watts", Unit::Watt),
    Answer::quantity("gm", Unit::Siemens),
    Answer::quantity("plate_resistance", Unit::Ohm).null_means("no_current"),
    Answer::quantity("mu", Unit::One).null_means("no_current"),
    Answer::quantity("source_ohms_seen", Unit::Ohm).each("positions"),
    Answer::quantity("load_ohms_seen", Unit::Ohm).each("positions"),
    Answer::quantity("hum_volts", Unit::Volt).each("positions"),
    Answer::quantity("hum_db", Unit::Decibel).each("positions").optional().null_means("no_output"),
    Answer::quantity("hiss_volts", Unit::Volt).each("positions"),
    Answer::quantity("hiss_db", Unit::Decibel).each("positions").null_means("no_output"),
    Answer::quantity("hum_cure_farads", Unit::Farad).optional().null_means("no_cure"),
    Answer::quantity("hum_cure_ohms", Unit::Ohm).optional(),
    Answer::quantity("hum_cure_db", Unit::Decibel).optional(),
];
