//! How a photograph was taken: what is easy everywhere, and what a stratum makes hard.

use crate::Random;

/// What makes a photograph hard.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Stratum {
    /// 1.5 to 3 pixels a module.
    Small,
    /// Out of focus or moved.
    Blur,
    /// High sensitivity.
    Noise,
    /// Too little light.
    Dark,
    /// Mud and scratches.
    Dirt,
    /// A highlight over the code.
    Glare,
    /// Seen from 30 to 45 degrees, near.
    Perspective,
    /// Round a hose of 15 to 30 mm.
    ThinHose,
    /// Round a hose of 30 to 60 mm.
    ThickHose,
    /// Some of everything, on hose or plate.
    Everything,
}

impl Stratum {
    /// All of them, in the order in which they take turns.
    pub const ALL: [Self; 10] = [
        Self::Small,
        Self::Blur,
        Self::Noise,
        Self::Dark,
        Self::Dirt,
        Self::Glare,
        Self::Perspective,
        Self::ThinHose,
        Self::ThickHose,
        Self::Everything,
    ];

    /// Its name in a table.
    pub fn name(self) -> &'static str {
        match self {
            Self::Small => "small, 1.5 to 3 px a module",
            Self::Blur => "blur, focus or motion",
            Self::Noise => "noise",
            Self::Dark => "dark",
            Self::Dirt => "dirt and scratches",
            Self::Glare => "glare",
            Self::Perspective => "perspective, 30 to 45 degrees",
            Self::ThinHose => "round a hose of 15 to 30 mm",
            Self::ThickHose => "round a hose of 30 to 60 mm",
            Self::Everything => "some of everything",
        }
    }
}

/// One photograph's conditions.
#[derive(Debug, Clone, PartialEq)]
pub struct Setting {
    /// Width and height of the picture in pixels.
    pub picture: (u32, u32),
    /// Pixels that a module takes where the camera looks square at it.
    pub pixels_per_module: f64,
    /// Degrees between the camera's axis and the square on the label.
    pub tilt_deg: f64,
    /// Towards which side it is tilted, in degrees round the label's square.
    pub tilt_side_deg: f64,
    /// Degrees that the camera is turned about its axis.
    pub roll_deg: f64,
    /// Field of view: the picture's width over the focal length.
    pub field: f64,
    /// Diameter of the hose in mm; none is a flat plate.
    pub hose_mm: Option<f64>,
    /// Deviation of the focus blur, in modules.
    pub blur_modules: f64,
    /// Length of the streak of a moved camera, in modules.
    pub streak_modules: f64,
    /// Light on white paper, where 1 just fills the sensor.
    pub exposure: f64,
    /// Relative fall of the light from one side of the picture to the other.
    pub gradient: f64,
    /// Deviation of the sensor's noise in the dark, in parts of a full sensor.
    pub read_noise: f64,
    /// Deviation of the sensor's noise at a full sensor.
    pub shot_noise: f64,
    /// Part of the code that mud covers.
    pub mud: f64,
    /// Scratches over the code.
    pub scratches: usize,
    /// Light of the highlight in parts of white paper's; 0 is none.
    pub glare: f64,
    /// Width of the highlight in parts of the code's side.
    pub glare_width: f64,
}

impl Setting {
    /// An easy photograph: what every stratum starts from.
    pub fn easy(random: &mut Random) -> Self {
        Self {
            picture: (800, 600),
            pixels_per_module: random.between(3.5, 6.0),
            tilt_deg: random.between(0.0, 20.0),
            tilt_side_deg: random.between(0.0, 360.0),
            roll_deg: random.between(0.0, 360.0),
            field: random.between(0.8, 1.2),
            hose_mm: None,
            blur_modules: random.between(0.12, 0.28),
            streak_modules: 0.0,
            exposure: random.between(0.5, 0.9),
            gradient: random.between(0.0, 0.3),
            read_noise: 0.002,
            shot_noise: random.between(0.01, 0.02),
            mud: 0.0,
            scratches: 0,
            glare: 0.0,
            glare_width: 0.2,
        }
    }

    /// A photograph of that stratum.
    pub fn draw(stratum: Stratum, random: &mut Random) -> Self {
        let easy = Self::easy(random);
        match stratum {
            Stratum::Small => Self { pixels_per_module: random.between(1.5, 3.0), ..easy },
            Stratum::Blur if random.chance(0.5) => Self { blur_modules: random.between(0.3, 0.8), ..easy },
            Stratum::Blur => Self { streak_modules: random.between(0.6, 1.6), ..easy },
            Stratum::Noise => {
                let noise = random.between(0.03, 0.2);
                Self { read_noise: noise / 4.0, shot_noise: noise, ..easy }
            }
            Stratum::Dark => Self { exposure: random.between(0.01, 0.15), shot_noise: 0.03, ..easy },
            Stratum::Dirt => Self { mud: random.between(0.005, 0.08), scratches: random.below(5), ..easy },
            Stratum::Glare => {
                Self { glare: random.between(0.3, 3.0), glare_width: random.between(0.08, 0.35), ..easy }
            }
            Stratum::Perspective => Self {
                tilt_deg: random.between(30.0, 45.0),
                pixels_per_module: random.between(4.0, 7.0),
                ..easy
            },
            Stratum::ThinHose => Self { hose_mm: Some(random.between(15.0, 30.0)), ..easy },
            Stratum::ThickHose => Self { hose_mm: Some(random.between(30.0, 60.0)), ..easy },
            Stratum::Everything => Self {
                pixels_per_module: random.between(2.5, 6.0),
                tilt_deg: random.between(0.0, 35.0),
                hose_mm: random.chance(0.6).then(|| random.between(15.0, 60.0)),
                blur_modules: random.between(0.15, 0.4),
                streak_modules: random.between(0.0, 0.6),
                exposure: random.between(0.1, 0.9),
                gradient: random.between(0.0, 0.6),
                shot_noise: random.between(0.01, 0.04),
                mud: random.between(0.0, 0.03),
                scratches: random.below(3),
                glare: random.between(0.0, 1.0),
                glare_width: random.between(0.05, 0.2),
                ..easy
            },
        }
    }
}
