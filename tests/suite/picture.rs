//! Pictures of screens without a graphics card: draws egui's triangles on the CPU, the same bytes in every run.
//!
//! `Harness::builder().renderer(CpuRenderer::default())`, then `harness.render()`.

use std::collections::BTreeMap;
use std::fs::File;
use std::path::Path;

use eframe::egui::{
    self, Color32, ImageData, Pos2, Rect, TextureFilter, TextureId, TexturesDelta,
    epaint::{ClippedPrimitive, ImageDelta, Primitive, Vertex},
};
use image::RgbaImage;
use image::codecs::png::{CompressionType, FilterType, PngEncoder};

/// Draws what egui tessellates, by the rules of a graphics card.
#[derive(Default)]
pub(crate) struct CpuRenderer {
    textures: Textures,
}

impl egui_kittest::TestRenderer for CpuRenderer {
    fn handle_delta(&mut self, delta: &mut TexturesDelta) {
        self.textures.apply(delta);
    }

    fn render(
        &mut self,
        ctx: &egui::Context,
        output: &egui::FullOutput,
    ) -> Result<RgbaImage, String> {
        let scale = ctx.pixels_per_point();
        let mut canvas = Canvas::new(ctx.content_rect().size() * scale);
        for clipped in ctx.tessellate(output.shapes.clone(), scale) {
            canvas.draw(&clipped, scale, &self.textures)?;
        }
        Ok(canvas.into_image())
    }
}

/// Keeps the pictures as they are drawn now.
const KEEP: &str = "EVENSIP_KEEP_PICTURES";

/// How far a colour may be from the kept one, of 255: other processors and other libraries of mathematics round the edges of
/// letters and curves otherwise, by one or two. What moves or changes is off by dozens.
const COLOUR_TOLERANCE: u8 = 12;

/// Pixels that may be further off, where a line falls on the other side of a half: fewer than a changed digit has.
const MOST_OTHER_PIXELS: usize = 4;

/// Compares a picture with the one that is kept in a folder under this name, or keeps it.
pub(crate) fn assert_kept(picture: &RgbaImage, folder: &str, name: &str) {
    let kept = Path::new(env!("CARGO_MANIFEST_DIR")).join(folder);
    let kept = kept.join(name).with_extension("png");
    if std::env::var_os(KEEP).is_some() {
        return write(picture, &kept);
    }
    let other = match image::open(&kept) {
        Ok(before) => pixels_that_differ(&before.into_rgba8(), picture),
        Err(error) => panic!("{}: {error}; {KEEP}=1 makes it", kept.display()),
    };
    if other.len() > MOST_OTHER_PIXELS {
        let now = std::env::temp_dir().join(format!("evensip-{name}.png"));
        write(picture, &now);
        panic!(
            "{name}: {} pixels differ, the first at {:?}; see {} beside {}; {KEEP}=1 keeps the new one",
            other.len(),
            other[0],
            now.display(),
            kept.display()
        );
    }
}

/// Where two pictures differ clearly: everywhere when they are not of one size.
fn pixels_that_differ(before: &RgbaImage, now: &RgbaImage) -> Vec<(u32, u32)> {
    let is_far = |(one, other): (&u8, &u8)| one.abs_diff(*other) > COLOUR_TOLERANCE;
    now.enumerate_pixels()
        .filter(|(x, y, pixel)| {
            before.dimensions() != now.dimensions()
                || before.get_pixel(*x, *y).0.iter().zip(&pixel.0).any(is_far)
        })
        .map(|(x, y, _)| (x, y))
        .collect()
}

/// As small as it gets: it is kept for long.
fn write(picture: &RgbaImage, path: &Path) {
    let file = File::create(path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    let encoder = PngEncoder::new_with_quality(file, CompressionType::Best, FilterType::Adaptive);
    picture
        .write_with_encoder(encoder)
        .expect("a PNG can be written");
}

/// Textures in the order of their numbers.
#[derive(Default)]
struct Textures(BTreeMap<(bool, u64), Texture>);

struct Texture {
    width: usize,
    height: usize,
    smooth: bool,
    texels: Vec<Color32>,
}

/// A `TextureId` has no order of its own.
fn key(id: TextureId) -> (bool, u64) {
    match id {
        TextureId::Managed(number) => (false, number),
        TextureId::User(number) => (true, number),
    }
}

impl Textures {
    #[expect(
        clippy::iter_over_hash_type,
        reason = "changes of different textures do not depend on each other"
    )]
    fn apply(&mut self, delta: &mut TexturesDelta) {
        for (id, images) in delta.set.drain() {
            for image in images {
                self.change(key(id), &image);
            }
        }
        for id in delta.free.drain() {
            self.0.remove(&key(id));
        }
    }

    fn change(&mut self, key: (bool, u64), delta: &ImageDelta) {
        let ImageData::Color(image) = &delta.image;
        let [width, height] = image.size;
        let Some([left, top]) = delta.pos else {
            let texture = Texture {
                width,
                height,
                smooth: delta.options.magnification == TextureFilter::Linear,
                texels: image.pixels.clone(),
            };
            self.0.insert(key, texture);
            return;
        };
        let texture = self.0.get_mut(&key).expect("a part follows its whole");
        for (row, source) in image.pixels.chunks_exact(width).enumerate() {
            let start = (top + row) * texture.width + left;
            texture.texels[start..start + width].copy_from_slice(source);
        }
    }
}

impl Texture {
    fn texel(&self, x: i32, y: i32) -> [f32; 4] {
        let inside = |value: i32, size: usize| {
            usize::try_from(value)
                .unwrap_or(0)
                .min(size.saturating_sub(1))
        };
        let index = inside(y, self.height) * self.width + inside(x, self.width);
        self.texels[index].to_array().map(f32::from)
    }

    /// The premultiplied colour at a place from 0 to 1, channels from 0 to 255, clamped at the edge.
    #[expect(
        clippy::cast_possible_truncation,
        reason = "a texture is far smaller than i32::MAX"
    )]
    fn sample(&self, at: Pos2) -> [f32; 4] {
        let (x, y) = (at.x * self.width as f32, at.y * self.height as f32);
        if !self.smooth {
            return self.texel(x.floor() as i32, y.floor() as i32);
        }
        let (x, y) = (x - 0.5, y - 0.5);
        let (left, top) = (x.floor(), y.floor());
        let (right_share, lower_share) = (x - left, y - top);
        let (left, top) = (left as i32, top as i32);
        let upper = mix(
            self.texel(left, top),
            self.texel(left + 1, top),
            right_share,
        );
        let lower = mix(
            self.texel(left, top + 1),
            self.texel(left + 1, top + 1),
            right_share,
        );
        mix(upper, lower, lower_share)
    }
}

fn mix(from: [f32; 4], to: [f32; 4], share: f32) -> [f32; 4] {
    std::array::from_fn(|channel| from[channel] + (to[channel] - from[channel]) * share)
}

/// Pixels with premultiplied channels from 0 to 255.
struct Canvas {
    width: i32,
    height: i32,
    pixels: Vec<[f32; 4]>,
}

/// Pixels from `left` and `top` up to, and without, `right` and `bottom`.
#[derive(Clone, Copy)]
struct Window {
    left: i32,
    top: i32,
    right: i32,
    bottom: i32,
}

#[expect(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "pixel numbers are small and, after clipping, not negative"
)]
impl Canvas {
    fn new(size: egui::Vec2) -> Self {
        let (width, height) = (size.x.round() as i32, size.y.round() as i32);
        Self {
            width,
            height,
            pixels: vec![[0.0; 4]; width as usize * height as usize],
        }
    }

    fn draw(
        &mut self,
        clipped: &ClippedPrimitive,
        scale: f32,
        textures: &Textures,
    ) -> Result<(), String> {
        let Primitive::Mesh(mesh) = &clipped.primitive else {
            return Err("a paint callback can't be drawn without a graphics card".to_owned());
        };
        let texture = textures
            .0
            .get(&key(mesh.texture_id))
            .ok_or_else(|| format!("no texture {:?}", mesh.texture_id))?;
        let window = self.window(clipped.clip_rect, scale);
        for corners in mesh.indices.chunks_exact(3) {
            let corners = [0, 1, 2].map(|corner| mesh.vertices[corners[corner] as usize]);
            self.triangle(&corners, scale, window, texture);
        }
        Ok(())
    }

    fn window(&self, clip: Rect, scale: f32) -> Window {
        let edge = |points: f32, limit: i32| ((points * scale).round() as i32).clamp(0, limit);
        Window {
            left: edge(clip.left(), self.width),
            top: edge(clip.top(), self.height),
            right: edge(clip.right(), self.width),
            bottom: edge(clip.bottom(), self.height),
        }
    }

    /// Fills the pixels whose centres lie in the triangle; a centre on an edge that two triangles share belongs to one of them.
    fn triangle(&mut self, corners: &[Vertex; 3], scale: f32, window: Window, texture: &Texture) {
        let mut corners = *corners;
        let mut places = corners.map(|corner| SubPixel::new(corner.pos, scale));
        let mut area = places[0].twice_area(places[1], places[2]);
        if area < 0 {
            corners.swap(1, 2);
            places.swap(1, 2);
            area = -area;
        }
        if area == 0 {
            return;
        }
        let [a, b, c] = places;
        let own_edges = [b.owns_edge_to(c), c.owns_edge_to(a), a.owns_edge_to(b)];
        let flat_texel = corners
            .iter()
            .all(|corner| corner.uv == corners[0].uv)
            .then(|| texture.sample(corners[0].uv));
        let columns = range(places.map(|place| place.x), window.left, window.right);
        for y in range(places.map(|place| place.y), window.top, window.bottom) {
            for x in columns.clone() {
                let centre = SubPixel::centre_of(x, y);
                let weights = [
                    b.twice_area(c, centre),
                    c.twice_area(a, centre),
                    a.twice_area(b, centre),
                ];
                let inside = weights
                    .iter()
                    .zip(own_edges)
                    .all(|(weight, own)| *weight > 0 || (*weight == 0 && own));
                if inside {
                    let shares = weights.map(|weight| weight as f32 / area as f32);
                    let texel = flat_texel
                        .unwrap_or_else(|| texture.sample(blended_place(&corners, shares)));
                    self.blend(x, y, blended_colour(&corners, shares), texel);
                }
            }
        }
    }

    /// Puts a premultiplied colour, tinted by a texel, over what is there.
    fn blend(&mut self, x: i32, y: i32, colour: [f32; 4], texel: [f32; 4]) {
        let source: [f32; 4] =
            std::array::from_fn(|channel| colour[channel] * texel[channel] / 255.0);
        let pixel = &mut self.pixels[(y * self.width + x) as usize];
        let kept = 1.0 - source[3] / 255.0;
        *pixel = std::array::from_fn(|channel| source[channel] + pixel[channel] * kept);
    }

    fn into_image(self) -> RgbaImage {
        let bytes = self
            .pixels
            .iter()
            .flat_map(|pixel| {
                let [r, g, b, a] = pixel.map(|channel| channel.round().clamp(0.0, 255.0) as u8);
                Color32::from_rgba_premultiplied(r, g, b, a).to_srgba_unmultiplied()
            })
            .collect();
        RgbaImage::from_raw(self.width as u32, self.height as u32, bytes)
            .expect("four bytes a pixel")
    }
}

fn blended_colour(corners: &[Vertex; 3], shares: [f32; 3]) -> [f32; 4] {
    let colours = corners.map(|corner| corner.color.to_array().map(f32::from));
    std::array::from_fn(|channel| {
        (0..3)
            .map(|corner| colours[corner][channel] * shares[corner])
            .sum()
    })
}

fn blended_place(corners: &[Vertex; 3], shares: [f32; 3]) -> Pos2 {
    (0..3)
        .map(|corner| corners[corner].uv.to_vec2() * shares[corner])
        .fold(Pos2::ZERO, |sum, part| sum + part)
}

/// The pixels between the least and the greatest of three coordinates, within the window.
#[expect(
    clippy::cast_possible_truncation,
    reason = "clamped to the window before the conversion"
)]
fn range(places: [i64; 3], least: i32, greatest: i32) -> std::ops::Range<i32> {
    let pixel = |place: i64| {
        place
            .div_euclid(SubPixel::PER_PIXEL)
            .clamp(i64::from(least), i64::from(greatest)) as i32
    };
    let [a, b, c] = places;
    let end = pixel(a.max(b).max(c) + SubPixel::PER_PIXEL);
    pixel(a.min(b).min(c))..end.max(least)
}

/// A place in 256ths of a pixel: whole numbers, so that neighbours agree exactly about a shared edge.
#[derive(Clone, Copy)]
struct SubPixel {
    x: i64,
    y: i64,
}

impl SubPixel {
    const PER_PIXEL: i64 = 256;

    #[expect(
        clippy::cast_possible_truncation,
        reason = "a float to integer cast saturates, which is right far outside the picture"
    )]
    fn new(points: Pos2, scale: f32) -> Self {
        // Held within a million pixels, so that areas fit 64 bits.
        let place = |value: f32| {
            (value * scale * Self::PER_PIXEL as f32)
                .round()
                .clamp(-2.5e8, 2.5e8) as i64
        };
        Self {
            x: place(points.x),
            y: place(points.y),
        }
    }

    fn centre_of(x: i32, y: i32) -> Self {
        let place = |pixel: i32| i64::from(pixel) * Self::PER_PIXEL + Self::PER_PIXEL / 2;
        Self {
            x: place(x),
            y: place(y),
        }
    }

    /// Twice the area of a triangle; positive when its corners go clockwise on the screen.
    fn twice_area(self, second: Self, third: Self) -> i64 {
        (second.x - self.x) * (third.y - self.y) - (second.y - self.y) * (third.x - self.x)
    }

    /// The top-left rule: of a clockwise triangle, edges that go up, or level and to the right, own their pixels.
    fn owns_edge_to(self, next: Self) -> bool {
        next.y < self.y || (next.y == self.y && next.x > self.x)
    }
}

/// Text, a button, and a rectangle of a known colour at a known place.
fn picture_of_a_screen() -> RgbaImage {
    screen_with("Two scoops, 13.2 g")
}

fn screen_with(words: &'static str) -> RgbaImage {
    let mut harness = egui_kittest::Harness::builder()
        .with_size(egui::vec2(240.0, 120.0))
        .with_context_setup(evensip::ui::theme::install)
        .renderer(CpuRenderer::default())
        .build_ui(|ui| {
            ui.label(words);
            let _ = ui.button("Swap");
            let rect = Rect::from_min_max(Pos2::new(100.0, 60.0), Pos2::new(140.0, 100.0));
            ui.painter()
                .rect_filled(rect, 0.0, Color32::from_rgb(10, 120, 200));
            let veil = rect.translate(egui::vec2(40.0, 0.0));
            ui.painter()
                .rect_filled(veil, 0.0, Color32::from_rgb(200, 0, 0));
            ui.painter()
                .rect_filled(veil, 0.0, Color32::from_rgba_premultiplied(0, 0, 100, 128));
        });
    harness.run();
    harness.render().expect("meshes only")
}

#[test]
fn the_same_screen_gives_the_same_picture() {
    let picture = picture_of_a_screen();
    assert_eq!(picture.as_raw(), picture_of_a_screen().as_raw());
}

#[test]
fn a_rectangle_has_its_colour_up_to_its_edge() {
    let picture = picture_of_a_screen();
    for (x, y) in [(102, 62), (120, 80), (120, 81), (137, 97)] {
        assert_eq!(picture.get_pixel(x, y).0, [10, 120, 200, 255], "{x}, {y}");
    }
    assert_ne!(picture.get_pixel(97, 80).0, [10, 120, 200, 255]);
    assert_ne!(picture.get_pixel(120, 103).0, [10, 120, 200, 255]);
}

/// A digit that changes has more pixels than what another machine may round.
#[test]
fn a_changed_digit_is_seen_and_a_rounded_colour_is_not() {
    let picture = picture_of_a_screen();
    let mut rounded = picture.clone();
    for pixel in rounded.pixels_mut() {
        pixel.0[0] = pixel.0[0].saturating_add(2);
    }
    assert_eq!(pixels_that_differ(&picture, &rounded), []);
    let changed = screen_with("Two scoops, 13.3 g");
    let other = pixels_that_differ(&picture, &changed).len();
    assert!(other > 2 * MOST_OTHER_PIXELS, "{other}");
}

// 200 seen through a premultiplied veil of alpha 128: 200 × (1 − 128/255) = 99.6.
#[test]
fn a_veil_is_blended_with_what_lies_under_it() {
    assert_eq!(
        picture_of_a_screen().get_pixel(160, 80).0,
        [100, 0, 100, 255]
    );
}
