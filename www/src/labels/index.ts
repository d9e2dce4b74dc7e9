// The page's own labels. Sentences of the plan come from the core.

import en from "./en.json";
import es from "./es.json";

export type Language = "en" | "es";
export const LANGUAGES: readonly Language[] = ["en", "es"];

const TABLES: Record<Language, Record<string, string>> = { en, es };

/** Reads the labels of one language. */
export class Labels {
  constructor(readonly language: Language) {}

  has(key: string): boolean {
    return key in TABLES[this.language];
  }

  /** A label with its `{named}` places filled; a missing one shows its key. */
  text(key: string, args: Record<string, string | number> = {}): string {
    const label = TABLES[this.language][key] ?? key;
    return label.replace(/\{(\w+)\}/g, (whole, name: string) => String(args[name] ?? whole));
  }

  /** One of two labels, by number: `key.one` or `key.many`. */
  count(key: string, count: number): string {
    return this.text(`${key}.${count === 1 ? "one" : "many"}`, { count });
  }

  /** A calendar day as people of this language write it. */
  day(iso: string): string {
    const day = new Date(`${iso}T00:00:00Z`);
    return Number.isNaN(day.getTime()) ? iso : this.#dates("long", "numeric").format(day);
  }

  month(month: number): string {
    return this.#dates("long").format(new Date(Date.UTC(2001, month - 1, 1)));
  }

  #dates(month: "long", day?: "numeric"): Intl.DateTimeFormat {
    const whole = day ? { day, year: "numeric" as const } : {};
    return new Intl.DateTimeFormat(`${this.language}-US`, { month, ...whole, timeZone: "UTC" });
  }
}

export function isLanguage(text: string | null): text is Language {
  return LANGUAGES.some((language) => language === text);
}
