//! When gaps stay open for now.

use super::{Kind, Stop, airflow};
use crate::home::{Alarm, Cooling, GroundBelow, Home};

/// Why no gap is closed for now.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoTightening {
    /// Someone has to leave, something is switched off, or the oven heats the home.
    StopOpen,
    /// Something burns, or may, and no carbon monoxide alarm is known to work.
    AlarmFirst,
    /// An open burner takes its air from the rooms, and no technician looked at it.
    TechnicianFirst,
    /// The furnace is short of air and overheats.
    AirflowFirst,
    /// Hot and humid, cooled, and the ground below is bare or nobody looked.
    MoistureFirst,
}

impl NoTightening {
    /// Stable word for programs and words.
    #[must_use]
    pub fn word(self) -> &'static str {
        match self {
            Self::StopOpen => "stop_open",
            Self::AlarmFirst => "alarm_first",
            Self::TechnicianFirst => "technician_first",
            Self::AirflowFirst => "airflow_first",
            Self::MoistureFirst => "moisture_first",
        }
    }
}

/// Whether gaps may be closed now.
///
/// # Errors
///
/// Why they stay open for now.
pub fn may_tighten(home: &Home, stops: &[Stop], hot_humid: bool) -> Result<(), NoTightening> {
    let oven = home.first_look.oven_for_heat == Some(true);
    let burns = home.burner_may_need_air() || home.something_burns() != Some(false);
    let cooled = !matches!(home.building.cooling, Some(Cooling::None | Cooling::Evaporative));
    if oven || stops.iter().any(|stop| stop.kind <= Kind::Off) {
        Err(NoTightening::StopOpen)
    } else if burns && home.first_look.co_alarm != Some(Alarm::Working) {
        Err(NoTightening::AlarmFirst)
    } else if home.burner_breathes_rooms() {
        Err(NoTightening::TechnicianFirst)
    } else if airflow::is_starved(home) {
        Err(NoTightening::AirflowFirst)
    } else if hot_humid && cooled && home.building.ground_below != Some(GroundBelow::Covered) {
        Err(NoTightening::MoistureFirst)
    } else {
        Ok(())
    }
}
