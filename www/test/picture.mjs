// Takes the picture of the README from the built page: the demo home, its walk and its plan.

import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { goTo, openBrowser, openPage, walkHome } from "./browser/walk.mjs";

const HOME = new URL("../../core/examples/homes/demo.json", import.meta.url);
const PICTURE = fileURLToPath(new URL("../picture.png", import.meta.url));

const browser = await openBrowser();
const { page } = await openPage(browser, { width: 1280, height: 900 });
await walkHome(page, JSON.parse(await readFile(HOME, "utf8")));
await goTo(page, "inside");
await page.evaluate(() => document.activeElement?.blur());
await page.evaluate(() => scrollTo(0, 0));
await page.screenshot({ path: PICTURE });
await browser.close();
