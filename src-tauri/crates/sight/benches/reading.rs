//! How long a photograph and a frame of a live camera take: with a code, and with none, where nothing cuts the search short.
#![allow(missing_docs, reason = "criterion's macros make the functions")]

use criterion::{Criterion, criterion_group, criterion_main};
use hosewright_photographer::{Photo, Random, Setting, Stratum, taken};

fn picture(width: u32, height: u32, pixels_per_module: f64, exposure: f64) -> Photo {
    let mut random = Random::new(12, 1);
    let easy = Setting::easy(&mut random);
    let hose_mm = Some(38.0);
    let setting = Setting { picture: (width, height), pixels_per_module, exposure, hose_mm, ..easy };
    taken(Stratum::ThickHose, &setting, &mut random)
}

fn reading(criterion: &mut Criterion) {
    let mut group = criterion.benchmark_group("read");
    group.sample_size(20);
    for (name, pixels_per_module, exposure) in
        [("with a code", 8.0, 0.7), ("with a small code", 3.0, 0.7), ("without", 8.0, 0.0)]
    {
        let photo = picture(4000, 3000, pixels_per_module, exposure);
        let file = photo.to_jpeg().unwrap_or_default();
        let count = hosewright_sight::read(&file).map_or(0, |found| found.len());
        assert_eq!(count, usize::from(exposure > 0.0), "{name}");
        group.bench_function(format!("12 megapixels {name}"), |b| b.iter(|| hosewright_sight::read(&file)));
        let frame = picture(640, 480, pixels_per_module.min(5.0), exposure).grey;
        let (width, height) = (frame.width() as usize, frame.height() as usize);
        group.bench_function(format!("640x480 {name}"), |b| {
            b.iter(|| hosewright_sight::read_frame(width, height, frame.as_raw()));
        });
    }
    group.finish();
}

criterion_group!(benches, reading);
criterion_main!(benches);
