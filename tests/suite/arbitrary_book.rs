//! Books at random, in which everything that a book can hold turns up sooner or later.
//!
//! A book is thrown from a seed, so that a failing case is one number.

use std::collections::BTreeMap;

use evensip::book::{
    Allergen, AllergenList, AllergenStatement, Amount, Approval, Article, Axis, Basis, Book,
    CarbohydrateKind, Carried, Change, Closure, ClosureKind, Composition, Confirmation,
    CoolingReading, CoolingRun, CupQuantity, Diet, DoubtClass, EarlierPrice, EarlierStates,
    EnergyUnit, Entry, Evidence, Figure, FiledReading, Filling, FlavourStrength, Form,
    HighPotencyAmount, HighPotencySweetener, HouseMade, Ingredient, IngredientId, Instruction,
    Instruments, Item, ItemId, LabelUnits, LanguageId, Line, LineId, Measure, MeasureId,
    MeasureKind, NamedLevel, Nominal, Nutrient, PolyolKind, Price, Reading, ReadingAmount, Recipe,
    RecipeId, RescaledDoubt, Resolved, Role, SaltUnit, Serviceware, ServicewareKind, Settings,
    Shape, Stage, State, StepSetting, SugarProfile, TasteNote, TastedCup, TastedFactor,
    TastedFigure, TastedWith, Tasting, TastingId, TastingOutcome, Temperature, TemperatureWindow,
    Translation, Version, VersionId, Vessel, VesselId, VesselKind, Yardstick,
};
use evensip::edit::Edit;
use evensip::quantity::{Pack, PackUnit};

/// Throws numbers (`SplitMix64` of Steele, Lea & Flood 2014).
pub(crate) struct Dice(pub(crate) u64);

impl Dice {
    pub(crate) fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut number = self.0;
        number = (number ^ (number >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        number = (number ^ (number >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        number ^ (number >> 31)
    }

    /// A number below a limit.
    pub(crate) fn below(&mut self, limit: usize) -> usize {
        usize::try_from(self.next() % limit.max(1) as u64).unwrap()
    }

    pub(crate) fn coin(&mut self) -> bool {
        self.next().is_multiple_of(2)
    }

    pub(crate) fn pick<T: Clone>(&mut self, of: &[T]) -> T {
        of[self.below(of.len())].clone()
    }

    /// One figure or a range.
    fn temperature(&mut self) -> Temperature {
        let from = self.number();
        if self.coin() {
            Temperature::between(from, self.number())
        } else {
            from.into()
        }
    }

    fn maybe<T>(&mut self, make: impl FnOnce(&mut Self) -> T) -> Option<T> {
        self.coin().then(|| make(self))
    }

    fn some<T>(&mut self, most: usize, mut make: impl FnMut(&mut Self) -> T) -> Vec<T> {
        let count = self.below(most + 1);
        (0..count).map(|_| make(self)).collect()
    }

    /// Any finite number, the edges among them.
    pub(crate) fn number(&mut self) -> f64 {
        match self.below(8) {
            0 => self.pick(&[
                0.0,
                -0.0,
                1e308,
                f64::MAX,
                f64::MIN_POSITIVE,
                5e-324,
                -1e-310,
                0.1 + 0.2,
            ]),
            1 => Some(f64::from_bits(self.next()))
                .filter(|number| number.is_finite())
                .unwrap_or(1.5),
            _ => (self.next() % 100_000) as f64 / 64.0,
        }
    }

    /// Any text: other scripts, quotes, brackets, hidden characters.
    pub(crate) fn text(&mut self) -> String {
        const PIECES: [&str; 16] = [
            "pear",
            " ",
            "黑糖",
            "\"",
            "\\",
            "\n",
            "\u{202e}",
            "\0",
            "// no comment",
            "/*",
            ")]}",
            "'",
            "🧋",
            "\t",
            "r#\"",
            "=1+1",
        ];
        self.some(5, |dice| dice.pick(&PIECES)).concat()
    }

    fn figure(&mut self) -> Figure {
        Figure {
            value: self.number(),
            evidence: self.pick(&Evidence::ALL),
            u: self.maybe(Self::number),
        }
    }

    fn date(&mut self) -> String {
        if self.below(5) == 0 {
            self.text()
        } else {
            format!(
                "20{:02}-0{}-1{}",
                self.below(99),
                1 + self.below(9),
                self.below(9)
            )
        }
    }
}

/// Ids that a thrown book uses; some of them name nothing.
fn id<I>(dice: &mut Dice, kind: &str, read: impl Fn(&str) -> I) -> I {
    read(&format!("{kind}-{}", dice.below(8)))
}

fn ingredient_id(dice: &mut Dice) -> IngredientId {
    id(dice, "ingredient", |text| IngredientId::new(text).unwrap())
}
fn measure_id(dice: &mut Dice) -> MeasureId {
    id(dice, "measure", |text| MeasureId::new(text).unwrap())
}
fn vessel_id(dice: &mut Dice) -> VesselId {
    id(dice, "vessel", |text| VesselId::new(text).unwrap())
}
fn recipe_id(dice: &mut Dice) -> RecipeId {
    id(dice, "recipe", |text| RecipeId::new(text).unwrap())
}
pub(crate) fn line_id(dice: &mut Dice) -> LineId {
    id(dice, "line", |text| LineId::new(text).unwrap())
}
pub(crate) fn version_id(dice: &mut Dice) -> VersionId {
    id(dice, "version", |text| VersionId::new(text).unwrap())
}

/// Mostly a language that there are cards in.
fn language(dice: &mut Dice) -> LanguageId {
    LanguageId::new(dice.pick(&["de", "zh-hant", "ko", "en", "tlh-2"])).unwrap()
}

fn translation(dice: &mut Dice) -> Translation {
    Translation {
        language: language(dice),
        of: dice.text(),
        text: dice.text(),
    }
}

fn translations(dice: &mut Dice) -> Vec<Translation> {
    dice.some(3, translation)
}

/// A book.
pub(crate) fn book(seed: u64) -> Book {
    let mut dice = Dice(seed);
    let dice = &mut dice;
    let mut book = Book {
        settings: settings(dice),
        ..Book::default()
    };
    for item in dice.some(5, ingredient) {
        book.ingredients.put(item);
    }
    for item in dice.some(4, measure) {
        book.measures.put(item);
    }
    for item in dice.some(4, vessel) {
        book.vessels.put(item);
    }
    for item in dice.some(5, recipe) {
        book.recipes.put(item);
    }
    for item in dice.some(3, tasting) {
        book.tastings.put(item);
    }
    book
}

fn axis(dice: &mut Dice) -> Axis {
    let axes = [
        Axis::Sweetness,
        Axis::TeaStrength,
        Axis::Flavour(dice.text()),
        Axis::Creaminess,
        Axis::Acidity,
        Axis::Body,
        Axis::Temperature,
        Axis::Volume,
    ];
    dice.pick(&axes)
}

pub(crate) fn settings(dice: &mut Dice) -> Settings {
    let step = |dice: &mut Dice| StepSetting {
        axis: axis(dice),
        fraction: dice.number(),
        floor: dice.number(),
        weight: dice.number(),
    };
    let level = |dice: &mut Dice| NamedLevel {
        name: dice.text(),
        percent: dice.number(),
    };
    Settings {
        shop: dice.text(),
        note: dice.text(),
        currency: dice.text(),
        room_temperature: dice.temperature(),
        refrigerator_temperature: dice.number(),
        ice_temperature: dice.number(),
        hot_drinking_temperature: dice.number(),
        iced_drinking_temperature: dice.number(),
        hot_window: TemperatureWindow {
            from: dice.number(),
            to: dice.number(),
        },
        iced_window: TemperatureWindow {
            from: dice.number(),
            to: dice.number(),
        },
        ice_bulk_density: dice.number(),
        ice_melt_rate: dice.maybe(Dice::number),
        ice_left: dice.maybe(Dice::number),
        sales_tax_percent: dice.maybe(Dice::number),
        instruments: Instruments {
            scale_grams: dice.maybe(Dice::number),
            thermometer_kelvin: dice.maybe(Dice::number),
            jug_percent: dice.maybe(Dice::number),
        },
        doubts: dice.some(2, |dice| RescaledDoubt {
            class: dice.pick(&DoubtClass::ALL),
            times: dice.number(),
            date: dice.date(),
            by: dice.text(),
            reason: dice.text(),
            readings: count(dice),
            inside: count(dice),
        }),
        steps: dice.some(3, step),
        yardsticks: dice.some(3, |dice| dice.pick(&Yardstick::ALL)),
        sugar_levels: dice.some(3, level),
        ice_levels: dice.some(3, level),
        earlier: earlier(dice, settings),
        language: dice.maybe(language),
        translations: translations(dice),
        confirmations: dice.some(2, |dice| Confirmation {
            language: language(dice),
            by: dice.text(),
            date: dice.date(),
        }),
        allergen_lists: dice.some(2, |dice| dice.pick(&AllergenList::ALL)),
    }
}

fn composition(dice: &mut Dice) -> Composition {
    let own = SugarProfile::Own {
        sucrose: dice.number(),
        glucose: dice.number(),
        fructose: dice.number(),
        lactose: dice.number(),
        maltose: dice.number(),
        other: dice.number(),
    };
    let profiles = [
        SugarProfile::Sucrose,
        SugarProfile::Invert,
        SugarProfile::Hfcs42,
        SugarProfile::Hfcs55,
        SugarProfile::Fructose,
        SugarProfile::Glucose,
        SugarProfile::Lactose,
        SugarProfile::Honey,
        SugarProfile::GlucoseSyrup {
            dextrose_equivalent: dice.number(),
        },
        own,
    ];
    let sweeteners = [
        HighPotencySweetener::Sucralose,
        HighPotencySweetener::Aspartame,
        HighPotencySweetener::AcesulfameK,
        HighPotencySweetener::RebaudiosideA,
        HighPotencySweetener::Stevioside,
        HighPotencySweetener::Saccharin,
    ];
    let basis = [
        Basis::Per100Grams,
        Basis::Per100Millilitres,
        Basis::PerServing(dice.number()),
    ];
    let mut composition = Composition {
        basis: dice.pick(&basis),
        carbohydrate_kind: dice
            .pick(&[CarbohydrateKind::WithoutFibre, CarbohydrateKind::WithFibre]),
        sugar_profile: dice.maybe(|dice| dice.pick(&profiles)),
        free_sugar_fraction: dice.maybe(Dice::number),
        flavours: dice.some(2, |dice| FlavourStrength {
            name: dice.text(),
            per_gram: dice.maybe(Dice::figure),
        }),
        high_potency: dice.some(2, |dice| HighPotencyAmount {
            sweetener: dice.pick(&sweeteners),
            milligrams: dice.maybe(Dice::figure),
        }),
        units: LabelUnits {
            energy: dice.pick(&[EnergyUnit::Kilojoules, EnergyUnit::Kilocalories]),
            salt: dice.pick(&[SaltUnit::Salt, SaltUnit::SodiumMilligrams]),
        },
        polyol: dice.maybe(|dice| dice.pick(&PolyolKind::ALL)),
        ..Composition::default()
    };
    for nutrient in Nutrient::ALL {
        if dice.coin() {
            composition.printed.insert(nutrient, dice.figure());
        }
    }
    composition
}

pub(crate) fn ingredient(dice: &mut Dice) -> Ingredient {
    Ingredient {
        id: ingredient_id(dice),
        name: dice.text(),
        brand: dice.text(),
        supplier: dice.text(),
        lot: dice.text(),
        form: dice.pick(&Form::ALL),
        role: dice.pick(&Role::ALL),
        composition: if dice.coin() {
            composition(dice)
        } else {
            Composition::default()
        },
        density: dice.maybe(Dice::figure),
        bulk_density: dice.maybe(Dice::figure),
        temperature: dice.maybe(Dice::temperature),
        statement: dice.text(),
        allergens: dice.maybe(|dice| AllergenStatement {
            contains: dice.some(3, |dice| dice.pick(&Allergen::ALL)),
            may_contain: dice.some(3, |dice| dice.pick(&Allergen::ALL)),
            free_of: dice.some(3, |dice| dice.pick(&Allergen::ALL)),
        }),
        diet: Diet {
            vegan: dice.maybe(Dice::coin),
            dairy_free: dice.maybe(Dice::coin),
        },
        opened_life_hours: dice.maybe(Dice::number),
        price: dice.maybe(|dice| Price {
            pack: dice.number(),
            content: pack(dice),
            waste_percent: dice.number(),
            date: dice.maybe(Dice::date),
        }),
        earlier_prices: dice.some(3, |dice| EarlierPrice {
            pack: dice.number(),
            content: pack(dice),
            date: dice.maybe(Dice::date),
            supplier: dice.text(),
        }),
        articles: dice.some(3, |dice| Article {
            supplier: dice.text(),
            article: dice.text(),
        }),
        no_longer_sold: dice.coin(),
        house_made: dice.maybe(|dice| HouseMade {
            recipe: recipe_id(dice),
            yield_grams: dice.figure(),
            extraction: dice.maybe(Dice::figure),
            steep_minutes: dice.maybe(Dice::number),
            shelf_life_hours: dice.maybe(Dice::number),
            waste_percent: dice.number(),
        }),
        tasted: dice.some(2, tasted_figure),
        note: dice.text(),
        earlier: earlier(dice, ingredient),
        translations: translations(dice),
    }
}

fn reading_amount(dice: &mut Dice) -> ReadingAmount {
    let number = dice.number();
    dice.pick(&[
        ReadingAmount::Grams(number),
        ReadingAmount::Millilitres(number),
    ])
}

pub(crate) fn measure(dice: &mut Dice) -> Measure {
    let nominal = [Nominal::Volume(dice.number()), Nominal::Mass(dice.number())];
    Measure {
        id: measure_id(dice),
        name: dice.text(),
        kind: dice.pick(&MeasureKind::ALL),
        temperature: dice.maybe(Dice::temperature),
        nominal: dice.maybe(|dice| dice.pick(&nominal)),
        filling: dice.pick(&[Filling::Levelled, Filling::Heaped]),
        increment: dice.maybe(Dice::number),
        readings: dice.some(3, |dice| Reading {
            ingredient: dice.maybe(ingredient_id),
            uses: u32::try_from(dice.below(1 << 20)).unwrap(),
            amount: reading_amount(dice),
            date: dice.maybe(Dice::date),
        }),
        note: dice.text(),
        earlier: earlier(dice, measure),
        translations: translations(dice),
    }
}

pub(crate) fn vessel(dice: &mut Dice) -> Vessel {
    let wide = dice.coin();
    let cooling_reading = |dice: &mut Dice| CoolingReading {
        minutes: dice.number(),
        celsius: dice.number(),
    };
    Vessel {
        id: vessel_id(dice),
        name: dice.text(),
        kind: dice.pick(&[VesselKind::Cup, VesselKind::Shaker, VesselKind::Jug]),
        capacity: dice.number(),
        shape: dice.maybe(|dice| Shape {
            height: dice.number(),
            bottom: dice.number(),
            top: dice.number(),
        }),
        mass: dice.maybe(Dice::number),
        specific_heat: dice.maybe(Dice::number),
        temperature: dice.maybe(Dice::number),
        cooling_minutes: dice.maybe(Dice::number),
        cooling_run: dice.maybe(|dice| CoolingRun {
            room: dice.number(),
            millilitres: dice.maybe(Dice::number),
            readings: dice.some(3, cooling_reading),
        }),
        price: dice.maybe(Dice::number),
        closures: dice.some(2, |dice| Closure {
            kind: dice.pick(&[ClosureKind::Open, ClosureKind::Lid, ClosureKind::Film]),
            price: dice.maybe(Dice::number),
            head_room: dice.number(),
            cooling_factor: dice.maybe(Dice::number),
        }),
        serviceware: dice.some(2, |dice| Serviceware {
            kind: dice.pick(&[ServicewareKind::Straw { wide }, ServicewareKind::Sleeve]),
            price: dice.maybe(Dice::number),
        }),
        note: dice.text(),
        earlier: earlier(dice, vessel),
        translations: translations(dice),
    }
}

fn amount(dice: &mut Dice) -> Amount {
    match dice.below(5) {
        0 => Amount::Grams(dice.number()),
        1 => Amount::Millilitres(dice.number()),
        2 => Amount::Count(dice.number(), measure_id(dice)),
        3 => Amount::FillTo(dice.number()),
        _ => Amount::FillToRim,
    }
}

fn carried(dice: &mut Dice) -> Carried {
    Carried {
        ingredient: ingredient_id(dice),
        grams: dice.number(),
    }
}

pub(crate) fn entry(dice: &mut Dice, id: LineId) -> Entry {
    if dice.below(4) == 0 {
        return Entry::Instruction(Instruction {
            id,
            text: dice.text(),
        });
    }
    Entry::Line(Line {
        id,
        ingredient: ingredient_id(dice),
        amount: amount(dice),
        temperature: dice.maybe(Dice::temperature),
        role: dice.pick(&Role::ALL),
        stage: dice.pick(&Stage::ALL),
        carried: dice.maybe(carried),
        note: dice.text(),
    })
}

/// Entries with ids of their own.
fn entries(dice: &mut Dice) -> Vec<Entry> {
    let mut found: Vec<Entry> = Vec::new();
    for _ in 0..dice.below(6) {
        let id = line_id(dice);
        if found.iter().all(|entry| *entry.id() != id) {
            found.push(entry(dice, id));
        }
    }
    found
}

pub(crate) fn change(dice: &mut Dice) -> Change {
    let id = line_id(dice);
    match dice.below(17) {
        0 => Change::Ingredient(id, ingredient_id(dice)),
        1 => Change::Amount(id, amount(dice)),
        2 => Change::Temperature(id, dice.maybe(Dice::temperature)),
        3 => Change::Role(id, dice.pick(&Role::ALL)),
        4 => Change::Stage(id, dice.pick(&Stage::ALL)),
        5 => Change::Carried(id, dice.maybe(carried)),
        6 => Change::Note(id, dice.text()),
        7 => Change::Instruction(id, dice.text()),
        8 => Change::Add(dice.maybe(line_id), entry(dice, id)),
        9 => Change::Remove(id),
        10 => Change::Move(id, dice.maybe(line_id)),
        11 => Change::Cup(vessel_id(dice)),
        12 => Change::Shaker(dice.maybe(vessel_id)),
        13 => Change::Strained(dice.coin()),
        14 => Change::DrinkingTemperature(dice.maybe(Dice::number)),
        15 => Change::SugarLevel(dice.maybe(Dice::number)),
        _ => Change::MenuPrice(dice.maybe(Dice::number)),
    }
}

pub(crate) fn resolved(dice: &mut Dice) -> Resolved {
    Resolved {
        entries: entries(dice),
        cup: dice.maybe(vessel_id),
        shaker: dice.maybe(vessel_id),
        strained: dice.coin(),
        drinking_temperature: dice.maybe(Dice::number),
        menu_price: dice.maybe(Dice::number),
        sugar_level: dice.maybe(Dice::number),
    }
}

/// What an item was before; of most items nothing is kept.
fn earlier<T>(dice: &mut Dice, was: fn(&mut Dice) -> T) -> EarlierStates<T> {
    let mut earlier = EarlierStates::default();
    if dice.below(6) == 0 {
        for _ in 0..=dice.below(2) {
            // A state between two others may have been put right.
            earlier.revision += dice.pick(&[0, 1]);
            earlier.keep(was(dice), 0);
            earlier.date_latest(dice.maybe(Dice::date).as_deref(), &dice.text());
        }
    }
    earlier
}

fn tasted_with(dice: &mut Dice) -> TastedWith {
    fn revisions<Id: Ord>(dice: &mut Dice, id: fn(&mut Dice) -> Id) -> BTreeMap<Id, u32> {
        let revised = dice.some(3, |dice| (id(dice), dice.pick(&[1, 2, 3])));
        revised.into_iter().collect()
    }
    TastedWith {
        settings: dice.pick(&[0, 1, 2]),
        ingredients: revisions(dice, ingredient_id),
        measures: revisions(dice, measure_id),
        vessels: revisions(dice, vessel_id),
        recipes: revisions(dice, recipe_id),
    }
}

pub(crate) fn approval(dice: &mut Dice) -> Approval {
    Approval {
        version: dice.maybe(version_id),
        date: dice.date(),
        by: dice.text(),
        reason: dice.text(),
        tasted_at: dice.maybe(Dice::number),
        resolved: resolved(dice),
        tasted_with: dice.maybe(tasted_with),
    }
}

pub(crate) fn version(dice: &mut Dice) -> Version {
    Version {
        id: version_id(dice),
        name: dice.text(),
        builds_on: dice.maybe(version_id),
        state: dice.pick(&State::ALL),
        season: dice.text(),
        changes: dice.some(5, change),
    }
}

pub(crate) fn cup_reading(dice: &mut Dice) -> FiledReading {
    FiledReading {
        version: dice.maybe(version_id),
        date: dice.date(),
        by: dice.text(),
        what: dice.pick(&CupQuantity::ALL),
        value: dice.number(),
        u: dice.number(),
        foretold: dice.number(),
        foretold_u: dice.number(),
        of_class: dice.number(),
        times: dice.number(),
    }
}

pub(crate) fn recipe(dice: &mut Dice) -> Recipe {
    Recipe {
        id: recipe_id(dice),
        name: dice.text(),
        state: dice.pick(&State::ALL),
        entries: entries(dice),
        cup: dice.maybe(vessel_id),
        shaker: dice.maybe(vessel_id),
        strained: dice.coin(),
        drinking_temperature: dice.maybe(Dice::number),
        menu_price: dice.maybe(Dice::number),
        sugar_level: dice.maybe(Dice::number),
        versions: dice.some(3, version),
        approvals: dice.some(3, approval),
        readings: dice.some(2, cup_reading),
        note: dice.text(),
        earlier: earlier(dice, resolved),
        translations: translations(dice),
    }
}

fn tasted_figure(dice: &mut Dice) -> TastedFigure {
    TastedFigure {
        what: if dice.coin() {
            TastedFactor::Sweetness
        } else {
            TastedFactor::Flavour(dice.text())
        },
        times: dice.number(),
        u: dice.number(),
        date: dice.date(),
        by: dice.text(),
        reason: dice.text(),
        tastings: dice.some(2, |dice| tasting(dice).id),
    }
}

fn tasted_cup(dice: &mut Dice) -> TastedCup {
    TastedCup {
        recipe: dice.maybe(recipe_id),
        version: dice.maybe(version_id),
        lines: resolved(dice),
        tasted_with: dice.maybe(tasted_with),
    }
}

fn count(dice: &mut Dice) -> u32 {
    u32::try_from(dice.below(12)).unwrap()
}

fn outcome(dice: &mut Dice) -> TastingOutcome {
    let (people, right) = (count(dice), count(dice));
    let times = dice.number();
    dice.pick(&[
        TastingOutcome::Said,
        TastingOutcome::Triangle { people, right },
        TastingOutcome::DuoTrio { people, right },
        TastingOutcome::Pair { people, right },
        TastingOutcome::PairEitherWay { people, right },
        TastingOutcome::Matched { people },
        TastingOutcome::PassedAsEqual { people },
        TastingOutcome::About { people, times },
    ])
}

pub(crate) fn tasting(dice: &mut Dice) -> Tasting {
    Tasting {
        id: id(dice, "tasting", |text| TastingId::new(text).unwrap()),
        date: dice.date(),
        people: dice.some(3, Dice::text),
        reason: dice.text(),
        cups: dice.some(3, tasted_cup),
        axis: dice.maybe(axis),
        outcome: outcome(dice),
        counts: dice.coin(),
        seed: dice.maybe(Dice::next),
        notes: dice.some(2, |dice| TasteNote {
            person: dice.text(),
            cup: count(dice),
            axis: dice.maybe(axis),
            text: dice.text(),
        }),
    }
}

/// Ids of the items on a shelf of a book.
pub(crate) fn ids<T: Item>(shelf: &evensip::book::Shelf<T>) -> Vec<T::Id> {
    shelf.iter().map(|item| item.id().clone()).collect()
}

/// An edit of any kind; its targets mostly exist.
pub(crate) fn edit(dice: &mut Dice, book: &Book) -> Edit {
    let recipes = ids(&book.recipes);
    if recipes.is_empty() {
        return Edit::PutRecipe(self::recipe(dice));
    }
    let recipe = dice.pick(&recipes);
    let version = dice.coin().then(|| version_id(dice));
    let text = dice.text();
    match dice.below(28) {
        26 => Edit::FileReading {
            recipe,
            reading: cup_reading(dice),
        },
        27 => Edit::RemoveReading {
            recipe,
            place: dice.below(3),
        },
        0..=4 => Edit::Change {
            recipe,
            version,
            change: change(dice),
        },
        5 => Edit::RenameRecipe { recipe, name: text },
        6 => Edit::NoteRecipe { recipe, note: text },
        7 => Edit::SetState {
            recipe,
            version,
            state: dice.pick(&State::ALL),
        },
        8 => Edit::AddVersion {
            recipe,
            version: self::version(dice),
        },
        9 => Edit::RenameVersion {
            recipe,
            version: version_id(dice),
            name: text,
        },
        10 => Edit::RemoveVersion {
            recipe,
            version: version_id(dice),
        },
        11 => Edit::Approve {
            recipe,
            approval: approval(dice),
        },
        12 => Edit::PutRecipe(self::recipe(dice)),
        13 => Edit::RemoveRecipe(recipe),
        14 => Edit::PutIngredient(ingredient(dice)),
        15 => Edit::PutMeasure(measure(dice)),
        16 => Edit::PutVessel(vessel(dice)),
        17 => match dice.below(3) {
            0 => Edit::RemoveIngredient(ingredient(dice).id),
            1 => Edit::RemoveMeasure(measure(dice).id),
            _ => Edit::RemoveVessel(vessel(dice).id),
        },
        18 => Edit::PutRight(item_id(dice)),
        19 => Edit::DateChange {
            item: item_id(dice),
            day: dice.maybe(Dice::date),
            lot: text,
        },
        20 => Edit::Translate {
            item: item_id(dice),
            translation: translation(dice),
        },
        21 => Edit::PutTasting(tasting(dice)),
        22 => Edit::RemoveTasting(tasting(dice).id),
        23 => Edit::TakeTasted {
            ingredient: ingredient_id(dice),
            figure: tasted_figure(dice),
        },
        24 => Edit::DropTasted {
            ingredient: ingredient_id(dice),
            what: tasted_figure(dice).what,
        },
        _ => Edit::SetSettings(settings(dice)),
    }
}

fn item_id(dice: &mut Dice) -> ItemId {
    match dice.below(6) {
        0 => ItemId::Settings,
        1 => ItemId::Tasting(tasting(dice).id),
        2 => ItemId::Ingredient(ingredient_id(dice)),
        3 => ItemId::Measure(measure_id(dice)),
        4 => ItemId::Vessel(vessel_id(dice)),
        _ => ItemId::Recipe(recipe_id(dice)),
    }
}

fn pack(dice: &mut Dice) -> Pack {
    Pack {
        count: dice.number(),
        each: dice.number(),
        unit: dice.pick(&[PackUnit::Grams, PackUnit::Millilitres]),
    }
}
