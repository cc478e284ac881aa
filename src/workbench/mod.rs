//! The open book: what is done to it, what is derived from it, and where it is kept. Knows no screen.

mod action;
mod bringing_in;
mod card_desk;
mod card_previews;
mod derived;
mod disk;
mod disk_change;
mod disk_desk;
mod document;
mod draft;
mod earlier_book;
mod earlier_shelf;
mod exporting;
mod file_watch;
mod house_made;
mod job;
mod jobs;
mod keeper;
mod kept_file;
mod left_work;
mod list_in_hand;
mod measure_first;
mod moments;
mod open_book;
mod opening;
mod perform;
mod picker;
mod published;
mod questions;
mod record;
mod recovery;
mod redirect;
mod save_outcome;
mod saving;
mod search;
mod searches;
mod serving;
mod starter_kit;
mod tastings;
mod theirs;
mod usual_stage;
mod variations;
mod whole_menu;

pub use crate::book_file::EarlierCopy;
pub use action::{Action, Command, Home, Intent, Message, Sample, Shown, Unfiled};
pub use card_previews::PreviewShown;
pub use derived::{Answers, BookQuestion, BookStamp, KEPT_OF_TYPED};
pub use disk::{Disk, SystemDisk};
pub use disk_desk::Replacing;
pub use draft::draft_on;
pub use earlier_shelf::EarlierBook;
pub use exporting::{
    CardFormat, CardPreview, Export, ExportOrder, ExportState, PreviewOrder, Previewing,
    SharedFonts, WrittenCard,
};
pub use house_made::{
    Begun, begin_batch, begin_brew, brew_otherwise, brew_with_amount, by_its_batch, reference_brew,
};
pub use keeper::RecoveryState;
pub use left_work::OfferedRecovery;
pub use list_in_hand::{
    ArrivalOrder, ArrivalReview, EffectReview, ListContent, ListInHand, ListTaking, RecipeOrder,
    RecipeReview, TableOrder, TableReview,
};
pub use measure_first::MeasureFirst;
pub use moments::{exact_moment_words, moment_words, today};
pub use open_book::Workbench;
pub use picker::{FilePicker, NoPicker, PickRequest, SystemPicker};
pub use published::published_ingredients;
pub use questions::{
    BalanceOf, ChangesSince, ConflictsWith, CostOfGram, DifferenceFrom, FindingsOfBook, Gram,
    GramOf, HouseBrewOf, LAST_SIP_MINUTES, LastSipOf, OneUseOf, ServingOf, Snapshot, Standard,
    StandardOf, Standings, SugarsOfBatches, WhyOffOf,
};
pub use record::{RecordOfBook, rescaling, rescaling_given_up};
pub use search::{Look, LookState};
pub use searches::{Review, SwapFound, Variation, VariationKind};
pub use serving::{CoolingCourse, CoursePoint, NoCooling, RunCourse, STANDING_MINUTES, Serving};
pub use starter_kit::starter_kit;
pub use tastings::{EffectOfTaking, WhatTastingsSay, taking_over, verdict_of};
pub use theirs::{DiskChange, FileState, Theirs};
pub use usual_stage::lines_to_usual_stage;
pub use whole_menu::WholeMenu;
