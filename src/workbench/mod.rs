//! The open book: what is done to it, what is derived from it, and where it is kept. Knows no screen.

mod bringing_in;
mod card_desk;
mod derived;
mod disk;
mod disk_change;
mod earlier_book;
mod exporting;
mod file_watch;
mod keeper;
mod open_book;
mod opening;
mod picker;
mod published;
mod recovery;
mod redirect;
mod save_outcome;
mod saving;
mod search;
mod serving;
mod variations;

pub use crate::book_file::EarlierCopy;
pub use bringing_in::{
    ArrivalOrder, ArrivalReview, ListContent, ListInHand, ListTaking, RecipeOrder, RecipeReview,
    TableOrder, TableReview,
};
pub use card_desk::{PreviewShown, today};
pub use derived::{BookStamp, Derived, Standard};
pub use disk::{Disk, SystemDisk};
pub use disk_change::{DiskChange, FileState, Theirs};
pub use earlier_book::EarlierBook;
pub use exporting::{
    CardFormat, CardPreview, Export, ExportOrder, ExportState, PreviewOrder, Previewing,
    SharedFonts, WrittenCard,
};
pub use keeper::RecoveryState;
pub use open_book::{
    Action, Command, Home, Intent, Message, Sample, Shown, Unfiled, Workbench, draft_on,
};
pub use picker::{FilePicker, NoPicker, PickRequest, SystemPicker};
pub use published::published_ingredients;
pub use recovery::OfferedRecovery;
pub use saving::{Replacing, exact_moment_words, moment_words};
pub use search::{Look, LookState};
pub use serving::{CoolingCourse, CoursePoint, NoCooling, RunCourse, STANDING_MINUTES, Serving};
pub use variations::{Review, SwapFound, Variation, VariationKind};
