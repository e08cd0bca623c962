//! The microphone of this machine, where the program was built with it (feature `microphone`).

use crate::error::CliError;
use sayso_wording::words;
use std::sync::atomic::{AtomicU64, Ordering};
use std::sync::mpsc::{Receiver, RecvTimeoutError, SyncSender, TrySendError, sync_channel};
use std::sync::{Arc, OnceLock};
use std::time::{Duration, Instant};

/// Blocks that may wait, some seconds of sound; what comes on top is counted as missed.
const MOST_WAITING: usize = 256;
/// A microphone that has sent nothing for so long is lost.
const LOST_AFTER: Duration = Duration::from_secs(5);

/// What a microphone gives.
#[derive(Debug, PartialEq)]
pub enum Sound {
    /// Interleaved samples, full scale 1.0.
    Block(Vec<f32>),
    /// So many samples of each channel were lost before what comes next.
    Missed(u64),
    /// Nothing yet.
    Nothing,
}

/// An open microphone; closed when dropped.
pub struct Microphone {
    /// Its name.
    pub name: String,
    /// Samples a second and channel.
    pub rate: u32,
    /// Channels.
    pub channels: u16,
    blocks: Receiver<Vec<f32>>,
    inlet: Inlet,
    last: Instant,
    _device: device::Held,
}

/// Where the device puts sound and trouble, from its own thread, without ever waiting.
#[derive(Clone)]
struct Inlet {
    give: SyncSender<Vec<f32>>,
    missed: Arc<AtomicU64>,
    lost: Arc<OnceLock<String>>,
}

impl Inlet {
    fn new() -> (Self, Receiver<Vec<f32>>) {
        let (give, blocks) = sync_channel(MOST_WAITING);
        (Self { give, missed: Arc::default(), lost: Arc::default() }, blocks)
    }

    #[cfg_attr(not(any(feature = "microphone", test)), allow(dead_code))]
    fn block(&self, samples: Vec<f32>, channels: u16) {
        let frames = samples.len() as u64 / u64::from(channels.max(1));
        if let Err(TrySendError::Full(_)) = self.give.try_send(samples) {
            self.missed.fetch_add(frames, Ordering::Relaxed);
        }
    }

    #[cfg_attr(not(any(feature = "microphone", test)), allow(dead_code))]
    fn lose(&self, why: String) {
        // The first reason is the one to tell.
        let _ = self.lost.set(why);
    }
}

impl Microphone {
    /// The machine's usual microphone.
    ///
    /// # Errors
    /// In words: built without, none there, not permitted, or busy.
    pub fn open() -> Result<Self, CliError> {
        let (inlet, blocks) = Inlet::new();
        let (device, name, rate, channels) = device::open(inlet.clone())?;
        Ok(Self { name, rate, channels, blocks, inlet, last: Instant::now(), _device: device })
    }

    /// What came next, waiting a little for it.
    ///
    /// # Errors
    /// When the microphone is lost; what came before was given already.
    pub fn next(&mut self, wait: Duration) -> Result<Sound, CliError> {
        let name = self.name.clone();
        let lost = |why: &str| {
            Err(CliError::said(words!(command_listen::lost, microphone = name.clone(), why = why.to_owned())))
        };
        // Blocks that wait are older than what was missed.
        let block = match self.blocks.try_recv() {
            Ok(block) => Ok(block),
            Err(_) => match self.inlet.missed.swap(0, Ordering::Relaxed) {
                0 => self.blocks.recv_timeout(wait),
                missed => return Ok(Sound::Missed(missed)),
            },
        };
        match (block, self.inlet.lost.get()) {
            (Ok(block), _) => {
                self.last = Instant::now();
                Ok(Sound::Block(block))
            }
            (Err(_), Some(why)) => lost(why),
            (Err(RecvTimeoutError::Disconnected), None) => {
                Err(CliError::said(words!(command_listen::lost_driver, microphone = name.clone())))
            }
            (Err(RecvTimeoutError::Timeout), None) if self.last.elapsed() > LOST_AFTER => {
                let seconds = LOST_AFTER.as_secs();
                Err(CliError::said(words!(command_listen::lost_silent, microphone = name.clone(), seconds = seconds)))
            }
            (Err(RecvTimeoutError::Timeout), None) => Ok(Sound::Nothing),
        }
    }
}

#[cfg(not(feature = "microphone"))]
mod device {
    use super::{CliError, Inlet, words};

    /// Nothing is held without a device.
    pub struct Held;

    pub fn open(_: Inlet) -> Result<(Held, String, u32, u16), CliError> {
        Err(CliError::said(words!(command_listen::built_without)))
    }
}

#[cfg(feature = "microphone")]
mod device {
    use super::{CliError, Inlet, words};
    use cpal::traits::{DeviceTrait, HostTrait, StreamTrait};
    use cpal::{Error, ErrorKind, FromSample, Sample, SampleFormat, SizedSample, Stream, StreamConfig};

    /// The running stream.
    pub struct Held(#[allow(dead_code, reason = "held so that the stream goes on")] Stream);

    pub fn open(inlet: Inlet) -> Result<(Held, String, u32, u16), CliError> {
        let none = || CliError::said(words!(command_listen::no_microphone));
        let told = |e: Error| match e.kind() {
            ErrorKind::DeviceNotAvailable => none(),
            _ => CliError::said(words!(command_listen::not_opened, why = e.to_string())),
        };
        let device = cpal::default_host().default_input_device().ok_or_else(none)?;
        let usual = device.default_input_config().map_err(told)?;
        let name = device.to_string();
        let (config, rate, channels) = (usual.config(), usual.sample_rate(), usual.channels());
        let stream = match usual.sample_format() {
            SampleFormat::I16 => stream::<i16>(&device, config, channels, inlet),
            SampleFormat::I32 => stream::<i32>(&device, config, channels, inlet),
            SampleFormat::U8 => stream::<u8>(&device, config, channels, inlet),
            SampleFormat::U16 => stream::<u16>(&device, config, channels, inlet),
            SampleFormat::F32 => stream::<f32>(&device, config, channels, inlet),
            SampleFormat::F64 => stream::<f64>(&device, config, channels, inlet),
            other => {
                let samples = format!("{other:?}");
                return Err(CliError::said(words!(command_listen::samples, microphone = name, samples = samples)));
            }
        };
        let stream = stream.map_err(told)?;
        stream.play().map_err(told)?;
        Ok((Held(stream), name, rate, channels))
    }

    fn stream<T>(device: &cpal::Device, config: StreamConfig, channels: u16, inlet: Inlet) -> Result<Stream, Error>
    where
        T: SizedSample,
        f32: FromSample<T>,
    {
        let trouble = inlet.clone();
        device.build_input_stream::<T, _, _>(
            config,
            move |samples, _| inlet.block(samples.iter().map(|v| f32::from_sample(*v)).collect(), channels),
            move |e: Error| match e.kind() {
                // How many samples an overrun lost is not told; it goes on.
                ErrorKind::Xrun | ErrorKind::DeviceChanged | ErrorKind::RealtimeDenied => {
                    tracing::warn!("The microphone: {e}")
                }
                _ => trouble.lose(e.to_string()),
            },
            None,
        )
    }
}

#[cfg(all(test, not(feature = "microphone")))]
#[allow(clippy::unwrap_used)]
mod tests {
    use super::*;

    const SOON: Duration = Duration::from_millis(1);

    fn microphone() -> (Microphone, Inlet) {
        let (inlet, blocks) = Inlet::new();
        let held = device::Held;
        let last = Instant::now();
        let of = Microphone {
            name: "desk".into(),
            rate: 8000,
            channels: 2,
            blocks,
            inlet: inlet.clone(),
            last,
            _device: held,
        };
        (of, inlet)
    }

    #[test]
    fn blocks_come_in_order_and_what_was_missed_is_told_after_those_that_waited() {
        let (mut of, inlet) = microphone();
        assert_eq!(of.next(SOON).unwrap(), Sound::Nothing);
        for i in 0..MOST_WAITING + 3 {
            inlet.block(vec![i as f32; 4], 2);
        }
        for i in 0..MOST_WAITING {
            assert_eq!(of.next(SOON).unwrap(), Sound::Block(vec![i as f32; 4]));
        }
        assert_eq!(of.next(SOON).unwrap(), Sound::Missed(6), "three blocks of two samples a channel");
        inlet.block(vec![0.5; 4], 2);
        assert_eq!(of.next(SOON).unwrap(), Sound::Block(vec![0.5; 4]));
    }

    #[test]
    fn a_lost_microphone_is_told_after_its_last_sound() {
        let (mut of, inlet) = microphone();
        inlet.block(vec![0.1; 2], 2);
        inlet.lose("unplugged".into());
        inlet.lose("and gone".into());
        assert!(matches!(of.next(SOON), Ok(Sound::Block(_))));
        let why = of.next(SOON).unwrap_err().to_string();
        assert!(why.contains("desk") && why.contains("unplugged"), "{why}");
        let (mut of, _inlet) = microphone();
        of.last = Instant::now() - LOST_AFTER * 2;
        assert!(of.next(SOON).unwrap_err().to_string().contains("plugged in"));
    }

    #[test]
    fn without_the_feature_it_says_how_to_do() {
        let why = Microphone::open().err().unwrap().to_string();
        assert!(why.contains("arecord") && why.contains("--features microphone"), "{why}");
    }
}
