//! What the learner likes: scores, choice models, side bias, consistency, what to test next.
