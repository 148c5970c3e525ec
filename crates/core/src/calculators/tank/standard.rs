use super::netlist::antenna_of;
use crate::{
    calculators::Outcome,
    network::Pi,
    quantity::{Series, nearest, step},
    value::Inputs,
};

/// What fixed capacitors as sold do: both nearest of E12, the coil tuned again, and the load that the tube then has; and
/// for an output capacitor of a fixed one and a variable one beside it, what each must be.
pub(super) fn answer(outcome: &mut Outcome, inputs: &Inputs, pi: Pi, omega: f64) -> Option<()> {
    let tube = inputs.number("tube_farads");
    let (input, output) = (pi.input_siemens / omega - tube, pi.output_siemens / omega);
    let sold = |farads: f64| nearest(farads, Series::E12).map(|sold| sold.value);
    let (input, sold_output) = (sold(input)?, sold(output)?);
    outcome.answer("standard_input_farads", input);
    outcome.answer("standard_output_farads", sold_output);
    let other = Pi { input_siemens: (input + tube) * omega, output_siemens: sold_output * omega, ..pi };
    if let Some((coil_ohms, load_ohms)) = other.retuned(antenna_of(inputs)) {
        outcome.answer("standard_henries", coil_ohms / omega);
        outcome.answer("standard_load_ohms", load_ohms);
    }
    // The largest that leaves a tenth and more to the variable one.
    let pad = step(0.9 * output, Series::E12, false)?;
    outcome.answer("output_pad_farads", pad);
    outcome.answer("output_trim_farads", output - pad);
    Some(())
}
