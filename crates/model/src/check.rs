//! What must hold across the fields of an event. Ranges of single fields are held by their types.

use crate::event::Event;
use crate::fault::Fault;
use crate::findings::{Findings, Problems};

impl Event {
    /// Checks what the types cannot hold.
    ///
    /// # Errors
    /// [`Problems`], each with its field and what would be right.
    pub fn check(&self) -> Result<(), Problems> {
        let mut found = Findings::default();
        if self.body.about().needs_animal && self.animal.is_none() {
            found.wrong("animal", Fault::NoAnimal);
        }
        found.within("body", |found| self.body.check(found));
        found.told()
    }
}
