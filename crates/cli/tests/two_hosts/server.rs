//! One of the two servers: a process of its own, killed and begun again at the same port.

use std::net::{TcpListener, TcpStream};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

/// The name both are known by.
pub const NAME: &str = "localhost:7310";

/// A process that serves.
pub struct Server {
    address: String,
    port: u16,
    process: Child,
}

fn begin(address: &str, port: u16) -> Child {
    // Another build where one is named, such as the released one.
    let binary = std::env::var_os("SAYSO_BINARY").unwrap_or_else(|| env!("CARGO_BIN_EXE_sayso").into());
    Command::new(binary)
        .args([
            "host",
            "--public-url",
            &format!("http://{NAME}/"),
            "--port",
            &port.to_string(),
            "--listen",
            "127.0.0.1",
        ])
        .env("SAYSO_DATABASE", address)
        .stdin(Stdio::null())
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .spawn()
        .unwrap()
}

impl Server {
    /// Starts one at a port that is free now.
    pub fn start(address: &str) -> Self {
        let port = TcpListener::bind(("127.0.0.1", 0)).unwrap().local_addr().unwrap().port();
        let server = Self { address: address.to_owned(), port, process: begin(address, port) };
        server.wait();
        server
    }

    pub const fn port(&self) -> u16 {
        self.port
    }

    fn wait(&self) {
        let begun = Instant::now();
        while TcpStream::connect(("127.0.0.1", self.port)).is_err() {
            assert!(begun.elapsed() < Duration::from_secs(60), "the server does not begin");
            std::thread::sleep(Duration::from_millis(10));
        }
    }

    /// Kills it in the midst of whatever it does, and begins it again.
    pub fn kill(&mut self) {
        self.process.kill().unwrap();
        self.process.wait().unwrap();
        self.process = begin(&self.address, self.port);
        self.wait();
    }

    /// Tells it to stop, and waits until it has.
    pub fn stop(&mut self) {
        let told = Command::new("kill").args(["-TERM", &self.process.id().to_string()]).status().unwrap();
        assert!(told.success());
        assert!(self.process.wait().unwrap().success(), "it did not stop in order");
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        // It may be gone already.
        let _ = self.process.kill();
        let _ = self.process.wait();
    }
}
