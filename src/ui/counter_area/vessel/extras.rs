//! What goes on a cup and with it: closures with their head room, straws and sleeves.

use egui::Ui;

use crate::book::{Closure, ClosureKind, Serviceware, ServicewareKind, Vessel};
use crate::edit::FieldName;
use crate::say::say;
use crate::ui::counter_area::item::Counter;
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::icons::{Icon, icon_button};
use crate::ui::widgets::form::{Entry, Sheet, section_ui};
use crate::ui::words::quiet_ui;

/// The fields of a closure that are typed in.
const CLOSURE_FIELDS: [&str; 3] = ["closure-room", "closure-price", "closure-factor"];

const CLOSURES: [ClosureKind; 3] = [ClosureKind::Open, ClosureKind::Lid, ClosureKind::Film];

pub(super) fn closures_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Vessel>,
    before: &Vessel,
) {
    let speaker = counter.speaker;
    section_ui(ui, speaker.word("counter-closures"));
    if before.closures.is_empty() {
        quiet_ui(ui, speaker.word("counter-closures-none"));
    }
    for (at, closure) in before.closures.iter().enumerate() {
        if !closure_ui(ui, counter, sheet, closure, at) {
            sheet.change(FieldName::at("closure", at), |item| {
                item.closures.remove(at);
            });
            for place in at..before.closures.len() {
                for column in CLOSURE_FIELDS {
                    sheet.forget_draft(FieldName::at(column, place));
                }
            }
            break;
        }
    }
    if sheet.adds(ui, "closure", speaker.word("counter-closure-add")) {
        let closure = Closure {
            kind: ClosureKind::Lid,
            price: None,
            head_room: 0.0,
            cooling_factor: None,
        };
        sheet.change("closure", |item| item.closures.push(closure));
    }
}

/// One closure; `false` when it is to go.
fn closure_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Vessel>,
    closure: &Closure,
    at: usize,
) -> bool {
    let mut stays = true;
    let speaker = counter.speaker;
    let word = speaker.closure(closure.kind);
    let place = if at == 0 {
        speaker.word("counter-closure-first")
    } else {
        speaker.word("counter-closure-other")
    };
    sheet.row(ui, place, |sheet, ui| {
        let field = FieldName::at("closure", at);
        let all_word = |kind: &ClosureKind| speaker.closure(*kind).to_owned();
        sheet.choice(
            ui,
            &Entry::wide(field, speaker.word("counter-closure-named")),
            &closure.kind,
            &CLOSURES,
            all_word,
            |item, kind| {
                item.closures[at].kind = kind;
            },
        );
        let words = say!(speaker, "counter-closure-remove", closure: word);
        stays = !icon_button(ui, Icon::Delete, &words, speaker.word("counter-take-out")).clicked();
    });
    sheet.row(ui, "", |sheet, ui| {
        quiet_ui(ui, speaker.word("counter-closure-leaves")).explained(Term::HeadRoom);
        let (field, name) = (
            FieldName::at("closure-room", at),
            say!(speaker, "counter-closure-room-named", closure: word),
        );
        sheet.required(
            ui,
            &Entry::number(field, &name).width(48.0).metric("ml"),
            closure.head_room,
            |item, room| {
                item.closures[at].head_room = room;
            },
        );
        quiet_ui(ui, speaker.word("counter-closure-costs"));
        let (field, name) = (
            FieldName::at("closure-price", at),
            say!(speaker, "counter-price-of", item: word),
        );
        sheet.number(
            ui,
            &Entry::number(field, &name).width(52.0).hint("–"),
            closure.price,
            |item, price| {
                item.closures[at].price = price;
            },
        );
        quiet_ui(ui, &counter.book.settings.currency);
    });
    sheet.row(ui, "", |sheet, ui| {
        quiet_ui(ui, speaker.word("counter-closure-cools"));
        let (field, name) = (
            FieldName::at("closure-factor", at),
            say!(speaker, "counter-closure-factor-named", closure: word),
        );
        // A lid of which nothing is stated is taken to cool like a published one.
        let hint = if closure.kind == ClosureKind::Open {
            "1"
        } else {
            "–"
        };
        sheet.number(
            ui,
            &Entry::number(field, &name).width(48.0).hint(hint),
            closure.cooling_factor,
            |item, factor| {
                item.closures[at].cooling_factor = factor;
            },
        );
        quiet_ui(ui, speaker.word("counter-closure-cools-unit"));
    });
    stays
}

const SERVICEWARE: [ServicewareKind; 3] = [
    ServicewareKind::Straw { wide: false },
    ServicewareKind::Straw { wide: true },
    ServicewareKind::Sleeve,
];

pub(super) fn serviceware_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Vessel>,
    before: &Vessel,
) {
    let speaker = counter.speaker;
    section_ui(ui, speaker.word("counter-ware"));
    for (at, ware) in before.serviceware.iter().enumerate() {
        let word = speaker.serviceware(ware.kind);
        let mut removed = false;
        sheet.row(ui, speaker.word("counter-ware-first"), |sheet, ui| {
            let field = FieldName::at("ware", at);
            let all_word = |kind: &ServicewareKind| speaker.serviceware(*kind).to_owned();
            sheet.choice(
                ui,
                &Entry::wide(field, speaker.word("counter-ware-named")),
                &ware.kind,
                &SERVICEWARE,
                all_word,
                |item, kind| {
                    item.serviceware[at].kind = kind;
                },
            );
            quiet_ui(ui, speaker.word("counter-ware-price"));
            let (field, name) = (
                FieldName::at("ware-price", at),
                say!(speaker, "counter-price-of", item: word),
            );
            sheet.number(
                ui,
                &Entry::number(field, &name).width(52.0).hint("–"),
                ware.price,
                |item, price| {
                    item.serviceware[at].price = price;
                },
            );
            quiet_ui(ui, &counter.book.settings.currency);
            removed = icon_button(
                ui,
                Icon::Delete,
                &say!(speaker, "counter-ware-remove", item: word),
                speaker.word("counter-take-out"),
            )
            .clicked();
        });
        if removed {
            sheet.change(FieldName::at("ware", at), |item| {
                item.serviceware.remove(at);
            });
            for place in at..before.serviceware.len() {
                sheet.forget_draft(FieldName::at("ware-price", place));
            }
            break;
        }
    }
    if sheet.adds(ui, "ware", speaker.word("counter-ware-add")) {
        let ware = Serviceware {
            kind: ServicewareKind::Straw { wide: false },
            price: None,
        };
        sheet.change("ware", |item| item.serviceware.push(ware));
    }
}
