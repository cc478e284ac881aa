//! Allergens, the lists of the countries that name them, and what a pack says of them.

/// What the law of some country wants named: the fourteen of Regulation (EU) 1169/2011 Annex II, among which are the nine major
/// ones of the US, and then what further lists name beside or among them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Allergen {
    /// Cereals containing gluten.
    Gluten,
    /// Crustaceans.
    Crustaceans,
    /// Eggs.
    Eggs,
    /// Fish.
    Fish,
    /// Peanuts.
    Peanuts,
    /// Soybeans.
    Soybeans,
    /// Milk, lactose included.
    Milk,
    /// Nuts.
    Nuts,
    /// Celery.
    Celery,
    /// Mustard.
    Mustard,
    /// Sesame seeds.
    Sesame,
    /// Sulphur dioxide and sulphites.
    Sulphites,
    /// Lupin.
    Lupin,
    /// Molluscs.
    Molluscs,
    /// Buckwheat.
    Buckwheat,
    /// Wheat, a cereal containing gluten.
    Wheat,
    /// Mango.
    Mango,
    /// Peach.
    Peach,
    /// Tomato.
    Tomato,
    /// Coconut.
    Coconut,
    /// Walnuts, which are nuts.
    Walnuts,
    /// Pine nuts, which are none of the nuts of the annex.
    PineNuts,
    /// Mackerel, a fish.
    Mackerel,
    /// Crab, a crustacean.
    Crab,
    /// Shrimp, a crustacean.
    Shrimp,
    /// Squid, a mollusc.
    Squid,
    /// Shellfish, which are molluscs.
    Shellfish,
    /// Pork.
    Pork,
    /// Chicken.
    Chicken,
    /// Beef.
    Beef,
}

impl Allergen {
    /// The fourteen of the annex, in its order.
    pub const ANNEX: [Self; 14] = match Self::ALL.first_chunk() {
        Some(annex) => *annex,
        None => unreachable!(),
    };

    /// All that there are, those of the annex first.
    pub const ALL: [Self; 30] = [
        Self::Gluten,
        Self::Crustaceans,
        Self::Eggs,
        Self::Fish,
        Self::Peanuts,
        Self::Soybeans,
        Self::Milk,
        Self::Nuts,
        Self::Celery,
        Self::Mustard,
        Self::Sesame,
        Self::Sulphites,
        Self::Lupin,
        Self::Molluscs,
        Self::Buckwheat,
        Self::Wheat,
        Self::Mango,
        Self::Peach,
        Self::Tomato,
        Self::Coconut,
        Self::Walnuts,
        Self::PineNuts,
        Self::Mackerel,
        Self::Crab,
        Self::Shrimp,
        Self::Squid,
        Self::Shellfish,
        Self::Pork,
        Self::Chicken,
        Self::Beef,
    ];

    /// Its key in reports and in the names of messages.
    pub fn word(self) -> &'static str {
        match self {
            Self::Gluten => "cereals containing gluten",
            Self::Crustaceans => "crustaceans",
            Self::Eggs => "eggs",
            Self::Fish => "fish",
            Self::Peanuts => "peanuts",
            Self::Soybeans => "soybeans",
            Self::Milk => "milk",
            Self::Nuts => "nuts",
            Self::Celery => "celery",
            Self::Mustard => "mustard",
            Self::Sesame => "sesame",
            Self::Sulphites => "sulphites",
            Self::Lupin => "lupin",
            Self::Molluscs => "molluscs",
            Self::Buckwheat => "buckwheat",
            Self::Wheat => "wheat",
            Self::Mango => "mango",
            Self::Peach => "peach",
            Self::Tomato => "tomato",
            Self::Coconut => "coconut",
            Self::Walnuts => "walnuts",
            Self::PineNuts => "pine nuts",
            Self::Mackerel => "mackerel",
            Self::Crab => "crab",
            Self::Shrimp => "shrimp",
            Self::Squid => "squid",
            Self::Shellfish => "shellfish",
            Self::Pork => "pork",
            Self::Chicken => "chicken",
            Self::Beef => "beef",
        }
    }

    /// Whether it is one of the fourteen of the annex: a pack that states its allergens states all of these.
    pub const fn is_in_annex(self) -> bool {
        (self as u8) <= Self::Molluscs as u8
    }

    /// The one of the annex that it is a kind of.
    pub const fn group(self) -> Option<Self> {
        match self {
            Self::Wheat => Some(Self::Gluten),
            Self::Walnuts => Some(Self::Nuts),
            Self::Mackerel => Some(Self::Fish),
            Self::Crab | Self::Shrimp => Some(Self::Crustaceans),
            Self::Squid | Self::Shellfish => Some(Self::Molluscs),
            _ => None,
        }
    }

    /// Whether it is an animal or comes from one.
    pub const fn is_animal(self) -> bool {
        matches!(
            self,
            Self::Milk
                | Self::Eggs
                | Self::Fish
                | Self::Crustaceans
                | Self::Molluscs
                | Self::Mackerel
                | Self::Crab
                | Self::Shrimp
                | Self::Squid
                | Self::Shellfish
                | Self::Pork
                | Self::Chicken
                | Self::Beef
        )
    }
}

/// A list of what has to be named to guests.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum AllergenList {
    /// Regulation (EU) 1169/2011 Annex II.
    EuropeanUnion,
    /// Regulation of Food Allergen Labeling of Taiwan, announced on 2018-08-21. It counts coconut among the nuts (told by a
    /// secondary source), which the annex does not; so coconut is asked for by itself.
    Taiwan,
    /// GB 7718-2011, 4.4.3 (by a secondary source).
    China,
    /// Food and Drugs (Composition and Labelling) Regulations, Cap. 132W (by a secondary source).
    HongKong,
    /// The nineteen groups of the labelling standards of the MFDS (as public pages tell them).
    SouthKorea,
}

impl AllergenList {
    /// All of them.
    pub const ALL: [Self; 5] = [
        Self::EuropeanUnion,
        Self::Taiwan,
        Self::China,
        Self::HongKong,
        Self::SouthKorea,
    ];

    /// What it names.
    pub const fn items(self) -> &'static [Allergen] {
        use Allergen as A;
        match self {
            Self::EuropeanUnion => &A::ANNEX,
            Self::Taiwan => &[
                A::Gluten,
                A::Crustaceans,
                A::Eggs,
                A::Fish,
                A::Peanuts,
                A::Soybeans,
                A::Milk,
                A::Nuts,
                A::Sesame,
                A::Sulphites,
                A::Mango,
                A::Coconut,
            ],
            Self::China => &[
                A::Gluten,
                A::Crustaceans,
                A::Eggs,
                A::Fish,
                A::Peanuts,
                A::Soybeans,
                A::Milk,
                A::Nuts,
            ],
            Self::HongKong => &[
                A::Gluten,
                A::Crustaceans,
                A::Eggs,
                A::Fish,
                A::Peanuts,
                A::Soybeans,
                A::Milk,
                A::Nuts,
                A::Sulphites,
            ],
            Self::SouthKorea => &[
                A::Eggs,
                A::Peanuts,
                A::Soybeans,
                A::Milk,
                A::Sulphites,
                A::Buckwheat,
                A::Wheat,
                A::Peach,
                A::Tomato,
                A::Walnuts,
                A::PineNuts,
                A::Mackerel,
                A::Crab,
                A::Shrimp,
                A::Squid,
                A::Shellfish,
                A::Pork,
                A::Chicken,
                A::Beef,
            ],
        }
    }
}

/// What a pack says of allergens.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct AllergenStatement {
    /// Contains.
    pub contains: Vec<Allergen>,
    /// May contain traces.
    pub may_contain: Vec<Allergen>,
    /// Does not contain, of those outside the annex: of these a pack says nothing unless it says so.
    pub free_of: Vec<Allergen>,
}

/// What a pack that states its allergens says of one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Declared {
    /// It contains it.
    Contains,
    /// It may contain traces.
    MayContain,
    /// It does not contain it.
    Free,
    /// Nothing.
    NotStated,
}

impl AllergenStatement {
    /// What it says of an allergen. A kind of an allergen of the annex is not in what is free of that one, and what contains a
    /// kind contains the one of the annex.
    pub fn says_of(&self, allergen: Allergen) -> Declared {
        let names = |list: &[Allergen]| {
            let mut list = list.iter();
            list.any(|named| *named == allergen || named.group() == Some(allergen))
        };
        if names(&self.contains) {
            return Declared::Contains;
        }
        if names(&self.may_contain) {
            return Declared::MayContain;
        }
        if allergen.is_in_annex() || self.free_of.contains(&allergen) {
            return Declared::Free;
        }
        match allergen.group().map(|group| self.says_of(group)) {
            Some(Declared::Free) => Declared::Free,
            Some(Declared::MayContain) => Declared::MayContain,
            _ => Declared::NotStated,
        }
    }

    /// States another thing of an allergen.
    pub fn declare(&mut self, allergen: Allergen, declared: Declared) {
        for list in [&mut self.contains, &mut self.may_contain, &mut self.free_of] {
            list.retain(|known| *known != allergen);
        }
        let list = match declared {
            Declared::Contains => &mut self.contains,
            Declared::MayContain => &mut self.may_contain,
            Declared::Free if !allergen.is_in_annex() => &mut self.free_of,
            Declared::Free | Declared::NotStated => return,
        };
        list.push(allergen);
        list.sort_unstable();
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_outside_the_annex_is_free_only_where_a_pack_says_so() {
        use Allergen::{Crab, Crustaceans, Mango, Milk, Nuts, Walnuts};
        let mut stated = AllergenStatement {
            contains: vec![Milk],
            may_contain: vec![Nuts],
            ..AllergenStatement::default()
        };
        for (allergen, declared) in [
            (Milk, Declared::Contains),
            (Nuts, Declared::MayContain),
            (Crustaceans, Declared::Free),
            // No crustaceans are no crabs, and traces of nuts may be of walnuts.
            (Crab, Declared::Free),
            (Walnuts, Declared::MayContain),
            (Mango, Declared::NotStated),
        ] {
            assert_eq!(stated.says_of(allergen), declared, "{allergen:?}");
        }
        stated.declare(Mango, Declared::Free);
        assert_eq!(stated.says_of(Mango), Declared::Free);
        stated.declare(Crab, Declared::Contains);
        assert_eq!(stated.says_of(Crustaceans), Declared::Contains);
        assert_eq!(stated.says_of(Allergen::Shrimp), Declared::NotStated);
        stated.declare(Mango, Declared::NotStated);
        assert_eq!(stated.says_of(Mango), Declared::NotStated);
    }

    #[test]
    fn the_annex_comes_first_and_every_item_of_a_list_is_known() {
        assert_eq!(Allergen::ALL[..14], Allergen::ANNEX);
        for allergen in Allergen::ALL {
            assert_eq!(
                allergen.is_in_annex(),
                Allergen::ANNEX.contains(&allergen),
                "{allergen:?}"
            );
            let is_listed = AllergenList::ALL
                .iter()
                .any(|list| list.items().contains(&allergen));
            assert!(is_listed, "{allergen:?}");
        }
    }
}
