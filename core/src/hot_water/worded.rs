//! A burn time as it may be told: rounded down, in the words that people use.

use uom::si::{f64::Time, time::second};

/// The steps that a time is rounded down to, in seconds.
const SECONDS: [u32; 6] = [30, 15, 10, 5, 2, 1];
/// The same in minutes. With 3 and 4: just under five minutes told as two would be as wrong as it
/// is careful.
const MINUTES: [u32; 7] = [30, 10, 5, 4, 3, 2, 1];
/// The same in hours.
const HOURS: [u32; 5] = [5, 4, 3, 2, 1];

/// A time to tell. Never longer than the time that it stands for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum WordedTime {
    /// Less than so many seconds.
    UnderSeconds(u32),
    /// So many seconds or somewhat more.
    AboutSeconds(u32),
    /// So many minutes or somewhat more.
    AboutMinutes(u32),
    /// So many hours or somewhat more.
    AboutHours(u32),
    /// More than so many hours.
    OverHours(u32),
}

impl WordedTime {
    /// Rounds down; `None` is a time beyond [`LONGEST_S`](super::LONGEST_S).
    ///
    /// ```
    /// use uom::si::{f64::Time, time::second};
    /// use winterseam::hot_water::WordedTime;
    ///
    /// let told = |s| WordedTime::rounded_down(Some(Time::new::<second>(s)));
    /// assert_eq!(told(0.9), WordedTime::UnderSeconds(1));
    /// assert_eq!(told(256.2), WordedTime::AboutMinutes(4));
    /// assert_eq!(WordedTime::rounded_down(None), WordedTime::OverHours(6));
    /// ```
    #[must_use]
    pub fn rounded_down(time: Option<Time>) -> Self {
        let Some(time) = time else { return Self::OverHours(6) };
        let seconds = time.get::<second>();
        let step = |unit_s: f64, steps: &[u32]| {
            steps.iter().copied().find(|&n| f64::from(n) * unit_s <= seconds)
        };
        let hours = || step(3600.0, &HOURS).map(Self::AboutHours);
        let minutes = || step(60.0, &MINUTES).map(Self::AboutMinutes);
        let short = || step(1.0, &SECONDS).map(Self::AboutSeconds);
        hours().or_else(minutes).or_else(short).unwrap_or(Self::UnderSeconds(1))
    }
}

#[cfg(test)]
mod tests {
    use super::{Time, WordedTime, second};

    fn seconds(told: WordedTime) -> f64 {
        match told {
            WordedTime::UnderSeconds(_) => 0.0,
            WordedTime::AboutSeconds(n) => f64::from(n),
            WordedTime::AboutMinutes(n) => f64::from(n) * 60.0,
            WordedTime::AboutHours(n) | WordedTime::OverHours(n) => f64::from(n) * 3600.0,
        }
    }

    #[test]
    fn no_time_is_told_longer_than_it_is_nor_shorter_than_a_third() {
        let mut last = 0.0;
        for tenths in 10_u32..216_000 {
            let time = f64::from(tenths) / 10.0;
            let told = seconds(WordedTime::rounded_down(Some(Time::new::<second>(time))));
            assert!(told <= time && told > time / 3.01 && told >= last, "{time}: {told}");
            last = told;
        }
    }
}
