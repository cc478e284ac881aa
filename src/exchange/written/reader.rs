//! The grammar of the sentences in which recipes name an ingredient.

use super::amount::{Span, UnclearAmount, WrittenAmount, sum, times};
use super::household::Household;
use super::tokens::{Kind, Token};
use super::units::{ABOUT, FILLS, HEAPED, LEVELLED, Unit, number_called, unit_called};

/// A sentence and its pieces.
pub(super) struct Reader<'line> {
    pub(super) text: &'line str,
    pub(super) tokens: &'line [Token],
}

/// An amount and the token behind it.
pub(super) type Read<T> = Option<(T, usize)>;

impl Reader<'_> {
    pub(super) fn line(&self) -> (WrittenAmount, String) {
        if let Some((amount, at)) = self.amount(0) {
            let name = self.from(self.behind_of(at));
            if !name.trim().is_empty() {
                return (amount, name);
            }
        }
        if let Some(why) = self.unclear() {
            return (WrittenAmount::Unclear(why), self.text.to_owned());
        }
        if let Some(name) = self.filled() {
            return (WrittenAmount::Fill, name);
        }
        if let Some(read) = self.amount_at_end().or_else(|| self.amount_within()) {
            return read;
        }
        (WrittenAmount::NotStated, self.text.to_owned())
    }

    fn kind(&self, at: usize) -> Option<&Kind> {
        self.tokens.get(at).map(|token| &token.kind)
    }

    fn word(&self, at: usize) -> Option<&str> {
        match self.kind(at) {
            Some(Kind::Word(word)) => Some(word),
            _ => None,
        }
    }

    fn is_word(&self, at: usize, words: &[&str]) -> bool {
        let lower = self.word(at).map(str::to_lowercase);
        lower.is_some_and(|word| words.contains(&word.as_str()))
    }

    fn is_sign(&self, at: usize, sign: char) -> bool {
        self.kind(at) == Some(&Kind::Sign(sign))
    }

    /// The text from a token on.
    fn from(&self, at: usize) -> String {
        let begin = self
            .tokens
            .get(at)
            .map_or(self.text.len(), |token| token.begin);
        self.text[begin..].to_owned()
    }

    /// The text before a token.
    fn before(&self, at: usize) -> &str {
        let end = self
            .tokens
            .get(at)
            .map_or(self.text.len(), |token| token.begin);
        &self.text[..end]
    }

    /// Behind "of", "von der".
    fn behind_of(&self, at: usize) -> usize {
        let at = at + usize::from(self.is_word(at, &["of", "von", "vom", "mit", "with"]));
        at + usize::from(self.is_word(at, &["the", "der", "dem"]))
    }

    /// Behind "about", "ca.", "~".
    fn behind_about(&self, mut at: usize) -> usize {
        while self.is_word(at, ABOUT) || self.is_sign(at, '~') || self.is_circa(at) {
            at += 1;
        }
        at
    }

    /// "c. 200 ml". Behind a number it is a cup, and without a stop part of a name: "vitamin C 200 mg".
    fn is_circa(&self, at: usize) -> bool {
        let token = self.tokens.get(at);
        token.is_some_and(|token| self.text[token.begin..].starts_with("c."))
            && matches!(self.kind(at + 1), Some(Kind::Number(_)))
    }

    fn number(&self, at: usize) -> Read<f64> {
        match self.kind(at)? {
            Kind::Number(number) => Some((*number, at + 1)),
            Kind::Word(word) => {
                let number = number_called(word)?;
                // "half a cup", "a half cup", "eine halbe Tasse", "ein paar".
                let next = self.word(at + 1).and_then(number_called);
                match next {
                    Some(half) if (half - 0.5).abs() < 1e-9 && number <= 1.0 => Some((0.5, at + 2)),
                    Some(one) if (number - 0.5).abs() < 1e-9 && one <= 1.0 => Some((0.5, at + 2)),
                    _ => Some((number, at + 1)),
                }
            }
            _ => None,
        }
    }

    /// "2", "200–250", "2 to 3", "zwei bis drei", "2 x 3".
    fn span(&self, at: usize) -> Read<Span> {
        let at = self.behind_about(at);
        let (from, mut at) = self.number(at)?;
        let mut span = Span::of(from);
        let is_between = self.is_sign(at, '-') || self.is_word(at, &["to", "bis", "or", "oder"]);
        if is_between && let Some((to, behind)) = self.number(self.behind_about(at + 1)) {
            let is_end =
                matches!(self.kind(at + 1), Some(Kind::Number(_))) || self.word(at).is_some();
            if to >= from && is_end {
                span.to = to;
                at = behind;
            }
        }
        let is_times = self.is_sign(at, 'x') || self.is_word(at, &["x"]);
        if is_times && let Some((each, behind)) = self.number(at + 1) {
            span = span.times(each);
            at = behind;
        }
        Some((span, at))
    }

    /// A unit, and how it is filled.
    fn unit(&self, at: usize) -> Read<(Unit, String, bool)> {
        let mut at = at;
        // "14-oz".
        at += usize::from(self.is_sign(at, '-') && self.word(at + 1).is_some());
        let mut is_heaped = false;
        while self.is_word(at, HEAPED) || self.is_word(at, LEVELLED) || self.is_word(at, ABOUT) {
            is_heaped |= self.is_word(at, HEAPED);
            at += 1;
        }
        let one = self.word(at)?;
        let two = self.word(at + 1).map(|next| format!("{one} {next}"));
        if let Some(two) = two
            && let Some(unit) = unit_called(&two)
        {
            return Some(((unit, two, is_heaped), at + 2));
        }
        let unit = unit_called(one)?;
        Some(((unit, one.to_owned(), is_heaped), at + 1))
    }

    /// An amount in grams or millilitres, as it stands in brackets or behind a stroke.
    pub(super) fn metric(&self, at: usize) -> Read<WrittenAmount> {
        let at = at + usize::from(self.is_word(at, &["je", "à", "a", "each", "of"]));
        let (span, at) = self.span(at)?;
        let ((unit, ..), at) = self.unit(at)?;
        let amount = match unit {
            Unit::Grams(factor) => WrittenAmount::Grams(span.times(factor)),
            Unit::Millilitres(factor) => WrittenAmount::Millilitres(span.times(factor)),
            _ => return None,
        };
        let at = at + usize::from(self.is_word(at, &["each", "je", "jeweils"]));
        Some((amount, at))
    }

    /// "(240 ml)", "(240 ml/8 oz)", "/240 ml".
    fn beside(&self, at: usize) -> Read<WrittenAmount> {
        if self.is_sign(at, '/') {
            return self.metric(at + 1);
        }
        if !self.is_sign(at, '(') {
            return None;
        }
        let close = (at..self.tokens.len()).find(|at| self.is_sign(*at, ')'))?;
        let mut inner = at + 1;
        while inner < close {
            if let Some((amount, _)) = self.metric(self.behind_about(inner)) {
                return Some((amount, close + 1));
            }
            // What else stands there may come first: "(8 oz / 240 ml)".
            inner = (inner..close).find(|at| self.is_sign(*at, '/') || self.is_sign(*at, ','))? + 1;
        }
        None
    }

    /// An amount that a sentence, or its end, begins with.
    fn amount(&self, at: usize) -> Read<WrittenAmount> {
        let Some((count, at)) = self.span(at) else {
            // "Pinch of salt".
            let ((unit, _, is_heaped), behind) = self.unit(at)?;
            let Unit::Household(of) = unit else {
                return None;
            };
            let is_alone = !matches!(
                of,
                Household::Teaspoon | Household::Tablespoon | Household::Cup | Household::Tasse
            );
            let count = Span::of(1.0);
            let one = WrittenAmount::Household {
                count,
                of,
                is_heaped,
            };
            return is_alone.then_some((one, behind));
        };
        // "1 (14 oz) can", "1 14-oz can", "a 400 ml can".
        let each = self.beside(at).or_else(|| self.metric(at));
        if let Some((each, behind)) = each
            && let Some(((Unit::Container | Unit::Piece, ..), behind)) = self.unit(behind)
        {
            return Some((times(each, count), behind));
        }
        let Some(((unit, word, is_heaped), at)) = self.unit(at) else {
            let word = String::new();
            return Some((WrittenAmount::Counted { count, word }, at));
        };
        let amount = match unit {
            Unit::Grams(factor) => WrittenAmount::Grams(count.times(factor)),
            Unit::Millilitres(factor) => WrittenAmount::Millilitres(count.times(factor)),
            Unit::Household(of) => WrittenAmount::Household {
                count,
                of,
                is_heaped,
            },
            Unit::Container | Unit::Piece => WrittenAmount::Counted { count, word },
        };
        Some(self.with_more(amount, unit, count, at))
    }

    /// What stands behind an amount and says it in another unit, or adds to it.
    fn with_more(
        &self,
        amount: WrittenAmount,
        unit: Unit,
        count: Span,
        at: usize,
    ) -> (WrittenAmount, usize) {
        let is_metric = matches!(unit, Unit::Grams(_) | Unit::Millilitres(_));
        if let Some((beside, behind)) = self.beside(at) {
            return match unit {
                _ if is_metric => (amount, behind),
                // What is said of cans is said of each.
                Unit::Container | Unit::Piece => (times(beside, count), behind),
                _ => (beside, behind),
            };
        }
        // Another unit in brackets tells no more.
        if is_metric
            && self.is_sign(at, '(')
            && matches!(self.kind(at + 1), Some(Kind::Number(_)))
            && let Some(close) = (at..self.tokens.len()).find(|at| self.is_sign(*at, ')'))
        {
            return (amount, close + 1);
        }
        if matches!(unit, Unit::Container)
            && self.is_word(at, &["à", "a", "je"])
            && let Some((each, behind)) = self.metric(at)
        {
            return (times(each, count), behind);
        }
        // "2 x 400 g cans", "2 x 400-g-Dosen".
        if is_metric && let Some(((Unit::Container, ..), behind)) = self.unit(at) {
            return (amount, behind);
        }
        let adds = self.is_sign(at, '+') || self.is_word(at, &["plus", "und", "and"]);
        if adds
            && let Some((more, behind)) = self.amount(at + 1)
            && let Some(both) = sum(&amount, &more)
        {
            return (both, behind);
        }
        (amount, at)
    }

    /// Why a sentence that begins with digits has no amount.
    fn unclear(&self) -> Option<UnclearAmount> {
        match self.kind(self.behind_about(0))? {
            Kind::Unclear(error) => Some(UnclearAmount::Number(error.clone())),
            Kind::TwoCounts(first, second) => Some(UnclearAmount::TwoCounts {
                first: first.clone(),
                second: second.clone(),
            }),
            _ => None,
        }
    }

    /// "Ice to fill", "top up with soda water": the name.
    fn filled(&self) -> Option<String> {
        let lower = in_small_letters(self.text);
        let is_apart = |at: usize, end: usize| {
            let before = lower[..at].chars().next_back();
            let after = lower[end..].chars().next();
            let is_letter = |c: Option<char>| c.is_some_and(char::is_alphanumeric);
            !is_letter(before) && !is_letter(after)
        };
        let (at, end) = FILLS.iter().find_map(|words| {
            let at = lower.find(words)?;
            is_apart(at, at + words.len()).then_some((at, at + words.len()))
        })?;
        let is_around = [',', ';', ' ', '-', '–', '.', '(', ')'];
        let (before, after) = (&self.text[..at], &self.text[end..]);
        let [mut name, mut more] = [before, after].map(|part| part.trim().trim_matches(is_around));
        if name.is_empty() {
            (name, more) = (more, "");
        }
        for first in ["enough ", "with ", "mit ", "some ", "etwas "] {
            if in_small_letters(name).starts_with(first) {
                name = &name[first.len()..];
            }
        }
        let parts = [name, more].into_iter().filter(|part| !part.is_empty());
        (!name.is_empty()).then(|| parts.collect::<Vec<&str>>().join(", "))
    }

    /// "Milk: 200 ml", "Zucker 20 g".
    fn amount_at_end(&self) -> Option<(WrittenAmount, String)> {
        let ends_at = |at: usize| {
            let (amount, behind) = self.amount(at)?;
            let is_named =
                !matches!(&amount, WrittenAmount::Counted { word, .. } if word.is_empty());
            let is_all = behind >= self.tokens.len();
            let name = self
                .before(at)
                .trim()
                .trim_end_matches([':', ',', '-', '–', '(', ' ']);
            (is_named && is_all && !name.is_empty()).then(|| (amount, name.to_owned()))
        };
        (1..self.tokens.len()).find_map(ends_at)
    }

    /// "Juice of 1 lemon", "Saft einer Zitrone".
    fn amount_within(&self) -> Option<(WrittenAmount, String)> {
        let parts = [
            "juice", "zest", "peel", "seeds", "pulp", "saft", "abrieb", "schale", "mark",
        ];
        if !self.is_word(0, &parts) {
            return None;
        }
        let at = 1 + usize::from(self.is_word(1, &["of", "von"]));
        let (count, behind) = self.span(at)?;
        let rest = self.from(behind);
        let name = format!("{} {}", self.before(at).trim_end(), rest);
        let word = String::new();
        (!rest.is_empty()).then_some((WrittenAmount::Counted { count, word }, name))
    }
}

/// The text in small letters, each where it was: one whose small form takes more or fewer bytes stays, so that what is found here
/// can be cut out of the text.
fn in_small_letters(text: &str) -> String {
    let small = |c: char| {
        let mut lower = c.to_lowercase();
        match (lower.next(), lower.next()) {
            (Some(one), None) if one.len_utf8() == c.len_utf8() => one,
            _ => c,
        }
    };
    text.chars().map(small).collect()
}
