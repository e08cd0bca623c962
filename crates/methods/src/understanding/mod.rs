//! Does what happens after a press differ by word more than chance allows?
