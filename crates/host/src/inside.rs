//! The rooms of a home: the pages of `web` with that home's log behind them.

use crate::gate;
use crate::host::Host;
use crate::signed;
use axum::middleware::from_fn_with_state;
use axum::{Extension, Router};
use sayso_model::HomeId;
use sayso_web::AppState;
use sayso_web::access::Access;
use sayso_web::api::openapi::SessionCookie;
use std::sync::Arc;
use uuid::Uuid;

/// The rooms of a home.
pub fn of(host: &Arc<Host>, home: HomeId) -> Router {
    host.rooms.kept(home, || {
        let gate = from_fn_with_state(Arc::clone(host), gate::guard);
        let session = Extension(SessionCookie(signed::name(host)));
        let rooms = sayso_web::rooms().route_layer(gate).layer(session);
        rooms.fallback(sayso_web::told::no_such_page).with_state(state(host, home))
    })
}

/// The rooms that hold nothing of any home.
pub fn common(host: &Arc<Host>) -> Router {
    let nowhere = HomeId(Uuid::nil());
    host.rooms.kept(nowhere, || {
        sayso_web::common_rooms().fallback(sayso_web::told::no_such_page).with_state(state(host, nowhere))
    })
}

/// What pages of a home share.
pub fn state(host: &Host, home: HomeId) -> AppState {
    let store = Arc::new(host.server.home(home));
    // Sound never leaves the phone: a server takes none.
    AppState::new(store, Access::this_machine())
        .with_clock(host.clock())
        .taking_sound(false)
        .with_norms(host.norms.clone())
}
