//! A photograph made fit to be kept and sent: upright, no larger than a screen shows, and nothing but its pixels.

use crate::SightError;
use crate::picture::{broken, reader};
use image::codecs::jpeg::JpegEncoder;
use image::imageops::FilterType;
use image::{DynamicImage, ImageDecoder};

/// Longest side in pixels: a routing or the print on a hose can still be read off it.
const SIDE: u32 = 1600;

/// Quality of the JPEG, of 100: some 300 kB in place of the 4 MB of a phone.
const QUALITY: u8 = 80;

/// The photograph as a JPEG, turned as it was held and scaled down where it is larger. A file's place, time, device and
/// names stand beside its pixels and do not come along. The same bytes give the same bytes.
///
/// # Errors
/// When the bytes are no picture of these kinds, a broken one, or one too large to open safely.
pub fn kept(bytes: &[u8]) -> Result<Vec<u8>, SightError> {
    let mut decoder = reader(bytes)?.into_decoder().map_err(broken)?;
    // A turn that can not be read is none: most pictures have none.
    let turn = decoder.orientation().ok();
    let mut photo = DynamicImage::from_decoder(decoder).map_err(broken)?;
    if photo.width().max(photo.height()) > SIDE {
        photo = photo.resize(SIDE, SIDE, FilterType::Triangle);
    }
    if let Some(turn) = turn {
        photo.apply_orientation(turn);
    }
    let mut file = Vec::new();
    JpegEncoder::new_with_quality(&mut file, QUALITY).encode_image(&photo.into_rgb8()).map_err(broken)?;
    Ok(file)
}

#[cfg(test)]
mod tests {
    use super::*;
    use image::{ImageFormat, Rgb, RgbImage};
    use std::io::Cursor;

    /// Wider than high, its left half red and the other blue.
    fn picture(width: u32, height: u32) -> Vec<u8> {
        let colour = |x| if x < width / 2 { Rgb([230, 20, 20]) } else { Rgb([20, 20, 230]) };
        let mut file = Vec::new();
        RgbImage::from_fn(width, height, |x, _| colour(x))
            .write_to(&mut Cursor::new(&mut file), ImageFormat::Jpeg)
            .expect("is written");
        file
    }

    /// The same with what a phone writes beside it: how it was held, and a text that tells of somebody.
    fn from_a_phone(file: &[u8], orientation: u8) -> Vec<u8> {
        let mut exif = b"Exif\0\0MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0".to_vec();
        exif.extend([orientation, 0, 0, 0, 0, 0, 0]);
        exif.extend(b"52.5200 N 13.4050 E Invented Name");
        let length = u16::try_from(exif.len() + 2).expect("a short segment").to_be_bytes();
        [&file[..2], &[0xff, 0xe1], &length, &exif, &file[2..]].concat()
    }

    fn opened(file: &[u8]) -> RgbImage {
        image::load_from_memory(file).expect("a picture").into_rgb8()
    }

    #[test]
    fn it_stands_upright_and_tells_nothing_beside_its_pixels() {
        let phone = from_a_phone(&picture(400, 300), 6);
        assert!(phone.windows(13).any(|text| text == b"Invented Name"));
        let file = kept(&phone).expect("is a picture");
        assert!(
            !file.windows(13).any(|text| text == b"Invented Name") && !file.windows(4).any(|t| t == b"Exif")
        );
        let upright = opened(&file);
        // Held a quarter clockwise: what was left is above.
        assert_eq!(upright.dimensions(), (300, 400));
        let (above, below) = (upright.get_pixel(150, 50), upright.get_pixel(150, 350));
        assert!(above[0] > 200 && below[2] > 200, "{above:?} {below:?}");
    }

    #[test]
    fn a_large_one_is_scaled_down_and_a_small_one_is_left() {
        for (given, expected) in
            [((3200, 1200), (1600, 600)), ((1200, 3200), (600, 1600)), ((640, 480), (640, 480))]
        {
            let file = kept(&picture(given.0, given.1)).expect("is a picture");
            assert_eq!(opened(&file).dimensions(), expected);
            assert_eq!(
                kept(&picture(given.0, given.1)).expect("is a picture"),
                file,
                "the same gives the same"
            );
        }
    }

    #[test]
    fn what_is_no_picture_is_refused_in_words() {
        let whole = picture(64, 48);
        for (bytes, said) in
            [(b"a letter".as_slice(), "no PNG or JPEG"), (&[], "no PNG or JPEG"), (&whole[..20], "broken")]
        {
            let error = kept(bytes).expect_err("is no picture").to_string();
            assert!(error.contains(said), "{error}");
        }
    }
}
