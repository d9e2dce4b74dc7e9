//! One year of heat for each home: its paths add up to the whole, and more of a path is never less
//! heat.

use super::random::{Luck, request};
use super::typed;
use uom::si::energy::kilowatt_hour;
use uom::si::f64::{Length, Ratio};
use uom::si::length::foot;
use uom::si::ratio::ratio;
use winterseam::balance::{Assessment, UseKey, Weather, assess};
use winterseam::climate::{Atlas, Place, Year};
use winterseam::home::{Belly, Gap, GapPlace, Home, LeadsTo, SkirtingVents};
use winterseam::units::celsius;

const HOMES: u64 = 400;

fn places() -> [(Place, Year); 3] {
    ["99701", "59801", "30901"].map(|zip| {
        let place = Atlas::embedded().place(zip).expect("known");
        let year = Year::of(&place.station);
        (place, year)
    })
}

/// Every random home at a place, and its year.
fn each(check: impl Fn(&Home, &Assessment, &dyn Fn(&Home) -> Assessment)) {
    let places = places();
    for seed in 0..HOMES {
        let mut home = typed(&request(&mut Luck::new(seed), false));
        home.heating.efficiency = Some(Ratio::new::<ratio>(0.8));
        let (place, year) = &places[usize::try_from(seed % 3).expect("small")];
        let weather = Weather { place, year };
        let again = |home: &Home| assess(home, &weather);
        check(&home, &again(&home), &again);
    }
}

fn need_kwh(year: &Assessment) -> f64 {
    year.heating.as_ref().expect("air is known").need.total().get::<kilowatt_hour>()
}

fn is_heating(key: UseKey) -> bool {
    !matches!(key, UseKey::HeatCable | UseKey::HotWater | UseKey::HotTank)
}

#[test]
fn the_paths_add_up_to_the_whole() {
    each(|home, year, _| {
        let paths = year.uses.iter().filter(|one| is_heating(one.key));
        let bought: f64 = paths.map(|one| one.bought.get::<kilowatt_hour>()).sum();
        let ducts = year.ducts.as_ref();
        let machine = ducts.map_or(1.0, |ducts| ducts.machine.get::<ratio>());
        let lost = ducts.map_or(0.0, |ducts| ducts.lost.total().get::<kilowatt_hour>());
        let efficiency = home.heating.efficiency.expect("set").get::<ratio>();
        let whole = (need_kwh(year) + lost) / efficiency / machine;
        assert!((bought - whole).abs() <= 1e-9 * whole, "{bought} of {whole}: {home:?}");
        let mut shares = year.uses.iter().filter(|one| is_heating(one.key));
        assert!(shares.all(|one| one.bought.get::<kilowatt_hour>().is_finite()), "{home:?}");
    });
}

#[test]
fn a_new_hole_to_outdoors_never_lowers_the_need() {
    each(|home, year, again| {
        let mut worse = home.clone();
        let inches = |inches| Length::new::<foot>(inches / 12.0);
        worse.gaps.push(Gap {
            leads_to: Some(LeadsTo::Outdoors),
            ..Gap::measured(GapPlace::CoolerGrille, inches(40.0), inches(0.5))
        });
        assert!(need_kwh(&again(&worse)) >= need_kwh(year), "{home:?}");
    });
}

#[test]
fn a_thicker_shell_never_raises_the_need() {
    each(|home, year, again| {
        let at = |off: f64| {
            let mut drawn = home.clone();
            drawn.building.shell_off = Some(Ratio::new::<ratio>(off));
            need_kwh(&again(&drawn))
        };
        let steps = [-1.0, -0.5, 0.0, 0.5, 1.0].map(at);
        assert!(steps.is_sorted(), "{steps:?} {home:?}");
        assert!((at(0.0) - need_kwh(year)).abs() < 1e-9);
    });
}

#[test]
fn skirting_and_belly_only_help() {
    each(|home, _, again| {
        let with = |change: &dyn Fn(&mut Home)| {
            let mut changed = home.clone();
            change(&mut changed);
            need_kwh(&again(&changed))
        };
        let gap = |feet| with(&|home| home.building.skirting_gap = Some(Length::new::<foot>(feet)));
        let gaps = [0.0, 10.0, 40.0, 80.0].map(gap);
        assert!(gaps.is_sorted(), "{gaps:?}");
        let belly = |belly| with(&|home| home.building.belly = Some(belly));
        let bellies = [Belly::Sound, Belly::Torn, Belly::Missing].map(belly);
        assert!(bellies.is_sorted(), "{bellies:?}");
        let vents = |vents| with(&|home| home.building.skirting_vents = Some(vents));
        assert!(vents(SkirtingVents::Blocked) <= vents(SkirtingVents::Open));
    });
}

#[test]
fn film_and_storm_windows_never_raise_the_need() {
    let changed = std::cell::Cell::new(0);
    each(|home, year, again| {
        for id in ["window_film", "storm_window"] {
            let repair = winterseam::repairs::by_id(id).expect("listed");
            let Some(after) = (repair.apply)(home) else { continue };
            assert!(need_kwh(&again(&after)) <= need_kwh(year), "{id}: {home:?}");
            changed.set(changed.get() + 1);
        }
    });
    assert!(changed.get() > 10, "{}", changed.get());
}

/// Rooms no warmer than the coldest hour need nothing.
#[test]
fn no_difference_no_heat() {
    each(|home, _, again| {
        let mut cold = home.clone();
        cold.building.setpoint = Some(celsius(-60.0));
        assert!(need_kwh(&again(&cold)).abs() < 1e-9, "{home:?}");
    });
}

/// Ducts that lose less burn less, and leave the belly and its pipes no warmer.
#[test]
fn sealed_ducts_burn_less_and_leave_the_belly_colder() {
    each(|home, _, again| {
        let at = |lost: f64| {
            let mut home = home.clone();
            home.ducts.lost = Some(Ratio::new::<ratio>(lost));
            // Tight ducts behind closed registers choke the furnace: another matter.
            home.ducts.closed = Some(0);
            home.ducts.return_blocked = Some(false);
            again(&home).ducts
        };
        let (Some(leaky), Some(tight)) = (at(0.25), at(0.05)) else { return };
        let kwh = |year: &winterseam::balance::DuctYear| year.lost.total().get::<kilowatt_hour>();
        assert!(
            kwh(&tight) <= kwh(&leaky),
            "{} {} {:?} {:?} {home:?}",
            kwh(&tight),
            kwh(&leaky),
            tight.belly,
            leaky.belly
        );
        // January; a home whose leaks all blow away warms its belly by its duct walls alone.
        assert!(tight.belly[0] <= leaky.belly[0] + winterseam::units::kelvins(0.5), "{home:?}");
    });
}

/// A heat pump for water in a room takes heat that the furnace gives again; no path turns round by it.
#[test]
fn a_heat_pump_for_water_in_a_room_is_a_path_like_the_others() {
    use winterseam::home::{HeaterKind, HeaterPlace};
    each(|home, _, again| {
        let mut with = home.clone();
        with.water_heater.kind = Some(HeaterKind::HeatPump);
        with.water_heater.place = Some(HeaterPlace::Room);
        let year = again(&with);
        let heating = year.heating.as_ref().expect("air is known");
        for month in 0..12 {
            let (need, lost) = (heating.need[month], heating.lost()[month]);
            assert!(need <= lost.max(uom::si::f64::Energy::default()) * (1.0 + 1e-12), "{with:?}");
        }
        assert!(year.uses.iter().any(|one| one.key == UseKey::DrawnByHeater));
    });
}
