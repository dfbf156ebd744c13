//! Photographs of tags as a bad day would take them, made by a seeded model.
//!
//! The model knows nothing of any reader. A printed label lies on a plate or round a hose; a pinhole camera looks at
//! it; light falls on it with a gradient and, on a hose, by Lambert's law; dirt, scratches and highlights lie over
//! it; the lens blurs it in linear light; the sensor adds shot and read noise, rounds to eight bits with a gamma of
//! 2.2, and the picture is kept as JPEG. [`Stratum`] says which of these is drawn hard, and [`Setting`] by how much.

mod label;
mod lens;
mod random;
mod scene;
mod setting;
mod vector;

pub use random::Random;
pub use setting::{Setting, Stratum};

use image::ExtendedColorType;
use image::GrayImage;
use image::codecs::jpeg::JpegEncoder;
use label::Label;

/// Quality of the JPEG, as phones keep their pictures.
const QUALITY: u8 = 88;

/// One photograph.
#[derive(Debug, Clone)]
pub struct Photo {
    /// What makes it hard.
    pub stratum: Stratum,
    /// What the tag says.
    pub text: String,
    /// The picture.
    pub grey: GrayImage,
}

impl Photo {
    /// The picture as a JPEG file.
    ///
    /// # Errors
    /// When the encoder refuses the picture.
    pub fn to_jpeg(&self) -> Result<Vec<u8>, image::ImageError> {
        let mut file = Vec::new();
        let (width, height) = self.grey.dimensions();
        JpegEncoder::new_with_quality(&mut file, QUALITY).encode(
            self.grey.as_raw(),
            width,
            height,
            ExtendedColorType::L8,
        )?;
        Ok(file)
    }
}

/// The photograph of that number: the strata take turns, and the same seed and number give the same picture.
///
/// # Panics
/// When a tag's text does not fit a QR code, which no text of [`label`] does.
pub fn photo(number: usize, seed: u64) -> Photo {
    let stratum = Stratum::ALL[number % Stratum::ALL.len()];
    let mut random = Random::new(seed, number as u64);
    let setting = Setting::draw(stratum, &mut random);
    taken(stratum, &setting, &mut random)
}

/// A photograph with that setting.
///
/// # Panics
/// As [`photo`].
pub fn taken(stratum: Stratum, setting: &Setting, random: &mut Random) -> Photo {
    let label = Label::printed(setting, random);
    let light = scene::seen(&label, setting, random);
    let grey = lens::exposed(light, setting, label.pixels_per_module(setting), random);
    Photo { stratum, text: label.text, grey }
}
