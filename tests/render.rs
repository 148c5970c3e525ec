//! Clips through whole stages: against the response, against harmonic balance, overdriven, refused, and bit for bit.

use crate::common::generate::Chance;
use std::f64::consts::PI;
use tagstrip_core::{
    calculators::{Rendered, Want, render, work},
    value::Value,
};
#[cfg(target_arch = "wasm32")]
use wasm_bindgen_test::wasm_bindgen_test;

const RATE: f64 = 48e3;

/// One hash of a rendering on every platform; no expectation of physics. Put the new native one here when the method
/// changes on purpose.
const EXPECTED: u64 = 0x2397_1eb7_e2c4_71d9;

fn tone(hertz: f64, seconds: f64) -> Vec<f32> {
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // a second or so
    let count = (seconds * RATE) as usize;
    #[allow(clippy::cast_possible_truncation)] // sound
    (0..count).map(|n| (2.0 * PI * hertz * n as f64 / RATE).sin() as f32).collect()
}

/// The parts of a wave at some harmonics of a frequency that fits the span, which begins after `skip` seconds.
fn amplitudes<const N: usize>(samples: &[f32], hertz: f64, skip: f64, span: f64) -> [f64; N] {
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // within the clip
    let (first, count) = ((skip * RATE).round() as usize, (span * RATE).round() as usize);
    core::array::from_fn(|harmonic| {
        let (mut re, mut im) = (0.0, 0.0);
        for (n, sample) in samples[first..first + count].iter().enumerate() {
            let turn = 2.0 * PI * hertz * (harmonic as f64 + 1.0) * n as f64 / RATE;
            re += f64::from(*sample) * turn.cos();
            im += f64::from(*sample) * turn.sin();
        }
        2.0 * re.hypot(im) / count as f64
    })
}

fn inputs(pairs: &[(&str, f64)]) -> Value {
    Value::Record(pairs.iter().map(|(key, figure)| ((*key).into(), (*figure).into())).collect())
}

fn how(position: f64, linear: bool) -> Value {
    Value::record([("position", position.into()), ("linear", linear.into())])
}

fn rendered(inputs: &Value, clip: &[f32], position: f64, linear: bool) -> Rendered {
    render(inputs, clip, RATE, &how(position, linear)).expect("a rendering")
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn small_tones_come_out_as_the_response_says() {
    const VOLTS: f64 = 100e-6;
    for (bass, treble) in [(0.0, 0.0), (1.0, 1.0), (0.2, 0.45)] {
        let given = inputs(&[("microphone_volts", VOLTS), ("bass", bass), ("treble", treble)]);
        let outcome = work("voice", &given, Want { curves: true, ..Want::default() }).expect("an answer");
        let line = outcome.at("curves[0].lines[1]").expect("the second position");
        let series = |key: &str| match line.get(key) {
            Some(Value::Series(figures)) => figures.clone(),
            _ => panic!("no figures"),
        };
        let (x, y) = (series("x"), series("y"));
        for want_hertz in [200.0, 1000.0, 2500.0, 4000.0, 7680.0] {
            let at = x.partition_point(|hertz| *hertz < want_hertz);
            let share = (want_hertz / x[at - 1]).ln() / (x[at] / x[at - 1]).ln();
            let want = y[at - 1] + share * (y[at] - y[at - 1]);
            for linear in [true, false] {
                let out = rendered(&given, &tone(want_hertz, 0.7), 2.0, linear);
                let [peak] = amplitudes(&out.samples, want_hertz, 0.4, 0.2);
                let off = 20.0 * (peak / (VOLTS * 2.0_f64.sqrt())).log10() - want;
                let within = if want_hertz > 4000.0 { 0.25 } else { 0.1 };
                assert!(off.abs() < within, "{bass} {treble} {want_hertz} Hz: off {off} dB, linear {linear}");
            }
        }
    }
}

/// Rows worked by numpy: the first three harmonics of 1 kHz, grid current included.
#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_loud_tone_bends_as_harmonic_balance_says() {
    let rows = crate::common::rows(include_str!("vectors/render_harmonics.tsv"));
    assert_eq!(rows.len(), 6);
    let (mut worst, mut faults) = (0.0_f64, Vec::new());
    for row in rows {
        let given = crate::common::value(&serde_json::from_str(row[1]).expect("well-formed inputs"));
        let out = rendered(&given, &tone(1000.0, 2.5), 1.0, false);
        let got: [f64; 3] = amplitudes(&out.samples, 1000.0, 2.2, 0.2);
        for (harmonic, got) in got.into_iter().enumerate() {
            let want: f64 = row[4 + harmonic].parse().expect("a figure");
            let off = 20.0 * (got / want).log10();
            worst = worst.max(off.abs());
            if off.abs() > 0.1 {
                faults.push(format!("{} H{}: {got} for {want}, off {off:.3} dB", row[0], harmonic + 1));
            }
        }
    }
    println!("render.harmonics 6 worst {worst:.4}");
    assert!(faults.is_empty(), "{}", faults.join("\n"));
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn overdriven_stages_bottom_and_nothing_fails() {
    for volts in [4.0, 30.0, 300.0] {
        for grid_ohms in [1e3, 1e6] {
            let given = inputs(&[("microphone_volts", volts), ("grid_ohms", grid_ohms), ("microphone_ohms", 600.0)]);
            let out = rendered(&given, &tone(700.0, 0.1), 1.0, false);
            assert!(out.samples.iter().all(|sample| sample.is_finite()), "{volts} V");
            assert!(out.peak_volts < 250.0, "{volts} V: {} V out of a supply of 250", out.peak_volts);
            assert!(out.grid_current, "{volts} V");
        }
    }
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_clip_is_scaled_taken_to_our_rate_and_given_a_tail() {
    let given = inputs(&[("microphone_volts", 1e-3)]);
    let clip = tone(500.0, 0.5);
    let loud: Vec<f32> = clip.iter().map(|sample| 0.25 + 30.0 * sample).collect();
    let (out, again) = (rendered(&given, &clip, 1.0, true), rendered(&given, &loud, 1.0, true));
    assert_eq!(out.samples.len(), clip.len() + 12_000);
    for (a, b) in out.samples.iter().zip(&again.samples) {
        assert!((a - b).abs() < 1e-6, "{a} {b}");
    }
    for rate in [8e3, 11_025.0, 44.1e3, 96e3] {
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // half a second
        let count = (0.5 * rate) as usize;
        #[allow(clippy::cast_possible_truncation)] // sound
        let clip: Vec<f32> = (0..count).map(|n| (2.0 * PI * 500.0 * n as f64 / rate).sin() as f32).collect();
        let odd = render(&given, &clip, rate, &how(1.0, true)).expect("a rendering");
        let ([want], [got]) = (amplitudes(&out.samples, 500.0, 0.2, 0.2), amplitudes(&odd.samples, 500.0, 0.2, 0.2));
        assert!((20.0 * (got / want).log10()).abs() < 0.01, "{rate} Hz: {got} for {want}");
    }
    let hour = vec![0.5_f32; 4_000 * 25];
    let noisy: Vec<f32> = hour.iter().enumerate().map(|(n, s)| if n % 2 == 0 { *s } else { -*s }).collect();
    let out = render(&given, &noisy, 4e3, &Value::Null).expect("a rendering");
    assert!(out.samples.len().abs_diff(20 * 48_000 + 12_000) < 4, "the first 20 s: {}", out.samples.len());
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn what_cannot_be_rendered_is_refused_with_its_field() {
    let codes = |clip: &[f32], rate: f64, how: &Value| -> Vec<(String, &'static str)> {
        let problems = render(&inputs(&[]), clip, rate, how).expect_err("a refusal");
        problems.into_iter().map(|problem| (problem.field, problem.code)).collect()
    };
    let clip = tone(500.0, 0.1);
    let refused = |clip: &[f32], code: &'static str| {
        assert_eq!(codes(clip, RATE, &Value::Null), vec![("clip.samples".into(), code)]);
    };
    refused(&[], "too_few");
    refused(&[0.0; 900], "silent");
    refused(&[0.3; 900], "silent");
    refused(&[0.1, f32::NAN], "not_a_figure");
    let wrong = codes(&clip, 10.0, &Value::record([("position", 3.0.into()), ("seconds", "x".into())]));
    let want = [("clip.rate", "too_small"), ("seconds", "wrong_shape"), ("position", "no_such_position")];
    assert_eq!(wrong, want.map(|(field, code)| (field.into(), code)));
    for position in [0.0, 1.5, f64::NAN] {
        assert_eq!(codes(&clip, RATE, &how(position, false)), vec![("position".into(), "no_such_position")]);
    }
    let problems = render(&inputs(&[("plate_ohms", -1.0)]), &clip, f64::NAN, &Value::Null).expect_err("a refusal");
    assert_eq!(problems.len(), 2, "{problems:?}");
}

#[cfg_attr(target_arch = "wasm32", wasm_bindgen_test)]
#[cfg_attr(not(target_arch = "wasm32"), test)]
fn a_rendering_has_the_same_bits_everywhere() {
    let mut chance = Chance::new(5);
    // noise in bursts, by whole figures alone: a sine would differ from machine to machine
    #[allow(clippy::cast_possible_truncation)] // sound
    let clip: Vec<f32> = (0..20_000).map(|n| if n / 4000 % 2 == 0 { chance.unit() as f32 } else { 0.1 }).collect();
    let mut hash: u64 = 0xCBF2_9CE4_8422_2325;
    for (volts, position) in [(0.03, 1.0), (0.5, 2.0), (30.0, 1.0)] {
        let out = render(&inputs(&[("microphone_volts", volts)]), &clip, 44.1e3, &how(position, false));
        for sample in out.expect("a rendering").samples {
            hash = (hash ^ u64::from(sample.to_bits())).wrapping_mul(0x0000_0100_0000_01B3);
        }
    }
    #[cfg(target_arch = "wasm32")]
    wasm_bindgen_test::console_log!("render.hash {hash:016x}");
    #[cfg(not(target_arch = "wasm32"))]
    println!("render.hash {hash:016x}");
    assert_eq!(hash, EXPECTED, "{hash:016x}");
}
