//! A value that knows how sure it is and what it rests on.

use super::Source;

/// How a figure is known, from best to worst. Shown as a word, never as a letter or a number.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Confidence {
    /// Measured and in agreement with the bills.
    Billed,
    /// Measured with an instrument.
    Measured,
    /// Seen by a person and compared with a class or a description.
    Seen,
    /// Not seen: what is usual stands in.
    Guessed,
}

/// A value with its range, its confidence, the inputs it was made from and its sources.
#[derive(Debug, Clone, PartialEq)]
pub struct Figure<Q> {
    /// The single best value.
    pub best: Q,
    /// The lower end of the range.
    pub low: Q,
    /// The upper end of the range.
    pub high: Q,
    /// How it is known.
    pub confidence: Confidence,
    /// The fields of a home that it was made from, by their path in a request.
    pub inputs: Vec<String>,
    /// What it rests on.
    pub sources: Vec<&'static Source>,
}

impl<Q: Copy + PartialOrd> Figure<Q> {
    /// A value without a range of its own.
    #[must_use]
    pub fn exact(best: Q, confidence: Confidence, sources: &[&'static Source]) -> Self {
        Self { best, low: best, high: best, confidence, inputs: vec![], sources: sources.to_vec() }
    }

    /// The same figure, with the ends of its range put in order around the best value.
    #[must_use]
    pub fn between(self, one: Q, other: Q) -> Self {
        let pick = |a: Q, b: Q, first: bool| if (a < b) == first { a } else { b };
        let low = pick(pick(one, other, true), self.best, true);
        let high = pick(pick(one, other, false), self.best, false);
        Self { low, high, ..self }
    }

    /// The same figure, made from these fields of the home.
    #[must_use]
    pub fn from_inputs<S: Into<String>>(self, inputs: impl IntoIterator<Item = S>) -> Self {
        Self { inputs: inputs.into_iter().map(Into::into).collect(), ..self }
    }

    /// The same figure in another quantity; the sources of the factor join the list.
    #[must_use]
    pub fn map<P>(&self, also: &[&'static Source], f: impl Fn(Q) -> P) -> Figure<P> {
        let mut sources = self.sources.clone();
        sources.extend(also.iter().filter(|s| !self.sources.contains(s)));
        Figure {
            best: f(self.best),
            low: f(self.low),
            high: f(self.high),
            confidence: self.confidence,
            inputs: self.inputs.clone(),
            sources,
        }
    }
}
