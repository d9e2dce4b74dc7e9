//! What burns in a home, and the air that it may need. What nobody has seen counts as an open
//! burner.

use super::{Fuel, Gap, GapPlace, HeaterKind, Home, LeadsTo};

impl Home {
    /// Whether something burns here; `None` when that is not known. An oven or a flame used for
    /// warmth burns; where the main heat does not hold, something else may.
    #[must_use]
    pub fn something_burns(&self) -> Option<bool> {
        let look = &self.first_look;
        let soot = [self.heating.soot, self.water_heater.soot];
        let mut signs = [look.oven_for_heat, look.flame_indoors].into_iter().chain(soot);
        let flame = signs.any(|seen| seen == Some(true));
        let heater = self.water_heater.kind.map(HeaterKind::burns);
        match (self.heating.fuel.map(Fuel::burns), heater) {
            _ if flame => Some(true),
            (Some(true), _) | (_, Some(true)) => Some(true),
            (Some(false), Some(false)) if look.heat_holds != Some(false) => Some(false),
            _ => None,
        }
    }

    /// Whether a burner may draw air from a closet, so that its openings stay open: any water
    /// heater but an electric one, or a furnace whose sealed label nobody saw.
    #[must_use]
    pub fn burner_may_need_air(&self) -> bool {
        let electric_tank = self.water_heater.kind.is_some_and(|kind| !kind.burns());
        let furnace_without = self.heating.fuel.is_some_and(|fuel| !fuel.burns())
            || self.heating.sealed_label_seen == Some(true);
        !(electric_tank && furnace_without)
    }

    /// Whether a burner may draw its air through this gap: it lies at or leads to a closet, or
    /// nobody knows where a panel or hole leads. Beside an open burner a panel or hole counts whatever
    /// is said of what lies behind it: the floor of a closet leads to the belly too. A sealed burner keeps its outer and floor openings
    /// as well.
    #[must_use]
    pub fn may_feed_a_burner(&self, gap: &Gap) -> bool {
        let closet = matches!(
            gap.place,
            GapPlace::WaterHeaterCloset | GapPlace::FurnaceCloset | GapPlace::CoilCabinet
        );
        let could_be_closet =
            matches!(gap.place, GapPlace::AccessPanel | GapPlace::PipeHole | GapPlace::Elsewhere);
        let leads_there = match gap.leads_to {
            Some(leads_to) => leads_to == LeadsTo::ClosetWithOutsideAir,
            None => could_be_closet,
        };
        let may_burn = self.something_burns() != Some(false);
        (may_burn && (closet || leads_there)) || (self.burner_may_need_air() && could_be_closet)
    }
}
