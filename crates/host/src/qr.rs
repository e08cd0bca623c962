//! A link as a QR code (ISO/IEC 18004), drawn in the page.

use maud::{Markup, html};
use qrcode::{Color, QrCode};
use sayso_web::Error;

/// Modules of quiet around it, as the standard asks.
const QUIET: usize = 4;

/// Draws a text. Black on white in dark pages too: cameras look for that.
///
/// # Errors
/// [`Error::Internal`] where the text is too long for a code, which no link of ours is.
pub fn drawn(text: &str, name: &str) -> Result<Markup, Error> {
    let code = QrCode::new(text).map_err(Error::internal)?;
    let (width, colors) = (code.width(), code.to_colors());
    let mut path = String::new();
    for (place, _) in colors.iter().enumerate().filter(|(_, color)| **color == Color::Dark) {
        path.push_str(&format!("M{} {}h1v1h-1z", place % width + QUIET, place / width + QUIET));
    }
    let side = width + 2 * QUIET;
    Ok(html! {
        svg viewBox=(format!("0 0 {side} {side}")) width="240" height="240" role="img" aria-label=(name) data-test="qr" shape-rendering="crispEdges" {
            rect width=(side) height=(side) fill="#fff" {}
            path d=(path) fill="#000" {}
        }
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    #[allow(clippy::unwrap_used)]
    fn its_modules_are_those_of_the_code() {
        let link = format!("https://sayso.example/join/{}", "0123456789abcdef".repeat(4));
        let drawn = drawn(&link, "link").unwrap().into_string();
        let dark = QrCode::new(&link).unwrap().to_colors().into_iter().filter(|c| *c == Color::Dark).count();
        assert_eq!(drawn.matches("h1v1h-1z").count(), dark);
        assert!(dark > 100 && drawn.contains("M4 4h1v1"), "a finder in the corner, after the quiet zone");
    }
}
