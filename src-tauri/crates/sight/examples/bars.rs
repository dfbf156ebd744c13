//! scratch: per-stratum quick figures
use std::{collections::BTreeMap, fs, time::Instant};
fn main() {
    let a: Vec<String> = std::env::args().collect();
    let mut files: Vec<_> = fs::read_dir(&a[1])
        .unwrap()
        .flat_map(|e| {
            let p = e.unwrap().path();
            if p.is_dir() {
                fs::read_dir(p).unwrap().map(|e| e.unwrap().path()).collect::<Vec<_>>()
            } else {
                vec![p]
            }
        })
        .filter(|p| p.extension().is_some_and(|e| e == "jpg" || e == "png"))
        .collect();
    files.sort();
    let limit: usize = a.get(2).map_or(usize::MAX, |s| s.parse().unwrap());
    files.truncate(limit);
    let verbose = a.len() > 3;
    let next = std::sync::atomic::AtomicUsize::new(0);
    let res = std::sync::Mutex::new(Vec::new());
    std::thread::scope(|s| {
        for _ in 0..2 {
            s.spawn(|| {
                loop {
                    let i = next.fetch_add(1, std::sync::atomic::Ordering::Relaxed);
                    if i >= files.len() {
                        break;
                    }
                    let p = &files[i];
                    let truth = fs::read_to_string(p.with_extension("txt")).unwrap_or_else(|_| {
                        String::from_utf8_lossy(&fs::read(p.with_extension("txt")).unwrap()).into_owned()
                    });
                    let b = fs::read(p).unwrap();
                    let t = Instant::now();
                    let f = hosewright_sight::read(&b).unwrap();
                    let dt = t.elapsed().as_secs_f64();
                    let n = |s: &str| s.replace("\r\n", "\n").trim_end().to_owned();
                    let ok = f.iter().any(|x| n(&x.text) == n(&truth));
                    let wrong = !ok && !f.is_empty();
                    if wrong {
                        eprintln!(
                            "WRONG {} {:?} vs {:?}",
                            p.display(),
                            f.iter().map(|x| &x.text).collect::<Vec<_>>(),
                            truth
                        )
                    }
                    let dir = p.parent().unwrap().file_name().unwrap().to_string_lossy().into_owned();
                    let key = if dir.starts_with("qrcode") {
                        dir
                    } else {
                        format!(
                            "s{}",
                            p.file_stem().unwrap().to_string_lossy().parse::<usize>().unwrap() % 10
                        )
                    };
                    if verbose && !ok {
                        eprintln!("miss {} len {} {:.0}ms", p.display(), truth.len(), dt * 1e3)
                    }
                    res.lock().unwrap().push((key, ok, wrong, dt));
                }
            });
        }
    });
    let mut m: BTreeMap<String, (u32, u32, u32, Vec<f64>)> = BTreeMap::new();
    for (k, ok, w, dt) in res.into_inner().unwrap() {
        for k in [k, "all".into()] {
            let e = m.entry(k).or_default();
            e.0 += 1;
            e.1 += ok as u32;
            e.2 += w as u32;
            e.3.push(dt)
        }
    }
    for (k, (n, ok, w, mut t)) in m {
        t.sort_by(f64::total_cmp);
        println!(
            "{k}: {n} {ok} wrong {w} median {:.1}ms max {:.1}",
            t[t.len() / 2] * 1e3,
            t[t.len() - 1] * 1e3
        )
    }
}
