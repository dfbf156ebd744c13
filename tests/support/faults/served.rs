//! The program with its loopback way in, over a register.

use hosewright_api::frame;
use serde_json::Value;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::TcpStream;
use std::path::Path;
use std::process::{Child, Command, Stdio};

/// A program that serves a register; killed when it is dropped.
pub struct Served {
    program: Child,
    address: String,
    token: String,
}

impl Served {
    /// Starts it.
    ///
    /// # Panics
    /// It does not start, or says no address.
    pub fn start(mut command: Command, register: &Path) -> Self {
        let mut program = command
            .args(["serve", "--ui", ".", "--port", "0", "--db"])
            .arg(register)
            .stdout(Stdio::piped())
            .stderr(Stdio::null())
            .spawn()
            .expect("the program starts");
        let mut line = String::new();
        let mut said = BufReader::new(program.stdout.take().expect("its output"));
        said.read_line(&mut line).expect("its address");
        let (address, token) =
            line.trim().trim_start_matches("http://").split_once("/#token=").expect("an address and a token");
        Self { address: address.to_owned(), token: token.to_owned(), program }
    }

    /// Begins a call, to be answered by [`answer`].
    pub fn begin(&self, name: &str, input: &Value, bytes: &[u8]) -> TcpStream {
        let body = frame::pack(input, bytes).expect("a frame");
        let mut stream = TcpStream::connect(&self.address).expect("it listens");
        let head = format!(
            "POST /api/{name} HTTP/1.0\r\nHost: {}\r\nX-Hosewright-Token: {}\r\nContent-Type: application/octet-stream\r\nContent-Length: {}\r\n\r\n",
            self.address,
            self.token,
            body.len()
        );
        stream.write_all(&[head.as_bytes(), &body].concat()).expect("it is sent");
        stream
    }

    /// Ends it at once, as no program can hinder.
    pub fn kill(&mut self) {
        // One that has ended by itself is no less dead.
        let _ = self.program.kill();
        let _ = self.program.wait();
    }

    /// The process that was started.
    pub fn id(&self) -> u32 {
        self.program.id()
    }

    /// Waits until it has ended.
    pub fn wait(&mut self) {
        let _ = self.program.wait();
    }
}

impl Drop for Served {
    fn drop(&mut self) {
        self.kill();
    }
}

/// What a call was answered with.
pub struct Answered {
    /// The document.
    pub document: Value,
    /// The bytes of a file.
    pub bytes: Vec<u8>,
}

/// The answer of a call; none where the program ended before it had answered.
///
/// # Panics
/// The program refuses the call: it is one of ours and ought to be right.
pub fn answer(mut stream: TcpStream) -> Option<Answered> {
    let mut answer = Vec::new();
    // A connection that was cut holds what came before.
    let _ = stream.read_to_end(&mut answer);
    let split = answer.windows(4).position(|four| four == b"\r\n\r\n")?;
    let (head, body) = (String::from_utf8_lossy(&answer[..split]).into_owned(), &answer[split + 4..]);
    let said = String::from_utf8_lossy(body);
    assert!(head.lines().next().is_some_and(|status| status.contains(" 200 ")), "refused: {said}");
    if head.to_lowercase().contains("octet-stream") {
        let (document, bytes) = frame::unpack(body).ok()?;
        return Some(Answered { document, bytes: bytes.to_vec() });
    }
    Some(Answered { document: serde_json::from_slice(body).ok()?, bytes: Vec::new() })
}
