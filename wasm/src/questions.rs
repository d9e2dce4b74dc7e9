//! One function for each question of the probe.

use crate::give::{given, language};
use crate::{place, read};
use wasm_bindgen::JsValue;
use wasm_bindgen::prelude::wasm_bindgen;
use winterseam::wire::ask_for;

#[wasm_bindgen(typescript_custom_section)]
const TYPES: &str = r#"import type {
  BagFlowAnswer, BagFlowQuestion, BurnTimeAnswer, BurnTimeQuestion, CableYearAnswer,
  CableYearQuestion, CeilingLeakAnswer, CeilingLeakQuestion, ClimateAnswer, ClimateQuestion,
  DuctDeliveryAnswer, DuctDeliveryQuestion,
  FreezeTimeAnswer, FreezeTimeQuestion, GapAnswer, GapQuestion, InfiltrationAnswer,
  InfiltrationQuestion, MainsWaterAnswer, MainsWaterQuestion, MoistAirAnswer, MoistAirQuestion,
  Phrase, PipeLossAnswer, PipeLossQuestion, VentilationNeedAnswer, VentilationNeedQuestion,
  WindowUAnswer, WindowUQuestion, WorthAnswer, WorthQuestion,
} from "../src/wire.js";
"#;

fn answer(name: &str, fields: JsValue, tag: &JsValue) -> Result<JsValue, JsValue> {
    let language = language(tag)?;
    let atlas = place::atlas();
    let answer = read::tree(fields).and_then(|tree| ask_for(name, &tree, atlas.as_deref()));
    given(answer, language)
}

macro_rules! questions {
    ($($function:ident $name:literal $question:literal $answer:literal)+) => {$(
        /// Answers the question of this name, in SI units.
        ///
        /// # Errors
        /// Everything that is wrong with the question, as an `Error` with `problems`.
        #[wasm_bindgen(unchecked_return_type = $answer)]
        pub fn $function(
            #[wasm_bindgen(unchecked_param_type = $question)] question: JsValue,
            #[wasm_bindgen(unchecked_optional_param_type = "\"en\" | \"es\"")] language: &JsValue,
        ) -> Result<JsValue, JsValue> {
            answer($name, question, language)
        }
    )+};
}

questions! {
    ask_bag_flow "bag_flow" "BagFlowQuestion" "BagFlowAnswer"
    ask_burn_time "burn_time" "BurnTimeQuestion" "BurnTimeAnswer"
    ask_cable_year "cable_year" "CableYearQuestion" "CableYearAnswer"
    ask_ceiling_leak "ceiling_leak" "CeilingLeakQuestion" "CeilingLeakAnswer"
    ask_climate "climate" "ClimateQuestion" "ClimateAnswer"
    ask_duct_delivery "duct_delivery" "DuctDeliveryQuestion" "DuctDeliveryAnswer"
    ask_freeze_time "freeze_time" "FreezeTimeQuestion" "FreezeTimeAnswer"
    ask_gap "gap" "GapQuestion" "GapAnswer"
    ask_infiltration "infiltration" "InfiltrationQuestion" "InfiltrationAnswer"
    ask_mains_water "mains_water" "MainsWaterQuestion" "MainsWaterAnswer"
    ask_moist_air "moist_air" "MoistAirQuestion" "MoistAirAnswer"
    ask_pipe_loss "pipe_loss" "PipeLossQuestion" "PipeLossAnswer"
    ask_ventilation_need "ventilation_need" "VentilationNeedQuestion" "VentilationNeedAnswer"
    ask_window_u "window_u" "WindowUQuestion" "WindowUAnswer"
    ask_worth "worth" "WorthQuestion" "WorthAnswer"
}
