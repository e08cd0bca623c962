homescreen-description = The notebook of a board of recorded words.
homescreen-earlier = The notebook gives no answer. This page is from { $time } and may no longer hold; nothing can be sent from it. The Board takes taps meanwhile.
homescreen-no-answer = No answer from the notebook
homescreen-not-this-page = This page needs the notebook and comes once it answers.
homescreen-what-works = Meanwhile the Board takes taps; they are kept here and sent later. Today can be read as it was last.
homescreen-none-kept = Neither was opened on this device before, so neither can be shown now.
homescreen-try-again = Try again
homescreen-read-lessons = Read the lessons
