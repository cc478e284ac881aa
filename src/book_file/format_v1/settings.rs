//! What holds for the whole shop, as it stands in a file.

use super::super::checker::Checker;
use super::earlier::EarlierStates;
use super::stored::{Stored, file_group, in_file};
use super::{AllergenList, DoubtClass, Temperature, Translation, Yardstick};

in_file! {
    #[derive(Default)]
    struct Settings {
        shop: String = nothing,
        note: String = nothing,
        currency: Option<String> = usual,
        room_temperature: Option<Temperature> = usual,
        refrigerator_temperature: Option<f64> = usual,
        ice_temperature: Option<f64> = usual,
        hot_drinking_temperature: Option<f64> = usual,
        iced_drinking_temperature: Option<f64> = usual,
        hot_window: Option<TemperatureWindow> = usual,
        iced_window: Option<TemperatureWindow> = usual,
        ice_bulk_density: Option<f64> = usual,
        ice_melt_rate: Option<f64> = nothing,
        ice_left: Option<f64> = nothing,
        sales_tax_percent: Option<f64> = nothing,
        instruments: Instruments = nothing,
        doubts: Vec<RescaledDoubt> = nothing,
        steps: Vec<StepSetting> = nothing,
        yardsticks: Vec<Yardstick> = nothing,
        sugar_levels: Vec<NamedLevel> = nothing,
        ice_levels: Vec<NamedLevel> = nothing,
        earlier: EarlierStates<Settings> = nothing,
        language: Option<String> = nothing,
        translations: Vec<Translation> = nothing,
        confirmations: Vec<Confirmation> = nothing,
        allergen_lists: Vec<AllergenList> = nothing,
    }
}

in_file! {
    struct Confirmation {
        language: String,
        by: String,
        date: String,
    }
}

in_file! {
    struct TemperatureWindow {
        from: f64,
        to: f64,
    }
}

in_file! {
    #[derive(Default)]
    struct Instruments {
        scale_grams: Option<f64> = nothing,
        thermometer_kelvin: Option<f64> = nothing,
        jug_percent: Option<f64> = nothing,
    }
}

in_file! {
    struct RescaledDoubt {
        class: DoubtClass,
        times: f64,
        date: String,
        by: String = nothing,
        reason: String = nothing,
        readings: u32 = nothing,
        inside: u32 = nothing,
    }
}

in_file! {
    struct StepSetting {
        axis: Axis,
        fraction: f64,
        floor: f64,
        weight: f64,
    }
}

in_file! {
    enum Axis with parts here {
        Sweetness,
        TeaStrength,
        Flavour(name: String),
        Creaminess,
        Acidity,
        Body,
        Temperature,
        Volume,
    }
}

in_file! {
    struct NamedLevel {
        name: String,
        percent: f64,
    }
}
