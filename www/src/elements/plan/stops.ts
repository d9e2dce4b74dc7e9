// Stops: white on black, with the word, before anything else.

import { make } from "../../dom.js";
import type { Stop } from "../../wire.js";
import { phrases, type Speech } from "./speech.js";
import { mendList } from "./steps.js";

export function stopsPart(stops: readonly Stop[], speech: Speech): HTMLElement | null {
  if (stops.length === 0) return null;
  const { labels } = speech;
  return make(
    "section",
    { class: "ws-stops", "aria-labelledby": "ws-plan-stops" },
    make("h3", { id: "ws-plan-stops" }, labels.count("plan.stops", stops.length)),
    ...stops.map((stop) => stopBox(stop, speech)),
  );
}

function stopBox(stop: Stop, speech: Speech): HTMLElement {
  const { labels, words } = speech;
  return make(
    "article",
    { class: `ws-stop ws-stop-${stop.kind}`, "data-code": stop.code },
    make(
      "h4",
      {},
      make("span", { class: "ws-stop-word" }, labels.text("stop")),
      " ",
      make("span", { class: "ws-stop-kind" }, labels.text(`stop.${stop.kind}`)),
    ),
    make("p", { class: "ws-stop-text" }, words(stop.text)),
    make("p", { class: "ws-stop-because" }, words(stop.because)),
    ...titled("stop.meanwhile", phrases(stop.meanwhile, speech), speech),
    ...titled("stop.mends", mendList(stop, speech), speech),
    ...titled("stop.card", phrases(stop.card, speech), speech),
  );
}

function titled(key: string, content: HTMLElement | null, { labels }: Speech): HTMLElement[] {
  return content ? [make("h5", {}, labels.text(key)), content] : [];
}
