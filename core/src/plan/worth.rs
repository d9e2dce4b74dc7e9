//! What a proposal is worth, for ranking and for saying "stop here".

use super::Proposal;
use crate::money::Dollars;
use crate::repairs::Order;
use uom::si::energy::kilowatt_hour;

/// Below this a saving is smaller than the noise of a year's weather on a bill: judgement.
const NOISE: Dollars = Dollars(5.0);
/// The same where no price is known.
const NOISE_KWH: f64 = 40.0;
/// An hour or a trip counts as this much, so that a free job does not divide by nothing.
const EFFORT: f64 = 5.0;

/// Life of the saving over its cost; comparable only within one step of the order of work.
pub(super) fn score(proposal: &Proposal) -> f64 {
    let repair = proposal.repair;
    let cost = repair.cost(&proposal.before).best.0 + EFFORT;
    let yearly = proposal.saving.map_or(0.0, |saving| match saving.dollars {
        Some(dollars) => dollars.0,
        // No price: the energy itself ranks.
        None => saving.energy.get::<kilowatt_hour>() * NOISE.0 / NOISE_KWH,
    });
    yearly * repair.life(&proposal.before).best.0 / cost
}

/// Whether a proposal belongs among the firsts: it keeps somebody safe, a home dry or a furnace in
/// air, or its saving stands out of the noise and comes back within the repair's life.
#[must_use]
pub fn is_worth_it(proposal: &Proposal) -> bool {
    match (proposal.repair.order)(&proposal.before) {
        order if order <= Order::Airflow => return true,
        Order::Trifles => return false,
        _ => {}
    }
    proposal.saving.is_some_and(|saving| match saving.dollars {
        Some(yearly) => {
            let cost = proposal.repair.cost(&proposal.before).best;
            yearly >= NOISE && yearly * proposal.repair.life(&proposal.before).best.0 > cost
        }
        None => saving.energy.get::<kilowatt_hour>() >= NOISE_KWH,
    })
}
