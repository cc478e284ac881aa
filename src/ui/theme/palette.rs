//! The colours: warm paper and dark ink, and the same by night.
//!
//! One accent; every other hue stands for an ingredient's role or for being off the level.
//! Text meets WCAG 2.2 level AA (1.4.3: 4.5 to 1) on every ground it is put on; what is drawn meets 1.4.11 (3 to 1).

use egui::Color32;

/// All colours of one appearance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Palette {
    /// The paper under everything.
    pub ground: Color32,
    /// A sheet on the paper: windows, menus, text fields.
    pub sheet: Color32,
    /// Every other row of a long table.
    pub stripe: Color32,
    /// A soft area: buttons, empty parts of a bar.
    pub fill: Color32,
    /// Under the pointer, and pressed.
    pub hover: Color32,
    /// Behind what is selected; its text is [`Self::accent`] or [`Self::text_strong`].
    pub selection: Color32,
    /// Behind a caution's sentence.
    pub caution_fill: Color32,
    /// The band of one noticeable step around the standard.
    pub level_band: Color32,
    /// A rule between areas; decoration, never the only sign of anything.
    pub line: Color32,
    /// The edge of a field or a button.
    pub outline: Color32,
    /// What has the keyboard.
    pub focus_ring: Color32,

    /// Names, headings, the figure that matters.
    pub text_strong: Color32,
    /// Running text.
    pub text_normal: Color32,
    /// Units, hints, second lines.
    pub text_quiet: Color32,
    /// The one accent: links, the selected thing, the standard's line.
    pub accent: Color32,
    /// Text on a surface filled with [`Self::accent`].
    pub on_accent: Color32,
    /// A mark, or a word, more than one noticeable step off the level.
    pub off_level: Color32,
    /// A mark, or a word, within one noticeable step.
    pub within_level: Color32,
    /// A caution's word and sign.
    pub caution: Color32,

    /// What the drink is made of; for areas and bars, not for text, and no text is put on them.
    pub roles: RoleColours,
}

/// One colour for each role of a line.
#[derive(Clone, Copy, Debug, PartialEq)]
#[expect(missing_docs, reason = "the roles are the book's words")]
pub struct RoleColours {
    pub base: Color32,
    pub flavour: Color32,
    pub creamer: Color32,
    pub sweetener: Color32,
    pub tea: Color32,
    pub water: Color32,
    pub ice: Color32,
    pub topping: Color32,
    pub garnish: Color32,
}

const fn hex(rgb: u32) -> Color32 {
    let [_, red, green, blue] = rgb.to_be_bytes();
    Color32::from_rgb(red, green, blue)
}

/// By day.
pub(super) const LIGHT: Palette = Palette {
    ground: hex(0x00F6_F0E4),
    sheet: hex(0x00FF_FBF3),
    stripe: hex(0x00F1_E9DA),
    fill: hex(0x00EB_E1CF),
    hover: hex(0x00E2_D5BE),
    selection: hex(0x00D3_E3DB),
    caution_fill: hex(0x00F5_E2BC),
    level_band: hex(0x00E4_E3D6),
    line: hex(0x00D8_CBB4),
    outline: hex(0x0093_836B),
    focus_ring: hex(0x001B_5D55),
    text_strong: hex(0x0024_1C15),
    text_normal: hex(0x003D_3228),
    text_quiet: hex(0x0066_5848),
    accent: hex(0x001B_5D55),
    on_accent: hex(0x00FF_FBF3),
    off_level: hex(0x00A5_331B),
    within_level: hex(0x004C_5A5E),
    caution: hex(0x007A_4A00),
    roles: RoleColours {
        base: hex(0x00AD_5F5F),
        flavour: hex(0x008A_5590),
        creamer: hex(0x008A_8052),
        sweetener: hex(0x00B2_6C00),
        tea: hex(0x005F_4126),
        water: hex(0x003C_6AA3),
        ice: hex(0x003F_8B96),
        topping: hex(0x0044_3A57),
        garnish: hex(0x004F_7F2A),
    },
};

/// By night.
pub(super) const DARK: Palette = Palette {
    ground: hex(0x001D_1916),
    sheet: hex(0x0027_2220),
    stripe: hex(0x0023_1E1B),
    fill: hex(0x0033_2C27),
    hover: hex(0x0040_372F),
    selection: hex(0x0024_423C),
    caution_fill: hex(0x0044_351A),
    level_band: hex(0x002B_3030),
    line: hex(0x0046_3C34),
    outline: hex(0x0086_7868),
    focus_ring: hex(0x0086_CBB9),
    text_strong: hex(0x00FA_F3E6),
    text_normal: hex(0x00E6_DCCB),
    text_quiet: hex(0x00B5_A794),
    accent: hex(0x0086_CBB9),
    on_accent: hex(0x0014_2421),
    off_level: hex(0x00F5_9A79),
    within_level: hex(0x00AF_C0C4),
    caution: hex(0x00EF_C068),
    roles: RoleColours {
        base: hex(0x00C9_8D78),
        flavour: hex(0x00C0_8FC6),
        creamer: hex(0x00E3_D6AE),
        sweetener: hex(0x00E0_A33E),
        tea: hex(0x009A_7249),
        water: hex(0x006E_9FDB),
        ice: hex(0x00A5_D8DE),
        topping: hex(0x0085_7AA0),
        garnish: hex(0x009C_C069),
    },
};

/// White on black, for whoever needs the most contrast there is: text reaches WCAG 2.2 level AAA (1.4.6: 7 to 1).
pub(super) const CONTRAST: Palette = Palette {
    ground: hex(0x0000_0000),
    sheet: hex(0x0000_0000),
    stripe: hex(0x0014_1414),
    fill: hex(0x001C_1C1C),
    hover: hex(0x0030_3030),
    selection: hex(0x0000_3A40),
    caution_fill: hex(0x0030_2600),
    level_band: hex(0x0026_2626),
    line: hex(0x009A_9A9A),
    outline: hex(0x00FF_FFFF),
    focus_ring: hex(0x00FF_E600),
    text_strong: hex(0x00FF_FFFF),
    text_normal: hex(0x00FF_FFFF),
    text_quiet: hex(0x00E0_E0E0),
    accent: hex(0x006F_F3FF),
    on_accent: hex(0x0000_0000),
    off_level: hex(0x00FF_B59A),
    within_level: hex(0x00FF_FFFF),
    caution: hex(0x00FF_E066),
    roles: RoleColours {
        base: hex(0x00E8_8A78),
        flavour: hex(0x00E0_9BFF),
        creamer: hex(0x00FF_F1B8),
        sweetener: hex(0x00FF_A51E),
        tea: hex(0x00B8_8450),
        water: hex(0x0063_A8FF),
        ice: hex(0x00A8_F4FF),
        topping: hex(0x0098_88C8),
        garnish: hex(0x009C_E04E),
    },
};

/// Black on white, for daylight: the same contrast as [`CONTRAST`].
pub(super) const CONTRAST_BY_DAY: Palette = Palette {
    ground: hex(0x00FF_FFFF),
    sheet: hex(0x00FF_FFFF),
    stripe: hex(0x00F1_F1F1),
    fill: hex(0x00E9_E9E9),
    hover: hex(0x00D9_D9D9),
    selection: hex(0x00CF_E6FF),
    caution_fill: hex(0x00FF_EFC2),
    level_band: hex(0x00E0_E0E0),
    line: hex(0x0066_6666),
    outline: hex(0x0000_0000),
    focus_ring: hex(0x0000_3FC4),
    text_strong: hex(0x0000_0000),
    text_normal: hex(0x0000_0000),
    text_quiet: hex(0x0024_2424),
    accent: hex(0x0000_2F7A),
    on_accent: hex(0x00FF_FFFF),
    off_level: hex(0x007A_1200),
    within_level: hex(0x0000_0000),
    caution: hex(0x0056_3300),
    // Dark enough on white, and what a regular knows them by.
    roles: LIGHT.roles,
};

#[cfg(test)]
mod tests {
    use super::*;

    /// Relative luminance of sRGB, WCAG 2.2, "relative luminance".
    fn luminance(colour: Color32) -> f64 {
        let linear = |channel: u8| {
            let value = f64::from(channel) / 255.0;
            if value <= 0.040_45 {
                value / 12.92
            } else {
                ((value + 0.055) / 1.055).powf(2.4)
            }
        };
        0.2126 * linear(colour.r()) + 0.7152 * linear(colour.g()) + 0.0722 * linear(colour.b())
    }

    /// Contrast ratio, WCAG 2.2, "contrast ratio": 1 for alike, 21 for black on white.
    fn contrast(one: Color32, other: Color32) -> f64 {
        let (one, other) = (luminance(one), luminance(other));
        (one.max(other) + 0.05) / (one.min(other) + 0.05)
    }

    const ALL: [Palette; 4] = [LIGHT, DARK, CONTRAST, CONTRAST_BY_DAY];

    fn grounds(palette: &Palette) -> [(&'static str, Color32); 8] {
        [
            ("ground", palette.ground),
            ("sheet", palette.sheet),
            ("stripe", palette.stripe),
            ("fill", palette.fill),
            ("hover", palette.hover),
            ("selection", palette.selection),
            ("caution fill", palette.caution_fill),
            ("level band", palette.level_band),
        ]
    }

    fn texts(palette: &Palette) -> [(&'static str, Color32); 7] {
        [
            ("strong", palette.text_strong),
            ("normal", palette.text_normal),
            ("quiet", palette.text_quiet),
            ("accent", palette.accent),
            ("off level", palette.off_level),
            ("within level", palette.within_level),
            ("caution", palette.caution),
        ]
    }

    fn role_colours(roles: &RoleColours) -> [(&'static str, Color32); 9] {
        [
            ("base", roles.base),
            ("flavour", roles.flavour),
            ("creamer", roles.creamer),
            ("sweetener", roles.sweetener),
            ("tea", roles.tea),
            ("water", roles.water),
            ("ice", roles.ice),
            ("topping", roles.topping),
            ("garnish", roles.garnish),
        ]
    }

    /// Distance in Oklab (B. Ottosson, "A perceptual color space for image processing", 2020): 0 to about 1.
    fn oklab_distance(one: Color32, other: Color32) -> f64 {
        let oklab = |colour: Color32| {
            let [red, green, blue, _] = egui::Rgba::from(colour).to_array().map(f64::from);
            let long =
                (0.412_221_470_8 * red + 0.536_332_536_3 * green + 0.051_445_992_9 * blue).cbrt();
            let medium =
                (0.211_903_498_2 * red + 0.680_699_545_1 * green + 0.107_396_956_6 * blue).cbrt();
            let short =
                (0.088_302_461_9 * red + 0.281_718_837_6 * green + 0.629_978_700_5 * blue).cbrt();
            [
                0.210_454_255_3 * long + 0.793_617_785_0 * medium - 0.004_072_046_8 * short,
                1.977_998_495_1 * long - 2.428_592_205_0 * medium + 0.450_593_709_9 * short,
                0.025_904_037_1 * long + 0.782_771_766_2 * medium - 0.808_675_766_0 * short,
            ]
        };
        let (one, other) = (oklab(one), oklab(other));
        one.iter()
            .zip(other)
            .map(|(a, b)| (a - b).powi(2))
            .sum::<f64>()
            .sqrt()
    }

    #[test]
    fn black_on_white_has_the_published_contrast() {
        assert!((contrast(Color32::BLACK, Color32::WHITE) - 21.0).abs() < 1e-9);
    }

    #[test]
    fn every_text_is_readable_on_every_ground() {
        for palette in ALL {
            for (text, colour) in texts(&palette) {
                for (ground, behind) in grounds(&palette) {
                    let ratio = contrast(colour, behind);
                    assert!(ratio >= 4.5, "{text} on {ground}: {ratio:.2} to 1");
                }
            }
            let ratio = contrast(palette.on_accent, palette.accent);
            assert!(ratio >= 4.5, "on accent: {ratio:.2} to 1");
        }
    }

    #[test]
    fn high_contrast_reaches_the_enhanced_level() {
        for palette in [CONTRAST, CONTRAST_BY_DAY] {
            for (text, colour) in texts(&palette) {
                for (ground, behind) in grounds(&palette) {
                    let ratio = contrast(colour, behind);
                    assert!(ratio >= 7.0, "{text} on {ground}: {ratio:.2} to 1");
                }
            }
            let ratio = contrast(palette.on_accent, palette.accent);
            assert!(ratio >= 7.0, "on accent: {ratio:.2} to 1");
        }
    }

    #[test]
    fn what_is_drawn_stands_out_from_what_it_is_drawn_on() {
        for palette in ALL {
            let drawn = role_colours(&palette.roles).into_iter().chain([
                ("focus ring", palette.focus_ring),
                ("off level", palette.off_level),
                ("within level", palette.within_level),
            ]);
            for (name, colour) in drawn {
                for behind in [palette.ground, palette.sheet, palette.stripe, palette.fill] {
                    let ratio = contrast(colour, behind);
                    assert!(ratio >= 3.0, "{name}: {ratio:.2} to 1");
                }
            }
            for behind in [palette.ground, palette.sheet] {
                let ratio = contrast(palette.outline, behind);
                assert!(ratio >= 3.0, "outline: {ratio:.2} to 1");
            }
        }
    }

    // The 0.08 is a choice made by eye on bars of 8 points; no standard gives a figure.
    #[test]
    fn no_two_roles_look_alike() {
        for palette in ALL {
            let roles = role_colours(&palette.roles);
            for (index, (name, colour)) in roles.iter().enumerate() {
                for (other, other_colour) in &roles[index + 1..] {
                    let distance = oklab_distance(*colour, *other_colour);
                    assert!(distance > 0.08, "{name} and {other}: {distance:.3}");
                }
            }
        }
    }
}
