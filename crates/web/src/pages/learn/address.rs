//! Addresses of the lessons.

use crate::page::Page;
use sayso_model::AnimalId;

/// The list of all lessons.
pub const LEARN: &str = "/learn";
/// All of them to print.
pub const BOOKLET: &str = "/learn/booklet";

/// The address of a lesson.
pub fn lesson(id: &str) -> String {
    format!("{LEARN}/{id}")
}

/// An address of these pages, about the animal whose name they say, where several live here.
pub fn about(page: &Page, path: &str, animal: Option<AnimalId>) -> String {
    page.of_home_with(path, animal.map(|animal| ("animal", animal.to_string())).as_slice())
}
