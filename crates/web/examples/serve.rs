//! Serves a notebook in a folder: `cargo run -p sayso-web --example serve -- DIR PORT [lan]`.

use sayso_web::{Config, serve};
use std::sync::Arc;

#[tokio::main]
async fn main() {
    let args: Vec<String> = std::env::args().collect();
    let config = Config {
        data: args.get(1).map_or("notebook", String::as_str).into(),
        port: args.get(2).and_then(|p| p.parse().ok()).unwrap_or(0),
        lan: args.get(3).is_some_and(|a| a == "lan"),
        opened: Arc::new(|at| println!("http://{at}")),
        show_code: Arc::new(|code, minutes| println!("Pairing code {code}, good for {minutes} minutes")),
    };
    if let Err(e) = serve(config).await {
        eprintln!("{e}");
        std::process::exit(1);
    }
}
