//! Every repair there is.

use super::{
    Repair, airflow, alarms, below, cable, closet, ducts, fan, filter, hot_water, openings, seal,
    tank, windows,
};

/// Every repair, in no order of merit.
pub const ALL: &[&Repair] = &[
    &alarms::CO_ALARM,
    &alarms::SMOKE_ALARM,
    &openings::CLEAR_OPENINGS,
    &fan::BATH_FAN_OUTDOORS,
    &fan::VENTILATE,
    &cable::REPLACE_CABLE,
    &cable::CABLE_THERMOSTAT,
    &cable::CABLE_SEASON,
    &filter::NEW_FILTER,
    &airflow::OPEN_REGISTERS,
    &airflow::CLEAR_RETURN,
    &airflow::CLEAN_BLOWER,
    &airflow::TAPE_CABINET,
    &ducts::JOIN_CROSSOVER,
    &ducts::SEAL_DUCTS,
    &hot_water::TURN_DOWN,
    &hot_water::MIXING_VALVE,
    &hot_water::SET_VALVE,
    &tank::TANK_JACKET,
    &tank::PIPE_SLEEVE,
    &tank::SHOWER_HEAD,
    &seal::COOLER_COVER,
    &seal::DOOR_SWEEP,
    &seal::DOOR_STRIP,
    &seal::PIPE_HOLES,
    &seal::MARRIAGE_LINE,
    &seal::FAN_HOUSING,
    &seal::FAN_DAMPER,
    &seal::DRYER_FLAP,
    &seal::HOOD_DAMPER,
    &seal::ACCESS_PANEL,
    &closet::INNER_PANEL,
    &closet::OUTER_DOOR,
    &seal::CEILING_JOINT,
    &seal::CASING,
    &seal::WINDOW_SASH,
    &below::SKIRTING,
    &below::BELLY_PATCH,
    &below::BELLY_INSULATION,
    &windows::WINDOW_FILM,
    &windows::STORM_WINDOW,
    &seal::OUTLET_PLATES,
    &seal::ELSEWHERE,
];

/// The name of each.
pub const IDS: [&str; ALL.len()] = {
    let mut ids = [""; ALL.len()];
    let mut at = 0;
    while at < ids.len() {
        ids[at] = ALL[at].id;
        at += 1;
    }
    ids
};

/// A repair by its name.
#[must_use]
pub fn by_id(id: &str) -> Option<&'static Repair> {
    ALL.iter().find(|repair| repair.id == id).copied()
}

#[cfg(test)]
mod tests {
    use super::ALL;

    #[test]
    fn every_repair_has_a_name_of_its_own() {
        let mut ids: Vec<_> = ALL.iter().map(|r| r.id).collect();
        ids.sort_unstable();
        ids.dedup();
        assert_eq!(ids.len(), ALL.len());
    }
}
