//! A window, or several alike.

use uom::si::f64::{Area, Length};
use uom::si::length::inch;

/// A window, or several alike.
#[derive(Debug, Clone, PartialEq)]
pub struct Window {
    /// How many there are like it.
    pub count: u16,
    /// What the person calls it.
    pub label: Option<String>,
    /// Across the glass and its frame.
    pub width: Option<Length>,
    /// Up and down.
    pub height: Option<Length>,
    /// Its panes.
    pub panes: Option<Panes>,
    /// A film is stretched over it inside.
    pub film: Option<bool>,
    /// It is the way out of a sleeping room; `None` counts as if it were.
    pub escape: Option<bool>,
}

/// The panes of a window.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord)]
pub enum Panes {
    /// One.
    Single,
    /// One, and a storm window.
    SingleStorm,
    /// Two in one frame.
    Double,
}

impl Window {
    /// Width and height of one, as measured or as is usual:
    /// [`USUAL_WINDOWS`](crate::sources::envelope::USUAL_WINDOWS).
    #[must_use]
    pub fn size(&self) -> (Length, Length) {
        let inches = Length::new::<inch>;
        (self.width.unwrap_or(inches(30.0)), self.height.unwrap_or(inches(40.0)))
    }

    /// Area of all that are like it.
    #[must_use]
    pub fn area(&self) -> Area {
        let (width, height) = self.size();
        width * height * f64::from(self.count)
    }

    /// Whether nothing may be fastened over it: someone may have to leave by it.
    #[must_use]
    pub fn may_be_way_out(&self) -> bool {
        self.escape != Some(false)
    }
}
