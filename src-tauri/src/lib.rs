//! The shell: a window with the screens, and two ways out of it. `call` reaches the use cases, `save`
//! leaves a file where the person finds it. Nothing of the trade is here.

mod call;
mod desk;
mod link;
mod origin;
mod save;
mod world;

use desk::Desk;
use hosewright_api::commands::register::keep_backup_when_due;
use std::path::{Path, PathBuf};
use std::process::ExitCode;
use std::time::Duration;
use tauri::webview::{PermissionKind, PermissionResponse};
use tauri::{App, Manager};

/// Opens the window and stays until it is closed.
#[cfg_attr(mobile, tauri::mobile_entry_point)]
pub fn run() -> ExitCode {
    let ran = tauri::Builder::default()
        .plugin(origin::guard())
        .plugin(tauri_plugin_deep_link::init())
        .setup(begin)
        .on_permission_request(|_, kind| permit(kind))
        .invoke_handler(tauri::generate_handler![call::call, save::save])
        .run(tauri::generate_context!());
    match ran {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            #[allow(clippy::print_stderr, reason = "without a window there is no other place to say it")]
            {
                eprintln!("hosewright: the window can not be opened: {error}");
            }
            ExitCode::FAILURE
        }
    }
}

/// The screens come up whether or not the register opens; it opens beside them.
fn begin(app: &mut App) -> Result<(), Box<dyn std::error::Error>> {
    let path = register(app)?;
    let desk = Desk::new(path.clone());
    app.manage(desk.clone());
    link::follow(app);
    std::thread::spawn(move || keep_backups(&path));
    tauri::async_runtime::spawn_blocking(move || desk.open());
    Ok(())
}

/// How often it is looked whether a backup is due.
const LOOK: Duration = Duration::from_secs(60 * 60);

/// Keeps backups beside the register as long as the program runs. Nobody waits for it: what hinders it shows on the
/// screen of backups, by the age of the newest.
fn keep_backups(register: &Path) -> ! {
    loop {
        if register.exists() {
            let _ = keep_backup_when_due(register, &mut world::Machine);
        }
        std::thread::sleep(LOOK);
    }
}

/// The screens are our own and ask for the camera only. A phone's system asks its person itself.
fn permit(kind: PermissionKind) -> PermissionResponse {
    match kind {
        PermissionKind::Camera if cfg!(desktop) => PermissionResponse::Allow,
        PermissionKind::Camera => PermissionResponse::Default,
        _ => PermissionResponse::Deny,
    }
}

/// The register's file. On a desk `HOSEWRIGHT_DB` names another.
fn register(app: &App) -> tauri::Result<PathBuf> {
    #[cfg(desktop)]
    if let Some(named) = std::env::var_os("HOSEWRIGHT_DB") {
        return Ok(named.into());
    }
    Ok(app.path().app_data_dir()?.join("register.db"))
}
