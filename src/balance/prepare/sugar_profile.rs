//! How the sugars of an ingredient divide, by the profile that is stated of them.

use crate::book::SugarProfile;

/// Glucose and maltose in the solids of a glucose syrup or maltodextrin by its dextrose equivalent, as parts of the solids.
///
/// Acid-converted syrups: glucose 10, 19, 31 and 39 %, maltose 9, 14, 18 and 28 % at 30, 42, 55 and 62 (makers' tables, value
/// from memory); straight lines between, to nothing at 0 and to glucose alone at 100. Syrups that are converted by enzymes hold more
/// maltose at the same dextrose equivalent.
pub(super) fn sugars_of_glucose_syrup(dextrose_equivalent: f64) -> (f64, f64) {
    const TABLE: [(f64, f64, f64); 9] = [
        (0.0, 0.0, 0.0),
        (10.0, 0.01, 0.03),
        (20.0, 0.04, 0.06),
        (30.0, 0.10, 0.09),
        (42.0, 0.19, 0.14),
        (55.0, 0.31, 0.18),
        (62.0, 0.39, 0.28),
        (95.0, 0.92, 0.04),
        (100.0, 1.0, 0.0),
    ];
    let wanted = dextrose_equivalent.clamp(0.0, 100.0);
    let right = TABLE
        .iter()
        .position(|(at, ..)| *at >= wanted)
        .unwrap_or(0)
        .max(1);
    let ((from, glucose, maltose), (to, more_glucose, more_maltose)) =
        (TABLE[right - 1], TABLE[right]);
    let part = (wanted - from) / (to - from);
    (
        glucose + (more_glucose - glucose) * part,
        maltose + (more_maltose - maltose) * part,
    )
}

/// Fractions of sucrose, glucose, fructose, lactose, maltose and other sugars.
///
/// HFCS: Hanover & White 1993, Am J Clin Nutr 58:724S, of the solids (42 % fructose, 53 % glucose, 5 % other; 55, 42, 3).
/// Honey: USDA SR28 NDB 19296, of its sugars (fructose 50 %, glucose 44 %, sucrose 1 %, maltose 2 %, galactose 4 %, rounded).
/// Glucose syrup: its sugars are taken as glucose and maltose, see [`sugars_of_glucose_syrup`].
/// `shift` moves that much from glucose to fructose.
pub(super) fn profile_fractions(profile: SugarProfile, shift: f64) -> [f64; 6] {
    let mut fractions = match profile {
        SugarProfile::Sucrose => [1.0, 0.0, 0.0, 0.0, 0.0, 0.0],
        SugarProfile::Invert => [0.0, 0.5, 0.5, 0.0, 0.0, 0.0],
        SugarProfile::Hfcs42 => [0.0, 0.53, 0.42, 0.0, 0.0, 0.05],
        SugarProfile::Hfcs55 => [0.0, 0.42, 0.55, 0.0, 0.0, 0.03],
        SugarProfile::Fructose => [0.0, 0.0, 1.0, 0.0, 0.0, 0.0],
        SugarProfile::Glucose => [0.0, 1.0, 0.0, 0.0, 0.0, 0.0],
        SugarProfile::Lactose => [0.0, 0.0, 0.0, 1.0, 0.0, 0.0],
        SugarProfile::Honey => [0.01, 0.43, 0.50, 0.0, 0.02, 0.04],
        SugarProfile::GlucoseSyrup {
            dextrose_equivalent,
        } => {
            let (glucose, maltose) = sugars_of_glucose_syrup(dextrose_equivalent.max(1.0));
            let sugars = glucose + maltose;
            [0.0, glucose / sugars, 0.0, 0.0, maltose / sugars, 0.0]
        }
        SugarProfile::Own {
            sucrose,
            glucose,
            fructose,
            lactose,
            maltose,
            other,
        } => [sucrose, glucose, fructose, lactose, maltose, other],
    };
    match profile {
        SugarProfile::Sucrose
        | SugarProfile::Fructose
        | SugarProfile::Glucose
        | SugarProfile::Lactose => {}
        // Conversion by acid and by enzymes differ more than honeys do.
        SugarProfile::GlucoseSyrup { .. } => {
            let shift = (5.0 * shift).min(fractions[1]);
            fractions[4] += shift;
            fractions[1] -= shift;
        }
        _ => {
            fractions[2] += shift;
            fractions[1] -= shift;
        }
    }
    fractions
}
