homescreen-description = The notebook of a board of recorded words.
homescreen-earlier = The notebook gives no answer. This page is from { $time } and may no longer hold; nothing can be sent from it. The Board takes taps meanwhile.
