// One question of the walk, with its control, its hint, and what was made of the answer.

import { button, make } from "../dom.js";
import type { Labels } from "../labels/index.js";
import type { Outcome } from "../state/outcome.js";
import type { Trouble } from "../state/reading.js";
import { today } from "../state/today.js";
import type { Walk } from "../state/walk.js";
import { labelPath, type Question } from "../walk/questions.js";
import { PARTS_OF_YEAR } from "../walk/season.js";

const PLAIN_NUMBER = /^\s*\d*\.?\d*\s*$/;

/** Asks one question and writes the answer into the walk, as typed. */
export class WinterseamQuestion extends HTMLElement {
  question!: Question;
  path!: string;
  labels!: Labels;
  walk!: Walk;
  /** A half-typed text is no mistake yet: troubles show once the field was left. */
  #left = false;
  #reading = make("p", { class: "ws-reading" });
  #trouble = make("p", { class: "ws-trouble", "aria-live": "polite" });

  /** The trouble that a person sees here now. */
  trouble: Trouble | null = null;

  /** What labels and hints of this question are filed under. */
  get key(): string {
    return `q.${labelPath(this.path)}`;
  }

  connectedCallback(): void {
    this.#left = this.walk.given(this.path) !== "";
    this.#trouble.id = `${this.path}-trouble`;
    this.replaceChildren(this.#drawn());
    this.addEventListener("focusout", () => this.#leave());
    this.addEventListener("change", () => this.#leave());
  }

  /** Shows what became of the answer. */
  report({ troubles, numbers }: Outcome): void {
    const found = troubles.find(({ path }) => path === this.path) ?? null;
    this.trouble = found && (this.#left || this.trouble) ? found : null;
    const message = this.trouble ? troubleText(this.trouble, this.labels) : "";
    if (this.#trouble.textContent !== message) this.#trouble.textContent = message;
    this.classList.toggle("ws-wrong", this.trouble !== null);
    this.#control()?.setAttribute("aria-invalid", String(this.trouble !== null));
    this.#reading.textContent = this.#readAs(numbers.get(this.path));
  }

  #leave(): void {
    if (this.#left || this.walk.given(this.path) === "") return;
    this.#left = true;
    this.dispatchEvent(new CustomEvent("winterseam-left", { bubbles: true }));
  }

  #drawn(): HTMLElement {
    const { input } = this.question;
    if (input.kind === "yes_no") return this.#pills("yes_no", ["true", "false"]);
    if (input.kind === "choice" && !input.many) return this.#pills(input.words, input.options);
    const control = this.#oneControl();
    control.addEventListener("input", () => this.walk.set(this.path, control.value));
    return make(
      "div",
      { class: "ws-field" },
      make("label", { for: this.path }, this.labels.text(this.key)),
      this.#hint(),
      make("div", { class: "ws-line" }, control, this.#unit()),
      this.#quick(control),
      this.#reading,
      this.#trouble,
    );
  }

  #pills(words: string, options: readonly string[]): HTMLElement {
    const given = this.walk.given(this.path);
    return make(
      "fieldset",
      { class: "ws-field", id: this.path, "aria-describedby": this.#describedBy() },
      make("legend", {}, this.labels.text(this.key)),
      this.#hint(),
      make(
        "div",
        { class: "ws-pills" },
        ...options.map((option) => this.#pill(option, `o.${words}.${option}`, given === option)),
        this.#pill("", "o.not_seen", !options.includes(given)),
      ),
      this.#trouble,
    );
  }

  #pill(value: string, label: string, checked: boolean): HTMLElement {
    const radio = make("input", { type: "radio", name: this.path, value, checked });
    radio.addEventListener("change", () => this.walk.set(this.path, value));
    return make(
      "label",
      { class: value === "" ? "ws-pill ws-pill-open" : "ws-pill" },
      radio,
      make("span", {}, this.labels.text(label)),
    );
  }

  #oneControl(): HTMLInputElement | HTMLSelectElement {
    const { input } = this.question;
    const given = this.walk.given(this.path);
    const shared = { id: this.path, "aria-describedby": this.#describedBy() };
    if (input.kind === "choice" || input.kind === "season") return this.#select(shared, given);
    const control = make("input", { ...shared, ...this.#typing(), autocomplete: "off" });
    control.value = input.kind === "date" && given === "" ? today() : given;
    return control;
  }

  #typing(): Record<string, string> {
    const { input } = this.question;
    if (input.kind === "date") return { type: "date" };
    const digits = input.kind === "number" || (input.kind === "text" && input.digits);
    return { type: "text", ...(digits ? { inputmode: "decimal" } : {}) };
  }

  #select(shared: Record<string, string>, given: string): HTMLSelectElement {
    const options = this.#options().map(([value, text]) =>
      make("option", { value, selected: value === given }, text),
    );
    return make(
      "select",
      shared,
      make("option", { value: "" }, this.labels.text("o.not_seen")),
      ...options,
    );
  }

  #options(): [value: string, text: string][] {
    const { input } = this.question;
    if (input.kind === "choice") {
      return input.options.map((value) => [value, this.labels.text(`o.${input.words}.${value}`)]);
    }
    return PARTS_OF_YEAR.map(({ key, month, day }) => [
      String(day),
      this.labels.text(`season.${key}`, { month: this.labels.month(month) }),
    ]);
  }

  #hint(): HTMLElement | null {
    const key = `${this.key}.hint`;
    if (!this.labels.has(key)) return null;
    return make("p", { class: "ws-hint", id: `${this.path}-hint` }, this.labels.text(key));
  }

  #describedBy(): string {
    const hint = this.labels.has(`${this.key}.hint`) ? `${this.path}-hint ` : "";
    return `${hint}${this.path}-trouble`;
  }

  #unit(): HTMLElement | null {
    const { input } = this.question;
    if (input.kind !== "measure") return null;
    return make("span", { class: "ws-unit" }, this.labels.text(`unit.${input.unit}`));
  }

  /** Sizes often met, one press each: typing a fraction with one hand is slow. */
  #quick(control: HTMLInputElement | HTMLSelectElement): HTMLElement | null {
    const { input } = this.question;
    if (input.kind !== "measure" || !input.quick) return null;
    const sizes = input.quick.map((size) =>
      button(
        size,
        () => {
          control.value = size;
          this.#left = true;
          this.walk.set(this.path, size);
        },
        { class: "ws-quick", "aria-label": this.labels.text("quick", { size }) },
      ),
    );
    return make("div", { class: "ws-quicks" }, ...sizes);
  }

  #readAs(value: number | undefined): string {
    const { input } = this.question;
    if (input.kind !== "measure" || value === undefined) return "";
    if (PLAIN_NUMBER.test(this.walk.given(this.path))) return "";
    const unit = this.labels.text(`unit.${input.unit}`);
    return this.labels.text("read_as", { value: Number(value.toPrecision(4)), unit });
  }

  #control(): Element | null {
    return this.querySelector("input[type=text], input[type=date], select");
  }
}

/** A trouble in words. */
export function troubleText(trouble: Trouble, labels: Labels): string {
  return trouble.message ?? labels.text(trouble.label ?? "trouble.number", trouble.args);
}

/** Makes a question ready to be put into the page. */
export function ask(
  question: Question,
  path: string,
  walk: Walk,
  labels: Labels,
): WinterseamQuestion {
  const element = document.createElement("winterseam-question");
  Object.assign(element, { question, path, walk, labels });
  return element;
}

declare global {
  interface HTMLElementTagNameMap {
    "winterseam-question": WinterseamQuestion;
  }
}
