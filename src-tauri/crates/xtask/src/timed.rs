//! Times of what is repeated, by the clock on the wall and by the processor's own.

use std::time::Instant;

/// How long one thing took, in ms.
#[derive(Clone, Copy)]
pub(crate) struct Spent {
    /// By the clock on the wall.
    pub(crate) wall: f64,
    /// As long as this thread had a processor; none where the system does not tell.
    pub(crate) busy: Option<f64>,
}

/// Times of one thing that was repeated.
#[derive(Default)]
pub(crate) struct Times(Vec<Spent>);

/// What a piece of work gives, and how long it took.
pub(crate) fn once<T>(work: impl FnOnce() -> T) -> (T, Spent) {
    let (before, began) = (busy(), Instant::now());
    let done = work();
    let wall = began.elapsed().as_secs_f64() * 1e3;
    let busy = busy().zip(before).map(|(after, before)| (after - before) / 1e6);
    (done, Spent { wall, busy })
}

/// Nanoseconds that this thread has had a processor (Linux).
fn busy() -> Option<f64> {
    let told = std::fs::read_to_string("/proc/thread-self/schedstat").ok()?;
    told.split_whitespace().next()?.parse().ok()
}

impl Times {
    /// Notes one more.
    pub(crate) fn push(&mut self, spent: Spent) {
        self.0.push(spent);
    }

    /// Of so many runs.
    ///
    /// # Errors
    /// Those of the work.
    pub(crate) fn of<E>(runs: u64, mut work: impl FnMut(u64) -> Result<(), E>) -> Result<Self, E> {
        let mut times = Self::default();
        for run in 0..runs {
            let (done, spent) = once(|| work(run));
            done?;
            times.push(spent);
        }
        Ok(times)
    }

    /// That part of all took no longer by the wall: 0.5 is the middle, 1 the worst. Of the processor's time the mean counts:
    /// the system tells it a few milliseconds at a time.
    pub(crate) fn at(&self, part: f64) -> Spent {
        let mut walls: Vec<f64> = self.0.iter().map(|spent| spent.wall).collect();
        walls.sort_by(f64::total_cmp);
        let wall = walls.get(((walls.len() as f64 - 1.0) * part).round() as usize);
        let busy: Option<f64> = self.0.iter().map(|spent| spent.busy).sum();
        Spent { wall: wall.copied().unwrap_or(f64::NAN), busy: busy.map(|busy| busy / self.0.len() as f64) }
    }

    /// The middle.
    pub(crate) fn middle(&self) -> Spent {
        self.at(0.5)
    }
}
