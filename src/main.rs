//! Evensip: arguments, then a command or the window.

use std::process::ExitCode;

use clap::Parser as _;
use evensip::command_line::{self, Arguments};

fn main() -> ExitCode {
    let arguments = Arguments::parse();
    arguments.command.map_or(ExitCode::SUCCESS, command_line::run)
}
