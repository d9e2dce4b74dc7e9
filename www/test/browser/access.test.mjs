// The page for people who do not use a mouse, who listen to it, or who enlarge it.

import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { AxeBuilder } from "@axe-core/playwright";
import { fillHere, goTo, openBrowser, openPage, settled, toPlan, walkHome } from "./walk.mjs";

const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
const STATIONS = ["start", "inside", "outside", "sit_down"];
const SIZES = [
  { width: 390, height: 844 },
  { width: 1280, height: 800 },
];

let browser;
before(async () => {
  browser = await openBrowser();
});
after(() => browser.close());

async function assertAccessible(page, where) {
  const { violations } = await new AxeBuilder({ page }).withTags(RULES).analyze();
  const found = violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html)}`);
  assert.deepEqual(found, [], where);
}

async function addTroubles(page) {
  await goTo(page, "start");
  await fillHere(page, "home.zip", "1");
  await fillHere(page, "home.width_ft", "wide");
  await fillHere(page, "first_look.gas_smell", true);
  await page.locator('[id="home.width_ft"]').blur();
  await settled(page);
}

for (const size of SIZES) {
  for (const locale of ["en-US", "es-US"]) {
    test(`axe_finds_nothing_at_${size.width}_in_${locale}`, async () => {
      const { context, page } = await openPage(browser, { ...size, locale });
      await assertAccessible(page, "untouched");
      await walkHome(page);
      for (const station of STATIONS) {
        await goTo(page, station);
        await assertAccessible(page, station);
      }
      await toPlan(page);
      for (const summary of await page.locator(".ws-plan-body summary").all()) {
        await summary.click();
      }
      await assertAccessible(page, "plan");
      await toPlan(page);
      await addTroubles(page);
      await assertAccessible(page, "stop and troubles");
      await toPlan(page);
      await assertAccessible(page, "plan with a stop");
      await context.close();
    });
  }
}

for (const width of [320, 390]) {
  test(`nothing_is_cut_off_at_${width}_pixels`, async () => {
    const { context, page } = await openPage(browser, { width, height: 640, locale: "es-US" });
    await walkHome(page);
    for (const station of STATIONS) {
      await goTo(page, station);
      assert.deepEqual(await cutOff(page), [], station);
    }
    await toPlan(page);
    assert.deepEqual(await cutOff(page), [], "plan");
    await context.close();
  });

  test(`everything_to_be_pressed_is_large_enough_for_a_thumb_at_${width}_pixels`, async () => {
    const { context, page } = await openPage(browser, { width, height: 640 });
    await walkHome(page);
    for (const station of STATIONS) {
      await goTo(page, station);
      assert.deepEqual(await tooSmall(page), [], station);
    }
    await toPlan(page);
    assert.deepEqual(await tooSmall(page), [], "plan");
    await context.close();
  });
}

test("a_walk_by_keyboard_reaches_the_plan", async () => {
  const { context, page } = await openPage(browser);
  await tabTo(page, "#first_look\\.gas_smell input");
  await page.keyboard.press("ArrowLeft");
  await settled(page);
  assert.ok(await page.locator('[name="first_look.gas_smell"][value="false"]').isChecked());
  await page.keyboard.press("ArrowLeft");
  await settled(page);
  assert.ok((await page.locator(".ws-stop").count()) > 0);
  await tabTo(page, "#home\\.zip");
  await page.keyboard.type("59801");
  await tabTo(page, ".ws-next");
  await page.keyboard.press("Enter");
  assert.equal(await focused(page, "#ws-inside"), true);
  await tabTo(page, ".ws-bar-button");
  await page.keyboard.press("Enter");
  assert.equal(await focused(page, "#ws-plan-head"), true);
  assert.ok(await page.locator(".ws-stop").first().isVisible());
  await context.close();
});

test("what_has_the_focus_is_never_hidden_by_the_bar", async () => {
  const { context, page } = await openPage(browser, { width: 390, height: 640 });
  for (let press = 0; press < 60; press += 1) {
    await page.keyboard.press("Tab");
    const hidden = await page.evaluate(() => {
      const bar = document.querySelector(".ws-bar-button");
      const { activeElement: at } = document;
      const { top } = at.getBoundingClientRect();
      return at !== bar && top > bar.getBoundingClientRect().top ? at.outerHTML : null;
    });
    assert.equal(hidden, null);
  }
  await context.close();
});

test("a_stop_is_told_to_those_who_listen", async () => {
  const { context, page } = await openPage(browser);
  await fillHere(page, "first_look.gas_smell", true);
  assert.match(await page.locator("winterseam-bar [role=status]").innerText(), /^\d+ STOPS?\. /);
  await context.close();
});

test("on_paper_there_is_the_plan_alone_with_everything_unfolded", async () => {
  const { context, page } = await openPage(browser);
  await walkHome(page);
  await page.emulateMedia({ media: "print" });
  await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")));
  assert.ok(await page.locator(".ws-plan-body").isVisible());
  assert.equal(await page.locator("winterseam-walk").isVisible(), false);
  assert.equal(await page.locator(".ws-bar-button").isVisible(), false);
  assert.equal(await page.locator(".ws-plan-body details:not([open])").count(), 0);
  const size = await page.locator(".ws-check").evaluate((root) => getComputedStyle(root).fontSize);
  assert.equal(Math.round(Number.parseFloat(size) * 0.75), 14);
  await context.close();
});

/** Elements that reach past the edge of the page. A table may scroll in its own frame. */
function cutOff(page) {
  return page.evaluate(() => {
    const edge = document.documentElement.clientWidth;
    const wide = document.documentElement.scrollWidth > edge ? ["the page scrolls sideways"] : [];
    const past = [...document.querySelectorAll(".ws-check *")].filter((element) => {
      const { right, width } = element.getBoundingClientRect();
      return width > 0 && right > edge + 1 && !element.closest(".ws-table, .ws-said");
    });
    return [...wide, ...past.map((element) => element.outerHTML.slice(0, 120))];
  });
}

function tooSmall(page) {
  return page.evaluate(() => {
    const targets =
      ".ws-check button, .ws-pill, .ws-check select, .ws-check summary, .ws-line input";
    const small = [...document.querySelectorAll(targets)].filter((element) => {
      const { width, height } = element.getBoundingClientRect();
      return width > 0 && (width < 43.5 || height < 43.5);
    });
    return small.map((element) => element.outerHTML.slice(0, 120));
  });
}

const focused = (page, selector) =>
  page.locator(selector).evaluate((element) => element === document.activeElement);

/** Presses Tab until something is reached, the way a person does. */
async function tabTo(page, selector) {
  for (let press = 0; press < 150; press += 1) {
    await page.keyboard.press("Tab");
    const there = await page.evaluate((at) => document.activeElement.matches(at), selector);
    if (there) return;
  }
  assert.fail(`Tab never reached ${selector}`);
}
