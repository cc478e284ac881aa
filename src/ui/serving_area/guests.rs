//! What a guest asks: allergens, vegan, milk; and what the statements of ingredients ask in turn.

use std::collections::BTreeSet;

use egui::{Label, RichText, Ui};

use super::sheet;
use crate::balance::{AllergenSummary, Verdict};
use crate::book::Allergen;
use crate::say::Speaker;
use crate::ui::Screen;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::wording;
use crate::ui::words;
use crate::workbench::Serving;

pub(super) fn guests_ui(ui: &mut Ui, screen: &Screen<'_>, serving: &Serving) {
    let summary = &screen.balance.allergens;
    let speaker = Speaker::new(screen.book);
    let is_silent = summary.contains.is_empty() && summary.may_contain.is_empty();
    if is_silent && summary.not_stated.is_empty() {
        sheet::words_ui(ui, "No pack names an allergen.");
    }
    said_ui(ui, "Contains", &speaker.allergens(&summary.contains));
    said_ui(ui, "May contain", &speaker.allergens(&summary.may_contain));
    said_ui(
        ui,
        "Not stated by",
        &speaker.ingredients(&summary.not_stated),
    );
    if let Some(words) = us_words(summary) {
        sheet::quiet_ui(ui, words);
    }
    ui.add_space(grid::TIGHT);
    sheet::words_ui(ui, claim("Vegan", "Not vegan", screen.balance.vegan));
    sheet::words_ui(
        ui,
        claim(
            "Free of dairy",
            "Not free of dairy",
            screen.balance.dairy_free,
        ),
    );
    sheet::quiet_ui(
        ui,
        "By what the packs state of their ingredients; shared scoops, shakers and blenders carry traces.",
    );
    questions_ui(ui, screen, serving);
}

/// The same under the nine names of the US law; nothing when it names none of them.
fn us_words(summary: &AllergenSummary) -> Option<String> {
    let named = |allergens: &BTreeSet<Allergen>| -> Vec<&str> {
        allergens
            .iter()
            .filter_map(|allergen| allergen.us_word())
            .collect()
    };
    let (contains, may_contain) = (named(&summary.contains), named(&summary.may_contain));
    let parts: Vec<String> = [("contains", contains), ("may contain", may_contain)]
        .into_iter()
        .filter(|(_, names)| !names.is_empty())
        .map(|(verb, names)| format!("{verb} {}", names.join(", ")))
        .collect();
    (!parts.is_empty()).then(|| format!("The nine major US allergens: {}.", parts.join("; ")))
}

/// "Contains  milk, soybeans"; nothing for an empty list.
fn said_ui(ui: &mut Ui, words: &str, list: &str) {
    if list.is_empty() {
        return;
    }
    let palette = theme::palette(ui.visuals());
    let mut job = egui::text::LayoutJob::default();
    let format = |style: TypeStyle, colour| egui::TextFormat::simple(style.font_id(), colour);
    job.append(
        &format!("{words} "),
        0.0,
        format(TypeStyle::Body, palette.text_quiet),
    );
    job.append(list, 0.0, format(TypeStyle::Strong, palette.text_strong));
    ui.scope(|ui| {
        ui.set_max_width(ui.available_width().min(sheet::MOST_WIDTH));
        ui.add(Label::new(job).wrap());
    });
}

fn claim(yes: &str, no: &str, verdict: Verdict) -> String {
    match verdict {
        Verdict::Yes => format!("{yes} by its ingredients."),
        Verdict::No => format!("{no}."),
        Verdict::NotKnown => {
            format!("{yes} or not: not known, an ingredient does not state it or is contradicted.")
        }
    }
}

/// Questions to whoever has the packs in hand; they change nothing by themselves.
fn questions_ui(ui: &mut Ui, screen: &Screen<'_>, serving: &Serving) {
    if serving.questions.is_empty() {
        return;
    }
    words::subheading_ui(ui, "Questions about the ingredient lists");
    let palette = theme::palette(ui.visuals());
    for finding in &serving.questions {
        let name = wording::ingredient_name(screen.book, &finding.ingredient);
        sheet::words_ui(
            ui,
            words::capitalised(&Speaker::new(screen.book).question(finding)),
        );
        let source = format!(
            "From the ingredient list of {}: “{}”",
            name, finding.matched_words
        );
        ui.label(
            RichText::new(source)
                .font(TypeStyle::Small.font_id())
                .color(palette.text_quiet),
        );
        ui.add_space(grid::TIGHT);
    }
    sheet::quiet_ui(
        ui,
        "The pack in your hand is right. Words that name an allergen or an animal count until the entry is put right.",
    );
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn us_law_names_nine_of_the_fourteen() {
        let named = Allergen::ALL.iter().filter_map(|one| one.us_word());
        assert_eq!(named.count(), 9);
        let summary = AllergenSummary {
            contains: [Allergen::Nuts, Allergen::Celery].into(),
            may_contain: [Allergen::Sesame].into(),
            ..AllergenSummary::default()
        };
        assert_eq!(
            us_words(&summary).as_deref(),
            Some("The nine major US allergens: contains tree nuts; may contain sesame.")
        );
        assert_eq!(us_words(&AllergenSummary::default()), None);
    }
}
