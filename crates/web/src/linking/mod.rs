//! The link of a notebook at home to its home on a server: made, said yes to, looked at, ended. Only a notebook at home has this
//! page; what goes on is done by `sayso_linked`, which reads what is decided here from the notebook's folder.

pub mod seen;
mod view;
mod words;

pub use words::{held, hinders, said};

use crate::error::Error;
use crate::state::AppState;
use crate::typed::{Typed, again};
use crate::visitor::Visitor;
use axum::Router;
use axum::response::{IntoResponse, Redirect, Response};
use axum::routing::{get, post};
use maud::Markup;
use sayso_linked::{Address, Asked, LinkError};
use sayso_wording::{say, words};

/// Where it is.
const HERE: &str = "/linked";

/// Routes of the page.
pub fn router() -> Router<AppState> {
    Router::new()
        .route(HERE, get(show).post(begin))
        .route("/linked/yes", post(yes))
        .route("/linked/again", post(once_more))
        .route("/linked/end", post(end))
}

impl Visitor {
    fn page_of(&self, body: Markup) -> Markup {
        self.framed(&say!(&self.locale, linked::title), body)
    }

    async fn told(&self, typed: &Typed) -> Result<Markup, Error> {
        match sayso_linked::state(&self.state.store).await {
            Ok(None) => Ok(self.page_of(view::begin(&self.locale, typed))),
            Ok(Some(state)) => Ok(self.page_of(view::state(self, &state))),
            // What is kept cannot be read: the page says so, and offers to unlink.
            Err(why @ LinkError::Damaged { .. }) => Ok(self.page_of(view::damaged(&self.locale, &why))),
            Err(other) => Err(error(other)),
        }
    }
}

/// An error of a link, where no form is shown again.
fn error(why: LinkError) -> Error {
    match why {
        LinkError::Store(why) => why.into(),
        LinkError::NotLinked => Error::refused("link", words!(linked::not_linked)),
        other => Error::refused("link", said(other)),
    }
}

async fn show(visitor: Visitor) -> Result<Markup, Error> {
    visitor.told(&Typed::default()).await
}

async fn begin(visitor: Visitor, typed: Typed) -> Result<Response, Error> {
    let mut typed = typed.only(&["link"])?.read_by(visitor.locale);
    let store = &visitor.state.store;
    let name = visitor.page.as_ref().and_then(|page| page.story.home().map(|card| card.name.to_string()));
    let linked = match Address::with_code(typed.text("link")) {
        Ok((address, code)) => {
            let home = visitor.page.as_ref().map(|page| page.home);
            let asked = Asked { address, code, name: name.unwrap_or_default(), home };
            sayso_linked::begin(store, asked).await.map(drop)
        }
        Err(why) => Err(why.into()),
    };
    match linked {
        Ok(()) => Ok(Redirect::to(HERE).into_response()),
        Err(LinkError::Store(why)) => Err(why.into()),
        Err(why) => {
            typed.wrong("link", said(why));
            Ok(again(visitor.told(&typed).await?))
        }
    }
}

/// Somebody at home says what may go there. Until then nothing does.
async fn yes(visitor: Visitor, typed: Typed) -> Result<Redirect, Error> {
    let typed = typed.only(&["pictures", "recordings"])?;
    let (pictures, recordings) = (typed.ticked("pictures"), typed.ticked("recordings"));
    sayso_linked::say_yes(&visitor.state.store, pictures, recordings).map_err(error)?;
    Ok(Redirect::to(HERE))
}

async fn once_more(visitor: Visitor) -> Result<Redirect, Error> {
    sayso_linked::again(&visitor.state.store).map_err(error)?;
    Ok(Redirect::to(HERE))
}

async fn end(visitor: Visitor) -> Result<Markup, Error> {
    let ended = sayso_linked::end(&visitor.state.store).await.map_err(error)?;
    Ok(visitor.page_of(view::ended(&visitor.locale, ended)))
}
