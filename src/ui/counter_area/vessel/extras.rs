//! What goes on a cup and with it: closures with their head room, straws and sleeves.

use egui::Ui;

use crate::book::{Closure, ClosureKind, Serviceware, ServicewareKind, Vessel};
use crate::say::say;
use crate::ui::counter_area::Counter;
use crate::ui::counter_area::entry_sheet::{EntrySpot, Sheet, link_ui, section_ui};
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::icons::{Icon, icon_button};
use crate::ui::words::quiet_ui;

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
            sheet.change("closures", |item| {
                item.closures.remove(at);
            });
            for place in at..before.closures.len() {
                for column in ["room", "price", "factor"] {
                    sheet.forget_draft(&format!("closure {place} {column}"));
                }
            }
            break;
        }
    }
    if link_ui(ui, speaker.word("counter-closure-add")).clicked() {
        let closure = Closure {
            kind: ClosureKind::Lid,
            price: None,
            head_room: 0.0,
            cooling_factor: None,
        };
        sheet.change("closures", |item| item.closures.push(closure));
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
        let field = format!("closure {at} kind");
        let all_word = |kind: &ClosureKind| speaker.closure(*kind).to_owned();
        sheet.choice(
            ui,
            EntrySpot::wide(&field, speaker.word("counter-closure-named")),
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
            format!("closure {at} room"),
            say!(speaker, "counter-closure-room-named", closure: word),
        );
        sheet.required_in(
            ui,
            EntrySpot::number(&field, &name).width(48.0),
            "ml",
            closure.head_room,
            |item, room| {
                item.closures[at].head_room = room;
            },
        );
        quiet_ui(ui, speaker.word("counter-closure-costs"));
        let (field, name) = (
            format!("closure {at} price"),
            say!(speaker, "counter-price-of", item: word),
        );
        sheet.number(
            ui,
            EntrySpot::number(&field, &name).width(52.0).hint("–"),
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
            format!("closure {at} factor"),
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
            EntrySpot::number(&field, &name).width(48.0).hint(hint),
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
            let field = format!("ware {at} kind");
            let all_word = |kind: &ServicewareKind| speaker.serviceware(*kind).to_owned();
            sheet.choice(
                ui,
                EntrySpot::wide(&field, speaker.word("counter-ware-named")),
                &ware.kind,
                &SERVICEWARE,
                all_word,
                |item, kind| {
                    item.serviceware[at].kind = kind;
                },
            );
            quiet_ui(ui, speaker.word("counter-ware-price"));
            let (field, name) = (
                format!("ware {at} price"),
                say!(speaker, "counter-price-of", item: word),
            );
            sheet.number(
                ui,
                EntrySpot::number(&field, &name).width(52.0).hint("–"),
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
            sheet.change("serviceware", |item| {
                item.serviceware.remove(at);
            });
            for place in at..before.serviceware.len() {
                sheet.forget_draft(&format!("ware {place} price"));
            }
            break;
        }
    }
    if link_ui(ui, speaker.word("counter-ware-add")).clicked() {
        let ware = Serviceware {
            kind: ServicewareKind::Straw { wide: false },
            price: None,
        };
        sheet.change("serviceware", |item| item.serviceware.push(ware));
    }
}
