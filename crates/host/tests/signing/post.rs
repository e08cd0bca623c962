//! A mail server that keeps what it is handed.

use std::time::Duration;
use tokio::io::{AsyncBufReadExt, AsyncWriteExt, BufReader};
use tokio::net::{TcpListener, TcpStream};
use tokio::sync::mpsc::{UnboundedReceiver, UnboundedSender, unbounded_channel};

/// A letter as it came.
#[derive(Debug)]
pub struct Letter {
    pub to: String,
    /// Its headers, each on a line of its own.
    pub head: String,
    pub text: String,
}

impl Letter {
    /// The path of the one link in it.
    pub fn path(&self) -> String {
        let links: Vec<&str> = self.text.split_whitespace().filter(|word| word.starts_with("https://")).collect();
        assert_eq!(links.len(), 1, "one link: {}", self.text);
        links[0].strip_prefix("https://sayso.example").unwrap().to_owned()
    }
}

/// What was sent.
pub struct Post {
    pub port: u16,
    came: UnboundedReceiver<Letter>,
}

impl Post {
    pub async fn open() -> Self {
        let listener = TcpListener::bind("127.0.0.1:0").await.unwrap();
        let port = listener.local_addr().unwrap().port();
        let (to, came) = unbounded_channel();
        tokio::spawn(async move {
            while let Ok((stream, _)) = listener.accept().await {
                tokio::spawn(take(stream, to.clone()));
            }
        });
        Self { port, came }
    }

    /// The next letter.
    pub async fn next(&mut self) -> Letter {
        tokio::time::timeout(Duration::from_secs(60), self.came.recv()).await.expect("a letter").unwrap()
    }

    /// That no other letter came.
    pub fn is_empty(&mut self) -> bool {
        self.came.try_recv().is_err()
    }
}

/// One conversation (RFC 5321).
async fn take(mut stream: TcpStream, letters: UnboundedSender<Letter>) {
    let (from, mut to) = stream.split();
    let mut lines = BufReader::new(from).lines();
    to.write_all(b"220 here\r\n").await.unwrap();
    let mut whom = String::new();
    while let Ok(Some(line)) = lines.next_line().await {
        let answer = match line.get(..4).unwrap_or_default() {
            "RCPT" => {
                whom = line[line.find('<').unwrap() + 1..line.find('>').unwrap()].to_owned();
                "250 yes"
            }
            "DATA" => {
                to.write_all(b"354 go on\r\n").await.unwrap();
                let mut raw = String::new();
                while let Some(line) = lines.next_line().await.unwrap().filter(|line| line != ".") {
                    raw.push_str(&line);
                    raw.push_str("\r\n");
                }
                let (head, body) = raw.split_once("\r\n\r\n").unwrap();
                assert!(!head.contains("base64"), "{head}");
                let text = if head.contains("quoted-printable") { plain(body) } else { body.to_owned() };
                let head = format!("\r\n{head}\r\n");
                letters.send(Letter { to: whom.clone(), head, text }).unwrap();
                "250 taken"
            }
            "QUIT" => "221 bye",
            _ => "250 yes",
        };
        to.write_all(format!("{answer}\r\n").as_bytes()).await.unwrap();
    }
}

/// Out of quoted-printable (RFC 2045, 6.7).
fn plain(body: &str) -> String {
    let body = body.replace("=\r\n", "");
    let mut bytes = Vec::new();
    let mut rest = body.as_bytes();
    while let [first, after @ ..] = rest {
        rest = after;
        match (first, after) {
            (b'=', [a, b, more @ ..]) => {
                bytes.push(u8::from_str_radix(std::str::from_utf8(&[*a, *b]).unwrap(), 16).unwrap());
                rest = more;
            }
            _ => bytes.push(*first),
        }
    }
    String::from_utf8(bytes).unwrap()
}
