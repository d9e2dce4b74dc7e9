//! Film and storm windows. Never over a window that someone may have to leave by.

use super::seal::{may_be_shut, tightening};
use super::{Changes, Fee, Life, Material, Order, Repair, Warning, Who};
use crate::home::{Gap, GapPlace, Home, Panes, Window};
use uom::si::f64::Ratio;
use uom::si::ratio::ratio;

/// Share of a window's own leaks that tape and film leave open: judgement.
const FILM_LEAVES: f64 = 0.1;

/// One pane, with or without a storm window, and nothing over it yet.
fn takes_film(window: &Window) -> bool {
    let one_pane = matches!(window.panes, Some(Panes::Single | Panes::SingleStorm));
    one_pane && window.film != Some(true) && !window.may_be_way_out()
}

fn takes_storm(window: &Window) -> bool {
    window.panes == Some(Panes::Single) && window.film != Some(true) && !window.may_be_way_out()
}

/// How many windows of the home are such.
fn count(home: &Home, such: fn(&Window) -> bool) -> f64 {
    home.windows.iter().filter(|window| such(window)).map(|window| f64::from(window.count)).sum()
}

/// The home with these windows changed; `None` where there are none.
fn with(home: &Home, such: fn(&Window) -> bool, change: fn(&mut Window)) -> Option<Home> {
    let mut after = home.clone();
    let mut windows = after.windows.iter_mut().filter(|window| such(window)).peekable();
    windows.peek()?;
    windows.for_each(change);
    Some(after)
}

/// Whether a film closes a gap: one at a sash that people call by the name of windows that all get a
/// film.
fn closed_by_film(home: &Home, gap: &Gap) -> bool {
    let is_called = |label: &String, such: fn(&Window) -> bool| {
        home.windows.iter().any(|window| such(window) && window.label.as_ref() == Some(label))
    };
    let filmed = |label| is_called(label, takes_film) && !is_called(label, Window::may_be_way_out);
    matches!(gap.place, GapPlace::WindowSash | GapPlace::Casing)
        && gap.label.as_ref().is_some_and(filmed)
        && may_be_shut(home, gap)
}

fn filmed(home: &Home) -> Option<Home> {
    let mut after = with(home, takes_film, |window| window.film = Some(true))?;
    for gap in after.gaps.iter_mut().filter(|gap| closed_by_film(home, gap)) {
        gap.open = gap.open.min(Ratio::new::<ratio>(FILM_LEAVES));
    }
    Some(after)
}

fn film_cautions(home: &Home) -> Vec<Warning> {
    let oxygen = (home.people.oxygen != Some(false)).then_some(Warning::OXYGEN);
    let tighter = home.gaps.iter().any(|gap| closed_by_film(home, gap));
    let tighter = if tighter { tightening(home) } else { vec![] };
    [Warning::EGRESS_WINDOW].into_iter().chain(oxygen).chain(tighter).collect()
}

/// A film for one winter.
pub(super) const WINDOW_FILM: Repair = Repair {
    id: "window_film",
    order: |_| Order::Windows,
    changes: Changes::Windows,
    who: |_| Who::Resident,
    apply: filmed,
    materials: |home| vec![Material::new("window_film_3", count(home, takes_film) / 3.0)],
    fee: |_| Fee::NONE,
    cautions: film_cautions,
    lasts: Life::exactly(1.0),
};

/// A storm window that is put in from inside and taken out again.
pub(super) const STORM_WINDOW: Repair = Repair {
    id: "storm_window",
    order: |_| Order::Windows,
    changes: Changes::Windows,
    who: |_| Who::AbleAdult,
    apply: |home| with(home, takes_storm, |window| window.panes = Some(Panes::SingleStorm)),
    materials: |home| vec![Material::new("storm_insert", count(home, takes_storm))],
    fee: |_| Fee::NONE,
    cautions: |_| vec![Warning::EGRESS_WINDOW],
    lasts: Life::about(10.0),
};
