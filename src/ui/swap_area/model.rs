//! What the swap area says, as plain values: what can be chosen, and changes in counter measures.

use super::state::SwapState;
use crate::balance::{Balance, Measurand, Verdict};
use crate::book::{
    Amount, Basis, Ingredient, IngredientId, Line, LineId, Nutrient, Recipe, Resolved, Role,
};
use crate::quantity::show_number;
use crate::say::{Speaker, say};
use crate::swap::{Answer, Demands, LineMove, Question, Suggestion, WalkMove, WalkStep};
use crate::ui::Screen;
use crate::ui::spreadsheet::{self, Cell, Table};
use crate::ui::value::Value;
use crate::ui::view_state::AskedSwap;
use crate::ui::widgets::figure_list::{FigureRow, row};
use crate::ui::widgets::level::moved_words;
use crate::ui::words::capitalised;

/// The figures that a swap is judged by.
pub(super) const FIGURES: [Measurand; 5] = [
    Measurand::TotalSugar,
    Measurand::Sweetness,
    Measurand::ServingTemperature,
    Measurand::Cost,
    Measurand::EnergyKj,
];

/// An ingredient of the version, and how much of it there is.
pub(super) struct Going {
    pub(super) id: IngredientId,
    pub(super) name: String,
    pub(super) role: Role,
    pub(super) amounts: String,
}

/// Keeps the question with the version in hand: another version asks anew, with the same ingredients where it has them.
pub(in crate::ui) fn follow(state: &mut SwapState, screen: &Screen<'_>) {
    let Some(question) = &mut state.asked.question else {
        return;
    };
    if question.recipe == screen.shown.recipe && question.version == screen.shown.version {
        return;
    }
    let has = screen
        .balance
        .resolved
        .lines()
        .any(|line| line.ingredient == question.replace);
    let asked = has.then(|| Question {
        recipe: screen.shown.recipe.clone(),
        version: screen.shown.version.clone(),
        adjust: None,
        ..question.clone()
    });
    // What is asked of the drink stays; its lines are other ones.
    let demands = Demands {
        locked: Vec::new(),
        unlocked: Vec::new(),
        limits: Vec::new(),
        ..state.asked.demands.clone()
    };
    *state = SwapState {
        asked: AskedSwap {
            question: asked,
            demands,
            brings_back: state.asked.brings_back,
            everywhere: false,
        },
        show_version: state.show_version.take(),
        conditions_open: state.conditions_open,
        way: state.way,
        step: 1,
        ..SwapState::default()
    };
}

/// The ingredients that can go, in the order of the lines, each once.
pub(super) fn going(screen: &Screen<'_>) -> Vec<Going> {
    let mut going: Vec<Going> = Vec::new();
    for line in screen.balance.resolved.lines() {
        let amount = screen.speaker.amount(&line.amount);
        match going.iter_mut().find(|known| known.id == line.ingredient) {
            Some(known) => known.amounts = format!("{} + {amount}", known.amounts),
            None => going.push(Going {
                id: line.ingredient.clone(),
                name: screen.speaker.ingredient(&line.ingredient),
                role: line.role,
                amounts: amount,
            }),
        }
    }
    going
}

/// What is worth knowing of an ingredient before it is chosen; its role where that is another than the one that goes.
pub(super) fn facts(speaker: Speaker<'_>, ingredient: &Ingredient, role: Role) -> String {
    let sugars = sugars_in_words(speaker, ingredient);
    if ingredient.role == role {
        return sugars;
    }
    let parts = [speaker.role(ingredient.role), sugars.as_str()];
    parts
        .into_iter()
        .filter(|part| !part.is_empty())
        .collect::<Vec<_>>()
        .join(", ")
}

fn sugars_in_words(speaker: Speaker<'_>, ingredient: &Ingredient) -> String {
    if ingredient.house_made.is_some() {
        return speaker.word("swap-screen-house-made").to_owned();
    }
    let Some(sugars) = ingredient.composition.get(Nutrient::Sugars) else {
        let has_none = matches!(ingredient.role, Role::Water | Role::Ice);
        let words = (!has_none).then(|| speaker.word("swap-screen-sugars-not-stated"));
        return words.unwrap_or_default().to_owned();
    };
    let grams = |grams: f64| speaker.in_unit(grams, "g", 0);
    let sugars = grams(sugars.value);
    let basis = match ingredient.composition.basis {
        Basis::Per100Millilitres => {
            return say!(speaker, "swap-screen-sugars-per-100-ml", sugars: sugars);
        }
        Basis::Per100Grams => 100.0,
        Basis::PerServing(serving) => serving,
    };
    say!(speaker, "swap-screen-sugars-per", sugars: sugars, amount: grams(basis))
}

/// What a suggestion is best at: "closest taste", "fewest changes, cheapest".
pub(super) fn kind_words(speaker: Speaker<'_>, suggestion: &Suggestion) -> String {
    let kinds = std::iter::once(&suggestion.kind).chain(&suggestion.also);
    let kinds = kinds.map(|kind| speaker.suggestion_kind(*kind));
    kinds.collect::<Vec<_>>().join(", ")
}

/// What differs between two sets of lines, in counter measures: the swapped lines first.
pub(in crate::ui) fn changes_in_words(
    speaker: Speaker<'_>,
    before: &Resolved,
    after: &Resolved,
) -> Vec<String> {
    let mut swapped = Vec::new();
    let mut moved = Vec::new();
    let say = |id: &LineId, from: Option<&Amount>, to: Option<&Amount>| {
        let line = LineMove {
            line: id.clone(),
            from: from.cloned(),
            to: to.cloned(),
        };
        speaker.line_move(&line, &[after, before])
    };
    for line in after.lines() {
        match before.line(&line.id) {
            None => moved.push(say(&line.id, None, Some(&line.amount))),
            Some(old) if old.ingredient != line.ingredient => {
                let side = |line: &Line| {
                    let ingredient = speaker.ingredient(&line.ingredient);
                    format!("{ingredient} {}", speaker.amount(&line.amount))
                };
                swapped.push(format!("{} → {}", side(old), side(line)));
            }
            Some(old) if old.amount != line.amount => {
                moved.push(say(&line.id, Some(&old.amount), Some(&line.amount)));
            }
            Some(_) => {}
        }
    }
    let gone = before.lines().filter(|line| after.line(&line.id).is_none());
    moved.extend(gone.map(|line| say(&line.id, Some(&line.amount), None)));
    swapped.extend(moved);
    swapped
}

/// One figure of one of the three drinks.
pub(super) struct Compared {
    pub(super) row: FigureRow,
    /// "+4.3" with a decimal point, or that it is the same; `None` for the standard itself, and where one of the two is not
    /// known.
    pub(super) change: Option<String>,
}

/// The figures of a drink against the standard's.
pub(super) fn compared(
    screen: &Screen<'_>,
    balance: &Balance,
    standard: Option<&Balance>,
) -> Vec<Compared> {
    let of = |measurand: Measurand| Compared {
        row: row(screen.speaker, balance, screen.lens, measurand),
        change: standard.and_then(|standard| change(screen.speaker, balance, standard, measurand)),
    };
    FIGURES.into_iter().map(of).collect()
}

fn change(
    speaker: Speaker<'_>,
    balance: &Balance,
    standard: &Balance,
    measurand: Measurand,
) -> Option<String> {
    let difference = balance.figures.complete(measurand)? - standard.figures.complete(measurand)?;
    let decimals = match measurand {
        Measurand::Cost => 2,
        Measurand::EnergyKj => 0,
        _ => 1,
    };
    let difference = speaker.units.of(measurand.unit()).difference(difference);
    let text = show_number(difference, decimals);
    let is_none = text.chars().all(|sign| matches!(sign, '0' | '.'));
    Some(match (is_none, difference > 0.0) {
        (true, _) => speaker.word("swap-screen-same").to_owned(),
        (false, true) => format!("+{text}"),
        (false, false) => text,
    })
}

/// The change of a figure as it is shown: "+4.3".
pub(super) fn signed(speaker: Speaker<'_>, change: &str) -> String {
    match change.strip_prefix('+') {
        Some(digits) => format!("+{}", speaker.digits(digits)),
        None => speaker.digits(change),
    }
}

/// A name for the new version that no version has yet.
pub(in crate::ui) fn version_name(recipe: &Recipe, wanted: &str) -> String {
    let is_taken = |name: &str| recipe.versions.iter().any(|version| version.name == name);
    let mut name = wanted.to_owned();
    let mut number = 2_u32;
    while is_taken(&name) {
        name = format!("{wanted} {number}");
        number += 1;
    }
    name
}

/// What one step of a walk does, in words.
pub(in crate::ui) fn step_words(
    screen: &Screen<'_>,
    answer: &Answer,
    steps: &[WalkStep],
    at: usize,
) -> String {
    let speaker = screen.speaker;
    let Some(step) = steps.get(at) else {
        return String::new();
    };
    match &step.does {
        WalkMove::Standard => speaker.word("swap-screen-step-standard").to_owned(),
        WalkMove::PlainSwap => speaker.word("swap-screen-step-plain").to_owned(),
        WalkMove::Line(moved) => {
            let before = &answer.plain.resolved;
            let lines = [&step.balance.resolved, before];
            speaker.line_move(moved, &lines)
        }
    }
}

/// How allergens and diet differ from the standard, in sentences without their stops.
pub(super) fn diet_words(speaker: Speaker<'_>, before: &Balance, after: &Balance) -> Vec<String> {
    let differences = speaker.allergen_differences(&before.allergens, &after.allergens);
    let mut words: Vec<String> = differences
        .iter()
        .map(|clause| capitalised(clause))
        .collect();
    let changed = |now: &str, before: &str| {
        let words = say!(speaker, "swap-screen-claim-changes", now: now, before: before);
        capitalised(&words)
    };
    if before.vegan != after.vegan {
        words.push(changed(
            speaker.vegan(after.vegan),
            speaker.vegan(before.vegan),
        ));
    }
    let dairy = |verdict: Verdict| {
        speaker.word(match verdict {
            Verdict::Yes => "swap-screen-dairy-free",
            Verdict::No => "swap-screen-not-dairy-free",
            Verdict::NotKnown => "swap-screen-dairy-free-not-known",
        })
    };
    if before.dairy_free != after.dairy_free {
        words.push(changed(dairy(after.dairy_free), dairy(before.dairy_free)));
    }
    if words.is_empty() {
        words.push(speaker.word("swap-screen-same-claims").to_owned());
    }
    words
}

/// Standard, plain swap and every suggestion for a spreadsheet, each with its figures.
pub(super) fn as_table(screen: &Screen<'_>, answer: &Answer) -> Table {
    let figures = |balance: &Balance| -> Vec<FigureRow> {
        let compared = compared(screen, balance, None);
        compared.into_iter().map(|compared| compared.row).collect()
    };
    let speaker = screen.speaker;
    let mut heads = ["swap-screen-table-drink", "swap-screen-table-overall"]
        .map(|head| speaker.word(head).to_owned())
        .to_vec();
    for row in figures(&answer.standard) {
        heads.push(spreadsheet::head(&row.name, &row.unit));
        heads.push("±".to_owned());
    }
    heads.push(speaker.word("swap-screen-table-changes").to_owned());
    let mut table = Table::new(heads);
    let before = &screen.balance.resolved;
    let mut add = |name: &str, distance: Option<f64>, balance: &Balance, changes: &[String]| {
        let mut cells = vec![Cell::words(name), distance_cell(speaker, distance)];
        for row in figures(balance) {
            cells.extend(Cell::figure_and_doubt(&Value::from(&row.text)));
        }
        cells.push(Cell::words(&changes.join("; ")));
        table.row(cells);
    };
    let changes = |after: &Balance| changes_in_words(speaker, before, &after.resolved);
    let standard = speaker.word("swap-screen-table-standard");
    add(standard, Some(0.0), &answer.standard, &[]);
    let plain = &answer.plain;
    add(
        speaker.word("swap-screen-table-plain-swap"),
        answer.plain_difference.distance,
        plain,
        &changes(plain),
    );
    for suggestion in &answer.suggestions {
        let drink = &suggestion.balance;
        add(
            &kind_words(speaker, suggestion),
            suggestion.difference.distance,
            drink,
            &changes(drink),
        );
    }
    table
}

/// An overall difference in steps, for a spreadsheet.
pub(super) fn distance_cell(speaker: Speaker<'_>, distance: Option<f64>) -> Cell {
    match distance {
        Some(distance) => Cell::figure(&show_number(distance, 2)),
        None => Cell::words(speaker.word("swap-screen-not-known")),
    }
}

/// Every step of a way for a spreadsheet: what it does, how far the drink then is, which marks it moves, and its figures.
pub(super) fn steps_as_table(screen: &Screen<'_>, answer: &Answer, steps: &[WalkStep]) -> Table {
    let speaker = screen.speaker;
    let mut heads = [
        "swap-screen-table-step",
        "swap-screen-table-does",
        "swap-screen-table-overall",
    ]
    .map(|head| speaker.word(head).to_owned())
    .to_vec();
    for Compared { row, .. } in compared(screen, &answer.standard, None) {
        heads.push(spreadsheet::head(&row.name, &row.unit));
        heads.push("±".to_owned());
    }
    heads.push(speaker.word("swap-screen-table-moves").to_owned());
    let mut table = Table::new(heads);
    for (at, step) in steps.iter().enumerate() {
        let mut cells = vec![
            Cell::figure(&(at + 1).to_string()),
            Cell::words(&step_words(screen, answer, steps, at)),
            distance_cell(speaker, step.difference.distance),
        ];
        for Compared { row, .. } in compared(screen, &step.balance, None) {
            cells.extend(Cell::figure_and_doubt(&Value::from(&row.text)));
        }
        let before = at.checked_sub(1).map(|before| &steps[before].difference);
        let moved =
            before.map(|before| moved_words(before, &step.difference, screen.speaker).join("; "));
        cells.push(Cell::words(&moved.unwrap_or_default()));
        table.row(cells);
    }
    table
}

/// The amounts that are set by hand, and the figures that they give.
pub(super) fn by_hand_as_table(
    speaker: Speaker<'_>,
    amounts: impl IntoIterator<Item = (String, String)>,
    figures: &[Compared],
) -> Table {
    let heads = ["swap-screen-column-ingredient", "swap-screen-table-amount"];
    let mut table = Table::new(heads.map(|head| speaker.word(head)));
    for (name, amount) in amounts {
        table.row([Cell::words(&name), Cell::words(&amount)]);
    }
    let mut of_drink = Table::new([
        speaker.word("swap-screen-table-figure"),
        speaker.word("swap-screen-column-unit"),
        speaker.word("swap-screen-table-value"),
        "±",
        speaker.word("swap-screen-table-compared"),
    ]);
    for Compared { row, change } in figures {
        let [figure, doubt] = Cell::figure_and_doubt(&Value::from(&row.text));
        of_drink.row([
            Cell::words(&row.name),
            Cell::words(&row.unit),
            figure,
            doubt,
            Cell::figure(change.as_deref().unwrap_or_default()),
        ]);
    }
    table.then(of_drink)
}

/// What a suggestion costs and brings, for the row that it is chosen in.
pub(super) fn merits(screen: &Screen<'_>, answer: &Answer, suggestion: &Suggestion) -> [String; 4] {
    let speaker = screen.speaker;
    let moved = say!(speaker, "swap-screen-lines-change", count: suggestion.moves.len());
    let not_known = || speaker.word("swap-screen-not-known").to_owned();
    let distance = suggestion.difference.distance;
    let distance = distance.map_or_else(not_known, |steps| speaker.number(steps, 2));
    let figure = |measurand: Measurand, decimals: usize, unit: &str| {
        let drink = &suggestion.balance;
        let Some(value) = drink.figures.complete(measurand) else {
            return not_known();
        };
        let value = format!("{}\u{a0}{unit}", speaker.number(value, decimals));
        match change(speaker, drink, &answer.standard, measurand) {
            Some(changed) => format!("{value} ({})", signed(speaker, &changed)),
            None => value,
        }
    };
    [
        moved,
        distance,
        figure(Measurand::TotalSugar, 1, "g"),
        figure(Measurand::Cost, 2, &screen.book.settings.currency),
    ]
}
