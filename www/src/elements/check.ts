// <winterseam-check>: the whole check in one element, for this page or for any other.

import { type Core, type CoreFiles, filesInPage, startCore } from "../core.js";
import { focusField, make } from "../dom.js";
import { isLanguage, Labels, type Language } from "../labels/index.js";
import { keptDraft } from "../state/draft.js";
import { assessWalk, type Outcome } from "../state/outcome.js";
import { today } from "../state/today.js";
import { Walk } from "../state/walk.js";
import { drawFrame, type Parts } from "./frame.js";
import { safetyLines } from "./safety.js";

/** A pause in typing, in milliseconds, after which the plan is made anew. */
const PAUSE = 60;

/**
 * The walk and its plan.
 *
 * @attr lang  `en` or `es`
 * @attr view  `walk` or `plan`: what a narrow screen shows
 * @fires winterseam-language  after the person chose a language; `detail` is `en` or `es`
 * @fires winterseam-answer  after every new answer; `detail` is the answer
 */
export class WinterseamCheck extends HTMLElement {
  static observedAttributes = ["lang"];

  /** The core's two files; without them those in the page are used. */
  files: CoreFiles | null = null;

  #walk = new Walk();
  #core: Core | null = null;
  #outcome: Outcome | null = null;
  #parts: Parts | null = null;
  #timer = 0;

  get language(): Language {
    const lang = this.getAttribute("lang");
    return isLanguage(lang) ? lang : "en";
  }

  /** Whether something was typed that leaving the page would lose. */
  get unkept(): boolean {
    return !this.#walk.isEmpty && !this.#parts?.keep.keeping;
  }

  async connectedCallback(): Promise<void> {
    if (this.#core) return;
    try {
      this.#core = await startCore(this.files ?? (await filesInPage(document)));
    } catch {
      this.#cannotStart();
      return;
    }
    const draft = keptDraft();
    if (draft) this.#walk.restore(draft);
    this.#walk.addEventListener("change", () => this.#computeSoon());
    this.addEventListener("winterseam-left", () => this.#computeSoon());
    this.addEventListener("winterseam-erased", () => this.#erased());
    this.#draw(draft !== null);
  }

  attributeChangedCallback(): void {
    if (this.#parts) this.#draw();
  }

  /** Draws everything in the language of the element. What was typed stays in the walk. */
  #draw(keeping = this.#parts?.keep.keeping ?? false): void {
    const core = this.#core;
    if (!core) return;
    const { language } = this;
    this.#parts = drawFrame({
      language,
      walk: this.#walk,
      keeping,
      station: this.#parts?.walk.station ?? "start",
      words: (phrase) => core.words(phrase, language),
      calendar: () => core.calendar(this.#outcome?.request ?? { today: today() }, language),
      speak: (chosen) => this.#speak(chosen),
      reveal: (path) => this.#reveal(path),
      toTroubles: () => this.#show("walk", "ws-troubles-head"),
      toPlan: () => this.#show("plan", "ws-plan-head"),
      toggleView: () => this.#toggleView(),
    });
    this.replaceChildren(this.#parts.root);
    this.#compute();
  }

  #erased(): void {
    this.#draw(false);
    this.#parts?.keep.erased();
  }

  #computeSoon(): void {
    clearTimeout(this.#timer);
    this.#timer = window.setTimeout(() => this.#compute(), PAUSE);
  }

  #compute(): void {
    if (!this.#parts) return;
    const { walk, troubles, plan, keep } = this.#parts;
    keep.refresh();
    const outcome = this.#assessed();
    this.#outcome = outcome;
    const shown = outcome ? walk.report(outcome) : [];
    troubles.show(shown);
    plan.show(outcome?.answer ?? null, shown.length);
    if (!outcome?.answer) return;
    this.#refreshBar();
    this.#send("winterseam-answer", outcome.answer);
  }

  /** A core that breaks must not leave the plan of an earlier answer standing. */
  #assessed(): Outcome | null {
    if (!this.#core) return null;
    try {
      return assessWalk(this.#walk, this.#core, this.language, today());
    } catch (broken) {
      reportError(broken);
      return null;
    }
  }

  #refreshBar(): void {
    const answer = this.#outcome?.answer;
    if (answer) this.#parts?.bar.show(answer, this.#atPlan);
  }

  get #atPlan(): boolean {
    return this.getAttribute("view") === "plan";
  }

  #speak(language: Language): void {
    this.setAttribute("lang", language);
    this.querySelector<HTMLElement>(`.ws-language[lang=${language}]`)?.focus();
    this.#send("winterseam-language", language);
  }

  #toggleView(): void {
    if (this.#atPlan) this.#show("walk", `ws-${this.#parts?.walk.station}`);
    else this.#show("plan", "ws-plan-head");
  }

  /** Turns a narrow screen to the walk or the plan and begins at a heading of it. */
  #show(view: "walk" | "plan", heading: string): void {
    this.setAttribute("view", view);
    this.#refreshBar();
    const head = this.querySelector<HTMLElement>(`#${heading}`);
    head?.focus({ preventScroll: true });
    head?.scrollIntoView();
  }

  #reveal(path: string): void {
    this.setAttribute("view", "walk");
    this.#refreshBar();
    this.#parts?.walk.reveal(path);
    focusField(this, path);
  }

  #send(name: string, detail: unknown): void {
    this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true }));
  }

  /** The safety lines need no computing: they stay, below the word that says why. */
  #cannotStart(): void {
    const labels = new Labels(this.language);
    const said = make(
      "p",
      { class: "ws-cannot-start", role: "alert" },
      labels.text("cannot_start"),
    );
    const lines = this.querySelector(".ws-lines") ? [] : [safetyLines(labels, "h2")];
    this.prepend(said, ...lines);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "winterseam-check": WinterseamCheck;
  }
}
