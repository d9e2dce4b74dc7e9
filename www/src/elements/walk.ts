// The walk: one station at a time, in walking order, each with its groups of questions.

import { button, make } from "../dom.js";
import type { Labels } from "../labels/index.js";
import type { Outcome } from "../state/outcome.js";
import type { Trouble } from "../state/reading.js";
import type { Walk } from "../state/walk.js";
import { askedIn, type Group, STATIONS, type Station } from "../walk/questions.js";
import type { Speech } from "./plan/speech.js";
import { ask, type WinterseamQuestion } from "./question.js";
import type { WinterseamTap } from "./tap.js";

type StationKey = Station["key"];

export class WinterseamWalk extends HTMLElement {
  labels!: Labels;
  walk!: Walk;
  words!: Speech["words"];
  /** Asks whether to keep the walk: at the start, before there is much to lose. */
  keeper!: HTMLElement;
  /** What stands at the end of the sit-down. */
  closing!: HTMLElement;
  station: StationKey = "start";
  #tap: WinterseamTap = document.createElement("winterseam-tap");

  connectedCallback(): void {
    this.#tap.speech = { labels: this.labels, words: this.words };
    this.replaceChildren(this.#nav(), ...STATIONS.map((station) => this.#panel(station)));
    this.#select(this.station);
  }

  /** Tells every question what became of its answer; returns the troubles to be shown now. */
  report(outcome: Outcome): Trouble[] {
    const questions = this.#questions();
    for (const question of questions) {
      question.hidden = !(question.question.asked?.(this.walk.given) ?? true);
      question.report(outcome);
    }
    this.#count();
    this.#tap.show(outcome.answer?.tap ?? null);
    const waiting = new Set(questions.filter(({ trouble }) => !trouble).map(({ path }) => path));
    return outcome.troubles.filter(({ path }) => !waiting.has(path));
  }

  /** Brings the station of a field to the front. */
  reveal(path: string): void {
    const field = this.querySelector(`#${CSS.escape(path)}`);
    field?.closest("details")?.setAttribute("open", "");
    const panel = field?.closest<HTMLElement>("[data-station]");
    if (panel) this.#select(panel.dataset.station as StationKey);
  }

  #questions(): WinterseamQuestion[] {
    return [...this.querySelectorAll("winterseam-question")];
  }

  #nav(): HTMLElement {
    const steps = STATIONS.map(({ key }, index) => {
      const step = button("", () => this.#go(key), { class: "ws-station", "data-to": key });
      step.append(
        make(
          "span",
          { class: "ws-station-name" },
          `${index + 1} ${this.labels.text(`station.${key}`)}`,
        ),
        make("span", { class: "ws-station-seen" }),
      );
      return make("li", {}, step);
    });
    return make(
      "nav",
      { class: "ws-stations", "aria-label": this.labels.text("stations") },
      make("ol", {}, ...steps),
    );
  }

  #panel(station: Station): HTMLElement {
    const next = STATIONS[STATIONS.indexOf(station) + 1];
    return make(
      "section",
      { class: "ws-panel", "data-station": station.key, "aria-labelledby": `ws-${station.key}` },
      make(
        "h2",
        { id: `ws-${station.key}`, tabindex: -1 },
        this.labels.text(`head.${station.key}`),
      ),
      make("p", { class: "ws-lead" }, this.labels.text(`lead.${station.key}`)),
      ...station.groups.map((group) => this.#group(group)),
      station.key === "start" ? this.keeper : null,
      next ? this.#next(next) : this.closing,
    );
  }

  #next({ key }: Station): HTMLElement {
    const text = this.labels.text("next", { station: this.labels.text(`station.${key}`) });
    return button(text, () => this.#go(key), { class: "ws-button ws-heavy ws-next" });
  }

  #group(group: Group): HTMLElement {
    const lead = `group.${group.key}.lead`;
    const gaps = group.gaps ? document.createElement("winterseam-gaps") : null;
    if (gaps) Object.assign(gaps, { labels: this.labels, walk: this.walk });
    return make(
      "section",
      { class: "ws-group", "aria-labelledby": `ws-group-${group.key}` },
      make("h3", { id: `ws-group-${group.key}` }, this.labels.text(`group.${group.key}`)),
      this.labels.has(lead) ? make("p", { class: "ws-hint" }, this.labels.text(lead)) : null,
      ...group.questions.map((question) => ask(question, question.path, this.walk, this.labels)),
      group.tap ? this.#tap : null,
      gaps,
    );
  }

  /** Walks on: the heading takes the focus, so that nobody is left at the end of the last page. */
  #go(station: StationKey): void {
    this.#select(station);
    const head = this.querySelector<HTMLElement>(`#ws-${station}`);
    head?.focus({ preventScroll: true });
    head?.scrollIntoView();
  }

  #select(station: StationKey): void {
    this.station = station;
    for (const panel of this.querySelectorAll<HTMLElement>("[data-station]")) {
      panel.hidden = panel.dataset.station !== station;
    }
    for (const step of this.querySelectorAll<HTMLElement>("[data-to]")) {
      if (step.dataset.to === station) step.setAttribute("aria-current", "step");
      else step.removeAttribute("aria-current");
    }
  }

  #count(): void {
    for (const station of STATIONS) {
      const asked = askedIn(station, this.walk.given).filter(({ path }) => path !== "today");
      const seen = asked.filter(({ path }) => this.walk.given(path) !== "").length;
      const text = this.labels.text("station.seen", { seen, asked: asked.length });
      const place = this.querySelector(`[data-to="${station.key}"] .ws-station-seen`);
      if (place) place.textContent = text;
    }
  }
}

declare global {
  interface HTMLElementTagNameMap {
    "winterseam-walk": WinterseamWalk;
  }
}
