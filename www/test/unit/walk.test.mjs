import assert from "node:assert/strict";
import { test } from "node:test";
import { load } from "../load.mjs";

const { Walk } = await load("src/state/walk.ts");
const { keepDraft, keptDraft, eraseDraft } = await load("src/state/draft.ts");
const { PARTS_OF_YEAR } = await load("src/walk/season.ts");
const { today } = await load("src/state/today.ts");

/** A device that keeps texts. */
function device() {
  const kept = new Map();
  return {
    getItem: (name) => kept.get(name) ?? null,
    setItem: (name, text) => kept.set(name, text),
    removeItem: (name) => kept.delete(name),
  };
}

const refusing = new Proxy(
  {},
  {
    get() {
      throw new Error("storage is off");
    },
  },
);

test("a_removed_gap_can_be_put_back_as_it_was", () => {
  const walk = new Walk();
  walk.addGap("casing");
  walk.addGap("door_bottom");
  walk.set("gaps.0.width_in", "3/8");
  walk.removeGap(0);
  assert.equal(walk.given("gaps.0.place"), "door_bottom");
  walk.putGapBack();
  assert.equal(walk.given("gaps.0.width_in"), "3/8");
  assert.equal(walk.given("gaps.1.place"), "door_bottom");
});

test("every_change_is_told", () => {
  const walk = new Walk();
  const told = [];
  walk.addEventListener("change", (event) => told.push(event.detail));
  walk.set("home.zip", "59801");
  walk.addGap("casing");
  assert.deepEqual(told, ["home.zip", "gaps"]);
});

test("a_kept_walk_comes_back_whole", () => {
  globalThis.localStorage = device();
  const walk = new Walk();
  walk.set("home.zip", "04401");
  walk.addGap("casing");
  assert.equal(keepDraft(walk.keep()), true);
  assert.deepEqual(keptDraft(), walk.keep());
  eraseDraft();
  assert.equal(keptDraft(), null);
});

test("a_device_that_keeps_nothing_stops_nothing", () => {
  globalThis.localStorage = refusing;
  assert.equal(keepDraft({ answers: {}, gaps: [] }), false);
  assert.equal(keptDraft(), null);
  eraseDraft();
});

test("whatever_else_lies_in_the_draft_is_not_taken_for_a_walk", () => {
  globalThis.localStorage = device();
  for (const text of ["", "{", "[]", "null", '{"answers":{"a":1},"gaps":[]}', '{"answers":{}}']) {
    localStorage.setItem("winterseam-walk", text);
    assert.equal(keptDraft(), null, text);
  }
});

test("the_parts_of_the_year_follow_the_calendar", () => {
  assert.equal(PARTS_OF_YEAR.length, 36);
  for (const { key, month, day } of PARTS_OF_YEAR) {
    const date = new Date(Date.UTC(2001, 0, day));
    assert.equal(date.getUTCMonth() + 1, month);
    assert.equal(date.getUTCDate(), { early: 5, middle: 15, late: 25 }[key]);
  }
});

test("today_is_the_day_on_the_device", () => {
  assert.equal(today(new Date(2026, 0, 5, 23, 59)), "2026-01-05");
});
