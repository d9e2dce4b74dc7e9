//! What burns in a home, and the air that it may need. What nobody has seen counts as an open
//! burner.

use super::{AirOpenings, Fuel, Gap, GapPlace, HeaterKind, HeaterPlace, Home, LeadsTo};

impl Home {
    /// A flame, or what one left behind, that someone saw.
    fn flame_seen(&self) -> bool {
        let look = &self.first_look;
        let soot = [self.heating.soot, self.water_heater.soot];
        let flames = [
            look.oven_for_heat,
            look.flame_indoors,
            look.other_burner,
            self.water_heater.shares_closet,
        ];
        let stove = self.heating.stove_clear.is_some();
        stove || flames.into_iter().chain(soot).any(|seen| seen == Some(true))
    }

    /// Whether a fan that blows out may pull fumes in: a burner that nobody saw to be absent or
    /// sealed.
    #[must_use]
    pub fn fan_may_pull_fumes(&self) -> bool {
        self.burner_may_need_air()
            || self.something_burns().is_none()
            || self.flame_seen()
            || self.heating.fuel.is_some_and(Fuel::in_a_stove)
    }

    /// Whether an open burner takes its air from the rooms, and no technician looked at it: the
    /// leaks of such a home are the burner's air.
    #[must_use]
    pub fn burner_breathes_rooms(&self) -> bool {
        let heater = &self.water_heater;
        let indoors =
            matches!(heater.place, Some(HeaterPlace::Room | HeaterPlace::ClosetInnerDoor));
        let open = heater.kind == Some(HeaterKind::DraftHood);
        indoors && open && heater.checked_by_technician != Some(true)
    }

    /// Whether the water heater burns something; `None` when nobody read its label.
    fn heater_burns(&self) -> Option<bool> {
        self.water_heater.kind.map(HeaterKind::burns)
    }

    /// Whether something burns here; `None` when that is not known. An oven or a flame used for
    /// warmth burns; where the main heat does not hold, something else may.
    #[must_use]
    pub fn something_burns(&self) -> Option<bool> {
        match (self.heating.fuel.map(Fuel::burns), self.heater_burns()) {
            _ if self.flame_seen() => Some(true),
            (Some(true), _) | (_, Some(true)) => Some(true),
            (Some(false), Some(false)) if self.first_look.heat_holds != Some(false) => Some(false),
            _ => None,
        }
    }

    /// Whether a burner stands in the closet of the water heater: its own, or another beside
    /// an electric one. `None` when that is not known.
    #[must_use]
    pub fn burner_in_closet(&self) -> Option<bool> {
        match (self.heater_burns(), self.water_heater.shares_closet) {
            (Some(true), _) | (_, Some(true)) => Some(true),
            (Some(false), Some(false)) => Some(false),
            _ => None,
        }
    }

    /// Whether a burner may draw air from a closet, so that its openings stay open: any water
    /// heater but an electric one, anything beside it, or a furnace whose sealed label nobody saw.
    #[must_use]
    pub fn burner_may_need_air(&self) -> bool {
        let electric_tank =
            self.heater_burns() == Some(false) && self.water_heater.shares_closet != Some(true);
        let furnace_without = self.heating.fuel.is_some_and(|fuel| !fuel.burns())
            || self.heating.sealed_label_seen == Some(true);
        !(electric_tank && furnace_without)
    }

    /// Whether a burner may stand in the water heater's closet or draw its air from there; `false`
    /// only when each was seen not to be so.
    #[must_use]
    pub fn burner_at_closet(&self) -> bool {
        let heat_fails = self.first_look.heat_holds == Some(false);
        self.burner_in_closet() != Some(false)
            || self.burner_may_need_air()
            || self.flame_seen()
            || heat_fails
    }

    /// Whether a burner may draw its air through this gap: the one place that decides it.
    ///
    /// It may where the gap lies at or leads to a closet, or nobody knows where a panel or hole
    /// leads. Beside an open burner a panel or hole counts whatever is said of what lies behind it:
    /// the floor of a closet leads to the belly too. A sealed burner keeps its outer and floor
    /// openings as well. The two sides of the water heater's closet have rules of their own.
    #[must_use]
    pub fn may_feed_a_burner(&self, gap: &Gap) -> bool {
        match gap.place {
            GapPlace::ClosetInnerPanel => self.inner_panel_stays(gap),
            GapPlace::ClosetOuterDoor => self.outer_door_stays(),
            _ => self.may_feed_elsewhere(gap),
        }
    }

    fn may_feed_elsewhere(&self, gap: &Gap) -> bool {
        let closet = matches!(
            gap.place,
            GapPlace::WaterHeaterCloset | GapPlace::FurnaceCloset | GapPlace::CoilCabinet
        );
        let could_be_closet =
            matches!(gap.place, GapPlace::AccessPanel | GapPlace::PipeHole | GapPlace::Elsewhere);
        // A hole to the roof or outdoors may be the collar of a flue.
        let could_be_flue = matches!(gap.place, GapPlace::PipeHole | GapPlace::Elsewhere)
            && matches!(gap.leads_to, Some(LeadsTo::RoofCavity | LeadsTo::Outdoors));
        let leads_there = match gap.leads_to {
            Some(leads_to) => leads_to == LeadsTo::ClosetWithOutsideAir,
            None => could_be_closet,
        };
        let may_burn = self.something_burns() != Some(false);
        let beside_tank = gap.leads_to == Some(LeadsTo::ClosetWithOutsideAir)
            && self.burner_in_closet() != Some(false);
        (may_burn && (closet || leads_there || could_be_flue))
            || (self.burner_may_need_air() && could_be_closet)
            || beside_tank
    }

    /// With a burner, the room side may be closed only where the closet takes its air from outside,
    /// those openings were seen open, and a technician found nothing wrong. What is called a panel
    /// and leads elsewhere than to the closet may be one of those openings.
    fn inner_panel_stays(&self, gap: &Gap) -> bool {
        let heater = &self.water_heater;
        let air_from_outside = heater.place == Some(HeaterPlace::ClosetOuterDoor)
            && heater.openings == Some(AirOpenings::Open);
        let looked_after = heater.checked_by_technician == Some(true) && !self.danger_at_burner();
        let into_closet = matches!(gap.leads_to, None | Some(LeadsTo::ClosetWithOutsideAir));
        // A furnace in there would lose the way back of its air.
        let alone = heater.shares_closet == Some(false)
            && heater.kind.is_some()
            && self.first_look.heat_holds != Some(false);
        self.burner_at_closet() && !(air_from_outside && looked_after && into_closet && alone)
    }

    /// Smell of gas or soot says more than the last visit of a technician.
    fn danger_at_burner(&self) -> bool {
        let signs = [self.first_look.gas_smell, self.heating.soot, self.water_heater.soot];
        signs.contains(&Some(true))
    }

    /// The outer side may be closed only where the closet has such a door, no burner is at it, no
    /// gas is smelled, and no old flue is open: each of them seen.
    fn outer_door_stays(&self) -> bool {
        let heater = &self.water_heater;
        let idle = heater.place == Some(HeaterPlace::ClosetOuterDoor) && !self.burner_at_closet();
        let no_fumes =
            self.first_look.gas_smell == Some(false) && heater.old_flue_open == Some(false);
        !(idle && no_fumes)
    }
}
