//! A likes test of the address, and what was noted in it.

use crate::error::Error;
use crate::page::AnimalPage;
use crate::typed::named;
use sayso_model::{AssessmentId, Fact, LikeTrial, LikesTest};
use sayso_wording::words;

/// A test of this animal by the id in its address.
pub fn known<'a>(page: &'a AnimalPage, id: &str) -> Result<Fact<'a, LikesTest>, Error> {
    let id: AssessmentId = named(id, "test")?;
    let test = page.story.of::<LikesTest>(page.id).find(|t| t.part.assessment == id);
    test.ok_or_else(|| Error::NotFound(words!(likes::no_such_test)))
}

/// Trials of a test that whoever asks may see, oldest first: one's own, or with the figures all.
pub fn seen(page: &AnimalPage, test: AssessmentId) -> Vec<Fact<'_, LikeTrial>> {
    trials(page, test).into_iter().filter(|t| page.may_see_score(t.person())).collect()
}

/// Trials of a test that stand, oldest first.
pub fn trials(page: &AnimalPage, test: AssessmentId) -> Vec<Fact<'_, LikeTrial>> {
    page.story.of::<LikeTrial>(page.id).filter(|t| t.part.assessment == test).collect()
}
