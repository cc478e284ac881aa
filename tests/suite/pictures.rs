//! Pictures of the screens.
//!
//! Those of the README are made by `EVENSIP_PICTURES=assets/pictures cargo test --test suite pictures::of_the_readme`; those to
//! look at, in both themes and at the narrowest and widest window, by `EVENSIP_PICTURES=FOLDER cargo test --test suite pictures`.

use std::sync::Arc;

use egui::vec2;
use egui_kittest::Harness;
use evensip::balance::Lens;
use evensip::book::{IngredientId, LineId, RecipeId, VersionId};
use evensip::swap::Question;
use evensip::ui::theme::Appearance;
use evensip::ui::{App, Area, Opening};
use evensip::workbench::{NoPicker, Shown};

use crate::picture::{CpuRenderer, keep};

/// What a picture shows.
struct Shot {
    name: &'static str,
    size: [f32; 2],
    appearance: Appearance,
    recipe: &'static str,
    version: Option<&'static str>,
    line: Option<&'static str>,
    lens: Lens,
    /// The ingredient that goes and the one that comes, when the picture is of the swap.
    swap: Option<(&'static str, &'static str)>,
}

const WIDE: [f32; 2] = [1920.0, 1080.0];
const NARROW: [f32; 2] = [1024.0, 700.0];
const MIDDLE: [f32; 2] = [1360.0, 860.0];

const OF_THE_README: [Shot; 2] = [
    Shot {
        name: "recipe",
        size: MIDDLE,
        appearance: Appearance::Light,
        recipe: "hazelthwaite",
        version: Some("ketterby"),
        line: Some("sweetener"),
        lens: Lens::Sugar,
        swap: None,
    },
    Shot {
        name: "swap",
        size: MIDDLE,
        appearance: Appearance::Dark,
        recipe: "hazelthwaite",
        version: None,
        line: None,
        lens: Lens::Sugar,
        swap: Some(("tambrel-chestnut", "ketterby-chestnut")),
    },
];

const SHOTS: [Shot; 8] = [
    Shot {
        name: "recipe-light-wide",
        size: WIDE,
        appearance: Appearance::Light,
        recipe: "hazelthwaite",
        version: Some("ketterby"),
        line: Some("sweetener"),
        lens: Lens::Sugar,
        swap: None,
    },
    Shot {
        name: "recipe-dark-wide",
        size: WIDE,
        appearance: Appearance::Dark,
        recipe: "ninebell",
        version: Some("agar"),
        line: None,
        lens: Lens::Cost,
        swap: None,
    },
    Shot {
        name: "recipe-light-narrow",
        size: NARROW,
        appearance: Appearance::Light,
        recipe: "hazelthwaite",
        version: None,
        line: Some("sweetener"),
        lens: Lens::Sugar,
        swap: None,
    },
    Shot {
        name: "recipe-dark-narrow",
        size: NARROW,
        appearance: Appearance::Dark,
        recipe: "copper-plum",
        version: Some("milk"),
        line: None,
        lens: Lens::Heat,
        swap: None,
    },
    Shot {
        name: "recipe-light-middle",
        size: MIDDLE,
        appearance: Appearance::Light,
        recipe: "ninebell",
        version: None,
        line: Some("pearls"),
        lens: Lens::Uncertainty,
        swap: None,
    },
    Shot {
        name: "recipe-dark-middle",
        size: MIDDLE,
        appearance: Appearance::Dark,
        recipe: "quillmere",
        version: None,
        line: None,
        lens: Lens::Sweetness,
        swap: None,
    },
    Shot {
        name: "swap-light-wide",
        size: WIDE,
        appearance: Appearance::Light,
        recipe: "hazelthwaite",
        version: None,
        line: None,
        lens: Lens::Sugar,
        swap: Some(("tambrel-chestnut", "ketterby-chestnut")),
    },
    Shot {
        name: "swap-dark-narrow",
        size: NARROW,
        appearance: Appearance::Dark,
        recipe: "hazelthwaite",
        version: None,
        line: None,
        lens: Lens::Sugar,
        swap: Some(("tambrel-chestnut", "ketterby-chestnut")),
    },
];

fn harness(shot: &Shot) -> Harness<'static, App> {
    let mut harness = Harness::builder()
        .with_size(vec2(shot.size[0], shot.size[1]))
        .with_max_steps(16)
        .renderer(CpuRenderer::default())
        .build_eframe(|cc| App::with_picker(cc, Opening::default(), Arc::new(NoPicker)));
    let view = harness.state_mut().view_mut();
    view.appearance = shot.appearance;
    view.lens = shot.lens;
    view.show(Shown {
        recipe: RecipeId::new(shot.recipe).unwrap(),
        version: shot.version.map(|version| VersionId::new(version).unwrap()),
    });
    view.line_in_hand = shot.line.map(|line| LineId::new(line).unwrap());
    if let Some((replace, with)) = shot.swap {
        view.area = Area::Swap;
        view.swap.question = Some(Question {
            recipe: RecipeId::new(shot.recipe).unwrap(),
            version: None,
            replace: IngredientId::new(replace).unwrap(),
            with: IngredientId::new(with).unwrap(),
            adjust: None,
        });
    }
    harness.run();
    harness
}

fn draw(shots: &[Shot]) {
    for shot in shots {
        let mut harness = harness(shot);
        if std::env::var_os("EVENSIP_PICTURES").is_some() {
            keep(&harness.render().expect("meshes only"), shot.name);
        }
    }
}

#[test]
fn of_the_readme() {
    draw(&OF_THE_README);
}

#[test]
fn of_every_size_and_theme() {
    draw(&SHOTS);
}
