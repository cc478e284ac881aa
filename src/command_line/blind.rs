//! `evensip blind`: what a blind test takes, its serving orders, and what its answers show.

use std::fmt::Write as _;
use std::process::ExitCode;

use clap::{Args, Subcommand, ValueEnum};
use serde_json::{Value, json};

use super::{Failure, facts, parse_number, print, print_json, speaker};
use crate::quantity::excerpt;
use crate::say::say;
use crate::tasting::{
    BlindTest, CUP_ORDERS, Counted, CupOrder, Effect, RankSums, RankingTerms, Remark, RuleErrors,
    Sample, Serving, ServingDesign, Sides, StoppingRule, Terms, counted, plan_remarks,
    ranking_plan, ranking_verdict, servings, verdict_remarks,
};

/// What to do about a blind test.
#[derive(Debug, Subcommand)]
pub enum BlindCommand {
    /// Tell how many tasters a test takes, and what a panel can and can't show
    Plan(PlanArguments),
    /// Print balanced serving orders with three-digit codes, from a seed
    Serve(ServeArguments),
    /// Tell what the answers show, and what they don't
    Verdict(VerdictArguments),
}

/// A test, as it is typed.
#[derive(Clone, Copy, Debug, ValueEnum)]
enum TestArgument {
    /// Three cups, two of them the same: which is odd?
    Triangle,
    /// A reference and two cups: which is the same as the reference?
    DuoTrio,
    /// Two cups, and agreed on beforehand which should have more
    Pair,
    /// Two cups, either of which may have more
    PairEitherWay,
    /// Three cups to put in order
    Ranking,
}

/// What is served, as it is typed.
#[derive(Clone, Copy, Debug, ValueEnum)]
pub(super) enum ServingArgument {
    /// Three cups, two of them the same
    Triangle,
    /// A reference and two cups; either sample is the reference
    DuoTrio,
    /// A reference and two cups; sample A, which everybody knows, is the reference
    DuoTrioKnown,
    /// Two cups
    Pair,
    /// Three different cups to put in order
    Ranking,
}

/// What is agreed on before a test.
#[derive(Debug, Args)]
struct TermsArguments {
    /// The test
    #[arg(long, value_enum)]
    test: TestArgument,
    /// The risk of finding a difference between equal cups, percent
    #[arg(long, value_parser = risk, default_value = "5", value_name = "PERCENT")]
    level: f64,
    /// The wanted probability of finding a difference that is there, percent
    #[arg(long, value_parser = certainty, default_value = "80", value_name = "PERCENT")]
    power: f64,
    /// How sure the limits of a share of people are, percent
    #[arg(long, value_parser = certainty, default_value = "95", value_name = "PERCENT")]
    confidence: f64,
    /// Cups count as alike when at most this many people taste a difference, percent
    #[arg(long, value_parser = certainty, value_name = "PERCENT")]
    similar: Option<f64>,
    /// Of a ranking: the order that is predicted, the cup with the most first, such as BAC
    #[arg(long, value_parser = cup_order, value_name = "CUPS")]
    predicted: Option<CupOrder>,
    /// Print one JSON document
    #[arg(long)]
    json: bool,
}

/// Arguments of `blind plan`.
#[derive(Debug, Args)]
pub struct PlanArguments {
    #[command(flatten)]
    terms: TermsArguments,
    /// How many people there are
    #[arg(long, value_parser = clap::value_parser!(u32).range(2..=1000), value_name = "COUNT")]
    people: Option<u32>,
    /// How many people taste the difference that must be found, percent
    #[arg(long, value_parser = super::percent, default_value = "50", value_name = "PERCENT")]
    share: f64,
    /// The size of the difference that must be found instead, as Thurstone's d′
    #[arg(long, value_parser = super::amount, conflicts_with = "share", value_name = "SIZE")]
    d_prime: Option<f64>,
    /// Give a rule by which the tasting of these people may stop early
    #[arg(long, requires = "people")]
    stop_early: bool,
}

/// Arguments of `blind serve`.
#[derive(Debug, Args)]
pub struct ServeArguments {
    /// What is served
    #[arg(long, value_enum)]
    test: ServingArgument,
    /// How many people there are
    #[arg(long, value_parser = clap::value_parser!(u32).range(1..), value_name = "COUNT")]
    people: u32,
    /// The number that orders and codes are drawn from; the same number gives the same again
    #[arg(long)]
    seed: u64,
    /// Print one JSON document
    #[arg(long)]
    json: bool,
}

/// Arguments of `blind verdict`.
#[derive(Debug, Args)]
pub struct VerdictArguments {
    #[command(flatten)]
    terms: TermsArguments,
    /// How many people answered, each counted once
    #[arg(long, value_parser = clap::value_parser!(u32).range(2..=100_000), requires = "right", value_name = "COUNT")]
    people: Option<u32>,
    /// How many of them answered right; in a pair, chose the expected or first sample
    #[arg(long, requires = "people", value_name = "COUNT")]
    right: Option<u32>,
    /// An answer, as PERSON=right or PERSON=wrong, of a ranking as PERSON=BAC; only the first of each person counts
    #[arg(
        long = "answer",
        conflicts_with = "people",
        required_unless_present = "people",
        value_name = "PERSON=ANSWER"
    )]
    answers: Vec<String>,
}

impl TestArgument {
    /// The test of one answer that is right or wrong; `None` for a ranking.
    fn blind_test(self) -> Option<BlindTest> {
        Some(match self {
            Self::Triangle => BlindTest::Triangle,
            Self::DuoTrio => BlindTest::DuoTrio,
            Self::Pair => BlindTest::Pair(Sides::One),
            Self::PairEitherWay => BlindTest::Pair(Sides::Two),
            Self::Ranking => return None,
        })
    }
}

impl From<ServingArgument> for ServingDesign {
    fn from(argument: ServingArgument) -> Self {
        match argument {
            ServingArgument::Triangle => Self::Triangle,
            ServingArgument::DuoTrio => Self::DuoTrio,
            ServingArgument::DuoTrioKnown => Self::DuoTrioKnownReference,
            ServingArgument::Pair => Self::Pair,
            ServingArgument::Ranking => Self::Ranking,
        }
    }
}

/// Percent above 0 and below 50.
fn risk(text: &str) -> Result<f64, String> {
    match parse_number(text) {
        Ok(number) if number > 0.0 && number < 50.0 => Ok(number),
        _ => Err(speaker().word("command-enter-risk").to_owned()),
    }
}

/// Percent above 0 and below 100.
fn certainty(text: &str) -> Result<f64, String> {
    match parse_number(text) {
        Ok(number) if number > 0.0 && number < 100.0 => Ok(number),
        _ => Err(speaker().word("command-enter-certainty").to_owned()),
    }
}

/// The letters of the three cups, the most first.
fn cup_order(text: &str) -> Result<CupOrder, String> {
    let is_meant = |order: &&CupOrder| order.map(Sample::letter).concat() == text.to_uppercase();
    let found = CUP_ORDERS.iter().find(is_meant);
    found
        .copied()
        .ok_or_else(|| speaker().word("command-enter-cups").to_owned())
}

/// What is agreed on before a test.
enum Agreed {
    /// Of answers that are right or wrong.
    Answers(Terms),
    /// Of three cups that are put in order.
    Ranking(RankingTerms),
}

impl TermsArguments {
    /// What is agreed on; refuses what the test has no use for.
    fn agreed(&self) -> Result<Agreed, Failure> {
        let (level, power) = (self.level / 100.0, self.power / 100.0);
        let Some(test) = self.test.blind_test() else {
            if self.similar.is_some() {
                let words = speaker().word("command-ranking-not-similar");
                return Err(Failure::Usage(words.to_owned()));
            }
            return Ok(Agreed::Ranking(RankingTerms {
                level,
                power,
                predicted: self.predicted,
            }));
        };
        if self.predicted.is_some() {
            let words = speaker().word("command-only-ranking-predicted");
            return Err(Failure::Usage(words.to_owned()));
        }
        Ok(Agreed::Answers(Terms {
            test,
            level,
            power,
            confidence: self.confidence / 100.0,
        }))
    }

    fn similar(&self) -> Option<f64> {
        self.similar.map(|percent| percent / 100.0)
    }

    fn document(&self, agreed: &Agreed, remarks: &[Remark]) -> Value {
        let remarks: Vec<Value> = remarks.iter().map(remark).collect();
        match agreed {
            Agreed::Answers(terms) => json!({
                "test": terms.test.word(),
                "level": terms.level,
                "power": terms.power,
                "confidence": terms.confidence,
                "similar": self.similar(),
                "remarks": remarks,
            }),
            Agreed::Ranking(terms) => json!({
                "test": ServingDesign::Ranking.word(),
                "level": terms.level,
                "power": terms.power,
                "predicted": terms.predicted.map(|order| order.map(Sample::letter)),
                "remarks": remarks,
            }),
        }
    }
}

pub(super) fn run(command: &BlindCommand) -> Result<ExitCode, Failure> {
    match command {
        BlindCommand::Plan(arguments) => plan(arguments)?,
        BlindCommand::Serve(arguments) => serve(arguments)?,
        BlindCommand::Verdict(arguments) => verdict(arguments)?,
    }
    Ok(ExitCode::SUCCESS)
}

fn remark(remark: &Remark) -> Value {
    facts::remark(remark).beside(json!({ "text": speaker().tasting_remark(remark) }))
}

fn sentences(remarks: &[Remark]) -> String {
    let speaker = speaker();
    let said: Vec<String> = remarks
        .iter()
        .map(|one| speaker.tasting_remark(one))
        .collect();
    said.join("\n")
}

fn plan(arguments: &PlanArguments) -> Result<(), Failure> {
    let agreed = arguments.terms.agreed()?;
    let share = Effect::Share(arguments.share / 100.0);
    let effect = arguments.d_prime.map_or(share, Effect::DPrime);
    let people = arguments.people;
    let remarks = match &agreed {
        Agreed::Answers(terms) => plan_remarks(terms, people, effect, arguments.terms.similar()),
        Agreed::Ranking(terms) => ranking_plan(terms, people, effect),
    };
    let most = people.filter(|_| arguments.stop_early);
    let rule = most.map(|most| {
        let Agreed::Answers(terms) = &agreed else {
            return None;
        };
        let rule = StoppingRule::new(terms.test, effect, terms.level, 1.0 - terms.power, most);
        rule.map(|rule| (rule, rule.errors()))
    });
    if arguments.terms.json {
        let mut document = arguments.terms.document(&agreed, &remarks);
        document["effect"] = facts::effect(effect);
        if let Some(rule) = &rule {
            document["stopping"] = stopping(rule.as_ref());
        }
        return print_json(&document);
    }
    let mut text = sentences(&remarks);
    if let Some(rule) = &rule {
        let _ = write!(text, "\n\n{}", rule_words(rule.as_ref()));
    }
    if let Some(Some((rule, _))) = &rule {
        let _ = write!(text, "\n{}", table(rule));
    }
    print(&text)
}

/// What a rule says with its errors, or that there is none.
fn rule_words(rule: Option<&(StoppingRule, RuleErrors)>) -> String {
    match rule {
        Some((rule, errors)) => speaker().stopping_rule(rule, errors),
        None => speaker().no_stopping_rule().to_owned(),
    }
}

fn stopping(rule: Option<&(StoppingRule, RuleErrors)>) -> Value {
    let text = rule_words(rule);
    let rows = rule.map(|(rule, _)| {
        let row = |people: u32| {
            let (none, shown) = rule.limits(people);
            json!({ "people": people, "none_up_to": none, "shown_from": shown })
        };
        (1..=rule.most).map(row).collect::<Vec<_>>()
    });
    facts::stopping(rule).beside(json!({ "text": text, "after": rows }))
}

/// By people: up to how many right answers end it without a difference, from how many on with one.
fn table(rule: &StoppingRule) -> String {
    let speaker = speaker();
    let mut table = speaker.word("command-stop-heading").to_owned();
    let limit = |limit: Option<u32>| limit.map_or_else(|| "–".to_owned(), |one| one.to_string());
    for people in 1..=rule.most {
        let (none, shown) = rule.limits(people);
        let row = say!(
            speaker,
            "command-stop-row",
            people: people.to_string(),
            none: limit(none),
            shown: limit(shown),
        );
        let _ = write!(table, "\n{row}");
    }
    table
}

fn serve(arguments: &ServeArguments) -> Result<(), Failure> {
    let design = ServingDesign::from(arguments.test);
    let (people, multiple) = (arguments.people, design.balanced_in());
    let served = servings(design, people, arguments.seed)
        .map_err(|error| Failure::Usage(speaker().too_many_cups(error)))?;
    let unbalanced = !people.is_multiple_of(multiple);
    let said = speaker().unbalanced_orders(people, multiple);
    if arguments.json {
        let mut document = json!({
            "design": design.word(),
            "people": people,
            "seed": arguments.seed,
            "servings": served.iter().map(serving).collect::<Vec<_>>(),
        });
        let remarks =
            unbalanced.then(|| facts::unbalanced(people, multiple).beside(json!({ "text": said })));
        document["remarks"] = json!(remarks.as_slice());
        return print_json(&document);
    }
    let speaker = speaker();
    let mut text = say!(speaker, "command-serve-pouring", seed: arguments.seed.to_string());
    for serving in &served {
        let cups = serving.cups.iter();
        let cups: Vec<String> = cups
            .map(|cup| format!("{} {}", cup.code, cup.sample.letter()))
            .collect();
        let reference = serving.reference.map_or_else(
            String::new,
            |sample| say!(speaker, "command-serve-reference", sample: sample.letter()),
        );
        let _ = write!(
            text,
            "\n{:>4}  {reference}{}",
            serving.person,
            cups.join("   ")
        );
    }
    let _ = write!(text, "\n\n{}", speaker.word("command-serve-tasting"));
    for serving in &served {
        let codes: Vec<String> = serving
            .cups
            .iter()
            .map(|cup| cup.code.to_string())
            .collect();
        let _ = write!(text, "\n{:>4}  {}", serving.person, codes.join("   "));
    }
    if unbalanced {
        let _ = write!(text, "\n\n{said}");
    }
    print(&text)
}

fn serving(serving: &Serving) -> Value {
    let cups = serving.cups.iter();
    let cups = cups.map(|cup| json!({ "code": cup.code, "sample": cup.sample.letter() }));
    json!({
        "person": serving.person,
        "reference": serving.reference.map(Sample::letter),
        "cups": cups.collect::<Vec<_>>(),
        "right": serving.right_code(),
    })
}

fn verdict(arguments: &VerdictArguments) -> Result<(), Failure> {
    let agreed = arguments.terms.agreed()?;
    let (remarks, answered) = match &agreed {
        Agreed::Answers(terms) => {
            let answered = answered(arguments)?;
            let remarks = verdict_remarks(terms, answered, arguments.terms.similar());
            (
                remarks,
                json!({ "people": answered.people, "right": answered.right }),
            )
        }
        Agreed::Ranking(terms) => {
            let sums = rank_sums(arguments)?;
            let [a, b, c] = sums.sums;
            (
                ranking_verdict(terms, sums),
                json!({ "people": sums.people, "sums": { "A": a, "B": b, "C": c } }),
            )
        }
    };
    if arguments.terms.json {
        let mut document = arguments.terms.document(&agreed, &remarks);
        if let (Value::Object(document), Value::Object(answered)) = (&mut document, answered) {
            document.extend(answered);
        }
        return print_json(&document);
    }
    print(&sentences(&remarks))
}

/// A person and what they answered.
fn person_and_answer(text: &str) -> Option<(String, &str)> {
    let (person, answer) = text.split_once('=')?;
    let person = person.trim();
    (!person.is_empty()).then(|| (person.to_owned(), answer.trim()))
}

fn rank_sums(arguments: &VerdictArguments) -> Result<RankSums, Failure> {
    if arguments.answers.is_empty() {
        let words = speaker().word("command-ranking-needs-answers");
        return Err(Failure::Usage(words.to_owned()));
    }
    let order = |text: &String| {
        let answer = person_and_answer(text);
        let order = answer.and_then(|(person, cups)| Some((person, cup_order(cups).ok()?)));
        order.ok_or_else(|| {
            let text = excerpt(text, super::REPEATED);
            Failure::Usage(say!(speaker(), "command-enter-order", text: text))
        })
    };
    let orders = arguments.answers.iter().map(order);
    Ok(RankSums::of(orders.collect::<Result<Vec<_>, _>>()?))
}

fn answered(arguments: &VerdictArguments) -> Result<Counted, Failure> {
    if let (Some(people), Some(right)) = (arguments.people, arguments.right) {
        if right > people {
            let (people, right) = (people.to_string(), right.to_string());
            let words =
                say!(speaker(), "command-more-right-than-people", people: people, right: right);
            return Err(Failure::Usage(words));
        }
        return Ok(Counted {
            people,
            right,
            repeated: 0,
        });
    }
    let answer = |text: &String| match person_and_answer(text) {
        Some((person, "right")) => Ok((person, true)),
        Some((person, "wrong")) => Ok((person, false)),
        _ => {
            let text = excerpt(text, super::REPEATED);
            Err(Failure::Usage(
                say!(speaker(), "command-enter-answer", text: text),
            ))
        }
    };
    let answers = arguments.answers.iter().map(answer);
    Ok(counted(answers.collect::<Result<Vec<_>, _>>()?))
}
