//! What the shell lets in and out, as its files say it. The tests of `tests/shell` see it at work.

use serde_json::Value;
use std::fs;
use std::path::Path;

fn shell(file: &str) -> String {
    fs::read_to_string(Path::new("../src-tauri").join(file)).expect("it is there")
}

fn document(file: &str) -> Value {
    serde_json::from_str(&shell(file)).expect("a document")
}

#[test]
fn the_screens_load_from_the_program_alone() {
    let config = document("tauri.conf.json");
    let security = &config["app"]["security"];
    assert_eq!(security["freezePrototype"], true);
    assert_eq!(config["app"]["withGlobalTauri"], false);
    let policy = security["csp"].as_object().expect("a policy");
    assert_eq!(policy["default-src"], "'self'");
    assert!(
        !policy.contains_key("script-src"),
        "scripts follow default-src: no inline one, none from elsewhere"
    );
    // `ipc:` is the way to the program itself; the address stands for it where a web view knows no schemes.
    let inside = ["'self'", "'none'", "blob:", "data:", "mediastream:", "ipc:", "http://ipc.localhost"];
    for (directive, sources) in policy {
        for source in sources.as_str().expect("a text").split_whitespace() {
            assert!(inside.contains(&source), "{directive} lets {source} in");
        }
    }
    assert!(security.get("dangerousDisableAssetCspModification").is_none(), "the policy is not loosened");
}

#[test]
fn the_screens_may_call_and_save_and_nothing_else() {
    for file in fs::read_dir("../src-tauri/capabilities").expect("is there") {
        let name = file.expect("a file").file_name().to_string_lossy().into_owned();
        let capability = document(&format!("capabilities/{name}"));
        assert_eq!(capability["permissions"], serde_json::json!(["allow-call", "allow-save"]), "{name}");
        assert!(capability.get("remote").is_none(), "{name} lets a page from elsewhere in");
        assert_eq!(capability["windows"], serde_json::json!(["main"]), "{name}");
    }
}

/// Tauri opens the inspector of a release only with this feature or setting.
#[test]
fn a_release_has_no_inspector() {
    for manifest in ["Cargo.toml", "../Cargo.toml"] {
        assert!(!shell(manifest).contains("devtools"), "{manifest}");
    }
    assert!(!shell("tauri.conf.json").contains("devtools"));
}

#[test]
fn no_text_of_the_shell_names_an_address_outside() {
    let config = document("tauri.conf.json");
    assert_eq!(
        config["build"]["devUrl"], "http://127.0.0.1:5173",
        "the development server is on this machine"
    );
    let links = serde_json::json!({
        "desktop": {"schemes": ["hosewright"]},
        "mobile": [{"scheme": ["hosewright"], "appLink": false}],
    });
    assert_eq!(
        config["plugins"],
        serde_json::json!({"deep-link": links}),
        "links of our own to a tag, and no updater"
    );
}
