// The same requests and questions through the native programs and through wasm. Values are compared
// bit for bit as parsed doubles; what is absent and what is null mean the same. `cargo xtask parity`
// runs it, after `cargo page`.

import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { test } from "node:test";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const core = await startCore();

/** What each number of a question is multiplied by; what leaves its range must be refused alike. */
const SPREAD = [-1, 0, 0.37, 0.93, 1, 1.07, 2.9];

async function startCore() {
  const glue = new URL("../www/pkg/winterseam.js", import.meta.url);
  const { default: init, ...wasm } = await import(glue);
  await init({ module_or_path: readFileSync(join(root, "www/pkg/winterseam_bg.wasm")) });
  wasm.load_climate(new Uint8Array(readFileSync(join(root, "core/data/climate/atlas.bin"))));
  return wasm;
}

/** One answer a line for one value a line. */
function natively(program, words, values) {
  const input = values.map((value) => `${JSON.stringify(value)}\n`).join("");
  const run = spawnSync(program, words, { input, encoding: "utf8", maxBuffer: 2 ** 30 });
  assert.equal(run.status, 0, run.stderr);
  const answers = run.stdout.trimEnd().split("\n").map((line) => JSON.parse(line));
  assert.equal(answers.length, values.length, "one answer a line");
  return answers;
}

/** What a function of the core gives or throws, as the native programs write it. */
function inWasm(ask) {
  try {
    return { ok: ask() };
  } catch (thrown) {
    assert.ok(Array.isArray(thrown.problems), `not an error of the door: ${thrown}`);
    return { errors: thrown.problems };
  }
}

/** `assess` writes an answer as it is, the probe as `{"ok": …}`. */
function asOutcome(answer) {
  return "errors" in answer || "ok" in answer ? answer : { ok: answer };
}

/** The first place where two values differ, or null. */
function difference(a, b, path = "") {
  if (isPlain(a) || isPlain(b)) {
    return Object.is(a ?? null, b ?? null) ? null : `${path || "/"}: ${show(a)} and ${show(b)}`;
  }
  for (const key of new Set([...Object.keys(a), ...Object.keys(b)])) {
    const found = difference(a[key], b[key], `${path}/${key}`);
    if (found) return found;
  }
  return null;
}

function isPlain(value) {
  return typeof value !== "object" || value === null;
}

function show(value) {
  return JSON.stringify(value) ?? String(value);
}

function same(native, wasm, asked) {
  const found = difference(asOutcome(native), wasm);
  assert.equal(found, null, `${found}\nasked: ${JSON.stringify(asked)}`);
}

function jsonIn(folder) {
  const path = join(root, folder);
  if (!existsSync(path)) return [];
  const names = readdirSync(path).filter((name) => name.endsWith(".json")).sort();
  return names.map((name) => [name, JSON.parse(readFileSync(join(path, name), "utf8"))]);
}

/** Each home as it is, and as it stands half-way through a walk: without one of its parts. */
function halves(request) {
  const parts = Object.keys(request).filter((key) => key !== "today");
  return [request, ...parts.map((part) => ({ ...request, [part]: null }))];
}

/** Each number of a question moved in turn. */
function spread(question) {
  const numbers = Object.keys(question).filter((key) => typeof question[key] === "number");
  const moved = numbers.flatMap((key) =>
    SPREAD.map((times) => ({ ...question, [key]: question[key] * times })),
  );
  return [question, ...moved];
}

/** The questions of the probe, by what they ask. */
function questions() {
  const lines = readFileSync(join(root, "tests/ours/questions.jsonl"), "utf8");
  const byAsk = new Map();
  for (const question of lines.trim().split("\n").map((line) => JSON.parse(line))) {
    byAsk.set(question.ask, [...(byAsk.get(question.ask) ?? []), question]);
  }
  return byAsk;
}

const homes = jsonIn("core/examples/homes");

test("there are demo homes to compare", () => assert.ok(homes.length >= 4));

for (const [name, request] of [...homes, ...jsonIn("tests/ours/requests")]) {
  test(`${name} is answered alike`, () => {
    const requests = halves(request);
    const answers = natively(process.env.WINTERSEAM_ASSESS, ["--lines"], requests);
    for (const [at, half] of requests.entries()) {
      same(answers[at], inWasm(() => core.assess(half)), half);
    }
  });

  test(`${name}: what is absent and what is null mean the same`, () => {
    for (const half of halves(request)) {
      const without = Object.fromEntries(Object.entries(half).filter(([, part]) => part !== null));
      assert.equal(
        difference(inWasm(() => core.assess(half)), inWasm(() => core.assess(without))),
        null,
      );
    }
  });
}

for (const [ask, asked] of questions()) {
  test(`${ask} is answered alike`, () => {
    const all = asked.flatMap(spread);
    const answers = natively(process.env.WINTERSEAM_PROBE, [], all);
    for (const [at, { ask, ...fields }] of all.entries()) {
      same(answers[at], inWasm(() => core[`ask_${ask}`](fields)), all[at]);
    }
  });
}
