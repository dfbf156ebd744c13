//! A link to a tag from outside, `hosewright:CODE`: of a calendar, a message, a list of the office. It opens the screen
//! that takes typed codes, with the code typed; whether it checks is said there, as for any code.

use tauri::{App, AppHandle, Manager, Url};
use tauri_plugin_deep_link::DeepLinkExt;

/// Letters of a code that is written in the longest way.
const LONGEST: usize = 20;

/// Follows the link that the program was opened with, and those that come while it runs.
pub(crate) fn follow(app: &App) {
    let opened = app.handle().clone();
    app.deep_link().on_open_url(move |event| show(&opened, &event.urls()));
    if let Ok(Some(urls)) = app.deep_link().get_current() {
        show(app.handle(), &urls);
    }
}

/// A link that names no code, or comes while there is no window, leads nowhere.
fn show(app: &AppHandle, urls: &[Url]) {
    let code = urls.iter().find_map(code);
    if let (Some(code), Some(window)) = (code, app.get_webview_window("main")) {
        // Nothing but letters, digits and hyphens gets into the script. What the way back leads to stays as it is.
        let _ = window.eval(format!(
            "history.replaceState(history.state, '', '#tag={code}'); dispatchEvent(new Event('hashchange'))"
        ));
    }
}

/// What a link says the code is.
fn code(url: &Url) -> Option<&str> {
    let code = url.path();
    let letters = code.bytes().all(|letter| letter.is_ascii_alphanumeric() || letter == b'-');
    (url.scheme() == "hosewright" && letters && (1..=LONGEST).contains(&code.len())).then_some(code)
}

#[cfg(test)]
#[allow(clippy::expect_used, reason = "a test that can not go on must panic")]
mod tests {
    use super::*;

    #[test]
    fn a_link_gives_a_code_and_nothing_that_could_be_a_script() {
        let said = |text: &str| code(&text.parse().expect("an address")).map(str::to_owned);
        assert_eq!(said("hosewright:FTYKH-7MAXC-5").as_deref(), Some("FTYKH-7MAXC-5"));
        assert_eq!(said("hosewright:ftykh7maxc5").as_deref(), Some("ftykh7maxc5"));
        for other in [
            "hosewright:",
            "hosewright:'+alert(1)+'",
            "hosewright:FTYKH%277MAXC",
            "hosewright://FTYKH-7MAXC-5",
            "hosewright:FTYKH-7MAXC-5-FTYKH-7MAXC-5",
            "https:FTYKH-7MAXC-5",
        ] {
            assert_eq!(said(other), None, "{other}");
        }
    }
}
