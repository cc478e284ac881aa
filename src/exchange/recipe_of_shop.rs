//! A recipe that goes into another shop: out as grams and composition, in as the other shop's measures and brands.
//!
//! What goes out is a book like any other, with one recipe whose lines are in grams and whose standard is the approval, the
//! ingredients that it needs, and no measures and no prices: those are the shop's own. So every program that opens a book
//! opens it, and nothing has to be written twice.
//!
//! What comes in is mapped line by line onto the ingredients of this book, re-expressed in its measures, and brought back to
//! the standard of the other shop by the search that answers swaps.

use std::sync::Arc;

use super::exchange_error::RecipeExchangeError;
use super::in_grams::{ForeignEntry, in_grams as entries_in_grams, lines_in_grams};
use super::renamed::{plain_recipe, put_theirs};
use crate::balance::{
    Difference, Measurand, Slots, balance, difference, per_gram, portion, standard_balance,
};
use crate::book::{
    Amount, Approval, Basis, Book, Carried, EarlierStates, Entry, Form, Ingredient, IngredientId,
    Line, LineId, Nutrient, Place, Recipe, RecipeId, Resolved, Role, Settings, State, SugarProfile,
    TastedFigure, TastedWith, VersionId, Vessel, VesselId, VesselKind,
};
use crate::edit::{Edit, EditError, WholeBook, apply_soundly};
use crate::quantity::Grams;
use crate::swap::{Adapted, LineMove, Unadaptable, Watch, bring_level};

/// Step in which a volume is poured, ml (common practice, no source).
const MILLILITRES: f64 = 5.0;

/// How deep something house-made may be made of something house-made.
const DEEPEST: usize = 8;

/// Largest weight and temperature of a line that is passed on, g and °C: a tonne, as for amounts that are typed.
const MOST_PASSED_ON: f64 = 1e6;

/// The approved lines of a version as a book of its own without a note: grams and composition, without measures and prices.
pub fn write_recipe(
    book: &Book,
    recipe: &RecipeId,
    version: Option<&VersionId>,
) -> Result<Book, RecipeExchangeError> {
    let recipe = book
        .recipe(recipe)
        .ok_or_else(|| RecipeExchangeError::NoRecipe(recipe.clone()))?;
    let (standard, approval) = standard_balance(book, recipe, version)
        .ok_or_else(|| RecipeExchangeError::NotApproved(recipe.name.clone()))?;
    let name = approval
        .version
        .as_ref()
        .and_then(|id| recipe.version(id))
        .map_or_else(
            || recipe.name.clone(),
            |version| format!("{} — {}", recipe.name, version.name),
        );
    let resolved = in_grams(&standard.resolved, &standard.lines)?;
    // What was approved is passed on as it was tasted.
    let book = &*book.as_tasted(approval);
    let mut out = Book {
        settings: Settings {
            note: String::new(),
            earlier: EarlierStates::default(),
            ..book.settings.clone()
        },
        ..Book::default()
    };
    for id in [&resolved.cup, &resolved.shaker].into_iter().flatten() {
        if let Some(vessel) = book.vessel(id) {
            out.vessels.put(Vessel {
                price: None,
                earlier: EarlierStates::default(),
                ..(**vessel).clone()
            });
        }
    }
    let mut wanted = ingredients_of(&resolved);
    for _ in 0..DEEPEST {
        let mut further = Vec::new();
        for id in wanted {
            let Some(ingredient) = book.ingredient(&id) else {
                continue;
            };
            out.ingredients.put(without_price(ingredient));
            let made = ingredient.house_made.as_ref();
            if let Some(house) = made.and_then(|made| book.recipe(&made.recipe))
                && out.recipe(&house.id).is_none()
            {
                let weighed = balance(
                    book,
                    house.plain(),
                    &Place::Recipe(house.id.clone(), "lines"),
                );
                let lines = in_grams(&weighed.resolved, &weighed.lines)?;
                further.extend(ingredients_of(&lines));
                out.recipes
                    .put(plain_recipe(house, house.name.clone(), &lines));
            }
        }
        further.retain(|id| out.ingredient(id).is_none());
        wanted = further;
        if wanted.is_empty() {
            break;
        }
    }
    let mut passed = plain_recipe(recipe, name, &resolved);
    passed.state = State::Approved;
    passed.approvals = vec![Approval {
        version: None,
        resolved,
        tasted_with: Some(TastedWith::default()),
        ..approval.clone()
    }];
    passed.note.clone_from(&recipe.note);
    out.recipes.put(passed);
    Ok(out)
}

fn without_price(ingredient: &Ingredient) -> Ingredient {
    Ingredient {
        price: None,
        earlier_prices: Vec::new(),
        articles: Vec::new(),
        supplier: String::new(),
        lot: String::new(),
        tasted: ingredient.tasted.iter().map(without_people).collect(),
        earlier: EarlierStates::default(),
        ..ingredient.clone()
    }
}

/// How sweet or strong it is goes with it; who tasted it, and in which tastings, is of this shop.
fn without_people(tasted: &TastedFigure) -> TastedFigure {
    TastedFigure {
        by: String::new(),
        reason: String::new(),
        tastings: Vec::new(),
        ..tasted.clone()
    }
}

fn ingredients_of(resolved: &Resolved) -> Vec<IngredientId> {
    let lines = resolved.lines().flat_map(|line| {
        std::iter::once(line.ingredient.clone()).chain(
            line.carried
                .as_ref()
                .map(|carried| carried.ingredient.clone()),
        )
    });
    lines.collect()
}

/// The same lines, each in the grams that it weighs.
fn in_grams(
    resolved: &Resolved,
    shares: &[crate::balance::LineShare],
) -> Result<Resolved, RecipeExchangeError> {
    let mut weighed = resolved.clone();
    for entry in &mut weighed.entries {
        let Entry::Line(line) = entry else { continue };
        let share = shares
            .iter()
            .find(|share| share.line == line.id && !share.carried);
        let ingredient = || line.ingredient.clone();
        let Some((grams, celsius)) = share.and_then(|share| Some((share.grams?, share.celsius)))
        else {
            return Err(RecipeExchangeError::NoWeight(ingredient()));
        };
        // A hundredth of a gram is finer than any scale of a counter.
        let hundredths = (grams * 100.0).round() / 100.0;
        let carried = line.carried.as_ref().map_or(0.0, |carried| carried.grams);
        let is_measurable = |number: f64| number.abs() <= MOST_PASSED_ON;
        if ![hundredths, carried, celsius]
            .into_iter()
            .all(is_measurable)
        {
            return Err(RecipeExchangeError::BeyondMeasure(ingredient()));
        }
        line.amount = Amount::Grams(hundredths);
        // A button or jug may have given it its temperature.
        line.temperature = Some(celsius.into());
    }
    Ok(weighed)
}

/// A recipe of another shop, with the book that it came in.
#[derive(Clone, Debug, PartialEq)]
pub struct ForeignRecipe {
    /// The book that it came in.
    pub book: Book,
    /// The recipe.
    pub recipe: RecipeId,
    /// Its ingredients, one for each that is in a line or comes along with one, in order.
    pub lines: Vec<ForeignLine>,
    /// Its latest approval, which is what is taken over.
    pub approval: Approval,
    /// The approved lines in grams, and the instructions between them.
    pub entries: Vec<ForeignEntry>,
}

/// An ingredient of a recipe of another shop.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ForeignLine {
    /// The ingredient, by its id in the other book.
    pub ingredient: IngredientId,
    /// Its name.
    pub name: String,
}

/// Reads a recipe of another shop from the book that it came in: the lines of its latest approval.
pub fn read_recipe(book: Book) -> Result<ForeignRecipe, RecipeExchangeError> {
    let latest = |recipe: &Recipe| recipe.approvals.last().cloned();
    let has_cup = |recipe: &Recipe| {
        recipe.cup.is_some()
            || latest(recipe).is_some_and(|approval| approval.resolved.cup.is_some())
    };
    let served: Vec<&Arc<Recipe>> = book
        .recipes
        .iter()
        .filter(|recipe| has_cup(recipe))
        .collect();
    let [recipe] = served.as_slice() else {
        return Err(RecipeExchangeError::NotOneRecipe(served.len()));
    };
    let approval =
        latest(recipe).ok_or_else(|| RecipeExchangeError::NotApproved(recipe.name.clone()))?;
    let id = recipe.id.clone();
    let place = Place::Approval(id.clone(), recipe.approvals.len());
    let then = book.as_tasted(&approval);
    let approved = balance(&then, approval.resolved.clone(), &place);
    let entries =
        entries_in_grams(&then, &approved).map_err(|lines| RecipeExchangeError::NotInGrams {
            recipe: recipe.name.clone(),
            lines,
        })?;
    let mut lines: Vec<ForeignLine> = Vec::new();
    for ingredient in ingredients_of(&approval.resolved) {
        if lines.iter().all(|line| line.ingredient != ingredient) {
            let name = book
                .ingredient(&ingredient)
                .map_or_else(|| ingredient.to_string(), |item| item.full_name());
            lines.push(ForeignLine { ingredient, name });
        }
    }
    Ok(ForeignRecipe {
        book,
        recipe: id,
        lines,
        approval,
        entries,
    })
}

/// What stands for a foreign ingredient.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum MappedTo {
    /// An ingredient of this book.
    Ours(IngredientId),
    /// The foreign one, which is added to this book.
    Added,
}

/// A foreign ingredient and what stands for it here.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LineMapping {
    /// The foreign ingredient.
    pub foreign: ForeignLine,
    /// Ingredients of this book that could stand for it, the likeliest first.
    pub candidates: Vec<IngredientId>,
    /// What is chosen.
    pub to: MappedTo,
    /// Why.
    pub why: MappingReason,
}

/// Why an ingredient of this book stands for a foreign one, or none does.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MappingReason {
    /// The file does not describe the foreign one.
    NotDescribed,
    /// They have one name.
    SameName,
    /// They have this role and a flavour in common, or no flavour.
    SameRole(Role),
    /// Nothing here is like it.
    NothingAlike,
    /// A person chose it.
    Chosen,
}

/// Proposes what stands for each foreign ingredient: the same name, else the same role and flavour, else nothing.
pub fn propose_mappings(book: &Book, foreign: &ForeignRecipe) -> Vec<LineMapping> {
    let propose = |line: &ForeignLine| {
        let Some(theirs) = foreign.book.ingredient(&line.ingredient) else {
            return LineMapping {
                foreign: line.clone(),
                candidates: Vec::new(),
                to: MappedTo::Added,
                why: MappingReason::NotDescribed,
            };
        };
        let mut ranked: Vec<(u32, &Ingredient)> = book
            .ingredients
            .iter()
            .map(|ours| (likeness(theirs, ours), ours.as_ref()))
            .filter(|(likeness, _)| *likeness > 0)
            .collect();
        ranked.sort_by_key(|(likeness, _)| std::cmp::Reverse(*likeness));
        let candidates: Vec<IngredientId> =
            ranked.iter().map(|(_, ours)| ours.id.clone()).collect();
        let (to, why) = match ranked.first() {
            Some((likeness, ours)) if *likeness >= SAME_NAME => {
                (MappedTo::Ours(ours.id.clone()), MappingReason::SameName)
            }
            Some((likeness, ours)) if *likeness >= LIKE => (
                MappedTo::Ours(ours.id.clone()),
                MappingReason::SameRole(ours.role),
            ),
            _ => (MappedTo::Added, MappingReason::NothingAlike),
        };
        LineMapping {
            foreign: line.clone(),
            candidates,
            to,
            why,
        }
    };
    foreign.lines.iter().map(propose).collect()
}

/// Likeness of two of one name.
const SAME_NAME: u32 = 100;

/// Likeness that is enough to propose one for the other.
const LIKE: u32 = 10;

fn likeness(theirs: &Ingredient, ours: &Ingredient) -> u32 {
    if (theirs.form == Form::Ice) != (ours.form == Form::Ice) {
        return 0;
    }
    if theirs.full_name().to_lowercase() == ours.full_name().to_lowercase() {
        return SAME_NAME;
    }
    if theirs.role != ours.role {
        return 0;
    }
    let names = |ingredient: &Ingredient| -> Vec<String> {
        let flavours = ingredient.composition.flavours.iter();
        flavours
            .map(|flavour| flavour.name.to_lowercase())
            .collect()
    };
    let (their_flavours, our_flavours) = (names(theirs), names(ours));
    let shared = their_flavours
        .iter()
        .filter(|name| our_flavours.contains(name))
        .count();
    // Something with a flavour that nothing here has is not replaced by another flavour.
    let fits = shared > 0 || their_flavours.is_empty() && our_flavours.is_empty();
    let form = u32::from(theirs.form == ours.form) * 5;
    let dry = u32::from(theirs.form.is_dry() == ours.form.is_dry()) * 2;
    1 + u32::from(fits) * LIKE + form + dry
}

/// A recipe of another shop as this shop would make it.
#[derive(Clone, Debug, PartialEq)]
pub struct Arrival {
    /// The recipe, a draft.
    pub recipe: Recipe,
    /// Ingredients that are added for it.
    pub added: Vec<Ingredient>,
    /// How the re-expressed lines differ from the other shop's standard before anything moves.
    pub plain: Difference,
    /// How the recipe differs from it.
    pub difference: Difference,
    /// What was moved to bring it back.
    pub moves: Vec<LineMove>,
    /// The drink as it was brought back to that standard, or why it could not be.
    pub brought: Result<Adapted, Unadaptable>,
    /// Where it is from.
    pub origin: Origin,
}

/// Where a recipe is from.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Origin {
    /// The other shop, as its book names it.
    pub shop: String,
    /// The day on which it approved the recipe, as its book has it.
    pub approved: String,
    /// The note that the recipe has there.
    pub note: String,
}

impl Arrival {
    /// What accepting it does, as one step: the recipe has this note in the book.
    pub fn edit(&self, book: &Book, note: String) -> Result<Edit, EditError> {
        let added = self.added.iter().cloned().map(Edit::PutIngredient);
        let recipe = Recipe {
            note,
            ..self.recipe.clone()
        };
        let edits: Vec<Edit> = added.chain([Edit::PutRecipe(recipe)]).collect();
        let after = apply_soundly(book, &edits)?;
        Ok(Edit::PutBook {
            book: Arc::new(after),
            reason: WholeBook::Recipe(self.recipe.name.clone()),
        })
    }
}

/// The recipe re-expressed with these mappings and brought back to the other shop's standard.
pub fn arrival(
    book: &Book,
    foreign: &ForeignRecipe,
    mappings: &[LineMapping],
) -> Result<Arrival, RecipeExchangeError> {
    arrival_watched(book, foreign, mappings, &Watch::default())
}

/// The same, watched from outside.
pub fn arrival_watched(
    book: &Book,
    foreign: &ForeignRecipe,
    mappings: &[LineMapping],
    watch: &Watch,
) -> Result<Arrival, RecipeExchangeError> {
    let theirs = foreign
        .book
        .recipe(&foreign.recipe)
        .ok_or_else(|| RecipeExchangeError::NoRecipe(foreign.recipe.clone()))?;
    let approval = &foreign.approval;
    let approved = lines_in_grams(&approval.resolved, &foreign.entries);
    // Both shops' things in one book, theirs under ids that nothing of ours has.
    let mut both = book.clone();
    let renamed = put_theirs(&mut both, &foreign.book);
    let mut added = Vec::new();
    for mapping in mappings {
        match &mapping.to {
            MappedTo::Ours(id) if book.ingredient(id).is_none() => {
                return Err(RecipeExchangeError::NoIngredient(id.clone()));
            }
            MappedTo::Ours(_) => {}
            MappedTo::Added => {
                let id = renamed.ingredient(&mapping.foreign.ingredient);
                let ingredient = both.ingredient(&id).cloned();
                let ingredient =
                    ingredient.ok_or_else(|| RecipeExchangeError::NoIngredient(id.clone()))?;
                // What their house makes is bought from them, so to speak: their recipes stay with them.
                added.push(Ingredient {
                    house_made: None,
                    ..flattened(&both, &ingredient)
                });
            }
        }
    }
    for ingredient in &added {
        both.ingredients.put(ingredient.clone());
    }
    let standard_lines = renamed.resolved(&approved);
    let mapped = |id: &IngredientId| {
        mappings
            .iter()
            .find(|mapping| mapping.foreign.ingredient == *id)
            .map_or_else(
                || renamed.ingredient(id),
                |mapping| match &mapping.to {
                    MappedTo::Ours(ours) => ours.clone(),
                    MappedTo::Added => renamed.ingredient(id),
                },
            )
    };
    let lines = re_expressed(&both, book, foreign, &mapped);
    let id = RecipeId::from_name(theirs.name.as_str(), |id| both.recipe(id).is_some());
    let mut recipe = plain_recipe(theirs, theirs.name.clone(), &lines);
    recipe.id = id.clone();
    recipe.approvals = vec![Approval {
        version: None,
        resolved: standard_lines,
        tasted_with: None,
        ..approval.clone()
    }];
    both.recipes.put(recipe.clone());
    let place = Place::Recipe(id, "lines");
    let standard = balance(&both, recipe.approvals[0].resolved.clone(), &place);
    let plain_balance = balance(&both, lines, &place);
    let plain = difference(&both.settings, &standard, &plain_balance);
    let brought = bring_level(&both, &recipe, None, watch)
        .ok_or_else(|| RecipeExchangeError::NoRecipe(foreign.recipe.clone()))?;
    let (difference, moves) = match &brought {
        Ok(adapted) => {
            recipe.entries.clone_from(&adapted.balance.resolved.entries);
            (adapted.difference.clone(), adapted.moves.clone())
        }
        Err(_) => (plain.clone(), Vec::new()),
    };
    // Their lines are no lines of this book: the shop that takes the recipe over tastes and approves it itself.
    recipe.approvals.clear();
    let origin = Origin {
        shop: foreign.book.settings.shop.clone(),
        approved: approval.date.clone(),
        note: theirs.note.clone(),
    };
    Ok(Arrival {
        recipe,
        added,
        plain,
        difference,
        moves,
        brought,
        origin,
    })
}

/// Figures that a batch hands on to what it makes.
const FLATTENED: [(Nutrient, Measurand); 11] = [
    (Nutrient::Fat, Measurand::Fat),
    (Nutrient::Saturates, Measurand::Saturates),
    (Nutrient::Carbohydrate, Measurand::Carbohydrate),
    (Nutrient::Sugars, Measurand::TotalSugar),
    (Nutrient::Polyols, Measurand::Polyols),
    (Nutrient::Fibre, Measurand::Fibre),
    (Nutrient::Protein, Measurand::Protein),
    (Nutrient::Salt, Measurand::Salt),
    (Nutrient::Acid, Measurand::Acid),
    (Nutrient::TeaSolids, Measurand::TeaSolids),
    (Nutrient::Caffeine, Measurand::Caffeine),
];

/// Something house-made with its composition written out, as far as all of it is known.
fn flattened(book: &Book, ingredient: &Ingredient) -> Ingredient {
    let mut flat = ingredient.clone();
    let made = ingredient.house_made.as_ref();
    let recipe = made.and_then(|made| book.recipe(&made.recipe).map(|recipe| (made, recipe)));
    let Some((made, recipe)) = recipe.filter(|(made, _)| made.yield_grams.value > 0.0) else {
        return flat;
    };
    let batch = balance(
        book,
        recipe.plain(),
        &Place::Recipe(recipe.id.clone(), "lines"),
    );
    let composition = &mut flat.composition;
    if composition.printed.is_empty() {
        composition.basis = Basis::Per100Grams;
    } else if composition.basis != Basis::Per100Grams {
        // Figures of two bases can't stand side by side; what is stated stays, the rest is not known.
        return flat;
    }
    let complete = |measurand| batch.figures.complete(measurand);
    if let Some(sugar) = complete(Measurand::TotalSugar).filter(|sugar| *sugar > 0.0) {
        let part = |measurand| complete(measurand).map(|amount| amount / sugar);
        if composition.sugar_profile.is_none() {
            composition.sugar_profile = own_profile(&part);
        }
        if composition.free_sugar_fraction.is_none() {
            composition.free_sugar_fraction = part(Measurand::FreeSugars);
        }
    }
    for (nutrient, measurand) in FLATTENED {
        if let Some(amount) = batch.figures.complete(measurand)
            && flat.composition.get(nutrient).is_none()
        {
            let figure = crate::book::Figure {
                value: amount / made.yield_grams.value * 100.0,
                evidence: crate::book::Evidence::SpecSheet,
                u: Some(batch.uncertainty(measurand.slot()) / made.yield_grams.value * 100.0),
            };
            flat.composition.state(nutrient, figure);
        }
    }
    flat
}

/// How the sugars of a batch divide; `None` when that is not known in full.
fn own_profile(part: &dyn Fn(Measurand) -> Option<f64>) -> Option<SugarProfile> {
    Some(SugarProfile::Own {
        sucrose: part(Measurand::Sucrose)?,
        glucose: part(Measurand::Glucose)?,
        fructose: part(Measurand::Fructose)?,
        lactose: part(Measurand::Lactose)?,
        maltose: part(Measurand::Maltose)?,
        other: part(Measurand::OtherSugar)?,
    })
}

/// Their lines with our ingredients in our measures, in our cup and shaker of nearest size.
fn re_expressed(
    both: &Book,
    ours: &Book,
    foreign: &ForeignRecipe,
    mapped: &dyn Fn(&IngredientId) -> IngredientId,
) -> Resolved {
    let approved = &foreign.approval.resolved;
    let entries = foreign.entries.iter().map(|entry| match entry {
        ForeignEntry::Instruction(instruction) => Entry::Instruction(instruction.clone()),
        ForeignEntry::Line(theirs, grams) => {
            let mut line = theirs.clone();
            line.ingredient = mapped(&line.ingredient);
            if let Some(carried) = &mut line.carried {
                *carried = Carried {
                    ingredient: mapped(&carried.ingredient),
                    grams: carried.grams,
                };
            }
            line.amount = amount_here(both, ours, &line, *grams);
            Entry::Line(line)
        }
    });
    let mut lines = Resolved {
        entries: entries.collect(),
        ..approved.clone()
    };
    let nearest = |id: &Option<VesselId>, kind: VesselKind| {
        let wanted = foreign.book.vessel(id.as_ref()?)?;
        let of_kind = ours.vessels.iter().filter(|vessel| vessel.kind == kind);
        // Of two of one size the one whose wall takes as much heat: the drink comes out as warm.
        of_kind
            .min_by(|one, other| {
                let far = |vessel: &Vessel| {
                    let heat = |vessel: &Vessel| vessel.heat_capacity().unwrap_or(0.0);
                    let size = (vessel.capacity / wanted.capacity).ln().abs();
                    size * 100.0 + (heat(vessel) - heat(wanted)).abs()
                };
                far(one).total_cmp(&far(other))
            })
            .map(|vessel| vessel.id.clone())
    };
    lines.cup = nearest(&approved.cup, VesselKind::Cup);
    lines.shaker = nearest(&approved.shaker, VesselKind::Shaker);
    lines
}

/// So many grams in the measure of ours that was weighed with the ingredient, in whole increments; else to 5 ml or 1 g. A little
/// stays one increment; nothing stays nothing.
fn amount_here(both: &Book, ours: &Book, line: &Line, grams: Grams) -> Amount {
    let grams = grams.value();
    let steps_of = |step: f64| {
        if grams > 0.0 {
            (grams / step).round().max(1.0)
        } else {
            0.0
        }
    };
    let in_whole_grams = Amount::Grams(steps_of(1.0));
    let Some(ingredient) = both.ingredient(&line.ingredient) else {
        return in_whole_grams;
    };
    let mix = per_gram(ingredient, &mut Slots::default()).mix;
    let stated = line.temperature;
    let celsius = stated.unwrap_or(both.settings.room_temperature).celsius();
    let weighs = |amount: &Amount| {
        let one = portion(both, ingredient, &mix, amount, celsius)?.grams;
        (one > 0.0).then_some(one)
    };
    let weighed = ours
        .measures
        .iter()
        .find(|measure| measure.calibration(Some(&ingredient.id)).is_some());
    if let Some(measure) = weighed
        && let Some(one) = weighs(&Amount::Count(1.0, measure.id.clone()))
    {
        let steps = steps_of(one * measure.step());
        return Amount::Count(steps * measure.step(), measure.id.clone());
    }
    let is_poured = !ingredient.form.is_dry()
        && !matches!(ingredient.form, Form::Ice | Form::Pieces | Form::Paste);
    if let (true, Some(one)) = (is_poured, weighs(&Amount::Millilitres(1.0))) {
        return Amount::Millilitres(steps_of(one * MILLILITRES) * MILLILITRES);
    }
    in_whole_grams
}

/// Lines by id, for those who show what has become of each.
impl Arrival {
    /// The line of the recipe with this id.
    pub fn line(&self, id: &LineId) -> Option<&Line> {
        let lines = self.recipe.entries.iter().filter_map(Entry::line);
        lines.into_iter().find(|line| line.id == *id)
    }
}
