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
    const first = answer.stops[0]?.text ?? answer.firsts[0]?.text ?? answer.look_next[0];
    const words = first ? this.words(first) : "";
    const stops = this.labels.count("bar.stops", answer.stops.length);
    const any = answer.stops.length > 0;
    // Who must leave now must not need to press anything to read it.
    this.classList.toggle("ws-bar-out", answer.stops[0]?.kind === "out");
    this.#button.replaceChildren(
      make("span", { class: any ? "ws-bar-stops ws-bar-any" : "ws-bar-stops" }, stops),
      make("span", { class: "ws-bar-first" }, words),
      make(
        "span",
        { class: "ws-bar-go" },
        this.labels.text(atPlan ? "bar.to_walk" : "bar.to_plan"),
      ),
    );
    this.#tell(any ? `${stops}. ${words}` : "");
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
