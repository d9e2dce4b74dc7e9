//! A tap that is dry.

use super::{Kind, Lines, Stop, Warning};
use crate::home::Home;

pub(super) fn tap_dry(home: &Home, _: &Lines) -> Option<Stop> {
    (home.first_look.tap_dry == Some(true))
        .then(|| Stop::new("tap_dry", Warning::THAW, Kind::Today).taking_away())
}
