//! Every check of the engine, in one program: it is linked once, natively and as WebAssembly. What needs a crate that
//! WebAssembly has not says so at its place.

mod bits;
mod cases;
mod circuit;
mod coil;
mod common;
mod filter;
mod hearing;
mod heater;
mod hum;
mod lowpass;
mod marking;
mod microphone;
mod properties;
#[cfg(not(target_arch = "wasm32"))] // a file that a native tool prints
mod published_tubes;
mod quantity;
mod rail;
mod reader;
mod render;
mod stage;
mod stepping;
mod supply;
mod tank;
mod transformer;
mod tube;
mod tuning;
mod voice;
