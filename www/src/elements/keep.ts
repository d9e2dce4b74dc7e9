// Keeping the walk on this device: never without being told to, and erased with one press.

import { button, make } from "../dom.js";
import type { Labels } from "../labels/index.js";
import { eraseDraft, keepDraft } from "../state/draft.js";
import type { Walk } from "../state/walk.js";

export class WinterseamKeep extends HTMLElement {
  labels!: Labels;
  walk!: Walk;
  /** Whether the person said yes. */
  keeping = false;
  #said = make("p", { class: "ws-hint", role: "status" });
  #box = make("input", { type: "checkbox", id: "ws-keep" });

  connectedCallback(): void {
    this.#box.checked = this.keeping;
    this.#box.addEventListener("change", () => this.#chosen());
    this.replaceChildren(
      make(
        "label",
        { class: "ws-pill ws-keep" },
        this.#box,
        make("span", {}, this.labels.text("keep.label")),
      ),
      make("p", { class: "ws-hint" }, this.labels.text("keep.hint")),
      this.#erase(),
      this.#said,
    );
  }

  /** Writes the walk down again, if the person said yes. */
  refresh(): void {
    if (this.keeping && !keepDraft(this.walk.keep())) this.#say("keep.refused");
  }

  /** Says that everything is gone, and gives the focus a place to stand. */
  erased(): void {
    this.#say("keep.erased");
    this.#box.focus();
  }

  #chosen(): void {
    this.keeping = this.#box.checked;
    this.#say(this.keeping ? "keep.kept" : "keep.not_kept");
    if (this.keeping) this.refresh();
    else eraseDraft();
  }

  /** Erasing takes two presses, so that a slip of the thumb costs nothing. */
  #erase(): HTMLElement {
    const sure = button(this.labels.text("keep.erase_sure"), () => this.#eraseAll(), {
      class: "ws-button ws-heavy",
      hidden: true,
    });
    const first = button(
      this.labels.text("keep.erase"),
      () => {
        sure.hidden = false;
        sure.focus();
      },
      { class: "ws-button ws-quiet" },
    );
    return make("div", { class: "ws-tools" }, first, sure);
  }

  #eraseAll(): void {
    this.keeping = false;
    eraseDraft();
    this.walk.clear();
    this.dispatchEvent(new CustomEvent("winterseam-erased", { bubbles: true }));
  }

  #say(key: string): void {
    this.#said.textContent = this.labels.text(key);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "winterseam-keep": WinterseamKeep;
  }
}
