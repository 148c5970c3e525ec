use alloc::{vec, vec::Vec};

use crate::{
    coil::{Skin, Winding, copper_ohm_metres, skin, skin_depth},
    quantity::{awg_metres, swg_metres},
    value::{Inputs, Problem, code},
};

/// Turns as near as this to touching are taken as touching: a figure carried over from elsewhere is rounded.
const TOUCHING: f64 = 1.0 - 1e-9;

/// How the turns are set apart.
#[derive(Clone, Copy)]
enum Spacing {
    Pitch(f64),
    Length(f64),
}

/// The form and the wire, and how they are wound: all but the turns. Metres.
pub(super) struct Make {
    pub form: f64,
    pub wire: f64,
    pub overall: f64,
    pub ohm_metres: f64,
    spacing: Spacing,
}

impl Make {
    /// # Errors
    /// Where insulation is thinner than nothing or turns would overlap.
    pub fn read(inputs: &Inputs) -> Result<Self, Vec<Problem>> {
        let swg = |number: f64| {
            let low = libm::floor(number);
            #[allow(clippy::cast_possible_truncation)] // within the range of the field
            let size = |number: f64| swg_metres(number as i32);
            let (at, next) = (size(low)?, size(low + 1.0).or(size(low))?);
            Some(at + (next - at) * (number - low))
        };
        let gauge = inputs.maybe("wire.awg").map(awg_metres).or_else(|| inputs.maybe("wire.swg").and_then(swg));
        let wire = gauge.unwrap_or_else(|| inputs.number("wire.diameter"));
        let overall = inputs.maybe("wire.overall_diameter").unwrap_or(wire);
        if overall < TOUCHING * wire {
            return Err(vec![Problem::new("wire.overall_diameter", code::TOO_SMALL).bounds(Some(wire), Some(60e-3))]);
        }
        let overall = f64::max(overall, wire);
        let (field, pitch) = match inputs.maybe("turns_per_metre") {
            Some(turns) => ("turns_per_metre", Some(1.0 / turns)),
            None => ("pitch", inputs.maybe("pitch")),
        };
        if pitch.is_some_and(|pitch| pitch < TOUCHING * overall) {
            return Err(vec![Problem::no_solution(field, "turns_overlap")]);
        }
        let spacing = match inputs.maybe("winding_length") {
            Some(length) => Spacing::Length(length),
            None => Spacing::Pitch(f64::max(pitch.unwrap_or(overall), overall)),
        };
        let ohm_metres = copper_ohm_metres(inputs.number("temperature"));
        Ok(Make { form: inputs.number("form_diameter"), wire, overall, ohm_metres, spacing })
    }

    /// Of the winding, between the wire's axes.
    pub fn mean(&self) -> f64 {
        self.form + self.overall
    }

    pub fn pitch(&self, turns: f64) -> f64 {
        match self.spacing {
            Spacing::Pitch(pitch) => pitch,
            Spacing::Length(length) => f64::max(length / turns, self.overall),
        }
    }

    /// The most turns that have room.
    pub fn most_turns(&self) -> f64 {
        match self.spacing {
            Spacing::Pitch(_) => super::MOST_TURNS,
            Spacing::Length(length) => f64::min(length / (TOUCHING * self.overall), super::MOST_TURNS),
        }
    }

    pub fn skin(&self, hertz: f64) -> Skin {
        skin(0.5 * self.wire / skin_depth(self.ohm_metres, hertz))
    }

    /// The winding of `turns` at another pitch than its own.
    pub fn at_pitch(&self, pitch: f64, turns: f64, inner: f64) -> Winding {
        Winding::new(self.mean(), pitch, self.wire, inner, turns)
    }

    pub fn winding(&self, turns: f64, inner: f64) -> Winding {
        self.at_pitch(self.pitch(turns), turns, inner)
    }

    /// One turn of the helix.
    pub fn turn_length(&self, turns: f64) -> f64 {
        libm::hypot(core::f64::consts::PI * self.mean(), self.pitch(turns))
    }
}
