//! Where the climate tables and the series method come from.
//!
//! Wherever a table or a figure made from them is shown, this line stands with it:
//!
//! > Climate: typical meteorological years TMY3, credit DOE/NREL/ALLIANCE; U.S. Climate Normals
//! > 1991–2020, NOAA National Centers for Environmental Information; ZIP areas and counties, U.S.
//! > Census Bureau; climate zones by county, U.S. Department of Energy. Changed: averaged, adjusted
//! > and rounded. No endorsement by any of them.
//!
//! The full notices are in `core/data/climate/NOTICE`.

use super::{Obtained, Source};

/// Typical years: wind, dew point, day-to-day deviation, cold percentiles.
pub const TYPICAL_YEARS: Source = Source {
    key: "nrel-2008-tmy3",
    cite: "Wilcox and Marion, Users Manual for TMY3 Data Sets (2008), NREL/TP-581-43156; \
           credit DOE/NREL/ALLIANCE",
    place: "hourly files of 1,020 stations; 920 without spikes are used",
    obtained: Obtained::Computed("monthly averages of the hourly files"),
};

/// Mean daily maximum and minimum, freeze dates.
pub const NORMALS: Source = Source {
    key: "noaa-1991-2020-normals",
    cite: "U.S. Climate Normals 1991–2020, NOAA National Centers for Environmental Information",
    place: "monthly maximum and minimum; median last and first 32 °F",
    obtained: Obtained::Quoted,
};

/// Positions of ZIP areas.
pub const ZIP_AREAS: Source = Source {
    key: "census-2021-gazetteer",
    cite: "U.S. Census Bureau, Gazetteer Files (2021)",
    place: "ZIP Code Tabulation Areas",
    obtained: Obtained::Quoted,
};

/// Counties of ZIP areas.
pub const ZIP_COUNTIES: Source = Source {
    key: "census-2010-counties",
    cite: "U.S. Census Bureau, ZIP Code Tabulation Area Relationship Files (2010)",
    place: "ZIP area to county",
    obtained: Obtained::Quoted,
};

/// Climate zones of counties; 2012 edition of the energy code.
pub const ZONES: Source = Source {
    key: "doe-county-zones",
    cite: "U.S. Department of Energy, climate zones by county",
    place: "county list; Alaska, Hawaii and islands from memory",
    obtained: Obtained::Quoted,
};

/// The method that makes hours from monthly numbers, and its shape constants.
pub const SERIES: Source = Source {
    key: "series-2026-method",
    cite: "The series method, fitted to the typical years of 909 stations of the lower 48 states",
    place: "daily swing, plateau at freezing, wind by the hour, dew point",
    obtained: Obtained::Computed("comparison with the hourly files"),
};

/// The fixed weather of the year that the method runs through.
pub const SEQUENCE: Source = Source {
    key: "series-2026-sequence",
    cite: "One fixed year of day-to-day weather, the same for every place",
    place: "core/data/climate/sequence.csv",
    obtained: Obtained::Computed("two chains mapped by rank onto normal quantiles"),
};

/// How far the coldest night of an ordinary year lies below the typical year's 99.6 %.
pub const COLDEST_NIGHT: Source = Source {
    key: "series-2026-coldest-night",
    cite: "A rule for the coldest night of an ordinary year",
    place: "the 99.6 % temperature of the typical year less 6 °F, give or take 4 °F",
    obtained: Obtained::FromMemory,
};

/// The layout of EPW files.
pub const EPW: Source = Source {
    key: "doe-epw-format",
    cite: "U.S. Department of Energy, Auxiliary programs: weather data format EPW",
    place: "fields of an hour and their marks for missing values",
    obtained: Obtained::FromMemory,
};

/// Sunshine above the air, and below it from the swing of the day.
pub const FAO_56: Source = Source {
    key: "fao-56-1998-ch3",
    cite: "Allen, Pereira, Raes and Smith: Crop evapotranspiration. FAO Irrigation and Drainage \
           Paper 56, 1998",
    place: "chapter 3, equations 21 to 25 and 50",
    obtained: Obtained::FromMemory,
};

/// How much colder higher ground is.
pub const LAPSE: Source = Source {
    key: "lapse-of-stations",
    cite: "Temperature by height between neighbouring U.S. stations",
    place: "3.3 to 3.5 °F for each 1,000 ft; 3.4 is used",
    obtained: Obtained::CommonPractice,
};
