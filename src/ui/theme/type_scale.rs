//! The text styles and the bundled fonts behind them.
//!
//! Digits of all fonts have one width, so that columns of figures line up without any font feature.

use std::sync::Arc;

use egui::{FontData, FontDefinitions, FontFamily, FontId, TextStyle};

const SANS: &str = "Evensip Sans";
const SANS_SEMI_BOLD: &str = "Evensip Sans SemiBold";
const SERIF: &str = "Evensip Serif";

/// Every way text is set; converts into egui's `TextStyle` and `FontId`.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum TypeStyle {
    /// The name of the recipe that is open; serif.
    Title,
    /// The name of an area or of a recipe in a list; serif.
    Heading,
    /// A sentence of method between the lines of a recipe; fields set it slanted.
    Method,
    /// Running text, fields, buttons.
    Body,
    /// A word or a figure within body text that counts; semi-bold.
    Strong,
    /// Units, hints, second lines.
    Small,
    /// One large figure: the temperature beside the cup, the distance of a swap.
    Figure,
}

impl TypeStyle {
    /// All styles, from large to small.
    pub const ALL: [Self; 7] = [
        Self::Title,
        Self::Figure,
        Self::Heading,
        Self::Strong,
        Self::Method,
        Self::Body,
        Self::Small,
    ];

    /// Font size, in points.
    pub const fn size(self) -> f32 {
        match self {
            Self::Title => 30.0,
            Self::Figure => 26.0,
            Self::Heading => 19.0,
            Self::Strong | Self::Method | Self::Body => 15.0,
            Self::Small => 12.5,
        }
    }

    /// The name by which egui's style knows it.
    pub fn text_style(self) -> TextStyle {
        match self {
            Self::Title => TextStyle::Name("Title".into()),
            Self::Figure => TextStyle::Name("Figure".into()),
            Self::Heading => TextStyle::Heading,
            Self::Strong => TextStyle::Name("Strong".into()),
            Self::Method => TextStyle::Name("Method".into()),
            Self::Body => TextStyle::Body,
            Self::Small => TextStyle::Small,
        }
    }

    /// Font and size, for the painter.
    pub fn font_id(self) -> FontId {
        FontId::new(self.size(), self.family())
    }

    fn family(self) -> FontFamily {
        match self {
            Self::Title | Self::Heading => FontFamily::Name(SERIF.into()),
            Self::Figure | Self::Strong => FontFamily::Name(SANS_SEMI_BOLD.into()),
            Self::Method | Self::Body | Self::Small => FontFamily::Proportional,
        }
    }
}

impl From<TypeStyle> for TextStyle {
    fn from(style: TypeStyle) -> Self {
        style.text_style()
    }
}

impl From<TypeStyle> for FontId {
    fn from(style: TypeStyle) -> Self {
        style.font_id()
    }
}

/// The style table of egui; what egui calls button and monospace text is body text here.
pub(super) fn text_styles() -> std::collections::BTreeMap<TextStyle, FontId> {
    TypeStyle::ALL
        .into_iter()
        .map(|style| (style.text_style(), style.font_id()))
        .chain([
            (TextStyle::Button, TypeStyle::Body.font_id()),
            (TextStyle::Monospace, TypeStyle::Body.font_id()),
        ])
        .collect()
}

/// The bundled fonts; each family falls back on the sans, which has the most signs.
pub(super) fn font_definitions() -> FontDefinitions {
    let mut fonts = FontDefinitions::empty();
    let bundled = [
        (
            SANS,
            FontData::from_static(include_bytes!(
                "../../../assets/fonts/EvensipSans-Regular.ttf"
            )),
        ),
        (
            SANS_SEMI_BOLD,
            FontData::from_static(include_bytes!(
                "../../../assets/fonts/EvensipSans-SemiBold.ttf"
            )),
        ),
        (
            SERIF,
            FontData::from_static(include_bytes!(
                "../../../assets/fonts/EvensipSerif-SemiBold.ttf"
            )),
        ),
    ];
    for (name, data) in bundled {
        fonts.font_data.insert(name.to_owned(), Arc::new(data));
    }
    let families = [
        (FontFamily::Proportional, vec![SANS]),
        (FontFamily::Monospace, vec![SANS]),
        (
            FontFamily::Name(SANS_SEMI_BOLD.into()),
            vec![SANS_SEMI_BOLD, SANS],
        ),
        (FontFamily::Name(SERIF.into()), vec![SERIF, SANS]),
    ];
    for (family, names) in families {
        let names = names.into_iter().map(str::to_owned).collect();
        fonts.families.insert(family, names);
    }
    fonts
}

#[cfg(test)]
mod tests {
    use super::*;

    /// What figures, units, prices, names and method sentences are written with, beside plain ASCII.
    const SIGNS: &str =
        "½¼¾⅓⅔⅛⅜⅝⅞°±−×·–—…“”‘’→←↑↓€£¥√Δσµμ²³≤≥≈≠‰′″\u{a0}\u{2009}\u{202f}\u{2007}\u{2011}•";
    /// Letters of Latin names, Vietnamese ones with two accents among them.
    const LETTERS: &str = "ÀÉÎÕÜàéîõüçñßøåæœĄĆĘŁŃŚŻąćęłńśżČŘŠŽčřšžőűşğıİấữđỒờẵỹẢĂăƠơƯư";

    fn with_installed_fonts(check: impl Fn(&egui::Context)) {
        let ctx = egui::Context::default();
        crate::ui::theme::install(&ctx);
        ctx.run_ui(egui::RawInput::default(), |ui| check(ui.ctx()))
            .drop_without_applying_deltas();
    }

    #[test]
    fn every_sign_the_program_writes_has_a_glyph_in_every_style() {
        let ascii: String = (' '..='~').collect();
        with_installed_fonts(|ctx| {
            for style in TypeStyle::ALL {
                let missing: String = [ascii.as_str(), SIGNS, LETTERS]
                    .iter()
                    .flat_map(|text| text.chars())
                    .filter(|sign| !ctx.fonts_mut(|fonts| fonts.has_glyph(&style.font_id(), *sign)))
                    .collect();
                assert!(missing.is_empty(), "{style:?} lacks {missing}");
            }
        });
    }

    #[test]
    fn digits_have_one_width_so_that_columns_of_figures_line_up() {
        with_installed_fonts(|ctx| {
            for style in TypeStyle::ALL {
                let width = |text: String| {
                    let galley = ctx.fonts_mut(|fonts| {
                        fonts.layout_no_wrap(text, style.font_id(), egui::Color32::BLACK)
                    });
                    galley.size().x
                };
                let zeros = width("0000".to_owned());
                for first in '0'..='9' {
                    for second in '0'..='9' {
                        let pair = width(format!("{first}{second}{first}{second}"));
                        assert!(
                            (pair - zeros).abs() < 0.01,
                            "{style:?}: {first}{second} twice is {pair} wide, four zeros {zeros}"
                        );
                    }
                }
            }
        });
    }

    #[test]
    fn every_style_that_egui_asks_for_is_defined() {
        let styles = text_styles();
        for style in [
            TextStyle::Small,
            TextStyle::Body,
            TextStyle::Monospace,
            TextStyle::Button,
            TextStyle::Heading,
        ] {
            assert!(styles.contains_key(&style), "{style:?}");
        }
    }
}
