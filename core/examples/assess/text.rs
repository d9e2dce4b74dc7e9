//! A plan as plain text, in the order in which it is read.

use std::fmt::Write as _;
use winterseam::wire::{Answer, Material, Phrase, Reminder, SourceNote, Step, Stop};
use winterseam::words::Language;

/// The plan as text.
pub(crate) fn plan(answer: &Answer, language: Language) -> String {
    let page = Page { language };
    let mut text = String::new();
    for stop in &answer.stops {
        text += &page.stop(stop);
    }
    text += &page.steps("heading.firsts", &answer.firsts);
    text += &page.steps("heading.later", &answer.later);
    text += &page.list("heading.findings", answer.findings.iter().map(|f| &f.text));
    text += &page.list("heading.look_next", &answer.look_next);
    text += &page.list("heading.do_not_touch", &answer.do_not_touch);
    text += &page.list("heading.warnings", answer.warnings.iter().map(|w| &w.text));
    text += &page.uses(answer);
    text += &page.shopping(answer);
    text += &page.reminders(answer);
    text += &page.list("heading.notes", &answer.notes);
    text += &page.sources(answer);
    text
}

struct Page {
    language: Language,
}

impl Page {
    fn say(&self, phrase: &Phrase) -> String {
        phrase.text(self.language)
    }

    fn heading(&self, key: &str) -> String {
        let heading = self.say(&Phrase::of_key(key));
        format!("\n{heading}\n{}\n", "-".repeat(heading.chars().count()))
    }

    /// Lines under a heading; nothing without lines.
    fn block(&self, key: &str, lines: impl Iterator<Item = String>) -> String {
        let mut text = self.heading(key);
        let empty = text.len();
        for line in lines {
            let _ = writeln!(text, "  {line}");
        }
        if text.len() == empty { String::new() } else { text }
    }

    fn list<'a>(&self, key: &str, items: impl IntoIterator<Item = &'a Phrase>) -> String {
        self.block(key, items.into_iter().map(|item| format!("- {}", self.say(item))))
    }

    fn stop(&self, stop: &Stop) -> String {
        let kind = self.say(&Phrase::of_key(&format!("stop.{}", stop.kind)));
        let mut text = format!("\n*** {} ***\n", kind.to_uppercase());
        let lines = [&stop.because, &stop.text].into_iter().chain(&stop.meanwhile);
        for line in lines {
            let _ = writeln!(text, "  {}", self.say(line));
        }
        for step in &stop.mends {
            let who = self.say(&Phrase::of_key(&format!("who.{}", step.who)));
            let _ = writeln!(text, "  > {}", self.say(&step.text));
            let _ = writeln!(text, "    {} | {who} | {}", self.say(&step.when), self.money(step));
            for caution in &step.cautions {
                let _ = writeln!(text, "    ! {}", self.say(&caution.text));
            }
        }
        for line in &stop.card {
            let _ = writeln!(text, "  {}", self.say(line));
        }
        text
    }

    fn steps(&self, key: &str, steps: &[Step]) -> String {
        let mut text = String::new();
        for (number, step) in steps.iter().enumerate() {
            let _ = writeln!(text, "{}. {}", number + 1, self.say(&step.text));
            let _ = writeln!(text, "   {}", self.say(&step.why));
            let who = self.say(&Phrase::of_key(&format!("who.{}", step.who)));
            let _ = writeln!(text, "   {} | {}", self.say(&step.when), who);
            let _ = writeln!(text, "   {}", self.money(step));
            for caution in &step.cautions {
                let _ = writeln!(text, "   ! {}", self.say(&caution.text));
            }
        }
        if text.is_empty() { text } else { self.heading(key) + &text }
    }

    fn money(&self, step: &Step) -> String {
        let label = |key: &str, text: String| format!("{}: {text}", self.say(&Phrase::of_key(key)));
        let saving = step.saving.as_ref().or(step.saving_energy.as_ref());
        let mut parts = vec![label("label.cost", self.say(&step.cost.text))];
        parts.extend(saving.map(|s| label("label.saving", self.say(&s.text))));
        parts.extend(step.payback.as_ref().map(|phrase| self.say(phrase)));
        parts.join(" | ")
    }

    fn uses(&self, answer: &Answer) -> String {
        let lines = answer.uses.iter().map(|line| {
            let (name, energy) = (self.say(&line.name), self.say(&line.energy.text));
            let cost = line.cost.as_ref().map(|cost| format!(" | {}", self.say(&cost.text)));
            format!("{name}: {energy}{}", cost.unwrap_or_default())
        });
        self.block("heading.uses", lines)
    }

    fn shopping(&self, answer: &Answer) -> String {
        let line =
            |m: &Material| format!("- {} {} {}", m.quantity, self.say(&m.unit), self.say(&m.item));
        self.block("heading.shopping", answer.shopping.iter().map(line))
    }

    fn reminders(&self, answer: &Answer) -> String {
        let line = |r: &Reminder| format!("{}  {}", r.date, self.say(&r.title));
        self.block("heading.reminders", answer.reminders.iter().map(line))
    }

    fn sources(&self, answer: &Answer) -> String {
        let line = |s: &SourceNote| format!("[{}] {}: {} ({})", s.key, s.cite, s.place, s.obtained);
        let credit = std::iter::once(self.say(&answer.credit));
        self.block("heading.sources", answer.sources.iter().map(line).chain(credit))
    }
}
