//! What a guest asks: allergens, vegan, milk; and what the statements of ingredients ask in turn.

use std::collections::BTreeSet;

use egui::{Label, RichText, Ui};

use super::sheet;
use crate::balance::{AllergenSummary, Verdict};
use crate::book::Allergen;
use crate::say::{Speaker, say};
use crate::ui::Screen;
use crate::ui::theme::{self, TypeStyle, grid};
use crate::ui::widgets::facts::MOST_WIDTH;
use crate::ui::words;
use crate::workbench::Serving;

pub(super) fn guests_ui(ui: &mut Ui, screen: &Screen<'_>, serving: &Serving) {
    let summary = &screen.balance.allergens;
    let speaker = screen.speaker;
    let is_silent = summary.contains.is_empty() && summary.may_contain.is_empty();
    if is_silent && summary.is_complete() {
        sheet::words_ui(ui, speaker.word("serving-guests-none"));
    }
    said_ui(
        ui,
        speaker.word("serving-guests-contains"),
        &speaker.allergens(&summary.contains),
    );
    said_ui(
        ui,
        speaker.word("serving-guests-may-contain"),
        &speaker.allergens(&summary.may_contain),
    );
    said_ui(
        ui,
        speaker.word("serving-guests-not-stated"),
        &speaker.ingredients(&summary.not_stated),
    );
    for silence in speaker.allergen_silences(summary) {
        sheet::words_ui(ui, words::capitalised(&silence));
    }
    if let Some(words) = us_words(speaker, summary) {
        sheet::quiet_ui(ui, words);
    }
    ui.add_space(grid::TIGHT);
    sheet::words_ui(
        ui,
        speaker.word(match screen.balance.vegan {
            Verdict::Yes => "serving-guests-vegan-yes",
            Verdict::No => "serving-guests-vegan-no",
            Verdict::NotKnown => "serving-guests-vegan-not-known",
        }),
    );
    sheet::words_ui(
        ui,
        speaker.word(match screen.balance.dairy_free {
            Verdict::Yes => "serving-guests-dairy-free-yes",
            Verdict::No => "serving-guests-dairy-free-no",
            Verdict::NotKnown => "serving-guests-dairy-free-not-known",
        }),
    );
    sheet::quiet_ui(ui, speaker.word("serving-guests-basis"));
    questions_ui(ui, screen, serving);
}

/// The same under the nine names of the US law; nothing when it names none of them.
fn us_words(speaker: Speaker<'_>, summary: &AllergenSummary) -> Option<String> {
    let named = |message: &str, allergens: &BTreeSet<Allergen>| {
        let names: Vec<&str> = allergens
            .iter()
            .filter_map(|allergen| speaker.us_allergen(*allergen))
            .collect();
        (!names.is_empty()).then(|| say!(speaker, message, allergens: speaker.and(&names)))
    };
    let clauses = [
        named("allergens-contains", &summary.contains),
        named("allergens-may-contain", &summary.may_contain),
    ];
    let clauses = clauses
        .into_iter()
        .flatten()
        .reduce(|before, after| say!(speaker, "clauses", before: before, after: after))?;
    Some(say!(speaker, "serving-guests-us", clauses: clauses))
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
        ui.set_max_width(ui.available_width().min(MOST_WIDTH));
        ui.add(Label::new(job).wrap());
    });
}

/// Questions to whoever has the packs in hand; they change nothing by themselves.
fn questions_ui(ui: &mut Ui, screen: &Screen<'_>, serving: &Serving) {
    if serving.questions.is_empty() {
        return;
    }
    let speaker = screen.speaker;
    words::subheading_ui(ui, speaker.word("serving-guests-questions"));
    let palette = theme::palette(ui.visuals());
    for finding in &serving.questions {
        let name = speaker.ingredient(&finding.ingredient);
        sheet::words_ui(ui, words::capitalised(&speaker.question(finding)));
        let source = say!(
            speaker,
            "serving-guests-question-source",
            ingredient: name,
            words: &finding.matched_words
        );
        ui.label(
            RichText::new(source)
                .font(TypeStyle::Small.font_id())
                .color(palette.text_quiet),
        );
        ui.add_space(grid::TIGHT);
    }
    sheet::quiet_ui(ui, speaker.word("serving-guests-questions-basis"));
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn us_law_names_nine_of_the_fourteen() {
        let speaker = Speaker::without_book();
        let named = |allergen: &Allergen| speaker.us_allergen(*allergen).is_some();
        assert_eq!(Allergen::ALL.iter().filter(|one| named(one)).count(), 9);
        let summary = AllergenSummary {
            contains: [Allergen::Nuts, Allergen::Celery].into(),
            may_contain: [Allergen::Sesame].into(),
            ..AllergenSummary::default()
        };
        assert_eq!(
            us_words(speaker, &summary).as_deref(),
            Some("The nine major US allergens: contains tree nuts; may contain sesame.")
        );
        assert_eq!(us_words(speaker, &AllergenSummary::default()), None);
    }
}
