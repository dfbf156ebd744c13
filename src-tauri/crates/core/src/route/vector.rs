//! Vectors in space, as far as the rod needs them.

use std::ops::{Add, AddAssign, Mul, Neg, Sub};

/// A vector in space.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Vector(pub [f64; 3]);

impl Vector {
    /// The null vector.
    pub const ZERO: Self = Self([0.0; 3]);

    /// The scalar product.
    pub fn dot(self, other: Self) -> f64 {
        let ([ax, ay, az], [bx, by, bz]) = (self.0, other.0);
        ax * bx + ay * by + az * bz
    }

    /// The vector product.
    pub fn cross(self, other: Self) -> Self {
        let ([ax, ay, az], [bx, by, bz]) = (self.0, other.0);
        Self([ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx])
    }

    /// The length.
    pub fn length(self) -> f64 {
        self.dot(self).sqrt()
    }

    /// The same direction with length one; none for the null vector and for what is not finite.
    pub fn unit(self) -> Option<Self> {
        let length = self.length();
        (length > 0.0 && length.is_finite()).then(|| self * (1.0 / length))
    }

    /// The same direction with length one, for a vector that is known to be near that already.
    pub(super) fn renormalised(self) -> Self {
        self * (1.0 / self.length())
    }

    /// The angle between two vectors in radians, 0 to half a turn.
    pub(super) fn angle_to(self, other: Self) -> f64 {
        self.cross(other).length().atan2(self.dot(other))
    }

    /// What is left of this vector when its part along the unit vector `axis` is taken away.
    pub(super) fn across(self, axis: Self) -> Self {
        self - axis * self.dot(axis)
    }

    /// Two unit vectors that make a right-handed frame with this unit vector
    /// (T. Duff et al., Building an Orthonormal Basis, Revisited, JCGT 6(1), 2017).
    pub(super) fn frame(self) -> [Self; 2] {
        let [x, y, z] = self.0;
        let sign = 1.0_f64.copysign(z);
        let a = -1.0 / (sign + z);
        let b = x * y * a;
        [Self([1.0 + sign * x * x * a, sign * b, -sign * x]), Self([b, sign + y * y * a, -y])]
    }

    /// This vector turned about the unit vector `axis` by an angle in radians, anticlockwise seen against it.
    pub(super) fn turned(self, axis: Self, angle: f64) -> Self {
        let (sine, cosine) = angle.sin_cos();
        self * cosine + axis.cross(self) * sine + axis * (axis.dot(self) * (1.0 - cosine))
    }

    /// This vector turned with the least rotation that takes the unit vector `from` to `to`.
    /// None where the two are opposite: then no rotation is the least.
    pub(super) fn carried(self, from: Self, to: Self) -> Option<Self> {
        let cosine = from.dot(to);
        (cosine > -1.0 + 1e-12).then(|| {
            let axis = from.cross(to);
            self * cosine + axis.cross(self) + axis * (axis.dot(self) / (1.0 + cosine))
        })
    }
}

impl Add for Vector {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        let ([ax, ay, az], [bx, by, bz]) = (self.0, other.0);
        Self([ax + bx, ay + by, az + bz])
    }
}

impl AddAssign for Vector {
    fn add_assign(&mut self, other: Self) {
        *self = *self + other;
    }
}

impl Sub for Vector {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        let ([ax, ay, az], [bx, by, bz]) = (self.0, other.0);
        Self([ax - bx, ay - by, az - bz])
    }
}

impl Neg for Vector {
    type Output = Self;
    fn neg(self) -> Self {
        self * -1.0
    }
}

impl Mul<f64> for Vector {
    type Output = Self;
    fn mul(self, by: f64) -> Self {
        let [x, y, z] = self.0;
        Self([x * by, y * by, z * by])
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_frame_is_right_handed_for_any_direction() {
        for direction in [[1.0, 0.0, 0.0], [0.0, 0.0, -1.0], [0.3, -0.8, 0.2], [-0.1, 0.2, -0.9]] {
            let axis = Vector(direction).renormalised();
            let [first, second] = axis.frame();
            assert!((first.cross(second) - axis).length() < 1e-14, "{direction:?}");
            assert!((first.length() - 1.0).abs() < 1e-14, "{direction:?}");
        }
    }

    #[test]
    fn the_least_rotation_carries_one_direction_to_the_other() {
        let (from, to) = (Vector([0.6, 0.8, 0.0]), Vector([0.0, 0.6, -0.8]));
        assert!((from.carried(from, to).unwrap() - to).length() < 1e-15);
        let axis = from.cross(to);
        assert!((axis.carried(from, to).unwrap() - axis).length() < 1e-15, "the axis stays");
        assert_eq!(from.carried(from, -from), None);
    }
}
