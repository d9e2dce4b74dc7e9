// The door as JavaScript meets it: what JSON cannot hold is refused with its path, nothing is taken
// for "not seen", and no value whatever ends the module. Runs after `cargo page` has made
// `www/pkg`; `cargo verify` runs it with `node --test`.

import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { before, test } from "node:test";
import vm from "node:vm";

const made = (name) => new URL(`../www/pkg/${name}`, import.meta.url);
let core;
let memory;

before(async () => {
  const { default: init, ...functions } = await import(made("winterseam.js"));
  ({ memory } = await init({ module_or_path: readFileSync(made("winterseam_bg.wasm")) }));
  core = functions;
});

const bag = { seconds: 9, direction: "emptying" };

/** What is wrong, as `path code`. */
function wrong(ask, language) {
  try {
    ask(language);
  } catch (thrown) {
    assert.ok(thrown instanceof Error, "an error of JavaScript");
    assert.ok(Array.isArray(thrown.problems), `not an error of the door: ${thrown}`);
    assert.equal(thrown.message, thrown.problems.map((problem) => problem.message).join("\n"));
    return thrown.problems.map(({ path, code }) => `${path} ${code}`);
  }
  return [];
}

const refused = (question) => wrong(() => core.ask_bag_flow(question));

test("a question is answered in plain values", () => {
  const answer = core.ask_bag_flow(bag);
  assert.equal(Object.getPrototypeOf(answer), Object.prototype);
  assert.equal(answer.bound, "exact");
  const free = { cost_usd: 0, saving_usd_per_year: 9, life_years: 9, real_discount_rate: 0 };
  assert.equal(core.ask_worth(free).adjusted_irr, null);
});

test("absent, undefined and null mean the same", () => {
  const [absent, none, unset] = [{}, { seconds: null }, { seconds: undefined }].map((part) =>
    refused({ direction: "filling", ...part }),
  );
  assert.deepEqual(absent, ["seconds missing"]);
  assert.deepEqual(none, absent);
  assert.deepEqual(unset, absent);
});

test("five wrong fields of five kinds are all named", () => {
  const question = { model: "basik", leakage_area_m2: -1, indoor_c: NaN, outdoor_c: "0" };
  const rest = { wind_m_s: 3, shelter_class: 4, colour: 1 };
  assert.deepEqual(wrong(() => core.ask_infiltration({ ...question, ...rest })), [
    "colour unknown_field",
    "model not_one_of",
    "leakage_area_m2 out_of_range",
    "indoor_c not_a_number",
    "outdoor_c wrong_type",
    "storeys missing",
  ]);
});

test("numbers that are none are refused and not taken for unseen", () => {
  for (const seconds of [NaN, Infinity, -Infinity]) {
    assert.deepEqual(refused({ ...bag, seconds }), ["seconds not_a_number"]);
  }
});

class Bag {
  seconds = 9;
  direction = "emptying";
}

const ODD = {
  function: () => 9,
  symbol: Symbol("9"),
  bigint: 9n,
  date: new Date(0),
  map: new Map([["seconds", 9]]),
  set: new Set([9]),
  expression: /9/,
  boxed: new Number(9),
  bytes: new Uint8Array(9),
  class: new Bag(),
  promise: Promise.resolve(9),
};

for (const [name, value] of Object.entries(ODD)) {
  test(`${name}: what JSON cannot hold is refused with its path`, () => {
    assert.deepEqual(refused({ ...bag, seconds: value }), ["seconds wrong_type"]);
    assert.deepEqual(refused({ ...bag, extra: [0, { deep: value }] }), ["extra[1].deep wrong_type"]);
    assert.deepEqual(refused(value), [" wrong_type"]);
  });
}

test("two values that JSON cannot hold are both named", () => {
  assert.deepEqual(refused({ seconds: 9n, direction: Symbol("x") }), [
    "seconds wrong_type",
    "direction wrong_type",
  ]);
});

test("objects of another window and without a prototype are plain", () => {
  assert.equal(core.ask_bag_flow(vm.runInNewContext("({seconds: 9, direction: 'emptying'})")).bound, "exact");
  assert.equal(core.ask_bag_flow(Object.assign(Object.create(null), bag)).bound, "exact");
});

test("what throws while it is read is refused where it stands", () => {
  const getter = Object.defineProperty({ ...bag }, "seconds", {
    enumerable: true,
    get() {
      throw new TypeError("no");
    },
  });
  assert.deepEqual(refused(getter), ["seconds wrong_type"]);
  const { proxy, revoke } = Proxy.revocable({}, {});
  revoke();
  assert.deepEqual(refused({ ...bag, seconds: proxy }), ["seconds wrong_type"]);
  assert.deepEqual(refused(proxy), [" wrong_type"]);
});

test("deep, cyclic, huge and endless values are refused, and the next call is answered", () => {
  let deep = {};
  for (let level = 0; level < 20_000; level++) deep = { deep };
  const cyclic = { ...bag };
  cyclic.self = cyclic;
  const endless = new Proxy({}, { ownKeys: () => ["a"], getOwnPropertyDescriptor: () => ({ enumerable: true, configurable: true }), get: (_, key) => (key === "a" ? endless : undefined) });
  const huge = [deep, cyclic, endless, new Array(2 ** 32 - 1), { long: "x".repeat(2 ** 27) }, Array(20_000).fill(0)];
  for (let round = 0; round < 200; round++) {
    for (const value of huge) {
      const problems = refused(value);
      assert.equal(problems.length, 1);
      assert.match(problems[0], / too_large$/);
    }
    assert.equal(core.ask_bag_flow(bag).bound, "exact");
  }
});

test("refusing does not eat memory", () => {
  const refuse = (times) => {
    for (let time = 0; time < times; time++) refused({ seconds: "x".repeat(99), extra: [1n, {}] });
  };
  refuse(2_000);
  const settled = memory.buffer.byteLength;
  refuse(20_000);
  const grown = memory.buffer.byteLength - settled;
  assert.equal(grown, 0);
});

test("without the climate tables a question about a place is refused", () => {
  assert.deepEqual(wrong(() => core.ask_climate({ zip: "59801" })), [" no_climate"]);
  assert.deepEqual(wrong(() => core.load_climate(new Uint8Array(9))), ["bytes no_climate"]);
  core.load_climate(readFileSync(new URL("../core/data/climate/atlas.bin", import.meta.url)));
  assert.equal(core.ask_climate({ zip: "59801" }).station, "727730");
  assert.deepEqual(wrong(() => core.load_climate(new Uint8Array(9))), ["bytes no_climate"]);
  assert.equal(core.ask_climate({ zip: "59801" }).station, "727730");
});

test("readings come in the asked unit", () => {
  assert.deepEqual(core.measure('1 1/4"', "in"), { value: 1.25, unit: "in" });
  assert.deepEqual(wrong(() => core.measure("wide", "in")), ["text malformed"]);
  assert.deepEqual(wrong(() => core.measure("3", "furlong")), ["unit not_one_of"]);
  for (const odd of [9, null, undefined, {}, Symbol("9"), 9n]) {
    assert.deepEqual(wrong(() => core.measure(odd, "in")), ["text malformed"]);
    assert.deepEqual(wrong(() => core.load_climate(odd)), ["bytes no_climate"]);
  }
});

test("phrases are put into words, and what is none is refused", () => {
  const phrase = { key: "fuel.wood", args: {} };
  assert.equal(core.words(phrase), "wood");
  assert.notEqual(core.words(phrase, "es"), "wood");
  assert.deepEqual(wrong(() => core.words({ key: 9 })), ["key wrong_type"]);
  for (const language of ["xx", 9, {}, Symbol("es")]) {
    assert.deepEqual(wrong(() => core.words(phrase, language)), ["language not_one_of"]);
  }
});

test("refusals speak the language that is asked for", () => {
  const say = (language) => {
    try {
      core.ask_bag_flow({}, language);
    } catch (thrown) {
      return thrown.message;
    }
    return "";
  };
  assert.notEqual(say("en"), say("es"));
});

test("the schema is JSON and names the request", () => {
  assert.equal(JSON.parse(core.schema()).Request.title, "Request");
});
