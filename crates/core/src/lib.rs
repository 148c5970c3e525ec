//! The engine of Tagstrip: what a home-built vacuum-tube station does, worked out before it is soldered.
//!
//! Pure and repeatable: no I/O, no clock, no standard library, elementary functions from `libm` alone, and square roots
//! as every machine rounds them, so that the same inputs give the same bits everywhere.
//!
//! - [`value`]: what goes in and comes out: values, field tables, problems;
//! - [`quantity`]: reading figures as people write them, preferred values, markings;
//! - [`circuit`]: parts and nodes to a dc point, a response and a periodic state;
//! - [`coil`]: inductance, loss and self-capacitance of single-layer coils;
//! - [`network`]: coupling networks and ladder filters by their closed formulas;
//! - [`tube`]: current laws, the table of tubes, fitting to data-sheet points;
//! - [`hearing`]: speech in noise;
//! - [`calculators`]: one file per calculator.
#![no_std]
#![cfg_attr(not(feature = "whole"), allow(dead_code))]
#![forbid(unsafe_code)]

extern crate alloc;

pub mod calculators;
pub mod circuit;
pub mod coil;
pub mod hearing;
pub mod network;
pub mod quantity;
mod root;
mod text;
pub mod tube;
pub mod value;
