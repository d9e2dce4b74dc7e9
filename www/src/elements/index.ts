// Defines the elements. A third-party page imports this; it needs no more than
// <winterseam-check lang="en"></winterseam-check> and the style sheet.

import { WinterseamBar } from "./bar.js";
import { WinterseamCheck } from "./check.js";
import { WinterseamGaps } from "./gaps.js";
import { WinterseamKeep } from "./keep.js";
import { WinterseamPlan } from "./plan/plan.js";
import { WinterseamQuestion } from "./question.js";
import { WinterseamTap } from "./tap.js";
import { WinterseamTroubles } from "./troubles.js";
import { WinterseamWalk } from "./walk.js";

const ELEMENTS: Record<string, CustomElementConstructor> = {
  "winterseam-bar": WinterseamBar,
  "winterseam-gaps": WinterseamGaps,
  "winterseam-keep": WinterseamKeep,
  "winterseam-plan": WinterseamPlan,
  "winterseam-question": WinterseamQuestion,
  "winterseam-tap": WinterseamTap,
  "winterseam-troubles": WinterseamTroubles,
  "winterseam-walk": WinterseamWalk,
  // Last: it draws all the others.
  "winterseam-check": WinterseamCheck,
};

for (const [name, element] of Object.entries(ELEMENTS)) {
  if (!customElements.get(name)) customElements.define(name, element);
}

export type { CoreFiles } from "../core.js";
export { WinterseamCheck };
