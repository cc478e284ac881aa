//! What no label states and taste hangs on: how the sugars divide, flavours with their strength, high-potency sweeteners.

use egui::{Button, Ui};

use super::group_ui;
use crate::book::{
    Evidence, Figure, FlavourStrength, HighPotencyAmount, HighPotencySweetener, Ingredient,
    SugarProfile,
};
use crate::ui::counter_area::sheet::{Asked, Sheet, Spot, WORDS, link_ui, word_menu_ui, words_ui};
use crate::ui::icons::{Icon, icon_button};
use crate::ui::theme::grid;
use crate::ui::words::quiet_ui;

pub(super) fn sweetness_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Ingredient>) {
    group_ui(ui, "Sweetness and flavour");
    profile_ui(ui, sheet);
    let fraction = sheet.item.composition.free_sugar_fraction;
    sheet.row(ui, "free sugars", |sheet, ui| {
        let spot = Spot::number("free", "Free part of the sugars").hint("–");
        sheet.number(ui, spot, fraction, |item, fraction| {
            item.composition.free_sugar_fraction = fraction;
        });
        quiet_ui(ui, "of the sugars: 1 for syrup and juice, 0 for milk");
    });
    flavours_ui(ui, sheet);
    sweeteners_ui(ui, sheet);
}

const OWN: SugarProfile = SugarProfile::Own {
    sucrose: 1.0,
    glucose: 0.0,
    fructose: 0.0,
    lactose: 0.0,
    maltose: 0.0,
    other: 0.0,
};
/// Dextrose equivalent of a common glucose syrup (common practice, no source).
const SYRUP: SugarProfile = SugarProfile::GlucoseSyrup {
    dextrose_equivalent: 42.0,
};

const PROFILES: [Option<SugarProfile>; 11] = [
    None,
    Some(SugarProfile::Sucrose),
    Some(SugarProfile::Invert),
    Some(SugarProfile::Hfcs42),
    Some(SugarProfile::Hfcs55),
    Some(SugarProfile::Fructose),
    Some(SugarProfile::Glucose),
    Some(SugarProfile::Lactose),
    Some(SugarProfile::Honey),
    Some(SYRUP),
    Some(OWN),
];

fn profile_word(profile: Option<&SugarProfile>) -> &'static str {
    match profile {
        None => "not stated",
        Some(SugarProfile::Sucrose) => "table sugar",
        Some(SugarProfile::Invert) => "invert sugar",
        Some(SugarProfile::Hfcs42) => "HFCS-42",
        Some(SugarProfile::Hfcs55) => "HFCS-55",
        Some(SugarProfile::Fructose) => "fructose",
        Some(SugarProfile::Glucose) => "dextrose",
        Some(SugarProfile::Lactose) => "milk sugar",
        Some(SugarProfile::Honey) => "honey",
        Some(SugarProfile::GlucoseSyrup { .. }) => "glucose syrup",
        Some(SugarProfile::Own { .. }) => "own fractions",
    }
}

fn profile_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Ingredient>) {
    let profile = sheet.item.composition.sugar_profile;
    let same =
        |one: Option<SugarProfile>| profile_word(one.as_ref()) == profile_word(profile.as_ref());
    // The kind in hand stands in the menu with the numbers that it has.
    let all = PROFILES.map(|known| if same(known) { profile } else { known });
    sheet.row(ui, "the sugars are", |sheet, ui| {
        let word = |profile: &Option<SugarProfile>| profile_word(profile.as_ref()).to_owned();
        sheet.choice(
            ui,
            Spot::wide("profile", "Sugar profile"),
            &profile,
            &all,
            word,
            |item, to| {
                item.composition.sugar_profile = to;
            },
        );
        if let Some(SugarProfile::GlucoseSyrup {
            dextrose_equivalent,
        }) = profile
        {
            quiet_ui(ui, "dextrose equivalent");
            let spot = Spot::number("dextrose", "Dextrose equivalent").width(48.0);
            sheet.required(
                ui,
                spot,
                dextrose_equivalent,
                |item, dextrose_equivalent| {
                    item.composition.sugar_profile = Some(SugarProfile::GlucoseSyrup {
                        dextrose_equivalent,
                    });
                },
            );
        }
    });
    if let Some(SugarProfile::Own {
        sucrose,
        glucose,
        fructose,
        lactose,
        maltose,
        other,
    }) = profile
    {
        let fractions = [sucrose, glucose, fructose, lactose, maltose, other];
        fractions_ui(ui, sheet, fractions);
    }
}

const SUGARS: [&str; 6] = [
    "sucrose",
    "glucose",
    "fructose",
    "lactose",
    "maltose",
    "other sugar",
];

/// The fractions of the shop's own profile.
fn fractions_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Ingredient>, fractions: [f64; 6]) {
    for (at, sugar) in SUGARS.into_iter().enumerate() {
        let field = format!("fraction {sugar}");
        let name = format!("Fraction of {sugar}");
        sheet.row(ui, &format!("\u{2007}\u{2007}{sugar}"), |sheet, ui| {
            sheet.required(
                ui,
                Spot::number(&field, &name),
                fractions[at],
                |item, fraction| {
                    let mut changed = fractions;
                    changed[at] = fraction;
                    let [sucrose, glucose, fructose, lactose, maltose, other] = changed;
                    item.composition.sugar_profile = Some(SugarProfile::Own {
                        sucrose,
                        glucose,
                        fructose,
                        lactose,
                        maltose,
                        other,
                    });
                },
            );
        });
    }
}

/// What somebody says who has tasted it against the one in use, and how strong that is per gram.
///
/// The steps are a fifth to two fifths (common practice, no source); the note is taken for ±10 %.
const BENCH_NOTES: [(&str, f64); 5] = [
    ("much weaker, about 0.6", 0.6),
    ("weaker, about 0.8", 0.8),
    ("as strong as the standard", 1.0),
    ("stronger, about 1.25", 1.25),
    ("much stronger, about 1.6", 1.6),
];

/// Relative standard uncertainty of a bench note (assumed).
const BENCH_UNCERTAINTY: f64 = 0.10;

fn flavours_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Ingredient>) {
    let flavours = sheet.item.composition.flavours.clone();
    for (at, flavour) in flavours.iter().enumerate() {
        let field = format!("flavour {at}");
        let mut removed = false;
        sheet.row(ui, if at == 0 { "tastes of" } else { "" }, |sheet, ui| {
            let spot = Spot::wide(&field, "Flavour").width(112.0).hint("chestnut");
            sheet.text(ui, spot, &flavour.name, |item, name| {
                item.composition.flavours[at].name = name;
            });
            bench_note_ui(ui, sheet, &field, flavour, at);
            removed = icon_button(
                ui,
                Icon::Delete,
                &format!("Take {} out", flavour.name),
                "Take it out",
            )
            .clicked();
        });
        ui.horizontal(|ui| {
            ui.spacing_mut().item_spacing.x = grid::TIGHT;
            words_ui(ui, "", WORDS);
            let field = format!("{field} strength");
            let name = format!("Strength of {}", flavour.name);
            let asked = Asked {
                field: &field,
                name: &name,
                unit: "per gram",
                unit_width: 40.0,
                factor: 1.0,
                first: Evidence::Measured,
            };
            sheet.figure(ui, &asked, flavour.per_gram, |item, figure| {
                item.composition.flavours[at].per_gram = figure;
            });
        });
        sheet.errors_ui(ui, WORDS);
        if removed {
            sheet.change("flavours", |item| {
                drop(item.composition.flavours.remove(at));
            });
            for place in at..flavours.len() {
                sheet.forget_draft(&format!("flavour {place}"));
                sheet.forget_draft(&format!("flavour {place} strength"));
            }
            return;
        }
    }
    sheet.row(
        ui,
        if flavours.is_empty() { "tastes of" } else { "" },
        |sheet, ui| {
            if link_ui(ui, "Add a flavour").clicked() {
                let flavour = FlavourStrength {
                    name: String::new(),
                    per_gram: None,
                };
                sheet.change("flavours", |item| item.composition.flavours.push(flavour));
            }
        },
    );
}

/// The quick word for how strong a flavour is.
fn bench_note_ui(
    ui: &mut Ui,
    sheet: &mut Sheet<'_, Ingredient>,
    field: &str,
    flavour: &FlavourStrength,
    at: usize,
) {
    let known = flavour.per_gram.map(|figure| figure.value);
    let is = |value: f64| known.is_some_and(|known| (known - value).abs() < 1e-9);
    let word = match known {
        None => "nobody has tasted it",
        Some(_) => BENCH_NOTES
            .iter()
            .find(|(_, value)| is(*value))
            .map_or("measured", |(word, _)| word),
    };
    let mut taken = None;
    word_menu_ui(ui, "Bench note", word, |ui| {
        if ui
            .add(Button::selectable(
                known.is_none(),
                "not tasted: assumed equal per gram, ± 25 %",
            ))
            .clicked()
        {
            taken = Some(None);
        }
        for (word, value) in BENCH_NOTES {
            if ui.add(Button::selectable(is(value), word)).clicked() {
                let u = Some(BENCH_UNCERTAINTY * value);
                taken = Some(Some(Figure {
                    value,
                    evidence: Evidence::Measured,
                    u,
                }));
            }
        }
    });
    if let Some(figure) = taken {
        sheet.change(&format!("{field} strength"), |item| {
            item.composition.flavours[at].per_gram = figure;
        });
    }
}

const SWEETENERS: [HighPotencySweetener; 6] = [
    HighPotencySweetener::Sucralose,
    HighPotencySweetener::Aspartame,
    HighPotencySweetener::AcesulfameK,
    HighPotencySweetener::RebaudiosideA,
    HighPotencySweetener::Stevioside,
    HighPotencySweetener::Saccharin,
];

fn sweetener_word(sweetener: HighPotencySweetener) -> &'static str {
    match sweetener {
        HighPotencySweetener::Sucralose => "sucralose",
        HighPotencySweetener::Aspartame => "aspartame",
        HighPotencySweetener::AcesulfameK => "acesulfame K",
        HighPotencySweetener::RebaudiosideA => "rebaudioside A",
        HighPotencySweetener::Stevioside => "stevioside",
        HighPotencySweetener::Saccharin => "saccharin",
    }
}

fn sweeteners_ui(ui: &mut Ui, sheet: &mut Sheet<'_, Ingredient>) {
    let amounts = sheet.item.composition.high_potency.clone();
    for (at, amount) in amounts.iter().enumerate() {
        let word = sweetener_word(amount.sweetener);
        let field = format!("sweetener {word}");
        let name = format!("Milligrams of {word}");
        let mut removed = false;
        sheet.row(ui, word, |sheet, ui| {
            let asked = Asked {
                field: &field,
                name: &name,
                unit: "mg",
                unit_width: 24.0,
                factor: 1.0,
                first: Evidence::SpecSheet,
            };
            sheet.figure(ui, &asked, amount.milligrams, |item, figure| {
                item.composition.high_potency[at].milligrams = figure;
            });
            removed =
                icon_button(ui, Icon::Delete, &format!("Take {word} out"), "Take it out").clicked();
        });
        if removed {
            sheet.change("sweeteners", |item| {
                item.composition.high_potency.remove(at);
            });
            sheet.forget_draft(&field);
            return;
        }
    }
    sheet.row(
        ui,
        if amounts.is_empty() { "sweeteners" } else { "" },
        |sheet, ui| {
            let mut added = None;
            word_menu_ui(
                ui,
                "High-potency sweetener",
                "Add a high-potency sweetener",
                |ui| {
                    let free = |sweetener: &HighPotencySweetener| {
                        amounts.iter().all(|known| known.sweetener != *sweetener)
                    };
                    for sweetener in SWEETENERS.into_iter().filter(free) {
                        if ui.button(sweetener_word(sweetener)).clicked() {
                            added = Some(sweetener);
                        }
                    }
                },
            );
            if let Some(sweetener) = added {
                let amount = HighPotencyAmount {
                    sweetener,
                    milligrams: None,
                };
                sheet.change("sweeteners", |item| {
                    item.composition.high_potency.push(amount);
                });
            }
        },
    );
}
