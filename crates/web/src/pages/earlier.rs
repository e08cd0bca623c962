//! Addresses of earlier versions lead on: bookmarks and what people sent each other use them.

use crate::state::AppState;
use axum::Router;
use axum::http::Uri;
use axum::response::Redirect;
use axum::routing::get;

/// Routes that lead on.
pub fn router() -> Router<AppState> {
    Router::new().route("/l/{*rest}", get(animal))
}

/// An animal's pages stood under `/l/`.
async fn animal(uri: Uri) -> Redirect {
    let address = uri.path_and_query().map_or(uri.path(), |asked| asked.as_str());
    Redirect::permanent(&address.replacen("/l/", "/a/", 1))
}
