// All answers that could not be used, in one list; each line leads to its field.

import { make } from "../dom.js";
import type { Labels } from "../labels/index.js";
import type { Trouble } from "../state/reading.js";
import { troubleText } from "./question.js";

export class WinterseamTroubles extends HTMLElement {
  labels!: Labels;
  /** Shows the field at a path and puts the cursor into it. */
  reveal!: (path: string) => void;
  /** Names the field of a trouble. */
  nameOf!: (trouble: Trouble) => string;
  #shown = "";

  show(troubles: readonly Trouble[]): void {
    const shown = JSON.stringify(troubles);
    if (shown === this.#shown) return;
    this.#shown = shown;
    this.hidden = troubles.length === 0;
    this.replaceChildren();
    if (troubles.length > 0) this.append(this.#drawn(troubles));
  }

  #drawn(troubles: readonly Trouble[]): HTMLElement {
    return make(
      "section",
      { class: "ws-troubles", "aria-labelledby": "ws-troubles-head" },
      make(
        "h2",
        { id: "ws-troubles-head", tabindex: -1 },
        this.labels.count("troubles.head", troubles.length),
      ),
      make("p", {}, this.labels.text("troubles.kept")),
      make("ul", {}, ...troubles.map((trouble) => make("li", {}, this.#link(trouble)))),
    );
  }

  #link(trouble: Trouble): HTMLElement {
    const words = [this.nameOf(trouble), troubleText(trouble, this.labels)];
    const text = words.filter((part) => part !== "").join(": ");
    const link = make("a", { href: `#${trouble.path}` }, text);
    link.addEventListener("click", (event) => {
      event.preventDefault();
      this.reveal(trouble.path);
    });
    return link;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "winterseam-troubles": WinterseamTroubles;
  }
}
