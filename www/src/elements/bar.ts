// The bar at the foot of a narrow screen: how many stops, the first thing, and the way to the plan.

import { button, make } from "../dom.js";
import type { Labels } from "../labels/index.js";
import type { Answer, Phrase } from "../wire.js";

export class WinterseamBar extends HTMLElement {
  labels!: Labels;
  words!: (phrase: Phrase) => string;
  press!: () => void;
  #button = button("", () => this.press(), { class: "ws-bar-button" });
  #said = make("p", { class: "ws-said", role: "status" });
  #told: string | null = null;

  connectedCallback(): void {
    this.replaceChildren(this.#button, this.#said);
  }

  show(answer: Answer, atPlan: boolean): void {
    const out = answer.stops[0]?.kind === "out";
    const any = answer.stops.length > 0;
    const stops = any ? this.labels.count("bar.stops", answer.stops.length) : "";
    const words = this.#first(answer);
    // Who must leave now must not need to press anything to read it.
    this.classList.toggle("ws-bar-out", out);
    this.classList.toggle("ws-bar-any", any);
    this.#button.replaceChildren(
      make("span", { class: "ws-bar-stops", hidden: !any }, stops),
      make("span", { class: "ws-bar-first" }, atPlan && !out ? "" : words),
      make(
        "span",
        { class: "ws-bar-go" },
        this.labels.text(atPlan ? "bar.to_walk" : "bar.to_plan"),
      ),
    );
    this.#tell(any ? `${stops}. ${words}` : "");
  }

  /** What to do about the worst stop and why, or the first step, or what to look at. */
  #first({ stops: [stop], firsts: [step], look_next: [look] }: Answer): string {
    if (stop?.kind === "out") return this.words(stop.text);
    if (stop) return `${this.labels.text(`stop.${stop.kind}`)} ${this.words(stop.because)}`;
    if (step) return this.labels.text("bar.first", { step: this.words(step.text) });
    return look ? this.labels.text("bar.look", { look: this.words(look) }) : "";
  }

  /** Says a change of the stops aloud, once; what stood there at the start is no change. */
  #tell(text: string): void {
    if (text === this.#told) return;
    if (this.#told !== null || text !== "") this.#said.textContent = text;
    this.#told = text;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "winterseam-bar": WinterseamBar;
  }
}
