//! Vectors of three, as little as the camera needs.

pub(crate) type Vector = [f64; 3];

pub(crate) fn sum(a: Vector, b: Vector) -> Vector {
    [a[0] + b[0], a[1] + b[1], a[2] + b[2]]
}

pub(crate) fn times(a: Vector, factor: f64) -> Vector {
    a.map(|part| part * factor)
}

pub(crate) fn dot(a: Vector, b: Vector) -> f64 {
    a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
}

pub(crate) fn cross(a: Vector, b: Vector) -> Vector {
    [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]]
}

pub(crate) fn unit(a: Vector) -> Vector {
    times(a, 1.0 / dot(a, a).sqrt())
}
