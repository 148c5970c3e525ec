//! Runs test binaries that were compiled to WebAssembly, in Node or a browser.
fn main() -> Result<(), Box<dyn std::error::Error>> {
    Ok(wasm_bindgen_cli::wasm_bindgen_test_runner::run_cli_with_args(std::env::args_os())?)
}
