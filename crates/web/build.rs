//! Says how the engine is linked.

fn main() {
    // A quarter megabyte of stack is many times what the deepest call takes. It lies below the data, so the less of it,
    // the shorter every address in the code.
    if std::env::var("CARGO_CFG_TARGET_ARCH").as_deref() == Ok("wasm32") {
        println!("cargo::rustc-link-arg-cdylib=-zstack-size=262144");
    }
}
