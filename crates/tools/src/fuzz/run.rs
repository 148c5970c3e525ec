use std::{
    cell::RefCell,
    collections::BTreeMap,
    fmt, panic,
    sync::atomic::{AtomicU64, Ordering},
    thread,
    time::{Duration, Instant},
};

use crate::generate::Chance;

/// As many inputs are made from one seed, so that the work can be shared out and stays the same.
const BLOCK: u64 = 1000;
/// As many faults are shown in full.
const SHOWN: u64 = 10;

/// What a run came to.
#[derive(Default)]
pub struct Tally {
    /// Inputs tried.
    pub count: u64,
    /// Inputs that were answered.
    pub answered: u64,
    /// Inputs that did what none may.
    pub faults: u64,
    /// Refusals by code.
    pub codes: BTreeMap<&'static str, u64>,
    slowest: Duration,
    seconds: f64,
}

impl Tally {
    /// Counts a refusal.
    pub fn refused(&mut self, code: &'static str) {
        *self.codes.entry(code).or_default() += 1;
    }

    /// Counts and shows what none may do.
    pub fn fault(&mut self, what: &str) {
        self.faults += 1;
        if self.faults <= SHOWN {
            eprintln!("fault: {what}");
        }
    }

    fn add(&mut self, other: Tally) {
        self.count += other.count;
        self.answered += other.answered;
        self.faults += other.faults;
        self.slowest = self.slowest.max(other.slowest);
        for (code, count) in other.codes {
            *self.codes.entry(code).or_default() += count;
        }
    }
}

impl fmt::Display for Tally {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Tally { count, answered, faults, codes, slowest, seconds } = self;
        let slowest = 1e3 * slowest.as_secs_f64();
        write!(
            out,
            "count {count} answered {answered} faults {faults} slowest_ms {slowest:.1} seconds {seconds:.0} refused"
        )?;
        codes.iter().try_for_each(|(code, count)| write!(out, " {code} {count}"))
    }
}

/// Throws `count` inputs at a target, on every core.
pub fn run(count: u64, seed: u64, target: &(impl Fn(&mut Chance, &mut Tally) + Sync)) -> Tally {
    let (next, start) = (AtomicU64::new(0), Instant::now());
    let work = || {
        let mut tally = Tally::default();
        loop {
            let block = next.fetch_add(1, Ordering::Relaxed);
            let from = block * BLOCK;
            if from >= count {
                return tally;
            }
            // An odd factor keeps blocks apart (2^64 over the golden ratio, Knuth's multiplicative hashing).
            let mut chance = Chance::new((seed << 40 ^ block).wrapping_mul(0x9E37_79B9_7F4A_7C15));
            for _ in from..count.min(from + BLOCK) {
                let begun = Instant::now();
                target(&mut chance, &mut tally);
                tally.count += 1;
                tally.slowest = tally.slowest.max(begun.elapsed());
            }
        }
    };
    let cores = thread::available_parallelism().map_or(1, usize::from);
    let mut whole = Tally::default();
    thread::scope(|scope| {
        let threads: Vec<_> = (0..cores).map(|_| scope.spawn(work)).collect();
        for thread in threads {
            match thread.join() {
                Ok(tally) => whole.add(tally),
                Err(_) => whole.faults += 1,
            }
        }
    });
    whole.seconds = start.elapsed().as_secs_f64();
    whole
}

thread_local! {
    static TRIED: RefCell<String> = const { RefCell::new(String::new()) };
}

/// Remembers what is tried, for a panic to show.
pub fn trying(input: impl FnOnce(&mut String)) {
    TRIED.with_borrow_mut(|tried| {
        tried.clear();
        input(tried);
    });
}

/// Shows the input of a panic before anything ends.
pub fn tell_of_panics() {
    let usual = panic::take_hook();
    panic::set_hook(Box::new(move |panic| {
        TRIED.with_borrow(|tried| eprintln!("fault: panic on {tried}"));
        usual(panic);
    }));
}
