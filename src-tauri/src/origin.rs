//! Where the window may go: to the screens themselves, and nowhere else.

use tauri::plugin::{Builder, TauriPlugin};
use tauri::{Manager, Runtime, Url, is_dev};

/// Keeps the window on its own screens: a link, a script or a dropped address that leads elsewhere leads nowhere.
pub(crate) fn guard<R: Runtime>() -> TauriPlugin<R> {
    Builder::new("origin")
        .on_navigation(|webview, url| {
            let served = webview.config().build.dev_url.as_ref().filter(|_| is_dev());
            is_own(url, served)
        })
        .build()
}

/// Whether an address is one of the screens: those inside the program or, in development, those that are served.
fn is_own(url: &Url, served: Option<&Url>) -> bool {
    let inside = if cfg!(any(windows, target_os = "android")) {
        matches!(url.scheme(), "http" | "https") && url.host_str() == Some("tauri.localhost")
    } else {
        url.scheme() == "tauri" && url.host_str() == Some("localhost")
    };
    inside && url.port().is_none() || served.is_some_and(|served| served.origin() == url.origin())
}

#[cfg(test)]
#[allow(clippy::expect_used, reason = "a test that can not go on must panic")]
mod tests {
    use super::*;

    fn url(text: &str) -> Url {
        text.parse().expect("an address")
    }

    #[test]
    #[cfg(not(any(windows, target_os = "android")))]
    fn the_screens_inside_the_program_are_its_own_and_nothing_else_is() {
        assert!(is_own(&url("tauri://localhost"), None));
        assert!(is_own(&url("tauri://localhost/index.html#x"), None));
        for other in [
            "https://localhost/",
            "http://tauri.localhost/",
            "tauri://elsewhere/",
            "tauri://localhost:81/",
            "http://127.0.0.1:5173/",
            "file:///etc/passwd",
            "data:text/html,x",
            "about:blank",
            "javascript:0",
        ] {
            assert!(!is_own(&url(other), None), "{other}");
        }
    }

    #[test]
    fn in_development_the_served_screens_are_its_own_at_their_very_port() {
        let served = url("http://127.0.0.1:5173");
        assert!(is_own(&url("http://127.0.0.1:5173/x"), Some(&served)));
        assert!(!is_own(&url("http://127.0.0.1:5174/"), Some(&served)));
    }
}
