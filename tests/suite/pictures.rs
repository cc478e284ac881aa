//! Pictures of the screens and of what is painted on them, beside the ones that are kept.
//!
//! Only the fonts of the program are used, and a processor draws what a graphics card would: they are alike on every machine.
//! `EVENSIP_KEEP_PICTURES=1 cargo test --test suite pictures` keeps them as they are drawn now, those of the README too.

use egui::{Key, Modifiers, Vec2};
use egui_kittest::Harness;
use evensip::balance::{Lens, Measurand};
use evensip::book::{IngredientId, LineId};
use evensip::say::Speaker;
use evensip::ui::counter_area::CounterItem;
use evensip::ui::theme::{self, Appearance};
use evensip::ui::{Area, widgets};
use image::imageops::thumbnail;

use crate::at_the_window::{
    MIDDLE, NARROW, Window, ask_swap, at_the_counter, click, eventually, go, look, press, retype,
    says, settle, show, window_on,
};
use crate::picture::{CpuRenderer, assert_kept};
use crate::widgets::Scene;

const OF_THE_README: &str = "assets/pictures";
const KEPT: &str = "tests/kept-pictures";

fn take_in_hand(window: &mut Window, line: &str) {
    window.state_mut().view_mut().line_in_hand = LineId::new(line).ok();
    settle(window);
}

fn look_for(window: &mut Window, lens: Lens) {
    window.state_mut().view_mut().lens = lens;
    settle(window);
}

#[test]
fn those_of_the_readme_show_the_program_as_it_is() {
    let mut recipe = window_on(MIDDLE, Area::Recipe, "hazelthwaite", Some("ketterby"));
    take_in_hand(&mut recipe, "sweetener");
    assert_kept(&drawn(&mut recipe), OF_THE_README, "recipe");
    let mut swap = window_on(MIDDLE, Area::Swap, "hazelthwaite", None);
    ask_swap(&mut swap, "tambrel-chestnut", "ketterby-chestnut");
    look(&mut swap, Appearance::Dark);
    assert_kept(&drawn(&mut swap), OF_THE_README, "swap");
}

fn drawn(window: &mut Window) -> image::RgbaImage {
    window.render().expect("meshes only")
}

/// Half as wide and high: small enough to be kept.
fn assert_screen(window: &mut Window, name: &str) {
    let picture = drawn(window);
    let (width, height) = (picture.width() / 2, picture.height() / 2);
    assert_kept(&thumbnail(&picture, width, height), KEPT, name);
}

#[test]
fn every_area_looks_as_it_did() {
    use Appearance::{Contrast, Dark, Light};
    let mut window = window_on(NARROW, Area::Recipe, "copper-plum", Some("milk"));
    look_for(&mut window, Lens::Heat);
    look(&mut window, Dark);
    assert_screen(&mut window, "recipe");
    look_for(&mut window, Lens::Sugar);
    show(&mut window, "hazelthwaite", None);
    ask_swap(&mut window, "tambrel-chestnut", "ketterby-chestnut");
    for (area, appearance) in [
        (Area::Swap, Contrast),
        (Area::Variations, Light),
        (Area::Lesson, Contrast),
        (Area::Serving, Dark),
        (Area::Counter, Light),
        (Area::Findings, Light),
    ] {
        go(&mut window, area);
        look(&mut window, appearance);
        assert_screen(&mut window, &format!("{area:?}").to_lowercase());
    }
    let powder = IngredientId::new("tambrel-chestnut").unwrap();
    at_the_counter(&mut window, CounterItem::Ingredient(powder));
    assert_screen(&mut window, "ingredient");
    go(&mut window, Area::Compare);
    click(&mut window, "Beside it: with Ketterby chestnut");
    assert_screen(&mut window, "compare");
    go(&mut window, Area::Cards);
    // What a card says of this day and this machine.
    retype(&mut window, "Day on the card", "2026-05-04");
    retype(&mut window, "Folder for the files", "/cards");
    // The keyboard leaves the field, whose cursor blinks while the page is waited for.
    press(&mut window, Modifiers::NONE, Key::Tab);
    eventually(&mut window, "the page of that day", |window| {
        says(window, "Page 1 of") && !says(window, "being laid out")
    });
    assert_screen(&mut window, "cards");
}

/// A widget by itself.
fn assert_painted(name: &str, [width, height]: [f32; 2], mut content: impl FnMut(&mut egui::Ui)) {
    let mut harness = Harness::builder()
        .with_size(Vec2::new(width, height))
        .with_theme(egui::Theme::Light)
        .with_context_setup(theme::install)
        .renderer(CpuRenderer::default())
        .build_ui(|ui| {
            let fill = theme::palette(ui.visuals()).ground;
            ui.painter().rect_filled(ui.ctx().content_rect(), 0.0, fill);
            content(ui);
        });
    harness.run();
    assert_kept(&harness.render().expect("meshes only"), KEPT, name);
}

#[test]
fn a_cup_is_painted_as_it_is_filled() {
    for (name, recipe, version) in [
        ("cup-hot", "hob-and-ember", None),
        ("cup-iced", "hob-and-ember", Some("iced")),
        ("cup-with-a-gap", "hob-and-ember", Some("oat")),
        ("cup-with-pearls", "ninebell", None),
    ] {
        let scene = Scene::new(recipe, version);
        assert_painted(name, [220.0, 270.0], |ui| {
            widgets::cup_ui(ui, &scene.screen(), Vec2::new(204.0, 254.0));
        });
    }
}

#[test]
fn a_level_is_painted_with_its_marks_and_whiskers() {
    for (name, version, width) in [("level", "iced", 480.0), ("level-with-a-gap", "oat", 300.0)] {
        let scene = Scene::new("hob-and-ember", Some(version));
        let standard = scene.standard.as_ref().expect("approved");
        let (difference, words) = (&standard.difference, "the standard of 2026-05-04");
        assert_painted(name, [width + 16.0, 330.0], |ui| {
            widgets::level_ui(ui, difference, words, Speaker::without_book());
            widgets::level_strip_ui(ui, difference, words, Speaker::without_book());
        });
    }
}

#[test]
fn why_a_figure_is_what_it_is_is_painted() {
    let scene = Scene::new("pear-drift", None);
    assert_painted("why-sweetness", [420.0, 420.0], |ui| {
        widgets::why_ui(ui, &scene.screen(), Measurand::Sweetness);
    });
}
