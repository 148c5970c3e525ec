/// How much to run, from the command line.
pub struct Options {
    /// Texts for the reader.
    pub texts: u64,
    /// Inputs for each calculator.
    pub inputs: u64,
    /// Where the generator begins.
    pub seed: u64,
    only: Option<String>,
}

impl Options {
    /// Nothing where the arguments are none of those known. Figures may be written `1e8`.
    pub fn read(arguments: impl Iterator<Item = String>) -> Option<Self> {
        let mut options = Options { texts: 1_000_000, inputs: 2000, seed: 1, only: None };
        let mut arguments = arguments;
        while let Some(name) = arguments.next() {
            let value = arguments.next()?;
            match name.as_str() {
                "--texts" => options.texts = count(&value)?,
                "--inputs" => options.inputs = count(&value)?,
                "--seed" => options.seed = count(&value)?,
                "--only" => options.only = Some(value),
                _ => return None,
            }
        }
        Some(options)
    }

    /// Whether the target is to be run.
    pub fn wants(&self, target: &str) -> bool {
        self.only.as_deref().is_none_or(|only| only == target)
    }
}

#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // checked
fn count(text: &str) -> Option<u64> {
    let count: f64 = text.parse().ok()?;
    (0.0..=1e12).contains(&count).then_some(count as u64)
}
