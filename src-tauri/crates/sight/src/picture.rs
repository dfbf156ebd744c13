//! Opening a picture within bounds, and the copies of it that readers try.

use crate::SightError;
use crate::plane::Grey;
use image::imageops::{self, FilterType};
use image::{GrayImage, ImageFormat, ImageReader, Limits};
use std::borrow::Cow;
use std::io::Cursor;
use zune_jpeg::JpegDecoder;
use zune_jpeg::zune_core::bytestream::ZCursor;
use zune_jpeg::zune_core::colorspace::ColorSpace;
use zune_jpeg::zune_core::options::DecoderOptions;

/// Most pixels of a picture that is opened: 64 million take some 250 MB while being decoded.
const PIXELS: u32 = 64_000_000;

/// Longest side that readers work at; beyond it time grows and reading does not get better.
const WORKING_SIDE: u32 = 1600;

/// A grey picture and how many pixels of the original one of its pixels stands for.
pub(crate) struct Copy {
    pub(crate) grey: GrayImage,
    pub(crate) scale: f32,
}

/// What reads the picture; it is one of a kind that is known, and not too large to be decoded.
pub(crate) fn reader(bytes: &[u8]) -> Result<ImageReader<Cursor<&[u8]>>, SightError> {
    let (width, height) = guessed(bytes)?.into_dimensions().map_err(broken)?;
    if u64::from(width) * u64::from(height) > u64::from(PIXELS) {
        return Err(SightError::TooLarge { width, height, limit: PIXELS / 1_000_000 });
    }
    guessed(bytes)
}

fn guessed(bytes: &[u8]) -> Result<ImageReader<Cursor<&[u8]>>, SightError> {
    let mut reader =
        ImageReader::new(Cursor::new(bytes)).with_guessed_format().map_err(|_| SightError::Kind)?;
    let mut limits = Limits::default();
    limits.max_alloc = Some(u64::from(PIXELS) * 8);
    reader.limits(limits);
    match reader.format() {
        Some(ImageFormat::Png | ImageFormat::Jpeg) => Ok(reader),
        _ => Err(SightError::Kind),
    }
}

pub(crate) fn broken(error: image::ImageError) -> SightError {
    SightError::Broken(error.to_string())
}

/// The picture in grey.
pub(crate) fn open(bytes: &[u8]) -> Result<Grey, SightError> {
    let reader = reader(bytes)?;
    if let Some(grey) = jpeg_in_grey(bytes) {
        return Ok(grey);
    }
    let grey = reader.decode().map_err(broken)?.into_luma8();
    let (width, height) = grey.dimensions();
    Ok(Grey { width: width as usize, height: height as usize, pixels: grey.into_raw() })
}

/// The light of a JPEG without its colours, which would take as long again as reading the codes does. None where it
/// is no JPEG or has no light of its own, as one of printing inks.
fn jpeg_in_grey(bytes: &[u8]) -> Option<Grey> {
    let options = DecoderOptions::default().jpeg_set_out_colorspace(ColorSpace::Luma);
    let mut decoder = JpegDecoder::new_with_options(ZCursor::new(bytes), options);
    let pixels = decoder.decode().ok()?;
    let (width, height) = decoder.dimensions()?;
    (pixels.len() == width * height).then_some(Grey { width, height, pixels })
}

/// The copies to try, each made when it is its turn.
pub(crate) fn copies(picture: &Grey) -> impl Iterator<Item = Copy> {
    let as_is = shrunk(picture);
    let steps: [fn(&Copy) -> Copy; 4] = [
        |copy| Copy { grey: copy.grey.clone(), scale: copy.scale },
        |copy| blurred(copy, 1.0),
        |copy| by_half(copy),
        |copy| blurred(copy, 2.0),
    ];
    steps.into_iter().map(move |step| step(&as_is))
}

/// At most as large as readers work at; halved first, which is quick.
fn shrunk(picture: &Grey) -> Copy {
    let side = |grey: &Grey| grey.width.max(grey.height) as f32 / WORKING_SIDE as f32;
    let (mut grey, mut scale) = (Cow::Borrowed(picture), 1.0);
    while side(&grey) >= 2.0 {
        grey = Cow::Owned(grey.halved());
        scale *= 2.0;
    }
    let factor = side(&grey);
    let Grey { width, height, pixels } = grey.into_owned();
    let grey = GrayImage::from_raw(width as u32, height as u32, pixels).unwrap_or_default();
    let copy = Copy { grey, scale };
    if factor <= 1.0 { copy } else { resized(&copy, factor) }
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
