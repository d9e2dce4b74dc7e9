// Registers, return and gaps in ducts, as a person writes them down.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { fillHere, goTo, openBrowser, openPage } from "./walk.mjs";

let browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser.close());

test("a_furnace_short_of_air_is_a_stop_and_its_gaps_are_asked_one_after_another", async () => {
  const { context, page, log } = await openPage(browser, { width: 1280, height: 800 });
  await goTo(page, "inside");
  const walk = {
    "heating.label_rise_min_f": "55",
    "heating.label_rise_max_f": "85",
    "ducts.return_f": "70",
    "ducts.supply_f": "164",
    "ducts.registers_count": "12",
    "ducts.registers_closed_count": "4",
  };
  for (const [path, typed] of Object.entries(walk)) await fillHere(page, path, typed);
  const plan = page.locator(".ws-plan-body");
  assert.match(await page.locator(".ws-stop-today").innerText(), /more than its label allows/);
  assert.match(await plan.innerText(), /4 of 12 registers are closed/);
  assert.equal(await page.locator('[id="ducts.gaps.1.place"]').isVisible(), false);
  await fillHere(page, "ducts.gaps.0.place", "coil_cabinet");
  await fillHere(page, "ducts.gaps.0.length_in", "30");
  await fillHere(page, "ducts.gaps.0.width_in", "1/2");
  assert.ok(await page.locator('[id="ducts.gaps.1.place"]').isVisible());
  assert.match(await plan.innerText(), /blows into its closet/);
  await fillHere(page, "heating.warm_air", "none");
  assert.equal(await page.locator('[id="ducts.supply_f"]').isVisible(), false);
  assert.deepEqual(log, { requests: [], complaints: [] });
  await context.close();
});
