// The work of lib.rs in plain JavaScript, and in the wasm module where `cargo page` has built it;
// prints one JSON line a time.

import { existsSync, readFileSync } from "node:fs";

const HOURS = 8760;
const LEAKS_CM2 = 500;
// The handbook's basic model: one storey, homes across the road; (L/s)²/cm⁴ for each K and (m/s)².
const STACK = 0.000145;
const WIND = 0.000174;

/** The median of several runs of at least a tenth of a second each. */
function medianNs(run, count) {
  const times = [];
  for (let turn = 0; turn < 7; turn += 1) {
    const start = performance.now();
    let runs = 0;
    while (performance.now() - start < 100) {
      run();
      runs += 1;
    }
    times.push(((performance.now() - start) * 1e6) / runs / count);
  }
  return times.sort((a, b) => a - b)[3];
}

function tell(work, count, run, peer = "javascript loop") {
  const time = { work, peer, each: medianNs(run, count), sum: run() };
  process.stdout.write(`${JSON.stringify(time)}\n`);
}

function leakage() {
  let total = 0;
  for (let hour = 0; hour < HOURS; hour += 1) {
    const apart = ((hour * 37) % 400) / 10;
    const wind = ((hour * 53) % 120) / 10;
    total += (LEAKS_CM2 / 1000) * Math.sqrt(STACK * apart + WIND * wind * wind);
  }
  return total;
}

function worths() {
  let total = 0;
  for (let repair = 0; repair < 1000; repair += 1) {
    const cost = (repair % 50) * 10 + 20;
    const saving = (repair % 70) + 30;
    const life = (repair % 20) + 5;
    const value = (saving * (1 - 1.03 ** -life)) / 0.03;
    const payback = -Math.log(1 - (cost / saving) * 0.03) / Math.log(1.03);
    const yields = 1.03 * (value / cost) ** (1 / life) - 1;
    total += value + (payback + yields === Infinity ? 1 : 0);
  }
  return total;
}

tell("air leakage of a home, hours", HOURS, leakage);
tell("worth of a repair, repairs", 1000, worths);

const beside = (path) => new URL(`../${path}`, import.meta.url);
if (existsSync(beside("www/pkg/winterseam_bg.wasm"))) {
  const { default: init, load_climate, assess } = await import(beside("www/pkg/winterseam.js"));
  await init({ module_or_path: readFileSync(beside("www/pkg/winterseam_bg.wasm")) });
  load_climate(new Uint8Array(readFileSync(beside("core/data/climate/atlas.bin"))));
  const demo = JSON.parse(readFileSync(beside("core/examples/homes/demo.json"), "utf8"));
  const plan = () =>
    assess(demo).firsts.reduce((sum, step) => sum + (step.saving?.high ?? 0), 0);
  tell("plan of the demo home, plans", 1, plan, "wasm in node");
}
