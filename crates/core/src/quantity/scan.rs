/// A place in a text that moves on as it is read.
#[derive(Clone, Copy)]
pub(super) struct Scan<'a> {
    rest: &'a str,
}

impl<'a> Scan<'a> {
    /// At the text's beginning.
    pub const fn new(text: &'a str) -> Self {
        Scan { rest: text }
    }

    /// What is not read yet.
    pub const fn rest(self) -> &'a str {
        self.rest
    }

    /// The next character.
    pub fn peek(self) -> Option<char> {
        self.rest.chars().next()
    }

    /// Moves over `text` if it is next.
    pub fn eat(&mut self, text: &str) -> bool {
        let after = self.rest.strip_prefix(text);
        self.rest = after.unwrap_or(self.rest);
        after.is_some()
    }

    /// Moves over spaces.
    pub fn spaces(&mut self) {
        self.rest = self.rest.trim_start_matches(' ');
    }

    /// Moves over characters as long as they suit; answers them.
    pub fn run(&mut self, suits: impl Fn(char) -> bool) -> &'a str {
        let after = self.rest.trim_start_matches(suits);
        let taken = self.rest.get(..self.rest.len() - after.len()).unwrap_or("");
        self.rest = after;
        taken
    }

    /// Moves over digits; answers them.
    pub fn digits(&mut self) -> &'a str {
        self.run(|letter| letter.is_ascii_digit())
    }
}
