//! A hundred cups below the level, and one cup that is off where the drink is served, as a person uses them.

use evensip::ui::Area;

use crate::at_the_window::{
    Window, click, eventually, has, says, settle, show, speak, text_of, type_into, window_on,
};

fn window(size: [f32; 2], recipe: &str) -> Window {
    window_on(size, Area::Recipe, recipe, None)
}

#[test]
fn the_cups_are_drawn_when_they_are_asked_for_and_follow_the_drink() {
    for size in [[1024.0, 700.0], [1920.0, 1080.0]] {
        let mut window = window(size, "brindlecote");
        let before = window.state().workbench().engine_calls();
        settle(&mut window);
        assert_eq!(window.state().workbench().engine_calls(), before);
        assert!(!says(&window, "of 100 cups"));
        click(&mut window, "Show a hundred cups");
        eventually(&mut window, "the cups are drawn", |window| {
            says(window, "of 100 cups taste like the recipe as it is written")
        });
        assert!(says(&window, "have more malt"));
        assert!(says(&window, "Weigh 8.1\u{a0}g of Ketterby malt powder"));
        assert!(has(
            &window,
            "Sweetness: all of 100 cups within a step, none less sweet, none sweeter."
        ));
        // Nothing is drawn anew while nothing changes.
        let calls = window.state().workbench().engine_calls();
        settle(&mut window);
        assert_eq!(window.state().workbench().engine_calls(), calls);
        show(&mut window, "hazelthwaite", None);
        eventually(
            &mut window,
            "the cups of the other drink are drawn",
            |window| says(window, "cups taste like the standard"),
        );
        click(&mut window, "Hide the hundred cups");
        assert!(!says(&window, "cups taste like the standard"));
    }
}

#[test]
fn the_cups_are_told_in_german() {
    let mut window = window([1360.0, 860.0], "brindlecote");
    speak(&mut window, "de");
    click(&mut window, "Hundert Becher zeigen");
    eventually(&mut window, "the cups are drawn", |window| {
        says(window, "von 100 Bechern schmecken wie das Rezept")
    });
    assert!(says(&window, "Was am meisten helfen würde"));
}

#[test]
fn a_cup_that_was_weighed_is_told_what_went_wrong_with_it() {
    let mut window = window_on([1360.0, 1600.0], Area::Serving, "pear-drift", None);
    assert!(says(&window, "Why is this cup off?"));
    assert!(!says(&window, "It weighs"));
    type_into(&mut window, "Weight of what is in the cup", "400");
    settle(&mut window);
    assert!(says(&window, "It weighs 400\u{a0}g, less than the"));
    assert!(says(&window, "too little Ice"));
    type_into(&mut window, "°Brix of the cup", "7.1");
    settle(&mut window);
    assert!(says(
        &window,
        "Most likely: 1 press of Ketterby pear syrup too few"
    ));
    // What can't be read is said, and the rest stays.
    type_into(&mut window, "Weight of what is in the cup", "heavy");
    settle(&mut window);
    assert!(!says(&window, "It weighs") && says(&window, "It reads 7.1\u{a0}°Brix"));
    show(&mut window, "hob-and-ember", None);
    assert!(
        !has(&window, "Weight of the ice in the cup"),
        "no ice in a hot drink"
    );
    assert!(!says(&window, "It reads"), "the cup was of another drink");
    show(&mut window, "pear-drift", None);
    assert_eq!(text_of(&window, "°Brix of the cup"), "");
}
