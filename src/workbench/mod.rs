//! The open book: what is done to it, what is derived from it, and where it is kept. Knows no screen.

mod card_desk;
mod derived;
mod disk;
mod disk_change;
mod exporting;
mod open_book;
mod picker;
mod recovery;
mod saving;
mod serving;

pub use card_desk::{ListContent, ListInHand, PreviewShown, today};
pub use derived::{BookStamp, Derived, Standard};
pub use disk::{Disk, SystemDisk};
pub use disk_change::{DiskChange, Theirs};
pub use exporting::{
    CardFormat, CardPreview, Export, ExportOrder, ExportState, PreviewOrder, Previewing,
    SharedFonts, free_name,
};
pub use open_book::{Action, Command, Home, Intent, Message, Sample, Shown, Workbench, draft_on};
pub use picker::{FilePicker, NoPicker, PickRequest, SystemPicker};
pub use recovery::{OfferedRecovery, RecoveryState};
pub use saving::moment_words;
pub use serving::{CoolingCourse, CoursePoint, NoCooling, RunCourse, STANDING_MINUTES, Serving};
