//! How to turn a dial without numbers down to a temperature, and never below.
//!
//! A mark on a dial is no temperature. What the coach knows of this dial it has from the readings
//! that were taken at its places, and what it knows of the wait from the tank.

use super::tank::Tank;
use crate::home::Turn;
use crate::units::warmer_by;
use uom::si::f64::{TemperatureInterval, ThermodynamicTemperature, Time, Volume};
use uom::si::temperature_interval::degree_fahrenheit;
use uom::si::time::{day, hour};

/// Within this above the target a tap is where it should be: the reach of a checked thermometer and
/// of the swing of a thermostat.
const NEAR_F: f64 = 3.0;
/// The most that a mark is reckoned to change before this dial was tried, and the least whatever
/// it showed; [`TURNING_DOWN`](crate::sources::water_heater::TURNING_DOWN),
/// [`DIALS`](crate::sources::water_heater::DIALS).
const MOST_A_MARK_F: f64 = 15.0;
const LEAST_A_MARK_F: f64 = 10.0;
/// Two readings with the same thermometer at the same tap agree within this (judgement).
const REPEATS_F: f64 = 2.0;
/// A dial is turned by quarters of a mark, and never by more than one at a time.
const STEPS_OF_A_MARK: f64 = 4.0;
const AT_ONCE: f64 = 1.0;

/// What to do with the dial next.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum Advice {
    /// Turn down by so many marks.
    Down(f64),
    /// Turn back up by so many marks: the last turn went too far.
    Back(f64),
    /// Leave the dial where it is.
    Stay,
}

/// What to do next with a dial that was tried at these places; `None` without a reading.
///
/// # Equation
/// ```text
/// step = ⌊4·(T − T*)/s⌋/4, at most one mark
/// s    = 15 °F a mark at first; then max(10, ΔT/Δm, min(15, (ΔT + 2)/Δm), the steepest ΔT'/Δm')
/// ```
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | T, T* | last reading, target | °F | `turns`, `target` |
/// | s | the most that a mark may change | °F | |
/// | ΔT, Δm | from the first reading and place to the last | °F, marks | |
/// | ΔT', Δm' | the same of one turn by half a mark or more | °F, marks | |
///
/// # Source
/// [`TURNING_DOWN`](crate::sources::water_heater::TURNING_DOWN),
/// [`DIALS`](crate::sources::water_heater::DIALS)
///
/// # Valid for
/// Dials whose next mark changes no more than 15 °F, and later no more than the most seen so far
/// or 10 °F. The dials of the manuals are like that from their mark HOT up. Below HOT a mark may
/// change 30 °F: a turn that went too far is found by the next reading and taken back by half.
///
/// # Leaves out
/// Readings that were taken before the tank had settled: [`wait`] says when.
///
/// # Examples
/// ```
/// use winterseam::home::Turn;
/// use winterseam::hot_water::coach::{Advice, advice};
/// use winterseam::units::fahrenheit;
///
/// let at = |marks_down, tap| Turn { marks_down, tap: fahrenheit(tap) };
/// let next = |turns: &[Turn]| advice(turns, fahrenheit(120.0)).unwrap();
/// assert_eq!(next(&[at(0.0, 141.0)]), Advice::Down(1.0));
/// assert_eq!(next(&[at(0.0, 141.0), at(1.0, 130.0)]), Advice::Down(0.75));
/// assert_eq!(next(&[at(0.0, 141.0), at(1.0, 130.0), at(1.75, 122.0)]), Advice::Stay);
/// ```
#[must_use]
pub fn advice(turns: &[Turn], target: ThermodynamicTemperature) -> Option<Advice> {
    let last = turns.last()?;
    let over = fahrenheit_of(warmer_by(last.tap, target));
    if over > NEAR_F {
        let marks = in_steps((over / most_a_mark(turns)).min(AT_ONCE));
        return Some(if marks > 0.0 { Advice::Down(marks) } else { Advice::Stay });
    }
    let went_too_far = over < -NEAR_F && turns.len() > 1;
    Some(if went_too_far { Advice::Back(half_of_the_last(turns)) } else { Advice::Stay })
}

/// The most that a mark of this dial may change.
fn most_a_mark(turns: &[Turn]) -> f64 {
    let span = |from: &Turn, to: &Turn| {
        (to.marks_down - from.marks_down, fahrenheit_of(warmer_by(from.tap, to.tap)))
    };
    let all = match turns {
        [first, .., last] => span(first, last),
        _ => (0.0, 0.0),
    };
    if all.0 <= 0.0 {
        return MOST_A_MARK_F;
    }
    // Over less than half a mark two readings tell more of the thermometer than of the dial.
    let steps = turns.windows(2).map(|pair| span(&pair[0], &pair[1]));
    let steep = steps.filter(|step| step.0 >= 0.5).map(|(marks, fell)| fell / marks);
    let doubted = ((all.1 + REPEATS_F) / all.0).min(MOST_A_MARK_F);
    steep.fold(LEAST_A_MARK_F, f64::max).max(all.1 / all.0).max(doubted)
}

fn half_of_the_last(turns: &[Turn]) -> f64 {
    let down = |turn: &Turn| turn.marks_down;
    let step = match turns {
        [.., before, last] => down(last) - down(before),
        _ => 0.0,
    };
    in_steps((step / 2.0).min(AT_ONCE)).max(1.0 / STEPS_OF_A_MARK)
}

/// Rounded down, but not for a rounding of the last digit.
fn in_steps(marks: f64) -> f64 {
    (marks * STEPS_OF_A_MARK + 1e-9).floor() / STEPS_OF_A_MARK
}

fn fahrenheit_of(apart: TemperatureInterval) -> f64 {
    apart.get::<degree_fahrenheit>()
}

/// Where a tank stands while it settles.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Around {
    /// The room or closet.
    pub place: ThermodynamicTemperature,
    /// Water that comes in.
    pub inlet: ThermodynamicTemperature,
    /// Hot water that people draw in a day.
    pub drawn_a_day: Volume,
}

/// How long a tank takes until a reading tells of the new place of the dial.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Wait {
    /// Water whose use clears the tank of the old heat.
    pub tankful: Volume,
    /// The wait.
    pub time: Time,
}

/// When to read again after the dial was turned from a reading to a target.
///
/// # Equation
/// `t = min(V/v, t_cool) + t_recover + 1 h`
///
/// # Symbols
/// | symbol | meaning | unit | name |
/// |---|---|---|---|
/// | t | wait | s | [`Wait::time`] |
/// | V, v | water in the tank, hot water drawn in a day | m³, m³/d | `tank`, `around` |
/// | `t_cool` | the tank cools by itself | s | [`Tank::cooling_time`] |
/// | `t_recover` | burner or element warms a tankful of cold water | s | [`Tank::recovery_time`] |
///
/// # Source
/// Balance of the tank; hot water lies in layers, so a whole tankful has to go:
/// [`TURNING_DOWN`](crate::sources::water_heater::TURNING_DOWN). An hour without draw before a
/// reading is common practice.
///
/// # Valid for
/// Tanks. "A couple of hours", as often advised, shows nothing: without a draw a tank falls by 1 to
/// 4 °F in that time.
///
/// # Leaves out
/// A pilot flame, which holds the old heat for longer.
///
/// # Examples
/// ```
/// use uom::si::f64::{Power, ThermalConductance, Volume};
/// use uom::si::{power::watt, thermal_conductance::watt_per_kelvin, time::hour, volume::gallon};
/// use winterseam::hot_water::{coach::{Around, wait}, tank::Tank};
/// use winterseam::units::fahrenheit;
///
/// let tank = Tank {
///     volume: Volume::new::<gallon>(40.0),
///     loss: ThermalConductance::new::<watt_per_kelvin>(4.16),
///     heating: Power::new::<watt>(8_900.0),
/// };
/// let drawn_a_day = Volume::new::<gallon>(40.0);
/// let around = Around { place: fahrenheit(67.5), inlet: fahrenheit(58.0), drawn_a_day };
/// let wait = wait(&tank, fahrenheit(140.0), fahrenheit(120.0), &around);
/// // No draw would take 13.5 h, a tankful a day; then 40 min of burner and an hour of rest.
/// assert!((wait.time.get::<hour>() - 15.2).abs() < 0.1);
/// ```
#[must_use]
pub fn wait(
    tank: &Tank,
    from: ThermodynamicTemperature,
    to: ThermodynamicTemperature,
    around: &Around,
) -> Wait {
    let by_use = Time::new::<day>((tank.volume / around.drawn_a_day).value);
    let cleared = match tank.cooling_time(from, to, around.place) {
        Some(by_itself) if by_itself < by_use => by_itself,
        _ => by_use,
    };
    let recovery = tank.recovery_time(around.inlet, to);
    Wait { tankful: tank.volume, time: cleared + recovery + Time::new::<hour>(1.0) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::{fahrenheit, in_fahrenheit};

    /// The tap of a dial that is turned as the coach says, until it says to stay.
    fn walked(start_f: f64, tap_at: impl Fn(f64) -> f64) -> Vec<Turn> {
        let mut turns = vec![Turn { marks_down: 0.0, tap: fahrenheit(start_f) }];
        for _ in 0..30 {
            let down = match advice(&turns, fahrenheit(120.0)).expect("a reading") {
                Advice::Stay => return turns,
                Advice::Down(marks) => marks,
                Advice::Back(marks) => -marks,
            };
            let marks_down = turns.last().expect("one").marks_down + down;
            turns.push(Turn { marks_down, tap: fahrenheit(tap_at(marks_down)) });
        }
        panic!("still turning: {turns:?}");
    }

    #[test]
    fn even_dials_of_every_reach_come_near_the_target_and_never_below_it() {
        for tenths in 40..=150_u32 {
            let a_mark = f64::from(tenths) / 10.0;
            for start in 124..=158_u32 {
                let start = f64::from(start);
                let turns = walked(start, |down| start - a_mark * down);
                assert!(turns.iter().all(|turn| in_fahrenheit(turn.tap) >= 120.0 - 1e-9));
                let end = in_fahrenheit(turns.last().expect("one").tap);
                assert!(end <= 124.0, "{a_mark} a mark from {start}: {end}");
            }
        }
    }

    /// The dials of three manuals, from their hottest mark; the tap as marked or hotter.
    #[test]
    fn the_dials_of_manuals_are_walked_down_to_the_target_and_not_below() {
        let dials: [&[f64]; 3] = [
            &[155.0, 150.0, 140.0, 130.0, 120.0, 110.0],
            &[155.0, 150.0, 140.0, 130.0, 120.0, 90.0],
            &[160.0, 150.0, 140.0, 130.0, 120.0],
        ];
        for dial in dials {
            for offset in [0.0, -3.0, -8.0] {
                let tap_at = |down: f64| {
                    let at = down.floor().min(3.0);
                    #[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
                    let i = at as usize;
                    dial[i] + (dial[i + 1] - dial[i]) * (down - at) + offset
                };
                for turn in walked(dial[0] + offset, tap_at) {
                    assert!(in_fahrenheit(turn.tap) >= 120.0 - 1e-9, "{turn:?}");
                }
            }
        }
    }

    #[test]
    fn a_turn_that_went_too_far_is_taken_back() {
        // The last mark changes 30 °F, as below HOT on one dial.
        let tap_at =
            |down: f64| if down <= 1.0 { 140.0 - 10.0 * down } else { 130.0 - 30.0 * (down - 1.0) };
        let turns = walked(140.0, tap_at);
        let end = in_fahrenheit(turns.last().expect("one").tap);
        assert!((117.0..=123.5).contains(&end), "{turns:?}");
    }

    #[test]
    fn without_a_turn_a_cool_tap_is_left_alone() {
        let cool = Turn { marks_down: 0.0, tap: fahrenheit(105.0) };
        assert_eq!(advice(&[cool], fahrenheit(120.0)), Some(Advice::Stay));
        assert_eq!(advice(&[], fahrenheit(120.0)), None);
    }

    #[test]
    fn readings_in_any_order_never_ask_for_more_than_a_mark() {
        for tap in (60..=230).map(f64::from) {
            for other in (60..=230).step_by(10).map(f64::from) {
                let turns = [
                    Turn { marks_down: 0.0, tap: fahrenheit(other) },
                    Turn { marks_down: 0.5, tap: fahrenheit(tap) },
                ];
                let marks = match advice(&turns, fahrenheit(120.0)).expect("readings") {
                    Advice::Down(marks) | Advice::Back(marks) => marks,
                    Advice::Stay => continue,
                };
                assert!((0.25..=1.0).contains(&marks), "{tap} {other}: {marks}");
            }
        }
    }
}
