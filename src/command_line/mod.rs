//! Commands that need no display: check, balance, swap, cups, why-off, last-sip, supply, ladder, card, bring-in, blind, tasting, brix, control, record.
//!
//! They print for people by default and one JSON document with `--json`. Exit code 0 on success, 1 when the book has
//! errors, 2 on wrong usage; messages go to standard error.

mod balance;
mod blind;
mod bring_in;
mod bring_in_list;
mod brix;
mod card;
mod caution_json;
mod check;
mod claims_json;
mod control;
mod cups;
mod facts;
mod json;
mod ladder;
mod last_sip;
mod out_file;
mod record;
mod serving_json;
mod supply;
mod swap;
mod tasting;
mod text;
mod why_off;

use std::ffi::OsString;
use std::io::Write;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use clap::builder::{PossibleValue, PossibleValuesParser, TypedValueParser};
use clap::{Args, CommandFactory as _, Parser, Subcommand};

use crate::book::{
    Book, Day, Finding, IngredientId, Recipe, RecipeId, Severity, VersionId, nearest,
};
use crate::book_file;
use crate::quantity::{NumberError, excerpt, parse_number, visible};
use crate::say::{Language, Speaker, say};

/// The arguments of the program.
#[derive(Debug, Parser)]
#[command(
    name = "evensip",
    version,
    about,
    args_conflicts_with_subcommands = true,
    after_help = exit_codes()
)]
pub struct Arguments {
    /// The book to open in the window; the last one when none is given
    pub book: Option<PathBuf>,
    /// What to do without a window
    #[command(subcommand)]
    pub command: Option<Command>,
}

/// What can be done without a display.
#[derive(Debug, Subcommand)]
pub enum Command {
    /// Report every problem of one or more books, with its place
    #[command(after_help = exit_codes())]
    Check(CheckArguments),
    /// Print the balance of a recipe or version
    #[command(after_help = exit_codes())]
    Balance(BalanceArguments),
    /// Replace an ingredient and print how to match the standard again
    #[command(after_help = exit_codes())]
    Swap(Box<SwapArguments>),
    /// Draw cups of a recipe or version, and tell how many taste like the standard and what would help
    #[command(after_help = exit_codes())]
    Cups(CupsArguments),
    /// Tell what most likely went wrong with one cup, by its weight, temperature, °Brix or ice
    #[command(after_help = exit_codes())]
    WhyOff(WhyOffArguments),
    /// Tell how warm, sweet and strong a drink is from the counter to the last sip, and when it is at its best
    #[command(after_help = exit_codes())]
    LastSip(LastSipArguments),
    /// Compare suppliers over the whole menu: every combination of what is offered, with cost, distance and what changes
    #[command(after_help = exit_codes())]
    Supply(SupplyArguments),
    /// Print the sugar ladder of a recipe or version, with the floor that its powders carry
    #[command(after_help = exit_codes())]
    Ladder(LadderArguments),
    /// Write a card, a sheet for the whole menu, or a recipe for others to a file
    #[command(after_help = exit_codes())]
    Card(Box<CardArguments>),
    /// Review what a price list (CSV), a schema.org recipe or another shop's recipe would do to a book
    #[command(after_help = exit_codes())]
    BringIn(BringInArguments),
    /// Plan a blind test, print its serving orders, or tell what its answers show
    #[command(subcommand, after_help = exit_codes())]
    Blind(blind::BlindCommand),
    /// Keep tastings in a book, and tell what they say of its ingredients
    #[command(subcommand, after_help = exit_codes())]
    Tasting(tasting::TastingCommand),
    /// Tell what a refractometer reading comes to, of a drink or of a product in water
    #[command(after_help = exit_codes())]
    Brix(BrixArguments),
    /// Tell from dated readings whether measures still dose as they did, and which approved drinks move with them
    #[command(after_help = exit_codes())]
    Control(control::ControlArguments),
    /// Tell how often the ± held for what was read, and re-scale doubts by it
    #[command(subcommand, after_help = exit_codes())]
    Record(record::RecordCommand),
}

/// Arguments of `check`.
#[derive(Debug, Args)]
pub struct CheckArguments {
    /// The book; with several, the file stands before each line, and in JSON each is one of `books`
    #[arg(value_name = "BOOK", required = true)]
    books: Vec<PathBuf>,
    /// Also print the approvals and what changed between them: of this recipe, or of all
    #[arg(long, value_name = "RECIPE", num_args = 0..=1, default_missing_value = "")]
    history: Option<String>,
    /// Print one JSON document
    #[arg(long)]
    json: bool,
}

/// Arguments of `balance`.
#[derive(Debug, Args)]
pub struct BalanceArguments {
    /// The book
    book: PathBuf,
    /// Id of the recipe
    #[arg(long, required_unless_present = "all", conflicts_with = "all")]
    recipe: Option<String>,
    /// Id of the version; the recipe itself when none is given
    #[arg(long, requires = "recipe", conflicts_with = "all")]
    version: Option<String>,
    /// Every recipe and version
    #[arg(long)]
    all: bool,
    /// Print one JSON document
    #[arg(long)]
    json: bool,
}

/// Arguments of `swap`.
#[derive(Debug, Args)]
pub struct SwapArguments {
    /// The book
    book: PathBuf,
    /// Id of the recipe
    #[arg(long)]
    recipe: String,
    /// Id of the version; the recipe itself when none is given
    #[arg(long)]
    version: Option<String>,
    /// Id of the ingredient to replace
    #[arg(long)]
    replace: String,
    /// Id of the new ingredient
    #[arg(long)]
    with: String,
    /// Further swaps made together with it, as OLD=NEW
    #[arg(long = "also", value_name = "OLD=NEW")]
    also: Vec<String>,
    /// Id of a line that may change; the lines are chosen by default
    #[arg(long = "adjust", value_name = "LINE")]
    adjust: Vec<String>,
    /// Id of a line that must not change
    #[arg(long = "lock", value_name = "LINE")]
    lock: Vec<String>,
    /// Id of a line that may change besides those chosen by default
    #[arg(long = "unlock", value_name = "LINE")]
    unlock: Vec<String>,
    /// Smallest and largest amount of a line, in its own unit, as LINE=LEAST..MOST
    #[arg(long = "limit", value_name = "LINE=LEAST..MOST")]
    limit: Vec<String>,
    /// Keep the drink vegan by its ingredients
    #[arg(long)]
    vegan: bool,
    /// An allergen that no ingredient may contain
    #[arg(long = "without", value_name = "ALLERGEN")]
    without: Vec<String>,
    /// Most sugar, g per 100 ml
    #[arg(long, value_parser = amount, allow_negative_numbers = true, value_name = "GRAMS")]
    most_sugar: Option<f64>,
    /// Most energy of the drink, kJ
    #[arg(long, value_parser = amount, allow_negative_numbers = true, value_name = "KJ")]
    most_energy: Option<f64>,
    /// Most cost of the drink, in the book's currency
    #[arg(long, value_parser = amount, allow_negative_numbers = true, value_name = "AMOUNT")]
    most_cost: Option<f64>,
    /// Most of the cup that may be filled, percent
    #[arg(long, value_parser = percent, allow_negative_numbers = true, value_name = "PERCENT")]
    most_fill: Option<f64>,
    /// Serving temperatures, °C, as FROM..TO
    #[arg(long, value_name = "FROM..TO", allow_hyphen_values = true)]
    temperature: Option<String>,
    /// Print one JSON document
    #[arg(long)]
    json: bool,
}

/// Arguments of `ladder`.
#[derive(Debug, Args)]
pub struct LadderArguments {
    /// The book
    book: PathBuf,
    /// Id of the recipe
    #[arg(long)]
    recipe: String,
    /// Id of the version; the recipe itself when none is given
    #[arg(long)]
    version: Option<String>,
    /// A level as the shop names it, as NAME=PERCENT; 100, 75, 50, 25 and 0 % by default
    #[arg(long = "level", value_name = "NAME=PERCENT")]
    levels: Vec<String>,
    /// Print one JSON document
    #[arg(long)]
    json: bool,
}

/// Arguments of `cups`.
#[derive(Debug, Args)]
pub struct CupsArguments {
    /// The book
    book: PathBuf,
    /// Id of the recipe
    #[arg(long)]
    recipe: String,
    /// Id of the version; the recipe itself when none is given
    #[arg(long)]
    version: Option<String>,
    /// Seed of the draws: the same seed gives the same cups
    #[arg(long, default_value_t = 1)]
    seed: u64,
    /// How many shifts of a hundred cups
    #[arg(long, default_value_t = 50, value_parser = clap::value_parser!(u32).range(2..=1000))]
    shifts: u32,
    /// Print one JSON document
    #[arg(long)]
    json: bool,
}

/// Arguments of `why-off`.
#[derive(Debug, Args)]
#[command(group(clap::ArgGroup::new("read").required(true).multiple(true).args(["weight", "celsius", "brix", "ice"])))]
pub struct WhyOffArguments {
    /// The book
    book: PathBuf,
    /// Id of the recipe
    #[arg(long)]
    recipe: String,
    /// Id of the version; the recipe itself when none is given
    #[arg(long)]
    version: Option<String>,
    /// What is in the cup weighs, g, without the cup
    #[arg(long, value_parser = amount, value_name = "GRAMS")]
    weight: Option<f64>,
    /// Temperature of the drink as it is handed over, °C
    #[arg(long, value_parser = amount, value_name = "CELSIUS")]
    celsius: Option<f64>,
    /// What a refractometer shows of the liquid, °Brix
    #[arg(long, value_parser = amount)]
    brix: Option<f64>,
    /// Temperature of that sample, °C, for an instrument that doesn't correct for it
    #[arg(long, value_parser = amount, requires = "brix", value_name = "CELSIUS")]
    brix_at: Option<f64>,
    /// The ice in the cup, fished out and weighed, g
    #[arg(long, value_parser = amount, value_name = "GRAMS")]
    ice: Option<f64>,
    /// Print one JSON document
    #[arg(long)]
    json: bool,
}

/// Arguments of `supply`.
#[derive(Debug, Args)]
pub struct SupplyArguments {
    /// The book
    book: PathBuf,
    /// An ingredient that is decided about: ID with all that is sold of its kind, or ID=ID,ID with what is offered for it
    #[arg(long, required = true, value_name = "OFFER")]
    offer: Vec<String>,
    /// Cups of a drink that are sold in a week: RECIPE=CUPS or RECIPE/VERSION=CUPS
    #[arg(long, value_name = "DRINK=CUPS")]
    sold: Vec<String>,
    /// The same from a CSV file with headings: drinks in the first column, cups a week in the second
    #[arg(long, value_name = "FILE")]
    cups: Option<PathBuf>,
    /// Print one JSON document
    #[arg(long)]
    json: bool,
}

/// Arguments of `last-sip`.
#[derive(Debug, Args)]
pub struct LastSipArguments {
    /// The book
    book: PathBuf,
    /// Id of the recipe
    #[arg(long)]
    recipe: String,
    /// Id of the version; the recipe itself when none is given
    #[arg(long)]
    version: Option<String>,
    /// Minutes until the last sip
    #[arg(long, default_value_t = 60, value_parser = clap::value_parser!(u16).range(1..=240))]
    minutes: u16,
    /// Minutes that it is on the way to its guest
    #[arg(long, value_name = "MINUTES", value_parser = clap::value_parser!(u16).range(0..=240))]
    on_the_way: Option<u16>,
    /// Print one JSON document
    #[arg(long)]
    json: bool,
}

/// Arguments of `card`.
#[derive(Debug, Args)]
pub struct CardArguments {
    /// The book
    book: PathBuf,
    /// Id of the recipe
    #[arg(long, conflicts_with = "all")]
    recipe: Option<String>,
    /// Id of the version; the recipe itself when none is given
    #[arg(long, requires = "recipe")]
    version: Option<String>,
    /// A card of every drink on the menu, into the folder that --out names
    #[arg(long)]
    all: bool,
    /// What it is for
    #[arg(long, value_enum, default_value_t)]
    kind: card::KindArgument,
    /// The format; that of the file's ending when none is given
    #[arg(long, value_enum)]
    format: Option<card::FormatArgument>,
    /// The paper; A5 for counter cards and ladders and A4 for sheets when none is given
    #[arg(long, value_enum)]
    paper: Option<card::PaperArgument>,
    /// The file, or with --all the folder
    #[arg(long)]
    out: PathBuf,
    /// Replace a file of this name, whatever it holds; without it only the same card is replaced
    #[arg(long)]
    overwrite: bool,
    /// The day that stands on it
    #[arg(long, value_name = "DAY")]
    date: Option<String>,
    /// Language of the card, by its code or by what its speakers call it
    #[arg(long, default_value = "en", value_name = "CODE", value_parser = language_parser())]
    language: Language,
    /// For the menu: also drinks that are not approved, each marked
    #[arg(long)]
    unapproved: bool,
    /// For an exercise: id of the ingredient to replace
    #[arg(long)]
    replace: Option<String>,
    /// For an exercise: id of the new ingredient
    #[arg(long)]
    with: Option<String>,
    /// For a comparison or a blind tasting: another drink beside the first, as RECIPE or RECIPE/VERSION
    #[arg(long = "beside", value_name = "DRINK")]
    beside: Vec<String>,
    /// For a batch: how many of the drink
    #[arg(long, default_value_t = 1)]
    drinks: u32,
    /// For a batch: further drinks, as RECIPE=COUNT or RECIPE/VERSION=COUNT
    #[arg(long = "also", value_name = "DRINK=COUNT")]
    also: Vec<String>,
    /// For a blind tasting: what is served; the first drink is sample A
    #[arg(long, value_enum)]
    test: Option<blind::ServingArgument>,
    /// For a blind tasting: how many people taste
    #[arg(long, value_parser = clap::value_parser!(u32).range(1..), value_name = "COUNT")]
    people: Option<u32>,
    /// For a blind tasting: the number that orders and codes are drawn from; the same number gives the same again
    #[arg(long)]
    seed: Option<u64>,
    /// For a pair or a ranking: what tasters are asked, an axis of taste or `liking`
    #[arg(long, default_value = "sweetness", value_name = "AXIS")]
    ask: String,
}

/// Arguments of `bring-in`.
#[expect(
    clippy::struct_excessive_bools,
    reason = "each is a flag of the command"
)]
#[derive(Debug, Args)]
pub struct BringInArguments {
    /// The book
    book: PathBuf,
    /// The file: a price list (.csv), a schema.org recipe (.json) or another shop's recipe (.ron)
    file: PathBuf,
    /// Write what the review shows into the book
    #[arg(long)]
    accept: bool,
    /// With --accept: write although the book has text comments, which are lost
    #[arg(long, requires = "accept")]
    drop_comments: bool,
    /// The sign between cells: comma, semicolon, tab or vertical bar; guessed when none is given
    #[arg(long)]
    delimiter: Option<String>,
    /// Read numbers with a decimal comma; told from the numbers when not given
    #[arg(long, conflicts_with = "decimal_point")]
    decimal_comma: bool,
    /// Read numbers with a decimal point; told from the numbers when not given
    #[arg(long)]
    decimal_point: bool,
    /// Day of prices that state none, as 2026-05-04
    #[arg(long, value_name = "DAY", value_parser = day)]
    date: Option<String>,
    /// Line of the headings of a list; found by its words when not given
    #[arg(long, value_name = "LINE")]
    headings: Option<u64>,
    /// Who the list is of, where no column says
    #[arg(long, value_name = "NAME")]
    supplier: Option<String>,
    /// Form of new ingredients of which the list states none: powder, syrup, liquid …
    #[arg(long, value_name = "WORD")]
    form: Option<String>,
    /// With --accept: take a line of a list that was read in part, whose price changes by more than a third, or that is marked as no longer sold
    #[arg(long, value_name = "LINE")]
    tick: Vec<u64>,
    /// What a line of a list or of a written recipe is about, as LINE=OURS, and nothing behind the sign leaves it out; or
    /// what stands for an ingredient of another shop, as THEIRS=OURS, and nothing behind the sign adds theirs
    #[arg(long = "map", value_name = "THEIRS=OURS")]
    map: Vec<String>,
}

/// Arguments of `brix`.
#[derive(Debug, Args)]
pub struct BrixArguments {
    /// What the refractometer shows, °Brix
    #[arg(value_parser = amount)]
    reading: f64,
    /// Temperature of the sample, °C, for an instrument that doesn't correct for it
    #[arg(long, value_parser = amount)]
    celsius: Option<f64>,
    /// What the instrument is off by at most, °Brix
    #[arg(long, value_parser = amount, default_value_t = crate::tasting::USUAL_LIMITS_BRIX, value_name = "BRIX")]
    within: f64,
    /// What was read is a product in water: the product, g
    #[arg(long, value_parser = amount, requires = "water", value_name = "GRAMS")]
    product: Option<f64>,
    /// The water that the product was dissolved in, g
    #[arg(long, value_parser = amount, requires = "product", value_name = "GRAMS")]
    water: Option<f64>,
    /// Soluble solids by the label, g per 100 g
    #[arg(long, value_parser = amount, conflicts_with = "book", value_name = "GRAMS")]
    label: Option<f64>,
    /// What is in it that misleads a refractometer
    #[arg(long, value_enum)]
    holds: Vec<brix::HoldsArgument>,
    /// The book of a drink to compare with
    #[arg(long, requires = "recipe", conflicts_with = "product")]
    book: Option<PathBuf>,
    /// Id of the recipe
    #[arg(long, requires = "book")]
    recipe: Option<String>,
    /// Id of the version; the recipe itself when none is given
    #[arg(long, requires = "recipe")]
    version: Option<String>,
    /// Print one JSON document
    #[arg(long)]
    json: bool,
}

/// Speaks of what needs no book, as the commands do: in English and in metric units.
fn speaker() -> Speaker<'static> {
    Speaker::without_book()
}

/// What the end of the help tells; the same for all commands.
fn exit_codes() -> &'static str {
    speaker().word("command-exit-codes")
}

/// What to say when the book that the window shall open is not there.
pub fn no_book(path: &Path) -> String {
    say!(speaker(), "command-no-book", path: path.display().to_string())
}

/// What to say when the window can't be opened.
pub fn window_needs_display() -> &'static str {
    speaker().word("command-needs-display")
}

/// A finite number from zero up.
fn amount(text: &str) -> Result<f64, String> {
    match parse_number(text) {
        Ok(number) if number >= 0.0 => Ok(number),
        Err(error @ NumberError::Ambiguous { .. }) => Err(speaker().number_error(&error)),
        _ => Err(speaker().word("command-enter-amount").to_owned()),
    }
}

/// A day of the calendar.
fn day(text: &str) -> Result<String, String> {
    match Day::from_text(text) {
        Some(_) => Ok(text.to_owned()),
        None => Err(speaker().word("command-enter-day").to_owned()),
    }
}

/// Percent of a whole.
fn percent(text: &str) -> Result<f64, String> {
    match amount(text) {
        Ok(number) if number > 0.0 && number <= 100.0 => Ok(number),
        _ => Err(speaker().word("command-enter-percent").to_owned()),
    }
}

/// Why a command could not do its work.
#[derive(Debug)]
enum Failure {
    /// The book could not be opened.
    Book(String),
    /// What was asked for is not in the book.
    Usage(String),
    /// Standard output is gone.
    Output(std::io::Error),
}

impl From<std::io::Error> for Failure {
    fn from(error: std::io::Error) -> Self {
        Self::Output(error)
    }
}

impl Failure {
    fn words(&self) -> String {
        match self {
            Self::Book(words) | Self::Usage(words) => words.clone(),
            Self::Output(error) => {
                say!(speaker(), "command-output-gone", error: error.to_string())
            }
        }
    }

    fn exit_code(&self) -> u8 {
        match self {
            Self::Usage(_) => 2,
            Self::Book(_) | Self::Output(_) => 1,
        }
    }
}

/// The arguments of this program; ends it where they are wrong or only ask for help.
pub fn arguments() -> Arguments {
    let given: Vec<OsString> = std::env::args_os().collect();
    let first = given.get(1).and_then(|first| first.to_str());
    let mistyped = first.and_then(mistyped_command);
    match (Arguments::try_parse_from(&given), mistyped) {
        (Ok(Arguments { book: Some(_), .. }), Some(message)) => end_as_wrong_usage(&message),
        (Err(error), Some(message)) if error.use_stderr() => end_as_wrong_usage(&message),
        (Ok(arguments), _) => arguments,
        (Err(error), _) => error.exit(),
    }
}

fn end_as_wrong_usage(message: &str) -> ! {
    complain(message);
    std::process::exit(2);
}

/// What to say of a first word that is neither a command nor a file; `None` for one that may be either.
fn mistyped_command(word: &str) -> Option<String> {
    let is_like_a_command = |word: &str| {
        word.starts_with(|first: char| first.is_ascii_alphabetic())
            && word.chars().all(|c| c.is_ascii_alphabetic() || c == '-')
    };
    let command = Arguments::command();
    let names: Vec<&str> = command
        .get_subcommands()
        .map(clap::Command::get_name)
        .collect();
    if !is_like_a_command(word)
        || word == "help"
        || names.contains(&word)
        || Path::new(word).exists()
    {
        return None;
    }
    let near = nearest(word, names.iter().copied());
    let advice = did_you_mean(&near)
        .unwrap_or_else(|| say!(speaker(), "command-known-commands", names: names.join(", ")));
    Some(say!(
        speaker(),
        "command-no-command",
        word: excerpt(word, REPEATED),
        advice: advice,
    ))
}

/// Carries out a command and tells how it ended.
pub fn run(command: Command) -> ExitCode {
    let result = match command {
        Command::Check(arguments) => check::run(&arguments),
        Command::Balance(arguments) => balance::run(&arguments),
        Command::Swap(arguments) => swap::run(&arguments),
        Command::Cups(arguments) => cups::run(&arguments),
        Command::WhyOff(arguments) => why_off::run(&arguments),
        Command::LastSip(arguments) => last_sip::run(&arguments),
        Command::Supply(arguments) => supply::run(&arguments),
        Command::Ladder(arguments) => ladder::run(&arguments),
        Command::Card(arguments) => card::run(&arguments),
        Command::BringIn(arguments) => bring_in::run(&arguments),
        Command::Blind(command) => blind::run(&command),
        Command::Tasting(command) => tasting::run(&command),
        Command::Brix(arguments) => brix::run(&arguments),
        Command::Control(arguments) => control::run(&arguments),
        Command::Record(command) => record::run(&command),
    };
    match result {
        Ok(code) => code,
        Err(failure) => {
            complain(&failure.words());
            ExitCode::from(failure.exit_code())
        }
    }
}

/// Prints a message on standard error. When that is gone there is nobody left to tell.
pub fn complain(message: &str) {
    let _ = writeln!(std::io::stderr().lock(), "evensip: {}", visible(message));
}

/// Prints for people: a name with marks that turn the direction of a line must not turn the figures around.
fn print(text: &str) -> Result<(), Failure> {
    print_as_it_is(&visible(text))
}

/// Whoever has closed the pipe has read enough: the command goes on, and its exit code is that of its work.
fn print_as_it_is(text: &str) -> Result<(), Failure> {
    let mut output = std::io::stdout().lock();
    let end = if text.ends_with('\n') { "" } else { "\n" };
    let written = output
        .write_all(text.as_bytes())
        .and_then(|()| output.write_all(end.as_bytes()))
        .and_then(|()| output.flush());
    match written {
        Err(error) if error.kind() == std::io::ErrorKind::BrokenPipe => Ok(()),
        written => Ok(written?),
    }
}

fn print_json(value: &serde_json::Value) -> Result<(), Failure> {
    print_as_it_is(&format!("{value:#}"))
}

/// The text of a value in a list.
fn list_text(value: &serde_json::Value) -> String {
    // A line break inside a text is escaped: those that stand here are of the layout.
    format!("{value:#}").replace('\n', "\n  ")
}

/// Prints the texts of a list one after the other, in the layout that it would have as a whole.
fn print_json_list(texts: impl Iterator<Item = String>) -> Result<(), Failure> {
    let mut output = std::io::BufWriter::new(std::io::stdout().lock());
    let mut is_empty = true;
    for text in texts {
        let comma = if is_empty { "[" } else { "," };
        write!(output, "{comma}\n  {text}")?;
        is_empty = false;
    }
    output.write_all(if is_empty { b"[]\n" } else { b"\n]\n" })?;
    Ok(output.flush()?)
}

/// Opens a book for a command that needs one.
fn open(path: &std::path::Path) -> Result<(Book, Vec<Finding>), Failure> {
    match book_file::load(path) {
        Ok(loaded) => Ok((loaded.book, loaded.findings)),
        Err(error) => Err(Failure::Book(Speaker::without_book().load_error(&error))),
    }
}

/// Tells the errors of a book on standard error; the exit code of a command that worked on it.
fn report_errors(book: &Book, findings: &[Finding]) -> ExitCode {
    let errors = findings
        .iter()
        .filter(|finding| finding.severity == Severity::Error);
    let mut code = ExitCode::SUCCESS;
    for error in errors {
        let speaker = Speaker::new(book);
        complain(&say!(speaker, "command-error-in", finding: speaker.finding(error)));
        code = ExitCode::from(1);
    }
    code
}

/// Takes the languages that there are catalogues of by code or by name, and lists them for anything else.
fn language_parser() -> impl TypedValueParser<Value = Language> {
    let values = Language::all().map(|language| {
        PossibleValue::new(language.code())
            .alias(language.name())
            .help(language.name())
    });
    PossibleValuesParser::new(values).map(|given| {
        Language::from_code(&given)
            .or_else(|| Language::all().find(|language| language.name() == given))
            .unwrap_or_default()
    })
}

fn recipe_called<'book>(book: &'book Book, text: &str) -> Result<&'book Recipe, Failure> {
    let found = RecipeId::new(text).ok().and_then(|id| book.recipe(&id));
    found.map(AsRef::as_ref).ok_or_else(|| {
        unknown(
            "command-no-recipe",
            text,
            book.recipes.iter().map(|recipe| recipe.id.as_str()),
        )
    })
}

fn version_called(recipe: &Recipe, text: Option<&str>) -> Result<Option<VersionId>, Failure> {
    let Some(text) = text else { return Ok(None) };
    let found = recipe
        .versions
        .iter()
        .find(|version| version.id.as_str() == text);
    found
        .map(|version| Some(version.id.clone()))
        .ok_or_else(|| {
            unknown(
                "command-no-version",
                text,
                recipe.versions.iter().map(|version| version.id.as_str()),
            )
        })
}

fn ingredient_called(book: &Book, text: &str) -> Result<IngredientId, Failure> {
    let found = IngredientId::new(text)
        .ok()
        .filter(|id| book.ingredient(id).is_some());
    found.ok_or_else(|| {
        unknown(
            "command-no-ingredient",
            text,
            book.ingredients
                .iter()
                .map(|ingredient| ingredient.id.as_str()),
        )
    })
}

/// How many ids a message lists when none is like the one that was asked for.
const LISTED: usize = 8;

/// Longest id that a message repeats, in characters.
const REPEATED: usize = 60;

/// Refuses an id that nothing has, with the ids that are like it, or some of those that there are.
fn unknown<'book>(
    message: &'static str,
    text: &str,
    known: impl Iterator<Item = &'book str> + Clone,
) -> Failure {
    let near = nearest(text, known.clone());
    let advice = did_you_mean(&near).unwrap_or_else(|| some_of(known));
    let id = excerpt(text, REPEATED);
    Failure::Usage(speaker().say(message, &[("id", id.into()), ("advice", advice.into())]))
}

/// "did you mean a or b?"; `None` when nothing is alike.
fn did_you_mean(near: &[String]) -> Option<String> {
    let mut near = near.iter();
    let first = near.next()?.clone();
    let listed = near.fold(
        first,
        |first, second| say!(speaker(), "command-either", first: first, second: second),
    );
    Some(say!(speaker(), "command-did-you-mean", near: listed))
}

/// "there is a, b and 12 more".
fn some_of<'book>(known: impl Iterator<Item = &'book str> + Clone) -> String {
    let count = known.clone().count();
    let first: Vec<&str> = known.take(LISTED).collect();
    let ids = first.join(", ");
    match count - first.len() {
        0 if count == 0 => speaker().word("command-known-none").to_owned(),
        0 => say!(speaker(), "command-known", ids: ids),
        more => say!(speaker(), "command-known-and-more", ids: ids, count: more),
    }
}
