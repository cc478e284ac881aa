//! Evensip: arguments, then a command or the window.

use std::process::ExitCode;

use clap::Parser as _;
use evensip::command_line::{self, Arguments};

fn main() -> ExitCode {
    let arguments = Arguments::parse();
    match arguments.command {
        Some(command) => command_line::run(command),
        None => ExitCode::SUCCESS,
    }
}
