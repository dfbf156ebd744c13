//! The shell's commands get permissions of their own; the capabilities name them.

fn main() {
    let commands = tauri_build::AppManifest::new().commands(&["call", "save"]);
    if let Err(error) = tauri_build::try_build(tauri_build::Attributes::new().app_manifest(commands)) {
        panic!("{error:#}");
    }
}
