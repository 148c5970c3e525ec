//! Prints the table of fitted tubes that stands on the page "How we know": `tubes > www/pages/tubes.tsv`.

#[path = "../../../../tests/common/tube_table.rs"]
mod tube_table;

fn main() {
    print!("{}", tube_table::tube_table());
}
