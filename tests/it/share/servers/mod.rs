//! Real servers, with lines that are cut and servers that are killed. `tests/vans/run` installs them and starts this.

mod office;
mod postgres;
mod vans;

use std::io::{Read, Write};
use std::net::{Shutdown, TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::sync::Arc;
use std::sync::atomic::{AtomicU32, Ordering};
use std::time::{Duration, Instant};

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
        let from = Instant::now();
        loop {
            self.child = (self.begin)().spawn().expect("starts again");
            // One that finds what it left behind still in use ends at once.
            std::thread::sleep(Duration::from_millis(200));
            if self.child.try_wait().expect("is known").is_none() {
                return self.wait();
            }
            assert!(from.elapsed() < Duration::from_secs(30), "the server does not start again");
        }
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
