//! Who lives there, and what is looked for before anything is touched.

/// Who lives there, as far as it changes the advice. `None` is unknown or not said.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct People {
    /// A child under five.
    pub child_under_5: Option<bool>,
    /// Someone of 65 or more.
    pub age_65_or_more: Option<bool>,
    /// Someone who cannot feel, move or understand well enough to pull away from hot water.
    pub cannot_feel_or_move: Option<bool>,
    /// Chronic lung disease, a weak immune system, a transplant or dialysis.
    pub lung_or_immune: Option<bool>,
    /// Oxygen in use.
    pub oxygen: Option<bool>,
    /// Another medical machine that needs power.
    pub medical_machine: Option<bool>,
    /// How many live there.
    pub count: Option<u8>,
}

impl People {
    /// Whether someone burns faster or is slower to pull away; `None` when nobody was asked.
    #[must_use]
    pub fn burn_faster(&self) -> Option<bool> {
        any(&[self.child_under_5, self.age_65_or_more, self.cannot_feel_or_move])
    }

    /// Whether someone is harmed by a cold or hot room sooner; `None` when nobody was asked.
    #[must_use]
    pub fn frail_indoors(&self) -> Option<bool> {
        any(&[
            self.child_under_5,
            self.age_65_or_more,
            self.cannot_feel_or_move,
            self.lung_or_immune,
            self.oxygen,
            self.medical_machine,
        ])
    }
}

/// Whether one of them is so; `None` when none is known to be and one is not known.
fn any(flags: &[Option<bool>]) -> Option<bool> {
    match flags {
        flags if flags.contains(&Some(true)) => Some(true),
        flags if flags.contains(&None) => None,
        _ => Some(false),
    }
}

/// What an alarm does.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Alarm {
    /// It passed the press test and is in date.
    Working,
    /// There is none, or it does nothing.
    Missing,
    /// Past the date on its back.
    Expired,
    /// One chirp a minute.
    Chirping,
    /// Sounding its pattern.
    Sounding,
}

/// What is looked for before anything is touched. `None` is not seen.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct FirstLook {
    /// Smell of gas.
    pub gas_smell: Option<bool>,
    /// Headache, dizziness or sickness that lifts outdoors.
    pub symptoms: Option<bool>,
    /// The carbon monoxide alarm.
    pub co_alarm: Option<Alarm>,
    /// The smoke alarm that works best.
    pub smoke_alarm: Option<Alarm>,
    /// A grill, camp stove, generator or outdoor heater used inside.
    pub flame_indoors: Option<bool>,
    /// The oven used for warmth.
    pub oven_for_heat: Option<bool>,
    /// A hot, buzzing or scorched outlet, plug or cord.
    pub hot_wiring: Option<bool>,
    /// Metal or taps that tingle.
    pub metal_tingles: Option<bool>,
    /// Water standing below the home where cords or cables are live.
    pub water_below: Option<bool>,
    /// Each sleeping room has a second way out.
    pub ways_out: Option<bool>,
    /// A tap that is dry now.
    pub tap_dry: Option<bool>,
    /// The main heat can hold the home warm.
    pub heat_holds: Option<bool>,
    /// Something else burns: a gas stove or dryer, a fireplace, a wood stove, a heater.
    pub other_burner: Option<bool>,
}
