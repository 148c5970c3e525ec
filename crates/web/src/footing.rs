//! What stands under the engine where there is no standard library: its allocator and what a trap is.
//!
//! The standard library's own panics carry messages and their formatting, a third of the whole file, for nobody to
//! read: the page throws a trapped instance away and makes another.

#[global_allocator]
static ALLOCATOR: dlmalloc::GlobalDlmalloc = dlmalloc::GlobalDlmalloc;

#[panic_handler]
fn trap(_: &core::panic::PanicInfo) -> ! {
    core::arch::wasm32::unreachable()
}
