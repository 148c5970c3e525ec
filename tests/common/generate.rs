//! Inputs for any calculator, made from its field table alone.
#![allow(dead_code)] // each check file uses some of it

use tagstrip_core::value::{Field, Range, Scale, Shape, Value};

/// A small repeatable generator (xorshift64*, Vigna 2016), which may be led by bytes first.
pub struct Chance {
    state: u64,
    led: Vec<u8>,
}

impl Chance {
    /// From a seed; 0 is taken as 1.
    pub fn new(seed: u64) -> Self {
        let mut chance = Chance { state: seed.max(1), led: Vec::new() };
        for _ in 0..8 {
            chance.next();
        }
        chance
    }

    /// Led by `bytes`, two for each choice, as long as they last: what a fuzzer changes is what is chosen.
    pub fn fed(bytes: &[u8]) -> Self {
        Chance { led: bytes.iter().rev().copied().collect(), ..Chance::new(1) }
    }

    /// The next 64 bits.
    pub fn next(&mut self) -> u64 {
        if let Some(byte) = self.led.pop() {
            let second = self.led.pop().unwrap_or(0);
            return u64::from(byte) << 56 | u64::from(second) << 48;
        }
        self.state ^= self.state >> 12;
        self.state ^= self.state << 25;
        self.state ^= self.state >> 27;
        self.state.wrapping_mul(0x2545_F491_4F6C_DD1D)
    }

    /// Evenly from 0 to 1, 1 left out.
    pub fn unit(&mut self) -> f64 {
        (self.next() >> 11) as f64 / (1u64 << 53) as f64
    }

    /// Evenly from 0 to `count`, `count` left out.
    #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // below count
    pub fn below(&mut self, count: usize) -> usize {
        (self.unit() * count.max(1) as f64) as usize
    }

    /// True once in `times`.
    pub fn one_in(&mut self, times: usize) -> bool {
        self.below(times) == 0
    }
}

/// How wild the inputs are.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// Within the usual ranges.
    Usual,
    /// Anywhere within the ranges, ends included.
    Wide,
    /// Wrong shapes, figures out of range, unknown keys, now and then.
    Broken,
}

/// A record for `fields`. Unless it is to be broken, one of each group of which one is given, and the whole of a group
/// that belongs together or none of it.
pub fn record(fields: &'static [Field], kind: Kind, chance: &mut Chance) -> Value {
    let broken = kind == Kind::Broken;
    let (mut picked, mut pairs) = (Vec::new(), Vec::new());
    for field in fields {
        let left_out = field.optional || !matches!(field.start, tagstrip_core::value::Start::Nothing);
        let (alone, lot) = (field.one_of.is_none() && field.together.is_none(), chance.one_in(3));
        if (alone && left_out || broken) && lot {
            continue;
        }
        if !broken && !alone && !pick(field, fields, &mut picked, chance) {
            continue;
        }
        pairs.push((field.key.to_string(), one(field, kind, chance)));
    }
    if broken && chance.one_in(20) {
        pairs.push(("no_such_key".into(), 1.0.into()));
    }
    Value::Record(pairs)
}

/// Whether a field of a group is given; `picked` has what was drawn for each group before.
fn pick(
    field: &'static Field,
    fields: &'static [Field],
    picked: &mut Vec<(&'static str, &'static str)>,
    chance: &mut Chance,
) -> bool {
    let mut drawn = |group: &'static str, keys: &[&'static str]| {
        let before = picked.iter().find(|(name, _)| *name == group).map(|(_, key)| *key);
        before.unwrap_or_else(|| {
            let key = keys[chance.below(keys.len())];
            picked.push((group, key));
            key
        })
    };
    // Of a group that belongs together and has a member in a choice, the choice decides.
    let leader =
        field.together.and_then(|group| fields.iter().find(|one| one.together == Some(group) && one.one_of.is_some()));
    let chooser = leader.unwrap_or(field);
    match (chooser.one_of, field.together) {
        (Some(group), _) => {
            let keys: Vec<&str> = fields.iter().filter(|one| one.one_of == Some(group)).map(|one| one.key).collect();
            drawn(group, &keys) == chooser.key
        }
        (None, Some(group)) => drawn(group, &["given", "none"]) == "given",
        (None, None) => true,
    }
}

fn one(field: &'static Field, kind: Kind, chance: &mut Chance) -> Value {
    if kind == Kind::Broken && chance.one_in(12) {
        return broken(chance);
    }
    match &field.shape {
        Shape::Quantity(range) => Value::Number(figure(range, kind, chance)),
        Shape::Choice(choices) => choices[chance.below(choices.len())].into(),
        Shape::Flag => Value::Flag(chance.one_in(2)),
        Shape::Text(most) => text(*most, chance).into(),
        Shape::List(item, counts) => {
            let count = counts.least + chance.below(counts.most.min(counts.least + 5) - counts.least + 1);
            Value::List((0..count).map(|_| one(item, kind, chance)).collect())
        }
        Shape::Record(fields) => record(fields, kind, chance),
        Shape::Either(options) => one(&options[chance.below(options.len())], kind, chance),
    }
}

fn text(most: usize, chance: &mut Chance) -> String {
    let texts =
        ["4k7", "104", "473K", "yellow violet red gold", "2n2", "R47", "1M0", "Round", "branches[0].farads", "✓"];
    texts[chance.below(texts.len())].chars().take(most).collect()
}

fn figure(range: &Range, kind: Kind, chance: &mut Chance) -> f64 {
    if range.zero && chance.one_in(6) {
        return 0.0;
    }
    let usual = kind == Kind::Usual && range.usual.0 < range.usual.1;
    let (least, most) = if usual { range.usual } else { (range.least, range.most) };
    match chance.below(12) {
        0 if kind != Kind::Usual => least,
        1 if kind != Kind::Usual => most,
        _ if range.whole => (least + chance.unit() * (most - least)).round(),
        _ if range.scale == Scale::Log && least > 0.0 => {
            (least.ln() + chance.unit() * (most / least).ln()).exp().clamp(least, most)
        }
        _ => least + chance.unit() * (most - least),
    }
}

fn broken(chance: &mut Chance) -> Value {
    let texts = ["", "22Ok", "1,234", "10 kk", "-5", "NaN", "∞", "4k7 4k7", "µ", "1e400", "#18", "brown brown"];
    match chance.below(9) {
        0 => Value::Null,
        1 => Value::Number(f64::NAN),
        2 => Value::Number(f64::INFINITY),
        3 => Value::Number(-1e300),
        4 => Value::List(vec![Value::Null; chance.below(20)]),
        5 => Value::Record(vec![("x".into(), Value::Null)]),
        6 => Value::Flag(true),
        7 => Value::Number(chance.unit() * 1e12),
        _ => texts[chance.below(texts.len())].into(),
    }
}

/// The first figure in `value` that is not finite, by path.
pub fn not_finite(value: &Value, path: &str) -> Option<String> {
    match value {
        Value::Number(figure) => (!figure.is_finite()).then(|| format!("{path} = {figure}")),
        Value::Series(figures) => {
            figures.iter().position(|figure| !figure.is_finite()).map(|k| format!("{path}[{k}] = {}", figures[k]))
        }
        Value::List(items) => items.iter().enumerate().find_map(|(k, item)| not_finite(item, &format!("{path}[{k}]"))),
        Value::Record(pairs) => pairs.iter().find_map(|(key, value)| not_finite(value, &format!("{path}.{key}"))),
        _ => None,
    }
}
