//! What tasters and a refractometer show: blind tests with their exact probabilities, serving orders, soluble solids.
//!
//! Arithmetic proposes a drink, tasters decide. Everything here is facts: counts, probabilities, orders from a stated seed.
//! No clock and no chance of its own: the same question has the same answer on every machine.

mod answers;
mod blind_test;
mod distributions;
mod evidence;
mod learned;
mod power;
mod ranking;
mod ranking_remark;
mod refractometer;
mod remark;
mod sequential;
mod serving_order;
mod similarity;

pub use answers::{Counted, counted};
pub use blind_test::{BlindTest, Needed, Sides, blind_answers, guessed, needed};
pub use evidence::{
    ComparedCups, CupIntensity, Evidence, FactorEstimate, Foretold, TastingResult, evidence,
    foretold_in_turn,
};
pub use learned::{
    DrinkEffect, Factor, ForetoldTasting, Learned, Proposal, SetAside, WeighedTasting, effects,
    foretold_tastings, learned,
};
pub use power::{Effect, Panel, d_prime, least_panel, power, right_answers, share, shown_share};
pub use ranking::{
    CUP_ORDERS, CupOrder, MOST_EXACT, OrderShares, Prediction, RankSums, RanksNeeded,
    friedman_chance, least_rank_difference, least_ranking_panel, order_shares, page_chance,
    page_needed, ranking_power, ranks_needed, shown_order_share,
};
pub use ranking_remark::{RankingRemark, RankingTerms};
pub use refractometer::{
    BrixCause, BrixCaution, BrixComparison, BrixOutside, BrixReading, Misleading, SolubleSolids,
    TestSolution, USUAL_LIMITS_BRIX, brix_cautions, product_solids, soluble_solids,
};
pub use remark::{
    MOST_PEOPLE, Remark, Terms, plan_remarks, ranking_plan, ranking_verdict, verdict_remarks,
};
pub use sequential::{RuleErrors, Standing, StoppingRule};
pub use serving_order::{Cup, Sample, Serving, ServingDesign, TooManyCups, servings};
pub use similarity::{
    ShareLimits, least_panel_for_similar, most_right_for_similar, right_limits, share_limits,
};
