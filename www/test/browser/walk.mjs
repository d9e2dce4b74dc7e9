// Opens the page the way a person does, and walks a home through it.

import { readFile } from "node:fs/promises";
import { chromium } from "playwright-core";

const PAGE = new URL(process.env.WINTERSEAM_PAGE ?? "../../dist/index.html", import.meta.url);
const CHROMIUM = process.env.WINTERSEAM_CHROMIUM ?? "/usr/bin/chromium";
const FLAGS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

export const HOME = JSON.parse(await readFile(new URL("home.json", import.meta.url), "utf8"));

/** Answers that open further questions. */
const OPENERS = [
  "home.zip",
  "home.skirting_open",
  "home.belly",
  "heating.fuel",
  "heat_cable.present",
  "heat_cable.control",
  "water_heater.kind",
  "water_heater.place",
];

export const openBrowser = () =>
  chromium.launch({ executablePath: CHROMIUM, headless: true, args: FLAGS });

/**
 * Opens the page offline; `log` holds whatever it asked of the network or complained about.
 * `script` runs before the page's own; `ready` is what shows that the page stands.
 */
export async function openPage(browser, options = {}) {
  const { width = 390, height = 844, script, ready = "#ws-plan-head", ...more } = options;
  const context = await browser.newContext({
    offline: true,
    viewport: { width, height },
    locale: "en-US",
    ...more,
  });
  const page = await context.newPage();
  if (script) await page.addInitScript(script);
  const log = { requests: [], complaints: [] };
  listen(page, log);
  await page.goto(PAGE.href);
  await page.locator(ready).waitFor({ state: "attached" });
  return { context, page, log };
}

function listen(page, log) {
  page.on("request", (request) => {
    const url = request.url();
    const own = url === PAGE.href || /^(data|blob):/.test(url);
    if (!own) log.requests.push(url);
  });
  page.on("pageerror", (error) => log.complaints.push(String(error)));
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) log.complaints.push(message.text());
  });
}

/** Fills the walk from a request: station by station, as each field asks. */
export async function walkHome(page, home = HOME) {
  const fields = flat(home);
  const gaps = home.gaps ?? [];
  for (const station of ["start", "inside", "outside", "sit_down"]) {
    await goTo(page, station);
    if (station === "inside") for (const _ of gaps) await addGap(page);
    for (const [path, value] of fields) {
      const filled = await fill(page, path, value);
      if (filled && OPENERS.includes(path)) await settled(page);
    }
  }
  await settled(page);
}

export async function goTo(page, station) {
  await page.locator(`[data-to="${station}"]`).click();
}

export async function addGap(page) {
  await page.locator("winterseam-gaps > .ws-tools button").first().click();
}

/** Fills a field of the station shown and waits for the plan. */
export async function fillHere(page, path, value) {
  await fill(page, path, value);
  await settled(page);
}

/** Fills a field if it stands in the station shown; says whether it did. */
async function fill(page, path, value) {
  const field = page.locator(`[id="${path}"]`);
  if (!(await field.isVisible())) return false;
  const tag = await field.evaluate((element) => element.tagName);
  if (tag === "FIELDSET") await field.locator(`input[value="${value}"]`).check();
  else if (tag === "SELECT") await field.selectOption(String(value));
  else await field.fill(String(value));
  return true;
}

/** Waits until the pause after typing is over and the plan is made anew. */
export async function settled(page) {
  await page.waitForTimeout(90);
}

/** Turns to the plan where it does not stand beside the walk. */
export async function toPlan(page) {
  const bar = page.locator(".ws-bar-button");
  if (await bar.isVisible()) await bar.click();
}

function flat(value, path = "") {
  if (typeof value !== "object" || value === null) return [[path, value]];
  return Object.entries(value)
    .filter(([key]) => key !== "depth_in" && key !== "bends_count")
    .flatMap(([key, inner]) => flat(inner, path ? `${path}.${key}` : key));
}
