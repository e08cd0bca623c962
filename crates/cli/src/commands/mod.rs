//! One file a group of commands.

pub mod describe;
pub mod design;
pub mod devices;
pub mod enrol;
pub mod exchange;
pub mod host;
pub mod keep;
pub mod link;
pub mod listen;
pub mod norms;
mod notebook;
pub mod picture;
pub mod serve;
pub mod sheet;
pub mod tell;

/// Whether a port can be had, before what takes a while; 0 takes any.
fn try_port(at: std::net::SocketAddr) -> std::io::Result<()> {
    if at.port() == 0 { Ok(()) } else { std::net::TcpListener::bind(at).map(drop) }
}
