//! The start of the window: while the system makes it, a thread gets ready what the first frame needs.
//!
//! Making a window keeps one processor busy for a tenth of a second. Meanwhile another one can read the built-in book, work its
//! first drink out and lay out the text: a first frame that is drawn and shown to nobody does all of that.

use std::sync::{Arc, OnceLock};
use std::thread::JoinHandle;

use egui::{Context, FallbackRequest, FontProvider, Pos2, RawInput, Rect, TextureId, Vec2};
use egui_system_font_provider::SystemFontProvider;

use super::app::{APP_ID, App, Opening};
use super::window_icon::window_icon;
use crate::say::{Speaker, say};
use crate::workbench::{FilePicker, SystemPicker, Workbench};

/// Why there is no window.
#[derive(Debug, thiserror::Error)]
pub enum WindowError {
    /// No display, or one that can't draw.
    #[error("{}", say!(Speaker::without_book(), "shell-no-window", reason: reason))]
    NoWindow {
        /// What the system says.
        reason: String,
    },
}

/// Opens the window and returns when it is closed.
pub fn run(opening: Opening) -> Result<(), WindowError> {
    let start = Start::begin();
    eframe::run_native_ext(
        "Evensip",
        window_options(),
        Some(start.context()),
        Box::new(move |cc| {
            let mut app = start.finish(cc, opening, Arc::new(SystemPicker));
            if let Some(folder) = eframe::storage_dir(APP_ID) {
                app.keep_unsaved_work_in(&folder.join("unsaved"));
            }
            Ok(Box::new(app))
        }),
    )
    .map_err(|error| WindowError::NoWindow {
        reason: without_source_places(&error.to_string()),
    })
}

/// What the system says, without the place in the source of a library that some of its messages begin with
/// ("os error at …/linux/mod.rs:700: …").
fn without_source_places(message: &str) -> String {
    let words: Vec<&str> = message.split_whitespace().collect();
    let is_place = |word: &&str| word.contains(".rs:");
    let Some(at) = words.iter().rposition(is_place) else {
        return message.to_owned();
    };
    let reason = words[at + 1..].join(" ");
    if reason.is_empty() {
        Speaker::without_book()
            .word("shell-no-window-reason")
            .to_owned()
    } else {
        reason
    }
}

/// The size of the first window, in points.
const FIRST_SIZE: [f32; 2] = [1360.0, 860.0];

/// How the window is made.
pub fn window_options() -> eframe::NativeOptions {
    eframe::NativeOptions {
        viewport: egui::ViewportBuilder::default()
            .with_app_id(APP_ID)
            .with_icon(window_icon())
            .with_inner_size(FIRST_SIZE)
            .with_min_inner_size([720.0, 520.0]),
        renderer: eframe::Renderer::Glow,
        persist_window: true,
        // Given to the context when the start begins: to add it later makes all letters anew.
        system_font_fallback: false,
        ..eframe::NativeOptions::default()
    }
}

/// A start that is under way.
pub struct Start {
    ctx: Context,
    readying: JoinHandle<Workbench>,
}

impl Start {
    /// Begins to get ready what the first frame needs.
    pub fn begin() -> Self {
        let ctx = Context::default();
        // As in a context that the window makes itself.
        ctx.set_embed_viewports(false);
        ctx.options_mut(|options| options.max_passes = TWO_PASSES);
        ctx.add_font_provider(fonts_of_the_system());
        let of_thread = ctx.clone();
        let readying = std::thread::spawn(move || draw_unseen(&of_thread));
        Self { ctx, readying }
    }

    /// The context of the toolkit that the window has to be made with.
    pub fn context(&self) -> Context {
        self.ctx.clone()
    }

    /// The program in its window, which has just been made.
    pub fn finish(
        self,
        cc: &eframe::CreationContext<'_>,
        opening: Opening,
        picker: Arc<dyn FilePicker>,
    ) -> App {
        // What broke down unseen is said by the frame that is seen.
        let workbench = self.readying.join();
        let workbench = workbench.unwrap_or_else(|_| Workbench::with_sample());
        App::with_workbench(cc, opening, workbench.with_picker(picker))
    }
}

/// The fonts of the system, which are looked for when a character comes that the bundled ones lack: a book in one script starts
/// without.
fn fonts_of_the_system() -> Arc<dyn FontProvider> {
    let fonts = OnceLock::new();
    Arc::new(move |request: &FallbackRequest<'_>| {
        fonts.get_or_init(SystemFontProvider::new).font_for(request)
    })
}

/// A frame is drawn again when it finds that it has to be laid out anew.
const TWO_PASSES: std::num::NonZeroUsize = std::num::NonZeroUsize::MIN.saturating_add(1);

/// The largest image of common graphics, in pixels. Where the window's allows another size the letters are made anew.
const TEXTURE_SIDE: usize = 16_384;

/// Draws the first frame of the built-in book and keeps what came of it: the letters in the context, the figures in the
/// workbench.
fn draw_unseen(ctx: &Context) -> Workbench {
    let mut app = App::over(ctx, Workbench::with_sample());
    let input = RawInput {
        screen_rect: Some(Rect::from_min_size(Pos2::ZERO, Vec2::from(FIRST_SIZE))),
        max_texture_side: Some(TEXTURE_SIDE),
        ..RawInput::default()
    };
    let mut output = ctx.run_ui(input, |ui| app.frame(ui));
    // The letters have not been handed to a screen: the next frame does it.
    let textures = ctx.tex_manager();
    let mut textures = textures.write();
    let letters = output.textures_delta.set.remove(&TextureId::default());
    for part in letters.unwrap_or_default() {
        textures.set(TextureId::default(), part);
    }
    output.textures_delta.clear();
    app.into_workbench()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_frame_after_the_unseen_one_hands_all_letters_to_the_screen() {
        let ctx = Context::default();
        let workbench = draw_unseen(&ctx);
        assert!(workbench.engine_calls() > 0);
        let mut output = ctx.run_ui(RawInput::default(), |ui| {
            ui.label("Hob & Ember");
        });
        let letters = output.textures_delta.set.remove(&TextureId::default());
        let parts = letters.unwrap_or_default();
        output.textures_delta.clear();
        assert!(
            parts
                .first()
                .is_some_and(egui::epaint::ImageDelta::is_whole),
            "the first part is the whole image"
        );
    }
}
