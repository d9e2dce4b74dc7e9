// The lines that hold in every home, whatever was typed and whether or not anything is computed.

import { list, make } from "../dom.js";
import type { Labels } from "../labels/index.js";

export const SAFETY_LINES = [
  "gas",
  "co",
  "flame",
  "generator",
  "wire",
  "tank",
  "cable",
  "openings",
  "burn",
  "numbers",
] as const;

export function safetyLines(labels: Labels, heading: "h2" | "h3"): HTMLElement {
  return make(
    "section",
    { class: "ws-lines", lang: labels.language, "aria-labelledby": "ws-lines-head" },
    make(heading, { id: "ws-lines-head" }, labels.text("safety.head")),
    list(SAFETY_LINES.map((line) => labels.text(`safety.${line}`))),
  );
}
