//! How damp the air of a home is over the year.

use crate::physics::moist_air::{MoistAir, RelativeHumidity};
use crate::units::in_celsius;
use uom::si::f64::{Pressure, ThermodynamicTemperature};
use uom::si::pressure::pascal;

/// Outdoor temperature from which on windows stand open and nothing is added, °C;
/// [`ISO_13788`](crate::sources::moisture::ISO_13788).
const OPEN_WINDOWS_C: f64 = 20.0;

/// Vapour indoors.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum IndoorVapour {
    /// What a hygrometer showed, all year.
    Measured(RelativeHumidity),
    /// What people, cooking and washing add to the air from outdoors.
    Added(Dampness),
}

/// How much vapour people, cooking and washing add.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Dampness {
    /// Little for the size of the home, or drafty.
    Dry,
    /// Where nobody measured: at 20 °C indoors some 45 % when it is 0 °C outdoors, some 30 % at
    /// −10 °C ([`WINTER_HUMIDITY`](crate::sources::moisture::WINTER_HUMIDITY)). The range of such a
    /// guess reaches from `Dry` to `Damp`.
    Usual,
    /// Many people in little space, or tight.
    Damp,
    /// More than a home is meant to have.
    Wet,
}

impl Dampness {
    /// Vapour over that outdoors at 0 °C and below: the upper limits of classes 1 to 4 of
    /// [`ISO_13788`](crate::sources::moisture::ISO_13788).
    fn most_added(self) -> Pressure {
        Pressure::new::<pascal>(match self {
            Self::Dry => 270.0,
            Self::Usual => 540.0,
            Self::Damp => 810.0,
            Self::Wet => 1080.0,
        })
    }
}

impl IndoorVapour {
    /// The air of a room of this temperature; it never holds more than it can. `None` outside the
    /// saturation curve.
    #[must_use]
    pub fn air(self, room: ThermodynamicTemperature, outdoors: &MoistAir) -> Option<MoistAir> {
        match self {
            Self::Measured(humidity) => MoistAir::new(room, humidity, outdoors.pressure()),
            Self::Added(dampness) => {
                let added = dampness.most_added() * windows_shut(outdoors.dry_bulb());
                let vapour = outdoors.vapour_pressure() + added;
                MoistAir::with_vapour(room, vapour, outdoors.pressure())
            }
        }
    }
}

/// From 1 in frost to 0 from [`OPEN_WINDOWS_C`] on, along a straight line.
fn windows_shut(outdoors: ThermodynamicTemperature) -> f64 {
    (1.0 - in_celsius(outdoors) / OPEN_WINDOWS_C).clamp(0.0, 1.0)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::units::celsius;
    use uom::si::f64::Ratio;
    use uom::si::ratio::percent;

    fn humidity(dampness: Dampness, outdoors_c: f64) -> f64 {
        let pressure = Pressure::new::<pascal>(101_325.0);
        let damp = RelativeHumidity::new(Ratio::new::<percent>(80.0)).unwrap();
        let outdoors = MoistAir::new(celsius(outdoors_c), damp, pressure).unwrap();
        let room = IndoorVapour::Added(dampness).air(celsius(20.0), &outdoors).unwrap();
        room.relative_humidity().get::<percent>()
    }

    #[test]
    fn homes_are_as_damp_as_people_of_the_trade_find_them() {
        // Common practice: 30 to 50 % in a mild winter, 15 to 40 % in hard frost.
        assert!((30.0..35.0).contains(&humidity(Dampness::Dry, 0.0)));
        assert!((43.0..46.0).contains(&humidity(Dampness::Usual, 0.0)));
        assert!((15.0..22.0).contains(&humidity(Dampness::Dry, -10.0)));
        assert!((30.0..33.0).contains(&humidity(Dampness::Usual, -10.0)));
    }

    #[test]
    fn what_was_measured_is_taken_as_it_is() {
        let pressure = Pressure::new::<pascal>(101_325.0);
        let read = RelativeHumidity::new(Ratio::new::<percent>(38.0)).unwrap();
        let outdoors = MoistAir::new(celsius(-10.0), read, pressure).unwrap();
        let room = IndoorVapour::Measured(read).air(celsius(20.0), &outdoors);
        assert_eq!(room, MoistAir::new(celsius(20.0), read, pressure));
    }

    #[test]
    fn nothing_is_added_where_windows_stand_open() {
        for dampness in [Dampness::Dry, Dampness::Wet] {
            assert!((humidity(dampness, 20.0) - 80.0).abs() < 1e-9);
            assert!((humidity(dampness, 25.0) - 100.0).abs() < 1e-9, "no more than it holds");
        }
    }
}
