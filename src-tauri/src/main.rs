//! The program on a desk; on a phone the library is started by the system.

#![cfg_attr(not(debug_assertions), windows_subsystem = "windows")]

fn main() -> std::process::ExitCode {
    hosewright_app::run()
}
