//! An end that a list has in one cell, such as `ORFS -10 female 90°`.

use crate::catalogue::Catalogue;
use crate::spec::Gender;
use std::collections::BTreeSet;

/// Words that say which half an end is.
const GENDERS: [(&str, Gender); 8] = [
    ("male", Gender::Male),
    ("female", Gender::Female),
    ("swivel", Gender::Female),
    ("nut", Gender::Female),
    ("macho", Gender::Male),
    ("hembra", Gender::Female),
    ("außengewinde", Gender::Male),
    ("innengewinde", Gender::Female),
];

/// Words that say how an end is bent. A bare 45 or 90 is none: a size or a family may be written so.
const FORMS: [(&str, &str); 13] = [
    ("straight", "straight"),
    ("gerade", "straight"),
    ("recto", "straight"),
    ("45°", "elbow45"),
    ("45deg", "elbow45"),
    ("elbow45", "elbow45"),
    ("bogen45", "elbow45"),
    ("codo45", "elbow45"),
    ("90°", "elbow90"),
    ("90deg", "elbow90"),
    ("elbow90", "elbow90"),
    ("bogen90", "elbow90"),
    ("codo90", "elbow90"),
];

/// What the words say. Family and size are as the tables have them.
#[derive(Debug, Clone, PartialEq, Eq)]
pub(super) struct EndWords {
    pub(super) named: [String; 2],
    pub(super) gender: Option<Gender>,
    pub(super) form: Option<String>,
}

/// The one end that the words mean, whichever stands first, the family or the size.
///
/// # Errors
/// Every end that they may mean; none where they mean no end of the tables.
pub(super) fn read(catalogue: &Catalogue, text: &str) -> Result<EndWords, Vec<[String; 2]>> {
    let text = text.replace([',', ';', '(', ')'], " ");
    let (mut gender, mut form) = (None, None);
    let mut words = Vec::new();
    for word in text.split_whitespace() {
        let lower = word.to_lowercase();
        let said = GENDERS.iter().find(|(name, _)| *name == lower).map(|(_, gender)| *gender);
        let bent = FORMS.iter().find(|(name, _)| *name == lower).map(|(_, form)| (*form).to_owned());
        if said.is_none() && bent.is_none() {
            words.push(word);
        }
        gender = gender.or(said);
        form = form.or(bent);
    }
    let parted = (1..words.len()).map(|at| (words[..at].join(" "), words[at..].join(" ")));
    let either_way = parted.flat_map(|(first, last)| [(first.clone(), last.clone()), (last, first)]);
    let found: BTreeSet<[String; 2]> = either_way
        .filter_map(|(family, size)| catalogue.connection(&family, &size).ok())
        .map(|found| [found.family().to_owned(), found.size().to_owned()])
        .collect();
    let mut found: Vec<_> = found.into_iter().collect();
    match found.len() {
        1 => Ok(EndWords { named: found.swap_remove(0), gender, form }),
        _ => Err(found),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use rstest::rstest;

    #[rstest]
    #[case("ORFS -10", "ORFS", "-10", None, None)]
    #[case("-10 ORFS female 90°", "ORFS", "-10", Some(Gender::Female), Some("elbow90"))]
    #[case("JIC 37 flare, -10 (swivel)", "JIC 37 flare", "-10", Some(Gender::Female), None)]
    #[case("O-ring face seal 1-14 UNS male straight", "ORFS", "-10", Some(Gender::Male), Some("straight"))]
    fn an_end_is_read_from_words(
        #[case] text: &str,
        #[case] family: &str,
        #[case] size: &str,
        #[case] gender: Option<Gender>,
        #[case] form: Option<&str>,
    ) {
        let named = [family.to_owned(), size.to_owned()];
        let is = EndWords { named, gender, form: form.map(str::to_owned) };
        assert_eq!(read(Catalogue::embedded(), text), Ok(is));
    }

    #[rstest]
    #[case("")]
    #[case("ORFS")]
    #[case("-10")]
    #[case("ORFS or JIC -10")]
    #[case("female 90°")]
    fn what_means_no_end_is_none(#[case] text: &str) {
        assert_eq!(read(Catalogue::embedded(), text), Err(Vec::new()));
    }
}
