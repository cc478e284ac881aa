//! `evensip card`: a card, or one of every drink, into files; and recipes for other programs and other shops.

use std::collections::BTreeSet;
use std::path::Path;
use std::process::ExitCode;

use clap::ValueEnum;

use super::{
    CardArguments, Failure, REPEATED, complain, ingredient_called, open, out_file, print,
    recipe_called, report_errors, speaker, unknown, version_called,
};
use crate::book::{Axis, Book};
use crate::book_file;
use crate::cards::{
    AskedOfTasters, BatchItem, BlindTasting, CardError, CardOptions, CardRequest, Document, Drink,
    Fonts, OnMenu, Paper, TaughtSwap, Typesetter, card, csv, drinks_of_menu, file_name, html, json,
    json_ld, markdown, pdf,
};
use crate::exchange::write_recipe;
use crate::quantity::excerpt;
use crate::say::{Language, Speaker, UntranslatedText, say};

/// The kind of card.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, ValueEnum)]
pub(super) enum KindArgument {
    /// What the counter makes the drink from
    #[default]
    Counter,
    /// What a new hand learns the drink from
    Training,
    /// A swap for a group that learns, see --replace and --with
    Exercise,
    /// The answers to that exercise, see --replace and --with
    Answers,
    /// Ingredients and allergens of the whole menu
    Menu,
    /// What every drink on the menu costs, leaves and holds
    Figures,
    /// The levels of sugar, each with its amounts
    Ladder,
    /// The levels of sugar in every size with every amount of ice
    Matrix,
    /// Two to four versions beside each other, see --beside
    Comparison,
    /// What so many drinks need, see --drinks
    Batch,
    /// What the tasters of a blind tasting fill in, see --test
    Scores,
    /// Which code of a blind tasting is what, for whoever serves it, see --test
    Pouring,
    /// A schema.org Recipe (JSON-LD)
    Recipe,
    /// The approved recipe in grams, for another shop's book
    OtherShop,
}

/// The format of the file.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(super) enum FormatArgument {
    /// Pages with embedded fonts
    Pdf,
    /// A page for a browser
    Html,
    /// Markdown
    Md,
    /// Comma-separated values
    Csv,
    /// The card as data
    Json,
}

/// The size of the paper.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(super) enum PaperArgument {
    /// 148 × 210 mm
    A5,
    /// 5.5 × 8.5 in
    HalfLetter,
    /// 210 × 297 mm
    A4,
    /// 8.5 × 11 in
    Letter,
    /// A4 in large type, for a wall
    Wall,
    /// 8.5 × 11 in in large type, for a wall
    LetterWall,
}

impl FormatArgument {
    fn ending(self) -> &'static str {
        match self {
            Self::Pdf => "pdf",
            Self::Html => "html",
            Self::Md => "md",
            Self::Csv => "csv",
            Self::Json => "json",
        }
    }

    fn of_path(path: &Path) -> Option<Self> {
        let ending = path.extension()?.to_str()?.to_lowercase();
        Some(match ending.as_str() {
            "pdf" => Self::Pdf,
            "html" | "htm" => Self::Html,
            "md" | "markdown" => Self::Md,
            "csv" => Self::Csv,
            "json" | "jsonld" => Self::Json,
            _ => return None,
        })
    }
}

pub(super) fn run(arguments: &CardArguments) -> Result<ExitCode, Failure> {
    let (book, findings) = open(&arguments.book)?;
    out_file::is_not_the_book(arguments)?;
    if arguments.all {
        write_all(&book, arguments)?;
    } else {
        match arguments.kind {
            KindArgument::Recipe => {
                has_format_of_its_own(arguments, Some(FormatArgument::Json))?;
                write_json_ld(&book, arguments)?;
            }
            KindArgument::OtherShop => {
                has_format_of_its_own(arguments, None)?;
                write_for_other_shop(&book, arguments)?;
            }
            _ => write_one(&book, arguments)?,
        }
    }
    Ok(report_errors(&book, &findings))
}

/// Refuses a format or the ending of another for a kind that has only one.
fn has_format_of_its_own(
    arguments: &CardArguments,
    own: Option<FormatArgument>,
) -> Result<(), Failure> {
    let asked = arguments
        .format
        .or_else(|| FormatArgument::of_path(&arguments.out));
    match asked {
        Some(format) if Some(format) != own => Err(Failure::Usage(match own {
            Some(_) => say!(speaker(), "command-card-only-json", ending: format.ending()),
            None => say!(speaker(), "command-card-only-book", ending: format.ending()),
        })),
        _ => Ok(()),
    }
}

fn usage(book: &Book, error: &CardError) -> Failure {
    Failure::Usage(error.words(&Speaker::new(book)))
}

fn drink(book: &Book, recipe: &str, version: Option<&str>) -> Result<Drink, Failure> {
    let recipe = recipe_called(book, recipe)?;
    Ok(Drink {
        recipe: recipe.id.clone(),
        version: version_called(recipe, version)?,
    })
}

fn named_drink(book: &Book, arguments: &CardArguments) -> Result<Drink, Failure> {
    match &arguments.recipe {
        Some(recipe) => drink(book, recipe, arguments.version.as_deref()),
        None => Err(Failure::Usage(
            speaker().word("command-card-needs-recipe").to_owned(),
        )),
    }
}

/// "ID" is the recipe itself, "ID/VERSION" one of its versions.
fn drink_text(book: &Book, text: &str) -> Result<Drink, Failure> {
    match text.split_once('/') {
        Some((recipe, version)) => drink(book, recipe, Some(version)),
        None => drink(book, text, None),
    }
}

fn taught_swap(book: &Book, arguments: &CardArguments) -> Result<TaughtSwap, Failure> {
    let (Some(replace), Some(with)) = (&arguments.replace, &arguments.with) else {
        return Err(Failure::Usage(
            speaker().word("command-card-needs-swap").to_owned(),
        ));
    };
    Ok(TaughtSwap {
        drink: named_drink(book, arguments)?,
        replace: ingredient_called(book, replace)?,
        with: ingredient_called(book, with)?,
    })
}

/// What tasters are asked: "liking", or an axis of taste by its word.
fn asked(book: &Book, text: &str) -> Result<AskedOfTasters, Failure> {
    const LIKING: &str = "liking";
    if text == LIKING {
        return Ok(AskedOfTasters::Liking);
    }
    let axes = book.axes();
    let is_called = |axis: &&Axis| axis.word() == text || axis.word().replace(' ', "-") == text;
    let found = axes.iter().find(is_called);
    found.cloned().map(AskedOfTasters::More).ok_or_else(|| {
        let words = axes.iter().map(Axis::word);
        unknown("command-no-axis", text, words.chain([LIKING]))
    })
}

fn blind_tasting(book: &Book, arguments: &CardArguments) -> Result<BlindTasting, Failure> {
    let (Some(test), Some(people), Some(seed)) = (arguments.test, arguments.people, arguments.seed)
    else {
        return Err(Failure::Usage(
            speaker().word("command-card-needs-tasting").to_owned(),
        ));
    };
    Ok(BlindTasting {
        design: test.into(),
        samples: drinks_beside(book, arguments)?,
        people,
        seed,
        asked: asked(book, &arguments.ask)?,
    })
}

/// The drink that is named, then those beside it.
fn drinks_beside(book: &Book, arguments: &CardArguments) -> Result<Vec<Drink>, Failure> {
    let mut drinks = vec![named_drink(book, arguments)?];
    for text in &arguments.beside {
        drinks.push(drink_text(book, text)?);
    }
    Ok(drinks)
}

fn request(book: &Book, arguments: &CardArguments) -> Result<CardRequest, Failure> {
    Ok(match arguments.kind {
        KindArgument::Menu if arguments.unapproved => CardRequest::Menu(OnMenu::All),
        KindArgument::Menu => CardRequest::Menu(OnMenu::Approved),
        KindArgument::Figures if arguments.unapproved => CardRequest::Figures(OnMenu::All),
        KindArgument::Figures => CardRequest::Figures(OnMenu::Approved),
        KindArgument::Training => CardRequest::Training(named_drink(book, arguments)?),
        KindArgument::Exercise => CardRequest::Exercise(taught_swap(book, arguments)?),
        KindArgument::Answers => CardRequest::Answers(taught_swap(book, arguments)?),
        KindArgument::Ladder => CardRequest::Ladder(named_drink(book, arguments)?),
        KindArgument::Matrix => CardRequest::Matrix(named_drink(book, arguments)?),
        KindArgument::Comparison => CardRequest::Comparison(drinks_beside(book, arguments)?),
        KindArgument::Scores => CardRequest::Scores(blind_tasting(book, arguments)?),
        KindArgument::Pouring => CardRequest::Pouring(blind_tasting(book, arguments)?),
        KindArgument::Batch => {
            let mut items = Vec::new();
            if arguments.recipe.is_some() {
                items.push(BatchItem {
                    drink: named_drink(book, arguments)?,
                    count: arguments.drinks,
                });
            }
            for text in &arguments.also {
                let parts = text
                    .rsplit_once('=')
                    .and_then(|(drink, count)| Some((drink, count.parse().ok()?)));
                let Some((text, count)) = parts else {
                    return Err(Failure::Usage(say!(
                        speaker(),
                        "command-enter-count",
                        text: text.escape_debug().to_string(),
                    )));
                };
                let drink = drink_text(book, text)?;
                items.push(BatchItem { drink, count });
            }
            CardRequest::Batch(items)
        }
        _ => CardRequest::Counter(named_drink(book, arguments)?),
    })
}

fn options(arguments: &CardArguments) -> CardOptions {
    CardOptions {
        date: arguments.date.clone().unwrap_or_default(),
        language: arguments.language,
        ..CardOptions::default()
    }
}

fn paper(arguments: &CardArguments, document: &Document) -> Paper {
    match arguments.paper {
        Some(PaperArgument::A5) => Paper::A5,
        Some(PaperArgument::HalfLetter) => Paper::HalfLetter,
        Some(PaperArgument::A4) => Paper::A4,
        Some(PaperArgument::Letter) => Paper::Letter,
        Some(PaperArgument::Wall) => Paper::Wall,
        Some(PaperArgument::LetterWall) => Paper::LetterWall,
        None => Paper::usual(document.kind, false),
    }
}

/// The format that was asked for, else that of the file's ending.
fn format(arguments: &CardArguments) -> Result<FormatArgument, Failure> {
    arguments
        .format
        .or_else(|| FormatArgument::of_path(&arguments.out))
        .ok_or_else(|| Failure::Usage(speaker().word("command-card-needs-format").to_owned()))
}

fn write_one(book: &Book, arguments: &CardArguments) -> Result<(), Failure> {
    let request = request(book, arguments)?;
    let document =
        card(book, &request, &options(arguments)).map_err(|error| usage(book, &error))?;
    let format = format(arguments)?;
    name_unconfirmed(book, arguments);
    name_untranslated(book, arguments, &document.untranslated);
    let mut setter = (format == FormatArgument::Pdf)
        .then(|| Typesetter::new(Fonts::installed(), arguments.language.code()));
    let bytes = bytes_of(
        &document,
        format,
        paper(arguments, &document),
        setter.as_mut(),
    )?;
    out_file::write(arguments, &bytes)
}

fn bytes_of(
    document: &Document,
    format: FormatArgument,
    paper: Paper,
    setter: Option<&mut Typesetter>,
) -> Result<Vec<u8>, Failure> {
    Ok(match (format, setter) {
        (FormatArgument::Pdf, Some(setter)) => {
            name_missing(document, setter);
            let pages = setter.pages(document, paper);
            pdf(document, &pages)
                .map_err(|error| Failure::Book(error.words(&Speaker::without_book())))?
        }
        (FormatArgument::Html, _) => html(document, paper).into_bytes(),
        (FormatArgument::Csv, _) => csv(document),
        (FormatArgument::Json, _) => format!("{:#}\n", json(document)).into_bytes(),
        (FormatArgument::Md | FormatArgument::Pdf, _) => markdown(document).into_bytes(),
    })
}

/// Names the characters that will be blank boxes.
fn name_missing(document: &Document, setter: &mut Typesetter) {
    for missing in setter.missing(&document.texts()) {
        complain(&say!(
            speaker(),
            "command-card-no-font",
            letters: missing.words(),
            text: excerpt(&missing.text, REPEATED),
        ));
    }
}

/// Says that nobody has confirmed the allergens and cautions in the language of the card.
fn name_unconfirmed(book: &Book, arguments: &CardArguments) {
    let language = arguments.language;
    let is_confirmed = book.settings.confirmation_in(language.code()).is_some();
    if language != Language::ENGLISH && !is_confirmed {
        let language = language.name();
        complain(&say!(speaker(), "command-card-not-confirmed", language: language));
    }
}

/// Names the texts that are printed as they are written, because they have no words in the language of the card.
fn name_untranslated(book: &Book, arguments: &CardArguments, texts: &[UntranslatedText]) {
    for found in texts {
        complain(&say!(
            speaker(),
            "command-card-untranslated",
            text: excerpt(&found.text, REPEATED),
            item: excerpt(&book.name_of(&found.item), REPEATED),
            language: arguments.language.name(),
        ));
    }
}

/// A card of every drink on the menu into a folder.
fn write_all(book: &Book, arguments: &CardArguments) -> Result<(), Failure> {
    let Some(format) = arguments.format else {
        return Err(Failure::Usage(
            speaker().word("command-cards-need-format").to_owned(),
        ));
    };
    let kind: fn(Drink) -> CardRequest = match arguments.kind {
        KindArgument::Counter => CardRequest::Counter,
        KindArgument::Training => CardRequest::Training,
        KindArgument::Ladder => CardRequest::Ladder,
        KindArgument::Matrix => CardRequest::Matrix,
        _ => {
            return Err(Failure::Usage(
                speaker().word("command-cards-of-kinds").to_owned(),
            ));
        }
    };
    let mut setter = (format == FormatArgument::Pdf)
        .then(|| Typesetter::new(Fonts::installed(), arguments.language.code()));
    let (mut written, mut renamed) = (0_usize, Vec::new());
    let drinks = drinks_of_menu(book);
    if drinks.is_empty() {
        return Err(usage(book, &CardError::EmptyMenu));
    }
    name_unconfirmed(book, arguments);
    let mut named = BTreeSet::new();
    for drink in drinks {
        let mut document =
            card(book, &kind(drink), &options(arguments)).map_err(|error| usage(book, &error))?;
        document
            .untranslated
            .retain(|found| named.insert(found.clone()));
        name_untranslated(book, arguments, &document.untranslated);
        let paper = paper(arguments, &document);
        let bytes = bytes_of(&document, format, paper, setter.as_mut())?;
        let name = file_name(&document, format.ending());
        let path = book_file::write_beside_others(&arguments.out, &name, &bytes)
            .map_err(|error| Failure::Book(speaker().save_error(&error)))?;
        written += 1;
        let called = path.file_name().unwrap_or_default().to_string_lossy();
        if called != name {
            renamed.push(say!(
                speaker(),
                "command-cards-renamed",
                name: called.as_ref(),
                taken: name,
            ));
        }
    }
    let folder = arguments.out.display().to_string();
    print(&say!(speaker(), "command-cards-written", count: written, folder: folder))?;
    for renamed in renamed {
        print(&renamed)?;
    }
    Ok(())
}

fn write_json_ld(book: &Book, arguments: &CardArguments) -> Result<(), Failure> {
    let drink = named_drink(book, arguments)?;
    let recipe = json_ld(book, &drink, &options(arguments)).map_err(|error| usage(book, &error))?;
    name_untranslated(book, arguments, &recipe.untranslated);
    out_file::write(arguments, format!("{:#}\n", recipe.value).as_bytes())?;
    let left = recipe.left_behind.join("\n  ");
    let title = speaker().word("command-card-left-behind");
    print(&format!("{title}\n  {left}"))
}

fn write_for_other_shop(book: &Book, arguments: &CardArguments) -> Result<(), Failure> {
    let drink = named_drink(book, arguments)?;
    let mut passed = write_recipe(book, &drink.recipe, drink.version.as_ref())
        .map_err(|error| Failure::Usage(Speaker::new(book).recipe_exchange_error(&error)))?;
    passed.settings.note = Speaker::new(book).passed_on();
    out_file::write(arguments, book_file::write(&passed).as_bytes())
}
