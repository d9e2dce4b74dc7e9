//! What surrounds the rooms: the shell, and the space below the floor.

mod crawl;
mod shell;
mod u_values;

pub use crawl::{CrawlSpace, Temperatures, crawl_temperature, wind_through_skirting};
pub use shell::{Shell, ShellSeen, shell};
