//! Seeded chance, so that a failure comes back.

/// A linear congruential generator with the multiplier of Knuth's MMIX (from memory).
pub(super) struct Chance(u64);

impl Chance {
    pub(super) fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// A number below `n`.
    pub(super) fn below(&mut self, n: usize) -> usize {
        self.0 =
            self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        usize::try_from(self.0 >> 33).expect("31 bits fit") % n
    }

    /// One of these.
    pub(super) fn pick<'a, T>(&mut self, of: &'a [T]) -> &'a T {
        &of[self.below(of.len())]
    }

    /// A double of any size and sign.
    pub(super) fn number(&mut self) -> f64 {
        const ODD: [f64; 12] =
            [0.0, -0.0, -1.0, 0.5, 1.0, 14.0, 1e300, -1e300, 5e-324, f64::NAN, f64::INFINITY, 9e15];
        *self.pick(&ODD)
    }

    /// A text of characters that readers trip over.
    pub(super) fn text(&mut self) -> String {
        const ODD: [char; 24] = [
            '0', '1', '9', '/', '-', '.', ',', ' ', '\'', '"', '°', 'f', 'C', 'i', 'n', '$', '¼',
            '\u{0}', '\u{301}', '٣', 'İ', '𝟛', '\u{202e}', 'ß',
        ];
        (0..self.below(12)).map(|_| *self.pick(&ODD)).collect()
    }
}
