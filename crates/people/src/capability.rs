//! Capabilities: each thing that pages and addresses ask leave for.

use crate::role::ScopeKind;
use sayso_model::ConsentPurpose;

macro_rules! capabilities {
    ($($(#[doc = $doc:literal])* $name:ident => $wire:literal in $scope:ident $(opens by $purpose:ident)? $(looks $looks:tt)? $(fresh $fresh:tt)?;)+) => {
        /// One thing that may be done.
        #[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Debug)]
        pub enum Capability { $($(#[doc = $doc])* $name,)+ }

        impl Capability {
            /// Every capability.
            pub const ALL: &'static [Self] = &[$(Self::$name,)+];

            /// Its name in tables and documents.
            #[must_use]
            pub const fn name(self) -> &'static str {
                match self { $(Self::$name => $wire,)+ }
            }

            /// What it is, for the page of roles.
            #[must_use]
            pub const fn means(self) -> &'static str {
                match self { $(Self::$name => concat!($($doc),*),)+ }
            }

            /// Where it is asked for.
            #[must_use]
            pub const fn scope(self) -> ScopeKind {
                match self { $(Self::$name => ScopeKind::$scope,)+ }
            }

            /// The consent by which a home opens it to coaches, if it can.
            #[must_use]
            pub const fn opened_by(self) -> Option<ConsentPurpose> {
                match self { $(Self::$name => capabilities!(@purpose $($purpose)?),)+ }
            }

            /// Whether it shows something of a home, so that looks are noted.
            #[must_use]
            pub const fn looks(self) -> bool {
                match self { $(Self::$name => false $(|| capabilities!(@yes $looks))?,)+ }
            }

            /// Whether it needs a sign-in of the last minutes ([`crate::Lifetimes::fresh_s`]).
            #[must_use]
            pub const fn needs_fresh(self) -> bool {
                match self { $(Self::$name => false $(|| capabilities!(@yes $fresh))?,)+ }
            }
        }
    };
    (@yes yes) => { true };
    (@purpose) => { None };
    (@purpose $purpose:ident) => { Some(ConsentPurpose::$purpose) };
}

capabilities! {
    /// Today: plan, rations, cautions
    SeeToday => "see_today" in Home opens by CoachFigures looks yes;
    /// The rules of the house
    SeeRules => "see_rules" in Home looks yes;
    /// Pages with figures and what they are about: Evidence, Likes, Days, cards with their pictures and recordings
    SeeFigures => "see_figures" in Home opens by CoachFigures looks yes;
    /// The log, entry by entry
    SeeLog => "see_log" in Home opens by CoachLog looks yes;
    /// The sounds kept of presses
    HearSnippets => "hear_snippets" in Home opens by CoachSnippets looks yes;
    /// What one scored oneself, on the page of that and where one scores; of others only with the figures
    SeeOwnScores => "see_own_scores" in Home;
    /// Write down what happens at the board, under one's own name
    Record => "record" in Home looks yes;
    /// Write down in the name of another person of the home, or of none
    RecordForOthers => "record_for_others" in Home;
    /// Put right and take back what one wrote down oneself
    MendOwn => "mend_own" in Home;
    /// Put right and take back what anyone wrote down
    Mend => "mend" in Home;
    /// Cards, board, rules, recordings, pictures, stages
    ChangeCards => "change_cards" in Home;
    /// Set up likes tests, checks, swaps, trials of a change, plans of the home's own
    Plan => "plan" in Home;
    /// Propose and ask, under one's own name; see what came of it
    Advise => "advise" in Home opens by CoachFigures looks yes;
    /// Accept, decline and answer what a coach proposes or asks
    Agree => "agree" in Home;
    /// The home's card: its name and zone
    SettleHome => "settle_home" in Home;
    /// Read files into the log
    Import => "import" in Home fresh yes;
    /// Take the whole log and its sounds away in a file
    Export => "export" in Home looks yes fresh yes;
    /// See who belongs to the home, who can see what, and who looked
    SeePeople => "see_people" in Home;
    /// Invite people, change and end their roles
    ManagePeople => "manage_people" in Home fresh yes;
    /// Give consent
    Consent => "consent" in Home fresh yes;
    /// See what was consented to, and take it back
    TakeBack => "take_back" in Home;
    /// Link a notebook at home to the home, see which are, and end such links
    LinkNotebook => "link_notebook" in Home;
    /// Leave the server with the home and have it erased
    Leave => "leave" in Home fresh yes;
    /// See which homes share with the club, and who belongs to it
    SeeClub => "see_club" in Club;
    /// The coach's own desk: homes that share figures, sorted by who needs a coach first
    SeeDesk => "see_desk" in Club;
    /// Invite to the club, change and end roles in it
    ManageClub => "manage_club" in Club fresh yes;
    /// Open homes and clubs on the server; invite their first keepers
    Host => "host" in Server fresh yes;
    /// See how the server does: counts and sizes, no content
    SeeServer => "see_server" in Server;
    /// Invite keepers of the server, end their roles
    ManageServer => "manage_server" in Server fresh yes;
}
