// The plan: stops, the first things, and everything that goes with them on one sheet.

import { button, make } from "../../dom.js";
import type { Answer } from "../../wire.js";
import { safetyLines } from "../safety.js";
import { tapParts } from "../tap.js";
import {
  findingsPart,
  lookNextPart,
  notesPart,
  remindersPart,
  shoppingPart,
  smallPrint,
  sourcesPart,
  untouchedPart,
} from "./lists.js";
import { part, type Speech, warningList } from "./speech.js";
import { firstsPart, laterPart } from "./steps.js";
import { stopsPart } from "./stops.js";
import { usesPart } from "./uses.js";

/** What the core notes when a home needs nothing more now. */
const ENOUGH = "warning.W-SMALL-POTENTIAL";

export class WinterseamPlan extends HTMLElement {
  speech!: Speech;
  /** Gives the calendar file of the plan on the page, as text. */
  calendar!: () => string;
  /** Leads to the answers that are not counted. */
  toTroubles!: () => void;
  #answer: Answer | null = null;
  #shown = "";
  #folded: HTMLDetailsElement[] = [];
  #printing = new AbortController();
  #body = make("div", { class: "ws-plan-body" });
  #troubles = make("div", { class: "ws-plan-troubles", hidden: true });

  connectedCallback(): void {
    const { labels } = this.speech;
    this.replaceChildren(
      make("h2", { id: "ws-plan-head", tabindex: -1 }, labels.text("plan.head")),
      this.#tools(),
      this.#troubles,
      this.#body,
    );
    const { signal } = this.#printing;
    window.addEventListener("beforeprint", () => this.#unfold(), { signal });
    window.addEventListener("afterprint", () => this.#fold(), { signal });
  }

  disconnectedCallback(): void {
    this.#printing.abort();
  }

  /** Shows an answer, or says that there is none. What was unfolded stays unfolded. */
  show(answer: Answer | null, troubleCount: number): void {
    this.#showTroubles(troubleCount);
    const shown = JSON.stringify(answer);
    if (shown === this.#shown) return;
    this.#shown = shown;
    this.#answer = answer;
    const open = new Set(this.#openDetails());
    this.#body.replaceChildren(...(answer ? this.#parts(answer) : this.#nothing()));
    for (const details of this.#allDetails()) details.open = open.has(details.dataset.key ?? "");
  }

  #parts(answer: Answer): Node[] {
    const { speech } = this;
    const parts = [
      nothingFirst(answer, speech),
      stopsPart(answer.stops, speech),
      answer.savings_hidden ? hiddenNote(speech) : null,
      firstsPart(answer.firsts, speech),
      untouchedPart(answer, speech),
      part("warnings", speech, warningList(unsaid(answer), speech)),
      findingsPart(answer.findings, speech),
      part("tap", speech, ...tapParts(answer.tap, speech, true)),
      lookNextPart(answer, speech),
      laterPart(answer.later, speech),
      usesPart(answer.uses, speech),
      shoppingPart(answer, speech),
      remindersPart(answer, speech),
      safetyLines(speech.labels, "h3"),
      notesPart(answer, speech),
      sourcesPart(answer, speech),
      smallPrint(answer, speech),
    ];
    return parts.filter((node) => node !== null);
  }

  #nothing(): Node[] {
    const { labels } = this.speech;
    const said = make("p", { class: "ws-cannot-start", role: "alert" }, labels.text("no_plan"));
    return [said, safetyLines(labels, "h3")];
  }

  #tools(): HTMLElement {
    const { labels } = this.speech;
    const large = make("input", { type: "checkbox", id: "ws-large" });
    large.addEventListener("change", () => this.classList.toggle("ws-large", large.checked));
    return make(
      "div",
      { class: "ws-tools ws-plan-tools" },
      button(labels.text("plan.print"), () => window.print(), { class: "ws-button" }),
      button(labels.text("plan.calendar"), () => this.#download(), {
        class: "ws-button",
        id: "ws-calendar",
      }),
      make("label", { class: "ws-pill" }, large, make("span", {}, labels.text("plan.large"))),
    );
  }

  /** Paper cannot be unfolded: everything is opened for the printer and folded again after. */
  #unfold(): void {
    this.#folded = this.#allDetails().filter((details) => !details.open);
    for (const details of this.#folded) details.open = true;
  }

  #fold(): void {
    for (const details of this.#folded) details.open = false;
  }

  #download(): void {
    const file = new Blob([this.calendar()], { type: "text/calendar" });
    const link = make("a", {
      href: URL.createObjectURL(file),
      download: `winterseam-${this.#answer?.today ?? ""}.ics`,
    });
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  }

  #showTroubles(count: number): void {
    this.#troubles.hidden = count === 0;
    if (count === 0) return;
    const { labels } = this.speech;
    this.#troubles.replaceChildren(
      make("p", {}, labels.count("plan.troubles", count)),
      button(labels.text("plan.to_troubles"), this.toTroubles, { class: "ws-button ws-quiet" }),
    );
  }

  #allDetails(): HTMLDetailsElement[] {
    return [...this.#body.querySelectorAll("details")];
  }

  #openDetails(): string[] {
    const open = this.#allDetails().filter((details) => details.open);
    return open.map((details) => details.dataset.key ?? "");
  }
}

/** Warnings that stand with no stop and no first step yet: said twice, a line is read by nobody. */
function unsaid({ stops, firsts, warnings }: Answer): Answer["warnings"] {
  const steps = [...stops.flatMap(({ mends }) => mends), ...firsts];
  const said = new Set(steps.flatMap(({ cautions }) => cautions.map(({ code }) => code)));
  for (const { code } of stops) said.add(code);
  return warnings.filter(({ code }) => !said.has(code));
}

/** A plan that asks for nothing says so. It praises no home of which something is still unseen. */
function nothingFirst(answer: Answer, speech: Speech): HTMLElement | null {
  if (answer.stops.length + answer.firsts.length > 0) return null;
  const seen = answer.look_next.length === 0;
  const enough = seen && answer.notes.find(({ key }) => key === ENOUGH);
  const text = enough ? speech.words(enough) : speech.labels.text("plan.nothing_first");
  return make("p", { class: "ws-savings-hidden" }, text);
}

function hiddenNote({ labels }: Speech): HTMLElement {
  return make("p", { class: "ws-savings-hidden" }, labels.text("plan.savings_hidden"));
}

declare global {
  interface HTMLElementTagNameMap {
    "winterseam-plan": WinterseamPlan;
  }
}
