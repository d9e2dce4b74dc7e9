// The single-file page: one check that fills it, in the language of the device.

import "./elements/index.js";
import { isLanguage, Labels, type Language } from "./labels/index.js";

const TITLE = "Winterseam";

function speak(language: Language): void {
  document.documentElement.lang = language;
  document.title = `${TITLE} · ${new Labels(language).text("tagline")}`;
}

const check = document.querySelector("winterseam-check");
const device = navigator.language.slice(0, 2);
const language = isLanguage(device) ? device : "en";
check?.setAttribute("lang", language);
speak(language);
window.addEventListener("beforeunload", (event) => {
  if (check?.unkept) event.preventDefault();
});
check?.addEventListener("winterseam-language", (event) => {
  speak((event as CustomEvent<Language>).detail);
});
