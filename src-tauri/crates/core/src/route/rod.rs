//! The rod between its clamps: the search for the shape of least energy.

use super::chain::{Chain, Clamps, Stepper};
use super::mesh::{Grading, Mesh};
use super::newton::settle;
use super::shape::Shape;
use super::starts::starts;
use super::vector::Vector;

/// Intervals while shapes are searched for.
const SEARCH: usize = 32;

/// Intervals of the meshes from which the final shape is extrapolated.
pub(super) const FINEST: [usize; 3] = [64, 128, 256];

/// Two shapes whose tangents differ nowhere by more than this are the same.
const SAME: f64 = 0.05;

/// A second shape within this part of the least energy is a rival: model and hose differ by more.
const RIVAL: f64 = 0.05;

/// A hose that is longer than the straight line by no more than this part of it is taut.
const TAUT: f64 = 1e-9;

/// A hose between two clamps.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Span {
    /// From the near clamp to the far one, in mm.
    pub gap_mm: Vector,
    /// Tangent at the near clamp, a unit vector.
    pub start: Vector,
    /// Tangent at the far clamp, onwards, a unit vector.
    pub end: Vector,
    /// Length of the hose between the clamps, in mm.
    pub length_mm: f64,
}

/// Why a span has no shape.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Shapeless {
    /// The hose does not reach, or reaches only by a kink at a clamp.
    TooShort,
    /// The search did not settle on a shape.
    Unsettled,
}

/// The shape of least energy, and another one nearly as good if there is one.
#[derive(Debug, Clone)]
pub struct Settled {
    /// The shape of least energy that was found.
    pub shape: Shape,
    /// A different shape that is stable too and whose energy is within 5 %: the hose may lie in either.
    pub rival: Option<Shape>,
}

impl Span {
    fn clamps(&self) -> Clamps {
        Clamps { gap: self.gap_mm * (1.0 / self.length_mm), start: self.start, end: self.end }
    }

    /// The shape of least bending energy.
    pub fn settle(&self) -> Result<Settled, Shapeless> {
        self.settle_near(None)
    }

    /// The shape of least bending energy; shapes like `near` are looked at as well.
    pub fn settle_near(&self, near: Option<&Shape>) -> Result<Settled, Shapeless> {
        let clamps = self.clamps();
        if let Some(straight) = self.taut(&clamps)? {
            return Ok(Settled { shape: straight, rival: None });
        }
        let mut stepper = Stepper::default();
        let finest = Mesh::new(FINEST[2], grading(&clamps));
        let mesh = finest.every(FINEST[2] / SEARCH);
        let near = near.map(|shape| shape.coarse(FINEST[1] / SEARCH, &clamps));
        let mut found: Vec<(f64, Chain)> = Vec::new();
        for start in starts(&mesh, &clamps, &[0.5, 0.1], 6).into_iter().chain(near) {
            if let Some(chain) = settle(&mut stepper, &mesh, &clamps, start, 1e-4)
                && found.iter().all(|(_, other)| other.distance(&chain) > SAME)
            {
                found.push((chain.energy(&mesh), chain));
            }
        }
        found.sort_by(|a, b| a.0.total_cmp(&b.0));
        let mut refined: Vec<Shape> = Vec::new();
        for (energy, chain) in &found {
            // The coarse mesh knows an energy to a few percent.
            if refined.first().is_some_and(|best| *energy > best.unit_energy() * (1.0 + 2.0 * RIVAL))
                || refined.len() == 2
            {
                break;
            }
            if let Some(shape) = self.refined(&mut stepper, &clamps, &finest, chain.doubled())
                && refined.iter().all(|other| other.distance(&shape) > SAME)
            {
                refined.push(shape);
            }
        }
        refined.sort_by(|a, b| a.unit_energy().total_cmp(&b.unit_energy()));
        let mut refined = refined.into_iter();
        let shape = refined.next().ok_or(Shapeless::Unsettled)?;
        let rival = refined.next().filter(|rival| rival.unit_energy() <= shape.unit_energy() * (1.0 + RIVAL));
        Ok(Settled { shape, rival })
    }

    /// The shape into which `from` goes over when the clamps have moved little. It is stable, but another
    /// may have less energy. None where it has snapped over into another.
    pub fn follow(&self, from: &Shape) -> Result<Option<Shape>, Shapeless> {
        let clamps = self.clamps();
        if let Some(straight) = self.taut(&clamps)? {
            return Ok(Some(straight));
        }
        let start = from.coarse(FINEST[1] / FINEST[0], &clamps);
        let finest = Mesh::new(FINEST[2], grading(&clamps));
        Ok(self.refined(&mut Stepper::default(), &clamps, &finest, start))
    }

    /// The straight hose, where the length leaves nothing else; an error where it leaves nothing at all.
    fn taut(&self, clamps: &Clamps) -> Result<Option<Shape>, Shapeless> {
        let reach = clamps.gap.length();
        if !(reach.is_finite() && self.length_mm > 0.0) || reach > 1.0 + TAUT {
            return Err(Shapeless::TooShort);
        }
        if reach < 1.0 - TAUT {
            return Ok(None);
        }
        let along = clamps.gap.renormalised();
        if (clamps.start - along).length() < 1e-6 && (clamps.end - along).length() < 1e-6 {
            Ok(Some(Shape::straight(self.length_mm, along)))
        } else {
            Err(Shapeless::TooShort)
        }
    }

    /// Settles a chain of the first of the finest meshes on all of them, and extrapolates. None where it is
    /// stable on a coarse mesh only and falls into another shape on a finer one.
    fn refined(&self, stepper: &mut Stepper, clamps: &Clamps, finest: &Mesh, start: Chain) -> Option<Shape> {
        let [first, second] = [4, 2].map(|stride| finest.every(stride));
        let coarse = settle(stepper, &first, clamps, start, 1e-9)?;
        let mut finer = |mesh: &Mesh, coarse: &Chain| {
            let start = coarse.doubled();
            let chain = settle(stepper, mesh, clamps, start.clone(), 1e-9)?;
            (chain.distance(&start) < SAME).then_some(chain)
        };
        let middle = finer(&second, &coarse)?;
        let fine = finer(finest, &middle)?;
        Some(Shape::extrapolated(
            self.length_mm,
            clamps,
            [(&first, coarse), (&second, middle), (finest, fine)],
        ))
    }
}

/// The grading for a hose between these clamps. Near its limit of reach it bends only next to the clamps,
/// and the pull there follows from the slack alone (the half-infinite elastica: a clamp that
/// leans by an angle a from the chord takes up 2 (1 - cos a/2) of slack over the root of the pull).
fn grading(clamps: &Clamps) -> Grading {
    let reach = clamps.gap.length();
    let half_cosine =
        |tangent: Vector| ((1.0 + tangent.dot(clamps.gap) / reach.max(1e-9)) / 2.0).clamp(0.0, 1.0).sqrt();
    let lean = 2.0 - half_cosine(clamps.start) - half_cosine(clamps.end);
    Grading::for_pull(2.0 * lean / (1.0 - reach))
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A plain congruential generator, so that every run sees the same.
    struct Draw(u64);

    impl Draw {
        fn next(&mut self) -> f64 {
            self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            (self.0 >> 11) as f64 / (1_u64 << 53) as f64
        }

        fn vector(&mut self) -> Vector {
            Vector([0; 3].map(|_| 2.0 * self.next() - 1.0))
        }

        fn unit(&mut self) -> Vector {
            self.vector().unit().unwrap()
        }

        fn span(&mut self) -> Span {
            let gap_mm = self.vector() * 400.0;
            let length_mm = gap_mm.length() * (1.01 + 1.5 * self.next());
            Span { gap_mm, start: self.unit(), end: self.unit(), length_mm }
        }

        /// Tangents that wander about at random between the clamps.
        fn start(&mut self, mesh: &Mesh, clamps: &Clamps) -> Chain {
            let waves = [0; 4].map(|_| self.vector() * 2.0);
            let wander = |place: f64| {
                let wave = |number: usize| (std::f64::consts::PI * (number + 1) as f64 * place).sin();
                let sum = waves
                    .iter()
                    .enumerate()
                    .fold(clamps.gap, |sum, (number, size)| sum + *size * wave(number));
                sum + clamps.start * (1.0 - place) + clamps.end * place
            };
            let mut tangents: Vec<Vector> =
                mesh.at.iter().map(|place| wander(*place).unit().unwrap()).collect();
            (tangents[0], tangents[mesh.intervals()]) = (clamps.start, clamps.end);
            Chain { tangents, force: Vector::ZERO }
        }
    }

    #[test]
    fn no_random_start_finds_a_shape_of_less_energy() {
        let mut draw = Draw(1744);
        let mut stepper = Stepper::default();
        for case in 0..60 {
            let span = draw.span();
            let clamps = span.clamps();
            let least = span.settle().unwrap().shape.unit_energy();
            let mesh = Mesh::new(FINEST[0], grading(&clamps));
            for _ in 0..8 {
                let start = draw.start(&mesh, &clamps);
                if let Some(chain) = settle(&mut stepper, &mesh, &clamps, start, 1e-4) {
                    let energy = chain.energy(&mesh);
                    assert!(energy > least * 0.99, "case {case}: {energy} and not {least} for {span:?}");
                }
            }
        }
    }

    #[test]
    fn following_in_small_steps_gives_what_a_new_search_gives() {
        let mut draw = Draw(1859);
        for case in 0..60 {
            let span = draw.span();
            let settled = span.settle().unwrap();
            let moved = Span { length_mm: span.length_mm * 1.01, ..span };
            let followed = moved.follow(&settled.shape).unwrap();
            let found = moved.settle().unwrap();
            let energies: Vec<f64> =
                std::iter::once(&found.shape).chain(&found.rival).map(Shape::unit_energy).collect();
            let energy = followed.map(|shape| shape.unit_energy());
            assert!(
                energy.is_some_and(|own| energies.iter().any(|other| (own / other - 1.0).abs() < 1e-6)),
                "case {case}: {energy:?}, searched {energies:?}"
            );
        }
    }

    #[test]
    fn a_shape_that_only_a_coarse_mesh_holds_is_not_taken() {
        let span = Span {
            gap_mm: Vector([319.644_562_770_022, -131.425_380_409_685, -215.893_862_976_63]),
            start: Vector([-0.572_919_143_967_613, 0.244_041_021_016_856, -0.782_436_984_386_901]),
            end: Vector([-0.863_860_820_620_707, 0.368_905_839_907_563, 0.343_005_778_200_039]),
            length_mm: 526.709_811_741_262,
        };
        let settled = span.settle().unwrap();
        for shape in std::iter::once(&settled.shape).chain(&settled.rival) {
            assert!(shape.residual() < 1e-4, "residual {}", shape.residual());
        }
    }

    #[test]
    fn a_hose_that_is_pushed_together_leaves_its_plane_when_that_bends_less() {
        let pushed = |gap: f64| Span {
            gap_mm: Vector([gap, 0.0, 0.0]),
            start: Vector([1.0, 0.0, 0.0]),
            end: Vector([1.0, 0.0, 0.0]),
            length_mm: 1000.0,
        };
        let mut shape = pushed(800.0).settle().unwrap().shape;
        for gap in (400..800).step_by(20).rev() {
            let span = pushed(f64::from(gap));
            let settled = span.settle().unwrap().shape;
            // The plane shape of the elastica exists all along, but is not stable from about 620 mm down.
            if let Some(followed) = span.follow(&shape).unwrap() {
                let ratio = followed.unit_energy() / settled.unit_energy();
                assert!((ratio - 1.0).abs() < 1e-6, "gap {gap}: {ratio} times the least energy");
            }
            shape = settled;
        }
    }
}
