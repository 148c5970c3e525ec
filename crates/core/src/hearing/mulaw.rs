use alloc::vec::Vec;

/// Samples of −1 to 1 from bytes of 8-bit µ-law, as the telephone has them.
///
/// # Source
/// ITU-T G.711 (1988), µ-law: sign, three bits of segment, four of step, all inverted; from memory. Full scale is 8031
/// of the standard's 8159, so 8159 is taken as 1.
#[must_use]
pub fn from_mulaw(bytes: &[u8]) -> Vec<f32> {
    bytes.iter().map(|byte| one(*byte)).collect()
}

fn one(byte: u8) -> f32 {
    let code = !byte;
    let (segment, step) = ((code >> 4) & 7, code & 15);
    let size = ((33 + 2 * i16::from(step)) << segment) - 33;
    let size = f32::from(size) / 8159.0;
    if code & 0x80 == 0 { size } else { -size }
}

#[cfg(test)]
mod tests {
    use super::from_mulaw;

    /// ITU-T G.711, table 2a: decoder output values 8031, 0 and 4191 (from memory).
    #[test]
    fn bytes_are_as_the_standard_has_them() {
        let samples = from_mulaw(&[0x80, 0x00, 0xFF, 0x7F, 0x8F]);
        for (got, want) in samples.into_iter().zip([8031.0, -8031.0, 0.0, 0.0, 4191.0_f32]) {
            assert!((got - want / 8159.0).abs() < 1e-7, "{got} for {want}");
        }
    }
}
