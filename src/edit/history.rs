//! Undo and redo: the steps that a book has taken, with their names.

use std::sync::Arc;

use super::kept_states::date_kept;
use super::{Edit, EditError, Focus, apply_soundly};
use crate::book::{Book, LimitPassed, TextMeasure, Written};

/// One step: what was done, and the book before it.
#[derive(Clone, Debug)]
pub struct Step {
    /// The edits, in order.
    pub edits: Vec<Edit>,
    /// The book before the step.
    pub before: Arc<Book>,
    /// Where the person was, for undo to go back to.
    pub focus: Focus,
}

/// The book as it is now, with the steps that led to it and those that were undone.
///
/// # Limitations
/// The history is linear: a new step drops what had been undone. Steps are kept without limit, since a step costs a few
/// pointers per item and no copy of an item that it does not touch.
#[derive(Clone, Debug)]
pub struct History {
    now: Arc<Book>,
    done: Vec<Step>,
    undone: Vec<Step>,
    /// Whether the next step that does the same at the same focus may join the last one.
    open: bool,
    measure: Option<TextMeasure>,
    today: Option<fn() -> String>,
    /// The book that was measured last.
    measured: Option<(Arc<Book>, Written)>,
}

impl History {
    /// A history that begins with this book.
    pub fn new(book: Arc<Book>) -> Self {
        Self {
            now: book,
            done: Vec::new(),
            undone: Vec::new(),
            open: false,
            measure: None,
            today: None,
            measured: None,
        }
    }

    /// Refuses steps from now on after which the book could not be opened again.
    #[must_use]
    pub fn measured_by(mut self, measure: TextMeasure) -> Self {
        self.measure = Some(measure);
        self
    }

    /// Notes the day, `2026-05-04`, from now on where a step keeps what an item was.
    #[must_use]
    pub fn dated_by(mut self, today: fn() -> String) -> Self {
        self.today = Some(today);
        self
    }

    /// Refuses a book whose text could not be read back, unless the book before it was already so and this one is no worse.
    fn check_text(&mut self, after: &Arc<Book>) -> Result<(), EditError> {
        let Some(TextMeasure { written, most }) = self.measure else {
            return Ok(());
        };
        let known = self.measured.take();
        let known = known.as_ref().map(|(book, written)| (&**book, *written));
        let before = written(&self.now, known);
        let now = written(after, Some((&self.now, before)));
        let passed = if now.not_finite > before.not_finite {
            let count = now.not_finite;
            Some(LimitPassed::NotFinite { count })
        } else if now.bytes > most.max(before.bytes) {
            let bytes = now.bytes;
            Some(LimitPassed::Text { bytes, most })
        } else {
            None
        };
        self.measured = Some(match passed {
            Some(_) => (self.now.clone(), before),
            None => (after.clone(), now),
        });
        passed.map_or(Ok(()), |passed| Err(EditError::PastLimit(passed)))
    }

    /// The book as it is now.
    pub fn book(&self) -> &Arc<Book> {
        &self.now
    }

    /// Carries out edits as one step. Nothing has changed when one of them fails.
    ///
    /// A step joins the last one when that is still open, does the same and has the same focus: typing `12` into a field is
    /// one step, not two.
    pub fn perform(&mut self, edits: Vec<Edit>, focus: Focus) -> Result<(), EditError> {
        let mut book = apply_soundly(&self.now, &edits)?;
        // Another state of the whole book has a history of its own; a list that was brought in has none.
        let takes_whole_book = |edit: &Edit| match edit {
            Edit::PutBook { reason, .. } => !reason.adds_to_the_book(),
            _ => false,
        };
        if let Some(today) = self.today
            && !edits.iter().any(takes_whole_book)
        {
            date_kept(&self.now, &mut book, today);
        }
        let book = Arc::new(book);
        if book == self.now {
            return Ok(());
        }
        self.check_text(&book)?;
        let before = std::mem::replace(&mut self.now, book);
        self.undone.clear();
        match self.done.last_mut() {
            Some(last) if self.open && last.focus == focus && goes_on(last, &before, &edits) => {
                last.edits.extend(edits);
                // Typed and typed back: there is nothing left to undo.
                if *last.before == *self.now {
                    self.now = last.before.clone();
                    self.done.pop();
                }
            }
            _ => self.done.push(Step {
                edits,
                before,
                focus,
            }),
        }
        self.open = true;
        Ok(())
    }

    /// Ends the joining of steps: the field has lost the focus, or the pointer was lifted.
    pub fn close_step(&mut self) {
        self.open = false;
    }

    /// Takes the last step back for good when it is still open and was made here: what was typed is given up, and there is
    /// nothing to redo. Tells which edits are gone.
    pub fn withdraw(&mut self, focus: &Focus) -> Option<Vec<Edit>> {
        let step = self.done.pop_if(|last| self.open && last.focus == *focus)?;
        self.now = step.before;
        self.open = false;
        Some(step.edits)
    }

    /// The step that undo would take back.
    pub fn next_undo(&self) -> Option<&Step> {
        self.done.last()
    }

    /// The step that redo would repeat.
    pub fn next_redo(&self) -> Option<&Step> {
        self.undone.last()
    }

    /// Takes the last step back and tells where it was; `None` when there is none.
    pub fn undo(&mut self) -> Option<Focus> {
        let mut step = self.done.pop()?;
        // The step keeps the other side of the swap: before it when undone, after it when done again.
        std::mem::swap(&mut self.now, &mut step.before);
        let focus = step.focus.clone();
        self.undone.push(step);
        self.open = false;
        Some(focus)
    }

    /// Repeats the step that was taken back last and tells where it was; `None` when there is none.
    pub fn redo(&mut self) -> Option<Focus> {
        let mut step = self.undone.pop()?;
        std::mem::swap(&mut self.now, &mut step.before);
        let focus = step.focus.clone();
        self.done.push(step);
        self.open = false;
        Some(focus)
    }
}

/// Whether edits of a book go on with what a step has begun: another amount of the same line, another figure of the same field.
fn goes_on(step: &Step, book: &Book, edits: &[Edit]) -> bool {
    let Some((before, now)) = step.edits.last().zip(edits.last()) else {
        return false;
    };
    if let (
        Edit::Change {
            recipe,
            version,
            change,
        },
        Edit::Change {
            recipe: other_recipe,
            version: other_version,
            change: other,
        },
    ) = (before, now)
    {
        return (recipe, version, change.target()) == (other_recipe, other_version, other.target())
            && std::mem::discriminant(change) == std::mem::discriminant(other);
    }
    if let (
        Edit::Translate { item, translation },
        Edit::Translate {
            item: other_item,
            translation: other,
        },
    ) = (before, now)
    {
        let one = (item, &translation.language, &translation.of);
        return one == (other_item, &other.language, &other.of);
    }
    let begun = before.changed_fields(&step.before);
    let Some(((item, fields), (other, others))) = begun.zip(now.changed_fields(book)) else {
        return false;
    };
    // What is new has all its fields from this step.
    item == other && (fields.is_empty() || fields.iter().any(|field| others.contains(field)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{IdKind, ItemId, Settings};

    fn rename_shop(name: &str) -> Vec<Edit> {
        vec![Edit::SetSettings(Settings {
            shop: name.into(),
            ..Settings::default()
        })]
    }

    fn shop() -> Focus {
        Focus::Field(ItemId::Settings, "shop".into())
    }

    fn perform(history: &mut History, name: &str) {
        history.perform(rename_shop(name), shop()).unwrap();
    }

    #[test]
    fn undoing_everything_gives_the_start_and_redoing_the_end() {
        let start = Arc::new(Book::default());
        let mut history = History::new(start.clone());
        for name in ["a", "b", "c"] {
            perform(&mut history, name);
            history.close_step();
        }
        let end = history.book().clone();
        while history.undo().is_some() {}
        assert!(Arc::ptr_eq(history.book(), &start));
        while history.redo().is_some() {}
        assert!(Arc::ptr_eq(history.book(), &end));
    }

    #[test]
    fn typing_in_one_field_is_one_step_and_typing_back_is_none() {
        let mut history = History::new(Arc::new(Book::default()));
        perform(&mut history, "H");
        perform(&mut history, "Ha");
        assert_eq!(history.undo(), Some(shop()));
        assert_eq!(history.book().settings.shop, "");
        assert!(history.undo().is_none());
        perform(&mut history, "H");
        perform(&mut history, "");
        assert!(history.next_undo().is_none());
    }

    #[test]
    fn another_field_of_one_item_is_another_step() {
        let mut history = History::new(Arc::new(Book::default()));
        perform(&mut history, "H");
        let mut settings = history.book().settings.clone();
        settings.note = "n".into();
        let edits = vec![Edit::SetSettings(settings)];
        let changed = edits[0].changed_fields(history.book());
        assert_eq!(changed, Some((ItemId::Settings, vec!["note"])));
        history.perform(edits, shop()).unwrap();
        assert!(history.undo().is_some());
        assert_eq!(history.book().settings.shop, "H");
    }

    #[test]
    fn what_is_withdrawn_leaves_no_trace_and_a_closed_step_stays() {
        let start = Arc::new(Book::default());
        let mut history = History::new(start.clone());
        perform(&mut history, "H");
        assert!(history.withdraw(&Focus::Book).is_none());
        assert!(history.withdraw(&shop()).is_some());
        assert!(Arc::ptr_eq(history.book(), &start));
        assert!(history.next_undo().is_none() && history.next_redo().is_none());
        perform(&mut history, "H");
        history.close_step();
        assert!(history.withdraw(&shop()).is_none());
    }

    #[test]
    fn a_failing_edit_changes_nothing() {
        let mut history = History::new(Arc::new(Book::default()));
        let gone = crate::book::RecipeId::new("gone").unwrap();
        let edits = vec![rename_shop("x").remove(0), Edit::RemoveRecipe(gone)];
        let error = history.perform(edits, Focus::Book).unwrap_err();
        assert_eq!(
            error,
            EditError::Gone {
                kind: IdKind::Recipe,
                id: "gone".into(),
            }
        );
        assert_eq!(history.book().settings.shop, "");
        assert!(history.next_undo().is_none());
    }
}
