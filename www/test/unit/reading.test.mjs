import assert from "node:assert/strict";
import { test } from "node:test";
import { load } from "../load.mjs";

const { Walk } = await load("src/state/walk.ts");
const { readWalk } = await load("src/state/reading.ts");
const { assessWalk } = await load("src/state/outcome.ts");

const TODAY = "2026-11-25";
/** Reads plain numbers only; what else the core can read is the core's to test. */
const core = {
  measure(text, unit) {
    if (!/^[\d.]+$/.test(text)) throw new Error("unreadable");
    return { value: Number(text), unit };
  },
};

function walkOf(answers, gaps = []) {
  const walk = new Walk();
  walk.restore({ answers, gaps });
  return walk;
}

const refused = (path) => ({
  problems: [{ path, code: "range", message: `${path} is out of range`, args: {} }],
});

test("an_untouched_walk_asks_about_an_unknown_home", () => {
  const { request, troubles } = readWalk(new Walk(), core, TODAY);
  assert.deepEqual(request, { today: TODAY });
  assert.deepEqual(troubles, []);
});

test("each_kind_of_answer_reaches_its_field", () => {
  const walk = walkOf({
    today: "2026-01-02",
    "home.zip": "04401",
    "home.year_built": "1988",
    "first_look.gas_smell": "false",
    "first_look.co_alarm": "chirping",
    "water_heater.tap_f": "124",
  });
  const { request } = readWalk(walk, core, TODAY);
  assert.deepEqual(request, {
    today: "2026-01-02",
    home: { zip: "04401", year_built: 1988 },
    first_look: { gas_smell: false, co_alarm: "chirping" },
    water_heater: { tap_f: 124 },
  });
});

test("turns_of_the_dial_become_a_list_and_a_half_given_one_waits", () => {
  const walk = walkOf({
    "water_heater.tap_f": "140",
    "water_heater.turns.0.marks_down": "1",
    "water_heater.turns.0.tap_f": "130",
    "water_heater.turns.1.marks_down": "1.5",
  });
  const { request } = readWalk(walk, core, TODAY);
  assert.deepEqual(request.water_heater, { tap_f: 140, turns: [{ marks_down: 1, tap_f: 130 }] });
});

test("gaps_in_ducts_become_a_list_and_a_refused_one_is_named_in_its_row", () => {
  const walk = walkOf({
    "ducts.gaps.0.place": "boot",
    "ducts.gaps.1.place": "coil_cabinet",
    "ducts.gaps.1.length_in": "30",
    "ducts.gaps.1.width_in": "99",
    "ducts.gaps.2.place": "plenum",
    "ducts.gaps.2.length_in": "12",
    "ducts.gaps.2.width_in": "0.25",
  });
  const whole = { place: "plenum", length_in: 12, width_in: 0.25 };
  const refuses = { ...core, assess };
  function assess(request) {
    if (request.ducts.gaps.length === 2) return refused("ducts.gaps[0].width_in");
    return { answer: request };
  }
  const { answer, troubles } = assessWalk(walk, refuses, "en", TODAY);
  assert.deepEqual(answer.ducts, { gaps: [whole] });
  assert.deepEqual(
    troubles.map(({ path }) => path),
    ["ducts.gaps.1.width_in"],
  );
});

test("half_of_a_pair_goes_with_the_half_that_was_refused", () => {
  const assess = ({ heating }) => {
    if (heating.label_rise_max_f) return refused("heating.label_rise_max_f");
    if (heating.label_rise_min_f) return refused("heating.label_rise_max_f");
    return { answer: heating };
  };
  const walk = walkOf({
    "heating.soot": "true",
    "heating.label_rise_min_f": "45",
    "heating.label_rise_max_f": "999",
  });
  const { answer } = assessWalk(walk, { ...core, assess }, "en", TODAY);
  assert.deepEqual(answer, { soot: true });
});

test("unreadable_text_is_named_and_left_where_it_was_typed", () => {
  const walk = walkOf({ "water_heater.tap_f": "warm", "home.bedrooms_count": "2.5" });
  const { request, troubles } = readWalk(walk, core, TODAY);
  assert.deepEqual(request, { today: TODAY });
  assert.deepEqual(
    troubles.map(({ path }) => path),
    ["home.bedrooms_count", "water_heater.tap_f"],
  );
  assert.equal(walk.given("water_heater.tap_f"), "warm");
});

test("a_gap_counts_once_both_its_sizes_are_there", () => {
  const walk = walkOf({}, [
    { place: "casing", length_in: "30" },
    { place: "door_bottom", length_in: "36", width_in: "0.25" },
  ]);
  const { request, rows } = readWalk(walk, core, TODAY);
  assert.deepEqual(request.gaps, [{ place: "door_bottom", length_in: 36, width_in: 0.25 }]);
  assert.deepEqual(rows.get("gaps"), [1]);
});

test("a_price_waits_for_its_unit_unless_the_fuel_has_only_one", () => {
  const gas = readWalk(
    walkOf({ "heating.fuel": "natural_gas", "heating.price_usd": "1.4" }),
    core,
    TODAY,
  );
  assert.deepEqual(gas.request.heating, { fuel: "natural_gas" });
  assert.deepEqual(
    gas.troubles.map(({ path }) => path),
    ["heating.price_per"],
  );
  const propane = readWalk(
    walkOf({ "heating.fuel": "propane", "heating.price_usd": "2.6" }),
    core,
    TODAY,
  );
  assert.deepEqual(propane.request.heating, {
    fuel: "propane",
    price_usd: 2.6,
    price_per: "gal",
  });
});

test("what_is_not_asked_is_not_sent_but_kept", () => {
  const walk = walkOf({ "heat_cable.present": "false", "heat_cable.length_ft": "24" });
  assert.deepEqual(readWalk(walk, core, TODAY).request.heat_cable, { present: false });
  assert.equal(walk.given("heat_cable.length_ft"), "24");
});

test("a_field_that_the_core_refuses_is_named_and_the_rest_is_assessed", () => {
  const assess = (request) => {
    if (request.home?.zip) return refused("home.zip");
    return { answer: request };
  };
  const walk = walkOf({ "home.zip": "00000", "first_look.gas_smell": "true" });
  const { answer, troubles } = assessWalk(walk, { ...core, assess }, "en", TODAY);
  assert.deepEqual(answer, { today: TODAY, home: {}, first_look: { gas_smell: true } });
  assert.deepEqual(troubles, [{ path: "home.zip", message: "home.zip is out of range" }]);
});

test("a_refused_gap_is_named_in_the_row_where_it_stands", () => {
  const assess = (request) => {
    if (request.gaps.length === 2) return refused("gaps[1].width_in");
    return { answer: request };
  };
  const walk = walkOf({}, [
    { place: "casing" },
    { place: "casing", length_in: "30", width_in: "0.1" },
    { place: "casing", length_in: "30", width_in: "99" },
  ]);
  const { answer, troubles } = assessWalk(walk, { ...core, assess }, "en", TODAY);
  assert.equal(answer.gaps.length, 1);
  assert.deepEqual(
    troubles.map(({ path }) => path),
    ["gaps.2.width_in"],
  );
});

test("a_core_that_refuses_everything_ends_without_an_answer", () => {
  const assess = () => refused("");
  const { answer, troubles } = assessWalk(new Walk(), { ...core, assess }, "en", TODAY);
  assert.equal(answer, null);
  assert.equal(troubles.length, 1);
});
