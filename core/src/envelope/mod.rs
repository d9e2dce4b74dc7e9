//! What surrounds the rooms: the space below the floor.

mod crawl;

pub use crawl::{CrawlSpace, Temperatures, crawl_temperature, wind_through_skirting};
