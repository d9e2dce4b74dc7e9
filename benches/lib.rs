//! The work that is timed: by `models` for itself, by `peers` beside Python and JavaScript. See
//! README.md.

mod air;
mod heat;
mod home;
mod money;

/// Some work, done again and again.
pub struct Work {
    /// What it is; peers report under the same name.
    pub name: &'static str,
    /// How many times the thing that is counted is done in one run.
    pub count: u32,
    /// Does it; the sum that comes out shows that peers do the same work.
    pub run: fn() -> f64,
}

/// All of it.
#[must_use]
pub fn works() -> Vec<Work> {
    vec![
        Work { name: "air leakage of a home, hours", count: air::HOURS, run: air::leakage },
        Work { name: "enhanced leakage, hours", count: air::HOURS, run: air::enhanced },
        Work { name: "moist air, states", count: air::STATES, run: air::moist },
        Work { name: "loss of a pipe, pipes", count: heat::PIPES, run: heat::pipes },
        Work { name: "warming of skin, people", count: heat::SKINS, run: heat::skins },
        Work { name: "burn time, taps", count: heat::TAPS, run: heat::burns },
        Work { name: "hours of a year, years", count: 1, run: home::year },
        Work { name: "year of a cable, years", count: 1, run: home::cable },
        Work { name: "year of a home, years", count: 1, run: home::balance },
        Work { name: "plan of the demo home, plans", count: 1, run: home::plan },
        Work { name: "worth of a repair, repairs", count: money::REPAIRS, run: money::worths },
    ]
}
