//! What no label states and taste hangs on: how the sugars divide, flavours with their strength, high-potency sweeteners.

use egui::{Button, Ui};

use crate::book::{
    Evidence, Figure, FlavourStrength, HighPotencyAmount, HighPotencySweetener, Ingredient,
    SugarProfile,
};
use crate::edit::{FieldName, Which};
use crate::quantity::name_as_shown;
use crate::say::{Speaker, say};
use crate::ui::icons::{Icon, icon_button};
use crate::ui::theme::grid;
use crate::ui::widgets::asked_figure::Asked;
use crate::ui::widgets::form::{BEFORE_FIELDS, Entry, Sheet, WORDS, section_ui, words_ui};
use crate::ui::widgets::word_menu_ui;
use crate::ui::words::{capitalised, quiet_ui};

pub(super) fn sweetness_ui(ui: &mut Ui, speaker: Speaker<'_>, sheet: &mut Sheet<'_, Ingredient>) {
    section_ui(ui, speaker.word("ingredient-sweetness"));
    profile_ui(ui, speaker, sheet);
    let fraction = sheet.item.composition.free_sugar_fraction;
    sheet.row(ui, speaker.word("ingredient-free-sugars"), |sheet, ui| {
        let spot = Entry::number("free", speaker.word("ingredient-free-sugars-named")).hint("–");
        sheet.number(ui, &spot, fraction, |item, fraction| {
            item.composition.free_sugar_fraction = fraction;
        });
        quiet_ui(ui, speaker.word("ingredient-free-sugars-hint"));
    });
    flavours_ui(ui, speaker, sheet);
    sweeteners_ui(ui, speaker, sheet);
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

/// The message of a kind of profile.
fn profile_message(profile: Option<&SugarProfile>) -> &'static str {
    match profile {
        None => "ingredient-not-stated",
        Some(SugarProfile::Sucrose) => "ingredient-profile-sucrose",
        Some(SugarProfile::Invert) => "ingredient-profile-invert",
        Some(SugarProfile::Hfcs42) => "ingredient-profile-hfcs-42",
        Some(SugarProfile::Hfcs55) => "ingredient-profile-hfcs-55",
        Some(SugarProfile::Fructose) => "ingredient-profile-fructose",
        Some(SugarProfile::Glucose) => "ingredient-profile-glucose",
        Some(SugarProfile::Lactose) => "ingredient-profile-lactose",
        Some(SugarProfile::Honey) => "ingredient-profile-honey",
        Some(SugarProfile::GlucoseSyrup { .. }) => "ingredient-profile-glucose-syrup",
        Some(SugarProfile::Own { .. }) => "ingredient-profile-own",
    }
}

fn profile_ui(ui: &mut Ui, speaker: Speaker<'_>, sheet: &mut Sheet<'_, Ingredient>) {
    let profile = sheet.item.composition.sugar_profile;
    let message = profile_message(profile.as_ref());
    let same = |one: Option<SugarProfile>| profile_message(one.as_ref()) == message;
    // The kind in hand stands in the menu with the numbers that it has.
    let all = PROFILES.map(|known| if same(known) { profile } else { known });
    sheet.row(ui, speaker.word("ingredient-profile"), |sheet, ui| {
        let word = |profile: &Option<SugarProfile>| {
            speaker.word(profile_message(profile.as_ref())).to_owned()
        };
        sheet.choice(
            ui,
            &Entry::wide("profile", speaker.word("ingredient-profile-named")),
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
            let words = speaker.word("ingredient-dextrose-equivalent");
            quiet_ui(ui, words);
            let name = capitalised(words);
            let spot = Entry::number("dextrose", &name).width(48.0);
            sheet.required(
                ui,
                &spot,
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
        fractions_ui(ui, speaker, sheet, fractions);
    }
}

/// Messages of the sugars, in the order of the fractions.
const SUGARS: [&str; 6] = [
    "measurand-sucrose",
    "measurand-glucose",
    "measurand-fructose",
    "measurand-lactose",
    "measurand-maltose",
    "ingredient-other-sugar",
];

/// The fractions of the shop's own profile.
fn fractions_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    sheet: &mut Sheet<'_, Ingredient>,
    fractions: [f64; 6],
) {
    for (at, message) in SUGARS.into_iter().enumerate() {
        let sugar = speaker.word(message);
        let field = FieldName::at("fraction", at);
        let name = say!(speaker, "ingredient-fraction", sugar: sugar);
        sheet.row(ui, &format!("\u{2007}\u{2007}{sugar}"), |sheet, ui| {
            sheet.required(
                ui,
                &Entry::number(field, &name),
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

/// Messages of what somebody says who has tasted it against the one in use, and how strong that is per gram.
///
/// The steps are a fifth to two fifths (common practice, no source); the note is taken for ±10 %.
const BENCH_NOTES: [(&str, f64); 5] = [
    ("ingredient-bench-much-weaker", 0.6),
    ("ingredient-bench-weaker", 0.8),
    ("ingredient-bench-equal", 1.0),
    ("ingredient-bench-stronger", 1.25),
    ("ingredient-bench-much-stronger", 1.6),
];

/// Relative standard uncertainty of a bench note (assumed).
const BENCH_UNCERTAINTY: f64 = 0.10;

/// "much weaker, about 0.6"; what is as strong needs no figure.
fn bench_words(speaker: Speaker<'_>, message: &str, strength: f64) -> String {
    let note = speaker.word(message);
    if is_strength(strength, 1.0) {
        return note.to_owned();
    }
    let strength = speaker.trimmed(strength, "", 2);
    say!(speaker, "ingredient-bench-about", note: note, strength: strength)
}

fn is_strength(one: f64, other: f64) -> bool {
    (one - other).abs() < 1e-9
}

fn flavours_ui(ui: &mut Ui, speaker: Speaker<'_>, sheet: &mut Sheet<'_, Ingredient>) {
    let flavours = sheet.item.composition.flavours.clone();
    let tastes_of = speaker.word("ingredient-tastes-of");
    for (at, flavour) in flavours.iter().enumerate() {
        let flavour_name = name_as_shown(&flavour.name);
        let mut removed = false;
        let words = if at == 0 { tastes_of } else { "" };
        sheet.row(ui, words, |sheet, ui| {
            let spot = Entry::wide(
                FieldName::flavour(at),
                speaker.word("ingredient-flavour-named"),
            )
            .width(112.0)
            .hint(speaker.word("ingredient-flavour-hint"));
            sheet.text(ui, &spot, &flavour.name, |item, name| {
                item.composition.flavours[at].name = name;
            });
            bench_note_ui(ui, speaker, sheet, flavour, at);
            let words = match flavour_name.as_ref() {
                "" => speaker.word("ingredient-remove-flavour").to_owned(),
                name => say!(speaker, "ingredient-remove", item: name),
            };
            removed = icon_button(ui, Icon::Delete, &words, &words).clicked();
        });
        ui.horizontal(|ui| {
            ui.spacing_mut().item_spacing.x = grid::TIGHT;
            words_ui(ui, "", WORDS);
            let field = FieldName::at("flavour-strength", at);
            let name = say!(speaker, "ingredient-flavour-strength", flavour: flavour_name);
            let asked = Asked {
                field,
                name: &name,
                unit: speaker.word("ingredient-per-gram"),
                unit_width: 52.0,
                factor: 1.0,
                first: Evidence::Assumed,
            };
            sheet.figure(ui, &asked, flavour.per_gram, |item, figure| {
                item.composition.flavours[at].per_gram = figure;
            });
        });
        sheet.errors_ui(ui, BEFORE_FIELDS);
        if removed {
            sheet.change(FieldName::flavour(at), |item| {
                drop(item.composition.flavours.remove(at));
            });
            for place in at..flavours.len() {
                sheet.forget_draft(FieldName::flavour(place));
                sheet.forget_draft(FieldName::at("flavour-strength", place));
            }
            return;
        }
    }
    let words = if flavours.is_empty() { tastes_of } else { "" };
    sheet.row(ui, words, |sheet, ui| {
        if sheet.adds(ui, "flavour", speaker.word("ingredient-add-flavour")) {
            let flavour = FlavourStrength {
                name: String::new(),
                per_gram: None,
            };
            sheet.change("flavour", |item| item.composition.flavours.push(flavour));
        }
    });
}

/// The quick word for how strong a flavour is.
fn bench_note_ui(
    ui: &mut Ui,
    speaker: Speaker<'_>,
    sheet: &mut Sheet<'_, Ingredient>,
    flavour: &FlavourStrength,
    at: usize,
) {
    let known = flavour.per_gram.map(|figure| figure.value);
    let is = |value: f64| known.is_some_and(|known| is_strength(known, value));
    let word = match known {
        None => speaker.word("ingredient-bench-not-tasted").to_owned(),
        Some(_) => BENCH_NOTES
            .iter()
            .find(|(_, value)| is(*value))
            .map_or_else(
                || speaker.evidence_kind(Evidence::Measured).to_owned(),
                |(message, value)| bench_words(speaker, message, *value),
            ),
    };
    let mut taken = None;
    let note = FieldName::at("flavour-bench-note", at);
    let (focus, name) = (
        sheet.focus(note.clone()),
        speaker.word("ingredient-bench-note"),
    );
    word_menu_ui(ui, &focus, name, &word, |ui| {
        let assumed = speaker.word("ingredient-bench-assumed");
        if ui
            .add(Button::selectable(known.is_none(), assumed))
            .clicked()
        {
            taken = Some(None);
        }
        for (message, value) in BENCH_NOTES {
            let words = bench_words(speaker, message, value);
            if ui.add(Button::selectable(is(value), words)).clicked() {
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
        sheet.change(note, |item| {
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

fn sweetener_message(sweetener: HighPotencySweetener) -> &'static str {
    match sweetener {
        HighPotencySweetener::Sucralose => "ingredient-sucralose",
        HighPotencySweetener::Aspartame => "ingredient-aspartame",
        HighPotencySweetener::AcesulfameK => "ingredient-acesulfame-k",
        HighPotencySweetener::RebaudiosideA => "ingredient-rebaudioside-a",
        HighPotencySweetener::Stevioside => "ingredient-stevioside",
        HighPotencySweetener::Saccharin => "ingredient-saccharin",
    }
}

fn sweeteners_ui(ui: &mut Ui, speaker: Speaker<'_>, sheet: &mut Sheet<'_, Ingredient>) {
    let amounts = sheet.item.composition.high_potency.clone();
    for (at, amount) in amounts.iter().enumerate() {
        let message = sweetener_message(amount.sweetener);
        let word = speaker.word(message);
        let field = FieldName::of("sweetener", Which::Sweetener(amount.sweetener));
        let name = say!(speaker, "ingredient-sweetener-milligrams", sweetener: word);
        let mut removed = false;
        sheet.row(ui, word, |sheet, ui| {
            let asked = Asked {
                field: field.clone(),
                name: &name,
                unit: "mg",
                unit_width: 24.0,
                factor: 1.0,
                first: Evidence::SpecSheet,
            };
            sheet.figure(ui, &asked, amount.milligrams, |item, figure| {
                item.composition.high_potency[at].milligrams = figure;
            });
            let words = say!(speaker, "ingredient-remove", item: word);
            removed = icon_button(ui, Icon::Delete, &words, &words).clicked();
        });
        if removed {
            sheet.change(field.clone(), |item| {
                item.composition.high_potency.remove(at);
            });
            sheet.forget_draft(field);
            return;
        }
    }
    let words = if amounts.is_empty() {
        speaker.word("ingredient-sweeteners")
    } else {
        ""
    };
    sheet.row(ui, words, |sheet, ui| {
        let mut added = None;
        let name = speaker.word("ingredient-sweetener-named");
        let words = speaker.word("ingredient-add-sweetener");
        word_menu_ui(ui, &sheet.focus("sweetener"), name, words, |ui| {
            let free = |sweetener: &HighPotencySweetener| {
                amounts.iter().all(|known| known.sweetener != *sweetener)
            };
            for sweetener in SWEETENERS.into_iter().filter(free) {
                let word = speaker.word(sweetener_message(sweetener));
                if ui.button(word).clicked() {
                    added = Some(sweetener);
                }
            }
        });
        if let Some(sweetener) = added {
            let amount = HighPotencyAmount {
                sweetener,
                milligrams: None,
            };
            sheet.change("sweetener", |item| {
                item.composition.high_potency.push(amount);
            });
        }
    });
}
