//! Blur in linear light, then the sensor: noise, gamma, eight bits.

use crate::scene::Light;
use crate::{Random, Setting};
use image::{GrayImage, Luma};

const GAMMA: f64 = 2.2;

pub(crate) fn exposed(
    light: Light,
    setting: &Setting,
    pixels_per_module: f64,
    random: &mut Random,
) -> GrayImage {
    let angle = random.between(0.0, std::f64::consts::PI);
    let streaked = streaked(light, setting.streak_modules * pixels_per_module, angle);
    let light = blurred(streaked, setting.blur_modules * pixels_per_module);
    let mut picture = GrayImage::new(light.width as u32, light.height as u32);
    for (pixel, light) in picture.pixels_mut().zip(&light.pixels) {
        let light = f64::from(*light).min(1.5);
        let noise = (setting.read_noise.powi(2) + setting.shot_noise.powi(2) * light).sqrt();
        let kept = (light + noise * random.normal()).clamp(0.0, 1.0);
        *pixel = Luma([(kept.powf(1.0 / GAMMA) * 255.0).round() as u8]);
    }
    picture
}

/// The mean along a stretch of that many pixels.
fn streaked(light: Light, length: f64, angle: f64) -> Light {
    if length < 0.5 {
        return light;
    }
    let steps = (length * 2.0).ceil() as i32;
    let (sin, cos) = angle.sin_cos();
    let offsets: Vec<(f64, f64)> = (0..=steps)
        .map(|step| (f64::from(step) / f64::from(steps) - 0.5) * length)
        .map(|along| (along * cos, along * sin))
        .collect();
    let mut pixels = Vec::with_capacity(light.pixels.len());
    for y in 0..light.height {
        for x in 0..light.width {
            let sum: f64 = offsets.iter().map(|(dx, dy)| between(&light, x as f64 + dx, y as f64 + dy)).sum();
            pixels.push((sum / offsets.len() as f64) as f32);
        }
    }
    Light { pixels, ..light }
}

/// Light at a place between pixels.
fn between(light: &Light, x: f64, y: f64) -> f64 {
    let x = x.clamp(0.0, (light.width - 1) as f64);
    let y = y.clamp(0.0, (light.height - 1) as f64);
    let (column, row) = ((x as usize).min(light.width - 2), (y as usize).min(light.height - 2));
    let (fx, fy) = (x - column as f64, y - row as f64);
    let at = |dx: usize, dy: usize| f64::from(light.pixels[(row + dy) * light.width + column + dx]);
    (at(0, 0) * (1.0 - fx) + at(1, 0) * fx) * (1.0 - fy) + (at(0, 1) * (1.0 - fx) + at(1, 1) * fx) * fy
}

/// A Gaussian of that deviation in pixels, rows then columns.
fn blurred(light: Light, deviation: f64) -> Light {
    let reach = (deviation * 3.0).ceil() as i64;
    let weights: Vec<f32> =
        (-reach..=reach).map(|at| (-0.5 * (at as f64 / deviation).powi(2)).exp() as f32).collect();
    let total: f32 = weights.iter().sum();
    let (width, height) = (light.width as i64, light.height as i64);
    let pass = |from: &[f32], step: (i64, i64)| {
        let mut to = Vec::with_capacity(from.len());
        for y in 0..height {
            for x in 0..width {
                let at = |part: usize| {
                    let along = part as i64 - reach;
                    let (x, y) =
                        ((x + step.0 * along).clamp(0, width - 1), (y + step.1 * along).clamp(0, height - 1));
                    from[(y * width + x) as usize]
                };
                to.push(
                    weights.iter().enumerate().map(|(part, weight)| weight * at(part)).sum::<f32>() / total,
                );
            }
        }
        to
    };
    let rows = pass(&light.pixels, (1, 0));
    Light { pixels: pass(&rows, (0, 1)), ..light }
}
