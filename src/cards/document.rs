//! The layout model: a card as blocks of words, before any format or paper is chosen.

use crate::book::Confirmation;
use crate::say::{Language, Speaker, UntranslatedText};

/// What a card is for.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum CardKind {
    /// What the counter makes the drink from.
    #[default]
    Counter,
    /// What a new hand learns the drink from.
    Training,
    /// Ingredients and allergens of everything on the menu.
    Menu,
    /// What everything on the menu costs, leaves and holds.
    Figures,
    /// The levels of sugar, each with its amounts.
    Ladder,
    /// The same in every size with every amount of ice.
    Matrix,
    /// A swap for a group that learns: what is expected.
    Exercise,
    /// What came of it, for whoever teaches.
    Answers,
    /// Two to four versions beside each other.
    Comparison,
    /// What so many drinks need: to buy, and to make beforehand.
    Batch,
    /// What the tasters of a blind tasting fill in.
    Scores,
    /// Which code is what, for whoever serves it.
    Pouring,
}

impl CardKind {
    /// All kinds, in the order in which they are offered.
    pub const ALL: [Self; 12] = [
        Self::Counter,
        Self::Training,
        Self::Exercise,
        Self::Answers,
        Self::Menu,
        Self::Figures,
        Self::Ladder,
        Self::Matrix,
        Self::Comparison,
        Self::Batch,
        Self::Scores,
        Self::Pouring,
    ];

    /// Whether it is cut into slips: what stands below a heading, up to a table, then goes onto one page where it fits on one.
    pub fn has_slips(self) -> bool {
        self == Self::Scores
    }

    /// What it is called on screens.
    pub fn words(self, speaker: &Speaker<'_>) -> &'static str {
        speaker.word(match self {
            Self::Counter => "card-kind-counter",
            Self::Training => "card-kind-training",
            Self::Exercise => "card-kind-exercise",
            Self::Answers => "card-kind-answers",
            Self::Menu => "card-kind-menu",
            Self::Figures => "card-kind-figures",
            Self::Ladder => "card-kind-ladder",
            Self::Matrix => "card-kind-matrix",
            Self::Comparison => "card-kind-comparison",
            Self::Batch => "card-kind-batch",
            Self::Scores => "card-kind-scores",
            Self::Pouring => "card-kind-pouring",
        })
    }

    /// The word in a command and in a file name.
    pub fn key(self) -> &'static str {
        match self {
            Self::Counter => "counter",
            Self::Training => "training",
            Self::Exercise => "exercise",
            Self::Answers => "answers",
            Self::Menu => "menu",
            Self::Figures => "figures",
            Self::Ladder => "ladder",
            Self::Matrix => "matrix",
            Self::Comparison => "comparison",
            Self::Batch => "batch",
            Self::Scores => "scores",
            Self::Pouring => "pouring",
        }
    }
}

/// How the paper lies.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Orientation {
    /// The short side on top.
    #[default]
    Upright,
    /// The long side on top, for wide tables.
    Wide,
}

/// A card: every word that is printed, in order.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Document {
    /// What it is for.
    pub kind: CardKind,
    /// Language of the fixed words.
    pub language: Language,
    /// The name of the drink, or of the sheet.
    pub title: String,
    /// The version, or what the sheet is of.
    pub subtitle: String,
    /// The shop.
    pub shop: String,
    /// Which state of the recipe it shows: the version and its approval.
    pub revision: String,
    /// Whether something on it was never approved as it stands: the revision is then set where nobody overlooks it.
    pub is_unapproved: bool,
    /// The day that stands on it, as the caller gave it; empty for none.
    pub date: String,
    /// How the paper lies.
    pub orientation: Orientation,
    /// What stands on it.
    pub blocks: Vec<Block>,
    /// Texts of the book that are printed as they are written, because they have no words in the language of the card.
    pub untranslated: Vec<UntranslatedText>,
    /// Who has confirmed the allergens and cautions in the language of the card; none for a card in English.
    pub confirmation: Option<Confirmation>,
}

impl Document {
    /// Speaks the language of the fixed words.
    pub(super) fn speaker(&self) -> Speaker<'static> {
        Speaker::without_book().in_language(self.language)
    }

    /// How deep the headings of stages are: below the title, or below the heading that stands above them.
    pub(super) fn stage_level(&self) -> u8 {
        let headings = self.blocks.iter();
        let before = headings.take_while(|block| !matches!(block, Block::Steps(_)));
        let below_one = before
            .into_iter()
            .any(|block| matches!(block, Block::Heading(_)));
        if below_one { 3 } else { 2 }
    }

    /// The line at the foot: shop, revision and date.
    pub fn foot(&self) -> String {
        let parts = [&self.shop, &self.revision, &self.date];
        let parts: Vec<&str> = parts
            .into_iter()
            .map(String::as_str)
            .filter(|part| !part.is_empty())
            .collect();
        parts.join(" · ")
    }
}

/// A part of a card.
#[derive(Clone, Debug, PartialEq)]
pub enum Block {
    /// A heading between parts.
    Heading(String),
    /// Facts with their names.
    Facts(Vec<Fact>),
    /// A table.
    Table(Table),
    /// What is done, stage by stage.
    Steps(Vec<StageSteps>),
    /// Cautions, each with its reason.
    Cautions(Vec<CautionLine>),
    /// Sentences.
    Paragraphs(Vec<String>),
    /// Small print.
    Footnotes(Vec<String>),
}

/// A fact with its name.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fact {
    /// "serving temperature".
    pub name: String,
    /// "58.4 ± 0.5 °C".
    pub value: String,
    /// Whether someone's health may hang on it: it is set bold, and nothing else among the facts is.
    pub is_strong: bool,
    /// Whether it is written in by hand: a line to write on in place of a value.
    pub is_to_fill_in: bool,
}

impl Fact {
    /// A fact.
    pub fn new(name: impl Into<String>, value: impl Into<String>) -> Self {
        Self {
            name: name.into(),
            value: value.into(),
            is_strong: false,
            is_to_fill_in: false,
        }
    }

    /// A fact that stands out.
    pub fn strong(name: impl Into<String>, value: impl Into<String>) -> Self {
        Self {
            is_strong: true,
            ..Self::new(name, value)
        }
    }

    /// A fact that is written in by hand.
    pub fn to_fill_in(name: impl Into<String>) -> Self {
        Self {
            is_to_fill_in: true,
            ..Self::new(name, String::new())
        }
    }
}

/// Where the words of a column stand.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Align {
    /// At the beginning, as text does.
    #[default]
    Start,
    /// At the right, as numbers do.
    Right,
}

/// A column of a table.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Column {
    /// Its heading.
    pub title: String,
    /// Where its words stand.
    pub align: Align,
    /// The words of a cell that are set bold: what somebody looks for. Empty for none.
    pub strong: String,
    /// Whether each of its cells has a box to be crossed in front of its words.
    pub has_boxes: bool,
}

impl Column {
    /// A column of words.
    pub fn text(title: impl Into<String>) -> Self {
        Self {
            title: title.into(),
            align: Align::Start,
            strong: String::new(),
            has_boxes: false,
        }
    }

    /// A column of boxes to be crossed, each with its words.
    pub fn boxes(title: impl Into<String>) -> Self {
        Self {
            has_boxes: true,
            ..Self::text(title)
        }
    }

    /// A column of words in which cells with these words stand out.
    pub fn text_with_strong(title: impl Into<String>, strong: impl Into<String>) -> Self {
        Self {
            strong: strong.into(),
            ..Self::text(title)
        }
    }

    /// Whether a cell of it stands out.
    pub(super) fn is_strong(&self, cell: &str) -> bool {
        !self.strong.is_empty() && cell == self.strong
    }

    /// A column of numbers.
    pub fn number(title: impl Into<String>) -> Self {
        Self {
            title: title.into(),
            align: Align::Right,
            strong: String::new(),
            has_boxes: false,
        }
    }
}

/// A table. Each row has as many cells as there are columns.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Table {
    /// What it is of, for those who can't see it.
    pub caption: String,
    /// Its columns.
    pub columns: Vec<Column>,
    /// Its rows; the first cell names the row.
    pub rows: Vec<Vec<String>>,
}

/// What is done in one stage.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct StageSteps {
    /// "Mixed in the shaker".
    pub title: String,
    /// What is done, in order.
    pub rows: Vec<StepRow>,
}

/// One thing that is done.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum StepRow {
    /// An ingredient goes in.
    Line {
        /// As the counter says it: "2 scoops".
        amount: String,
        /// With what it is measured: "brown scoop"; empty for grams and millilitres.
        measure: String,
        /// What goes in.
        name: String,
        /// What it weighs: "17.6 g"; says so when nobody knows.
        grams: String,
        /// Its temperature, what it brings along, its note.
        remarks: Vec<String>,
    },
    /// A sentence of method.
    Instruction(String),
}

/// A caution with its reason.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct CautionLine {
    /// "heat".
    pub kind: String,
    /// The sentence.
    pub text: String,
}

impl Document {
    /// Every text that is printed, in the order in which it is read.
    pub fn texts(&self) -> Vec<&str> {
        let mut texts = vec![
            self.title.as_str(),
            self.subtitle.as_str(),
            self.shop.as_str(),
            self.revision.as_str(),
            self.date.as_str(),
        ];
        for block in &self.blocks {
            match block {
                Block::Heading(text) => texts.push(text),
                Block::Facts(facts) => texts.extend(
                    facts
                        .iter()
                        .flat_map(|fact| [fact.name.as_str(), fact.value.as_str()]),
                ),
                Block::Table(table) => {
                    texts.push(&table.caption);
                    texts.extend(table.columns.iter().map(|column| column.title.as_str()));
                    texts.extend(table.rows.iter().flatten().map(String::as_str));
                }
                Block::Steps(stages) => stages.iter().for_each(|stage| {
                    texts.push(&stage.title);
                    stage.rows.iter().for_each(|row| texts.extend(row.texts()));
                }),
                Block::Cautions(cautions) => {
                    texts.extend(cautions.iter().map(|caution| caution.text.as_str()));
                }
                Block::Paragraphs(lines) | Block::Footnotes(lines) => {
                    texts.extend(lines.iter().map(String::as_str));
                }
            }
        }
        texts
    }
}

impl StepRow {
    /// Its texts, in the order in which they are read.
    pub fn texts(&self) -> Vec<&str> {
        match self {
            Self::Instruction(text) => vec![text],
            Self::Line {
                amount,
                measure,
                name,
                grams,
                remarks,
            } => [amount, measure, name]
                .into_iter()
                .chain(remarks)
                .chain([grams])
                .map(String::as_str)
                .filter(|text| !text.is_empty())
                .collect(),
        }
    }
}
