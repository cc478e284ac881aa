//! Where a line is in the drink.

use super::Speaker;
use crate::book::Stage;

impl Speaker<'_> {
    /// "mixed in", "on top".
    pub fn stage(&self, stage: Stage) -> &'static str {
        self.word(match stage {
            Stage::Mixed => "stage-mixed",
            Stage::Topping => "stage-topping",
            Stage::OnTop => "stage-on-top",
            Stage::Steeped => "stage-steeped",
        })
    }
}
