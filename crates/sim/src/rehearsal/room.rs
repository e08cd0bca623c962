//! The room, seen from above, in units of its own: 360 wide, 220 high.

use super::thing::Thing;

/// A place in the room.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Spot {
    /// From the left, 0 to 360.
    pub x: f64,
    /// From above, 0 to 220.
    pub y: f64,
}

impl Spot {
    const fn new(x: f64, y: f64) -> Self {
        Self { x, y }
    }

    /// The straight way between two.
    pub(super) fn from(self, other: Self) -> f64 {
        (self.x - other.x).hypot(self.y - other.y)
    }

    /// The place a share of the way to another.
    pub(super) fn towards(self, other: Self, share: f64) -> Self {
        Self { x: self.x + (other.x - self.x) * share, y: self.y + (other.y - self.y) * share }
    }
}

/// Width and height of the room.
pub const ROOM: (f64, f64) = (360.0, 220.0);
/// The middle of the board.
pub const BOARD: Spot = Spot::new(180.0, 62.0);
/// Where the person is.
pub const PERSON: Spot = Spot::new(258.0, 50.0);
/// Its bed.
pub const BED: Spot = Spot::new(306.0, 176.0);
/// The open door.
pub const DOOR: Spot = Spot::new(22.0, 176.0);

/// Where it stands to reach a button.
pub(super) fn at_button(thing: Thing) -> Spot {
    let (column, row) = (thing.place() % 2, thing.place() / 2);
    Spot::new(if column == 0 { 158.0 } else { 202.0 }, if row == 0 { 88.0 } else { 100.0 })
}

/// Where it stands before the board.
pub(super) const BEFORE: Spot = Spot::new(180.0, 104.0);
/// Where a thing is given: at the board, on the person's side.
pub const GIVEN: Spot = Spot::new(232.0, 100.0);

/// Somewhere in the middle of the room.
pub(super) fn about(across: f64, down: f64) -> Spot {
    Spot::new(70.0 + 220.0 * across, 128.0 + 60.0 * down)
}

/// A straight way through the room.
#[derive(Clone, Copy, PartialEq, Debug)]
pub struct Motion {
    /// When it begins, in milliseconds.
    pub begins_ms: u32,
    /// When it ends.
    pub ends_ms: u32,
    /// From where.
    pub from: Spot,
    /// To where.
    pub to: Spot,
}

impl Motion {
    /// Where the animal is at a moment of it.
    #[must_use]
    pub fn at(&self, ms: u32) -> Spot {
        let length = f64::from(self.ends_ms.saturating_sub(self.begins_ms)).max(1.0);
        let share = (f64::from(ms) - f64::from(self.begins_ms)) / length;
        self.from.towards(self.to, share.clamp(0.0, 1.0))
    }
}
