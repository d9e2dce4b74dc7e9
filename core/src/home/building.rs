//! The building and where it stands.

use jiff::civil::Date;
use uom::si::f64::{Area, Length, Ratio, ThermodynamicTemperature, VolumeRate};
use uom::si::length::foot;

/// The building and where it stands.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Building {
    /// Five digits; `None` when nobody gave one.
    pub zip: Option<String>,
    /// ZIP code of another place whose weather is more like that of the home.
    pub weather_zip: Option<String>,
    /// Height of the home above the sea, where somebody knows it.
    pub elevation: Option<Length>,
    /// How many sections it came in.
    pub sections: Option<Sections>,
    /// Width of the whole home.
    pub width: Option<Length>,
    /// Length without the hitch.
    pub length: Option<Length>,
    /// Year on the data plate.
    pub year_built: Option<i16>,
    /// Rooms meant for sleeping.
    pub bedrooms: Option<u8>,
    /// What stands round it and breaks the wind.
    pub shelter: Option<Shelter>,
    /// What a test with a blower in the door found.
    pub leak_test: Option<LeakTest>,
    /// Leakage area of the whole home, where a draw has set it.
    pub leakage: Option<Area>,
    /// How far the air that really comes in is off what the models say, in errors of the models;
    /// `None` takes their word.
    pub infiltration_error: Option<Ratio>,
    /// What the thermostat is set to in winter.
    pub setpoint: Option<ThermodynamicTemperature>,
    /// What the thermometer indoors shows today.
    pub indoors: Option<ThermodynamicTemperature>,
    /// How it is cooled.
    pub cooling: Option<Cooling>,
    /// What lies on the ground below it.
    pub ground_below: Option<GroundBelow>,
    /// Part of the skirting is missing, so that wind blows under the home.
    pub skirting_open: Option<bool>,
    /// How much of its length is missing.
    pub skirting_gap: Option<Length>,
    /// Boards of insulation stand behind the skirting.
    pub skirting_insulated: Option<bool>,
    /// The vents in it.
    pub skirting_vents: Option<SkirtingVents>,
    /// Bales of hay or straw stand against it.
    pub hay_bales: Option<bool>,
    /// The board or fabric that holds the insulation of the floor.
    pub belly: Option<Belly>,
    /// Area of its holes together.
    pub belly_hole: Option<Area>,
    /// Where heat through the shell lies between the least and the most that is possible, from −1
    /// to 1; `None` takes what is usual.
    pub shell_off: Option<Ratio>,
    /// How often the windows are wet inside on cold mornings.
    pub wet_windows: Option<WetWindows>,
    /// Who owns home and lot.
    pub tenure: Option<Tenure>,
}

impl Building {
    /// Area of the floor, when width and length are known.
    #[must_use]
    pub fn floor(&self) -> Option<Area> {
        Some(self.width? * self.length?)
    }

    /// Width and length, as measured or as is usual for so many sections:
    /// [`USUAL_SIZES`](crate::sources::trade::USUAL_SIZES).
    #[must_use]
    pub fn size(&self) -> (Length, Length) {
        let [_, (width, length), _] = self.sizes();
        (width, length)
    }

    /// The least, the usual and the most that width and length may be; what was measured is all
    /// three.
    #[must_use]
    pub fn sizes(&self) -> [(Length, Length); 3] {
        let usual = match self.sections {
            Some(Sections::Double) => [(24.0, 44.0), (27.0, 56.0), (28.0, 66.0)],
            Some(Sections::Triple) => [(36.0, 48.0), (40.0, 60.0), (42.0, 70.0)],
            Some(Sections::Single) | None => [(12.0, 56.0), (14.0, 66.0), (16.0, 76.0)],
        };
        let feet = Length::new::<foot>;
        usual.map(|(width, length)| {
            (self.width.unwrap_or(feet(width)), self.length.unwrap_or(feet(length)))
        })
    }

    /// The same building with this width and length.
    #[must_use]
    pub fn of_size(&self, (width, length): (Length, Length)) -> Self {
        Self { width: Some(width), length: Some(length), ..self.clone() }
    }

    /// Height of the rooms: seven and a half feet
    /// ([`USUAL_SIZES`](crate::sources::trade::USUAL_SIZES)).
    #[must_use]
    pub fn wall_height() -> Length {
        Length::new::<foot>(7.5)
    }

    /// Built before the federal construction standard of 15 June 1976; `None` when the year is
    /// not known. All of 1976 counts as before.
    #[must_use]
    pub fn before_standard(&self) -> Option<bool> {
        Some(self.year_built? <= 1976)
    }

    /// Whether a year is no later than the day of the walk.
    #[must_use]
    pub fn could_be_built_in(year: i16, today: Date) -> bool {
        year <= today.year()
    }
}

/// How many sections a home came in.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Sections {
    /// One.
    Single,
    /// Two, joined at the marriage line.
    Double,
    /// Three.
    Triple,
}

/// What breaks the wind, from open to close.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Shelter {
    /// Open ground all round.
    OpenGround,
    /// A lone home in the country with some trees.
    LoneHome,
    /// Homes across the road.
    HomesAcrossRoad,
    /// Neighbours farther off than a home is high.
    NeighboursApart,
    /// Neighbours or trees nearer than a home is high.
    NeighboursClose,
}

impl Shelter {
    /// Shelter class of the handbook, 1 (open) to 5.
    #[must_use]
    pub fn class(self) -> u8 {
        self as u8 + 1
    }
}

/// What a test with a blower in the door found.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum LeakTest {
    /// Flow at 50 Pa, and the exponent where it was measured at several pressures.
    FlowAt50 {
        /// The flow.
        flow: VolumeRate,
        /// The exponent.
        exponent: Option<Ratio>,
    },
    /// Effective leakage area at 4 Pa.
    AreaAt4(Area),
    /// Equivalent leakage area at 10 Pa.
    AreaAt10(Area),
}

/// How a home is cooled.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Cooling {
    /// Not at all, or by fans.
    None,
    /// By an evaporative cooler.
    Evaporative,
    /// By a machine that dries the air as well.
    AirConditioner,
}

/// What lies on the ground below a home.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum GroundBelow {
    /// Bare soil.
    Bare,
    /// A plastic sheet over nearly all of it, and dry.
    Covered,
}

/// The vents in the skirting.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum SkirtingVents {
    /// Open.
    Open,
    /// Closed, buried or stuffed.
    Blocked,
    /// There are none.
    None,
}

/// The board or fabric below the floor that holds its insulation.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Belly {
    /// Whole.
    Sound,
    /// Torn, or with holes.
    Torn,
    /// Gone, and the insulation with it or hanging.
    Missing,
}

/// How often the windows are wet inside on cold mornings.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WetWindows {
    /// On most cold mornings.
    Often,
    /// On some.
    Sometimes,
    /// On none.
    Never,
}

/// Who owns home and lot.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Tenure {
    /// The resident owns both.
    OwnsHomeAndLot,
    /// The resident owns the home and rents the lot.
    OwnsHomeRentsLot,
    /// The resident rents the home.
    RentsHome,
}
