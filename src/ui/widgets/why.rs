//! Why a number is what it is: what the lines bring, the law behind it, and what would narrow it.

use egui::{RichText, Ui};

use super::figure_rows::row;
use super::name::name_ui;
use super::role_colour;
use super::share_bar::share_bar_ui;
use crate::balance::{Lens, Measurand};
use crate::quantity::show_number;
use crate::say::say;
use crate::ui::screen::Screen;
use crate::ui::spreadsheet::{self, Cell, Table, copy_ui};
use crate::ui::theme::{self, TypeStyle, grid};

/// How many causes of doubt are told.
const CAUSES: usize = 3;

/// Room for the name of a line, in points.
const NAME: f32 = 45.0 * grid::STEP;

/// The answer to "why this number".
pub fn why_ui(ui: &mut Ui, screen: &Screen<'_>, measurand: Measurand) {
    let palette = theme::palette(ui.visuals());
    let speaker = screen.speaker;
    let row = row(speaker, screen.balance, screen.lens, measurand);
    let title = say!(speaker, "widget-why-title", figure: row.words(speaker));
    ui.label(
        RichText::new(title)
            .text_style(TypeStyle::Strong.into())
            .color(palette.text_strong),
    );
    ui.label(speaker.formula(measurand));
    if let Some(lens) = lens_of(measurand) {
        ui.add_space(grid::TIGHT);
        ui.scope(|ui| shares_ui(ui, screen, lens));
        let of = say!(speaker, "widget-why-lines", figure: &row.name);
        copy_ui(ui, &of, || as_table(screen, lens));
    }
    ui.add_space(grid::TIGHT);
    doubt_ui(ui, screen, measurand);
    granted_ui(ui, screen, measurand);
    if let Some(nutrient) = measurand.nutrient() {
        let evidence = speaker.evidence(screen.balance, nutrient);
        if !evidence.is_empty() {
            let text = say!(
                speaker,
                "widget-why-evidence",
                nutrient: speaker.nutrient(nutrient),
                evidence: evidence.join("; ")
            );
            ui.add_space(grid::TIGHT);
            ui.label(
                RichText::new(text)
                    .text_style(TypeStyle::Small.into())
                    .color(palette.text_quiet),
            );
        }
    }
}

/// The lens that divides a figure among the lines.
fn lens_of(measurand: Measurand) -> Option<Lens> {
    match measurand {
        Measurand::TotalSugar => Some(Lens::Sugar),
        Measurand::Sweetness => Some(Lens::Sweetness),
        Measurand::ServingTemperature => Some(Lens::Heat),
        Measurand::Cost => Some(Lens::Cost),
        Measurand::EnergyKj | Measurand::EnergyKcal => Some(Lens::Energy),
        Measurand::TeaSolids | Measurand::TeaStrength => Some(Lens::Tea),
        _ => None,
    }
}

fn shares_ui(ui: &mut Ui, screen: &Screen<'_>, lens: Lens) {
    let palette = theme::palette(ui.visuals());
    let (unit, decimals) = unit_and_decimals(screen, lens);
    let lines = &screen.balance.lines;
    let whole = screen.balance.whole_through(lens);
    let signed = lens == Lens::Heat;
    let speaker = screen.speaker;
    let not_stated = speaker.word("widget-not-stated");
    ui.spacing_mut().item_spacing.y = 0.0;
    for line in lines {
        let share = line.through(lens);
        let text = share.map_or_else(
            || not_stated.to_owned(),
            |share| format!("{} {unit}", speaker.number(share, decimals)),
        );
        share_row(ui, &speaker.ingredient(&line.ingredient), |ui| {
            let lit = screen.lit == Some(&line.line);
            share_bar_ui(
                ui,
                share,
                whole,
                signed,
                &text,
                role_colour(palette, line.role),
                lit,
            );
        });
    }
    let Some((rest, name)) = rest_of(screen, lens) else {
        return;
    };
    let text = format!("{} {unit}", speaker.number(rest, decimals));
    share_row(ui, name, |ui| {
        share_bar_ui(
            ui,
            Some(rest),
            whole,
            signed,
            &text,
            palette.text_quiet,
            false,
        );
    });
}

/// What shares through a lens are shown in.
fn unit_and_decimals<'book>(screen: &Screen<'book>, lens: Lens) -> (&'book str, usize) {
    match lens {
        Lens::Cost => (&screen.book.settings.currency, 2),
        _ => (lens.unit(), 1),
    }
}

/// What no line brings, and what does.
fn rest_of(screen: &Screen<'_>, lens: Lens) -> Option<(f64, &'static str)> {
    let rest = screen.balance.rest_through(lens)?;
    let name = match lens {
        Lens::Heat => "widget-why-cup-and-shaker",
        _ => "widget-why-cup-and-more",
    };
    Some((rest, screen.speaker.word(name)))
}

/// What the lines bring, for a spreadsheet.
fn as_table(screen: &Screen<'_>, lens: Lens) -> Table {
    let (unit, decimals) = unit_and_decimals(screen, lens);
    let speaker = screen.speaker;
    let share = spreadsheet::head(speaker.lens(lens), unit);
    let mut table = Table::new([speaker.word("widget-why-ingredient"), share.as_str()]);
    let figure = |share: f64| Cell::figure(&show_number(share, decimals));
    for line in &screen.balance.lines {
        let share = line.through(lens);
        table.row([
            Cell::words(&speaker.ingredient(&line.ingredient)),
            share.map_or_else(|| Cell::words(speaker.word("widget-not-stated")), figure),
        ]);
    }
    if let Some((rest, name)) = rest_of(screen, lens) {
        table.row([Cell::words(name), figure(rest)]);
    }
    table
}

fn share_row(ui: &mut Ui, name: &str, bar: impl FnOnce(&mut Ui)) {
    ui.horizontal(|ui| {
        let size = egui::vec2(NAME, grid::TARGET);
        ui.allocate_ui_with_layout(
            size,
            egui::Layout::left_to_right(egui::Align::Center),
            |ui| {
                ui.set_min_width(NAME);
                let colour = theme::palette(ui.visuals()).text_normal;
                name_ui(ui, name, TypeStyle::Body, colour, NAME);
            },
        );
        bar(ui);
    });
}

/// What packs do not print and the figure takes for granted.
fn granted_ui(ui: &mut Ui, screen: &Screen<'_>, measurand: Measurand) {
    let palette = theme::palette(ui.visuals());
    let assumptions = screen.balance.assumptions.iter();
    let concerned: Vec<String> = assumptions
        .filter(|(_, assumption)| assumption.concerns(measurand))
        .map(|(whose, assumption)| screen.speaker.assumption(whose, assumption))
        .collect();
    if concerned.is_empty() {
        return;
    }
    ui.add_space(grid::TIGHT);
    let title = screen.speaker.word("widget-why-assumed");
    ui.label(RichText::new(title).text_style(TypeStyle::Strong.into()));
    for words in concerned {
        ui.label(
            RichText::new(words)
                .text_style(TypeStyle::Small.into())
                .color(palette.text_quiet),
        );
    }
}

fn doubt_ui(ui: &mut Ui, screen: &Screen<'_>, measurand: Measurand) {
    let palette = theme::palette(ui.visuals());
    let causes = screen.balance.largest_causes(measurand.slot(), CAUSES);
    if causes.is_empty() {
        return;
    }
    let speaker = screen.speaker;
    ui.label(RichText::new(speaker.word("widget-why-doubt")).text_style(TypeStyle::Strong.into()));
    for (cause, part) in causes {
        let words = speaker.cause(screen.balance, cause);
        let mut job = egui::text::LayoutJob::default();
        let format = |style: TypeStyle, colour| egui::TextFormat::simple(style.font_id(), colour);
        let body = format(TypeStyle::Body, palette.text_normal);
        job.append(
            &format!("{} %  ", speaker.number(part * 100.0, 0)),
            0.0,
            format(TypeStyle::Strong, palette.text_strong),
        );
        job.append(&words.what, 0.0, body);
        if let Some(narrow) = words.narrow {
            job.append(
                &format!(" {}", say!(speaker, "widget-why-narrow", narrow: narrow)),
                0.0,
                format(TypeStyle::Body, palette.text_quiet),
            );
        }
        job.wrap.max_width = ui.available_width();
        ui.label(job);
    }
}
