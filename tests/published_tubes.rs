//! The table of tubes that the site shows is the one that the fits give today.

#[test]
fn the_published_table_is_todays() {
    let published = include_str!("../www/pages/tubes.tsv");
    assert_eq!(
        published,
        crate::common::tube_table::tube_table(),
        "make it anew: cargo run -p tagstrip-tools --bin tubes > www/pages/tubes.tsv"
    );
}
