//! Hears of changes in the folder of the book's file, by the means of the system.
//!
//! Where the system tells nothing (a network disk that another computer writes to) the file is looked at now and then.

use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::{Duration, Instant};

use super::job::Wake;
use notify::event::{AccessKind, AccessMode};
use notify::{Event, EventKind, RecommendedWatcher, RecursiveMode, Watcher as _};

/// A program that saves writes several times: the file is looked at when nothing has come for so long.
pub(super) const SETTLED: Duration = Duration::from_millis(300);

/// How the program hears that another one has changed the file.
#[derive(Default)]
pub(super) enum Hearing {
    /// It looks now and then.
    #[default]
    Looks,
    /// The system tells it, while there is a file to watch.
    IsTold(Option<FileWatch>),
}

impl Hearing {
    /// The watch, where there is one.
    pub(super) fn watch(&self) -> Option<&FileWatch> {
        match self {
            Self::Looks => None,
            Self::IsTold(watch) => watch.as_ref(),
        }
    }

    /// Watches this file from now on, if any.
    pub(super) fn follow(&mut self, path: Option<&PathBuf>, wake: &Wake) {
        let Self::IsTold(watch) = self else { return };
        let Some(path) = path else {
            *watch = None;
            return;
        };
        if watch.as_ref().is_none_or(|watch| watch.path != *path) {
            *watch = Some(FileWatch::start(path, wake.clone()));
        }
    }
}

/// What the watch and its thread share.
#[derive(Default)]
struct Heard {
    /// Held, never read: events come as long as it lives.
    watcher: Option<RecommendedWatcher>,
    last: Option<Instant>,
}

/// A watch on a file. It ends with the value.
pub(super) struct FileWatch {
    path: PathBuf,
    heard: Arc<Mutex<Heard>>,
}

impl FileWatch {
    /// Begins to watch, on a thread: the folder may be at the other end of a network.
    fn start(path: &Path, wake: Wake) -> Self {
        let heard = Arc::new(Mutex::new(Heard::default()));
        let (file, shared) = (path.to_owned(), heard.clone());
        std::thread::spawn(move || {
            // Where it fails the file is looked at every few seconds.
            if let Ok(watcher) = watcher_of(&file, &shared, wake.clone()) {
                let mut heard = lock(&shared);
                heard.watcher = Some(watcher);
                // What was changed before it began.
                heard.last = Some(Instant::now());
                drop(heard);
                wake();
            }
        });
        Self {
            path: path.to_owned(),
            heard,
        }
    }

    /// Whether events come.
    pub(super) fn is_active(&self) -> bool {
        lock(&self.heard).watcher.is_some()
    }

    /// How long ago the file was touched last, until that is answered with [`FileWatch::answer`].
    pub(super) fn touched(&self) -> Option<Duration> {
        lock(&self.heard).last.map(|last| last.elapsed())
    }

    /// The file is looked at.
    pub(super) fn answer(&self) {
        lock(&self.heard).last = None;
    }
}

fn lock(heard: &Mutex<Heard>) -> std::sync::MutexGuard<'_, Heard> {
    heard.lock().unwrap_or_else(PoisonError::into_inner)
}

fn watcher_of(
    path: &Path,
    heard: &Arc<Mutex<Heard>>,
    wake: Wake,
) -> notify::Result<RecommendedWatcher> {
    // A symbolic link stays; what changes is the file that it leads to.
    let path = path.canonicalize().map_err(notify::Error::io)?;
    let name = path.file_name().map(ToOwned::to_owned);
    // The watcher lives in what is shared: a strong pointer from it would keep both for ever.
    let shared = Arc::downgrade(heard);
    let mut watcher = notify::recommended_watcher(move |event: notify::Result<Event>| {
        let concerns = event.is_ok_and(|event| {
            let is_of_file = |path: &PathBuf| path.file_name() == name.as_deref();
            changes(event.kind) && (event.paths.is_empty() || event.paths.iter().any(is_of_file))
        });
        if concerns && let Some(heard) = shared.upgrade() {
            lock(&heard).last = Some(Instant::now());
            wake();
        }
    })?;
    // The folder, for a file that is replaced in one step is another one afterwards.
    let folder = path.parent().unwrap_or(&path);
    watcher.watch(folder, RecursiveMode::NonRecursive)?;
    Ok(watcher)
}

/// Reading a file is no change: a look would be the cause of the next one.
fn changes(kind: EventKind) -> bool {
    match kind {
        EventKind::Access(AccessKind::Close(AccessMode::Write)) => true,
        EventKind::Access(_) => false,
        _ => true,
    }
}
