//! Reads the numbers of an atlas from bytes that may be anything.

use std::fmt;

/// Why bytes are no atlas.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum BadAtlas {
    /// They do not begin as an atlas does.
    NotAnAtlas,
    /// Written in a form that this version does not read.
    UnknownVersion(u8),
    /// Cut short or changed on the way: the sum does not match.
    Damaged,
    /// The sum matches, but this part holds what no atlas holds.
    Nonsense(&'static str),
}

impl fmt::Display for BadAtlas {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::NotAnAtlas => write!(f, "not_an_atlas"),
            Self::UnknownVersion(version) => write!(f, "unknown_version {version}"),
            Self::Damaged => write!(f, "damaged"),
            Self::Nonsense(part) => write!(f, "nonsense {part}"),
        }
    }
}

impl std::error::Error for BadAtlas {}

/// What an atlas begins with; then one byte of version, eight of sum, and the body.
const MARK: &[u8] = b"WSATLAS";
const VERSION: u8 = 2;

/// A walk through the body of an atlas.
pub(super) struct Reader<'a> {
    left: &'a [u8],
    part: &'static str,
}

impl<'a> Reader<'a> {
    /// The body, once mark, version and sum are found right.
    pub(super) fn open(bytes: &'a [u8]) -> Result<Self, BadAtlas> {
        let rest = bytes.strip_prefix(MARK).ok_or(BadAtlas::NotAnAtlas)?;
        let (&version, rest) = rest.split_first().ok_or(BadAtlas::Damaged)?;
        if version != VERSION {
            return Err(BadAtlas::UnknownVersion(version));
        }
        let (sum, body) = rest.split_first_chunk::<8>().ok_or(BadAtlas::Damaged)?;
        if u64::from_le_bytes(*sum) != fnv1a(body) {
            return Err(BadAtlas::Damaged);
        }
        Ok(Self { left: body, part: "" })
    }

    /// Names the part that is read next, for the error if it is nonsense.
    pub(super) fn part(&mut self, part: &'static str) -> &mut Self {
        self.part = part;
        self
    }

    pub(super) fn nonsense(&self) -> BadAtlas {
        BadAtlas::Nonsense(self.part)
    }

    /// Whether everything is read.
    pub(super) fn is_at_end(&self) -> bool {
        self.left.is_empty()
    }

    pub(super) fn bytes(&mut self, count: usize) -> Result<&'a [u8], BadAtlas> {
        let (taken, left) = self.left.split_at_checked(count).ok_or(self.nonsense())?;
        self.left = left;
        Ok(taken)
    }

    /// A whole number in groups of seven bits, the lowest first; at most 32 bits.
    pub(super) fn whole(&mut self) -> Result<u32, BadAtlas> {
        let mut value = 0_u64;
        for shift in (0..35).step_by(7) {
            let byte = self.bytes(1)?[0];
            value |= u64::from(byte & 0x7f) << shift;
            if byte < 0x80 {
                return u32::try_from(value).map_err(|_| self.nonsense());
            }
        }
        Err(self.nonsense())
    }

    /// How many things follow; sixteen bits, so a lie cannot claim much memory.
    pub(super) fn count(&mut self) -> Result<usize, BadAtlas> {
        u16::try_from(self.whole()?).map(usize::from).map_err(|_| self.nonsense())
    }

    /// A number with a sign: 0, −1, 1, −2 … are written as 0, 1, 2, 3 …
    fn signed(&mut self) -> Result<i64, BadAtlas> {
        let folded = i64::from(self.whole()?);
        Ok((folded >> 1) ^ -(folded & 1))
    }

    /// A column in which each number is written as the step from the one before.
    pub(super) fn column(&mut self, rows: usize) -> Result<Vec<i64>, BadAtlas> {
        let mut last = 0;
        (0..rows)
            .map(|_| {
                last += self.signed()?;
                Ok(last)
            })
            .collect()
    }

    /// Twelve months for each row, month after month. Each number is written as its step from what
    /// the month before and the row before together suggest.
    pub(super) fn months(&mut self, rows: usize) -> Result<Vec<[i64; 12]>, BadAtlas> {
        let mut table = vec![[0; 12]; rows];
        for month in 0..12 {
            let mut step = 0;
            for row in &mut table {
                step += self.signed()?;
                row[month] = step + if month == 0 { 0 } else { row[month - 1] };
            }
        }
        Ok(table)
    }
}

/// The 64-bit FNV-1a sum: finds every single changed byte.
pub(super) fn fnv1a(bytes: &[u8]) -> u64 {
    bytes.iter().fold(0xcbf2_9ce4_8422_2325, |sum, &byte| {
        (sum ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3)
    })
}
