use crate::{
    calculators::fields::METER,
    quantity::Unit,
    tube,
    value::{Answer, Condition, Field, Start},
};

static OWN_RECTIFIER: [Field; 2] = [
    Field::text("name", 24).optional(),
    Field::quantity("perveance", Unit::Perveance, 1e-6, 1.0).start(0.3e-3).usual(0.1e-3, 5e-3),
];
static RECTIFIER: [Field; 2] = [Field::choice("type", tube::RECTIFIER_NAMES), Field::record("own", &OWN_RECTIFIER)];

static OWN_REGULATOR: [Field; 5] = [
    Field::volts("volts", 1.0).start(150.0).usual(75.0, 150.0),
    Field::volts("striking_volts", 1.0).start(185.0).usual(100.0, 190.0),
    Field::quantity("amps_least", Unit::Ampere, 1e-4, 1.0).start(5e-3).usual(1e-3, 10e-3).below("amps_most"),
    Field::quantity("amps_most", Unit::Ampere, 1e-4, 1.0).start(30e-3).usual(20e-3, 50e-3),
    Field::volts("regulation_volts", 1e-3).start(5.0).usual(1.0, 10.0),
];
static REGULATOR: [Field; 2] = [Field::choice("type", tube::REGULATOR_NAMES), Field::record("own", &OWN_REGULATOR)];

const IN_SERIES: &[Condition] = &[Condition::is_not("series", "none")];
const CHOKE: &[Condition] = &[Condition::is("series", "choke")];
const SILICON: &[Condition] = &[Condition::is("rectifier", "silicon")];
const REGULATED: &[Condition] = &[Condition::given("regulator")];

static SECTION_FIELDS: [Field; 6] = [
    Field::choice("series", &["none", "resistor", "choke"]),
    Field::ohms("ohms").or_none().usual(50.0, 5e3).when(IN_SERIES),
    Field::henries("henries").or_none().usual(2.0, 20.0).when(CHOKE),
    Field::farads("farads").or_none().usual(4e-6, 100e-6),
    Field::volts("volts", 1.0).optional().usual(250.0, 630.0),
    Field::quantity("ripple_amps", Unit::Ampere, 1e-6, 100.0).optional().usual(50e-3, 1.0),
];
static SECTION: Field = Field::record("section", &SECTION_FIELDS);

static LOAD_FIELDS: [Field; 2] = [
    Field::quantity("amps", Unit::Ampere, 1e-9, 100.0).or_none().start(0.0).usual(1e-3, 100e-3),
    Field::ohms("ohms").optional().usual(5e3, 1e6),
];
static LOAD: Field = Field::record("load", &LOAD_FIELDS);

/// What `supply` takes.
pub(super) static INPUTS: &[Field] = &[
    Field::volts("secondary_volts", 0.1).group("mains").start(250.0).usual(100.0, 600.0),
    Field::quantity("mains_hertz", Unit::Hertz, 5.0, 5e3).group("mains").start(60.0).usual(50.0, 60.0),
    Field::quantity("mains_percent", Unit::Percent, 10.0, 200.0).group("mains").start(100.0).usual(90.0, 110.0),
    Field::ohms("winding_ohms").group("mains").start(150.0).usual(20.0, 500.0),
    Field::quantity("winding_amps", Unit::Ampere, 1e-3, 100.0).optional().group("mains").usual(40e-3, 500e-3),
    Field::choice("rectifier_circuit", &["half-wave", "centre-tap", "bridge", "doubler"])
        .group("rectifier")
        .start_with(Start::Text("centre-tap")),
    Field::either("rectifier", &RECTIFIER).group("rectifier").start_with(Start::Text("6X4")),
    Field::quantity("diode_drop", Unit::Volt, 0.0, 50.0).group("rectifier").start(0.8).usual(0.5, 1.2).when(SILICON),
    Field::list("sections", &SECTION, 1, 6).group("filter").start_with(Start::List(&[
        Start::Record(&[("series", Start::Text("none")), ("farads", Start::Number(10e-6))]),
        Start::Record(&[
            ("series", Start::Text("choke")),
            ("ohms", Start::Number(330.0)),
            ("henries", Start::Number(10.0)),
            ("farads", Start::Number(40e-6)),
        ]),
    ])),
    Field::list("loads", &LOAD, 1, 6).same_count_as("sections").group("loads").start_with(Start::List(&[
        Start::Record(&[("amps", Start::Number(0.0))]),
        Start::Record(&[("amps", Start::Number(52e-3))]),
    ])),
    Field::ohms("bleeder_ohms").optional().group("loads").usual(20e3, 500e3),
    Field::either("regulator", &REGULATOR).optional().group("regulator"),
    Field::quantity("amps_least", Unit::Ampere, 1e-9, 100.0)
        .or_none()
        .optional()
        .group("regulator")
        .usual(1e-3, 20e-3)
        .when(REGULATED),
    Field::quantity("amps_most", Unit::Ampere, 1e-9, 100.0)
        .or_none()
        .optional()
        .group("regulator")
        .usual(1e-3, 30e-3)
        .when(REGULATED),
    Field::quantity("mains_least_percent", Unit::Percent, 10.0, 200.0)
        .group("mains")
        .start(90.0)
        .usual(85.0, 100.0)
        .below("mains_most_percent"),
    Field::quantity("mains_most_percent", Unit::Percent, 10.0, 200.0).group("mains").start(110.0).usual(100.0, 115.0),
    Field::quantity("rectifier_warm_seconds", Unit::Second, 0.0, 600.0).optional().group("warming").usual(0.0, 20.0),
    Field::quantity("load_warm_seconds", Unit::Second, 0.0, 600.0).group("warming").start(15.0).usual(0.0, 30.0),
    METER,
];

/// What `supply` answers.
pub(super) static ANSWERS: &[Answer] = &[
    Answer::quantity("node_volts", Unit::Volt).each("sections"),
    Answer::quantity("node_ripple_pp", Unit::Volt).each("sections"),
    Answer::quantity("node_ripple_rms", Unit::Volt).each("sections"),
    Answer::quantity("output_volts", Unit::Volt),
    Answer::quantity("output_ripple_pp", Unit::Volt),
    Answer::quantity("output_no_load_volts", Unit::Volt),
    Answer::quantity("rectifier_dc_amps", Unit::Ampere),
    Answer::quantity("peak_rectifier_amps", Unit::Ampere),
    Answer::quantity("winding_rms_amps", Unit::Ampere),
    Answer::quantity("peak_inverse_volts", Unit::Volt),
    Answer::quantity("no_load_volts", Unit::Volt).each("sections"),
    Answer::quantity("turn_on_peak_amps", Unit::Ampere),
    Answer::quantity("discharge_seconds", Unit::Second).null_means("never_discharges"),
    Answer::quantity("discharge_50_seconds", Unit::Second).null_means("never_discharges"),
    Answer::quantity("section_watts", Unit::Watt).each("sections"),
    Answer::quantity("capacitor_ripple_amps", Unit::Ampere).each("sections"),
    Answer::quantity("regulation_percent", Unit::Percent).null_means("collapsed"),
    Answer::quantity("critical_henries", Unit::Henry).optional().null_means("never_continuous"),
    Answer::quantity("regulator_amps_least", Unit::Ampere).optional(),
    Answer::quantity("regulator_amps_most", Unit::Ampere).optional(),
    Answer::other("regulator_strikes", "flag").optional(),
    Answer::quantity("silicon_series_ohms", Unit::Ohm).optional(),
    Answer::quantity("silicon_no_load_volts", Unit::Volt).optional(),
    Answer::quantity("input_watts", Unit::Watt),
    Answer::quantity("winding_watts", Unit::Watt),
    Answer::quantity("rectifier_watts", Unit::Watt),
];
