//! The two sheets of a blind tasting: what the tasters fill in, without a hint of which cup holds what, and what whoever serves
//! pours.
//!
//! What someone's health may depend on stands on both: on the tasters' sheet it is said of all cups together.

use super::document::{Block, CautionLine, Column, Document, Fact, Table};
use super::recipe_blocks::{Made, cautions_of_all, diet_facts, footnotes};
use super::request::{AskedOfTasters, BlindTasting, CardError};
use crate::balance::{AllergenSummary, Measurand, Verdict};
use crate::say::{Speaker, say};
use crate::tasting::{Sample, Serving, ServingDesign, servings};

/// The words by which messages choose a place.
const PLACES: [&str; 3] = ["first", "second", "third"];

/// What is said of a code, a cup and a person.
struct Tasting<'book> {
    speaker: Speaker<'book>,
    asked: &'book BlindTasting,
    /// The drinks, sample A first.
    made: Vec<Made<'book>>,
    servings: Vec<Serving>,
}

/// What the tasters fill in: what concerns everybody, then a slip for each.
pub(super) fn scores(speaker: Speaker<'_>, asked: &BlindTasting) -> Result<Document, CardError> {
    let tasting = Tasting::new(speaker, asked)?;
    let mut blocks = vec![
        Block::Paragraphs(vec![speaker.word("blind-how").to_owned()]),
        Block::Facts(tasting.diet_of_all()),
        Block::Cautions(tasting.cautions_of_no_cup()),
        footnotes(&speaker),
    ];
    for serving in &tasting.servings {
        blocks.extend(tasting.slip(serving));
    }
    Ok(tasting.document("blind-scores-title", blocks))
}

/// Which code is which sample, and how it is poured.
pub(super) fn pouring(speaker: Speaker<'_>, asked: &BlindTasting) -> Result<Document, CardError> {
    let tasting = Tasting::new(speaker, asked)?;
    let ways = [
        "blind-pour-secret",
        "blind-pour-alike",
        "blind-pour-hide",
        "blind-pour-allergies",
        "blind-pour-cut",
    ];
    let mut blocks = vec![Block::Paragraphs(
        ways.map(|way| speaker.word(way).to_owned()).to_vec(),
    )];
    for (sample, made) in Sample::ALL.into_iter().zip(&tasting.made) {
        blocks.push(Block::Heading(
            say!(speaker, "blind-sample", letter: sample.letter(), drink: made.name()),
        ));
        blocks.push(Block::Facts(tasting.poured(sample, made)));
    }
    let of_all: Vec<&Made<'_>> = tasting.made.iter().collect();
    blocks.extend([
        Block::Cautions(cautions_of_all(&of_all)),
        Block::Heading(speaker.word("blind-orders").to_owned()),
        Block::Table(tasting.orders()),
        Block::Footnotes(tasting.notes()),
        footnotes(&speaker),
    ]);
    Ok(tasting.document("blind-pouring-title", blocks))
}

impl<'book> Tasting<'book> {
    fn new(speaker: Speaker<'book>, asked: &'book BlindTasting) -> Result<Self, CardError> {
        let (count, wanted) = (asked.samples.len(), asked.design.samples());
        if count != wanted {
            return Err(CardError::CountToTaste { count, wanted });
        }
        let most = asked.design.most_people();
        let served = servings(asked.design, asked.people, asked.seed);
        let Some(servings) = served.ok().filter(|served| !served.is_empty()) else {
            return Err(CardError::CountOfTasters { most });
        };
        let made = asked.samples.iter();
        let made = made.map(|drink| Made::new(speaker, drink));
        Ok(Self {
            speaker,
            asked,
            made: made.collect::<Result<_, _>>()?,
            servings,
        })
    }

    fn document(&self, title: &str, blocks: Vec<Block>) -> Document {
        let speaker = &self.speaker;
        let is_unapproved = !self.made.iter().all(Made::is_approved);
        Document {
            title: speaker.word(title).to_owned(),
            subtitle: say!(
                speaker,
                "blind-subtitle",
                design: self.design_word(),
                seed: self.asked.seed.to_string(),
            ),
            revision: if is_unapproved {
                speaker.word("menu-with-unapproved").to_owned()
            } else {
                String::new()
            },
            is_unapproved,
            blocks,
            ..Document::default()
        }
    }

    fn design_word(&self) -> &'static str {
        match self.asked.design {
            ServingDesign::Triangle => "triangle",
            ServingDesign::DuoTrio | ServingDesign::DuoTrioKnownReference => "duo-trio",
            ServingDesign::Pair => "pair",
            ServingDesign::Ranking => "ranking",
        }
    }

    /// What some cup holds: nobody knows which.
    fn allergens(&self) -> AllergenSummary {
        let of_each = self.made.iter().map(|made| &made.balance.allergens);
        of_each.fold(AllergenSummary::default(), AllergenSummary::with)
    }

    fn diet_of_all(&self) -> Vec<Fact> {
        let verdicts = self.made.iter().map(|made| made.balance.vegan);
        let vegan = verdicts.fold(Verdict::Yes, Verdict::join);
        diet_facts(&self.speaker, &self.allergens(), vegan)
    }

    /// The cautions of all samples, none of which says whose it is.
    fn cautions_of_no_cup(&self) -> Vec<CautionLine> {
        let mut cautions: Vec<CautionLine> = Vec::new();
        for caution in self.made.iter().flat_map(Made::cautions) {
            if !cautions.contains(&caution) {
                cautions.push(caution);
            }
        }
        // Their order would be that of the samples.
        cautions.sort_by(|a, b| (&a.kind, &a.text).cmp(&(&b.kind, &b.text)));
        cautions
    }

    /// What one person fills in. It ends with the table: see [`super::document::CardKind::has_slips`].
    fn slip(&self, serving: &Serving) -> [Block; 4] {
        let speaker = &self.speaker;
        let person = serving.person.to_string();
        let mut facts = vec![Fact::to_fill_in(speaker.word("training-name"))];
        // It goes with the slip that is cut off.
        let contains = self.diet_of_all().into_iter();
        facts.extend(contains.filter(|fact| fact.is_strong));
        [
            Block::Heading(say!(speaker, "blind-taster", number: person)),
            Block::Facts(facts),
            Block::Paragraphs(vec![self.task()]),
            Block::Table(self.boxes(serving)),
        ]
    }

    /// What somebody does with the cups.
    fn task(&self) -> String {
        let speaker = &self.speaker;
        let design = self.design_word();
        match (&self.asked.design, &self.asked.asked) {
            (ServingDesign::Pair | ServingDesign::Ranking, AskedOfTasters::More(axis)) => {
                say!(speaker, "blind-task-more", design: design, more: speaker.more(axis))
            }
            (ServingDesign::Pair | ServingDesign::Ranking, AskedOfTasters::Liking) => {
                say!(speaker, "blind-task-liking", design: design)
            }
            _ => say!(speaker, "blind-task", design: design),
        }
    }

    /// A box for each code, in the order of tasting.
    fn boxes(&self, serving: &Serving) -> Table {
        let speaker = &self.speaker;
        let answers = match self.asked.design {
            ServingDesign::Ranking => PLACES
                .map(|rank| say!(speaker, "blind-rank", rank: rank))
                .to_vec(),
            _ => vec![speaker.word("blind-my-answer").to_owned()],
        };
        let codes = || serving.cups.iter().map(|cup| cup.code.to_string());
        let mut columns = vec![Column::text(speaker.word("exercise-answer"))];
        columns.extend((1..=serving.cups.len()).map(|at| Column::boxes(self.cup_word(at))));
        Table {
            caption: say!(speaker, "blind-boxes-caption", number: serving.person.to_string()),
            columns,
            rows: answers
                .into_iter()
                .map(|answer| std::iter::once(answer).chain(codes()).collect())
                .collect(),
        }
    }

    fn cup_word(&self, at: usize) -> String {
        let place = PLACES[at.clamp(1, PLACES.len()) - 1];
        say!(self.speaker, "blind-cup", number: place)
    }

    /// How many cups of a sample there are, which codes stand on them, and what it is.
    fn poured(&self, sample: Sample, made: &Made<'_>) -> Vec<Fact> {
        let speaker = &self.speaker;
        let cups = self.servings.iter().flat_map(|serving| &serving.cups);
        let mut codes: Vec<u16> = cups
            .filter(|cup| cup.sample == sample)
            .map(|cup| cup.code)
            .collect();
        codes.sort_unstable();
        let words: Vec<String> = codes.iter().map(u16::to_string).collect();
        let mut facts = vec![
            Fact::new(speaker.word("blind-cups"), codes.len().to_string()),
            Fact::new(speaker.word("blind-codes"), words.join(" · ")),
        ];
        let references = self.servings.iter();
        let references = references.filter(|serving| serving.reference == Some(sample));
        let references = references.count();
        if references > 0 {
            let name = speaker.word("blind-references");
            facts.push(Fact::new(name, references.to_string()));
        }
        facts.push(Fact::new(speaker.word("column-state"), made.revision()));
        facts.push(Fact::new(
            speaker.measurand(Measurand::ServingTemperature),
            made.words(Measurand::ServingTemperature),
        ));
        facts.extend(made.diet_facts());
        facts
    }

    /// What stands before whom: code and sample, in the order of tasting, and the right answer where there is one.
    fn orders(&self) -> Table {
        let speaker = &self.speaker;
        let first = self.servings.first();
        let has_reference = first.is_some_and(|serving| serving.reference.is_some());
        let has_right = first.is_some_and(|serving| serving.right_code().is_some());
        let cups = first.map_or(0, |serving| serving.cups.len());
        let mut columns = vec![Column::text(speaker.word("blind-taster-column"))];
        if has_reference {
            columns.push(Column::text(speaker.word("blind-reference")));
        }
        columns.extend((1..=cups).map(|at| Column::text(self.cup_word(at))));
        if has_right {
            columns.push(Column::text(speaker.word("blind-right")));
        }
        let row = |serving: &Serving| {
            let mut row = vec![serving.person.to_string()];
            let reference = serving.reference.map(|sample| sample.letter().to_owned());
            row.extend(reference);
            let cups = serving.cups.iter();
            row.extend(cups.map(|cup| format!("{}\u{a0}=\u{a0}{}", cup.code, cup.sample.letter())));
            row.extend(serving.right_code().map(|code| code.to_string()));
            row
        };
        Table {
            caption: speaker.word("blind-orders-caption").to_owned(),
            columns,
            rows: self.servings.iter().map(row).collect(),
        }
    }

    fn notes(&self) -> Vec<String> {
        let speaker = &self.speaker;
        let seed = self.asked.seed.to_string();
        let mut notes = vec![say!(speaker, "blind-seed", seed: seed)];
        let multiple = self.asked.design.balanced_in();
        if !self.asked.people.is_multiple_of(multiple) {
            notes.push(say!(speaker, "blind-unbalanced", multiple: multiple.to_string()));
        }
        notes
    }
}
