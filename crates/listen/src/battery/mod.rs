//! What many presses tell about the buttons: a battery that tires, a word that has fallen silent.

pub(crate) mod drift;
pub(crate) mod own_speed;
pub(crate) mod silent;
pub(crate) mod tired;
