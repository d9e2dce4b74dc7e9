import assert from "node:assert/strict";
import { readFile } from "node:fs/promises";
import { test } from "node:test";
import { load } from "../load.mjs";

const read = (path) => readFile(new URL(`../../${path}`, import.meta.url), "utf8");
const LABELS = {
  en: JSON.parse(await read("src/labels/en.json")),
  es: JSON.parse(await read("src/labels/es.json")),
};
const { STATIONS, GAP_QUESTIONS, GAP_PLACES, labelPath } = await load("src/walk/questions.ts");
const { SAFETY_LINES } = await load("src/elements/safety.ts");

const questions = [
  ...STATIONS.flatMap(({ groups }) => groups).flatMap((group) => group.questions),
  ...GAP_QUESTIONS.map((question) => ({ ...question, path: `gaps.${question.path}` })),
];

test("both_languages_have_the_same_labels", () => {
  assert.deepEqual(Object.keys(LABELS.es), Object.keys(LABELS.en));
});

test("both_languages_fill_in_the_same_names", () => {
  const names = (label) => [...label.matchAll(/\{(\w+)\}/g)].map(([, name]) => name).sort();
  for (const [key, label] of Object.entries(LABELS.en)) {
    assert.deepEqual(names(LABELS.es[key]), names(label), key);
  }
});

test("no_label_is_empty_or_left_in_the_other_language_by_mistake", () => {
  const same = /^(q\.|group\.|head\.|lead\.|plan\.|stop\.|safety\.|keep\.)/;
  for (const [key, label] of Object.entries(LABELS.en)) {
    assert.notEqual(label.trim(), "", key);
    assert.notEqual(LABELS.es[key].trim(), "", key);
    if (same.test(key)) assert.notEqual(LABELS.es[key], label, key);
  }
});

test("every_question_and_every_option_has_a_label", () => {
  for (const { path, input } of questions) {
    assert.ok(LABELS.en[`q.${labelPath(path)}`], path);
    for (const option of input.options ?? []) {
      assert.ok(LABELS.en[`o.${input.words}.${option}`], `${path}: ${option}`);
    }
    if (input.unit) {
      assert.ok(LABELS.en[`unit.${input.unit}`], path);
      assert.ok(LABELS.en[`trouble.${input.unit}`], path);
    }
  }
  for (const place of GAP_PLACES) assert.ok(LABELS.en[`o.gap_place.${place}`], place);
});

test("every_group_and_every_station_has_a_heading", () => {
  for (const { key, groups } of STATIONS) {
    assert.ok(LABELS.en[`station.${key}`] && LABELS.en[`head.${key}`] && LABELS.en[`lead.${key}`]);
    for (const group of groups) assert.ok(LABELS.en[`group.${group.key}`], group.key);
  }
});

test("the_page_carries_the_safety_lines_in_both_languages_with_and_without_script", async () => {
  const html = await read("index.html");
  const [noscript] = /<noscript>.*<\/noscript>/s.exec(html);
  const withScript = html.replace(noscript, "");
  for (const line of SAFETY_LINES) {
    for (const language of ["en", "es"]) {
      const text = LABELS[language][`safety.${line}`];
      assert.ok(text, line);
      assert.ok(noscript.includes(text), `${line} without script`);
      assert.ok(withScript.includes(text), `${line} before the script has run`);
    }
  }
});

test("heat_tape_keeps_the_word_that_residents_know_in_spanish", () => {
  for (const [key, label] of Object.entries(LABELS.en)) {
    if (/heat tape/i.test(label)) assert.match(LABELS.es[key], /heat tape/, key);
  }
});
