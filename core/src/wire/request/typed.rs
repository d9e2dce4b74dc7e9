//! From a checked tree to a typed home: nothing can fail here any more. What is absent stays
//! unknown.

use crate::home::{
    BathFan, Building, CableSigns, DuctGap, DuctsFound, Filter, FirstLook, FuelPrice, Gap,
    HeatCable, Heating, Home, LeakTest, People, Season, ToldCost, Turn, WaterHeater, WidthClass,
    Window,
};
use crate::money::{Dollars, Years};
use crate::units::{
    fahrenheit, linear_power_density::watt_per_foot, power::btu_per_hour, volume_rate::cfm,
};
use crate::wire::tree::Tree;
use jiff::civil::Date;
use uom::si::area::square_inch;
use uom::si::f64::{
    Area, Length, LinearPowerDensity, Power, Ratio, TemperatureInterval, ThermodynamicTemperature,
    Time, Volume, VolumeRate,
};
use uom::si::length::{foot, inch};
use uom::si::ratio::ratio;
use uom::si::time::{day, second};
use uom::si::volume::gallon;

/// Values of a checked map, by the unit that its field names carry.
impl Tree {
    fn feet(&self, key: &str) -> Option<Length> {
        self.get(key).number().map(Length::new::<foot>)
    }

    fn inches(&self, key: &str) -> Option<Length> {
        self.get(key).number().map(Length::new::<inch>)
    }

    fn square_inches(&self, key: &str) -> Option<Area> {
        self.get(key).number().map(Area::new::<square_inch>)
    }

    fn fahrenheit(&self, key: &str) -> Option<ThermodynamicTemperature> {
        self.get(key).number().map(fahrenheit)
    }

    fn dollars(&self, key: &str) -> Option<Dollars> {
        self.get(key).number().map(Dollars)
    }

    fn yes(&self, key: &str) -> Option<bool> {
        self.get(key).flag()
    }
}

pub(super) fn home(request: &Tree, today: Date) -> Home {
    Home {
        today,
        building: Building {
            leak_test: leak_test(request.get("leak_test")),
            ..building(request.get("home"))
        },
        people: people(request.get("people")),
        first_look: first_look(request.get("first_look")),
        heating: heating(request.get("heating")),
        electricity_price: request.dollars("electricity_usd_per_kwh"),
        filter: filter(request.get("furnace_filter")),
        ducts: ducts(request.get("ducts")),
        water_heater: water_heater(request.get("water_heater")),
        bath_fan: bath_fan(request.get("bath_fan")),
        gaps: request.get("gaps").entries().iter().filter_map(gap).collect(),
        windows: request.get("windows").entries().iter().map(window).collect(),
        cable: cable(request.get("heat_cable")),
        own_costs: request.get("own_costs").entries().iter().filter_map(told_cost).collect(),
    }
}

fn building(home: &Tree) -> Building {
    Building {
        zip: home.get("zip").text().map(str::to_owned),
        weather_zip: home.get("weather_zip").text().map(str::to_owned),
        elevation: home.feet("elevation_ft"),
        sections: home.choice("sections"),
        width: home.feet("width_ft"),
        length: home.feet("length_ft"),
        year_built: home.whole("year_built"),
        bedrooms: home.whole("bedrooms_count"),
        shelter: home.choice("shelter"),
        leak_test: None,
        leakage: None,
        infiltration_error: None,
        setpoint: home.fahrenheit("setpoint_f"),
        indoors: home.fahrenheit("indoors_f"),
        cooling: home.choice("cooling"),
        ground_below: home.choice("ground_below"),
        skirting_open: home.yes("skirting_open"),
        skirting_gap: home.feet("skirting_open_ft"),
        skirting_insulated: home.yes("skirting_insulated"),
        skirting_vents: home.choice("skirting_vents"),
        hay_bales: home.yes("hay_bales"),
        belly: home.choice("belly"),
        belly_hole: home.square_inches("belly_hole_in2"),
        shell_off: None,
        wet_windows: home.choice("wet_windows"),
        tenure: home.choice("tenure"),
    }
}

fn people(people: &Tree) -> People {
    People {
        child_under_5: people.yes("child_under_5"),
        age_65_or_more: people.yes("age_65_or_more"),
        cannot_feel_or_move: people.yes("cannot_feel_or_move"),
        lung_or_immune: people.yes("lung_or_immune"),
        oxygen: people.yes("oxygen"),
        medical_machine: people.yes("medical_machine"),
        count: people.whole("residents_count"),
    }
}

fn first_look(look: &Tree) -> FirstLook {
    FirstLook {
        gas_smell: look.yes("gas_smell"),
        symptoms: look.yes("symptoms"),
        co_alarm: look.choice("co_alarm"),
        smoke_alarm: look.choice("smoke_alarm"),
        flame_indoors: look.yes("flame_indoors"),
        oven_for_heat: look.yes("oven_for_heat"),
        hot_wiring: look.yes("hot_wiring"),
        metal_tingles: look.yes("metal_tingles"),
        water_below: look.yes("water_below"),
        ways_out: look.yes("ways_out"),
        tap_dry: look.yes("tap_dry"),
        heat_holds: look.yes("heat_holds"),
        other_burner: look.yes("other_burner"),
    }
}

fn heating(heating: &Tree) -> Heating {
    let degrees = |key| {
        let rise = heating.get(key).number();
        rise.map(TemperatureInterval::new::<uom::si::temperature_interval::degree_fahrenheit>)
    };
    let price = heating.dollars("price_usd").zip(heating.choice("price_per"));
    Heating {
        fuel: heating.choice("fuel"),
        price: price.map(|(amount, per)| FuelPrice { amount, per }),
        efficiency: None,
        warm_air: heating.choice("warm_air"),
        output: heating.get("output_btu_h").number().map(Power::new::<btu_per_hour>),
        label_rise: degrees("label_rise_min_f").zip(degrees("label_rise_max_f")),
        sealed_label_seen: heating.yes("sealed_label_seen"),
        soot: heating.yes("soot"),
        stove_clear: heating.yes("stove_clear"),
    }
}

fn filter(filter: &Tree) -> Filter {
    let in_use = filter.get("in_use_days").number().map(Time::new::<day>);
    let face = filter.inches("width_in").zip(filter.inches("height_in"));
    Filter { in_use, look: filter.choice("look"), kind: filter.choice("kind"), face }
}

fn ducts(ducts: &Tree) -> DuctsFound {
    let seconds = |key| ducts.get(key).number().map(Time::new::<second>);
    DuctsFound {
        registers: ducts.whole("registers_count"),
        closed: ducts.whole("registers_closed_count"),
        return_blocked: ducts.yes("return_blocked"),
        return_air: ducts.fahrenheit("return_f"),
        near_air: ducts.fahrenheit("supply_f"),
        far_air: ducts.fahrenheit("far_f"),
        near_bag: seconds("near_bag_s"),
        far_bag: seconds("far_bag_s"),
        blower_dirty: ducts.yes("blower_dirty"),
        short_cycles: ducts.yes("short_cycles"),
        crossover: ducts.choice("crossover"),
        gaps: ducts.get("gaps").entries().iter().filter_map(duct_gap).collect(),
        lost: None,
        sealed: None,
    }
}

/// Always a gap: the check has seen to the fields that one must have.
fn duct_gap(gap: &Tree) -> Option<DuctGap> {
    Some(DuctGap {
        place: gap.choice("place")?,
        label: gap.get("label").text().filter(|label| !label.trim().is_empty()).map(str::to_owned),
        length: gap.inches("length_in")?,
        width: gap.inches("width_in")?,
        air: gap.choice("air"),
        sealed: false,
    })
}

fn water_heater(heater: &Tree) -> WaterHeater {
    let turns = turns(heater);
    WaterHeater {
        kind: heater.choice("kind"),
        place: heater.choice("place"),
        tap: turns.last().map(|turn| turn.tap),
        turns,
        thermometer_checked: heater.yes("thermometer_checked"),
        mixing_valve: heater.yes("mixing_valve"),
        openings: heater.choice("openings"),
        soot: heater.yes("soot"),
        steam_or_rumbling: heater.yes("steam_or_rumbling"),
        relief: heater.choice("relief"),
        shares_closet: heater.yes("shares_closet"),
        old_flue_open: heater.yes("old_flue_open"),
        checked_by_technician: heater.yes("checked_by_technician"),
        input: heater.get("input_btu_h").number().map(Power::new::<btu_per_hour>),
        volume: heater.get("volume_gal").number().map(Volume::new::<gallon>),
        jacket: heater.yes("jacket"),
        sleeve: heater.yes("sleeve"),
        shower: heater.get("shower_gallon_s").number().map(a_gallon_in),
        factor: None,
        stored: None,
        near_pipe: None,
        thirst: None,
        follows_outdoors: None,
    }
}

/// The dial as it was found, then each place that it was turned to.
fn turns(heater: &Tree) -> Vec<Turn> {
    let found = heater.fahrenheit("tap_f").map(|tap| Turn { marks_down: 0.0, tap });
    let later = heater.get("turns").entries().iter().filter_map(|turn| {
        Some(Turn { marks_down: turn.get("marks_down").number()?, tap: turn.fahrenheit("tap_f")? })
    });
    found.into_iter().chain(later).collect()
}

/// Flow of what fills a gallon in so many seconds.
fn a_gallon_in(seconds: f64) -> VolumeRate {
    Volume::new::<gallon>(1.0) / Time::new::<second>(seconds)
}

fn bath_fan(fan: &Tree) -> BathFan {
    let emptying = fan.get("bag_emptied_s").number().map(Time::new::<second>);
    BathFan { emptying, ends: fan.choice("ends"), runs_steadily: fan.yes("runs_steadily") }
}

/// The one result of a blower test; the check has seen to it that there is no second.
fn leak_test(test: &Tree) -> Option<LeakTest> {
    let flow = test.get("flow_50_cfm").number().map(VolumeRate::new::<cfm>);
    let exponent = test.get("exponent").number().map(Ratio::new::<ratio>);
    flow.map(|flow| LeakTest::FlowAt50 { flow, exponent })
        .or(test.square_inches("area_4pa_in2").map(LeakTest::AreaAt4))
        .or(test.square_inches("area_10pa_in2").map(LeakTest::AreaAt10))
}

/// Always a gap: the check has seen to the fields that one must have.
fn gap(gap: &Tree) -> Option<Gap> {
    let class = gap.choice::<WidthClass>("width_class").and_then(WidthClass::within);
    let read = gap.inches("width_in");
    let error = gap.inches("width_error_in");
    Some(Gap {
        length: gap.inches("length_in"),
        // Of a class nothing is known but its ends: the middle is that of their ratio.
        width: read.or(class.map(|(least, most)| least * (most / least).sqrt())),
        width_within: class.or(read.zip(error).map(|(read, error)| (read - error, read + error))),
        count: gap.whole("count").unwrap_or(1),
        sealed: gap.yes("sealed"),
        window: gap.choice("window"),
        label: label(gap),
        depth: gap.inches("depth_in"),
        bends: gap.whole("bends_count"),
        leads_to: gap.choice("leads_to"),
        ..Gap::seen(gap.choice("place")?)
    })
}

fn window(window: &Tree) -> Window {
    Window {
        count: window.whole("count").unwrap_or(1),
        label: label(window),
        width: window.inches("width_in"),
        height: window.inches("height_in"),
        panes: window.choice("glazing"),
        film: window.yes("film"),
        escape: window.yes("escape"),
    }
}

/// What a person calls it; blanks are no name.
fn label(thing: &Tree) -> Option<String> {
    thing.get("label").text().filter(|label| !label.trim().is_empty()).map(str::to_owned)
}

/// Always one: the check has seen to the name.
fn told_cost(told: &Tree) -> Option<ToldCost> {
    Some(ToldCost {
        repair: told.get("repair").text()?.to_owned(),
        cost: told.dollars("usd"),
        life: told.get("life_years").number().map(Years),
    })
}

/// `None` when nobody said whether there is one.
fn cable(cable: &Tree) -> Option<HeatCable> {
    let season = cable.whole("on_day").zip(cable.whole("off_day"));
    let power = cable.get("power_w_per_ft").number();
    Some(HeatCable {
        present: cable.yes("present")?,
        length: cable.feet("length_ft"),
        power: power.map(LinearPowerDensity::new::<watt_per_foot>),
        control: cable.choice("control"),
        season: season.map(|(on_day, off_day)| Season { on_day, off_day }),
        pipe_outside: cable.inches("pipe_outside_in"),
        insulation: cable.inches("insulation_in"),
        signs: signs(cable),
        ground_fault_outlet: cable.yes("ground_fault_outlet"),
        thermostat_proved: cable.yes("thermostat_proved"),
        someone_plugs_in: cable.yes("someone_plugs_in"),
    })
}

fn signs(cable: &Tree) -> CableSigns {
    CableSigns {
        damaged: cable.yes("damaged"),
        wet: cable.yes("wet"),
        uncertified: cable.yes("uncertified"),
        under_foam: cable.yes("under_foam"),
        lapped: cable.yes("lapped"),
    }
}
