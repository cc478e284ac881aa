//! What a frame of the window costs, and how long it takes to the first one: `cargo bench --bench window`.
//!
//! Frames are measured without a display: the CPU time from the input to the triangles, with the pointer moving, on a book of
//! 5,000 ingredients and 10,000 recipes. What counts is the time beside a frame with nothing in it, and beside the same
//! screen of the small sample book: no work that grows with the book in a frame that shows one recipe. Target: below 4 ms.
//!
//! The start is measured in real windows, the program's and a blank one of the same toolkit by turns; that needs a display (or
//! Xvfb, which is started if it is there). Target: at most 1.3 times the blank window.

#![allow(
    clippy::print_stdout,
    clippy::unwrap_used,
    missing_docs,
    reason = "a measurement prints and ends at the first thing that is not as expected"
)]

use std::io::Write as _;
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::Arc;
use std::time::{Duration, Instant, SystemTime, UNIX_EPOCH};

use eframe::{App as _, egui};
use egui::{Context, Event, Pos2, RawInput, Rect, Ui, vec2};
use evensip::book_file::save;
use evensip::ui::{App, Area, Opening, Start, window_options};
use evensip::workbench::NoPicker;

#[path = "support/mod.rs"]
mod support;

/// Frames that are measured; half as many warm up.
const FRAMES: usize = 400;

/// Starts of each kind.
const STARTS: usize = 15;

/// Set in the processes whose start is measured: `blank` or `program`.
const START: &str = "EVENSIP_BENCH_START";

/// When the process was asked for, in microseconds since 1970.
const ASKED_AT: &str = "EVENSIP_BENCH_ASKED_AT";

fn main() {
    match std::env::var(START).as_deref() {
        Ok("blank") => open_and_close(false),
        Ok(_) => open_and_close(true),
        Err(_) => {
            frames();
            starts();
        }
    }
}

/// Median and 99th percentile, ms.
struct Times {
    median: f64,
    slow: f64,
}

impl Times {
    fn of(mut times: Vec<Duration>) -> Self {
        times.sort();
        let at = |percent: usize| times[(times.len() - 1) * percent / 100].as_secs_f64() * 1e3;
        Self {
            median: at(50),
            slow: at(99),
        }
    }
}

/// CPU time of frames in which the pointer moves over the screen.
fn measure(ctx: &Context, mut draw: impl FnMut(&mut Ui)) -> Times {
    let size = vec2(1920.0, 1080.0);
    let mut times = Vec::with_capacity(FRAMES);
    for frame in 0..FRAMES + FRAMES / 2 {
        let at = frame as f32;
        let pointer = Pos2::new((at * 37.0) % size.x, (at * 23.0) % size.y);
        let input = RawInput {
            screen_rect: Some(Rect::from_min_size(Pos2::ZERO, size)),
            time: Some(f64::from(at) / 60.0),
            focused: true,
            events: vec![Event::PointerMoved(pointer)],
            ..RawInput::default()
        };
        let start = Instant::now();
        let mut output = ctx.run_ui(input, |ui| draw(ui));
        // The images are for a screen that is not there.
        output.textures_delta.clear();
        let triangles = ctx.tessellate(output.shapes, output.pixels_per_point);
        let taken = start.elapsed();
        std::hint::black_box(triangles);
        if frame >= FRAMES / 2 {
            times.push(taken);
        }
    }
    Times::of(times)
}

fn program(ctx: &Context, book: Option<PathBuf>) -> App {
    let creation = eframe::CreationContext::_new_kittest(ctx.clone());
    App::with_picker(&creation, Opening { path: book }, Arc::new(NoPicker))
}

fn frames() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("large.ron");
    let large = support::large_book(5_000, 10_000);
    save(&path, &large).unwrap();
    let blank = measure(&Context::default(), |_| {});
    println!("a frame with nothing in it: {:.3} ms", blank.median);
    for area in Area::TABS {
        let of = |book: Option<PathBuf>| {
            let ctx = Context::default();
            let mut app = program(&ctx, book);
            app.view_mut().area = area;
            let mut frame = eframe::Frame::_new_kittest();
            // What is worked out beside the frames is there before they are measured.
            let until = Instant::now() + Duration::from_millis(1500);
            while Instant::now() < until {
                let mut output = ctx.run_ui(RawInput::default(), |ui| app.ui(ui, &mut frame));
                output.textures_delta.clear();
                std::thread::sleep(Duration::from_millis(20));
            }
            measure(&ctx, |ui| app.ui(ui, &mut frame))
        };
        let (large, small) = (of(Some(path.clone())), of(None));
        println!(
            "{area:?}: {:.2} ms, 1 in 100 above {:.2} ms; {:.0} times a blank frame, {:.2} times the same screen of the small book",
            large.median,
            large.slow,
            large.median / blank.median,
            large.median / small.median,
        );
    }
}

/// Closes the window after its first frame has been handed to the screen, and says when that was.
struct ClosesAtOnce<A> {
    inner: A,
    frames: u32,
}

impl<A: FnMut(&mut Ui, &mut eframe::Frame)> eframe::App for ClosesAtOnce<A> {
    fn ui(&mut self, ui: &mut Ui, frame: &mut eframe::Frame) {
        if self.frames == 1 {
            // The second frame begins when the first one is on the screen.
            let asked_at: u128 = std::env::var(ASKED_AT).unwrap().parse().unwrap();
            println!("{}", since_1970() - asked_at);
            std::io::stdout().flush().unwrap();
            ui.ctx().send_viewport_cmd(egui::ViewportCommand::Close);
        }
        self.frames += 1;
        (self.inner)(ui, frame);
        ui.ctx().request_repaint();
    }
}

fn since_1970() -> u128 {
    SystemTime::now()
        .duration_since(UNIX_EPOCH)
        .unwrap()
        .as_micros()
}

fn open_and_close(is_program: bool) {
    let options = if is_program {
        window_options()
    } else {
        eframe::NativeOptions {
            viewport: egui::ViewportBuilder::default().with_inner_size([1360.0, 860.0]),
            renderer: eframe::Renderer::Glow,
            ..eframe::NativeOptions::default()
        }
    };
    let start = is_program.then(Start::begin);
    let ctx = start.as_ref().map(Start::context);
    eframe::run_native_ext(
        "start",
        options,
        ctx,
        Box::new(move |cc| {
            Ok(if let Some(start) = start {
                let mut app = start.finish(cc, Opening::default(), Arc::new(NoPicker));
                Box::new(ClosesAtOnce {
                    inner: move |ui: &mut Ui, frame: &mut eframe::Frame| app.ui(ui, frame),
                    frames: 0,
                })
            } else {
                Box::new(ClosesAtOnce {
                    inner: |_: &mut Ui, _: &mut eframe::Frame| {},
                    frames: 0,
                })
            })
        }),
    )
    .unwrap();
}

/// A display of our own, ended with the measurement.
struct Display(Child);

impl Drop for Display {
    fn drop(&mut self) {
        let _ = self.0.kill();
        let _ = self.0.wait();
    }
}

/// The number of a display and, where it was started here, its process; `None` where there is none.
fn display(folder: &Path) -> Option<(String, Option<Display>)> {
    if let Ok(display) = std::env::var("DISPLAY") {
        return Some((display, None));
    }
    let number = folder.join("display");
    let file = std::fs::File::create(&number).unwrap();
    let server = Command::new("Xvfb")
        .args([
            "-displayfd",
            "1",
            "-screen",
            "0",
            "1400x900x24",
            "-nolisten",
            "tcp",
        ])
        .stdout(file)
        .stderr(Stdio::null())
        .spawn()
        .ok()?;
    let server = Display(server);
    for _ in 0..100 {
        let text = std::fs::read_to_string(&number).unwrap();
        if text.ends_with('\n') {
            return Some((format!(":{}", text.trim()), Some(server)));
        }
        std::thread::sleep(Duration::from_millis(50));
    }
    None
}

fn starts() {
    let folder = tempfile::tempdir().unwrap();
    let Some((number, _server)) = display(folder.path()) else {
        println!("the start is not measured: there is no display, and no Xvfb to make one");
        return;
    };
    let start = |kind: &str| {
        let asked_at = since_1970().to_string();
        let output = Command::new(std::env::current_exe().unwrap())
            .env("DISPLAY", &number)
            .env("HOME", folder.path())
            .env("XDG_DATA_HOME", folder.path())
            .env("XDG_CONFIG_HOME", folder.path())
            .env_remove("WAYLAND_DISPLAY")
            .env(START, kind)
            .env(ASKED_AT, asked_at)
            .stderr(Stdio::null())
            .output()
            .unwrap();
        let micros: u64 = String::from_utf8(output.stdout)
            .unwrap()
            .trim()
            .parse()
            .unwrap();
        Duration::from_micros(micros)
    };
    let (mut blank, mut program) = (Vec::new(), Vec::new());
    for _ in 0..STARTS {
        // The one before is cleared away by then: its end is no part of this start.
        std::thread::sleep(Duration::from_millis(300));
        blank.push(start("blank"));
        std::thread::sleep(Duration::from_millis(300));
        program.push(start("program"));
    }
    let (blank, program) = (Times::of(blank), Times::of(program));
    println!(
        "start to first frame: {:.0} ms, {:.2} times a blank window ({:.0} ms)",
        program.median,
        program.median / blank.median,
        blank.median
    );
}
