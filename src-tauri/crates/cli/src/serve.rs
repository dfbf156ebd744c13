//! The screens and the commands over loopback HTTP: for development and browser tests only.
//!
//! Each run has a token of its own; Host and Origin are checked, so no page of another site and no
//! other user's program can call it; there is no CORS, and it takes bytes, never paths.

use hosewright_api::{Api, ApiError, Work, commands::Reply, frame};
use serde_json::Value;
use std::fs;
use std::io::Read;
use std::path::{Component, Path, PathBuf};
use std::sync::{Mutex, PoisonError};
use tiny_http::{Header, Method, Request, Response, Server};

/// The largest body that is taken: a photograph of 12 megapixels with room to spare.
const LARGEST_BODY: u64 = 64 << 20;

const FRAME: &str = "application/octet-stream";

/// Serves until the process is ended. Prints the address with the run's token first.
///
/// # Errors
/// When the port can not be had.
pub fn serve(api: Api, ui: &Path, port: u16, token: &str) -> Result<(), ApiError> {
    let server = Server::http(("127.0.0.1", port)).map_err(|error| {
        ApiError::file("port", format!("the loopback can not be served on port {port}: {error}"))
    })?;
    let address = server.server_addr().to_string();
    crate::outcome::print(&format!("http://{address}/#token={token}"));
    let desk = Desk { work: api.work(), api: Mutex::new(api) };
    let answer = || {
        for mut request in server.incoming_requests() {
            let response = respond(&desk, ui, &address, token, &mut request);
            // A browser that has gone away does not end the service.
            let _ = request.respond(response);
        }
    };
    // One works while the other says how far it is.
    std::thread::scope(|threads| {
        threads.spawn(answer);
        answer();
    });
    Ok(())
}

/// The use cases, and what the one in hand is at.
struct Desk {
    api: Mutex<Api>,
    work: Work,
}

impl Desk {
    fn call(&self, name: &str, input: Value, bytes: &[u8]) -> Result<Reply, ApiError> {
        match self.work.call(name) {
            Some(answered) => answered,
            None => self.api.lock().unwrap_or_else(PoisonError::into_inner).call(name, input, bytes),
        }
    }
}

type Answered = Response<std::io::Cursor<Vec<u8>>>;

fn respond(desk: &Desk, ui: &Path, address: &str, token: &str, request: &mut Request) -> Answered {
    if !from_here(request, address) {
        return refused(403, "this service answers its own page only");
    }
    let path = request.url().split(['?', '#']).next().unwrap_or("/").to_owned();
    match (request.method().clone(), path.strip_prefix("/api/")) {
        (Method::Post, Some(name)) if header(request, "x-hosewright-token") == Some(token.to_owned()) => {
            call(desk, name, request)
        }
        (Method::Post, Some(_)) => {
            refused(403, "the token of this run is missing; open the address that was printed")
        }
        (Method::Get, None) => page(ui, &path),
        _ => refused(404, "there is nothing here"),
    }
}

/// Whether a request names this address as its host and comes from its own page.
fn from_here(request: &Request, address: &str) -> bool {
    let origin = header(request, "origin");
    header(request, "host").as_deref() == Some(address)
        && origin.is_none_or(|origin| origin == format!("http://{address}"))
}

fn header(request: &Request, name: &str) -> Option<String> {
    let found =
        request.headers().iter().find(|header| header.field.as_str().as_str().eq_ignore_ascii_case(name))?;
    Some(found.value.as_str().to_owned())
}

fn call(desk: &Desk, name: &str, request: &mut Request) -> Answered {
    let framed = header(request, "content-type").as_deref() == Some(FRAME);
    let mut body = Vec::new();
    if request.as_reader().take(LARGEST_BODY).read_to_end(&mut body).is_err() {
        return refused(400, "the message is cut short");
    }
    let answered = (|| {
        let (input, bytes): (Value, &[u8]) = if framed {
            frame::unpack(&body)?
        } else {
            let text = std::str::from_utf8(&body).map_err(|error| ApiError::input("", error))?;
            (hosewright_api::document(text)?, &[])
        };
        match desk.call(name, input, bytes)? {
            Reply::Document(document) => Ok(sent(200, "application/json", document.to_string().into_bytes())),
            Reply::File(file) => {
                let about = serde_json::json!({ "name": file.name, "mime": file.mime });
                Ok(sent(200, FRAME, frame::pack(&about, &file.bytes)?))
            }
        }
    })();
    answered.unwrap_or_else(|error: ApiError| {
        sent(422, "application/json", serde_json::json!({ "error": error }).to_string().into_bytes())
    })
}

/// A file of the built screens.
fn page(ui: &Path, path: &str) -> Answered {
    let asked = if path == "/" { "index.html" } else { path.trim_start_matches('/') };
    let inside = Path::new(asked).components().all(|part| matches!(part, Component::Normal(_)));
    let file: PathBuf = ui.join(asked);
    match fs::read(&file) {
        Ok(bytes) if inside => sent(200, mime(&file), bytes),
        _ => refused(404, "there is no such page"),
    }
}

fn mime(file: &Path) -> &'static str {
    match file.extension().and_then(|ending| ending.to_str()) {
        Some("html") => "text/html; charset=utf-8",
        Some("js") => "text/javascript; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("svg") => "image/svg+xml",
        Some("png") => "image/png",
        Some("woff2") => "font/woff2",
        _ => FRAME,
    }
}

fn refused(status: u16, why: &str) -> Answered {
    let error = ApiError::input("", why);
    sent(status, "application/json", serde_json::json!({ "error": error }).to_string().into_bytes())
}

fn sent(status: u16, mime: &str, bytes: Vec<u8>) -> Answered {
    let kind = Header::from_bytes("content-type", mime);
    let response = Response::from_data(bytes).with_status_code(status);
    match kind {
        Ok(kind) => response.with_header(kind),
        Err(()) => response,
    }
}
