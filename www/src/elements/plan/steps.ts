// Steps: what to do, why, by when, who may do it, what it costs and what it may save.

import { make } from "../../dom.js";
import type { Step, Stop } from "../../wire.js";
import { figureText, folded, materialList, part, type Speech, warningList } from "./speech.js";

export function firstsPart(steps: readonly Step[], speech: Speech): HTMLElement | null {
  if (steps.length === 0) return null;
  return part("firsts", speech, stepList(steps, speech));
}

export function laterPart(steps: readonly Step[], speech: Speech): HTMLElement | null {
  if (steps.length === 0) return null;
  return folded("later", speech, stepList(steps, speech));
}

/** Steps that mend a stop. They do not say again the warning that the box itself bears. */
export function mendList({ mends, code }: Stop, speech: Speech): HTMLElement | null {
  if (mends.length === 0) return null;
  const items = mends.map((step) => {
    const cautions = step.cautions.filter((caution) => caution.code !== code);
    return stepItem({ ...step, cautions }, speech);
  });
  return make("ul", { class: "ws-mends" }, ...items);
}

function stepList(steps: readonly Step[], speech: Speech): HTMLElement {
  return make("ol", { class: "ws-steps" }, ...steps.map((step) => stepItem(step, speech)));
}

function stepItem(step: Step, speech: Speech): HTMLElement {
  const { labels, words } = speech;
  return make(
    "li",
    { class: "ws-step", "data-id": step.id },
    make("h4", {}, words(step.text)),
    make("p", {}, words(step.why)),
    facts(step, speech),
    ...titled("step.cautions", warningList(step.cautions, speech), labels.text("step.cautions")),
    ...titled(
      "step.materials",
      materialList(step.materials, speech),
      labels.text("step.materials"),
    ),
  );
}

function facts(step: Step, speech: Speech): HTMLElement {
  const { labels, words } = speech;
  const rows: [key: string, value: Node | string | null][] = [
    ["when", words(step.when)],
    ["who", labels.text(`who.${step.who}`)],
    ["cost", figureText(step.cost, speech)],
    ["saving", step.saving && figureText(step.saving, speech)],
    ["saving_energy", step.saving_energy && figureText(step.saving_energy, speech)],
    ["payback", step.payback && words(step.payback)],
  ];
  const shown = rows.filter(([, value]) => value !== null);
  return make(
    "dl",
    { class: "ws-facts" },
    ...shown.map(([key, value]) =>
      make("div", {}, make("dt", {}, labels.text(`step.${key}`)), make("dd", {}, value)),
    ),
  );
}

function titled(key: string, content: HTMLElement | null, title: string): HTMLElement[] {
  return content ? [make("h5", { class: `ws-${key.replace(".", "-")}` }, title), content] : [];
}
