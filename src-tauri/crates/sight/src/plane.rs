//! A grey picture, and how much each of its places stands out from what surrounds it.

use crate::point::Point;
use std::num::NonZero;
use std::ops::Range;
use std::panic::resume_unwind;
use std::thread;

/// Pixels of a picture that is worth sharing among processors.
const WORTH_A_BAND: usize = 2_000_000;

/// A picture of one value a pixel.
#[derive(Debug, Clone, PartialEq)]
pub(crate) struct Plane<T> {
    pub(crate) width: usize,
    pub(crate) height: usize,
    pub(crate) pixels: Vec<T>,
}

/// Grey values, 0 black to 255 white.
pub(crate) type Grey = Plane<u8>;

/// Grey value less the mean round it, cut at 127: negative is darker than its surroundings.
pub(crate) type Contrast = Plane<i8>;

impl<T: Copy + Into<f32>> Plane<T> {
    /// The value at a place between the middles of pixels; at the rim, the rim's.
    pub(crate) fn between(&self, place: Point) -> f32 {
        // The middle of the first pixel is at a half.
        let x = (place.x - 0.5).clamp(0.0, (self.width - 1) as f32);
        let y = (place.y - 0.5).clamp(0.0, (self.height - 1) as f32);
        let (column, row) = ((x as usize).min(self.width - 2), (y as usize).min(self.height - 2));
        let (fx, fy) = (x - column as f32, y - row as f32);
        let first = row * self.width + column;
        let (above, below) =
            (&self.pixels[first..first + 2], &self.pixels[first + self.width..first + self.width + 2]);
        let (a, b): (f32, f32) = (above[0].into(), above[1].into());
        let (c, d): (f32, f32) = (below[0].into(), below[1].into());
        let (top, bottom) = (a + (b - a) * fx, c + (d - c) * fx);
        top + (bottom - top) * fy
    }

    pub(crate) fn holds(&self, place: Point) -> bool {
        place.x >= 0.0 && place.y >= 0.0 && place.x < self.width as f32 && place.y < self.height as f32
    }
}

impl Grey {
    /// Half as wide and high: each pixel the mean of four.
    pub(crate) fn halved(&self) -> Self {
        let (width, height) = (self.width / 2, self.height / 2);
        let mut pixels = Vec::with_capacity(width * height);
        for row in 0..height {
            let above = &self.pixels[2 * row * self.width..][..2 * width];
            let below = &self.pixels[(2 * row + 1) * self.width..][..2 * width];
            pixels.extend(above.chunks_exact(2).zip(below.chunks_exact(2)).map(|(above, below)| {
                let sum =
                    u16::from(above[0]) + u16::from(above[1]) + u16::from(below[0]) + u16::from(below[1]);
                ((sum + 2) / 4) as u8
            }));
        }
        Self { width, height, pixels }
    }

    /// Twice as wide and high.
    pub(crate) fn doubled(&self) -> Self {
        let (width, height) = (self.width * 2, self.height * 2);
        let mut pixels = Vec::with_capacity(width * height);
        for row in 0..height {
            for column in 0..width {
                let place = Point { x: (column as f32 + 0.5) / 2.0, y: (row as f32 + 0.5) / 2.0 };
                pixels.push(self.between(place).round() as u8);
            }
        }
        Self { width, height, pixels }
    }

    /// Deviation of the noise: what neighbours commonly differ by, most of a picture being plain.
    pub(crate) fn noise(&self) -> f32 {
        let mut counts = [0_usize; 256];
        let mut all = 0;
        for row in (0..self.height).step_by(1 + self.height / 200) {
            for pair in self.pixels[row * self.width..][..self.width].windows(2) {
                counts[usize::from(pair[0].abs_diff(pair[1]))] += 1;
                all += 1;
            }
        }
        let mut below = 0;
        let median = counts.iter().position(|count| {
            below += count;
            2 * below > all
        });
        // The median of a normal difference is 0.6745 of its deviation, which is that of one times the root of two.
        median.unwrap_or_default() as f32 / (0.6745 * std::f32::consts::SQRT_2)
    }

    /// The picture with a rim of that value and width.
    pub(crate) fn framed(&self, rim: usize, value: u8) -> Self {
        let (width, height) = (self.width + 2 * rim, self.height + 2 * rim);
        let mut pixels = vec![value; width * height];
        for (row, line) in self.pixels.chunks_exact(self.width).enumerate() {
            pixels[(row + rim) * width + rim..][..self.width].copy_from_slice(line);
        }
        Self { width, height, pixels }
    }

    /// The mean of three by three pixels.
    pub(crate) fn smoothed(&self) -> Self {
        let mut pixels = Vec::with_capacity(self.pixels.len());
        let mut columns = vec![0_u16; self.width];
        for row in 0..self.height {
            let line = |row: usize| &self.pixels[row.min(self.height - 1) * self.width..][..self.width];
            let (above, here, below) = (line(row.saturating_sub(1)), line(row), line(row + 1));
            for (sum, ((a, b), c)) in columns.iter_mut().zip(above.iter().zip(here).zip(below)) {
                *sum = u16::from(*a) + u16::from(*b) + u16::from(*c);
            }
            let last = self.width - 1;
            pixels.push(((2 * columns[0] + columns[1.min(last)]) / 9) as u8);
            pixels.extend(columns.windows(3).map(|sums| ((sums[0] + sums[1] + sums[2]) / 9) as u8));
            if last > 0 {
                pixels.push(((columns[last - 1] + 2 * columns[last]) / 9) as u8);
            }
        }
        Self { width: self.width, height: self.height, pixels }
    }

    /// Each pixel less the mean of the square that reaches so many pixels from it.
    pub(crate) fn contrast(&self, reach: usize) -> Contrast {
        let bands = in_bands(self.height, self.pixels.len(), |rows| self.contrast_of(reach, rows));
        Contrast { width: self.width, height: self.height, pixels: bands.concat() }
    }

    fn contrast_of(&self, reach: usize, rows: Range<usize>) -> Vec<i8> {
        let (width, height) = (self.width, self.height);
        let mut pixels = Vec::with_capacity(rows.len() * width);
        let line = |row: usize| &self.pixels[row * width..][..width];
        // Sums of the columns over the rows in reach, and of these from the left rim on.
        let mut columns = vec![0_u16; width];
        let mut sums = vec![0_u32; width + 1];
        (rows.start.saturating_sub(reach)..(rows.start + reach).min(height))
            .for_each(|row| add(&mut columns, line(row)));
        for row in rows.clone() {
            if row + reach < height {
                add(&mut columns, line(row + reach));
            }
            if row > reach && row > rows.start {
                take(&mut columns, line(row - reach - 1));
            }
            let mut sum = 0_u32;
            for (to, column) in sums[1..].iter_mut().zip(&columns) {
                sum = sum.wrapping_add(u32::from(*column));
                *to = sum;
            }
            let high = (row + reach + 1).min(height) - row.saturating_sub(reach);
            off_the_mean(line(row), &sums, reach, high, &mut pixels);
        }
        pixels
    }
}

/// Each value of a row less its mean, out of the sums of columns so many pixels high.
fn off_the_mean(row: &[u8], sums: &[u32], reach: usize, high: usize, pixels: &mut Vec<i8>) {
    let width = row.len();
    let one = |at: usize| {
        let (left, right) = (at.saturating_sub(reach), (at + reach + 1).min(width));
        off(row[at], sums[right].wrapping_sub(sums[left]), part_of(high * (right - left)))
    };
    // Between the rims the square is whole, and its size the same.
    let whole = if width > 2 * reach { reach..width - reach } else { 0..0 };
    pixels.extend((0..whole.start).map(one));
    let part = part_of(high * (2 * reach + 1));
    let ends = sums.iter().zip(sums.iter().skip(2 * reach + 1));
    pixels.extend(
        row[whole.clone()]
            .iter()
            .zip(ends)
            .map(|(value, (left, right))| off(*value, right.wrapping_sub(*left), part)),
    );
    pixels.extend((whole.end..width).map(one));
}

/// Binary places of a part of a whole: 255 times a part of it still fits 32 bits.
const PLACES: u32 = 24;

/// One of so many pixels, as a part of 2 to the power of [`PLACES`].
fn part_of(pixels: usize) -> u32 {
    ((1 << PLACES) / pixels.max(1)) as u32
}

/// A value less the mean, in whole numbers only, which processors do for many pixels at once.
fn off(value: u8, sum: u32, part: u32) -> i8 {
    let mean = (sum.wrapping_mul(part).wrapping_add(1 << (PLACES - 1)) >> PLACES) as i16;
    (i16::from(value) - mean).clamp(-128, 127) as i8
}

/// Work on the rows of a picture in as many bands as there are processors, where it is worth it; the answers in order.
pub(crate) fn in_bands<T: Send>(
    rows: usize,
    pixels: usize,
    work: impl Fn(Range<usize>) -> Vec<T> + Sync,
) -> Vec<Vec<T>> {
    let most =
        if pixels < WORTH_A_BAND { 1 } else { thread::available_parallelism().map_or(1, NonZero::get) };
    let band = rows.div_ceil(most).max(1);
    let bands: Vec<_> = (0..rows).step_by(band).map(|first| first..(first + band).min(rows)).collect();
    if bands.len() < 2 {
        return bands.into_iter().map(work).collect();
    }
    thread::scope(|scope| {
        let begun: Vec<_> = bands.into_iter().map(|rows| scope.spawn(|| work(rows))).collect();
        begun.into_iter().map(|band| band.join().unwrap_or_else(|panic| resume_unwind(panic))).collect()
    })
}

fn add(columns: &mut [u16], line: &[u8]) {
    for (sum, value) in columns.iter_mut().zip(line) {
        *sum += u16::from(*value);
    }
}

fn take(columns: &mut [u16], line: &[u8]) {
    for (sum, value) in columns.iter_mut().zip(line) {
        *sum -= u16::from(*value);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A picture of no pattern, from a small generator.
    fn noise(width: usize, height: usize) -> Grey {
        let mut state = 1_u32;
        let mut next = || {
            state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            (state >> 24) as u8
        };
        Grey { width, height, pixels: (0..width * height).map(|_| next()).collect() }
    }

    #[test]
    fn contrast_is_the_difference_from_the_mean_of_the_square_round_a_pixel() {
        for (width, height, reach) in
            [(9, 7, 2), (40, 30, 7), (5, 60, 7), (60, 5, 20), (2, 2, 1), (15, 15, 7), (2500, 900, 20)]
        {
            let picture = noise(width, height);
            let contrast = picture.contrast(reach);
            assert_eq!(contrast.pixels.len(), width * height, "{width} x {height}");
            for row in 0..height {
                for column in 0..width {
                    let (mut sum, mut count) = (0.0, 0.0);
                    for y in row.saturating_sub(reach)..(row + reach + 1).min(height) {
                        for x in column.saturating_sub(reach)..(column + reach + 1).min(width) {
                            sum += f32::from(picture.pixels[y * width + x]);
                            count += 1.0;
                        }
                    }
                    let expected = f32::from(picture.pixels[row * width + column]) - sum / count;
                    let found = f32::from(contrast.pixels[row * width + column]);
                    assert!(
                        (found - expected.clamp(-128.0, 127.0)).abs() <= 1.01,
                        "{column} {row} of {width} x {height}"
                    );
                }
            }
        }
    }

    #[test]
    fn a_value_between_pixels_lies_between_theirs() {
        let picture = Grey { width: 2, height: 2, pixels: vec![0, 100, 0, 100] };
        for (x, expected) in [(0.0, 0.0), (0.5, 0.0), (1.0, 50.0), (1.25, 75.0), (2.0, 100.0)] {
            assert_eq!(picture.between(Point { x, y: 1.0 }), expected, "at {x}");
        }
    }
}
