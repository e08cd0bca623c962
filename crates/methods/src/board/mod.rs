//! Where words go on a board.
