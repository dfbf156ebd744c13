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

    /// Settles a chain of the first of the finest meshes on all of them, and extrapolates.
    fn refined(&self, stepper: &mut Stepper, clamps: &Clamps, finest: &Mesh, start: Chain) -> Option<Shape> {
        let [first, second] = [4, 2].map(|stride| finest.every(stride));
        let coarse = settle(stepper, &first, clamps, start, 1e-9)?;
        let middle = settle(stepper, &second, clamps, coarse.doubled(), 1e-9)?;
        let fine = settle(stepper, finest, clamps, middle.doubled(), 1e-9)?;
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
