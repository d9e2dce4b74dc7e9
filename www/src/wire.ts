// Made by `cargo xtask types` from the schema of the core; never edited by hand.

/** The answer to a request. */
export interface Answer {
  /** Credit line of the climate tables. */
  credit: Phrase;
  /** What not to touch. */
  do_not_touch: Phrase[];
  /** What was found. */
  findings: Finding[];
  /** At most three steps. */
  firsts: Step[];
  /** Steps that can wait. */
  later: Step[];
  /** At most three things whose answer could change the plan. */
  look_next: Phrase[];
  /** What has to be known to read the plan rightly. */
  notes: Phrase[];
  /** Where the climate comes from; null without a ZIP code. */
  place: PlaceUsed | null;
  /** What to be reminded of. */
  reminders: Reminder[];
  /** Whether savings stay hidden while a stop is open. */
  savings_hidden: boolean;
  /** What to buy for the stops and the firsts. */
  shopping: Material[];
  /** What the figures rest on. */
  sources: SourceNote[];
  /** Dangers, the worst kind first. */
  stops: Stop[];
  /** The picture of the tap; null without a reading, or while someone has to leave. */
  tap: Tap | null;
  /** Day of the walk. */
  today: string;
  /** What takes energy, the largest first. */
  uses: Use[];
  /** Version of the library. */
  version: string;
  /** Warnings that no stop shows already. */
  warnings: Warning[];
}

export interface BagFlowAnswer {
  bound: "exact" | "at_most" | "at_least";
  flow_m3_s: number;
}

export interface BagFlowQuestion {
  /** Into the bag or out. */
  direction: "filling" | "emptying";
  /** Time that the bag takes. 0.1 to 3600 s. */
  seconds: number;
}

export interface BurnTimeAnswer {
  low_seconds: number | null;
  seconds: number | null;
}

export interface BurnTimeQuestion {
  /** Whose skin it is. */
  person: "adult" | "child" | "older_adult" | "cannot_feel_or_move";
  /** Water on skin. 0 to 110 °C. */
  water_c: number;
}

export interface CableYearAnswer {
  freeze_risk_hours: number;
  hours_on: number;
  kwh: number;
  needed_kwh: number;
}

export interface CableYearQuestion {
  /** What switches it. */
  control: "always_on" | "thermostat" | "self_regulating" | "seasonal";
  /** 0 is bare. 0 to 1 m. */
  insulation_m: number;
  /** Conductivity. 0.001 to 500 W/(m·K). */
  insulation_w_m_k: number;
  /** Length of the cable. 0.1 to 300 m. */
  length_m: number;
  /** Last day with power. 1 to 365. */
  off_day?: number | null;
  /** First day with power. 1 to 365. */
  on_day?: number | null;
  /** Of the pipe. 0.001 to 1 m. */
  outer_diameter_m: number;
  /** Number of the weather station. */
  station: string;
  /** Heat, as its tag says. 0.1 to 200 W/m. */
  w_m: number;
}

export interface CeilingLeakAnswer {
  condensable_g_h: number;
  surface_c: number;
  vapour_g_h: number;
}

export interface CeilingLeakQuestion {
  /** Above the sea; 0 if absent. -100 to 4000 m. */
  altitude_m?: number | null;
  /** Above the level of equal pressures. 0 to 30 m. */
  height_m: number;
  /** Indoor air. -80 to 80 °C. */
  indoor_c: number;
  /** A share, not per cent. 0 to 1. */
  indoor_rh: number;
  /** At 4 Pa. 0 to 10 m². */
  leakage_area_m2: number;
  /** Outdoor air. -80 to 80 °C. */
  outdoor_c: number;
  /** From the room to the underside of the roof. 0 to 50 m²·K/W. */
  r_inside_m2_k_w: number;
  /** From there to the open air. 0 to 50 m²·K/W. */
  r_outside_m2_k_w: number;
}

export interface ClimateAnswer {
  cdd65_f_day: number;
  distance_km: number | null;
  first_freeze_day: number | null;
  hdd65_f_day: number;
  hours_below_0c: number;
  hours_below_3_3c: number;
  last_freeze_day: number | null;
  mean_wind_m_s: number;
  station: string;
}

export interface ClimateQuestion {
  /** Number of a weather station; or else a ZIP code. */
  station?: string | null;
  /** ZIP code; or else a station. */
  zip?: string | null;
}

export interface DuctDeliveryAnswer {
  delivery_effectiveness: number;
  plenum_c: number;
  register_c: number;
}

export interface DuctDeliveryQuestion {
  /** Of that air. 0.5 to 1.6 kg/m³. */
  air_density_kg_m3: number;
  /** Heat of the furnace. 1 to 200000 W. */
  capacity_w: number;
  /** Air through the furnace. 0.001 to 5 m³/s. */
  fan_m3_s: number;
  /** The rooms. -80 to 80 °C. */
  indoor_c: number;
  /** Share of the fan's air that leaks into them, at the furnace. 0 to 0.6. */
  return_leak_fraction: number;
  /** All return ducts. 0 to 1000 W/K. */
  return_ua_w_k: number;
  /** Round the return ducts. -80 to 80 °C. */
  return_zone_c: number;
  /** Share of the fan's air that they lose, at the registers. 0 to 0.6. */
  supply_leak_fraction: number;
  /** All supply ducts. 0 to 1000 W/K. */
  supply_ua_w_k: number;
  /** Round the supply ducts. -80 to 80 °C. */
  supply_zone_c: number;
}

/** A value with its range, in the unit people use and in SI. */
export interface Figure {
  /** How it is known: `billed`, `measured`, `seen` or `guessed`. */
  confidence: string;
  /** Upper end in the shown unit. */
  high: number;
  /** Fields of the request that it was made from. */
  inputs: string[];
  /** Lower end in the shown unit. */
  low: number;
  /** Upper end in the SI unit. */
  si_high: number;
  /** Lower end in the SI unit. */
  si_low: number;
  /** The SI unit. */
  si_unit: string;
  /** Best value in the SI unit. */
  si_value: number;
  /** Keys of its sources. */
  sources: string[];
  /** The rounded range in words. */
  text: Phrase;
  /** The shown unit. */
  unit: string;
  /** Best value in the shown unit. */
  value: number;
}

/** Something that was found. */
export interface Finding {
  /** The figure behind it. */
  figure: Figure | null;
  /** What it is about. */
  item: string;
  /** What it says. */
  text: Phrase;
}

export interface FreezeTimeAnswer {
  to_solid_h: number | null;
  to_zero_h: number | null;
}

export interface FreezeTimeQuestion {
  /** Around the pipe. -80 to 80 °C. */
  air_c: number;
  /** Convection and radiation of the outermost surface; resists nothing if absent. 0.1 to 1000 W/(m²·K). */
  film_w_m2_k?: number | null;
  /** Of the pipe. 0.0005 to 1 m. */
  inner_diameter_m: number;
  /** 0 is bare. 0 to 1 m. */
  insulation_m: number;
  /** Conductivity. 0.001 to 500 W/(m·K). */
  insulation_w_m_k: number;
  /** Of the bare pipe. 0.001 to 1 m. */
  outer_diameter_m: number;
  /** Conductivity. 0.001 to 500 W/(m·K). */
  wall_w_m_k: number;
  /** At the start. 0 to 100 °C. */
  water_c: number;
}

export interface GapAnswer {
  flow_m3_s: number;
  leakage_area_4pa_m2: number;
  local_exponent: number;
}

export interface GapQuestion {
  /** Air that enters; 20 if absent. -80 to 80 °C. */
  air_c?: number | null;
  /** 101325 if absent. 30000 to 120000 Pa. */
  air_pa?: number | null;
  /** Corners on that way. 0 to 50. */
  bends: number;
  /** The way the air travels. 0 to 2 m. */
  depth_m: number;
  /** Along the gap. 0.0001 to 100 m. */
  length_m: number;
  /** Across the gap. 0.000001 to 5000 Pa. */
  pressure_pa: number;
  /** The opening seen. 0.0001 to 0.5 m. */
  width_m: number;
}

export interface InfiltrationAnswer {
  flow_m3_s: number;
  stack_m3_s: number | null;
  wind_m3_s: number | null;
}

export interface InfiltrationQuestion {
  /** Enhanced model only. 0.5 to 1. */
  exponent?: number | null;
  /** Enhanced model only. */
  flue?: boolean | null;
  /** Enhanced model only. */
  foundation?: "slab" | "crawl_space" | null;
  /** Indoor air. -80 to 80 °C. */
  indoor_c: number;
  /** At 4 Pa. 0 to 10 m². */
  leakage_area_m2: number;
  /** Model of the handbook. */
  model: "basic" | "enhanced";
  /** Outdoor air. -80 to 80 °C. */
  outdoor_c: number;
  /** 1 open to 5. 1 to 5. */
  shelter_class: number;
  /** Storeys. 1 to 3. */
  storeys: number;
  /** Wind at the station. 0 to 60 m/s. */
  wind_m_s: number;
}

export interface MainsWaterAnswer {
  water_c: number;
}

export interface MainsWaterQuestion {
  /** Air of the year. -40 to 45 °C. */
  annual_mean_c: number;
  /** From 1 to 365. 1 to 365. */
  day_of_year: number;
  /** Warmest less coldest monthly mean. 0 to 80 K. */
  monthly_swing_k: number;
}

/** Something to buy. */
export interface Material {
  /** What. */
  item: Phrase;
  /** How much. */
  quantity: number;
  /** What that is counted in. */
  unit: Phrase;
}

export interface MoistAirAnswer {
  density_kg_m3: number;
  dew_point_c: number | null;
  enthalpy_j_kg: number;
  humidity_ratio: number;
  saturation_pa: number;
}

export interface MoistAirQuestion {
  /** Air temperature. -100 to 200 °C. */
  dry_bulb_c: number;
  /** Of the moist air. 30000 to 120000 Pa. */
  pressure_pa: number;
  /** A share, not per cent. 0 to 1. */
  relative_humidity: number;
}

/** A sentence as data; `words` turns it into text. */
export interface Phrase {
  /** What stands in the message's places. */
  args: { [key: string]: PhraseArg };
  /** Key in the word files. */
  key: string;
}

/** What stands in one place of a message. */
export type PhraseArg = number | string | Phrase;

export interface PipeLossAnswer {
  loss_w_m: number;
  surface_c: number;
}

export interface PipeLossQuestion {
  /** Air and all that the pipe sees. -80 to 80 °C. */
  air_c: number;
  /** Outermost surface. 0 to 1. */
  emissivity: number;
  /** Of the pipe. 0.0005 to 1 m. */
  inner_diameter_m: number;
  /** 0 is bare. 0 to 1 m. */
  insulation_m: number;
  /** Conductivity. 0.001 to 500 W/(m·K). */
  insulation_w_m_k: number;
  /** Of the bare pipe. 0.001 to 1 m. */
  outer_diameter_m: number;
  /** Inside of the wall. -80 to 150 °C. */
  pipe_c: number;
  /** Conductivity. 0.001 to 500 W/(m·K). */
  wall_w_m_k: number;
  /** Across the pipe. 0 to 60 m/s. */
  wind_m_s: number;
}

/** Where the climate comes from. */
export interface PlaceUsed {
  /** Only the first three digits were known. */
  by_area: boolean;
  /** How far it is from the ZIP area. */
  distance_km: number | null;
  /** Its elevation, or that of the home where it was told. */
  elevation_ft: number;
  /** How much higher the home lies than the station. */
  lifted_ft: number | null;
  /** Name of the weather station. */
  name: string;
  /** Its state. */
  state: string;
  /** Number of the weather station. */
  station: string;
  /** The ZIP code asked for. */
  zip: string;
  /** Climate zone. */
  zone: string;
}

/** One thing that is wrong with one field. */
export interface Problem {
  /** What the sentence is made of: the value given, the range, the unit. */
  args: { [key: string]: unknown };
  /** Stable word for programs. */
  code: string;
  /** The sentence for people. */
  message: string;
  /** Path from the root, such as `gaps[2].width_in`; empty for the whole. */
  path: string;
}

/** Something to be reminded of. */
export interface Reminder {
  /** The first time, as `2026-11-25`. */
  date: string;
  /** What to do. */
  detail: Phrase;
  /** How often it comes back: `month`, `year`; null is once. */
  repeat: string | null;
  /** Title in a calendar: nothing personal. */
  title: Phrase;
  /** Stable identity in a calendar. */
  uid: string;
}

export interface Request {
  /** The bath fan and the bag held over it. */
  bath_fan?: {
    /** Time in which the fan emptied the bag. 0.5 to 600 s. */
    bag_emptied_s?: number | null;
    /** Where its air goes. */
    ends?: "outdoors" | "roof_cavity" | "under_home" | null;
    /** It, or another fan, runs hours a day for fresh air. */
    runs_steadily?: boolean | null;
  } | null;
  /** Registers, furnace and ducts. */
  ducts?: {
    /** Dust lies thick on the blades of the blower. */
    blower_dirty?: boolean | null;
    /** The duct that joins two sections. */
    crossover?: "sound" | "loose" | "fallen" | null;
    /** Time until the farthest fills it. 0.5 to 600 s. */
    far_bag_s?: number | null;
    /** Air at the farthest register. 30 to 220 °F. */
    far_f?: number | null;
    /** Gaps in ducts and cabinet. */
    gaps?: ({
      /** What its air does with the fan on. */
      air?: "blown_into_closet" | "blown_down" | "sucked_in" | null;
      /** What the person calls it. */
      label?: string | null;
      /** Along the gap. 0.1 to 1200 in. */
      length_in: number;
      /** Where it is. */
      place: "coil_cabinet" | "plenum" | "boot" | "crossover" | "end_cap" | "return_side";
      /** The opening seen. 0.01 to 12 in. */
      width_in: number;
    })[] | null;
    /** Time until the nearest register fills the bag. 0.5 to 600 s. */
    near_bag_s?: number | null;
    /** Those closed or covered. 0 to 60. */
    registers_closed_count?: number | null;
    /** Registers that blow warm air. 1 to 60. */
    registers_count?: number | null;
    /** Something stands in front of the return. */
    return_blocked?: boolean | null;
    /** Air at the return, after ten minutes. 30 to 220 °F. */
    return_f?: number | null;
    /** The furnace goes on and off within minutes. */
    short_cycles?: boolean | null;
    /** Air at the nearest register. 30 to 220 °F. */
    supply_f?: number | null;
  } | null;
  /** Price of electricity, as the bill says. 0.01 to 2 $/kWh. */
  electricity_usd_per_kwh?: number | null;
  /** What is looked for before anything is touched. */
  first_look?: {
    /** The carbon monoxide alarm. */
    co_alarm?: "working" | "missing" | "expired" | "chirping" | "sounding" | null;
    /** A grill, stove, generator or heater for outdoors, inside. */
    flame_indoors?: boolean | null;
    /** Smell of gas. */
    gas_smell?: boolean | null;
    /** The main heat can hold the home warm. */
    heat_holds?: boolean | null;
    /** A hot, buzzing or scorched outlet, plug or cord. */
    hot_wiring?: boolean | null;
    /** Metal or taps that tingle. */
    metal_tingles?: boolean | null;
    /** A gas stove or dryer, a fireplace, another heater. */
    other_burner?: boolean | null;
    /** The oven used for warmth. */
    oven_for_heat?: boolean | null;
    /** The smoke alarm that works best. */
    smoke_alarm?: "working" | "missing" | "expired" | "chirping" | "sounding" | null;
    /** Headache, dizziness or sickness that lifts outdoors. */
    symptoms?: boolean | null;
    /** A tap that is dry now. */
    tap_dry?: boolean | null;
    /** Water below the home where cords or cables are live. */
    water_below?: boolean | null;
    /** Each sleeping room has a second way out. */
    ways_out?: boolean | null;
  } | null;
  /** The furnace filter. */
  furnace_filter?: {
    /** Up its face; goes with width_in. 6 to 40 in. */
    height_in?: number | null;
    /** Time since it was put in. 0 to 3650 days. */
    in_use_days?: number | null;
    /** What it is made of. */
    kind?: "fiberglass" | "pleated" | "dense" | null;
    /** How it looks against a flashlight. */
    look?: "bright" | "grey" | "dim" | "blocked" | null;
    /** Across its face; goes with height_in. 6 to 40 in. */
    width_in?: number | null;
  } | null;
  /** Gaps measured with a tape. */
  gaps?: ({
    /** Corners on that way. 0 to 8. */
    bends_count?: number | null;
    /** How many there are like it; 1 where absent. 1 to 100. */
    count?: number | null;
    /** The way the air travels through it. 0.01 to 24 in. */
    depth_in?: number | null;
    /** What the person calls it. */
    label?: string | null;
    /** What lies behind it. */
    leads_to?: "outdoors" | "belly" | "roof_cavity" | "closet_with_outside_air" | "wall" | "room_or_return" | null;
    /** Along the gap. 0.1 to 1200 in. */
    length_in?: number | null;
    /** Where it is. */
    place: "door_bottom" | "door_side" | "window_sash" | "casing" | "ceiling_joint" | "marriage_line" | "pipe_hole" | "bath_fan_housing" | "fan_damper" | "dryer_vent" | "range_hood" | "access_panel" | "outlet_plate" | "cooler_grille" | "water_heater_closet" | "closet_inner_panel" | "closet_outer_door" | "furnace_closet" | "coil_cabinet" | "elsewhere";
    /** A strip, sweep, gasket, damper or caulk is there already. */
    sealed?: boolean | null;
    /** Instead: the thickest that slips in. */
    width_class?: "card" | "dime" | "two_coins" | "pencil" | "not_measured" | null;
    /** Error of that; absent is a tape's. 0.001 to 1 in. */
    width_error_in?: number | null;
    /** The opening seen; absent is not measured. 0.01 to 12 in. */
    width_in?: number | null;
    /** How a window opens. */
    window?: "hung" | "sliding" | "awning" | "jalousie" | null;
  })[] | null;
  /** The heat cable on the water pipe. */
  heat_cable?: {
    /** What switches it. */
    control?: "always_on" | "thermostat" | "self_regulating" | "seasonal" | null;
    /** Cracked, charred, bare or melted; a hot plug or sparks. */
    damaged?: boolean | null;
    /** Plugged into an outlet with a ground-fault switch. */
    ground_fault_outlet?: boolean | null;
    /** Insulation on the pipe; 0 is bare. 0 to 6 in. */
    insulation_in?: number | null;
    /** Laid over itself. */
    lapped?: boolean | null;
    /** Its length. 1 to 500 ft. */
    length_ft?: number | null;
    /** Last day with power; goes with on_day. 1 to 365. */
    off_day?: number | null;
    /** First day with power; goes with off_day. 1 to 365. */
    on_day?: number | null;
    /** Outside diameter of the pipe. 0.2 to 6 in. */
    pipe_outside_in?: number | null;
    /** Heat, as its tag says. 0.5 to 30 W/ft. */
    power_w_per_ft?: number | null;
    /** Someone looked, and there is one. Goes with the rest. */
    present?: boolean | null;
    /** Somebody is sure to plug it in in autumn. */
    someone_plugs_in?: boolean | null;
    /** Its thermostat was seen to switch with an ice pack. */
    thermostat_proved?: boolean | null;
    /** No mark of a test laboratory. */
    uncertified?: boolean | null;
    /** Under foam or vinyl. */
    under_foam?: boolean | null;
    /** Cable or plug is wet. */
    wet?: boolean | null;
  } | null;
  /** The main heating. */
  heating?: {
    /** What it burns or draws. */
    fuel?: "electricity" | "heat_pump" | "natural_gas" | "propane" | "fuel_oil" | "kerosene" | "wood" | "pellets" | null;
    /** Most; goes with label_rise_min_f. 5 to 150 °F. */
    label_rise_max_f?: number | null;
    /** Least rise of the air on its label. 5 to 150 °F. */
    label_rise_min_f?: number | null;
    /** Heat it gives, as its label says. 5000 to 250000 Btu/h. */
    output_btu_h?: number | null;
    /** The unit on the bill; goes with price_usd. */
    price_per?: "kwh" | "therm" | "ccf" | "gal" | "cord" | "bag" | null;
    /** Price of one unit; goes with price_per. 0.01 to 2000 $. */
    price_usd?: number | null;
    /** The label that says sealed combustion was seen. */
    sealed_label_seen?: boolean | null;
    /** Soot, scorch, roll-out, a loose flue or a yellow flame. */
    soot?: boolean | null;
    /** A wood stove stands clear, its chimney was looked at. */
    stove_clear?: boolean | null;
    /** How much of the heat comes out of registers. */
    warm_air?: "all" | "most" | "half" | "little" | "none" | null;
  } | null;
  /** The building and where it stands. */
  home?: {
    /** Rooms meant for sleeping. 0 to 12. */
    bedrooms_count?: number | null;
    /** Board or fabric that holds the floor's insulation. */
    belly?: "sound" | "torn" | "missing" | null;
    /** Area of its holes together. 1 to 350000 in². */
    belly_hole_in2?: number | null;
    /** How it is cooled. */
    cooling?: "none" | "evaporative" | "air_conditioner" | null;
    /** Height of the home above the sea. -300 to 12000 ft. */
    elevation_ft?: number | null;
    /** What lies on the ground below it. */
    ground_below?: "bare" | "covered" | null;
    /** Bales of hay or straw stand against the skirting. */
    hay_bales?: boolean | null;
    /** What the thermometer indoors shows today. -20 to 120 °F. */
    indoors_f?: number | null;
    /** Length without the hitch. 10 to 100 ft. */
    length_ft?: number | null;
    /** How many sections it came in. */
    sections?: "single" | "double" | "triple" | null;
    /** What the thermostat is set to in winter. 40 to 90 °F. */
    setpoint_f?: number | null;
    /** What breaks the wind, from open to close. */
    shelter?: "open_ground" | "lone_home" | "homes_across_road" | "neighbours_apart" | "neighbours_close" | null;
    /** Boards of insulation stand behind the skirting. */
    skirting_insulated?: boolean | null;
    /** Skirting is missing: wind blows under the home. */
    skirting_open?: boolean | null;
    /** Length of it that is missing; 0 is none. 0 to 320 ft. */
    skirting_open_ft?: number | null;
    /** The vents in the skirting. */
    skirting_vents?: "open" | "blocked" | "none" | null;
    /** Who owns home and lot. */
    tenure?: "owns_home_and_lot" | "owns_home_rents_lot" | "rents_home" | null;
    /** Of another place whose weather is more like here. */
    weather_zip?: string | null;
    /** Windows wet inside on cold mornings. */
    wet_windows?: "often" | "sometimes" | "never" | null;
    /** Width of the whole home. 7 to 60 ft. */
    width_ft?: number | null;
    /** Year on the data plate. 1930 to 2099. */
    year_built?: number | null;
    /** Five digits. */
    zip?: string | null;
  } | null;
  /** What a blower in the door found. */
  leak_test?: {
    /** Instead: equivalent area at 10 Pa. 3 to 1500 in². */
    area_10pa_in2?: number | null;
    /** Instead: effective area at 4 Pa. 3 to 1500 in². */
    area_4pa_in2?: number | null;
    /** Flow exponent; goes with flow_50_cfm. 0.5 to 1. */
    exponent?: number | null;
    /** Flow at 50 Pa. 50 to 15000 cfm. */
    flow_50_cfm?: number | null;
  } | null;
  /** What somebody was told of repairs. */
  own_costs?: ({
    /** How long it lasts. 0.1 to 60 years. */
    life_years?: number | null;
    /** Its name, as in a plan. */
    repair: "co_alarm" | "smoke_alarm" | "clear_openings" | "bath_fan_outdoors" | "ventilate" | "replace_cable" | "cable_thermostat" | "cable_season" | "new_filter" | "open_registers" | "clear_return" | "clean_blower" | "tape_cabinet" | "join_crossover" | "seal_ducts" | "turn_down" | "mixing_valve" | "set_valve" | "tank_jacket" | "pipe_sleeve" | "shower_head" | "cooler_cover" | "door_sweep" | "door_strip" | "pipe_holes" | "marriage_line" | "fan_housing" | "fan_damper" | "dryer_flap" | "hood_damper" | "access_panel" | "closet_inner_panel" | "closet_outer_door" | "ceiling_joint" | "casing" | "window_sash" | "skirting" | "belly_patch" | "belly_insulation" | "window_film" | "storm_window" | "outlet_plates" | "elsewhere";
    /** All of it, work and materials. 0 to 100000 $. */
    usd?: number | null;
  })[] | null;
  /** Who lives there, as far as it changes the advice. */
  people?: {
    /** Someone of 65 or more. */
    age_65_or_more?: boolean | null;
    /** Someone who cannot pull away from hot water. */
    cannot_feel_or_move?: boolean | null;
    /** A child under five. */
    child_under_5?: boolean | null;
    /** Chronic lung disease or a weak immune system. */
    lung_or_immune?: boolean | null;
    /** Another medical machine that needs power. */
    medical_machine?: boolean | null;
    /** Oxygen in use. */
    oxygen?: boolean | null;
    /** How many live there. 1 to 20. */
    residents_count?: number | null;
  } | null;
  /** Day of the walk; there is no clock inside. */
  today: string;
  /** The water heater and its tap. */
  water_heater?: {
    /** Burner, flue and air: looked at, nothing wrong. */
    checked_by_technician?: boolean | null;
    /** Input of all burners in its closet together, as their labels say. 10000 to 400000 Btu/h. */
    input_btu_h?: number | null;
    /** A jacket is round the tank. */
    jacket?: boolean | null;
    /** What makes the hot water. */
    kind?: "electric" | "heat_pump" | "sealed_combustion" | "draft_hood" | "tankless_electric" | "tankless_gas" | null;
    /** A mixing valve sits behind the tank. */
    mixing_valve?: boolean | null;
    /** A flue that nothing is joined to any more is open. */
    old_flue_open?: boolean | null;
    /** Openings that bring air to its burner. */
    openings?: "open" | "partly" | "blocked" | null;
    /** Where the tank stands. */
    place?: "room" | "closet_inner_door" | "closet_outer_door" | null;
    /** The relief valve and its pipe. */
    relief?: "sound" | "running" | "missing" | "plugged" | null;
    /** Another burner, as the furnace, stands in its closet. */
    shares_closet?: boolean | null;
    /** Time until a shower fills a gallon. 5 to 240 s. */
    shower_gallon_s?: number | null;
    /** The first feet of the hot pipe wear a sleeve. */
    sleeve?: boolean | null;
    /** Soot, scorch or melted plastic at the top. */
    soot?: boolean | null;
    /** Steam at the tap, or rumbling. */
    steam_or_rumbling?: boolean | null;
    /** The hottest reading at a tap, the dial as found. 32 to 230 °F. */
    tap_f?: number | null;
    /** The thermometer showed 32 °F in ice water. */
    thermometer_checked?: boolean | null;
    /** Each later place of the dial, with its reading. */
    turns?: ({
      /** Marks below where the dial was found. -10 to 10. */
      marks_down: number;
      /** The hottest reading there. 32 to 230 °F. */
      tap_f: number;
    })[] | null;
    /** Water in the tank, as its label says. 2 to 120 gal. */
    volume_gal?: number | null;
  } | null;
  /** All windows; absent is what such homes have. */
  windows?: ({
    /** How many are like it; 1 where absent. 1 to 40. */
    count?: number | null;
    /** The way out of a sleeping room. */
    escape?: boolean | null;
    /** A film is stretched over it inside. */
    film?: boolean | null;
    /** Its panes. */
    glazing?: "single" | "single_storm" | "double" | null;
    /** Up and down; goes with width_in. 6 to 120 in. */
    height_in?: number | null;
    /** What the person calls it. */
    label?: string | null;
    /** Across; goes with height_in. 6 to 120 in. */
    width_in?: number | null;
  })[] | null;
}

/** What a figure rests on. */
export interface SourceNote {
  /** Author, title, year, or the kind of document. */
  cite: string;
  /** Its key. */
  key: string;
  /** How it was had: `read`, `quoted`, `computed by …`, `from memory`, `common practice`. */
  obtained: string;
  /** Where in it. */
  place: string;
}

/** One step of the plan. */
export interface Step {
  /** Warnings that go with it. */
  cautions: Warning[];
  /** What it costs. */
  cost: Figure;
  /** Name of the repair. */
  id: string;
  /** How long it lasts. */
  life: Figure;
  /** What to buy. */
  materials: Material[];
  /** How long it takes to earn its cost. */
  payback: Phrase | null;
  /** Dollars saved in a year. */
  saving: Figure | null;
  /** Energy saved in a year. */
  saving_energy: Figure | null;
  /** What to do. */
  text: Phrase;
  /** By when. */
  when: Phrase;
  /** Who may do it: `resident`, `able_adult` or `qualified`. */
  who: string;
  /** Why. */
  why: Phrase;
  /** What the saving is worth at its best value, for staff and developers. */
  worth: Worth | null;
}

/** A danger. */
export interface Stop {
  /** What was seen. */
  because: Phrase;
  /** The next twenty-four hours, where heat, gas, water or power is lost. */
  card: Phrase[];
  /** Code of its warning. */
  code: string;
  /** How it is met: `out`, `off`, `today` or `soon`. */
  kind: string;
  /** What to do until it is mended, in order. */
  meanwhile: Phrase[];
  /** What mends it. */
  mends: Step[];
  /** The warning. */
  text: Phrase;
}

/** How soon the water of a tap burns, as points of a picture and rows of a table; and what the coach says. */
export interface Tap {
  /** What to do next, in order. */
  coach: Phrase[];
  /** Whose times they are. */
  people: Phrase[];
  /** The reading, °F. */
  reading_f: number;
  /** Water from warm to very hot, the reading among it. */
  rows: TapRow[];
  /** Lines across the picture. */
  ticks: TapTime[];
}

/** One temperature of the picture. */
export interface TapRow {
  /** How far to the right it lies, 0 to 1. */
  across: number;
  /** Whether it is the reading. */
  is_reading: boolean;
  /** The time of each of the people. */
  times: TapTime[];
  /** The water, °F. */
  water_f: number;
}

/** One time of the picture. */
export interface TapTime {
  /** How high it lies, 0 to 1. */
  height: number;
  /** The time in words. */
  text: Phrase;
}

/** What takes energy in a year. */
export interface Use {
  /** Dollars, where the price is known. */
  cost: Figure | null;
  /** Energy. */
  energy: Figure;
  /** Stable name. */
  key: string;
  /** What people call it. */
  name: Phrase;
}

export interface VentilationNeedAnswer {
  flow_m3_s: number;
}

export interface VentilationNeedQuestion {
  /** Rooms meant for sleeping. 0 to 50. */
  bedrooms: number;
  /** Floor area. 1 to 2000 m². */
  floor_area_m2: number;
}

/** A warning of the core. */
export interface Warning {
  /** Its code. */
  code: string;
  /** Its words. */
  text: Phrase;
}

export interface WindowUAnswer {
  inside_surface_c: number;
  u_w_m2_k: number;
}

export interface WindowUQuestion {
  /** Behind a film. 0.001 to 0.5 m. */
  gap_m?: number | null;
  /** Thickness of each pane. 0.0005 to 0.05 m. */
  glass_m: number;
  /** Panes, and a film over them. */
  layers: "single" | "single_film" | "double" | "double_film";
  /** Between two panes. 0.001 to 0.5 m. */
  pane_gap_m?: number | null;
}

/** What a saving is worth over the life of a repair. */
export interface Worth {
  /** Internal rate of return when savings are invested again at the discount rate. */
  adjusted_irr: number | null;
  /** Years until discounted savings have paid the cost; null where they never do. */
  discounted_payback_years: number | null;
  /** All savings, each brought to today. */
  present_value_usd: number;
  /** The real rate that all of these discount with. */
  real_discount_rate: number;
  /** That over the cost; null where nothing is spent. */
  savings_to_investment: number | null;
}

export interface WorthAnswer {
  adjusted_irr: number | null;
  discounted_payback_years: number | null;
  present_value_usd: number;
  savings_to_investment: number | null;
  simple_payback_years: number | null;
}

export interface WorthQuestion {
  /** Spent once. 0 to 10000000 $. */
  cost_usd: number;
  /** How long it saves. 1 to 100 years. */
  life_years: number;
  /** A share. -0.5 to 1. */
  real_discount_rate: number;
  /** At year ends. -1000000 to 1000000 $/year. */
  saving_usd_per_year: number;
}
