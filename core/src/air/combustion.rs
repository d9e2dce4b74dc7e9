//! The air that a burner needs, and what happens to a closet that keeps it out.

use crate::sources::air::{COMBUSTION_DEMAND, COMBUSTION_OPENINGS, COMBUSTION_VOLUME};
use crate::sources::{Confidence, Figure};
use crate::units::power::btu_per_hour;
use uom::si::f64::{Area, Power, Pressure, Volume, VolumeRate};
use uom::si::{
    area::{square_inch, square_meter},
    power::kilowatt,
    pressure::pascal,
    volume::cubic_foot,
    volume_rate::{cubic_meter_per_second, liter_per_second},
};

/// Where a closet takes the air for its burner from.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum AirFrom {
    /// Two openings outdoors, or by upright ducts: one near the top, one near the bottom.
    OutdoorsByTwo,
    /// Two level ducts to outdoors.
    OutdoorsByLevelDucts,
    /// One opening outdoors near the top.
    OutdoorsByOne,
    /// Two openings to the rest of the home.
    Indoors,
}

/// Free area that each opening of a closet must have: what the slats and the screen leave.
///
/// # Equation
///
/// A = P / r, and no less than 100 in² for air from indoors
///
/// # Symbols
///
/// | symbol | meaning                                        | unit      | in code      |
/// |--------|------------------------------------------------|-----------|--------------|
/// | A      | free area of each opening                      | in²       | return value |
/// | P      | input of all burners in the closet together    | Btu/h     | `input`      |
/// | r      | 4000, 2000, 3000 or 1000, by way of the air    | Btu/h in² | `from`       |
///
/// # Source
///
/// [`COMBUSTION_OPENINGS`]
///
/// # Valid for
///
/// Burners open to the closet. Local code and the label of the appliance go first.
///
/// # Leaves out
///
/// The heights and clearances that the code asks for as well, and what a louver takes away: where
/// nobody knows, three quarters of a metal one and a quarter of a wooden one are open.
///
/// # Examples
///
/// ```
/// use uom::si::{area::square_inch, f64::Power};
/// use winterseam::air::combustion::{AirFrom, opening};
/// use winterseam::units::power::btu_per_hour;
///
/// let heater = Power::new::<btu_per_hour>(40_000.0);
/// let each = opening(heater, AirFrom::OutdoorsByTwo).best.get::<square_inch>();
/// assert!((each - 10.0).abs() < 1e-9);
/// ```
#[must_use]
pub fn opening(input: Power, from: AirFrom) -> Figure<Area> {
    let (per_square_inch, least) = match from {
        AirFrom::OutdoorsByTwo => (4_000.0, 0.0),
        AirFrom::OutdoorsByLevelDucts => (2_000.0, 0.0),
        AirFrom::OutdoorsByOne => (3_000.0, 0.0),
        AirFrom::Indoors => (1_000.0, 100.0),
    };
    let area = (input.get::<btu_per_hour>() / per_square_inch).max(least);
    let area = Area::new::<square_inch>(area);
    Figure::exact(area, Confidence::Seen, &[&COMBUSTION_OPENINGS])
}

/// How a burner gets its air.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Draft {
    /// By the warmth of its flue alone.
    Natural,
    /// With the help of a fan.
    FanAssisted,
}

/// Room that a burner must stand open to, where its air comes from indoors alone.
///
/// # Equation
///
/// V = k · P / N, with k = 21 for natural draft and 15 with a fan
///
/// # Symbols
///
/// | symbol | meaning                      | unit            | in code       |
/// |--------|------------------------------|-----------------|---------------|
/// | V      | volume of the rooms          | ft³             | return value  |
/// | P      | input of the burner          | thousand Btu/h  | `input`       |
/// | N      | air changes of those rooms   | 1/h             | `air_changes` |
///
/// # Source
///
/// [`COMBUSTION_VOLUME`]
///
/// # Valid for
///
/// Known air changes above zero, up to 0.6 an hour (more counts as 0.6).
///
/// # Leaves out
///
/// Fans that pull against the burner.
///
/// # Examples
///
/// ```
/// use uom::si::{f64::Power, volume::cubic_foot};
/// use winterseam::air::combustion::{Draft, indoor_volume};
/// use winterseam::units::power::btu_per_hour;
///
/// let input = Power::new::<btu_per_hour>(30_000.0);
/// let room = indoor_volume(input, Draft::Natural, 0.6).unwrap();
/// assert!((room.best.get::<cubic_foot>() - 1050.0).abs() < 1e-6);
/// ```
#[must_use]
pub fn indoor_volume(input: Power, draft: Draft, air_changes: f64) -> Option<Figure<Volume>> {
    let factor = match draft {
        Draft::Natural => 21.0,
        Draft::FanAssisted => 15.0,
    };
    let thousands = input.get::<btu_per_hour>() / 1000.0;
    let volume = Volume::new::<cubic_foot>(factor * thousands / air_changes.min(0.6));
    (air_changes > 0.0).then(|| Figure::exact(volume, Confidence::Seen, &[&COMBUSTION_VOLUME]))
}

/// Air that a burner with natural draft takes out of its closet, with its flue.
///
/// # Equation
///
/// Q = 2 · 0.4 L/(s kW) · P
///
/// # Symbols
///
/// | symbol | meaning             | unit | in code      |
/// |--------|---------------------|------|--------------|
/// | Q      | air taken           | L/s  | return value |
/// | P      | input of the burner | kW   | `input`      |
///
/// # Source
///
/// [`COMBUSTION_DEMAND`]
///
/// # Valid for
///
/// Burners with a draft hood.
///
/// # Leaves out
///
/// A strong wind at the flue.
///
/// # Examples
///
/// ```
/// use uom::si::{f64::Power, volume_rate::liter_per_second};
/// use winterseam::air::combustion::demand;
/// use winterseam::units::power::btu_per_hour;
///
/// let air = demand(Power::new::<btu_per_hour>(40_000.0));
/// assert!((air.best.get::<liter_per_second>() - 9.38).abs() < 0.005);
/// ```
#[must_use]
pub fn demand(input: Power) -> Figure<VolumeRate> {
    let air = VolumeRate::new::<liter_per_second>(2.0 * 0.4 * input.get::<kilowatt>());
    Figure::exact(air, Confidence::Seen, &[&COMBUSTION_DEMAND])
}

/// Pressure that a burner pulls its closet down to, when no more than this stays open.
///
/// # Equation
///
/// Δp = ρ / 2 · (Q / A)²
///
/// # Symbols
///
/// | symbol | meaning                            | unit  | in code      |
/// |--------|------------------------------------|-------|--------------|
/// | Δp     | pressure below that of the rooms   | Pa    | return value |
/// | Q      | [`demand`] of the burner           | m³/s  | `input`      |
/// | A      | leakage area that is left          | m²    | `left_open`  |
/// | ρ      | density of air, 1.2                | kg/m³ | –            |
///
/// # Source
///
/// [`COMBUSTION_DEMAND`];
/// [`HANDBOOK_2021_CH16_ORIFICE`](crate::sources::air::HANDBOOK_2021_CH16_ORIFICE)
///
/// # Valid for
///
/// Openings whose flow goes with the root of the pressure; `None` where nothing is left open. At
/// 2 to 5 Pa a flue with natural draft begins to spill (from memory; a technician tests it).
///
/// # Leaves out
///
/// That a spilling burner takes less air: it is then the fumes that come in.
///
/// # Examples
///
/// ```
/// use uom::si::{area::square_centimeter, f64::{Area, Power}, pressure::pascal};
/// use winterseam::air::combustion::closet_pressure;
/// use winterseam::units::power::btu_per_hour;
///
/// let input = Power::new::<btu_per_hour>(40_000.0);
/// let left = Area::new::<square_centimeter>(20.0);
/// let pull = closet_pressure(input, left).unwrap().get::<pascal>();
/// assert!((pull - 13.19).abs() < 0.01);
/// ```
#[must_use]
pub fn closet_pressure(input: Power, left_open: Area) -> Option<Pressure> {
    const HALF_DENSITY: f64 = 0.6;
    let area = left_open.get::<square_meter>();
    let speed = demand(input).best.get::<cubic_meter_per_second>() / area;
    (area > 0.0).then(|| Pressure::new::<pascal>(HALF_DENSITY * speed * speed))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_closed_closet_and_still_rooms_have_no_answer() {
        let input = Power::new::<btu_per_hour>(40_000.0);
        assert_eq!(closet_pressure(input, Area::default()), None);
        assert_eq!(indoor_volume(input, Draft::Natural, 0.0), None);
    }
}
