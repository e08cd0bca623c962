//! Two people's scores typed in, and what comes of them.

use crate::at_home::Home;

#[tokio::test]
async fn scores_are_compared_and_bad_ones_kept_to_be_put_right() {
    let home = Home::new().await;
    home.page("/agreement").await.says("each alone");
    let scores = format!("Ann,Ben\n{}{}", "press,press\nbrush,brush\n".repeat(15), "press,brush\n".repeat(2));
    home.post("/agreement", &[("scores", &scores), ("scale", "names"), ("headed", "yes")])
        .await
        .says("94% (79% to 99%, from 32 records) alike")
        .says("Krippendorff")
        .says("2 times");
    let wrong = home.post("/agreement", &[("scores", "1,2\n1,calm"), ("scale", "numbers")]).await;
    wrong.says("line 2, person 2").says("1,2\n1,calm");
    home.post("/agreement", &[("scores", "1,2"), ("scale", "sideways")]).await.says("one of: names, steps, numbers");
    home.post("/agreement", &[("scores", "1,2"), ("scale", "names"), ("more", "x")]).await.says("not a field");
}
