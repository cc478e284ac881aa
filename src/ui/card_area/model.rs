//! What is chosen for a card, and the order that comes of it.

use std::path::PathBuf;

use super::batch::BatchOrder;
use super::review::ReviewState;
use super::tasting::TastingOrder;
use crate::book::{IngredientId, Recipe, RecipeId, VersionId};
use crate::cards::{CardKind, CardOptions, CardRequest, Drink, OnMenu, Paper, TaughtSwap};
use crate::quantity::DisplayUnits;
use crate::say::Language;
use crate::ui::Screen;
use crate::workbench::{CardFormat, PreviewOrder, Shown};

/// A texture that is kept while its page is.
pub(super) type PageTexture = (usize, usize, u32, egui::TextureHandle);

/// What the card area remembers between frames.
#[derive(Default)]
pub struct CardState {
    /// What the card is for.
    pub kind: CardKind,
    /// The paper that a person chose; the usual one of the kind while nobody has.
    pub paper: Option<Paper>,
    /// Whether the shop buys paper in inches.
    pub inches: bool,
    /// The day that stands on it; today's until it is changed.
    pub date: Option<String>,
    /// Language of the card.
    pub language: Language,
    /// Who confirms the allergens and cautions in that language, as typed.
    pub confirmed_by: String,
    /// What the shopping is for.
    pub batch: BatchOrder,
    /// Whether drinks that are not approved stand on the card of the menu.
    pub also_unapproved: bool,
    /// Versions that are compared with the one in hand.
    pub beside: Vec<Option<VersionId>>,
    /// The recipe that `beside` belongs to.
    beside_of: Option<RecipeId>,
    /// What goes and what comes in the exercise.
    pub exercise: Option<(IngredientId, IngredientId)>,
    /// How the blind tasting is held.
    pub tasting: TastingOrder,
    /// The format of the file.
    pub format: CardFormat,
    /// The card that was in sight when files were last written: what was written is said beside no other.
    pub written_for: Option<(PreviewOrder, CardFormat)>,
    /// The folder that files go to, as typed.
    pub folder: String,
    /// The page in sight, from 0.
    pub page: usize,
    /// Path of what is brought in, as typed.
    pub list_path: String,
    pub(super) textures: Vec<PageTexture>,
    pub(super) review: ReviewState,
}

impl CardState {
    /// Fills what nobody has chosen yet.
    pub(super) fn begin(&mut self, screen: &Screen<'_>, today: &str) {
        // The frame in which the area is opened does not know the day yet.
        if self.date.is_none() && !today.is_empty() {
            self.date = Some(today.to_owned());
        }
        self.batch.follow(screen.book, screen.shown);
        if self.folder.is_empty() {
            self.folder = usual_folder().display().to_string();
        }
        if self.beside_of.as_ref() != Some(&screen.recipe.id) {
            self.beside_of = Some(screen.recipe.id.clone());
            self.beside = others(screen.recipe, screen.shown.version.as_ref())
                .into_iter()
                .take(1)
                .collect();
        }
    }

    /// The paper that is used.
    pub fn paper(&self) -> Paper {
        self.paper
            .unwrap_or_else(|| Paper::usual(self.kind, self.inches))
    }

    /// What is asked for of the version in hand; `None` while something is missing.
    pub fn request(&self, shown: &Shown) -> Option<CardRequest> {
        let drink = Drink {
            recipe: shown.recipe.clone(),
            version: shown.version.clone(),
        };
        Some(match self.kind {
            CardKind::Counter => CardRequest::Counter(drink),
            CardKind::Training => CardRequest::Training(drink),
            CardKind::Exercise | CardKind::Answers => {
                let (replace, with) = self.exercise.clone()?;
                let swap = TaughtSwap {
                    drink,
                    replace,
                    with,
                };
                if self.kind == CardKind::Exercise {
                    CardRequest::Exercise(swap)
                } else {
                    CardRequest::Answers(swap)
                }
            }
            CardKind::Menu if self.also_unapproved => CardRequest::Menu(OnMenu::All),
            CardKind::Menu => CardRequest::Menu(OnMenu::Approved),
            CardKind::Figures if self.also_unapproved => CardRequest::Figures(OnMenu::All),
            CardKind::Figures => CardRequest::Figures(OnMenu::Approved),
            CardKind::Ladder => CardRequest::Ladder(drink),
            CardKind::Matrix => CardRequest::Matrix(drink),
            CardKind::Comparison => {
                let drinks = self.with_beside(drink);
                if drinks.len() < 2 {
                    return None;
                }
                CardRequest::Comparison(drinks)
            }
            CardKind::Batch => CardRequest::Batch(self.batch.items()?),
            CardKind::Scores => CardRequest::Scores(self.tasting.of(self.with_beside(drink))?),
            CardKind::Pouring => CardRequest::Pouring(self.tasting.of(self.with_beside(drink))?),
        })
    }

    /// The drink in hand, then the versions that were chosen beside it.
    fn with_beside(&self, drink: Drink) -> Vec<Drink> {
        let others = self.beside.iter();
        let others = others.filter(|version| **version != drink.version);
        let others: Vec<Drink> = others
            .map(|version| Drink {
                recipe: drink.recipe.clone(),
                version: version.clone(),
            })
            .collect();
        std::iter::once(drink).chain(others).collect()
    }

    /// Date, language and units.
    pub fn options(&self, units: DisplayUnits) -> CardOptions {
        CardOptions {
            date: self.date.clone().unwrap_or_default(),
            language: self.language,
            units,
        }
    }

    /// The preview that is wanted.
    pub fn order(&self, shown: &Shown, units: DisplayUnits) -> Option<PreviewOrder> {
        // Nothing is laid out before the first frame has filled the choices.
        self.date.as_ref()?;
        Some(PreviewOrder {
            request: self.request(shown)?,
            options: self.options(units),
            paper: self.paper(),
        })
    }

    /// How a card of a drink is asked for; `None` for a kind that is no card of one drink.
    pub fn kind_of_each_drink(&self) -> Option<fn(Drink) -> CardRequest> {
        match self.kind {
            CardKind::Counter => Some(CardRequest::Counter),
            CardKind::Training => Some(CardRequest::Training),
            CardKind::Ladder => Some(CardRequest::Ladder),
            CardKind::Matrix => Some(CardRequest::Matrix),
            CardKind::Menu
            | CardKind::Figures
            | CardKind::Comparison
            | CardKind::Batch
            | CardKind::Exercise
            | CardKind::Answers
            | CardKind::Scores
            | CardKind::Pouring => None,
        }
    }
}

/// The other versions of a recipe, the recipe itself among them.
pub(super) fn others(recipe: &Recipe, shown: Option<&VersionId>) -> Vec<Option<VersionId>> {
    std::iter::once(None)
        .chain(
            recipe
                .versions
                .iter()
                .map(|version| Some(version.id.clone())),
        )
        .filter(|version| version.as_ref() != shown)
        .collect()
}

/// Where files go while nobody has said otherwise: the home folder, or the one in which the program was started where there is none.
fn usual_folder() -> PathBuf {
    std::env::home_dir()
        .filter(|folder| !folder.as_os_str().is_empty())
        .unwrap_or_else(|| PathBuf::from("."))
}
