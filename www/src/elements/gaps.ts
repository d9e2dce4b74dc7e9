// The gaps found with a tape: a row each, added and removed as the walk goes on.

import { button, make } from "../dom.js";
import type { Labels } from "../labels/index.js";
import type { Walk } from "../state/walk.js";
import { GAP_PLACES, GAP_QUESTIONS, type Question } from "../walk/questions.js";
import { ask } from "./question.js";

/** The places that one press adds a row for. */
const STARTS = ["door_bottom", "window_sash", "pipe_hole", "elsewhere"];
/** What only some people can see; it stays folded until wanted. */
const FINER = ["depth_in", "bends_count", "count", "sealed", "window"];

export class WinterseamGaps extends HTMLElement {
  labels!: Labels;
  walk!: Walk;

  connectedCallback(): void {
    this.#draw();
  }

  #draw(): void {
    const rows = Array.from({ length: this.walk.gapCount }, (_, row) => this.#row(row));
    this.replaceChildren(...rows, this.#tools());
  }

  #row(row: number): HTMLElement {
    const finer = GAP_QUESTIONS.filter(({ path }) => FINER.includes(path));
    const plain = GAP_QUESTIONS.filter(({ path }) => !FINER.includes(path));
    return make(
      "fieldset",
      { class: "ws-gap" },
      make("legend", {}, this.labels.text("gaps.row", { number: row + 1 })),
      this.#place(row),
      ...plain.map((question) => this.#ask(question, row)),
      make(
        "details",
        {},
        make("summary", {}, this.labels.text("gaps.finer")),
        ...finer.map((question) => this.#ask(question, row)),
      ),
      button(this.labels.text("gaps.remove", { number: row + 1 }), () => this.#remove(row), {
        class: "ws-button ws-quiet",
      }),
    );
  }

  #ask(question: Question, row: number): HTMLElement {
    return ask(question, `gaps.${row}.${question.path}`, this.walk, this.labels);
  }

  #place(row: number): HTMLElement {
    const path = `gaps.${row}.place`;
    const given = this.walk.given(path);
    const select = make(
      "select",
      { id: path },
      ...GAP_PLACES.map((place) =>
        make("option", { value: place, selected: place === given }, this.#placeName(place)),
      ),
    );
    select.addEventListener("input", () => this.walk.set(path, select.value));
    return make(
      "div",
      { class: "ws-field" },
      make("label", { for: path }, this.labels.text("q.gaps.place")),
      make("div", { class: "ws-line" }, select),
    );
  }

  #tools(): HTMLElement {
    const adds = STARTS.map((place) =>
      button(this.labels.text(`gaps.add.${place}`), () => this.#add(place), { class: "ws-button" }),
    );
    const back = this.walk.canPutBack
      ? button(this.labels.text("gaps.put_back"), () => this.#putBack(), {
          class: "ws-button ws-quiet ws-put-back",
        })
      : null;
    return make("div", { class: "ws-tools" }, ...adds, back);
  }

  #placeName(place: string): string {
    return this.labels.text(`o.gap_place.${place}`);
  }

  #add(place: string): void {
    this.walk.addGap(place);
    this.#draw();
    this.#focus(`#${CSS.escape(`gaps.${this.walk.gapCount - 1}.place`)}`);
  }

  #remove(row: number): void {
    this.walk.removeGap(row);
    this.#draw();
    this.#focus(".ws-put-back");
  }

  #putBack(): void {
    this.walk.putGapBack();
    this.#draw();
    this.#focus(".ws-tools button");
  }

  #focus(selector: string): void {
    this.querySelector<HTMLElement>(selector)?.focus();
    this.dispatchEvent(new CustomEvent("winterseam-left", { bubbles: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "winterseam-gaps": WinterseamGaps;
  }
}
