use alloc::string::String;

use crate::{
    tube::{self, RectifierTube},
    value::{Inputs, Value},
};

/// What rectifies: silicon, a tube of the table, or one of the person's own.
pub(super) struct RectifierGiven {
    /// k of one plate; none for silicon.
    pub perveance: Option<f64>,
    pub row: Option<&'static RectifierTube>,
    pub name: String,
}

impl RectifierGiven {
    pub fn of(inputs: &Inputs) -> Self {
        let given = inputs.at("rectifier");
        if let Some(own) = given.get("perveance").and_then(Value::number) {
            let name = given.get("name").and_then(Value::text).unwrap_or("").into();
            return RectifierGiven { perveance: Some(own), row: None, name };
        }
        let row = given.text().and_then(tube::rectifier);
        RectifierGiven {
            perveance: row.map(RectifierTube::perveance),
            row,
            name: row.map_or("silicon", |row| row.name).into(),
        }
    }

    /// Seconds until it passes current, unless given: a tube of the person's own as one with a cathode.
    pub fn warm_seconds(&self, inputs: &Inputs) -> f64 {
        let own = match (self.row, self.perveance) {
            (Some(row), _) => row.warm_seconds(),
            (None, Some(_)) => 11.0,
            _ => 0.0,
        };
        inputs.maybe("rectifier_warm_seconds").unwrap_or(own)
    }
}

/// The gas regulator that was given.
#[derive(Clone, Debug)]
pub(super) struct RegulatorGiven {
    pub name: String,
    pub row: Option<&'static tube::Regulator>,
    /// In the middle of its range.
    pub volts: f64,
    pub striking_volts: f64,
    pub amps: (f64, f64),
    /// Rise of its volts over its range of current.
    pub regulation_volts: f64,
}

impl RegulatorGiven {
    pub fn of(inputs: &Inputs) -> Option<Self> {
        let given = inputs.at("regulator");
        if let Some(row) = given.text().and_then(tube::regulator) {
            return Some(RegulatorGiven {
                name: row.name.into(),
                row: Some(row),
                volts: row.volts,
                striking_volts: row.striking_volts,
                amps: (row.amps_least, row.amps_most),
                regulation_volts: row.regulation_volts,
            });
        }
        let figure = |key: &str| given.get(key).and_then(Value::number);
        Some(RegulatorGiven {
            name: String::new(),
            row: None,
            volts: figure("volts")?,
            striking_volts: figure("striking_volts")?,
            amps: (figure("amps_least")?, figure("amps_most")?),
            regulation_volts: figure("regulation_volts")?,
        })
    }

    /// Rise of its volts with its current, in Ω.
    pub fn ohms(&self) -> f64 {
        self.regulation_volts / (self.amps.1 - self.amps.0)
    }

    /// Volts at which its current, followed down along its law, would be none.
    pub fn foot(&self) -> f64 {
        self.volts - self.ohms() * 0.5 * (self.amps.0 + self.amps.1)
    }
}
