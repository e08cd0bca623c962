//! Why a method gives no figure, in the reader's language.

use crate::locale::Locale;
use crate::message::Message;
use crate::say;
use sayso_advisor::evidence::NoClaim;
use sayso_methods::agreement::AgreementError;
use sayso_methods::learning::LearningError;
use sayso_methods::learning::latency::LatencyError;
use sayso_methods::likes::LikesError;
use sayso_methods::stats::StatsError;
use sayso_methods::understanding::UnderstandingError;
use sayso_model::order::OrderError;

/// Records that a method cannot take at all. The method's own words are English: they are for whoever mends it.
fn not_fit(l: &Locale, why: &dyn std::error::Error) -> String {
    say!(l, lacking::not_fit, why = why.to_string())
}

impl Message for StatsError {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::TooFew { needed, got, .. } => say!(l, lacking::few, needed = *needed, got = *got),
            Self::NoVariation(_) => say!(l, lacking::no_variation),
            other => not_fit(l, other),
        }
    }
}

impl Message for AgreementError {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::Stats(why) => why.say(l),
            Self::OneCategory { n } => say!(l, lacking::one_category, n = *n),
            Self::NothingShared => say!(l, lacking::nothing_shared),
            other => not_fit(l, other),
        }
    }
}

impl Message for LikesError {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::Stats(why) => why.say(l),
            Self::Disconnected { groups } => say!(l, lacking::disconnected, groups = groups.len()),
            Self::Separated { .. } => say!(l, lacking::separated),
            Self::Unsettled => say!(l, lacking::unsettled),
            other => not_fit(l, other),
        }
    }
}

impl Message for UnderstandingError {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::NoObservations => say!(l, lacking::nothing),
            Self::Stats(why) => why.say(l),
            Self::Order(why) => why.say(l),
            Self::SessionsMixed { .. } | Self::TimeGoesBack { .. } => say!(l, lacking::time_goes_back),
            other => not_fit(l, other),
        }
    }
}

impl Message for LearningError {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::NoObservations => say!(l, lacking::nothing),
            Self::NoSpan { n } => say!(l, lacking::no_span, n = *n),
            other => not_fit(l, other),
        }
    }
}

impl Message for LatencyError {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::Stats(why) => why.say(l),
            other => not_fit(l, other),
        }
    }
}

impl Message for OrderError {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::Choices { choices, words } => say!(l, lacking::choices, choices = *choices, words = *words),
            Self::NoTrials => say!(l, lacking::no_trials),
            Self::Twice => say!(l, lacking::word_twice),
            Self::LongRuns => say!(l, lacking::long_runs),
            other => not_fit(l, other),
        }
    }
}

impl Message for NoClaim {
    fn say(&self, l: &Locale) -> String {
        match self {
            Self::NoCard => say!(l, lacking::no_card),
            Self::Why(why) => why.say(l),
        }
    }
}
