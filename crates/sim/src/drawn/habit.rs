//! What a learner of a drawn life goes by. All but [`Habit::Means`] mean nothing by a button; how each presses is written
//! here in full, so that the truth about it is known.

/// What decides which button is pressed. Numbers of words count from 0.
#[derive(Clone, Copy, PartialEq, Debug)]
pub enum Habit {
    /// Any button.
    Random,
    /// Buttons in fixed shares; in checks always the same place.
    Place,
    /// One favourite button in each sitting.
    SessionFavourite,
    /// Mostly the button pressed last.
    RepeatsLast,
    /// Never the same button (or place) twice running.
    Alternates,
    /// Anything but the word of what it just got.
    AvoidsGiven,
    /// What it has not had yet in this sitting; once through, again.
    GoesThrough,
    /// Buttons in proportion to its interest in their things, which drifts: days after which 1/e of it is left.
    Interest(f64),
    /// Any button, much less once it has had enough of what it sees.
    Sated,
    /// One button over and over for minutes, then another.
    Bursts,
    /// Button 0 whenever aroused, which comes and goes; any button otherwise.
    Aroused,
    /// Follows what a person who knows the answer does without meaning to, four times in five; any button otherwise.
    Cued,
    /// The button pressed last, if what came was taken; else another.
    WinStay,
    /// Buttons in proportion to how often good things came after them lately.
    Matching,
    /// Two moods, each of that many hours: in one it presses at anything, mostly button 0; in the other only at thing 1,
    /// mostly button 1.
    Moods(f64),
    /// Excited at the sight of thing 0, and then presses the button in the corner where it waits, which is button 0.
    Sight,
    /// Button 0 is pressed in quick runs and button 1 seldom; thing 0 keeps it busy, thing 1 is over at once.
    Busy,
    /// Counts on in a fixed order of buttons, one further whenever something came.
    Counts,
    /// Always reaches for the same thing in a check, and for its button at home.
    FavouriteThing,
    /// Its thing's button with this probability; any button otherwise.
    Means(f64),
}

impl Habit {
    /// Whether it means something by its presses.
    #[must_use]
    pub const fn means(self) -> bool {
        matches!(self, Self::Means(_))
    }
}
