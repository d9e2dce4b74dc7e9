//! One list for all steps: the same thing once, with its whole quantity.

use crate::repairs::Material;
use std::collections::BTreeMap;

pub(super) fn merged<'a>(materials: impl IntoIterator<Item = &'a Material>) -> Vec<Material> {
    let mut list: BTreeMap<&str, Material> = BTreeMap::new();
    for material in materials {
        list.entry(material.item)
            .and_modify(|known| known.quantity += material.quantity)
            .or_insert(*material);
    }
    list.into_values().collect()
}
