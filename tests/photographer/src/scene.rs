//! What light comes from each pixel's direction: the label on its plate or hose, and what lies behind.

use crate::label::Label;
use crate::vector::{Vector, cross, dot, sum, times, unit};
use crate::{Random, Setting};

/// Parts of the light that come back from what carries the label.
const RUBBER: f64 = 0.07;
const PLATE: f64 = 0.35;

/// Rays through each pixel, in each direction.
const RAYS: usize = 2;

/// Light of each pixel, row by row, where 1 is white paper's under full light times the exposure.
pub(crate) struct Light {
    pub(crate) width: usize,
    pub(crate) height: usize,
    pub(crate) pixels: Vec<f32>,
}

/// The camera, its place and axes in mm about the middle of the code; z is the square on the label.
struct Camera {
    place: Vector,
    ahead: Vector,
    right: Vector,
    down: Vector,
}

/// Where a ray ends.
struct Hit {
    x: f64,
    y: f64,
    square: Vector,
}

pub(crate) fn seen(label: &Label, setting: &Setting, random: &mut Random) -> Light {
    let (width, height) = setting.picture;
    let focal = f64::from(width) / setting.field;
    let camera = Camera::placed(label, setting, focal, random);
    let lamps = Lamps::placed(label, setting, random);
    let askew = random.between(-5.0, 5.0).to_radians();
    let along = random.chance(0.5);
    let mut pixels = Vec::with_capacity((width * height) as usize);
    for row in 0..height {
        for column in 0..width {
            let mut light = 0.0;
            for ray in 0..RAYS * RAYS {
                let inside = |part: usize| (part as f64 + 0.5) / RAYS as f64;
                let u = f64::from(column) + inside(ray % RAYS) - f64::from(width) / 2.0;
                let v = f64::from(row) + inside(ray / RAYS) - f64::from(height) / 2.0;
                let ray = camera.through(u / focal, v / focal);
                light += match hit(&camera, ray, setting.hose_mm, along) {
                    Some(hit) => lamps.at(&hit, on(label, &hit, askew, setting), u / f64::from(width)),
                    None => lamps.behind(u, v),
                };
            }
            pixels.push((light / (RAYS * RAYS) as f64 * setting.exposure) as f32);
        }
    }
    Light { width: width as usize, height: height as usize, pixels }
}

/// What comes back from the label or, beside it, from what carries it.
fn on(label: &Label, hit: &Hit, askew: f64, setting: &Setting) -> f64 {
    let (sin, cos) = askew.sin_cos();
    let beside = if setting.hose_mm.is_some() { RUBBER } else { PLATE };
    label.reflects(hit.x * cos - hit.y * sin, hit.x * sin + hit.y * cos).unwrap_or(beside)
}

impl Camera {
    fn placed(label: &Label, setting: &Setting, focal: f64, random: &mut Random) -> Self {
        let distance = focal * label.module_mm / label.pixels_per_module(setting);
        let (tilt, side) = (setting.tilt_deg.to_radians(), setting.tilt_side_deg.to_radians());
        let back = [tilt.sin() * side.cos(), tilt.sin() * side.sin(), tilt.cos()];
        // Aimed by hand: the code is not quite in the middle.
        let reach = 0.15 * label.side_mm();
        let aim = [random.between(-reach, reach), random.between(-reach, reach), 0.0];
        let ahead = times(back, -1.0);
        let level = unit(cross(ahead, [0.3, 1.0, 0.1]));
        let other = cross(ahead, level);
        let (sin, cos) = setting.roll_deg.to_radians().sin_cos();
        let right = sum(times(level, cos), times(other, sin));
        // The label's y runs down while x runs right, so the frame seen from outside is a left-handed one.
        let down = times(cross(ahead, right), -1.0);
        Self { place: sum(aim, times(back, distance)), ahead, right, down }
    }

    fn through(&self, u: f64, v: f64) -> Vector {
        sum(self.ahead, sum(times(self.right, u), times(self.down, v)))
    }
}

/// Where a ray meets the plate, or the near side of the hose, whose axis runs along x or along y.
fn hit(camera: &Camera, ray: Vector, hose_mm: Option<f64>, along: bool) -> Option<Hit> {
    let Some(diameter) = hose_mm else {
        let reach = -camera.place[2] / ray[2];
        let at = sum(camera.place, times(ray, reach));
        return (reach > 0.0).then_some(Hit { x: at[0], y: at[1], square: [0.0, 0.0, 1.0] });
    };
    let radius = diameter / 2.0;
    let (around, axis) = if along { (1, 0) } else { (0, 1) };
    let (p, q) = (camera.place[around], camera.place[2] + radius);
    let (dp, dq) = (ray[around], ray[2]);
    let (a, b, c) = (dp * dp + dq * dq, p * dp + q * dq, p * p + q * q - radius * radius);
    let root = b * b - a * c;
    if root < 0.0 {
        return None;
    }
    let reach = (-b - root.sqrt()) / a;
    let at = sum(camera.place, times(ray, reach));
    let angle = at[around].atan2(at[2] + radius);
    let mut square = [0.0, 0.0, angle.cos()];
    square[around] = angle.sin();
    let (x, y) = if along { (at[axis], radius * angle) } else { (radius * angle, at[axis]) };
    Some(Hit { x, y, square })
}

/// Where light comes from.
struct Lamps {
    towards: Vector,
    curved: bool,
    gradient: f64,
    glare: f64,
    glare_at: (f64, f64),
    glare_half: (f64, f64),
    glare_turn: f64,
    behind: [[f64; 4]; 4],
}

impl Lamps {
    fn placed(label: &Label, setting: &Setting, random: &mut Random) -> Self {
        let side = label.side_mm();
        let place = |random: &mut Random| random.between(-0.45 * side, 0.45 * side);
        let half = setting.glare_width * side;
        Self {
            towards: unit([random.between(-0.6, 0.6), random.between(-0.6, 0.6), 1.0]),
            curved: setting.hose_mm.is_some(),
            gradient: if random.chance(0.5) { setting.gradient } else { -setting.gradient },
            glare: setting.glare,
            glare_at: (place(random), place(random)),
            // A lamp's highlight on a bent or wavy label is longer than wide.
            glare_half: (half / 2.0, half * random.between(0.5, 2.0)),
            glare_turn: random.between(0.0, std::f64::consts::PI),
            behind: [0; 4].map(|_| {
                [
                    random.between(0.002, 0.03),
                    random.between(-0.03, 0.03),
                    random.between(0.0, 6.3),
                    random.between(0.02, 0.1),
                ]
            }),
        }
    }

    /// Light that comes back from the object.
    fn at(&self, hit: &Hit, reflects: f64, across: f64) -> f64 {
        let lambert = if self.curved { 0.25 + 0.75 * dot(hit.square, self.towards).max(0.0) } else { 1.0 };
        let even = lambert * (1.0 + self.gradient * across * 2.0).max(0.05);
        let (sin, cos) = self.glare_turn.sin_cos();
        let (x, y) = (hit.x - self.glare_at.0, hit.y - self.glare_at.1);
        let u = (x * cos + y * sin) / self.glare_half.0;
        let v = (y * cos - x * sin) / self.glare_half.1;
        reflects * even + self.glare * (-u * u - v * v).exp()
    }

    /// What lies behind the hose: out of focus and of no interest.
    fn behind(&self, u: f64, v: f64) -> f64 {
        let waves: f64 = self.behind.iter().map(|[a, b, c, d]| d * (a * u + b * v + c).sin()).sum();
        (0.3 + waves).max(0.02)
    }
}
