//! What goes on a cup and with it: closures with their head room, straws and sleeves.

use egui::Ui;

use crate::book::{Closure, ClosureKind, Serviceware, ServicewareKind, Vessel};
use crate::ui::counter_area::Counter;
use crate::ui::counter_area::sheet::{Sheet, Spot, link_ui, section_ui};
use crate::ui::glossary::{Explained as _, Term};
use crate::ui::icons::{Icon, icon_button};
use crate::ui::words::quiet_ui;

const CLOSURES: [ClosureKind; 3] = [ClosureKind::Open, ClosureKind::Lid, ClosureKind::Film];

fn closure_word(kind: ClosureKind) -> &'static str {
    match kind {
        ClosureKind::Open => "open",
        ClosureKind::Lid => "lid",
        ClosureKind::Film => "film",
    }
}

pub(super) fn closures_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Vessel>,
    before: &Vessel,
) {
    section_ui(ui, "Lid or film");
    if before.closures.is_empty() {
        quiet_ui(ui, "Stays open.");
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
    if link_ui(ui, "Add a closure").clicked() {
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
    let word = closure_word(closure.kind);
    sheet.row(ui, if at == 0 { "usually" } else { "or" }, |sheet, ui| {
        let field = format!("closure {at} kind");
        let all_word = |kind: &ClosureKind| closure_word(*kind).to_owned();
        sheet.choice(
            ui,
            Spot::wide(&field, "Closure"),
            &closure.kind,
            &CLOSURES,
            all_word,
            |item, kind| {
                item.closures[at].kind = kind;
            },
        );
        let words = format!("Take closure {word} out");
        stays = !icon_button(ui, Icon::Delete, &words, "Take it out").clicked();
    });
    sheet.row(ui, "", |sheet, ui| {
        quiet_ui(ui, "leaves").explained(Term::HeadRoom);
        let (field, name) = (
            format!("closure {at} room"),
            format!("Head room of the {word}"),
        );
        sheet.required_in(
            ui,
            Spot::number(&field, &name).width(48.0),
            "ml",
            closure.head_room,
            |item, room| {
                item.closures[at].head_room = room;
            },
        );
        quiet_ui(ui, "free, costs");
        let (field, name) = (
            format!("closure {at} price"),
            format!("Price of the {word}"),
        );
        sheet.number(
            ui,
            Spot::number(&field, &name).width(52.0).hint("–"),
            closure.price,
            |item, price| {
                item.closures[at].price = price;
            },
        );
        quiet_ui(ui, &counter.book.settings.currency);
    });
    sheet.row(ui, "", |sheet, ui| {
        quiet_ui(ui, "cools");
        let (field, name) = (
            format!("closure {at} factor"),
            format!("Cooling factor of the {word}"),
        );
        // A lid of which nothing is stated is taken to cool like a published one.
        let hint = if closure.kind == ClosureKind::Open {
            "1"
        } else {
            "–"
        };
        sheet.number(
            ui,
            Spot::number(&field, &name).width(48.0).hint(hint),
            closure.cooling_factor,
            |item, factor| {
                item.closures[at].cooling_factor = factor;
            },
        );
        quiet_ui(ui, "times as fast as open");
    });
    stays
}

const SERVICEWARE: [ServicewareKind; 3] = [
    ServicewareKind::Straw { wide: false },
    ServicewareKind::Straw { wide: true },
    ServicewareKind::Sleeve,
];

fn serviceware_word(kind: ServicewareKind) -> &'static str {
    match kind {
        ServicewareKind::Straw { wide: false } => "straw",
        ServicewareKind::Straw { wide: true } => "wide straw",
        ServicewareKind::Sleeve => "sleeve",
    }
}

pub(super) fn serviceware_ui(
    ui: &mut Ui,
    counter: Counter<'_>,
    sheet: &mut Sheet<'_, Vessel>,
    before: &Vessel,
) {
    section_ui(ui, "Goes with it");
    for (at, ware) in before.serviceware.iter().enumerate() {
        let word = serviceware_word(ware.kind);
        let mut removed = false;
        sheet.row(ui, "a", |sheet, ui| {
            let field = format!("ware {at} kind");
            let all_word = |kind: &ServicewareKind| serviceware_word(*kind).to_owned();
            sheet.choice(
                ui,
                Spot::wide(&field, "Serviceware"),
                &ware.kind,
                &SERVICEWARE,
                all_word,
                |item, kind| {
                    item.serviceware[at].kind = kind;
                },
            );
            quiet_ui(ui, "for");
            let (field, name) = (format!("ware {at} price"), format!("Price of the {word}"));
            sheet.number(
                ui,
                Spot::number(&field, &name).width(52.0).hint("–"),
                ware.price,
                |item, price| {
                    item.serviceware[at].price = price;
                },
            );
            quiet_ui(ui, &counter.book.settings.currency);
            removed = icon_button(
                ui,
                Icon::Delete,
                &format!("Take the {word} out"),
                "Take it out",
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
    if link_ui(ui, "Add a straw or sleeve").clicked() {
        let ware = Serviceware {
            kind: ServicewareKind::Straw { wide: false },
            price: None,
        };
        sheet.change("serviceware", |item| item.serviceware.push(ware));
    }
}
