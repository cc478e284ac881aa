//! What a card is asked for, and why there may be none.

use super::document::CardKind;
use crate::book::{Axis, Book, IngredientId, Lineages, Recipe, RecipeId, State, VersionId};
use crate::quantity::DisplayUnits;
use crate::say::{Language, Speaker, say};
use crate::tasting::ServingDesign;

/// A recipe and one of its versions, or the recipe itself.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Drink {
    /// The recipe.
    pub recipe: RecipeId,
    /// The version; the recipe itself for `None`.
    pub version: Option<VersionId>,
}

/// So many of a drink.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BatchItem {
    /// The drink.
    pub drink: Drink,
    /// How many of it.
    pub count: u32,
}

/// Which drinks stand on a card of the menu.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum OnMenu {
    /// Those that are what was approved; the others are named below.
    #[default]
    Approved,
    /// Drafts as well, each marked.
    All,
}

/// A swap that is taught.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TaughtSwap {
    /// The drink.
    pub drink: Drink,
    /// What goes.
    pub replace: IngredientId,
    /// What comes.
    pub with: IngredientId,
}

/// What tasters are asked about cups that differ in more than being the same or not.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum AskedOfTasters {
    /// Which has more of this.
    More(Axis),
    /// Which they like better.
    Liking,
}

/// A blind tasting that is about to be held.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BlindTasting {
    /// What is put before each person.
    pub design: ServingDesign,
    /// The drinks, sample A first: two, or three for a ranking.
    pub samples: Vec<Drink>,
    /// How many people taste.
    pub people: u32,
    /// What orders and codes are drawn from.
    pub seed: u64,
    /// What a pair or a ranking asks; the other designs ask what is different.
    pub asked: AskedOfTasters,
}

/// What is asked for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum CardRequest {
    /// What the counter makes the drink from.
    Counter(Drink),
    /// What a new hand learns the drink from.
    Training(Drink),
    /// A swap in a drink, for a group that learns.
    Exercise(TaughtSwap),
    /// The answers to it, on a sheet of their own.
    Answers(TaughtSwap),
    /// Ingredients and allergens of the whole menu.
    Menu(OnMenu),
    /// What everything on the menu costs, leaves and holds.
    Figures(OnMenu),
    /// The levels of sugar of a drink.
    Ladder(Drink),
    /// The levels of sugar of a drink in every size with every amount of ice.
    Matrix(Drink),
    /// Two to four drinks beside each other.
    Comparison(Vec<Drink>),
    /// What so many drinks need.
    Batch(Vec<BatchItem>),
    /// What the tasters of a blind tasting fill in.
    Scores(BlindTasting),
    /// What whoever serves a blind tasting pours.
    Pouring(BlindTasting),
}

/// What the caller adds to a card.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CardOptions {
    /// The day that stands on it; empty for none.
    pub date: String,
    /// Language of the fixed words.
    pub language: Language,
    /// What temperatures and volumes are printed in.
    pub units: DisplayUnits,
}

impl CardOptions {
    /// Speaks about a book as the card does.
    pub fn speaker<'book>(&self, book: &'book Book) -> Speaker<'book> {
        Speaker::new(book)
            .in_units(self.units)
            .in_language(self.language)
    }
}

impl Default for CardOptions {
    fn default() -> Self {
        Self {
            date: String::new(),
            language: Language::ENGLISH,
            units: DisplayUnits::METRIC,
        }
    }
}

/// Why there is no card.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum CardError {
    /// The recipe is not in the book.
    NoRecipe(RecipeId),
    /// The recipe has no such version.
    NoVersion {
        /// The recipe.
        recipe: RecipeId,
        /// The version.
        version: VersionId,
    },
    /// A comparison needs at least two drinks and has room for four.
    CountToCompare(usize),
    /// Nothing is to be made, or more than a sheet is made for.
    NothingToMake {
        /// Most drinks that one sheet is made for.
        most: u32,
    },
    /// The swap leads nowhere that could be taught.
    NoExercise {
        /// What is replaced.
        replace: IngredientId,
        /// What replaces it.
        with: IngredientId,
    },
    /// Nothing is on the menu.
    EmptyMenu,
    /// Nothing that is on the menu is what was approved.
    NothingApproved,
    /// There are more drinks than a card of the menu takes.
    MenuTooLong {
        /// How many there are.
        drinks: usize,
        /// How many a card takes.
        most: usize,
    },
    /// A blind tasting is of two drinks, a ranking of three.
    CountToTaste {
        /// How many there are.
        count: usize,
        /// How many it takes.
        wanted: usize,
    },
    /// Nobody tastes, or more people than there are codes for.
    CountOfTasters {
        /// Most people that one tasting has codes for.
        most: u32,
    },
}

impl CardError {
    /// The reason, and what to do.
    pub fn words(&self, speaker: &Speaker<'_>) -> String {
        match self {
            Self::NoRecipe(id) => say!(speaker, "card-no-recipe", id: id.as_str()),
            Self::NoVersion { recipe, version } => {
                let recipe = speaker.recipe(recipe);
                say!(speaker, "card-no-version", recipe: recipe, version: version.as_str())
            }
            Self::CountToCompare(count) => say!(speaker, "card-count-to-compare", count: *count),
            Self::NothingToMake { most } => {
                say!(speaker, "card-nothing-to-make", most: f64::from(*most).to_string())
            }
            Self::NoExercise { replace, with } => say!(
                speaker,
                "card-no-exercise",
                replace: speaker.ingredient(replace),
                with: speaker.ingredient(with),
            ),
            Self::EmptyMenu => speaker.word("card-empty-menu").to_owned(),
            Self::NothingApproved => speaker.word("card-nothing-approved").to_owned(),
            Self::MenuTooLong { drinks, most } => {
                say!(speaker, "card-menu-too-long", drinks: *drinks, most: most.to_string())
            }
            Self::CountToTaste { count, wanted } => {
                let (count, wanted) = (count.to_string(), wanted.to_string());
                say!(speaker, "card-count-to-taste", count: count, wanted: wanted)
            }
            Self::CountOfTasters { most } => {
                say!(speaker, "card-count-of-tasters", most: most.to_string())
            }
        }
    }
}

impl CardRequest {
    /// What kind of card it is.
    pub fn kind(&self) -> CardKind {
        match self {
            Self::Counter(_) => CardKind::Counter,
            Self::Training(_) => CardKind::Training,
            Self::Exercise(_) => CardKind::Exercise,
            Self::Answers(_) => CardKind::Answers,
            Self::Menu(_) => CardKind::Menu,
            Self::Figures(_) => CardKind::Figures,
            Self::Ladder(_) => CardKind::Ladder,
            Self::Matrix(_) => CardKind::Matrix,
            Self::Comparison(_) => CardKind::Comparison,
            Self::Batch(_) => CardKind::Batch,
            Self::Scores(_) => CardKind::Scores,
            Self::Pouring(_) => CardKind::Pouring,
        }
    }
}

impl Drink {
    /// The recipe, once it is sure that recipe and version are there.
    pub(super) fn recipe_in<'book>(&self, book: &'book Book) -> Result<&'book Recipe, CardError> {
        let recipe = book
            .recipe(&self.recipe)
            .ok_or_else(|| CardError::NoRecipe(self.recipe.clone()))?;
        match &self.version {
            Some(version) if recipe.version(version).is_none() => Err(CardError::NoVersion {
                recipe: self.recipe.clone(),
                version: version.clone(),
            }),
            _ => Ok(recipe),
        }
    }
}

/// Everything on the menu: recipes that are served in a cup and their versions, without the retired ones.
pub fn drinks_of_menu(book: &Book) -> Vec<Drink> {
    let mut drinks = Vec::new();
    for recipe in &book.recipes {
        let served = recipe.cup.is_some();
        if served && recipe.state != State::Retired {
            drinks.push(Drink {
                recipe: recipe.id.clone(),
                version: None,
            });
        }
        let versions = recipe.versions.iter();
        let mut lineages = Lineages::new(recipe);
        for version in versions.filter(|version| version.state != State::Retired) {
            let id = &version.id;
            if served || lineages.resolve(Some(id)).0.cup.is_some() {
                drinks.push(Drink {
                    recipe: recipe.id.clone(),
                    version: Some(id.clone()),
                });
            }
        }
    }
    drinks
}
