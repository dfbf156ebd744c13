//! scratch
use std::fs;
fn main() {
    let args: Vec<String> = std::env::args().collect();
    let (count, seed): (usize, u64) = (args[2].parse().unwrap(), args[3].parse().unwrap());
    fs::create_dir_all(&args[1]).unwrap();
    std::thread::scope(|s| {
        for part in 0..2 {
            let args = &args;
            s.spawn(move || {
                for n in (part..count).step_by(2) {
                    let p = hosewright_photographer::photo(n, seed);
                    fs::write(format!("{}/{n:04}.jpg", args[1]), p.to_jpeg().unwrap()).unwrap();
                    fs::write(format!("{}/{n:04}.txt", args[1]), p.text).unwrap();
                }
            });
        }
    });
}
