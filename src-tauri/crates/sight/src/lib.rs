//! Reading pictures: QR codes from photographs, ours or not; and photographs made fit to be kept ([`kept`]).
//!
//! The chain, the cheap attempts first and each bounded by counts, never by a clock:
//!
//! 1. the picture and its halves, each place against the mean round it: marks ([`mark`]), three that fit together
//!    ([`trio`]), their code as a plane or a patch ([`surface`]), its modules ([`modules`]) and text ([`decode`]);
//! 2. the same code with a net settled on it ([`settle`]), which follows a hose round and a crease over;
//! 3. both again on smoothed pictures against a nearer mean, for blur and noise;
//! 4. where nothing was read, and in a large picture where two sure marks tell of a code, two readers by others, on the
//!    picture and lightly blurred and smaller copies, until one finds something.
//!
//! A live camera's frame takes the first two for few marks, and the first three where marks tell of a code.
//!
//! Nothing is voted on: a text is given where the code's own Reed-Solomon codewords agree with some to spare, as
//! ISO/IEC 18004 asks.

mod chain;
mod decode;
mod kept;
mod mark;
mod mesh;
mod modules;
mod picture;
mod plane;
mod point;
mod reader;
mod settle;
mod solomon;
mod surface;
mod symbol;
mod trio;

pub use kept::kept;

use chain::{Effort, Looked};
use plane::Grey;

use thiserror::Error;

/// A code that was read.
#[derive(Debug, Clone, PartialEq)]
pub struct Found {
    /// What it says.
    pub text: String,
    /// Roughly where it stands, in pixels of the picture: top left, top right, bottom right and
    /// bottom left as seen on the code itself. For drawing a frame round it, not for measuring.
    pub corners: [(f32, f32); 4],
}

/// Why a picture could not be looked at. A picture without a code is no error.
#[derive(Debug, Error)]
pub enum SightError {
    /// Neither PNG nor JPEG.
    #[error("this is no PNG or JPEG picture; take the photograph as one of these")]
    Kind,
    /// Too large to open without risk.
    #[error(
        "the picture is {width} x {height} pixels, and {limit} million are the most that are opened; take it smaller or cut it out"
    )]
    TooLarge {
        /// Width.
        width: u32,
        /// Height.
        height: u32,
        /// The most that are opened, in millions.
        limit: u32,
    },
    /// The file is broken.
    #[error("the picture is broken: {0}; take it again")]
    Broken(String),
}

/// Pixels of a picture on which the readers by others are tried whatever was seen in it.
const QUICK: usize = 2_000_000;

/// Every QR code in a PNG or JPEG picture; none is an empty list. In one of more than 4 megapixels a code of less than some
/// 2.5 pixels a module may be missed beside another that is read.
///
/// # Errors
/// When the bytes are no picture of these kinds, a broken one, or one too large to open safely.
pub fn read(bytes: &[u8]) -> Result<Vec<Found>, SightError> {
    let picture = picture::open(bytes)?;
    let Looked { found, likely } = chain::read(&picture, Effort::Photo);
    let quick = picture.pixels.len() <= QUICK;
    if !found.is_empty() || !(likely || quick) {
        return Ok(found);
    }
    let others = picture::copies(&picture).map(|copy| reader::read(&copy)).find(|found| !found.is_empty());
    Ok(others.unwrap_or_default())
}

/// Every QR code in a frame of a live camera: its width, its height and its grey values row by row. It takes the
/// short way, for the next frame comes at once, and the long one where marks tell of a code that the short way does not
/// read; none is an empty list, as is a frame of another size than it says.
pub fn read_frame(width: usize, height: usize, grey: &[u8]) -> Vec<Found> {
    if grey.len() != width * height {
        return Vec::new();
    }
    let frame = Grey { width, height, pixels: grey.to_vec() };
    let Looked { found, likely } = chain::read(&frame, Effort::Frame);
    if found.is_empty() && likely { chain::read(&frame, Effort::Photo).found } else { found }
}
