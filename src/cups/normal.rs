//! Normal draws from a stated seed.

use std::f64::consts::TAU;

use rand_chacha::ChaCha8Rng;
use rand_chacha::rand_core::{RngCore as _, SeedableRng as _};

/// Standard normal values, the same on every machine for a seed and a stream (`ChaCha8`; JCGM 101:2008, C.4, after Box & Muller
/// 1958).
pub(super) struct NormalDraws {
    random: ChaCha8Rng,
    second: Option<f64>,
}

impl NormalDraws {
    /// The draws of a seed in one of its streams: streams are independent of each other.
    pub(super) fn new(seed: u64, stream: u64) -> Self {
        let mut random = ChaCha8Rng::seed_from_u64(seed);
        random.set_stream(stream);
        Self {
            random,
            second: None,
        }
    }

    /// Fills a list with independent draws.
    pub(super) fn fill(&mut self, values: &mut [f64]) {
        for value in values {
            *value = self.draw();
        }
    }

    fn draw(&mut self) -> f64 {
        if let Some(second) = self.second.take() {
            return second;
        }
        let radius = (-2.0 * self.uniform().ln()).sqrt();
        let (sine, cosine) = (TAU * self.uniform()).sin_cos();
        self.second = Some(radius * sine);
        radius * cosine
    }

    /// Between 0 and 1, neither of them.
    pub(super) fn uniform(&mut self) -> f64 {
        ((self.random.next_u64() >> 11) as f64 + 0.5) / (1_u64 << 53) as f64
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn draws_are_standard_normal_and_the_same_for_a_seed() {
        let mut values = vec![0.0; 40_000];
        NormalDraws::new(7, 1).fill(&mut values);
        let mean = |of: &dyn Fn(f64) -> f64| {
            values.iter().map(|value| of(*value)).sum::<f64>() / values.len() as f64
        };
        // Five standard errors of each moment.
        assert!(mean(&|z| z).abs() < 0.025);
        assert!((mean(&|z| z * z) - 1.0).abs() < 0.036);
        assert!((mean(&|z| f64::from(z > 1.0)) - 0.158_66).abs() < 0.009);
        let mut again = vec![0.0; 40_000];
        NormalDraws::new(7, 1).fill(&mut again);
        assert_eq!(values, again);
        NormalDraws::new(7, 2).fill(&mut again);
        assert_ne!(values, again);
    }
}
