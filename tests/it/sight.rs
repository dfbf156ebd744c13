//! Codes are read from photographs on a bad day, and never read as something else.

use hosewright_photographer::{Photo, Random, Setting, Stratum, photo, taken};
use image::imageops;
use rstest::rstest;

/// Another seed than that of the figures in the README.
const SEED: u64 = 41;

/// Photographs of each stratum.
const EACH: usize = 4;

fn texts(photo: &Photo) -> Vec<String> {
    let file = photo.to_jpeg().expect("a JPEG");
    hosewright_sight::read(&file).expect("a picture").into_iter().map(|found| found.text).collect()
}

fn easy(number: u64) -> (Setting, Random) {
    let mut random = Random::new(SEED, number);
    let setting = Setting::easy(&mut random);
    (setting, random)
}

/// Least read of each four: what lies below is a reader that got worse. The whole measure is `cargo xtask sight`.
#[rstest]
#[case(Stratum::Small, 3)]
#[case(Stratum::Blur, 2)]
#[case(Stratum::Noise, 3)]
#[case(Stratum::Dark, 3)]
#[case(Stratum::Dirt, 1)]
#[case(Stratum::Glare, 2)]
#[case(Stratum::Perspective, 3)]
#[case(Stratum::ThinHose, 3)]
#[case(Stratum::ThickHose, 3)]
#[case(Stratum::Everything, 1)]
fn photographs_on_a_bad_day_are_read_and_never_wrongly(#[case] stratum: Stratum, #[case] least: usize) {
    let place = Stratum::ALL.iter().position(|one| *one == stratum).expect("a stratum");
    let mut read = 0;
    for number in 0..EACH {
        let photo = photo(number * Stratum::ALL.len() + place, SEED);
        let texts = texts(&photo);
        assert!(texts.iter().all(|text| *text == photo.text), "{texts:?} is not {:?}", photo.text);
        read += texts.len();
    }
    assert!(read >= least, "{}: {read} of {EACH} read", stratum.name());
}

#[test]
fn a_code_is_read_whichever_way_the_camera_is_turned_and_light_on_dark_or_in_a_mirror() {
    for turn in 0..8 {
        let (easy, mut random) = easy(turn);
        let setting = Setting { roll_deg: 45.0 * turn as f64, tilt_deg: 0.0, ..easy };
        let plain = taken(Stratum::Perspective, &setting, &mut random);
        let mut inverted = plain.clone();
        imageops::invert(&mut inverted.grey);
        let mirrored = Photo { grey: imageops::flip_horizontal(&plain.grey), ..plain.clone() };
        for (way, photo) in [("plain", &plain), ("light on dark", &inverted), ("in a mirror", &mirrored)] {
            assert_eq!(texts(photo), std::slice::from_ref(&plain.text), "{way}, turn {turn}");
        }
    }
}

#[test]
fn several_codes_in_one_picture_are_all_read() {
    let photos: Vec<Photo> = (0..4)
        .map(|number| {
            let (easy, mut random) = easy(100 + number);
            let setting = Setting { picture: (600, 500), hose_mm: None, tilt_deg: 5.0, ..easy };
            taken(Stratum::ThickHose, &setting, &mut random)
        })
        .collect();
    let mut sheet = image::GrayImage::new(1200, 1000);
    for (number, photo) in photos.iter().enumerate() {
        let (left, top) = (600 * (number % 2) as i64, 500 * (number / 2) as i64);
        imageops::replace(&mut sheet, &photo.grey, left, top);
    }
    let mut read = texts(&Photo { grey: sheet, ..photos[0].clone() });
    let mut expected: Vec<String> = photos.into_iter().map(|photo| photo.text).collect();
    read.sort();
    expected.sort();
    assert_eq!(read, expected);
}

#[test]
fn a_small_code_in_twelve_megapixels_is_read_where_it_stands() {
    let (easy, mut random) = easy(200);
    let small = taken(
        Stratum::Small,
        &Setting { picture: (400, 300), pixels_per_module: 3.0, roll_deg: 12.0, ..easy },
        &mut random,
    );
    let mut large = image::GrayImage::from_pixel(4000, 3000, image::Luma([90]));
    imageops::replace(&mut large, &small.grey, 3100, 2300);
    let file = Photo { grey: large, ..small.clone() }.to_jpeg().expect("a JPEG");
    let found = hosewright_sight::read(&file).expect("a picture");
    let [found] = found.as_slice() else { panic!("{found:?}") };
    assert_eq!(found.text, small.text);
    for (x, y) in found.corners {
        assert!((3100.0..3500.0).contains(&x) && (2300.0..2600.0).contains(&y), "corner at {x} {y}");
    }
}

/// The halves of a large picture are searched first, and what they show is enough for both.
#[test]
fn a_small_code_beside_a_large_one_is_read_in_twelve_megapixels() {
    let mut large = image::GrayImage::from_pixel(4000, 3000, image::Luma([90]));
    let mut expected = Vec::new();
    for (number, pixels_per_module, at) in [(201, 3.0, (3100, 2300)), (202, 9.0, (300, 400))] {
        let (easy, mut random) = easy(number);
        let setting =
            Setting { picture: (900, 700), pixels_per_module, hose_mm: None, tilt_deg: 5.0, ..easy };
        let photo = taken(Stratum::Small, &setting, &mut random);
        imageops::replace(&mut large, &photo.grey, at.0, at.1);
        expected.push(photo.text);
    }
    let mut read = texts(&Photo { stratum: Stratum::Small, text: String::new(), grey: large });
    read.sort();
    expected.sort();
    assert_eq!(read, expected);
}

/// A live camera has many frames: most are read, and none wrongly.
#[test]
fn a_frame_of_a_camera_is_read_by_the_short_way() {
    let mut read = 0;
    for number in 0..6 {
        let (easy, mut random) = easy(300 + number);
        let setting = Setting { picture: (640, 480), hose_mm: Some(40.0), ..easy };
        let photo = taken(Stratum::ThickHose, &setting, &mut random);
        let found = hosewright_sight::read_frame(640, 480, photo.grey.as_raw());
        let texts: Vec<_> = found.into_iter().map(|found| found.text).collect();
        assert!(texts.iter().all(|text| *text == photo.text), "frame {number}: {texts:?}");
        read += texts.len();
    }
    assert!(read >= 5, "{read} of 6 frames read");
    assert!(hosewright_sight::read_frame(640, 480, &[0; 7]).is_empty(), "a frame that is none");
}

#[test]
fn a_picture_without_a_code_says_nothing() {
    let mut random = Random::new(SEED, 400);
    for (width, height) in [(640, 480), (15, 900), (900, 15), (1, 1), (16, 16), (300, 200)] {
        let pixels = (0..width * height).map(|_| random.below(256) as u8).collect();
        let grey = image::GrayImage::from_raw(width, height, pixels).expect("a picture");
        let photo = Photo { stratum: Stratum::Noise, text: String::new(), grey };
        assert_eq!(texts(&photo), Vec::<String>::new(), "{width} x {height}");
    }
    // No noise is greater than that of stripes a pixel wide; a PNG keeps them.
    let stripes = image::GrayImage::from_fn(640, 480, |x, _| image::Luma([if x % 2 == 0 { 0 } else { 255 }]));
    let mut file = std::io::Cursor::new(Vec::new());
    stripes.write_to(&mut file, image::ImageFormat::Png).expect("a PNG");
    assert_eq!(hosewright_sight::read(file.get_ref()).expect("a picture"), []);
}

/// Phones keep colours; a printer's JPEG may hold four inks.
#[test]
fn colours_are_no_matter() {
    let (easy, mut random) = easy(500);
    let photo = taken(Stratum::Perspective, &easy, &mut random);
    let colours = image::DynamicImage::ImageLuma8(photo.grey.clone()).into_rgb8();
    for format in [image::ImageFormat::Jpeg, image::ImageFormat::Png] {
        let mut file = std::io::Cursor::new(Vec::new());
        colours.write_to(&mut file, format).expect("a file");
        let found = hosewright_sight::read(file.get_ref()).expect("a picture");
        assert_eq!(found.iter().map(|found| &found.text).collect::<Vec<_>>(), [&photo.text], "{format:?}");
    }
}
