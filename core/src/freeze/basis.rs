//! What a figure that is made of other figures rests on.

use crate::sources::{Confidence, Figure, Source};

/// Confidence, inputs and sources of several figures together: as sure as the least sure of them.
#[derive(Clone)]
pub(super) struct Basis {
    confidence: Confidence,
    inputs: Vec<String>,
    sources: Vec<&'static Source>,
}

impl Basis {
    pub(super) fn of<Q>(figure: &Figure<Q>) -> Self {
        Self {
            confidence: figure.confidence,
            inputs: figure.inputs.clone(),
            sources: figure.sources.clone(),
        }
    }

    pub(super) fn guess(source: &'static Source) -> Self {
        Self { confidence: Confidence::Guessed, inputs: vec![], sources: vec![source] }
    }

    pub(super) fn and(mut self, other: &Self) -> Self {
        self.confidence = self.confidence.max(other.confidence);
        for input in &other.inputs {
            if !self.inputs.contains(input) {
                self.inputs.push(input.clone());
            }
        }
        self.resting_on(&other.sources)
    }

    pub(super) fn resting_on(mut self, sources: &[&'static Source]) -> Self {
        for source in sources {
            if !self.sources.contains(source) {
                self.sources.push(source);
            }
        }
        self
    }

    pub(super) fn figure<Q: Copy + PartialOrd>(&self, best: Q, (one, other): (Q, Q)) -> Figure<Q> {
        Figure::exact(best, self.confidence, &self.sources)
            .between(one, other)
            .from_inputs(self.inputs.clone())
    }
}
