//! Evensip: arguments, then a command or the window.

use std::path::PathBuf;
use std::process::ExitCode;

use anyhow::{Context as _, ensure};
use evensip::command_line::{self, complain};
use evensip::ui::{self, Opening};

fn main() -> ExitCode {
    let arguments = command_line::arguments();
    if let Some(command) = arguments.command {
        return command_line::run(command);
    }
    match open_window(arguments.book) {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            complain(&format!("{error:#}"));
            ExitCode::FAILURE
        }
    }
}

fn open_window(book: Option<PathBuf>) -> anyhow::Result<()> {
    if let Some(path) = &book {
        ensure!(path.exists(), "{}", command_line::no_book(path));
    }
    ui::run(Opening { path: book }).context(command_line::window_needs_display())
}
