// The questions, in the order of a walk through a home. Every one may stay unanswered.

/** What labels are filed under: the same for every row of a list. */
export const labelPath = (path: string): string => path.replace(/\.\d+\./, ".");

/** How a question is answered. */
export type Input =
  | { kind: "yes_no" }
  | { kind: "choice"; words: string; options: readonly string[]; many?: true }
  | { kind: "measure"; unit: string; quick?: readonly string[] }
  | { kind: "number"; whole: boolean }
  | { kind: "text"; digits?: true }
  | { kind: "date" }
  | { kind: "season" };

/** Reads what a person answered so far, by path. */
export type Given = (path: string) => string;

export interface Question {
  /** Path of the field in the request, which is also the id of its control. */
  path: string;
  input: Input;
  /** Asked only when this holds; what was typed before is kept all the same. */
  asked?: (given: Given) => boolean;
}

export interface Group {
  key: string;
  questions: readonly Question[];
  /** The rows of gaps stand in this group. */
  gaps?: true;
  /** The picture of the tap and its coach stand in this group. */
  tap?: true;
}

export interface Station {
  key: "start" | "inside" | "outside" | "sit_down";
  groups: readonly Group[];
}

const ALARM = ["working", "missing", "expired", "chirping", "sounding"];
const SOLD = ["natural_gas", "propane", "fuel_oil", "kerosene", "wood", "pellets"];
const QUICK_WIDTHS = ["1/16", "1/8", "1/4", "3/8", "1/2", "3/4"];

/** Fuels that are sold by one unit only, so that nobody needs to be asked for it. */
export const SOLD_BY: Record<string, "gal" | "cord" | "bag"> = {
  propane: "gal",
  fuel_oil: "gal",
  kerosene: "gal",
  wood: "cord",
  pellets: "bag",
};

const yesNo = (path: string): Question => ({ path, input: { kind: "yes_no" } });
const choice = (path: string, words: string, options: readonly string[]): Question => ({
  path,
  input: { kind: "choice", words, options },
});
const choiceOfMany = (path: string, words: string, options: readonly string[]): Question => ({
  path,
  input: { kind: "choice", words, options, many: true },
});
const measure = (path: string, unit: string): Question => ({
  path,
  input: { kind: "measure", unit },
});
const number = (path: string, whole = true): Question => ({
  path,
  input: { kind: "number", whole },
});
const onlyWhen = (asked: (given: Given) => boolean, ...questions: Question[]): Question[] =>
  questions.map((question) => ({ ...question, asked }));

const buysFuel = (given: Given) => SOLD.includes(given("heating.fuel"));
const burnsGas = (given: Given) => given("heating.fuel") === "natural_gas";
const heaterInCloset = (given: Given) => given("water_heater.place").startsWith("closet_");
const hasCable = (given: Given) => given("heat_cable.present") === "true";
const cableBySeason = (given: Given) =>
  hasCable(given) && given("heat_cable.control") === "seasonal";

const TANKS = ["electric", "heat_pump", "sealed_combustion", "draft_hood"];
const hasTank = (given: Given) => TANKS.includes(given("water_heater.kind"));

/** Each place of the dial after the first, asked once the one before has its reading. */
const TURNS: readonly Question[] = [0, 1, 2, 3, 4].flatMap((turn) => {
  const before = turn === 0 ? "water_heater.tap_f" : `water_heater.turns.${turn - 1}.tap_f`;
  return onlyWhen(
    (given) => given(before) !== "",
    number(`water_heater.turns.${turn}.marks_down`, false),
    measure(`water_heater.turns.${turn}.tap_f`, "f"),
  );
});

const sectionsJoined = (given: Given) => ["double", "triple"].includes(given("home.sections"));
const hasRegisters = (given: Given) => given("heating.warm_air") !== "none";

const DUCT_PLACES = ["coil_cabinet", "plenum", "boot", "crossover", "end_cap", "return_side"];

/** Gaps in ducts and cabinet, each asked once the one before has its place. */
const DUCT_GAPS: readonly Question[] = [0, 1, 2, 3, 4].flatMap((row) => {
  const at = `ducts.gaps.${row}`;
  return [
    ...onlyWhen(
      (given) => hasRegisters(given) && (row === 0 || given(`ducts.gaps.${row - 1}.place`) !== ""),
      choiceOfMany(`${at}.place`, "duct_place", DUCT_PLACES),
    ),
    ...onlyWhen(
      (given) => hasRegisters(given) && given(`${at}.place`) !== "",
      measure(`${at}.length_in`, "in"),
      { path: `${at}.width_in`, input: { kind: "measure", unit: "in", quick: QUICK_WIDTHS } },
      choice(`${at}.air`, "leak_air", ["blown_into_closet", "blown_down", "sucked_in"]),
    ),
  ];
});

/** Kinds of windows, each asked once the one before has its panes. */
const WINDOWS: readonly Question[] = [0, 1, 2, 3].flatMap((row) => {
  const at = `windows.${row}`;
  return [
    ...onlyWhen(
      (given) => row === 0 || given(`windows.${row - 1}.glazing`) !== "",
      choice(`${at}.glazing`, "glazing", ["single", "single_storm", "double"]),
    ),
    ...onlyWhen(
      (given) => given(`${at}.glazing`) !== "",
      { path: `${at}.label`, input: { kind: "text" } },
      number(`${at}.count`),
      measure(`${at}.width_in`, "in"),
      measure(`${at}.height_in`, "in"),
      yesNo(`${at}.film`),
      yesNo(`${at}.escape`),
    ),
  ];
});

const skirtingMissing = (given: Given) => given("home.skirting_open") === "true";
const bellyTorn = (given: Given) => given("home.belly") === "torn";
const knowsZip = (given: Given) => given("home.zip") !== "";

const START: Station = {
  key: "start",
  groups: [
    {
      key: "first_look",
      questions: [
        yesNo("first_look.gas_smell"),
        yesNo("first_look.symptoms"),
        choice("first_look.co_alarm", "alarm", ALARM),
        choice("first_look.smoke_alarm", "alarm", ALARM),
        yesNo("first_look.flame_indoors"),
        yesNo("first_look.oven_for_heat"),
        yesNo("first_look.hot_wiring"),
        yesNo("first_look.metal_tingles"),
        yesNo("first_look.water_below"),
        yesNo("first_look.ways_out"),
        yesNo("first_look.tap_dry"),
        yesNo("first_look.heat_holds"),
        yesNo("first_look.other_burner"),
      ],
    },
    {
      key: "people",
      questions: [
        yesNo("people.child_under_5"),
        yesNo("people.age_65_or_more"),
        yesNo("people.cannot_feel_or_move"),
        yesNo("people.lung_or_immune"),
        yesNo("people.oxygen"),
        yesNo("people.medical_machine"),
        number("people.residents_count"),
      ],
    },
    {
      key: "home",
      questions: [
        { path: "today", input: { kind: "date" } },
        { path: "home.zip", input: { kind: "text", digits: true } },
        ...onlyWhen(
          knowsZip,
          { path: "home.weather_zip", input: { kind: "text", digits: true } },
          measure("home.elevation_ft", "ft"),
        ),
        choice("home.sections", "sections", ["single", "double", "triple"]),
        measure("home.width_ft", "ft"),
        measure("home.length_ft", "ft"),
        number("home.year_built"),
        number("home.bedrooms_count"),
        choice("home.tenure", "tenure", ["owns_home_and_lot", "owns_home_rents_lot", "rents_home"]),
      ],
    },
  ],
};

const INSIDE: Station = {
  key: "inside",
  groups: [
    {
      key: "furnace",
      questions: [
        measure("home.setpoint_f", "f"),
        measure("home.indoors_f", "f"),
        choiceOfMany("heating.fuel", "fuel", ["electricity", "heat_pump", ...SOLD]),
        yesNo("heating.soot"),
        yesNo("heating.stove_clear"),
        yesNo("heating.sealed_label_seen"),
        choice("furnace_filter.look", "filter", ["bright", "grey", "dim", "blocked"]),
        measure("furnace_filter.in_use_days", "days"),
        choice("furnace_filter.kind", "filter_kind", ["fiberglass", "pleated", "dense"]),
        measure("furnace_filter.width_in", "in"),
        measure("furnace_filter.height_in", "in"),
      ],
    },
    {
      key: "airflow",
      questions: [
        choice("heating.warm_air", "warm_air", ["all", "most", "half", "little", "none"]),
        ...onlyWhen(
          hasRegisters,
          number("ducts.registers_count"),
          number("ducts.registers_closed_count"),
          yesNo("ducts.return_blocked"),
          yesNo("ducts.short_cycles"),
          yesNo("ducts.blower_dirty"),
          number("heating.output_btu_h"),
          number("heating.label_rise_min_f"),
          number("heating.label_rise_max_f"),
          measure("ducts.return_f", "f"),
          measure("ducts.supply_f", "f"),
          measure("ducts.far_f", "f"),
          measure("ducts.near_bag_s", "s"),
          measure("ducts.far_bag_s", "s"),
        ),
        ...DUCT_GAPS,
      ],
    },
    {
      key: "water_heater",
      questions: [
        choice("water_heater.kind", "heater", [
          "electric",
          "heat_pump",
          "sealed_combustion",
          "draft_hood",
          "tankless_electric",
          "tankless_gas",
        ]),
        choice("water_heater.place", "heater_place", [
          "room",
          "closet_inner_door",
          "closet_outer_door",
        ]),
        choice("water_heater.openings", "openings", ["open", "partly", "blocked"]),
        yesNo("water_heater.soot"),
        yesNo("water_heater.steam_or_rumbling"),
        ...onlyWhen(
          heaterInCloset,
          yesNo("water_heater.shares_closet"),
          yesNo("water_heater.old_flue_open"),
          yesNo("water_heater.checked_by_technician"),
          number("water_heater.input_btu_h"),
        ),
        choice("water_heater.relief", "relief", ["sound", "running", "missing", "plugged"]),
        measure("water_heater.tap_f", "f"),
        yesNo("water_heater.thermometer_checked"),
        yesNo("water_heater.mixing_valve"),
        ...TURNS,
        ...onlyWhen(
          hasTank,
          number("water_heater.volume_gal", false),
          yesNo("water_heater.jacket"),
          yesNo("water_heater.sleeve"),
        ),
        measure("water_heater.shower_gallon_s", "s"),
      ],
      tap: true,
    },
    {
      key: "bath_fan",
      questions: [
        measure("bath_fan.bag_emptied_s", "s"),
        choice("bath_fan.ends", "fan_end", ["outdoors", "roof_cavity", "under_home"]),
        yesNo("bath_fan.runs_steadily"),
        choice("home.wet_windows", "how_often", ["often", "sometimes", "never"]),
      ],
    },
    {
      key: "cooling",
      questions: [choice("home.cooling", "cooling", ["none", "evaporative", "air_conditioner"])],
    },
    { key: "windows", questions: WINDOWS },
    { key: "gaps", questions: [], gaps: true },
  ],
};

const OUTSIDE: Station = {
  key: "outside",
  groups: [
    {
      key: "around",
      questions: [
        choice("home.shelter", "shelter", [
          "open_ground",
          "lone_home",
          "homes_across_road",
          "neighbours_apart",
          "neighbours_close",
        ]),
      ],
    },
    {
      key: "below",
      questions: [
        choice("home.ground_below", "ground", ["bare", "covered"]),
        yesNo("home.skirting_open"),
        ...onlyWhen(skirtingMissing, measure("home.skirting_open_ft", "ft")),
        yesNo("home.skirting_insulated"),
        choice("home.skirting_vents", "vents", ["open", "blocked", "none"]),
        yesNo("home.hay_bales"),
        choice("home.belly", "belly", ["sound", "torn", "missing"]),
        ...onlyWhen(bellyTorn, number("home.belly_hole_in2", false)),
        ...onlyWhen(
          (given) => sectionsJoined(given) && hasRegisters(given),
          choice("ducts.crossover", "crossover", ["sound", "loose", "fallen"]),
        ),
      ],
    },
    {
      key: "heat_cable",
      questions: [
        yesNo("heat_cable.present"),
        ...onlyWhen(
          hasCable,
          yesNo("heat_cable.damaged"),
          yesNo("heat_cable.wet"),
          yesNo("heat_cable.uncertified"),
          yesNo("heat_cable.under_foam"),
          yesNo("heat_cable.lapped"),
          measure("heat_cable.length_ft", "ft"),
          number("heat_cable.power_w_per_ft", false),
          choice("heat_cable.control", "control", [
            "always_on",
            "thermostat",
            "self_regulating",
            "seasonal",
          ]),
        ),
        ...onlyWhen(
          cableBySeason,
          { path: "heat_cable.on_day", input: { kind: "season" } },
          { path: "heat_cable.off_day", input: { kind: "season" } },
        ),
        ...onlyWhen(
          hasCable,
          measure("heat_cable.pipe_outside_in", "in"),
          measure("heat_cable.insulation_in", "in"),
          yesNo("heat_cable.ground_fault_outlet"),
          yesNo("heat_cable.thermostat_proved"),
          yesNo("heat_cable.someone_plugs_in"),
        ),
      ],
    },
  ],
};

const SIT_DOWN: Station = {
  key: "sit_down",
  groups: [
    {
      key: "prices",
      questions: [
        measure("electricity_usd_per_kwh", "usd"),
        ...onlyWhen(buysFuel, measure("heating.price_usd", "usd")),
        ...onlyWhen(burnsGas, choice("heating.price_per", "price_per", ["therm", "ccf"])),
      ],
    },
    { key: "leak_test", questions: [number("leak_test.flow_50_cfm")] },
  ],
};

/** The walk: before anything is touched, inside, outside with the look underneath last, sit-down. */
export const STATIONS: readonly Station[] = [START, INSIDE, OUTSIDE, SIT_DOWN];

/** Places of a gap. A gap always has one: it names the row. */
export const GAP_PLACES: readonly string[] = [
  "door_bottom",
  "door_side",
  "window_sash",
  "casing",
  "ceiling_joint",
  "marriage_line",
  "pipe_hole",
  "bath_fan_housing",
  "fan_damper",
  "dryer_vent",
  "range_hood",
  "access_panel",
  "outlet_plate",
  "cooler_grille",
  "water_heater_closet",
  "closet_inner_panel",
  "closet_outer_door",
  "furnace_closet",
  "coil_cabinet",
  "elsewhere",
];

/** What is asked of every gap; the paths continue `gaps.<row>.`. */
export const GAP_QUESTIONS: readonly Question[] = [
  { path: "label", input: { kind: "text" } },
  measure("length_in", "in"),
  { path: "width_in", input: { kind: "measure", unit: "in", quick: QUICK_WIDTHS } },
  choice("width_class", "width_class", ["card", "dime", "two_coins", "pencil", "not_measured"]),
  choiceOfMany("leads_to", "leads_to", [
    "outdoors",
    "belly",
    "roof_cavity",
    "closet_with_outside_air",
    "wall",
    "room_or_return",
  ]),
  measure("depth_in", "in"),
  number("bends_count"),
  number("count"),
  yesNo("sealed"),
  choice("window", "window_kind", ["hung", "sliding", "awning", "jalousie"]),
];

/** The questions of a station that are asked, given the answers so far. */
export function askedIn(station: Station, given: Given): Question[] {
  return station.groups
    .flatMap((group) => group.questions)
    .filter((question) => question.asked?.(given) ?? true);
}
