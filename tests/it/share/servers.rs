//! Twenty vans over real servers, with links that are cut and servers that are killed. `tests/vans/run` installs the
//! servers and starts this.

use super::{Vans, ask};
use serde_json::{Value, json};
use std::io::{Read, Write};
use std::net::{Shutdown, TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::Arc;
use std::sync::atomic::{AtomicU32, Ordering};
use std::time::{Duration, Instant};

const VANS: u8 = 20;
const ROUNDS: usize = 3;

/// The same chance in every run (a linear congruential generator after Knuth, MMIX).
struct Dice(u64);

impl Dice {
    fn below(&mut self, end: u64) -> u64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        (self.0 >> 33) % end
    }
}

/// A server on the loopback, which can be killed and started again over the same folder.
struct Server {
    child: Child,
    begin: Box<dyn Fn() -> Command>,
    port: u16,
}

impl Server {
    fn start(port: u16, begin: impl Fn() -> Command + 'static) -> Self {
        let child = begin().spawn().expect("the server starts; tests/vans/run installs it");
        let server = Self { child, begin: Box::new(begin), port };
        server.wait();
        server
    }

    fn wait(&self) {
        let from = Instant::now();
        while TcpStream::connect(("127.0.0.1", self.port)).is_err() {
            assert!(from.elapsed() < Duration::from_secs(30), "the server does not come up");
            std::thread::sleep(Duration::from_millis(50));
        }
    }

    fn kill(&mut self) {
        self.child.kill().expect("killed");
        self.child.wait().expect("ended");
    }

    fn again(&mut self) {
        self.child = (self.begin)().spawn().expect("starts again");
        self.wait();
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        let _ = self.child.kill();
        let _ = self.child.wait();
    }
}

/// A bad line: of a hundred connections so many are cut after some hundred bytes.
struct Line {
    port: u16,
    bad: Arc<AtomicU32>,
}

impl Line {
    fn to(server: u16) -> Self {
        let listener = TcpListener::bind("127.0.0.1:0").expect("a port");
        let port = listener.local_addr().expect("an address").port();
        let bad = Arc::new(AtomicU32::new(0));
        let worse = Arc::clone(&bad);
        std::thread::spawn(move || {
            let mut dice = Dice(7);
            for client in listener.incoming().flatten() {
                let cut = dice.below(100) < u64::from(worse.load(Ordering::Relaxed));
                let after = if cut { dice.below(900) as usize } else { usize::MAX };
                std::thread::spawn(move || carry(client, server, after));
            }
        });
        Self { port, bad }
    }

    fn is_bad_in(&self, of_a_hundred: u32) {
        self.bad.store(of_a_hundred, Ordering::Relaxed);
    }
}

/// Carries both ways until one side ends, or the line is cut after so many bytes of the client.
fn carry(client: TcpStream, port: u16, after: usize) {
    let Ok(server) = TcpStream::connect(("127.0.0.1", port)) else { return };
    let (mut down_from, mut down_to) =
        (server.try_clone().expect("a copy"), client.try_clone().expect("a copy"));
    let down = std::thread::spawn(move || {
        let _ = std::io::copy(&mut down_from, &mut down_to);
        let _ = down_to.shutdown(Shutdown::Both);
    });
    let (mut from, mut to) = (client, server);
    let (mut carried, mut bytes) = (0, [0; 256]);
    while let Ok(count) = from.read(&mut bytes) {
        carried += count;
        if count == 0 || carried > after || to.write_all(&bytes[..count]).is_err() {
            break;
        }
    }
    let _ = to.shutdown(Shutdown::Both);
    let _ = from.shutdown(Shutdown::Both);
    let _ = down.join();
}

fn free_port() -> u16 {
    TcpListener::bind("127.0.0.1:0").expect("a port").local_addr().expect("an address").port()
}

fn webdav(folder: &Path) -> Server {
    let (root, uploads) = (folder.join("dav"), folder.join("uploads"));
    for folder in [&root, &uploads] {
        std::fs::create_dir_all(folder).expect("made");
    }
    let (config, users, port) = (folder.join("dav.conf"), folder.join("users"), free_port());
    std::fs::write(&users, "van:let me in\n").expect("written");
    let text = format!(
        "server.modules = (\"mod_auth\", \"mod_authn_file\", \"mod_webdav\")\n\
         server.document-root = \"{}\"\nserver.upload-dirs = (\"{}\")\n\
         server.port = {port}\nserver.bind = \"127.0.0.1\"\n\
         auth.backend = \"plain\"\nauth.backend.plain.userfile = \"{}\"\n\
         auth.require = (\"/\" => (\"method\" => \"basic\", \"realm\" => \"vans\", \"require\" => \"valid-user\"))\n\
         webdav.activate = \"enable\"\nwebdav.is-readonly = \"disable\"\n",
        root.display(),
        uploads.display(),
        users.display()
    );
    std::fs::write(&config, text).expect("written");
    Server::start(port, move || {
        let mut command = Command::new("lighttpd");
        command.arg("-D").arg("-f").arg(&config).stdout(Stdio::null()).stderr(Stdio::null());
        command
    })
}

fn object_storage(folder: &Path) -> Server {
    let (data, port) = (folder.join("objects"), free_port());
    std::fs::create_dir_all(&data).expect("made");
    let program = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("vans/node_modules/.bin/s3rver");
    Server::start(port, move || {
        let mut command = Command::new(&program);
        command.arg("-d").arg(&data).args(["-a", "127.0.0.1", "-p", &port.to_string()]);
        command.args(["--configure-bucket", "hoses", "--no-vhost-buckets", "--silent"]);
        command.stdout(Stdio::null()).stderr(Stdio::null());
        command
    })
}

/// All vans write and exchange over a line that is bad and a server that is killed in between; then the line is mended.
fn over(name: &str, mut vans: Vans, mut server: Server, line: &Line) {
    let begun = Instant::now();
    let mut dice = Dice(3);
    let (mut written, mut tried, mut failed) = (0_u64, 0, 0);
    line.is_bad_in(30);
    for round in 0..ROUNDS {
        for van in 0..usize::from(VANS) {
            let down = dice.below(40) == 0;
            if down {
                server.kill();
            }
            for n in 0..dice.below(4) {
                vans.site(van, &format!("Site {round}-{van}-{n}"));
                written += 1;
            }
            tried += 1;
            failed += u32::from(!whole(&mut vans, van));
            if down {
                server.again();
            }
        }
    }
    assert!(failed > 0, "no exchange failed: the faults did not reach any");
    line.is_bad_in(0);
    for van in (0..usize::from(VANS)).chain(0..usize::from(VANS)) {
        assert!(whole(&mut vans, van), "van {van} could not exchange over a good line");
    }
    let dumps = vans.dumps();
    for (van, dump) in dumps.iter().enumerate() {
        assert_eq!(dump, &dumps[0], "van {van} has another register");
    }
    let has: u64 = vans.register(0).ends().expect("reads").values().sum();
    assert_eq!(has, written + u64::from(VANS), "events were lost; each van told its key besides");
    #[allow(clippy::print_stdout, reason = "the figures are what the run is for")]
    {
        println!(
            "{name}: {VANS} vans, {written} events, {tried} exchanges under faults of which {failed} were cut off, \
         all {VANS} registers equal after one good round trip; {:.0} s",
            begun.elapsed().as_secs_f64()
        );
    }
}

/// Whether an exchange went through whole. What it refuses it says; nothing honest is ever refused.
fn whole(vans: &mut Vans, van: usize) -> bool {
    match super::answer(&mut vans.vans[van].api, "share.exchange", json!({})) {
        Ok(answer) => {
            assert!(super::is_honest(&answer), "{answer}");
            answer["cut_off"] == Value::Null
        }
        Err(_) => false,
    }
}

#[test]
#[ignore = "needs servers: tests/vans/run installs and starts them"]
fn twenty_vans_over_webdav_end_with_the_same_register() {
    let mut vans = Vans::new(VANS);
    let server = webdav(vans.folder.path());
    let line = Line::to(server.port);
    let url = format!("http://127.0.0.1:{}/", line.port);
    for van in &mut vans.vans {
        ask(&mut van.api, "share.set", json!({"url": url, "user": "van", "secret": "let me in"}));
    }
    over("WebDAV (lighttpd)", vans, server, &line);
}

#[test]
#[ignore = "needs servers: tests/vans/run installs and starts them"]
fn twenty_vans_over_object_storage_end_with_the_same_register() {
    let mut vans = Vans::new(VANS);
    let server = object_storage(vans.folder.path());
    let line = Line::to(server.port);
    let endpoint = format!("http://127.0.0.1:{}", line.port);
    for van in &mut vans.vans {
        let access =
            json!({"url": "s3://hoses/vans", "endpoint": endpoint, "user": "S3RVER", "secret": "S3RVER"});
        ask(&mut van.api, "share.set", access);
    }
    over("S3-compatible (s3rver)", vans, server, &line);
}
