//! Points and steps in a picture.

use std::ops::{Add, Mul, Sub};

/// A place in a picture, or a step between two, in pixels: x to the right, y down.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(crate) struct Point {
    pub(crate) x: f32,
    pub(crate) y: f32,
}

pub(crate) fn at(x: f32, y: f32) -> Point {
    Point { x, y }
}

impl Add for Point {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        at(self.x + other.x, self.y + other.y)
    }
}

impl Sub for Point {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        at(self.x - other.x, self.y - other.y)
    }
}

impl Mul<f32> for Point {
    type Output = Self;
    fn mul(self, factor: f32) -> Self {
        at(self.x * factor, self.y * factor)
    }
}

impl Point {
    pub(crate) fn dot(self, other: Self) -> f32 {
        self.x * other.x + self.y * other.y
    }

    /// Positive where the other lies clockwise of this, as a picture is seen.
    pub(crate) fn cross(self, other: Self) -> f32 {
        self.x * other.y - self.y * other.x
    }

    pub(crate) fn length(self) -> f32 {
        self.x.hypot(self.y)
    }
}
