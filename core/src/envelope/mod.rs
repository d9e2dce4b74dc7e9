//! What surrounds the rooms: the shell, the space below the floor, and what sun and people bring.

mod below;
mod crawl;
mod gains;
mod ground;
mod shell;
mod sun_on_walls;
mod u_values;
mod utilisation;

pub use below::Below;
pub use crawl::{CrawlSpace, Temperatures, crawl_temperature, wind_through_skirting};
pub use gains::{internal_gains, solar_gains};
pub use ground::{depth_below_a_home, soil_by_month};
pub use shell::{Shell, ShellSeen, shell};
pub use sun_on_walls::sun_on_walls;
pub use utilisation::{inertia, time_constant, utilisation};
