//! Opening a picture within bounds, and the copies of it that readers try.

use crate::SightError;
use crate::plane::Grey;
use image::imageops::{self, FilterType};
use image::{GrayImage, ImageFormat, ImageReader, Limits};
use std::io::Cursor;

/// Most pixels of a picture that is opened: 64 million take some 250 MB while being decoded.
const PIXELS: u32 = 64_000_000;

/// Longest side that readers work at; beyond it time grows and reading does not get better.
const WORKING_SIDE: u32 = 2400;

/// A grey picture and how many pixels of the original one of its pixels stands for.
pub(crate) struct Copy {
    pub(crate) grey: GrayImage,
    pub(crate) scale: f32,
}

/// The picture in grey.
pub(crate) fn open(bytes: &[u8]) -> Result<Grey, SightError> {
    let reader = || {
        let mut reader =
            ImageReader::new(Cursor::new(bytes)).with_guessed_format().map_err(|_| SightError::Kind)?;
        let mut limits = Limits::default();
        limits.max_alloc = Some(u64::from(PIXELS) * 8);
        reader.limits(limits);
        match reader.format() {
            Some(ImageFormat::Png | ImageFormat::Jpeg) => Ok(reader),
            _ => Err(SightError::Kind),
        }
    };
    let broken = |error: image::ImageError| SightError::Broken(error.to_string());
    let (width, height) = reader()?.into_dimensions().map_err(broken)?;
    if u64::from(width) * u64::from(height) > u64::from(PIXELS) {
        return Err(SightError::TooLarge { width, height, limit: PIXELS / 1_000_000 });
    }
    let grey = reader()?.decode().map_err(broken)?.into_luma8();
    let (width, height) = grey.dimensions();
    Ok(Grey { width: width as usize, height: height as usize, pixels: grey.into_raw() })
}

/// The copies to try, each made when it is its turn.
pub(crate) fn copies(picture: GrayImage) -> impl Iterator<Item = Copy> {
    let as_is = shrunk(Copy { grey: picture, scale: 1.0 }, WORKING_SIDE);
    let steps: [fn(&Copy) -> Copy; 4] = [
        |copy| Copy { grey: copy.grey.clone(), scale: copy.scale },
        |copy| blurred(copy, 1.0),
        |copy| by_half(copy),
        |copy| blurred(copy, 2.0),
    ];
    steps.into_iter().map(move |step| step(&as_is))
}

fn shrunk(copy: Copy, side: u32) -> Copy {
    let longest = copy.grey.width().max(copy.grey.height());
    if longest <= side { copy } else { resized(&copy, longest as f32 / side as f32) }
}

fn by_half(copy: &Copy) -> Copy {
    resized(copy, 2.0)
}

fn resized(copy: &Copy, factor: f32) -> Copy {
    let side = |pixels: u32| ((pixels as f32 / factor).round() as u32).max(1);
    let (width, height) = (side(copy.grey.width()), side(copy.grey.height()));
    Copy {
        grey: imageops::resize(&copy.grey, width, height, FilterType::Triangle),
        scale: copy.scale * factor,
    }
}

fn blurred(copy: &Copy, sigma: f32) -> Copy {
    Copy { grey: imageops::blur(&copy.grey, sigma), scale: copy.scale }
}
