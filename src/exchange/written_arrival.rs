//! A written recipe as a draft of a book: each ingredient as a line with its measure, for review before it is taken.

use std::collections::BTreeMap;
use std::sync::Arc;

use super::likely::{WhyAlike, form_told, likely, role_told};
use super::list_choices::RowMatch;
use super::recipe_json_ld::ReadRecipe;
use super::written::{Household, Span, UnclearAmount, WrittenAmount, WrittenLine};
use crate::book::{
    Amount, Book, Entry, Filling, Form, Ingredient, IngredientId, Instruction, LARGEST_AMOUNT,
    Line, LineId, Measure, MeasureId, MeasureKind, Nominal, Recipe, RecipeId, Role, Stage,
};
use crate::edit::{Edit, EditError, WholeBook, apply_soundly};
use crate::quantity::excerpt;

/// Longest text that is shown of what could not be read, in characters.
const SHOWN: usize = 60;

/// What has to be looked at in a recipe that is brought in.
#[derive(Clone, Debug, PartialEq)]
pub enum RecipeQuestion {
    /// The amount may be one thing or another, so the sentence is an instruction.
    UnclearAmount(UnclearAmount),
    /// It says no amount, so the sentence is an instruction.
    NoAmount,
    /// Only one line can take what the others leave, and there is one already, so the sentence is an instruction.
    SecondFill,
    /// The amount is more than any cup holds, so the sentence is an instruction.
    TooMuch,
    /// An ingredient is new to the book, and nothing is known of it. Its form is told by its name or by what it is measured in,
    /// or it is not known.
    NewIngredient {
        /// The form that it gets.
        form: Form,
        /// Whether something tells it.
        is_told: bool,
    },
    /// An ingredient is taken for one whose name is not quite the same.
    Alike,
    /// A range, of which the middle is taken.
    Range(Span),
    /// A spoon or cup that the shop does not have is added as the law, or practice, has it.
    Household(Household),
    /// So many pieces, of which nobody knows what one weighs.
    NotWeighed,
}

/// A measure that a recipe brings along.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NewMeasure<'text> {
    /// One of kitchens.
    Household {
        /// Which.
        of: Household,
        /// Whether it is heaped.
        is_heaped: bool,
        /// Whether it is for what does not pour.
        is_dry: bool,
    },
    /// Pieces that are called so; empty where the recipe has no word for them.
    Pieces(&'text str),
}

/// Says what such a measure is called, and its note.
pub type NameMeasure<'a> = &'a dyn Fn(NewMeasure<'_>) -> (String, String);

/// What becomes of an ingredient of a written recipe.
#[derive(Clone, Debug, PartialEq)]
pub enum Becomes {
    /// A line.
    Line {
        /// How much.
        amount: Amount,
        /// Of what, by its id in the book that comes of it.
        ingredient: IngredientId,
        /// Why it is taken for an ingredient of the book; `None` for a new one.
        why: Option<WhyAlike>,
    },
    /// A sentence among the instructions.
    Instruction,
    /// Nothing: a person left it out.
    LeftOut,
}

/// An ingredient of a written recipe under review.
#[derive(Clone, Debug, PartialEq)]
pub struct ArrivedLine {
    /// The sentence.
    pub text: String,
    /// What becomes of it.
    pub becomes: Becomes,
    /// What has to be looked at.
    pub questions: Vec<RecipeQuestion>,
}

/// A written recipe as a draft of a book.
#[derive(Clone, Debug, PartialEq)]
pub struct WrittenArrival {
    /// Its ingredients, in their order.
    pub lines: Vec<ArrivedLine>,
    /// The book that comes of it.
    pub after: Arc<Book>,
    /// What adding it does, in one step.
    pub edit: Edit,
}

impl ReadRecipe {
    /// The recipe as a draft of this book with this name. `chosen` says by position what a person has said of its ingredients.
    /// Ingredients that the book does not know are added with nothing stated: their figures stay unknown until a label is read.
    pub fn arrive(
        &self,
        book: &Book,
        name: &str,
        chosen: &BTreeMap<usize, RowMatch>,
        name_measure: NameMeasure<'_>,
    ) -> Result<WrittenArrival, EditError> {
        let mut arriving = Arriving {
            before: book,
            after: book.clone(),
            entries: Vec::new(),
            name_measure,
        };
        let mut lines = Vec::new();
        for (at, written) in self.ingredients.iter().enumerate() {
            lines.push(arriving.line(written, chosen.get(&at))?);
        }
        let Arriving {
            mut after,
            mut entries,
            ..
        } = arriving;
        for text in &self.instructions {
            entries.push(instruction(&entries, text));
        }
        let recipe = Recipe {
            entries,
            note: self.description.clone(),
            ..Recipe::new(
                RecipeId::from_name(name, |id| book.recipe(id).is_some()),
                name.to_owned(),
            )
        };
        after = apply_soundly(&after, [&Edit::PutRecipe(recipe)])?;
        let after = Arc::new(after);
        let edit = Edit::PutBook {
            book: after.clone(),
            reason: WholeBook::Recipe(name.to_owned()),
        };
        Ok(WrittenArrival { lines, after, edit })
    }
}

/// The recipe as far as its ingredients have been gone through.
struct Arriving<'book> {
    before: &'book Book,
    after: Book,
    entries: Vec<Entry>,
    name_measure: NameMeasure<'book>,
}

impl Arriving<'_> {
    fn line(
        &mut self,
        written: &WrittenLine,
        chosen: Option<&RowMatch>,
    ) -> Result<ArrivedLine, EditError> {
        let arrived = |becomes, questions| {
            let text = excerpt(&written.text, 2 * SHOWN);
            Ok(ArrivedLine {
                text,
                becomes,
                questions,
            })
        };
        if chosen == Some(&RowMatch::LeftOut) {
            return arrived(Becomes::LeftOut, Vec::new());
        }
        let why_not = match &written.amount {
            WrittenAmount::NotStated => Some(RecipeQuestion::NoAmount),
            WrittenAmount::Unclear(why) => Some(RecipeQuestion::UnclearAmount(why.clone())),
            WrittenAmount::Fill if self.fills() => Some(RecipeQuestion::SecondFill),
            amount if amount.span().is_some_and(|span| span.to > LARGEST_AMOUNT) => {
                Some(RecipeQuestion::TooMuch)
            }
            _ => None,
        };
        if let Some(why_not) = why_not {
            self.entries.push(instruction(&self.entries, &written.text));
            return arrived(Becomes::Instruction, vec![why_not]);
        }
        let mut questions = Vec::new();
        let (item, why) = self.ingredient(written, chosen, &mut questions)?;
        let amount = self.amount(&written.amount, &item, &mut questions)?;
        let id = LineId::from_name(item.id.as_str(), |id| {
            self.entries.iter().any(|entry| entry.id() == id)
        });
        let stage = match item.form {
            _ if item.role == Role::Garnish => Stage::OnTop,
            Form::Pieces => Stage::Topping,
            Form::Leaf => Stage::Steeped,
            Form::Foam => Stage::OnTop,
            _ => Stage::Mixed,
        };
        let is_called_so = why.is_none_or(|why| why == WhyAlike::SameName);
        let is_held = written.note.is_empty() && !written.says_more && is_called_so;
        let is_range = written.amount.span().is_some_and(Span::is_range);
        self.entries.push(Entry::Line(Line {
            id,
            ingredient: item.id.clone(),
            amount: amount.clone(),
            temperature: written.temperature,
            role: item.role,
            stage,
            carried: None,
            // What the line can't hold stays beside it, and so does "hot" of "hot water" that is taken for water.
            note: if is_held && !is_range {
                String::new()
            } else {
                written.text.clone()
            },
        }));
        let ingredient = item.id;
        let line = Becomes::Line {
            amount,
            ingredient,
            why,
        };
        arrived(line, questions)
    }

    /// Whether a line takes what the others leave.
    fn fills(&self) -> bool {
        let mut lines = self.entries.iter().filter_map(Entry::line);
        lines.any(|line| line.amount.fills())
    }

    /// The ingredient of the book, or a new one of which nothing is known but its name and form.
    fn ingredient(
        &mut self,
        written: &WrittenLine,
        chosen: Option<&RowMatch>,
        questions: &mut Vec<RecipeQuestion>,
    ) -> Result<(Ingredient, Option<WhyAlike>), EditError> {
        let found = match chosen {
            Some(RowMatch::Ours(id)) => Some((id.clone(), WhyAlike::Chosen)),
            Some(RowMatch::New(_)) => None,
            _ => likely(self.before, &written.full_name)
                .or_else(|| likely(self.before, &written.name)),
        };
        let known = found.and_then(|(id, why)| Some((self.before.ingredient(&id)?, why)));
        if let Some((known, why)) = known {
            if why == WhyAlike::Alike {
                questions.push(RecipeQuestion::Alike);
            }
            return Ok(((**known).clone(), Some(why)));
        }
        // Two sentences may name the same new one.
        let is_new = |item: &&Arc<Ingredient>| {
            self.before.ingredient(&item.id).is_none() && item.name == written.name
        };
        if let Some(new) = self.after.ingredients.iter().find(is_new) {
            return Ok(((**new).clone(), None));
        }
        let by_amount = match &written.amount {
            WrittenAmount::Millilitres(_) => Some(Form::Liquid),
            // "3 Scheiben Birne": what it is counted in tells what it is.
            WrittenAmount::Counted { word, .. } => {
                form_told(word).filter(|form| *form == Form::Pieces)
            }
            _ => None,
        };
        let by_hand = match chosen {
            Some(RowMatch::New(form)) => Some(*form),
            _ => None,
        };
        let told = by_hand.or_else(|| form_told(&written.name)).or(by_amount);
        let id = IngredientId::from_name(&written.name, |id| self.after.ingredient(id).is_some());
        let empty = Ingredient::new(id, written.name.clone());
        let form = told.unwrap_or(empty.form);
        let by_words = match &written.amount {
            WrittenAmount::Counted { word, .. } if by_amount == Some(form) => role_told(word),
            _ => role_told(&written.name),
        };
        let role = match form {
            Form::Ice => Some(Role::Ice),
            Form::Pieces | Form::Foam => by_words,
            _ => None,
        };
        let new = Ingredient {
            form,
            role: role.unwrap_or(empty.role),
            ..empty
        };
        self.after = apply_soundly(&self.after, [&Edit::PutIngredient(new.clone())])?;
        questions.push(RecipeQuestion::NewIngredient {
            form,
            is_told: told.is_some(),
        });
        Ok((new, None))
    }

    fn amount(
        &mut self,
        written: &WrittenAmount,
        item: &Ingredient,
        questions: &mut Vec<RecipeQuestion>,
    ) -> Result<Amount, EditError> {
        let mut middle = |span: &Span| {
            if span.is_range() {
                questions.push(RecipeQuestion::Range(*span));
            }
            span.middle()
        };
        match written {
            WrittenAmount::Grams(span) => Ok(Amount::Grams(middle(span))),
            WrittenAmount::Millilitres(span) => Ok(Amount::Millilitres(middle(span))),
            WrittenAmount::Household {
                count,
                of,
                is_heaped,
            } => {
                let count = middle(count);
                let measure = self.household(*of, *is_heaped, item, questions)?;
                Ok(Amount::Count(count, measure))
            }
            WrittenAmount::Counted { count, word } => {
                let count = middle(count);
                let measure = self.pieces(word, item, questions)?;
                Ok(Amount::Count(count, measure))
            }
            // What has no amount has become an instruction.
            WrittenAmount::Fill | WrittenAmount::NotStated | WrittenAmount::Unclear(_) => {
                Ok(Amount::FillToRim)
            }
        }
    }

    /// A spoon or cup of the shop that is called so, else one as the law has it.
    fn household(
        &mut self,
        of: Household,
        is_heaped: bool,
        item: &Ingredient,
        questions: &mut Vec<RecipeQuestion>,
    ) -> Result<MeasureId, EditError> {
        let is_dry = item.form.lies_in_pieces() || item.form == Form::Paste;
        let filling = if is_heaped {
            Filling::Heaped
        } else {
            Filling::Levelled
        };
        let new = NewMeasure::Household {
            of,
            is_heaped,
            is_dry,
        };
        let (name, note) = (self.name_measure)(new);
        let is_cup = matches!(of, Household::Cup | Household::Tasse);
        let kind = match (is_cup, is_dry) {
            (true, false) => MeasureKind::Jug,
            (true, true) => MeasureKind::Scoop,
            (false, _) => MeasureKind::Spoon,
        };
        let is_called = |measure: &&Arc<Measure>| {
            let is_alike = measure.filling == filling && (!is_cup || measure.kind == kind);
            measure.name == name || is_alike && super::written::is_called(&measure.name, of)
        };
        if let Some(known) = self.after.measures.iter().find(is_called) {
            return Ok(known.id.clone());
        }
        questions.push(RecipeQuestion::Household(of));
        self.put_measure(name, note, kind, |measure| {
            measure.nominal = Some(Nominal::Volume(of.millilitres()));
            measure.filling = filling;
        })
    }

    /// What the shop counts by this word, else something that is yet to be weighed.
    fn pieces(
        &mut self,
        word: &str,
        item: &Ingredient,
        questions: &mut Vec<RecipeQuestion>,
    ) -> Result<MeasureId, EditError> {
        let ours = super::written::counter_word(word);
        let typed = format!("1 {ours}");
        if !ours.is_empty()
            && let Ok(Amount::Count(_, measure)) =
                self.after.amount_from_text(&typed, Some(item), None)
        {
            return Ok(measure);
        }
        questions.push(RecipeQuestion::NotWeighed);
        let (name, note) = (self.name_measure)(NewMeasure::Pieces(word));
        let is_there = |measure: &&Arc<Measure>| measure.name == name;
        if let Some(known) = self.after.measures.iter().find(is_there) {
            return Ok(known.id.clone());
        }
        self.put_measure(name, note, MeasureKind::Scoop, |_| {})
    }

    fn put_measure(
        &mut self,
        name: String,
        note: String,
        kind: MeasureKind,
        set: impl FnOnce(&mut Measure),
    ) -> Result<MeasureId, EditError> {
        let id = MeasureId::from_name(&name, |id| self.after.measure(id).is_some());
        let mut measure = Measure::new(id.clone(), name, kind);
        measure.note = note;
        set(&mut measure);
        self.after = apply_soundly(&self.after, [&Edit::PutMeasure(measure)])?;
        Ok(id)
    }
}

fn instruction(entries: &[Entry], text: &str) -> Entry {
    Entry::Instruction(Instruction {
        id: LineId::from_name("step", |id| entries.iter().any(|entry| entry.id() == id)),
        text: text.to_owned(),
    })
}
