//! The list of figures: one grid for all of them, aligned at the decimal sign; a click tells why a number is what it is.

pub use super::figure_rows::{FigureGroup, FigureRow, FigureText, groups, row};

use egui::{
    Align2, Color32, Popup, PopupCloseBehavior, Rect, RectAlign, Response, RichText, Role,
    ScrollArea, Sense, Ui, WidgetInfo, pos2, vec2,
};

use super::figure;
use super::why::why_ui;
use crate::say::{Speaker, say};
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::screen::Screen;
use crate::ui::spreadsheet::{Cell, Table, copy_ui};
use crate::ui::theme::{self, Palette, TypeStyle, grid};
use crate::ui::value::Value;

/// Height of a row with one line of text, in points.
const ROW: f32 = 6.0 * grid::STEP;
/// Height of the line that says what is missing, in points.
const GAP_LINE: f32 = 4.0 * grid::STEP;
/// Room for the digits before the decimal sign, with "≥ ", in points.
const BEFORE_DECIMAL: f32 = 11.0 * grid::STEP;
/// Room for the decimals, in points.
const DECIMALS: f32 = 9.5 * grid::STEP;
/// Room for "± 0.12", in points.
const UNCERTAINTY: f32 = 12.0 * grid::STEP;
/// Room for the unit, in points.
const UNIT: f32 = 15.0 * grid::STEP;
/// Room for the figure in 100 ml, in points.
const IN_100_ML: f32 = 17.0 * grid::STEP;
/// From this width on there is a column per 100 ml, in points.
const WIDE: f32 = 100.0 * grid::STEP;
/// The widest list, in points: beyond it the eye loses the row.
const MOST_WIDTH: f32 = 115.0 * grid::STEP;
/// Width of the answer to "how this is worked out", in points.
const WHY_WIDTH: f32 = 100.0 * grid::STEP;

/// All figures of the version in hand.
pub fn figure_list_ui(ui: &mut Ui, screen: &Screen<'_>) {
    ui.scope(|ui| list_ui(ui, screen));
}

fn list_ui(ui: &mut Ui, screen: &Screen<'_>) {
    let palette = theme::palette(ui.visuals());
    let width = ui.available_width().min(MOST_WIDTH);
    let columns = Columns::new(width);
    ui.spacing_mut().item_spacing.y = 0.0;
    let column = ui.clip_rect();
    for (index, group) in groups(screen.speaker, screen.balance, screen.lens)
        .iter()
        .enumerate()
    {
        if index > 0 {
            ui.add_space(grid::EASY);
        }
        group_header(ui, screen.speaker, group.name, &columns, index == 0);
        for row in &group.rows {
            let response = row_ui(ui, screen.speaker, row, &columns);
            if !row.is_of_drink {
                continue;
            }
            let popup = Popup::from_toggle_button_response(&response);
            let beside = beside(column, response.rect, popup.get_expected_size());
            popup
                .close_behavior(PopupCloseBehavior::CloseOnClickOutside)
                .anchor(beside)
                .align(RectAlign::LEFT_START)
                .align_alternatives(&[RectAlign::RIGHT_START, RectAlign::BOTTOM_START])
                .gap(grid::EASY)
                .width(WHY_WIDTH)
                .accessible_name(say!(screen.speaker, "widget-why", figure: &row.name))
                .show(|ui| {
                    let most = column.height() - 2.0 * grid::APART;
                    // A window of egui is 400 points high at most unless it is told more.
                    ui.set_max_height(most);
                    let scroll = ScrollArea::vertical()
                        .max_height(most)
                        .auto_shrink([false, true]);
                    scroll.show(ui, |ui| why_ui(ui, screen, row.measurand));
                });
        }
    }
    copy_ui(ui, screen.speaker.word("widget-figures"), || {
        as_table(screen)
    });
    ui.add_space(grid::EASY);
    claims_ui(ui, screen, palette, width);
}

/// The figures for a spreadsheet.
fn as_table(screen: &Screen<'_>) -> Table {
    let heads = [
        "widget-figures-figure",
        "widget-figures-unit",
        "widget-figures-value",
        "widget-figures-doubt",
        "widget-figures-in-100-ml",
        "widget-figures-remark",
    ];
    let mut table = Table::new(heads.map(|message| screen.speaker.word(message)));
    for group in groups(screen.speaker, screen.balance, screen.lens) {
        table.heading(group.name);
        for row in group.rows {
            let value = Value::from(&row.text);
            let [figure, doubt] = Cell::figure_and_doubt(&value);
            table.row([
                Cell::words(&row.name),
                Cell::words(&row.unit),
                figure,
                doubt,
                Cell::figure(row.in_100_ml.as_deref().unwrap_or_default()),
                Cell::words(row.gap().unwrap_or_default()),
            ]);
        }
    }
    table
}

impl From<&FigureText> for Value {
    fn from(text: &FigureText) -> Self {
        match text {
            FigureText::Known { value, u } => Self {
                u: u.clone(),
                ..Self::digits(value)
            },
            FigureText::AtLeast { value, gap } => {
                Self::digits(value).at_least().with_gap(Some(gap.clone()))
            }
            FigureText::Said(words) => Self::digits(words.clone()),
            FigureText::NotKnown { gap } => Self::not_known(gap),
        }
    }
}

/// Where the answer to "why" is anchored: it stands beside the figures, level with its row, but ends within their column, so
/// that it covers neither them nor the cautions below.
fn beside(column: Rect, row: Rect, expected: Option<egui::Vec2>) -> Rect {
    let height = expected.map_or(0.0, |size| size.y);
    let lowest = (column.bottom() - height - grid::NEAR).max(column.top());
    Rect::from_min_max(pos2(row.left(), row.top().min(lowest)), row.max)
}

fn claims_ui(ui: &mut Ui, screen: &Screen<'_>, palette: &Palette, width: f32) {
    let speaker = screen.speaker;
    let claims = [
        speaker.vegan(screen.balance.vegan).to_owned(),
        say!(
            speaker,
            "widget-allergens",
            allergens: speaker.allergen_summary(&screen.balance.allergens)
        ),
    ];
    ui.scope(|ui| {
        ui.set_max_width(width);
        for claim in claims {
            ui.label(RichText::new(claim).color(palette.text_normal));
            ui.add_space(grid::TIGHT);
        }
        let source = speaker.word("widget-claims-source");
        ui.label(
            RichText::new(source)
                .text_style(TypeStyle::Small.into())
                .color(palette.text_quiet),
        );
    });
}

/// Where the columns stand, from the left edge of the list.
struct Columns {
    width: f32,
    decimal: f32,
    uncertainty: f32,
    unit: f32,
    in_100_ml: Option<f32>,
}

impl Columns {
    fn new(width: f32) -> Self {
        let is_wide = width >= WIDE;
        let right = width - if is_wide { IN_100_ML } else { 0.0 };
        let unit = right - UNIT;
        let uncertainty = unit - UNCERTAINTY;
        Self {
            width,
            decimal: uncertainty - DECIMALS,
            uncertainty,
            unit,
            in_100_ml: is_wide.then_some(width - DECIMALS),
        }
    }
}

fn group_header(ui: &mut Ui, speaker: Speaker<'_>, name: &str, columns: &Columns, is_first: bool) {
    let (rect, response) = ui.allocate_exact_size(vec2(columns.width, ROW), Sense::hover());
    response.widget_info(|| WidgetInfo::labeled(Role::Heading, true, name));
    let palette = theme::palette(ui.visuals());
    let small = TypeStyle::Small.font_id();
    let y = rect.center().y;
    ui.painter().text(
        pos2(rect.left(), y),
        Align2::LEFT_CENTER,
        name,
        small.clone(),
        palette.text_quiet,
    );
    if columns.in_100_ml.is_some() && is_first {
        let right = pos2(rect.right(), y);
        ui.painter().text(
            right,
            Align2::RIGHT_CENTER,
            speaker.word("widget-figures-in-100-ml"),
            small,
            palette.text_quiet,
        );
    }
}

fn row_ui(ui: &mut Ui, speaker: Speaker<'_>, row: &FigureRow, columns: &Columns) -> Response {
    let palette = theme::palette(ui.visuals());
    let small = TypeStyle::Small.font_id();
    let gap = row.gap().map(|gap| {
        ui.painter().layout(
            gap.to_owned(),
            small.clone(),
            palette.text_quiet,
            columns.width - grid::EASY,
        )
    });
    let gap_height = gap
        .as_ref()
        .map_or(0.0, |gap| gap.size().y.max(GAP_LINE) + grid::TIGHT);
    let (rect, response) =
        ui.allocate_exact_size(vec2(columns.width, ROW + gap_height), Sense::click());
    response.widget_info(|| WidgetInfo::labeled(Role::Button, true, row.words(speaker)));
    if !ui.is_rect_visible(rect) {
        return response;
    }
    figure::ground(ui, rect, &response, row.is_lens);
    let painter = ui.painter();
    let line = Rect::from_min_size(rect.min, vec2(rect.width(), ROW));
    let (style, colour) = if row.is_lens {
        (TypeStyle::Strong, palette.text_strong)
    } else {
        (TypeStyle::Body, palette.text_normal)
    };
    let y = line.center().y;
    let name_room = Rect::from_min_max(
        line.min,
        pos2(
            rect.left() + columns.decimal - BEFORE_DECIMAL,
            line.bottom(),
        ),
    );
    painter
        .with_clip_rect(name_room.intersect(painter.clip_rect()))
        .text(
            pos2(rect.left(), y),
            Align2::LEFT_CENTER,
            &row.name,
            style.font_id(),
            colour,
        );
    if let Some(gap) = gap {
        painter.galley(line.left_bottom(), gap, palette.text_quiet);
    }
    row_figure(ui, speaker, row, columns, line, (style, colour));
    let click = speaker.word("widget-figures-how");
    response.explained_with(Term::of_measurand(row.measurand), click)
}

fn row_figure(
    ui: &Ui,
    speaker: Speaker<'_>,
    row: &FigureRow,
    columns: &Columns,
    line: Rect,
    (style, colour): (TypeStyle, Color32),
) {
    let palette = theme::palette(ui.visuals());
    let y = line.center().y;
    let at = |x: f32| pos2(line.left() + x, y);
    let value = match &row.text {
        FigureText::Known { value, .. } => speaker.digits(value),
        FigureText::AtLeast { value, .. } => format!("≥ {}", speaker.digits(value)),
        FigureText::Said(_) | FigureText::NotKnown { .. } => {
            let x = columns.decimal - BEFORE_DECIMAL + grid::EASY;
            figure::quiet(ui, at(x), &row.figure(speaker));
            return;
        }
    };
    figure::digits(ui, at(columns.decimal), &value, (style, colour));
    if let FigureText::Known { u: Some(u), .. } = &row.text {
        let u = format!("± {}", speaker.digits(u));
        figure::quiet(ui, at(columns.uncertainty), &u);
    }
    figure::quiet(ui, at(columns.unit), &row.unit);
    if let (Some(x), Some(value)) = (columns.in_100_ml, &row.in_100_ml) {
        let look = (TypeStyle::Small, palette.text_quiet);
        figure::digits(ui, at(x), &speaker.digits(value), look);
    }
}
