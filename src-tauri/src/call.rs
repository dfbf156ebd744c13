//! The way from the screens to the use cases: a document, or a frame where bytes go with it.

use crate::desk::Desk;
use hosewright_api::commands::Reply;
use hosewright_api::{ApiError, frame, question};
use serde::Deserialize;
use serde_json::{Value, json};
use tauri::State;
use tauri::ipc::{InvokeBody, Request, Response};

/// What is called.
#[derive(Deserialize)]
struct Call {
    name: String,
    input: Value,
}

/// Calls a use case. The window stays awake: the work is done beside it.
#[tauri::command]
pub(crate) async fn call(request: Request<'_>, desk: State<'_, Desk>) -> Result<Response, ApiError> {
    let (body, desk) = (request.body().clone(), Desk::clone(&desk));
    beside(move || answer(&desk, &body)).await
}

fn answer(desk: &Desk, body: &InvokeBody) -> Result<Response, ApiError> {
    let (document, bytes) = opened(body)?;
    let Call { name, input } = question(document)?;
    match desk.call(&name, input, bytes)? {
        Reply::Document(document) => Ok(Response::new(document.to_string())),
        Reply::File(file) => {
            let about = json!({ "name": file.name, "mime": file.mime });
            Ok(Response::new(frame::pack(&about, &file.bytes)?))
        }
    }
}

/// The document of a message and the bytes that came with it.
pub(crate) fn opened(body: &InvokeBody) -> Result<(Value, &[u8]), ApiError> {
    match body {
        InvokeBody::Json(document) => Ok((document.clone(), &[])),
        InvokeBody::Raw(bytes) => frame::unpack(bytes),
    }
}

/// Does something on a thread that may wait.
pub(crate) async fn beside<T: Send + 'static>(
    work: impl FnOnce() -> Result<T, ApiError> + Send + 'static,
) -> Result<T, ApiError> {
    tauri::async_runtime::spawn_blocking(work).await.unwrap_or_else(|error| {
        Err(ApiError::file("", format!("the program failed while it answered ({error}); try again")))
    })
}
