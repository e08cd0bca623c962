# What one scored oneself, and what there is to score.
scored-title = What you scored
scored-intro = Answers of likes tests and checks that you noted yourself. What others noted does not stand here, nor what would have been right.
scored-none = Nothing yet.
scored-likes = Likes tests
scored-to-score = To score now
scored-back = To the Board
