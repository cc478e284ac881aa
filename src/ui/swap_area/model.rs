//! What the swap area says, as plain values: what can be chosen, and changes in counter measures.

use super::SwapState;
use crate::balance::{Balance, Measurand, Verdict};
use crate::book::{
    Amount, Basis, Book, Ingredient, IngredientId, Line, LineId, Nutrient, Recipe, Resolved, Role,
};
use crate::quantity::{DisplayUnits, show_number};
use crate::say::Speaker;
use crate::swap::{Answer, Demands, LineMove, Question, Suggestion, WalkMove, WalkStep};
use crate::ui::Screen;
use crate::ui::spreadsheet::{self, Cell, Table};
use crate::ui::value::Value;
use crate::ui::widgets::figure_list::{FigureRow, row};
use crate::ui::widgets::level::moved_words;
use crate::ui::wording::ingredient_name;
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
    let Some(question) = &mut state.question else {
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
        ..state.demands.clone()
    };
    *state = SwapState {
        question: asked,
        demands,
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
        let amount = screen.book.amount_words_in(&line.amount, screen.units);
        match going.iter_mut().find(|known| known.id == line.ingredient) {
            Some(known) => known.amounts = format!("{} + {amount}", known.amounts),
            None => going.push(Going {
                id: line.ingredient.clone(),
                name: ingredient_name(screen.book, &line.ingredient),
                role: line.role,
                amounts: amount,
            }),
        }
    }
    going
}

/// What is worth knowing of an ingredient before it is chosen; its role where that is another than the one that goes.
pub(super) fn facts(ingredient: &Ingredient, role: Role) -> String {
    let sugars = sugars_in_words(ingredient);
    if ingredient.role == role {
        return sugars;
    }
    let parts = [ingredient.role.word(), sugars.as_str()];
    parts
        .into_iter()
        .filter(|part| !part.is_empty())
        .collect::<Vec<_>>()
        .join(", ")
}

fn sugars_in_words(ingredient: &Ingredient) -> String {
    if ingredient.house_made.is_some() {
        return "made here".to_owned();
    }
    let basis = match ingredient.composition.basis {
        Basis::Per100Grams => "in 100 g".to_owned(),
        Basis::Per100Millilitres => "in 100 ml".to_owned(),
        Basis::PerServing(grams) => format!("in {} g", show_number(grams, 0)),
    };
    match ingredient.composition.get(Nutrient::Sugars) {
        Some(sugars) => format!("{} g sugars {basis}", show_number(sugars.value, 0)),
        None if matches!(ingredient.role, Role::Water | Role::Ice) => String::new(),
        None => "sugars not stated".to_owned(),
    }
}

/// What a suggestion is best at: "closest taste", "fewest changes, cheapest".
pub(super) fn kind_words(suggestion: &Suggestion) -> String {
    let kinds = std::iter::once(&suggestion.kind).chain(&suggestion.also);
    let kinds = kinds.map(|kind| Speaker::without_book().suggestion_kind(*kind));
    kinds.collect::<Vec<_>>().join(", ")
}

/// What differs between two sets of lines, in counter measures: the swapped lines first.
pub(in crate::ui) fn changes_in_words(
    book: &Book,
    units: DisplayUnits,
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
        Speaker::new(book)
            .in_units(units)
            .line_move(&line, &[after, before])
    };
    for line in after.lines() {
        match before.line(&line.id) {
            None => moved.push(say(&line.id, None, Some(&line.amount))),
            Some(old) if old.ingredient != line.ingredient => {
                let side = |line: &Line| {
                    format!(
                        "{} {}",
                        ingredient_name(book, &line.ingredient),
                        book.amount_words_in(&line.amount, units)
                    )
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
    /// "+4.3"; `None` for the standard itself, and where one of the two is not known.
    pub(super) change: Option<String>,
}

/// The figures of a drink against the standard's.
pub(super) fn compared(
    screen: &Screen<'_>,
    balance: &Balance,
    standard: Option<&Balance>,
) -> Vec<Compared> {
    let of = |measurand: Measurand| Compared {
        row: row(screen.book, balance, screen.lens, measurand, screen.units),
        change: standard.and_then(|standard| change(balance, standard, measurand, screen.units)),
    };
    FIGURES.into_iter().map(of).collect()
}

fn change(
    balance: &Balance,
    standard: &Balance,
    measurand: Measurand,
    units: DisplayUnits,
) -> Option<String> {
    let difference = balance.figures.complete(measurand)? - standard.figures.complete(measurand)?;
    let decimals = match measurand {
        Measurand::Cost => 2,
        Measurand::EnergyKj => 0,
        _ => 1,
    };
    let difference = units.of(measurand.unit()).difference(difference);
    let text = show_number(difference, decimals);
    let is_none = text.chars().all(|sign| matches!(sign, '0' | '.'));
    Some(match (is_none, difference > 0.0) {
        (true, _) => "the same".to_owned(),
        (false, true) => format!("+{text}"),
        (false, false) => text,
    })
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
    let Some(step) = steps.get(at) else {
        return String::new();
    };
    match &step.does {
        WalkMove::Standard => "The standard".to_owned(),
        WalkMove::PlainSwap => "Plain swap, equal measures".to_owned(),
        WalkMove::Line(moved) => {
            let before = &answer.plain.resolved;
            let lines = [&step.balance.resolved, before];
            Speaker::new(screen.book)
                .in_units(screen.units)
                .line_move(moved, &lines)
        }
    }
}

/// How allergens and diet differ from the standard, in sentences.
pub(super) fn diet_words(book: &Book, before: &Balance, after: &Balance) -> Vec<String> {
    let speaker = Speaker::new(book);
    let differences = speaker.allergen_differences(&before.allergens, &after.allergens);
    let mut words: Vec<String> = differences
        .iter()
        .map(|clause| capitalised(clause))
        .collect();
    if before.vegan != after.vegan {
        words.push(format!(
            "{}; the standard: {}",
            capitalised(speaker.vegan(after.vegan)),
            speaker.vegan(before.vegan)
        ));
    }
    let dairy = |verdict: Verdict| match verdict {
        Verdict::Yes => "dairy-free, by ingredients",
        Verdict::No => "not free of milk",
        Verdict::NotKnown => "dairy-free: not known",
    };
    if before.dairy_free != after.dairy_free {
        words.push(format!(
            "{}; the standard: {}",
            capitalised(dairy(after.dairy_free)),
            dairy(before.dairy_free)
        ));
    }
    if words.is_empty() {
        words.push("Allergens and diet are the same as in the standard".to_owned());
    }
    words
}

/// Standard, plain swap and every suggestion for a spreadsheet, each with its figures.
pub(super) fn as_table(screen: &Screen<'_>, answer: &Answer) -> Table {
    let figures = |balance: &Balance| -> Vec<FigureRow> {
        let compared = compared(screen, balance, None);
        compared.into_iter().map(|compared| compared.row).collect()
    };
    let mut heads = vec!["drink".to_owned(), "distance, noticeable steps".to_owned()];
    for row in figures(&answer.standard) {
        heads.push(spreadsheet::head(&row.name, &row.unit));
        heads.push("±".to_owned());
    }
    heads.push("changes".to_owned());
    let mut table = Table::new(heads);
    let before = &screen.balance.resolved;
    let mut add = |name: &str, distance: Option<f64>, balance: &Balance, changes: &[String]| {
        let distance = distance.map_or_else(|| "not known".to_owned(), |far| show_number(far, 2));
        let mut cells = vec![Cell::words(name), Cell::figure(&distance)];
        for row in figures(balance) {
            cells.extend(Cell::figure_and_doubt(&Value::from(&row.text)));
        }
        cells.push(Cell::words(&changes.join("; ")));
        table.row(cells);
    };
    let changes =
        |after: &Balance| changes_in_words(screen.book, screen.units, before, &after.resolved);
    add("standard", Some(0.0), &answer.standard, &[]);
    let plain = &answer.plain;
    add(
        "plain swap",
        answer.plain_difference.distance,
        plain,
        &changes(plain),
    );
    for suggestion in &answer.suggestions {
        let drink = &suggestion.balance;
        add(
            &kind_words(suggestion),
            suggestion.difference.distance,
            drink,
            &changes(drink),
        );
    }
    table
}

/// Every step of a way for a spreadsheet: what it does, how far the drink then is, which marks it moves, and its figures.
pub(super) fn steps_as_table(screen: &Screen<'_>, answer: &Answer, steps: &[WalkStep]) -> Table {
    let mut heads = ["step", "what it does", "distance, noticeable steps"]
        .map(str::to_owned)
        .to_vec();
    for Compared { row, .. } in compared(screen, &answer.standard, None) {
        heads.push(spreadsheet::head(&row.name, &row.unit));
        heads.push("±".to_owned());
    }
    heads.push("what moves".to_owned());
    let mut table = Table::new(heads);
    for (at, step) in steps.iter().enumerate() {
        let distance = step.difference.distance;
        let distance = distance.map_or_else(|| "not known".to_owned(), |far| show_number(far, 2));
        let mut cells = vec![
            Cell::figure(&(at + 1).to_string()),
            Cell::words(&step_words(screen, answer, steps, at)),
            Cell::figure(&distance),
        ];
        for Compared { row, .. } in compared(screen, &step.balance, None) {
            cells.extend(Cell::figure_and_doubt(&Value::from(&row.text)));
        }
        let before = at.checked_sub(1).map(|before| &steps[before].difference);
        let moved = before.map(|before| moved_words(before, &step.difference).join("; "));
        cells.push(Cell::words(&moved.unwrap_or_default()));
        table.row(cells);
    }
    table
}

/// The amounts that are set by hand, and the figures that they give.
pub(super) fn by_hand_as_table(
    amounts: impl IntoIterator<Item = (String, String)>,
    figures: &[Compared],
) -> Table {
    let mut table = Table::new(["ingredient", "amount"]);
    for (name, amount) in amounts {
        table.row([Cell::words(&name), Cell::words(&amount)]);
    }
    let mut of_drink = Table::new(["figure", "unit", "value", "±", "against the standard"]);
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
    let moved = match suggestion.moves.len() {
        0 => "no line moves".to_owned(),
        1 => "1 line moves".to_owned(),
        count => format!("{count} lines change"),
    };
    let distance = suggestion
        .difference
        .distance
        .map_or_else(|| "not known".to_owned(), |steps| show_number(steps, 2));
    let figure = |measurand: Measurand, decimals: usize, unit: &str| {
        let value = suggestion.balance.figures.complete(measurand);
        let Some(value) = value else {
            return "not known".to_owned();
        };
        let changed = change(
            &suggestion.balance,
            &answer.standard,
            measurand,
            screen.units,
        );
        let value = show_number(value, decimals);
        match changed {
            Some(changed) => format!("{value} {unit} ({changed})"),
            None => format!("{value} {unit}"),
        }
    };
    [
        moved,
        distance,
        figure(Measurand::TotalSugar, 1, "g"),
        figure(Measurand::Cost, 2, &screen.book.settings.currency),
    ]
}
