//! The join of every claim, through what the house makes.

use std::collections::{BTreeMap, BTreeSet};

use super::evidence::{Evidence, has_honey_sugars, has_milk_sugar, is_plain_water};
use super::verdict::{Against, AllergenSummary, Claim, Claims, Contradiction, Verdict};
use crate::book::{Allergen, AllergenStatement, Book, Declared, Ingredient, IngredientId};

/// What can be said of these ingredients together.
pub(super) fn claims_of<'book>(
    book: &'book Book,
    ids: impl Iterator<Item = &'book IngredientId>,
) -> Claims {
    let mut judging = Judging {
        book,
        states: BTreeMap::new(),
        open: Vec::new(),
        allergens: AllergenSummary {
            silent_on: book
                .settings
                .further_allergens()
                .map(|allergen| (allergen, BTreeSet::new()))
                .collect(),
            ..AllergenSummary::default()
        },
        contradictions: Vec::new(),
    };
    let whole = ids.fold(Judgement::NOTHING, |whole, id| {
        whole.join(judging.judge(id))
    });
    let AllergenSummary {
        contains,
        may_contain,
        not_stated,
        silent_on,
    } = judging.allergens;
    Claims {
        vegan: whole.vegan.verdict(),
        dairy_free: whole.dairy_free.verdict(),
        allergens: AllergenSummary {
            may_contain: &may_contain - &contains,
            contains,
            not_stated,
            silent_on,
        },
        contradictions: judging.contradictions,
    }
}

/// How a claim stands, the nearest to "yes" first. "No" is told apart by what it rests on: a claim to the contrary outweighs
/// a claim, and nothing outweighs evidence.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum ClaimStanding {
    Holds,
    NotKnown,
    Denied,
    Refuted,
}

impl ClaimStanding {
    fn verdict(self) -> Verdict {
        match self {
            Self::Holds => Verdict::Yes,
            Self::NotKnown => Verdict::NotKnown,
            Self::Denied | Self::Refuted => Verdict::No,
        }
    }
}

/// What an entry itself claims.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum OwnClaim {
    Yes,
    No,
    Both,
    Silent,
}

impl OwnClaim {
    fn new(yes: bool, no: bool) -> Self {
        match (yes, no) {
            (true, false) => Self::Yes,
            (false, true) => Self::No,
            (true, true) => Self::Both,
            (false, false) => Self::Silent,
        }
    }

    /// How the claim stands with everything else that the book says.
    ///
    /// It rises with each of its arguments, so that nothing that is added moves it towards "yes".
    fn joined(self, other: &Sources) -> ClaimStanding {
        let parts = other.parts.unwrap_or(ClaimStanding::Holds);
        if other.refuted || parts == ClaimStanding::Refuted {
            return ClaimStanding::Refuted;
        }
        match self {
            Self::Yes if parts == ClaimStanding::Denied => ClaimStanding::NotKnown,
            Self::Yes => parts,
            Self::No if other.parts == Some(ClaimStanding::Holds) => ClaimStanding::NotKnown,
            Self::No => ClaimStanding::Denied,
            Self::Both => parts.max(ClaimStanding::NotKnown),
            Self::Silent if other.is_doubtful => parts.max(ClaimStanding::NotKnown),
            Self::Silent if other.is_water => parts,
            Self::Silent => other.parts.unwrap_or(ClaimStanding::NotKnown),
        }
    }
}

/// What else says something about a claim of an entry.
struct Sources {
    /// The entry shows the opposite.
    refuted: bool,
    /// The entry leaves it open whether the opposite holds; its own claim settles that.
    is_doubtful: bool,
    /// It is water.
    is_water: bool,
    /// What the house makes it from, together; `None` when it is bought.
    parts: Option<ClaimStanding>,
}

/// What is known of an ingredient with everything in it.
#[derive(Clone, Copy)]
struct Judgement {
    vegan: ClaimStanding,
    dairy_free: ClaimStanding,
    /// A bit for each allergen that it contains.
    contains: u32,
}

impl Judgement {
    const NOTHING: Self = Self {
        vegan: ClaimStanding::Holds,
        dairy_free: ClaimStanding::Holds,
        contains: 0,
    };
    const UNKNOWN: Self = Self {
        vegan: ClaimStanding::NotKnown,
        dairy_free: ClaimStanding::NotKnown,
        contains: 0,
    };

    fn join(self, other: Self) -> Self {
        Self {
            vegan: self.vegan.max(other.vegan),
            dairy_free: self.dairy_free.max(other.dairy_free),
            contains: self.contains | other.contains,
        }
    }
}

const fn bit(allergen: Allergen) -> u32 {
    1 << allergen as u16
}

/// What the house makes an ingredient from.
struct Parts<'book> {
    ids: Vec<&'book IngredientId>,
    /// What each of those that were looked into is.
    judged: Vec<Judgement>,
}

impl<'book> Parts<'book> {
    fn joined(&self) -> Judgement {
        let judged = self.judged.iter().copied();
        judged.reduce(Judgement::join).unwrap_or(Judgement::UNKNOWN)
    }

    fn first(&self, is_wanted: impl Fn(&Judgement) -> bool) -> Option<&'book IngredientId> {
        let at = self.judged.iter().position(is_wanted)?;
        self.ids.get(at).copied()
    }
}

/// How far the walk is with an ingredient.
#[derive(Clone, Copy)]
enum State {
    /// Its parts are being looked into.
    Open,
    Judged(Judgement),
}

/// A walk down what the house makes that judges each ingredient once, however many others it is part of, and needs no
/// recursion, however deep it is made of batches.
struct Judging<'book> {
    book: &'book Book,
    states: BTreeMap<&'book IngredientId, State>,
    /// What is being looked into, the outermost first.
    open: Vec<(&'book Ingredient, Parts<'book>)>,
    allergens: AllergenSummary,
    contradictions: Vec<Contradiction>,
}

impl<'book> Judging<'book> {
    fn judge(&mut self, id: &'book IngredientId) -> Judgement {
        let mut arrived = self.enter(id);
        loop {
            match (arrived, self.open.last_mut()) {
                (Some(judgement), None) => return judgement,
                (Some(judgement), Some((_, parts))) => parts.judged.push(judgement),
                (None, _) => {}
            }
            let next = self
                .open
                .last()
                .map(|(_, parts)| parts.ids.get(parts.judged.len()).copied());
            arrived = match next {
                Some(Some(part)) => self.enter(part),
                Some(None) => self.leave(),
                None => Some(Judgement::UNKNOWN),
            };
        }
    }

    /// The judgement on an ingredient; `None` when its parts have to be looked into first.
    fn enter(&mut self, id: &'book IngredientId) -> Option<Judgement> {
        match self.states.get(id) {
            Some(State::Judged(judgement)) => return Some(*judgement),
            // It needs itself.
            Some(State::Open) => return Some(self.not_stated(id)),
            None => {}
        }
        let Some(ingredient) = self.book.ingredient(id) else {
            return Some(self.not_stated(id));
        };
        if ingredient.house_made.is_none() {
            let judgement = self.judge_entry(ingredient, None);
            self.states.insert(id, State::Judged(judgement));
            return Some(judgement);
        }
        let recipe = ingredient.recipe_in(self.book);
        let ids: Vec<&IngredientId> =
            recipe.map_or_else(Vec::new, |recipe| recipe.ingredients().collect());
        if ids.is_empty() {
            self.not_stated(id);
        }
        self.states.insert(id, State::Open);
        let judged = Vec::with_capacity(ids.len());
        self.open.push((ingredient, Parts { ids, judged }));
        None
    }

    /// The judgement on the innermost ingredient, whose parts have all been looked into.
    fn leave(&mut self) -> Option<Judgement> {
        let (ingredient, parts) = self.open.pop()?;
        let judgement = self.judge_entry(ingredient, Some(&parts));
        self.states.insert(&ingredient.id, State::Judged(judgement));
        Some(judgement)
    }

    fn not_stated(&mut self, id: &IngredientId) -> Judgement {
        self.allergens.not_stated.insert(id.clone());
        Judgement::UNKNOWN
    }

    fn judge_entry(&mut self, ingredient: &Ingredient, parts: Option<&Parts<'_>>) -> Judgement {
        let evidence = Evidence::new(ingredient);
        let of_parts = parts.map(Parts::joined);
        let is_water = parts.is_none() && is_plain_water(ingredient);
        let milk = evidence.contains.contains(&Allergen::Milk);
        let vegan = own_vegan(ingredient).joined(&Sources {
            refuted: evidence.shows_animal(),
            is_doubtful: evidence.doubtful,
            is_water,
            parts: of_parts.map(|parts| parts.vegan),
        });
        let dairy_free = own_dairy_free(ingredient).joined(&Sources {
            refuted: milk,
            is_doubtful: false,
            is_water,
            parts: of_parts.map(|parts| parts.dairy_free),
        });
        let own = evidence
            .contains
            .iter()
            .fold(0, |all, allergen| all | bit(*allergen));
        self.allergens.contains.extend(&evidence.contains);
        self.allergens.may_contain.extend(&evidence.may_contain);
        if parts.is_none() && !is_water {
            match &ingredient.allergens {
                None => {
                    self.not_stated(&ingredient.id);
                }
                Some(declared) => self.hear_silence(&ingredient.id, declared),
            }
        }
        self.find_contradictions(ingredient, parts);
        Judgement {
            vegan,
            dairy_free,
            contains: own | of_parts.map_or(0, |parts| parts.contains),
        }
    }

    /// Notes what the pack of an ingredient says nothing of, although it states its allergens.
    fn hear_silence(&mut self, id: &IngredientId, declared: &AllergenStatement) {
        for (allergen, silent) in &mut self.allergens.silent_on {
            if declared.says_of(*allergen) == Declared::NotStated {
                silent.insert(id.clone());
            }
        }
    }

    fn find_contradictions(&mut self, ingredient: &Ingredient, parts: Option<&Parts<'_>>) {
        let mut found: Vec<(Claim, Against)> = Vec::new();
        let diet = ingredient.diet;
        let claims: [(Claim, Option<bool>, StandingOf); 2] = [
            (Claim::Vegan, diet.vegan, |judged| judged.vegan),
            (Claim::DairyFree, diet.dairy_free, |judged| {
                judged.dairy_free
            }),
        ];
        for (claim, stated, standing) in claims {
            match stated {
                Some(true) => found.extend(
                    against_claim(ingredient, claim, parts, standing)
                        .into_iter()
                        .map(|against| (claim, against)),
                ),
                Some(false)
                    if parts
                        .is_some_and(|parts| standing(&parts.joined()) == ClaimStanding::Holds) =>
                {
                    found.push((claim, Against::EveryPart));
                }
                _ => {}
            }
        }
        if let (Some(declared), Some(parts)) = (&ingredient.allergens, parts) {
            // Outside the annex only what it claims to be free of.
            let claimed = Allergen::ANNEX.iter().chain(&declared.free_of).copied();
            let left_out =
                claimed.filter(|allergen| declared.says_of(*allergen) != Declared::Contains);
            found.extend(left_out.filter_map(|allergen| {
                let holder = parts.first(|part| part.contains & bit(allergen) != 0)?;
                let against = Against::AllergenOfPart(holder.clone(), allergen);
                Some((Claim::Allergens, against))
            }));
        }
        let id = &ingredient.id;
        let found = found.into_iter().map(|(claim, against)| Contradiction {
            ingredient: id.clone(),
            claim,
            against,
        });
        self.contradictions.extend(found);
    }
}

type StandingOf = fn(&Judgement) -> ClaimStanding;

/// What speaks against a claim that an entry makes.
fn against_claim(
    ingredient: &Ingredient,
    claim: Claim,
    parts: Option<&Parts<'_>>,
    standing: StandingOf,
) -> Vec<Against> {
    let is_vegan = claim == Claim::Vegan;
    let speaks =
        |allergen: &&Allergen| **allergen == Allergen::Milk || (is_vegan && allergen.is_animal());
    let declared = ingredient.allergens.as_ref();
    let allergen = declared.and_then(|declared| declared.contains.iter().find(speaks));
    let honey = is_vegan && has_honey_sugars(ingredient);
    let not_dairy_free = is_vegan && ingredient.diet.dairy_free == Some(false);
    let part = parts.and_then(|parts| parts.first(|part| standing(part) >= ClaimStanding::Denied));
    [
        allergen.map(|allergen| Against::Allergen(*allergen)),
        honey.then_some(Against::HoneySugars),
        has_milk_sugar(ingredient).then_some(Against::MilkSugars),
        not_dairy_free.then_some(Against::NotDairyFree),
        part.map(|part| Against::Part(part.clone())),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// What is not free of dairy is not vegan.
fn own_vegan(ingredient: &Ingredient) -> OwnClaim {
    let diet = ingredient.diet;
    OwnClaim::new(
        diet.vegan == Some(true),
        diet.vegan == Some(false) || diet.dairy_free == Some(false),
    )
}

/// What is vegan is free of dairy; what is not vegan may still be free of it.
fn own_dairy_free(ingredient: &Ingredient) -> OwnClaim {
    let diet = ingredient.diet;
    OwnClaim::new(
        diet.dairy_free == Some(true) || diet.vegan == Some(true),
        diet.dairy_free == Some(false),
    )
}
