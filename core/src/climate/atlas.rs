//! Which weather belongs to a ZIP code.

use super::decode;
use super::{BadAtlas, Station, Zone};
use std::collections::BTreeMap;
use uom::si::f64::Length;
use uom::si::length::kilometer;

/// Stations of the United States and the ZIP areas that each is nearest to.
#[derive(Debug, Clone, PartialEq)]
pub struct Atlas {
    /// By ascending number.
    pub(super) stations: Vec<Station>,
    pub(super) zips: BTreeMap<u32, Area>,
    /// By the first three digits.
    pub(super) zip3: BTreeMap<u32, Area>,
}

/// The station and the zone of one code.
#[derive(Debug, Clone, PartialEq)]
pub(super) struct Area {
    pub(super) station: usize,
    pub(super) km: Option<u32>,
    pub(super) zone: Zone,
}

/// The climate of a ZIP code.
#[derive(Debug, Clone, PartialEq)]
pub struct Place {
    /// The nearest station with clean records.
    pub station: Station,
    /// From the middle of the ZIP area to the station; `None` when only the area is known.
    pub distance: Option<Length>,
    /// Climate zone of the county.
    pub zone: Zone,
    /// How much higher the home lies than the station, where somebody said how high; the weather is
    /// brought to that height.
    pub lifted: Option<Length>,
    /// The code itself is not in the table (it may be that of post-office boxes): station and zone
    /// are what most codes with the same first three digits have.
    pub by_area: bool,
}

impl Place {
    /// The same place with the weather of another.
    #[must_use]
    pub fn with_weather_of(self, other: Self) -> Self {
        Self { zone: self.zone, ..other }
    }

    /// The same place at its own height above the sea: [`Station::lifted`].
    ///
    /// ```
    /// # #[cfg(feature = "atlas")] {
    /// use winterseam::climate::Atlas;
    /// use uom::si::{f64::Length, length::foot};
    ///
    /// let town = Atlas::embedded().place("59801").expect("known");
    /// let ridge = town.clone().at(town.station.elevation + Length::new::<foot>(2000.0));
    /// assert!(ridge.station.normals.annual_mean() < town.station.normals.annual_mean());
    /// # }
    /// ```
    #[must_use]
    pub fn at(self, elevation: Length) -> Self {
        let by = elevation - self.station.elevation;
        Self { station: self.station.lifted(by), lifted: Some(by), ..self }
    }
}

impl Atlas {
    /// Reads an atlas as `cargo xtask data` writes it.
    ///
    /// # Errors
    /// When the bytes are anything else.
    ///
    /// ```
    /// use winterseam::climate::{Atlas, BadAtlas};
    ///
    /// assert_eq!(Atlas::from_bytes(b"a photograph"), Err(BadAtlas::NotAnAtlas));
    /// ```
    pub fn from_bytes(bytes: &[u8]) -> Result<Self, BadAtlas> {
        decode::atlas(bytes)
    }

    /// The atlas that the crate carries.
    ///
    /// # Panics
    /// Never: a test reads the same bytes.
    #[cfg(feature = "atlas")]
    #[must_use]
    pub fn embedded() -> &'static Self {
        static ATLAS: std::sync::OnceLock<Atlas> = std::sync::OnceLock::new();
        ATLAS.get_or_init(|| {
            let bytes = include_bytes!("../../data/climate/atlas.bin");
            Self::from_bytes(bytes).expect("the crate's own tables")
        })
    }

    /// The climate of a ZIP code of five digits; `None` for anything else and for codes far from
    /// all that the tables know.
    ///
    /// ```
    /// # #[cfg(feature = "atlas")] {
    /// use winterseam::climate::Atlas;
    ///
    /// let boxes = Atlas::embedded().place("59806").expect("post-office boxes of Missoula");
    /// assert!(boxes.by_area);
    /// assert!(Atlas::embedded().place("5980").is_none());
    /// # }
    /// ```
    #[must_use]
    pub fn place(&self, zip: &str) -> Option<Place> {
        let code = digits(zip, 5)?;
        let area = self.zips.get(&code);
        let (area, by_area) = match area {
            Some(area) => (area, false),
            None => (self.zip3.get(&(code / 100))?, true),
        };
        Some(Place {
            station: self.stations[area.station].clone(),
            distance: area.km.map(|km| Length::new::<kilometer>(f64::from(km))),
            zone: area.zone,
            lifted: None,
            by_area,
        })
    }

    /// The station with this number of six digits.
    #[must_use]
    pub fn station(&self, usaf: &str) -> Option<Station> {
        digits(usaf, 6)?;
        let found = self.stations.binary_search_by(|station| station.usaf.as_str().cmp(usaf));
        found.ok().map(|at| self.stations[at].clone())
    }

    /// All stations, by ascending number.
    #[must_use]
    pub fn stations(&self) -> impl ExactSizeIterator<Item = &Station> {
        self.stations.iter()
    }
}

/// The number that exactly so many digits write.
fn digits(text: &str, count: usize) -> Option<u32> {
    let plain = text.len() == count && text.bytes().all(|byte| byte.is_ascii_digit());
    if plain { text.parse().ok() } else { None }
}
