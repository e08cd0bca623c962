//! Counts wrong codes, per address and overall.

use sayso_model::Moment;
use std::net::{IpAddr, Ipv6Addr};

const WINDOW_S: f64 = 900.0;
const PER_ADDRESS: usize = 5;
const OVERALL: usize = 50;

/// Wrong tries of the last quarter of an hour. Never longer than the overall limit.
#[derive(Default)]
pub struct RateLimiter {
    failed: Vec<(IpAddr, Moment)>,
}

impl RateLimiter {
    /// Seconds to wait before another try from this address; none if it may try now.
    pub fn wait(&mut self, from: IpAddr, now: Moment) -> Option<u64> {
        self.failed.retain(|(_, at)| now.seconds_since(*at).abs() < WINDOW_S);
        let from = network(from);
        let its: Vec<Moment> = self.failed.iter().filter(|(a, _)| *a == from).map(|(_, at)| *at).collect();
        let oldest = if its.len() >= PER_ADDRESS {
            its.first().copied()
        } else if self.failed.len() >= OVERALL {
            self.failed.first().map(|(_, at)| *at)
        } else {
            None
        }?;
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)]
        Some((WINDOW_S - now.seconds_since(oldest)).ceil().clamp(1.0, WINDOW_S) as u64)
    }

    /// Notes a wrong try.
    pub fn failed(&mut self, from: IpAddr, now: Moment) {
        self.failed.push((network(from), now));
    }
}

/// One device commonly has a whole /64 of IPv6 addresses.
pub fn network(address: IpAddr) -> IpAddr {
    match address.to_canonical() {
        IpAddr::V6(v6) => {
            let s = v6.segments();
            IpAddr::V6(Ipv6Addr::new(s[0], s[1], s[2], s[3], 0, 0, 0, 0))
        }
        v4 @ IpAddr::V4(_) => v4,
    }
}

#[cfg(test)]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    fn at(s: f64) -> Moment {
        Moment::clamped(1_800_000_000_000).plus_seconds(s)
    }

    #[test]
    fn one_address_has_five_tries_a_quarter_of_an_hour() {
        let (a, b): (IpAddr, IpAddr) = ("192.168.1.7".parse().unwrap(), "192.168.1.8".parse().unwrap());
        let mut tries = RateLimiter::default();
        for i in 0..5 {
            assert_eq!(tries.wait(a, at(f64::from(i))), None);
            tries.failed(a, at(f64::from(i)));
        }
        assert_eq!(tries.wait(a, at(10.0)), Some(890));
        assert_eq!(tries.wait(b, at(10.0)), None);
        assert_eq!(tries.wait(a, at(900.5)), None);
    }

    #[test]
    fn many_addresses_together_have_fifty() {
        let mut tries = RateLimiter::default();
        for i in 0..50_u8 {
            let from = IpAddr::from([10, 0, 0, i]);
            assert_eq!(tries.wait(from, at(0.0)), None);
            tries.failed(from, at(0.0));
        }
        assert!(tries.wait(IpAddr::from([10, 0, 1, 1]), at(1.0)).is_some());
    }

    #[test]
    fn neighbours_in_one_ipv6_network_count_as_one() {
        let mut tries = RateLimiter::default();
        for i in 0..5 {
            tries.failed(format!("2001:db8:1:2::{i}").parse().unwrap(), at(0.0));
        }
        assert!(tries.wait("2001:db8:1:2::99".parse().unwrap(), at(1.0)).is_some());
        assert!(tries.wait("2001:db8:1:3::99".parse().unwrap(), at(1.0)).is_none());
    }
}
